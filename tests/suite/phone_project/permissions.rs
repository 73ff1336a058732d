//! What the phones are asked for, against what the code uses.

use super::files::Project;
use super::{DEVICE_MANIFEST, MANIFEST, PLIST};

/// A permission, query or key, and the words in the code that need it; blanks in the code do not count.
/// Sources: the Android and WebKit pages on each interface, as gathered in wry 0.57.1 and tauri 2.12.5.
const ANDROID: [(&str, &[&str]); 7] = [
    // Pages of the app itself are asked for at an address of its own, http://tauri.localhost.
    ("INTERNET", &["\"frontendDist\""]),
    ("VIBRATE", &["VibrationEffect"]),
    // The camera input opens another app, which needs none; a manifest that names it makes wry ask.
    ("CAMERA", &["getUserMedia({video", "android.hardware.camera2", "androidx.camera"]),
    ("RECORD_AUDIO", &["getUserMedia({audio", "AudioRecord("]),
    ("MODIFY_AUDIO_SETTINGS", &["getUserMedia({audio"]),
    ("ACCESS_FINE_LOCATION", &["navigator.geolocation"]),
    ("POST_NOTIFICATIONS", &["newNotification(", "NotificationManager"]),
];
/// An input that opens the camera (`PhotoChooser.svelte`).
const CAMERA_INPUT: &str = "capture={camera?'environment'";
const QUERIES: [(&str, &[&str]); 1] = [("android.media.action.IMAGE_CAPTURE", &[CAMERA_INPUT])];
const APPLE: [(&str, &[&str]); 5] = [
    ("NSCameraUsageDescription", &[CAMERA_INPUT, "getUserMedia({video"]),
    ("NSMicrophoneUsageDescription", &["getUserMedia({audio", "AVAudioRecorder"]),
    ("NSMotionUsageDescription", &["DeviceMotionEvent", "DeviceOrientationEvent"]),
    ("NSLocationWhenInUseUsageDescription", &["navigator.geolocation"]),
    // A picture handed to the share sheet can be put among the photos from there.
    ("NSPhotoLibraryAddUsageDescription", &["type:'image/", "UIImageWriteToSavedPhotosAlbum"]),
];

pub fn faults(project: &Project) -> Vec<String> {
    let code = code(project);
    let mut faults = Vec::new();
    let declared: Vec<String> = [MANIFEST, DEVICE_MANIFEST]
        .iter()
        .flat_map(|file| named(project.text(file), "uses-permission"))
        .collect();
    let short: Vec<&str> =
        declared.iter().map(|name| name.trim_start_matches("android.permission.")).collect();
    compare(&ANDROID, &short, &code, ["permission", "asked for"], &mut faults);
    let queries = named(project.text(DEVICE_MANIFEST), "action");
    compare(&QUERIES, &refs(&queries), &code, ["query", "asked for"], &mut faults);
    let keys = usage_texts(project.text(PLIST));
    let names: Vec<&str> = keys.iter().map(|(key, _)| key.as_str()).collect();
    compare(&APPLE, &names, &code, ["key", "given"], &mut faults);
    cameras(project, &mut faults);
    let plain = code.matches("getUserMedia(").count();
    if plain != code.matches("getUserMedia({audio").count() + code.matches("getUserMedia({video").count() {
        faults.push("say at getUserMedia itself whether it is audio or video".to_owned());
    }
    faults
}

fn compare(
    rows: &[(&str, &[&str])],
    declared: &[&str],
    code: &str,
    [kind, said]: [&str; 2],
    to: &mut Vec<String>,
) {
    for (name, words) in rows {
        let used = words.iter().any(|word| code.contains(word));
        match (declared.contains(name), used) {
            (true, false) => to.push(format!("{name} is {said} and not used")),
            (false, true) => to.push(format!("{name} is used and not {said}")),
            _ => {}
        }
    }
    let unknown = declared.iter().filter(|name| rows.iter().all(|(known, _)| known != *name));
    to.extend(unknown.map(|name| format!("{name} is no {kind} that Steady knows")));
}

/// All code that could use something, without blanks.
fn code(project: &Project) -> String {
    let ui = project.below("ui/src/", &[".ts", ".svelte"]);
    let native = project.below("src-tauri/", &[".kt", ".swift", "tauri.conf.json"]);
    ui.chain(native).flat_map(|(_, text)| text.chars()).filter(|letter| !letter.is_whitespace()).collect()
}

/// `android:name` of every element of this kind.
fn named(xml: &str, tag: &str) -> Vec<String> {
    let document = roxmltree::Document::parse(xml).unwrap();
    let elements = document.descendants().filter(|node| node.has_tag_name(tag));
    elements.filter_map(|node| Some(node.attribute((super::settings::ANDROID, "name"))?.to_owned())).collect()
}

fn refs(names: &[String]) -> Vec<&str> {
    names.iter().map(String::as_str).collect()
}

/// Keys that hold a usage text, with the text.
fn usage_texts(plist: &str) -> Vec<(String, String)> {
    let options = roxmltree::ParsingOptions { allow_dtd: true, ..Default::default() };
    let document = roxmltree::Document::parse_with_options(plist, options).unwrap();
    let keys = document.descendants().filter(|node| node.has_tag_name("key"));
    let texts = keys.filter_map(|key| {
        let value = key.next_sibling_element()?.text().unwrap_or_default().to_owned();
        Some((key.text()?.to_owned(), value))
    });
    texts.filter(|(key, _)| key.ends_with("UsageDescription")).collect()
}

/// wry opens the camera only where `accept` is exactly this.
fn cameras(project: &Project, faults: &mut Vec<String>) {
    let mut seen = 0;
    for (name, text) in project.below("ui/src/", &[".svelte"]) {
        for input in text.split("<input").skip(1) {
            let input = input.split("/>").next().unwrap_or_default();
            if input.contains("capture=") {
                seen += 1;
                if !input.contains("accept=\"image/*\"") {
                    faults.push(format!("{name}: a camera input does not accept exactly image/*"));
                }
            }
        }
    }
    if seen == 0 {
        faults.push("no camera input is found".to_owned());
    }
}
