//! What one program rated by, every later one can read. Before the rules change, those of today are written down:
//! `STEADY_WRITE_RULES=1 cargo test -p steady-core --lib ever_shipped`.

use std::path::Path;

use super::texts::Texts;
use crate::model::rules::VERSION;

#[test]
fn each_version_of_the_rules_ever_shipped_has_its_files() {
    if std::env::var_os("STEADY_WRITE_RULES").is_some() {
        let file = format!("data/earlier/rules-{VERSION}.json");
        let json = serde_json::to_string_pretty(&Texts::shipped()).expect("texts become JSON");
        std::fs::write(Path::new(env!("CARGO_MANIFEST_DIR")).join(file), json + "\n")
            .expect("it can be written");
    }
    let all = Texts::earlier().into_iter().chain([Texts::shipped()]);
    let versions: Vec<u32> =
        all.map(|texts| texts.read().expect("knowledge that was shipped").0.rules.version).collect();
    assert_eq!(versions, (1..=VERSION).collect::<Vec<_>>());
}
