//! QR codes (ISO/IEC 18004) that another device takes over from the screen with no network between them: the short
//! text, and this device's key.
//!
//! A code announces UTF-8 where a text needs it (ECI 26), for 12 bits: the standard's default is ISO 8859-1, and
//! readers that guess differ. ZXing and rqrr read every code of the comparison, OpenCV, which knows no ECI, 14 of 16
//! (`tests/reference/qr.json`).

use std::fmt::Write;

use qrcodegen::{DataTooLong, QrCode as Code, QrCodeEcc, QrSegment};

use super::fault::Fault;
use super::papers;
use super::response::{QrCode, Response};
use super::steady::Inner;
use crate::signing::key::PublicKey;

/// Light modules all round, ISO/IEC 18004, 9.1.
const QUIET_ZONE: i32 = 4;
/// The number under which a reader is told that bytes are UTF-8 (AIM ECI assignment 26). Without it they are
/// ISO 8859-1 by the standard, and names beyond that arrive mangled.
const UTF_8: u32 = 26;
/// What a device's code begins with; its key follows in capitals, which take the least room (ISO/IEC 18004, 7.4.4).
const DEVICE: &str = "STEADY DEVICE 1 ";
/// What a visit's code begins with; its id follows in capitals.
const VISIT: &str = "STEADY VISIT 1 ";

pub(super) fn short_text(inner: &mut Inner, visit: &str, locale: &str) -> Result<Response, Fault> {
    let text = papers::written_note(inner, visit, locale)?.short_text;
    let code = encode(&text)
        .map_err(|_| Fault::Internal("the short text is longer than a code holds".to_owned()))?;
    Ok(Response::QrCode(drawn(&code, text)))
}

/// This device's key, for another device to scan: the whole of it, where two people compare digits made from it.
pub(super) fn device(inner: &Inner) -> Result<Response, Fault> {
    let text = format!("{DEVICE}{}", inner.writer.device.to_ascii_uppercase());
    let code = encode(&text).map_err(|_| Fault::Internal("a key is longer than a code holds".to_owned()))?;
    Ok(Response::QrCode(drawn(&code, text)))
}

/// The code of a visit for a paper, row by row, with its light rim.
pub(super) fn visit(visit: &str) -> Result<Vec<String>, Fault> {
    let code = encode(&format!("{VISIT}{}", visit.to_ascii_uppercase()))
        .map_err(|_| Fault::Internal("a visit's id is longer than a code holds".to_owned()))?;
    let span = -QUIET_ZONE..code.size() + QUIET_ZONE;
    let row = |y: i32| span.clone().map(|x| if code.get_module(x, y) { '1' } else { '0' }).collect();
    Ok(span.clone().map(row).collect())
}

/// The visit in the text of a paper's code.
pub(super) fn scanned_visit(text: &str) -> Option<String> {
    Some(text.trim().strip_prefix(VISIT)?.trim().to_ascii_lowercase())
}

/// The key in the text of a device's QR code.
pub(super) fn scanned(text: &str) -> Option<PublicKey> {
    PublicKey::from_hex(&text.strip_prefix(DEVICE)?.to_ascii_lowercase())
}

/// The smallest code that holds the text, with as much correction as that size has room for.
fn encode(text: &str) -> Result<Code, DataTooLong> {
    let segments = match (text.is_ascii(), QrSegment::is_alphanumeric(text)) {
        (_, true) => QrSegment::make_segments(text),
        (true, false) => vec![QrSegment::make_bytes(text.as_bytes())],
        (false, false) => vec![QrSegment::make_eci(UTF_8), QrSegment::make_bytes(text.as_bytes())],
    };
    Code::encode_segments(&segments, QrCodeEcc::Low)
}

/// Runs of dark modules in a row become one rectangle each.
fn drawn(code: &Code, text: String) -> QrCode {
    let size = code.size();
    let mut path = String::new();
    for y in 0..size {
        let mut x = 0;
        while x < size {
            let length = (x..size).take_while(|x| code.get_module(*x, y)).count();
            let run = i32::try_from(length).unwrap_or(0);
            if run > 0 {
                // Writing to a string cannot fail.
                let _ = write!(path, "M{},{}h{run}v1h-{run}z", x + QUIET_ZONE, y + QUIET_ZONE);
            }
            x += run.max(1);
        }
    }
    QrCode { side: u32::try_from(size + 2 * QUIET_ZONE).unwrap_or(0), path, text }
}
