//! The bench types cross the boundary under names of their own: TypeScript keeps one file a name.

use std::collections::BTreeMap;

use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::model::fit::{FitInput, FitResult};
use steady_core::model::gauge::{GaugeInput, GaugeResult};
use steady_core::model::verdict::{BenchFindings, BenchVerdict};
use ts_rs::{Config, TS};

fn written(export: impl Fn(&Config)) -> BTreeMap<String, String> {
    let folder = tempfile::tempdir().unwrap();
    export(&Config::new().with_out_dir(folder.path()));
    let files = std::fs::read_dir(folder.path()).unwrap().flatten();
    files
        .filter(|file| file.path().is_file())
        .map(|file| {
            let text = std::fs::read_to_string(file.path()).unwrap();
            (file.file_name().to_string_lossy().into_owned(), text)
        })
        .collect()
}

#[test]
fn bench_types_share_no_name_with_another_type() {
    let others = written(|config| {
        Request::export_all(config).unwrap();
        Response::export_all(config).unwrap();
    });
    let bench = written(|config| {
        GaugeInput::export_all(config).unwrap();
        GaugeResult::export_all(config).unwrap();
        FitInput::export_all(config).unwrap();
        FitResult::export_all(config).unwrap();
        BenchFindings::export_all(config).unwrap();
        BenchVerdict::export_all(config).unwrap();
    });
    assert!(bench.len() > 40, "{}", bench.len());
    for (name, text) in &bench {
        assert!(others.get(name).is_none_or(|other| other == text), "{name} is two types");
    }
}
