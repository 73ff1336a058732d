//! The desk from outside: the binary is started, and asked over its port and its arguments.
//!
//! What the core answers is tested in the suite; here it is who gets an answer at all.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::string_slice,
    reason = "a test may fail loudly"
)]

#[cfg(test)]
#[path = "desk/support.rs"]
mod support;

#[cfg(all(test, unix))]
#[path = "desk/account.rs"]
mod account;

#[cfg(test)]
#[path = "desk/handover.rs"]
mod handover;

#[cfg(test)]
#[path = "desk/outputs.rs"]
mod outputs;

#[cfg(test)]
mod tests {
    use super::support::{Desk, answered, refused};
    use std::fs;

    #[test]
    fn a_request_with_the_key_reaches_the_core() {
        let desk = Desk::start();
        let reply = desk.post(&desk.key, r#"{"ask":"home"}"#);
        assert_eq!(reply.status, 200, "{}", reply.body);
        assert!(reply.body.contains(r#""is":"home""#), "{}", reply.body);
        let reply = desk.post(&desk.key, r#"{"ask":"look","visit":"nowhere"}"#);
        assert_eq!(reply.status, 422, "{}", reply.body);
        let reply = desk.post(&desk.key, "not JSON");
        assert_eq!(reply.status, 422, "{}", reply.body);
        assert_eq!(reply.code(), "unknown-request");
    }

    #[test]
    fn a_request_without_the_key_is_refused() {
        let desk = Desk::start();
        for key in ["", "0", &"0".repeat(64)] {
            let reply = desk.post(key, r#"{"ask":"home"}"#);
            assert_eq!((reply.status, reply.code().as_str()), (401, "no-key"), "{key}");
        }
        let hash = "0".repeat(64);
        for query in ["", "?token=", "?token=0123456789abcdef0123456789abcdef", &format!("?key={}", desk.key)]
        {
            let reply = desk.get(&format!("/photo/{hash}/thumb{query}"), &desk.host, "");
            assert_eq!((reply.status, reply.code().as_str()), (401, "no-key"), "{query}");
        }
        let reply = desk.get("/file/0191d2f0000070008000000000000009", &desk.host, "");
        assert_eq!((reply.status, reply.code().as_str()), (401, "no-key"));
    }

    #[test]
    fn another_host_or_page_is_refused() {
        let desk = Desk::start();
        let port = desk.port();
        for host in ["bay.example".to_owned(), format!("bay.example:{port}"), "127.0.0.1:1".to_owned()] {
            let reply = desk.get("/", &host, "");
            assert_eq!((reply.status, reply.code().as_str()), (421, "foreign-host"), "{host}");
        }
        for origin in ["null", "http://bay.example", "http://127.0.0.1:1"] {
            let reply = desk.get("/", &desk.host, &format!("Origin: {origin}\r\n"));
            assert_eq!((reply.status, reply.code().as_str()), (403, "foreign-origin"), "{origin}");
        }
        let own = desk.get("/", &format!("localhost:{port}"), &format!("Origin: http://{}\r\n", desk.host));
        assert!(![421, 403].contains(&own.status), "{}", own.body);
    }

    #[test]
    fn every_reply_carries_the_strict_headers() {
        let desk = Desk::start();
        for path in ["/", "/nothing-here", "/../Cargo.toml", "/photo/x/full", "/api"] {
            let head = desk.get(path, &desk.host, "").head.to_lowercase();
            for wanted in [
                "content-security-policy: default-src 'none'; script-src 'self';",
                "cache-control: no-store",
                "x-content-type-options: nosniff",
                "referrer-policy: no-referrer",
            ] {
                assert!(head.contains(wanted), "{path}: {wanted} in {head}");
            }
            assert!(!head.contains("access-control-"), "{path}: {head}");
        }
    }

    #[test]
    fn a_body_over_the_limit_is_refused() {
        let desk = Desk::start();
        let reply = desk.post(&desk.key, &" ".repeat(1024 * 1024 + 1));
        assert_eq!((reply.status, reply.code().as_str()), (413, "request-too-large"));
        let reply = desk.post(&desk.key, &" ".repeat(1024 * 1024));
        assert_eq!((reply.status, reply.code().as_str()), (422, "unknown-request"));
    }

    #[test]
    fn a_photo_nobody_kept_is_not_found() {
        let desk = Desk::start();
        let key = format!("X-Steady-Key: {}\r\n", desk.key);
        let path = format!("/photo/{}/full", "0".repeat(64));
        assert_eq!(desk.get(&path, &desk.host, &key).status, 404);
    }

    #[test]
    fn a_paper_is_fetched_by_its_id_and_nothing_else_is() {
        let desk = Desk::start();
        let key = format!("X-Steady-Key: {}\r\n", desk.key);
        let ask = |request: &str| {
            let reply = desk.post(&desk.key, request);
            assert_eq!(reply.status, 200, "{}", reply.body);
            serde_json::from_str::<serde_json::Value>(&reply.body).expect("JSON")
        };
        ask(r#"{"ask":"set-technician","name":"Kim Demo"}"#);
        let visit = ask(r#"{"ask":"open","intake":{"vehicle":{"layout":"torque-tube"}}}"#)["visit"].clone();
        let made = ask(&format!(r#"{{"ask":"paper","visit":{visit},"paper":"note","locale":"en"}}"#));
        let file = made["file"].as_str().expect("an id");
        let reply = desk.get(&format!("/file/{file}"), &desk.host, &key);
        assert_eq!(reply.status, 200);
        assert!(reply.body.contains("%PDF-") && reply.body.contains("%%EOF"), "all of it");
        for other in ["", "lock", "../steady.db", "0191d2f0000070008000000000000009"] {
            let reply = desk.get(&format!("/file/{other}"), &desk.host, &key);
            assert_eq!((reply.status, reply.code().as_str()), (404, "upload-unknown"), "{other}");
        }
    }

    #[test]
    fn each_start_has_another_key() {
        assert_ne!(Desk::start().key, Desk::start().key);
    }

    #[test]
    fn a_second_process_on_the_same_data_is_refused() {
        let desk = Desk::start();
        let folder = desk.folder().to_owned();
        refused(&["serve", "--no-open", "--data", &folder], "in-use");
        let case = format!("{folder}/case.json");
        fs::write(&case, r#"{"vehicle":{"layout":"torque-tube"},"answers":[]}"#)
            .expect("the case is written");
        refused(&["replay", &case, "--data", &folder], "in-use");
    }

    #[test]
    fn a_taken_port_is_named() {
        let desk = Desk::start();
        let other = tempfile::tempdir().expect("a temporary folder");
        let folder = other.path().display().to_string();
        refused(&["serve", "--no-open", "--data", &folder, "--port", &desk.port()], "port-taken");
    }

    #[test]
    fn a_bad_case_is_refused_with_its_code() {
        let folder = tempfile::tempdir().expect("a temporary folder");
        let path = |name: &str| folder.path().join(name).display().to_string();
        let case = path("case.json");
        refused(&["replay", &case], "case-unreadable");
        let whole = r#"{"vehicle":{"layout":"rigid-engine-speed"},"answers":[]}"#;
        for (text, code) in [
            (whole.strip_suffix("]}").expect("the end of the case"), "case-unreadable"),
            (r#"{"vehicle":{"layout":"two-wheeler"},"answers":[]}"#, "unknown-layout"),
            (
                r#"{"vehicle":{"layout":"torque-tube"},"answers":[{"step":"taste","value":"none"}]}"#,
                "unknown-step",
            ),
        ] {
            fs::write(&case, text).expect("the case is written");
            refused(&["replay", &case], code);
        }
        fs::write(&case, whole).expect("the case is written");
        fs::write(path("file"), "").expect("a file is written");
        refused(&["replay", &case, "--out", &path("file")], "out-unwritable");
        refused(&["replay", &case, "--data", &path("file")], "data-folder-unwritable");
    }

    #[test]
    fn bad_readings_and_sizes_are_refused_with_their_code() {
        let folder = tempfile::tempdir().expect("a temporary folder");
        let file = folder.path().join("gauge.json").display().to_string();
        refused(&["gauge", &file], "file-unreadable");
        fs::write(&file, "{}").expect("the file is written");
        refused(&["gauge", &file], "gauge-file-unreadable");
        let fit = ["fit", "--bearing-od", "72", "--housing", "A356"];
        refused(&fit, "seat-missing");
        refused(&[&fit[..], &["--class", "n7"]].concat(), "unknown-class");
        refused(&[&fit[..], &["--bore", "72,0,1"]].concat(), "decimal-comma");
    }

    #[test]
    fn an_outcome_is_recorded_from_the_command_line() {
        let folder = tempfile::tempdir().expect("a temporary folder");
        let data = folder.path().join("data").display().to_string();
        let case = folder.path().join("case.json");
        let text = r#"{"vehicle":{"layout":"torque-tube"},"technician":"Kim Demo","answers":[]}"#;
        fs::write(&case, text).expect("the case is written");
        let case = case.display().to_string();
        let report = answered(&["replay", &case, "--data", &data, "--new", "--json"]);
        for key in ["interval", "for", "against", "together", "gain", "why", "surprise", "knowledge"] {
            assert!(report.contains(&format!("\"{key}\":")), "{key} in {report}");
        }
        let visit = report.split("\"visit\":\"").nth(1).and_then(|rest| rest.split('"').next());
        let visit = visit.expect("the report names its visit");
        refused(
            &["outcome", visit, "--cause", "gremlins", "--by", "Robin", "--data", &data],
            "unknown-cause",
        );
        refused(&["outcome", visit, "--cause", "misfire", "--data", &data], "technician-missing");
        let told =
            answered(&["outcome", visit, "--cause", "misfire", "low-idle", "--by", "Robin", "--data", &data]);
        assert!(told.contains("low-idle, misfire") && told.contains("1 in all"), "{told}");
    }

    #[test]
    fn a_case_with_a_bench_prints_its_repair_record() {
        let folder = tempfile::tempdir().expect("a temporary folder");
        let out = folder.path().display().to_string();
        let demo = |name: &str| format!("{}/../../demo-data/{name}", env!("CARGO_MANIFEST_DIR"));
        let said = answered(&["replay", &demo("13-measured-to-the-repair.json"), "--out", &out]);
        for line in
            ["Gauge       play-vertical proven", "Bench       Skim the seat", "Outcome     loose-seat"]
        {
            assert!(said.contains(line), "{line} in {said}");
        }
        let paper = fs::read(folder.path().join("repair.pdf")).expect("the repair record is written");
        assert!(paper.starts_with(b"%PDF-"));
        let bare = tempfile::tempdir().expect("a temporary folder");
        let out = bare.path().display().to_string();
        answered(&["replay", &demo("10-just-arrived.json"), "--out", &out]);
        assert!(bare.path().join("finding.pdf").exists() && !bare.path().join("repair.pdf").exists());
    }

    fn demo_bore(name: &str) -> String {
        format!("{}/../../demo-data/bench/{name}", env!("CARGO_MANIFEST_DIR"))
    }

    #[test]
    fn a_bore_and_its_skim_are_printed_for_people_and_programs() {
        let dial = demo_bore("three-lobes-dial.csv");
        let bore: serde_json::Value = serde_json::from_str(&answered(&["bore", &dial, "--json"])).unwrap();
        assert_eq!(bore["sections"].as_array().map(Vec::len), Some(3), "{bore}");
        assert_eq!(bore["sentences"].as_array().map(Vec::len), bore["notes"].as_array().map(Vec::len));
        let skim = ["skim", &dial, "--pass", "0.001in", "--wall-min", "5.5mm"];
        let plan: serde_json::Value =
            serde_json::from_str(&answered(&[&skim[..], &["--json"]].concat())).unwrap();
        assert_eq!((&plan["verdict"], &plan["pass_diameter_mm"]), (&"skim".into(), &0.0254.into()), "{plan}");
        let passes = plan["passes"].as_array().unwrap();
        assert_eq!(passes.last().unwrap()["touched"][0]["arcs_deg"], serde_json::json!([[0.0, 360.0]]));
        let lines = answered(&["bore", &demo_bore("three-lobes-two-point.csv")]);
        assert!(lines.contains("at least") && lines.contains("odd number of lobes"), "{lines}");
        let lines = answered(&skim);
        assert!(lines.contains("Pass 1 ") && lines.contains("touched 100%"), "{lines}");
    }

    #[test]
    fn a_bad_bore_is_refused_with_its_code() {
        let folder = tempfile::tempdir().expect("a temporary folder");
        let file = folder.path().join("bore.csv").display().to_string();
        refused(&["bore", &file], "bore-unreadable");
        let head = "bore,kind=two-point,unit=mm,resolution=0.001,mpe=0.003\nangle_deg,diameter\n";
        for (rows, code) in [
            ("", "bore-empty"),
            ("0,72,013\n", "bore-decimal-comma"),
            ("0,72\n60,NaN\n120,72\n", "bore-not-a-number"),
            ("0,72\n60,72\n", "bore-too-few-angles"),
        ] {
            fs::write(&file, format!("{head}{rows}")).expect("the bore is written");
            refused(&["bore", &file], code);
            refused(&["skim", &file, "--pass", "1thou"], code);
        }
        let oval = demo_bore("oval-two-point.csv");
        refused(&["skim", &oval, "--pass", "1,250mm"], "decimal-comma");
        refused(&["skim", &oval, "--pass", "1thou", "--axis", "datum"], "bore-no-datum");
        refused(&["skim", &oval, "--pass", "1thou", "--wall", "-2"], "bore-wall-negative");
    }
}
