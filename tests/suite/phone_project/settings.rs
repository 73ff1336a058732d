//! Names, versions, backups, file access, commands and safe areas: what one file says and another relies on.

use super::files::Project;
use super::{GRADLE, KOTLIN, MANIFEST, RES, SWIFT};

/// The namespace of Android's attributes.
pub const ANDROID: &str = "http://schemas.android.com/apk/res/android";

/// Folders of an app that Android can back up.
/// Source: Android's page on `full-backup-content`, attribute `domain`.
const DOMAINS: [&str; 9] = [
    "root",
    "file",
    "database",
    "sharedpref",
    "external",
    "device_root",
    "device_file",
    "device_database",
    "device_sharedpref",
];

pub fn faults(project: &Project) -> Vec<String> {
    let mut faults = Vec::new();
    names(project, &mut faults);
    manifest(project, &mut faults);
    backups(project, &mut faults);
    files(project, &mut faults);
    commands(project, &mut faults);
    edges(project, &mut faults);
    resources(project, &mut faults);
    faults
}

/// Each file must hold these words.
fn names(project: &Project, faults: &mut Vec<String>) {
    let conf = "src-tauri/tauri.conf.json";
    let main = "src-tauri/gen/android/app/src/main/java/app/steady/bay/MainActivity.kt";
    for (file, words) in [
        (conf, "\"identifier\": \"app.steady.bay\""),
        (conf, "\"productName\": \"Steady\""),
        (conf, "\"minSdkVersion\": 26"),
        (conf, "\"minimumSystemVersion\": \"15.0\""),
        (GRADLE, "namespace = \"app.steady.bay\""),
        (GRADLE, "applicationId = \"app.steady.bay\""),
        (GRADLE, "minSdk = 26"),
        (main, "package app.steady.bay"),
        ("src-tauri/device/android/build.gradle.kts", "minSdk = 26"),
        ("src-tauri/device/ios/Package.swift", "platforms: [.iOS(.v15)]"),
        (&format!("{RES}/values/strings.xml"), "name=\"app_name\" translatable=\"false\">Steady<"),
    ] {
        if !project.text(file).contains(words) {
            faults.push(format!("{file} does not say {words}"));
        }
    }
}

fn manifest(project: &Project, faults: &mut Vec<String>) {
    let document = roxmltree::Document::parse(project.text(MANIFEST)).unwrap();
    let element = |tag| document.descendants().find(|node| node.has_tag_name(tag)).unwrap();
    let (app, provider) = (element("application"), element("provider"));
    for (node, name, wanted, fault) in [
        (app, "usesCleartextTraffic", "false", "clear text is allowed"),
        (app, "allowBackup", "false", "backups are on"),
        (app, "fullBackupContent", "@xml/backup_rules", "backup rules are not named"),
        (app, "dataExtractionRules", "@xml/data_extraction_rules", "backup rules are not named"),
        (provider, "exported", "false", "the provider is open to all"),
        (provider, "authorities", "${applicationId}.fileprovider", "wry looks for the provider elsewhere"),
        (provider, "grantUriPermissions", "true", "the camera may not write its file"),
    ] {
        if node.attribute((ANDROID, name)) != Some(wanted) {
            faults.push(fault.to_owned());
        }
    }
}

/// Where Tauri puts an app's data on iOS, and what keeps it out of Apple's backups (`URLResourceValues`).
const EXCLUDED: [&str; 4] = [
    "override public func load(webview: WKWebView)",
    "for: .applicationSupportDirectory, in: .userDomainMask",
    "values.isExcludedFromBackup = true\n    try? data.setResourceValues(values)",
    "?? \"app.steady.bay\")",
];

fn backups(project: &Project, faults: &mut Vec<String>) {
    if let Some(lacking) = EXCLUDED.iter().find(|words| !project.text(SWIFT).contains(*words)) {
        faults.push(format!("iOS backs the visits up: {lacking} is not there"));
    }
    for (file, sections) in [
        ("backup_rules", &["full-backup-content"][..]),
        ("data_extraction_rules", &["cloud-backup", "device-transfer"]),
    ] {
        let text = project.text(&format!("{RES}/xml/{file}.xml"));
        let document = roxmltree::Document::parse(text).unwrap();
        for section in sections {
            let Some(node) = document.descendants().find(|node| node.has_tag_name(*section)) else {
                faults.push(format!("{file} has no {section}"));
                continue;
            };
            let rules: Vec<_> = node.children().filter(roxmltree::Node::is_element).collect();
            if rules.iter().any(|rule| rule.has_tag_name("include")) {
                faults.push(format!("{section} includes something"));
            }
            for domain in DOMAINS {
                let out = rules.iter().any(|rule| {
                    rule.has_tag_name("exclude")
                        && rule.attribute("domain") == Some(domain)
                        && rule.attribute("path") == Some(".")
                });
                if !out {
                    faults.push(format!("{section} lets {domain} out"));
                }
            }
        }
    }
}

/// Other apps are handed the camera's folder and the outbox, and nothing else.
fn files(project: &Project, faults: &mut Vec<String>) {
    let document = roxmltree::Document::parse(project.text(&format!("{RES}/xml/file_paths.xml"))).unwrap();
    let device = project.text("src-tauri/device/src/lib.rs");
    let outbox = device.split("OUTBOX: &str = \"").nth(1).and_then(|rest| rest.split('"').next()).unwrap();
    let mut found: Vec<(String, String)> = document
        .root_element()
        .children()
        .filter(roxmltree::Node::is_element)
        .map(|node| (node.tag_name().name().to_owned(), node.attribute("path").unwrap_or("").to_owned()))
        .collect();
    found.sort();
    let wanted = [
        ("cache-path".to_owned(), format!("{outbox}/")),
        ("external-files-path".to_owned(), "Pictures/".to_owned()),
    ];
    if found != wanted {
        faults.push(format!("the provider hands out {found:?}, needed are {wanted:?}"));
    }
}

/// A command goes from the screens through Rust to Kotlin and Swift under names that nobody compiles together.
fn commands(project: &Project, faults: &mut Vec<String>) {
    let native = project.text("src-tauri/device/src/native.rs");
    let asked = native.split("self.tell(\"").skip(1).chain(native.split("self.run(\"").skip(1));
    let asked: Vec<&str> = asked.filter_map(|rest| rest.split('"').next()).collect();
    assert_eq!(asked.len(), 5, "{asked:?}");
    for command in asked {
        if !project.text(KOTLIN).contains(&format!("@Command\n    fun {command}(invoke: Invoke)")) {
            faults.push(format!("Kotlin does not know {command}"));
        }
        if !project.text(SWIFT).contains(&format!("@objc public func {command}(_ invoke: Invoke)")) {
            faults.push(format!("Swift does not know {command}"));
        }
    }
    let build = project.text("src-tauri/device/build.rs");
    let list = build.split("= &[").nth(1).and_then(|rest| rest.split(']').next()).unwrap();
    let known: Vec<String> = list.split(',').map(|name| name.trim().trim_matches('"').to_owned()).collect();
    let handler = project.text("src-tauri/device/src/commands.rs");
    for name in &known {
        let allowed = format!("\"allow-{}\"", name.replace('_', "-"));
        if !project.text("src-tauri/device/permissions/default.toml").contains(&allowed) {
            faults.push(format!("the screens may not: {allowed}"));
        }
        if !handler.contains(&format!("fn {name}(")) {
            faults.push(format!("there is no command {name}"));
        }
    }
    let screens = project.text(super::DEVICE_TS);
    let asked = screens.split("tell('").skip(1).chain(screens.split("'plugin:device|").skip(1));
    for name in asked.filter_map(|rest| rest.split('\'').next()) {
        if !known.iter().any(|known| known == name) {
            faults.push(format!("the screens ask the device for {name}"));
        }
    }
}

fn edges(project: &Project, faults: &mut Vec<String>) {
    for (file, words, fault) in [
        ("ui/index.html", "viewport-fit=cover", "the page has no viewport-fit"),
        (
            "src-tauri/gen/android/app/src/main/java/app/steady/bay/MainActivity.kt",
            "    enableEdgeToEdge()\n",
            "the activity is not edge to edge",
        ),
        (super::DEVICE_TS, "event: 'back-button'", "the screens do not hear the Back button"),
        (KOTLIN, "setOnApplyWindowInsetsListener", "nobody listens to the insets"),
    ] {
        if !project.text(file).contains(words) {
            faults.push(fault.to_owned());
        }
    }
    for (name, text) in project.below("ui/src/", &[".css", ".svelte"]) {
        if text.contains("env(safe-area") && name != "ui/src/safe-area.css" {
            faults.push(format!("{name}: safe areas are read in safe-area.css alone"));
        }
    }
}

/// Whatever the XML names is there.
fn resources(project: &Project, faults: &mut Vec<String>) {
    let xml = |folder| project.below(folder, &[".xml"]);
    let folder = format!("{RES}/values/");
    let values: String = project.below(&folder, &[".xml"]).map(|(_, text)| text).collect();
    for (name, text) in xml("src-tauri/gen/android/app/src/main/") {
        for word in
            text.split('"').flat_map(|part| part.split(['<', '>'])).filter(|part| part.starts_with('@'))
        {
            let (kind, id) = word.trim_start_matches('@').split_once('/').unwrap_or((word, ""));
            let there = match kind {
                "xml" => xml(RES).any(|(file, _)| file == format!("{RES}/xml/{id}.xml")),
                "mipmap" => {
                    let drawn = project.pictures.keys().any(|file| file.ends_with(&format!("/{id}.png")));
                    drawn || xml(RES).any(|(file, _)| file.ends_with(&format!("-anydpi-v26/{id}.xml")))
                }
                _ => values.contains(&format!("<{kind} name=\"{id}\"")),
            };
            if !there {
                faults.push(format!("{name}: {kind}/{id} is nowhere"));
            }
        }
    }
}
