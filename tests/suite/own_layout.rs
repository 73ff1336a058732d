//! A workshop's own layout file: read from the data folder, named in the finding by its own name.

use std::path::Path;

use serde_json::json;
use steady_core::app::replay::replay;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::model::limits;

use crate::support::{ask, code, open, scratch};

const OWN: &str = r#"
id = "own-two-bearing"
name = "Two bearings, own drawing"
support = "rubber"
speed = "output"
allowed_movement = "maker-figure"
causes = ["worn-bearing", "torn-support-rubber", "misfire"]
basis = "common practice, no source"
"#;

/// Reads a layout file from a data folder and gives back how the finding names the layout, with what
/// Home has to say about files it refused.
fn named(file: &str, layout: &str) -> (Option<String>, Vec<String>) {
    let folder = tempfile::tempdir().unwrap();
    std::fs::create_dir(folder.path().join("layouts")).unwrap();
    std::fs::write(folder.path().join("layouts/own.toml"), file).unwrap();
    let steady = open(folder.path()).unwrap();
    let name = Request::SetTechnician { name: "Kim Demo".to_owned() };
    let Response::Home(home) = steady.handle(name).unwrap() else { panic!("no home") };
    let refused = home.notices.into_iter().map(|notice| notice.detail).collect();
    if !home.layouts.iter().any(|choice| choice.id == layout) {
        return (None, refused);
    }
    let visit = ask(&steady, json!({ "ask": "open", "intake": { "vehicle": { "layout": layout } } })).visit;
    let finding = Request::Finding { visit, locale: "en".to_owned() };
    let Response::Finding(finding) = steady.handle(finding).unwrap() else { panic!("no finding") };
    let field = finding.vehicle.iter().find(|field| field.label == "Shaft layout");
    (field.map(|field| field.value.clone()), refused)
}

#[test]
fn own_layout_shows_by_its_name_and_a_bad_one_is_refused_alone() {
    let (own, refused) = named(OWN, "own-two-bearing");
    assert_eq!(own.as_deref(), Some("Two bearings, own drawing"));
    assert_eq!(refused, Vec::<String>::new());

    let nameless = OWN.replace("name = \"Two bearings, own drawing\"\n", "");
    assert_eq!(named(&nameless, "own-two-bearing").0.as_deref(), Some("own-two-bearing"));

    let (missing, refused) = named(&OWN.replace("misfire", "no-such-cause"), "own-two-bearing");
    assert_eq!(missing, None);
    assert!(refused[0].contains("own.toml") && refused[0].contains("causes"), "{refused:?}");
    let vast = format!("{OWN}#{}", " ".repeat(usize::try_from(limits::OWN_FILE_BYTES).unwrap()));
    let (missing, refused) = named(&vast, "own-two-bearing");
    assert_eq!(missing, None, "longer than any layout");
    assert!(refused[0].contains("own.toml"), "{refused:?}");
    assert!(named("not a layout", "rubber-centre").0.is_some(), "the shipped layouts keep working");
}

/// A case is rehearsed and a visit practised in folders of their own, which must know the layout too.
#[test]
fn own_layout_can_be_replayed_and_practised() {
    let folder = tempfile::tempdir().unwrap();
    std::fs::create_dir(folder.path().join("layouts")).unwrap();
    std::fs::write(folder.path().join("layouts/own.toml"), OWN).unwrap();
    let steady = open(folder.path()).unwrap();
    steady.handle(Request::SetTechnician { name: "Kim Demo".to_owned() }).unwrap();
    let case = json!({ "vehicle": { "layout": "own-two-bearing" }, "answers": [] });
    replay(&steady, &case.to_string(), Path::new(".")).unwrap();
    let intake = json!({ "vehicle": { "layout": "own-two-bearing" } });
    assert_eq!(code(&steady, json!({ "ask": "start-practice", "intake": intake })), "ok");
}

/// A file that nobody named would be shipped to nobody.
#[test]
fn every_layout_that_is_written_is_shipped() {
    let (_folder, steady) = scratch();
    let Response::Home(home) = steady.handle(Request::Home).unwrap() else { panic!("no home") };
    let mut shipped: Vec<String> = home.layouts.into_iter().map(|layout| layout.id).collect();
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../src-tauri/core/data/layouts");
    let mut written: Vec<String> = std::fs::read_dir(folder)
        .unwrap()
        .map(|file| file.unwrap().path().file_stem().unwrap().to_string_lossy().into_owned())
        .collect();
    shipped.sort();
    written.sort();
    assert_eq!(shipped, written);
}
