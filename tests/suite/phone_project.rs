//! The phones' projects against what the code uses: permissions, plist keys, backups, file access, icons.
//!
//! Neither project is built where the tests run, so what a build or a store would notice is looked for here.
//! Every rule is proven on a damaged copy: a permission nobody uses, a use without permission, and the rest.
//! Where a rule's words come from the platforms' documentation, the row names it.

mod files;
mod icons;
mod languages;
mod permissions;
mod settings;

use files::Project;

/// Everything that is wrong with a project, one sentence each.
fn faults(project: &Project) -> Vec<String> {
    let mut faults = permissions::faults(project);
    faults.extend(languages::faults(project));
    faults.extend(settings::faults(project));
    faults.extend(icons::faults(project));
    faults
}

#[test]
fn phone_projects_ask_for_what_the_code_uses_and_no_more() {
    if std::env::var_os("STEADY_WRITE_PHONES").is_some() {
        languages::write();
    }
    assert_eq!(faults(&Project::read()), Vec::<String>::new());
}

const MANIFEST: &str = "src-tauri/gen/android/app/src/main/AndroidManifest.xml";
const DEVICE_MANIFEST: &str = "src-tauri/device/android/src/main/AndroidManifest.xml";
const PLIST: &str = "src-tauri/Info.ios.plist";
const KOTLIN: &str = "src-tauri/device/android/src/main/java/app/steady/device/DevicePlugin.kt";
const SWIFT: &str = "src-tauri/device/ios/Sources/DevicePlugin.swift";
const GRADLE: &str = "src-tauri/gen/android/app/build.gradle.kts";
const RES: &str = "src-tauri/gen/android/app/src/main/res";
const DEVICE_TS: &str = "ui/src/device.ts";

/// Changes one file of a copy and expects a fault that holds these words.
#[track_caller]
fn check(file: &str, from: &str, to: &str, expected: &str) {
    let mut project = Project::read();
    project.change(file, from, to);
    let faults = faults(&project);
    assert!(faults.iter().any(|fault| fault.contains(expected)), "{expected:?} is not in {faults:#?}");
}

#[test]
fn permission_nobody_uses_is_a_fault() {
    let asked =
        |name: &str| format!("<uses-permission android:name=\"android.permission.{name}\" />\n    <queries>");
    for name in
        ["CAMERA", "RECORD_AUDIO", "MODIFY_AUDIO_SETTINGS", "ACCESS_FINE_LOCATION", "POST_NOTIFICATIONS"]
    {
        check(DEVICE_MANIFEST, "<queries>", &asked(name), &format!("{name} is asked for and not used"));
    }
    check(DEVICE_MANIFEST, "<queries>", &asked("READ_SMS"), "READ_SMS is no permission that Steady knows");
    check(KOTLIN, "VibrationEffect", "Buzz", "VIBRATE is asked for and not used");
    check(
        PLIST,
        "</dict>",
        "<key>NSMicrophoneUsageDescription</key><string>x</string></dict>",
        "NSMicrophoneUsageDescription is given and not used",
    );
    check(
        PLIST,
        "</dict>",
        "<key>NSContactsUsageDescription</key><string>x</string></dict>",
        "NSContactsUsageDescription is no key that Steady knows",
    );
}

#[test]
fn use_without_permission_is_a_fault() {
    check(
        DEVICE_MANIFEST,
        "android.permission.VIBRATE",
        "android.permission.INTERNET",
        "VIBRATE is used and not asked for",
    );
    check(
        MANIFEST,
        "android.permission.INTERNET",
        "android.permission.VIBRATE",
        "INTERNET is used and not asked for",
    );
    check(
        DEVICE_MANIFEST,
        "android.media.action.IMAGE_CAPTURE",
        "android.intent.action.VIEW",
        "IMAGE_CAPTURE is used and not asked for",
    );
    let listens = "\nnavigator.mediaDevices.getUserMedia({ audio: true });";
    check(DEVICE_TS, "let wanted = false;", listens, "RECORD_AUDIO is used and not asked for");
    check(DEVICE_TS, "let wanted = false;", listens, "MODIFY_AUDIO_SETTINGS is used and not asked for");
    check(DEVICE_TS, "let wanted = false;", listens, "NSMicrophoneUsageDescription is used and not given");
    let films = "\nnavigator.mediaDevices.getUserMedia({\n video: true });";
    check(DEVICE_TS, "let wanted = false;", films, "CAMERA is used and not asked for");
    check(DEVICE_TS, "let wanted = false;", "\ngetUserMedia(wishes)", "say at getUserMedia itself");
    check(
        DEVICE_TS,
        "let wanted = false;",
        "\nnew DeviceMotionEvent('x')",
        "NSMotionUsageDescription is used and not given",
    );
    check(PLIST, "NSCameraUsageDescription", "NSOther", "NSCameraUsageDescription is used and not given");
}

#[test]
fn camera_input_that_android_would_not_know_is_a_fault() {
    check(
        "ui/src/parts/PhotoChooser.svelte",
        "accept=\"image/*\"",
        "accept=\"image/jpeg\"",
        "does not accept exactly image/*",
    );
}

#[test]
fn language_that_ios_is_told_otherwise_of_is_a_fault() {
    let german = "src-tauri/ios/de.lproj/InfoPlist.strings";
    check(
        german,
        "NSCameraUsageDescription",
        "Other",
        "de.lproj/InfoPlist.strings is not what the texts say",
    );
    check(PLIST, "Steady opens", "It opens", "its English differs");
    check(PLIST, "<string>de</string>", "<string>tlh</string>", "does not list the languages");
    let mut project = Project::read();
    project.put("src-tauri/ios/tlh.lproj/InfoPlist.strings", "");
    assert_eq!(faults(&project), ["src-tauri/ios/tlh.lproj/InfoPlist.strings has no texts"]);
}

#[test]
fn clear_text_or_a_backup_of_visits_is_a_fault() {
    check(MANIFEST, "usesCleartextTraffic=\"false\"", "usesCleartextTraffic=\"true\"", "clear text");
    check(MANIFEST, "allowBackup=\"false\"", "allowBackup=\"true\"", "backups are on");
    check(MANIFEST, "@xml/backup_rules", "@xml/other_rules", "backup rules are not named");
    check(SWIFT, "isExcludedFromBackup = true", "isExcludedFromBackup = false", "iOS backs the visits up");
    check(SWIFT, ".applicationSupportDirectory", ".documentDirectory", "iOS backs the visits up");
    check(
        &format!("{RES}/xml/backup_rules.xml"),
        "domain=\"file\"",
        "domain=\"x\"",
        "full-backup-content lets file out",
    );
    check(
        &format!("{RES}/xml/data_extraction_rules.xml"),
        "<cloud-backup>",
        "<cloud-backup><!-- --><include domain=\"file\" path=\".\" />",
        "cloud-backup includes",
    );
}

#[test]
fn wider_file_access_than_needed_is_a_fault() {
    let paths = format!("{RES}/xml/file_paths.xml");
    check(&paths, "path=\"outbox/\"", "path=\".\"", "hands out");
    check(&paths, "<external-files-path", "<external-path", "hands out");
    check(MANIFEST, "android:exported=\"false\"", "android:exported=\"true\"", "the provider is open");
    check(
        "src-tauri/device/src/lib.rs",
        "OUTBOX: &str = \"outbox\"",
        "OUTBOX: &str = \"inbox\"",
        "hands out",
    );
}

#[test]
fn names_and_versions_that_disagree_are_faults() {
    check(GRADLE, "minSdk = 26", "minSdk = 24", "minSdk");
    check("src-tauri/tauri.conf.json", "\"minSdkVersion\": 26", "\"minSdkVersion\": 24", "minSdkVersion");
    check("src-tauri/tauri.conf.json", "\"15.0\"", "\"14.0\"", "minimumSystemVersion");
    check("src-tauri/device/ios/Package.swift", ".v15", ".v14", ".iOS(.v15)");
    check(GRADLE, "applicationId = \"app.steady.bay\"", "applicationId = \"app.other\"", "applicationId");
    check(&format!("{RES}/values/strings.xml"), ">Steady<", ">Other<", "app_name");
    check(MANIFEST, "@style/Theme.Steady", "@style/Theme.Other", "style/Theme.Other is nowhere");
}

#[test]
fn command_that_a_phone_does_not_know_is_a_fault() {
    check(KOTLIN, "fun stayAwake(invoke", "fun awake(invoke", "Kotlin does not know stayAwake");
    check(SWIFT, "func feel(_ invoke", "func felt(_ invoke", "Swift does not know feel");
    check("src-tauri/device/permissions/default.toml", "  \"allow-leave\",\n", "", "allow-leave");
    check(DEVICE_TS, "tell('leave'", "tell('quit'", "the screens ask the device for quit");
}

#[test]
fn page_under_the_system_bars_is_a_fault() {
    check("ui/index.html", "viewport-fit=cover", "x", "viewport-fit");
    check(
        "ui/src/base.css",
        "box-sizing: border-box;",
        "box-sizing: border-box; left: env(safe-area-inset-left);",
        "safe-area.css alone",
    );
    check(
        "src-tauri/gen/android/app/src/main/java/app/steady/bay/MainActivity.kt",
        "enableEdgeToEdge()",
        "",
        "edge to edge",
    );
    check("ui/src/device.ts", "'back-button'", "'x'", "Back button");
}

#[test]
fn missing_or_missized_icon_is_a_fault() {
    let mut project = Project::read();
    let mdpi = format!("{RES}/mipmap-mdpi/ic_launcher_foreground.png");
    project.pictures.insert(mdpi.clone(), icons::Picture { width: 48, height: 48, alpha: true });
    let ios = "icons/ios/AppIcon-60x60@3x.png".to_owned();
    project.pictures.remove(&ios);
    let store = "icons/ios/AppIcon-1024x1024@1x.png".to_owned();
    project.pictures.insert(store.clone(), icons::Picture { width: 1024, height: 1024, alpha: true });
    let faults = faults(&project);
    for expected in [format!("{mdpi} is 48x48"), format!("{ios} is missing"), format!("{store} has an alpha")]
    {
        assert!(faults.iter().any(|fault| fault.contains(&expected)), "{expected:?} is not in {faults:#?}");
    }
}
