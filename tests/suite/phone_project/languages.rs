//! What iOS is told of the languages, made of the texts: `STEADY_WRITE_PHONES=1 cargo test -p suite phone_project` writes it.

use std::collections::BTreeMap;

use steady_core::words::Words;

use super::PLIST;
use super::files::{Project, root};

/// What iOS asks with, and the text that says it.
const ASKED: [(&str, &str); 1] = [("NSCameraUsageDescription", "language-camera-use")];
const FOLDER: &str = "src-tauri/ios/";

pub fn faults(project: &Project) -> Vec<String> {
    let wanted = strings();
    let mut faults: Vec<String> = wanted
        .iter()
        .filter(|(name, text)| project.find(name) != Some(text.as_str()))
        .map(|(name, _)| format!("{name} is not what the texts say"))
        .collect();
    let there = project.below(FOLDER, &["/InfoPlist.strings"]);
    faults.extend(
        there.filter(|(name, _)| !wanted.contains_key(*name)).map(|(name, _)| format!("{name} has no texts")),
    );
    let plist = project.text(PLIST);
    if plist != told(plist) {
        faults.push("the plist does not list the languages, or its English differs".to_owned());
    }
    faults
}

/// Brings the files on disk to what the texts say.
pub fn write() {
    for (name, text) in strings() {
        let path = root().join(name);
        std::fs::create_dir_all(path.parent().unwrap()).unwrap();
        std::fs::write(path, text).unwrap();
    }
    let plist = root().join(PLIST);
    let text = std::fs::read_to_string(&plist).unwrap();
    std::fs::write(plist, told(&text)).unwrap();
}

/// The file of each language, by its path.
fn strings() -> BTreeMap<String, String> {
    let languages = Words::locales().into_iter().map(|tag| Words::of(tag).unwrap());
    let file = |words: &Words| {
        let lines = ASKED.map(|(key, id)| format!("\"{key}\" = \"{}\";\n", words.text(id)));
        let said = "/* What iOS says when a camera button is tapped for the first time. */\n";
        (format!("{FOLDER}{}.lproj/InfoPlist.strings", words.locale()), format!("{said}{}", lines.concat()))
    };
    languages.map(file).collect()
}

/// The plist with every language listed, and with the English texts.
fn told(plist: &str) -> String {
    let tags = Words::locales();
    let rows: String = tags.iter().map(|tag| format!("\t\t<string>{tag}</string>\n")).collect();
    let listed = between(plist, "<key>CFBundleLocalizations</key>\n\t<array>\n", "\t</array>", &rows);
    let english = Words::of("en").unwrap();
    ASKED.iter().fold(listed, |plist, (key, id)| {
        between(&plist, &format!("<key>{key}</key>\n\t<string>"), "</string>", &english.text(id))
    })
}

/// The text with what stands between two marks made anew; as it is where they are not there.
fn between(text: &str, from: &str, to: &str, new: &str) -> String {
    let Some((before, rest)) = text.split_once(from) else { return text.to_owned() };
    let Some((_, after)) = rest.split_once(to) else { return text.to_owned() };
    format!("{before}{from}{new}{to}{after}")
}
