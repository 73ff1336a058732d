//! A device's key as a QR code: one device shows it, another photographs it, and only the key that was shown is
//! confirmed. And a phone that was lost: whoever takes its place from its backup says so once.

use std::io::Cursor;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use image::{GrayImage, ImageFormat, Luma, imageops};
use serde_json::json;
use steady_core::app::Steady;
use steady_core::app::devices::DeviceList;
use steady_core::app::request::Request;
use steady_core::app::response::{QrCode, Response};
use steady_core::model::device::Trust;

use crate::backup_files::{fetched, sent};
use crate::handover::{exported, rigid};
use crate::qr::{modules, read_back};
use crate::support::{ask, code, scratch};

const UPLOAD: &str = "0191d2f0-0000-7000-8000-0000000000bb";

fn shown(steady: &Steady) -> QrCode {
    let Response::QrCode(qr_code) = steady.handle(Request::DeviceQr).unwrap() else { panic!("no code") };
    qr_code
}

fn devices(steady: &Steady) -> DeviceList {
    let Response::Devices(list) = steady.handle(Request::Devices).unwrap() else { panic!("no list") };
    *list
}

/// A photo of a screen: the code with some grey around it, a little out of focus.
fn photographed(qr_code: &QrCode) -> Vec<u8> {
    let dark = modules(qr_code);
    let (dots, margin) = (9, 140);
    let side = dark.len() * dots + 2 * margin;
    let shade = |x: u32, y: u32| {
        let at = |place: u32| (place as usize).checked_sub(margin).map(|place| place / dots);
        let module = at(y).zip(at(x)).and_then(|(row, column)| dark.get(row)?.get(column));
        Luma([module.map_or(90, |dark| if *dark { 25 } else { 215 })])
    };
    let side = u32::try_from(side).unwrap();
    let picture = imageops::blur(&GrayImage::from_fn(side, side, shade), 1.2);
    let mut jpeg = Vec::new();
    picture.write_to(&mut Cursor::new(&mut jpeg), ImageFormat::Jpeg).unwrap();
    jpeg
}

/// Sends a photo and has a device confirmed by it: `ok` or a code.
fn confirmed(steady: &Steady, device: &str, photo: &[u8]) -> String {
    for (index, piece) in photo.chunks(256 * 1024).enumerate() {
        let base64 = STANDARD.encode(piece);
        let piece = json!({ "ask": "upload", "upload": UPLOAD, "index": index, "base64": base64 });
        assert_eq!(code(steady, piece), "ok");
    }
    code(steady, json!({ "ask": "confirm-device-by-photo", "device": device, "upload": UPLOAD }))
}

fn doubts(steady: &Steady) -> Vec<Option<Trust>> {
    let all = Request::Visits { search: String::new(), after: None };
    let Response::Visits(page) = steady.handle(all).unwrap() else { panic!("no list") };
    page.visits.iter().map(|card| card.from).collect()
}

#[test]
fn a_second_library_reads_the_whole_key() {
    let (_folder, steady) = scratch();
    let key = devices(&steady).own.device;
    assert_eq!(read_back(&modules(&shown(&steady))), format!("STEADY DEVICE 1 {}", key.to_uppercase()));
}

#[test]
fn a_device_is_confirmed_by_a_photo_of_its_own_code_alone() {
    let ((_a, writer), (_b, other), (_c, here)) = (scratch(), scratch(), scratch());
    let visit = rigid(&writer, "TR 4417");
    here.import(&mut &exported(&writer, &[&visit])[..]).unwrap();
    let device = devices(&writer).own.device;
    let stand = || devices(&here).devices[0].trust;
    assert_eq!(confirmed(&here, &device, &photographed(&shown(&other))), "code-differs");
    let nothing = GrayImage::from_pixel(640, 480, Luma([128]));
    let mut jpeg = Vec::new();
    nothing.write_to(&mut Cursor::new(&mut jpeg), ImageFormat::Jpeg).unwrap();
    assert_eq!(confirmed(&here, &device, &jpeg), "no-device-in-photo");
    assert_eq!(confirmed(&here, &device, b"no picture"), "photo-not-an-image");
    assert_eq!(stand(), Trust::NotConfirmed);
    assert_eq!(doubts(&here), [Some(Trust::NotConfirmed)]);
    assert_eq!(confirmed(&here, &device, &photographed(&shown(&writer))), "ok");
    assert_eq!((stand(), doubts(&here)), (Trust::Confirmed, vec![None]));
    let again = json!({ "ask": "confirm-device-by-photo", "device": device, "upload": UPLOAD });
    assert_eq!(code(&here, again), "upload-unknown", "the photo is not kept");
}

/// A lost phone can show its code to nobody. Whoever has its backup says that this device took its place: what it
/// wrote is its own, and what comes in its name from now on stays outside.
#[test]
fn a_restored_phones_own_visits_are_its_own() {
    let ((_a, lost), (_b, here)) = (scratch(), scratch());
    let visit = rigid(&lost, "TR 4417");
    sent(&here, &fetched(&lost).1).unwrap();
    assert_eq!(doubts(&here), [Some(Trust::NotConfirmed)]);
    let device = devices(&lost).own.device;
    let own = devices(&here).own.device;
    assert_eq!(code(&here, json!({ "ask": "take-over-device", "device": own })), "unknown-device");
    assert_eq!(code(&here, json!({ "ask": "take-over-device", "device": device })), "ok");
    assert_eq!(doubts(&here), [None]);
    let list = devices(&here);
    assert_eq!((list.devices[0].trust, list.devices[0].confirmed), (Trust::Retired, true));
    let decided: Vec<&str> = list.decided.iter().map(|one| one.what.as_str()).collect();
    assert_eq!(decided, ["confirmed", "retired"]);
    let Response::Note(note) =
        here.handle(Request::Note { visit: visit.clone(), locale: "en".to_owned() }).unwrap()
    else {
        panic!("no note")
    };
    let said = serde_json::to_string(&note).unwrap();
    assert!(!said.contains("not confirmed as ours"), "{said}");
    ask(&lost, json!({ "ask": "answer", "visit": visit, "step": "play-vertical", "value": "felt" }));
    let more = exported(&lost, &[&visit]);
    assert_eq!(here.import(&mut &more[..]).unwrap_err().code, "handover-retired");
    // Whoever starts over with it has confirmed nothing any more.
    assert_eq!(code(&here, json!({ "ask": "reset-device", "device": device })), "ok");
    assert_eq!(doubts(&here), [Some(Trust::NotConfirmed)]);
}
