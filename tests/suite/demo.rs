//! The demo workshop is test data too, so it cannot rot.

use std::path::{Path, PathBuf};

use serde_json::{Value, json};
use steady_core::app::replay::replay;

use crate::support::scratch;

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../demo-data")
}

#[test]
fn every_demo_visit_replays_to_its_rating() {
    let (_folder, steady) = scratch();
    let workshop = std::fs::read_to_string(folder().join("workshop/particulars.json")).unwrap();
    steady.set_workshop_json(&workshop).unwrap();
    let expected = [
        ("01", json!("CAUTION")),
        ("02", json!("CAUTION")),
        ("03", json!("DANGER")),
        ("04", json!("DANGER")),
        ("05", json!("WARNING")),
        ("06", Value::Null),
        ("07", json!("NOTICE")),
        ("08", json!("WARNING")),
        ("09", json!("CAUTION")),
        ("10", Value::Null),
        ("11", json!("WARNING")),
        ("12", json!("WARNING")),
        ("13", json!("DANGER")),
        ("14", json!("NOTICE")),
        ("15", json!("WARNING")),
        ("16", json!("CAUTION")),
        ("17", json!("DANGER")),
        ("18", json!("CAUTION")),
        ("19", json!("CAUTION")),
        ("20", json!("DANGER")),
    ];
    let files = std::fs::read_dir(folder()).unwrap().flatten().map(|file| file.path());
    let mut cases: Vec<PathBuf> =
        files.filter(|path| path.extension().is_some_and(|ending| ending == "json")).collect();
    cases.sort();
    assert_eq!(cases.len(), expected.len());
    for (path, (number, word)) in cases.iter().zip(expected) {
        let name = path.file_name().unwrap().to_string_lossy().into_owned();
        assert!(name.starts_with(number), "{name}");
        let case = std::fs::read_to_string(path).unwrap();
        let replayed =
            replay(&steady, &case, &folder()).unwrap_or_else(|failure| panic!("{name}: {failure:?}"));
        assert_eq!(replayed.report["urgency"]["word"], word, "{name}: {:#}", replayed.report);
        if number == "20" {
            let bench = &replayed.report["bench"];
            assert_eq!(bench["sleeve_out"]["way"], "heat", "{bench:#}");
            assert_eq!(bench["stock"][0]["says"], "fits", "the workshop's own sleeve: {bench:#}");
        }
        let given: Value = serde_json::from_str(&case).unwrap();
        let photos = |steps: &Value| {
            steps.as_array().unwrap().iter().filter(|step| step.get("photo").is_some()).count()
        };
        assert_eq!(photos(&replayed.report["steps"]), photos(&given["answers"]), "{name}");
    }
}
