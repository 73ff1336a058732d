//! A corpus of hostile handover files, made anew at each run: names that would escape, manifests that lie,
//! ledgers that are none, pictures that carry more, and zips with something wrong around honest parts.

use std::io::Write;

use serde_json::{Value, json};
use steady_core::model::entry::EntryBody;

use crate::handover::exported;
use crate::handover_files::{
    Entry, entries, hex, ledger, line, sealed, sha256, signed, small_visit, stranger, zip,
};
use crate::support::scratch;

/// What each file is, its bytes, and the code it must be refused under.
pub type Corpus = Vec<(String, Vec<u8>, &'static str)>;

/// An honest file with a visit and a photo.
pub fn honest() -> Vec<u8> {
    let (_folder, steady) = scratch();
    let visit = small_visit(&steady, "TR 4417");
    exported(&steady, &[&visit])
}

pub const VISIT: &str = "0191d2f0-0000-7000-8000-0000000000ff";

/// A stranger's visit of one line.
pub fn strangers_parts() -> Vec<(String, Vec<u8>)> {
    vec![strangers_ledger(&[])]
}

fn opened() -> String {
    let intake = json!({ "vehicle": { "layout": "torque-tube" } });
    spelled(&json!({ "kind": "opened", "intake": intake, "knowledge": "1", "by": "Robin Demo" }))
}

/// A body in the one spelling it has; what is no entry as it is.
pub fn spelled(body: &Value) -> String {
    serde_json::from_value::<EntryBody>(body.clone())
        .map_or_else(|_| body.to_string(), |body| serde_json::to_string(&body).unwrap())
}

/// A ledger that opens a visit and goes on with these bodies.
fn strangers_ledger(bodies: &[Value]) -> (String, Vec<u8>) {
    let mut prev = "0".repeat(64);
    let mut lines = vec![line(VISIT, &stranger(), 1, &mut prev, &opened())];
    for (seq, body) in (2..).zip(bodies) {
        lines.push(line(VISIT, &stranger(), seq, &mut prev, &spelled(body)));
    }
    ledger(VISIT, &lines)
}

fn kept(sha256: &str) -> Value {
    let photo =
        json!({ "sha256": sha256, "original_sha256": sha256, "width": 1, "height": 1, "taken": null });
    json!({ "kind": "photo-kept", "step": "shield-and-mounts", "photo": photo, "by": "Robin Demo" })
}

/// Every hostile file: what it is, its bytes, and the code it must be refused under.
pub fn corpus() -> Corpus {
    let kinds =
        [names_gone_wrong, manifests_gone_wrong, ledgers_gone_wrong, photos_gone_wrong, zips_gone_wrong];
    kinds.iter().flat_map(|kind| kind()).collect()
}

/// Signed files that name what no visit has.
fn names_gone_wrong() -> Corpus {
    let mut found = Corpus::new();
    let mut add = |what: &str, entries: Vec<Entry>, code| found.push((what.to_owned(), zip(&entries), code));
    let parts = strangers_parts();
    for name in [
        "/etc/passwd",
        "../steady.db",
        "visits/../../steady.db",
        "photos/..\\..\\steady.db",
        "C:\\steady.db",
        "visits/0191D2F0-0000-7000-8000-0000000000FF.jsonl",
        "visits/0191d2f0-0000-7000-8000-0000000000ff.jsonl/",
        "visits//0191d2f0-0000-7000-8000-0000000000ff.jsonl",
        "visits/0191d2f0-0000-7000-8000-0000000000ff.jsonl\0.txt",
        "visits/CON.jsonl",
        "papers/.hidden.pdf",
        "papers/a.sh",
        "papers/nested.zip",
        "steady.db",
        "",
        "photos/\u{202e}gpj.exe",
    ] {
        let named = vec![(name.to_owned(), parts[0].1.clone())];
        add(&format!("a part named {name:?}"), sealed(&named, |_| {}), "handover-part-name");
    }
    let long = (format!("papers/{}.pdf", "a".repeat(5_000)), vec![1]);
    add("a very long name", sealed(&[long], |_| {}), "handover-part-name");
    add("one name twice", sealed(&[parts[0].clone(), parts[0].clone()], |_| {}), "handover-part-name");
    let papers = |name: &str| (format!("papers/{name}.pdf"), vec![1]);
    add("parts out of order", sealed(&[papers("b"), papers("a")], |_| {}), "handover-part-name");
    add("a ledger after papers", sealed(&[papers("a"), parts[0].clone()], |_| {}), "handover-part-name");
    found
}

/// Signed files whose manifest says what cannot be.
fn manifests_gone_wrong() -> Corpus {
    let mut found = Corpus::new();
    let mut add = |what: &str, entries: Vec<Entry>, code| found.push((what.to_owned(), zip(&entries), code));
    let parts = strangers_parts();
    let change = |pointer: &'static str, value: Value| {
        move |manifest: &mut Value| *manifest.pointer_mut(pointer).unwrap() = value
    };
    for (what, pointer, value, code) in [
        ("another format", "/format", json!("other"), "handover-unknown"),
        ("a later version", "/version", json!(3), "handover-newer"),
        ("the version without signatures", "/version", json!(1), "handover-before-signatures"),
        ("the last version there can be", "/version", json!(u32::MAX), "handover-newer"),
        ("version 0", "/version", json!(0), "handover-unknown"),
        ("a version beyond numbers", "/version", json!(1e300), "handover-unknown"),
        ("no device", "/device", json!(""), "handover-unknown"),
        ("a device that is a path", "/device", json!("../../x"), "handover-unknown"),
        ("a weak key", "/device", json!(format!("01{}", "00".repeat(31))), "handover-unknown"),
        ("a key that nobody made", "/device", json!("f".repeat(64)), "handover-signature"),
        ("another key", "/device", json!(hex(&[9; 32])), "handover-signature"),
        (
            "a device of before signatures",
            "/device",
            json!("0191d2f0-0000-7000-8000-00000000000a"),
            "handover-unknown",
        ),
        ("parts that are no list", "/parts", json!(7), "handover-unknown"),
        ("a part without end", "/parts/0/bytes", json!(u64::MAX), "handover-too-large"),
        ("a part of 16 MiB and one", "/parts/0/bytes", json!(16 * 1024 * 1024 + 1), "handover-too-large"),
        ("a part of less than nothing", "/parts/0/bytes", json!(-1), "handover-unknown"),
        ("a part one byte short", "/parts/0/bytes", json!(parts[0].1.len() - 1), "handover-changed"),
        ("a part one byte long", "/parts/0/bytes", json!(parts[0].1.len() + 1), "handover-changed"),
        ("a sum that is none", "/parts/0/sha256", json!("x"), "handover-changed"),
        ("another sum", "/parts/0/sha256", json!("0".repeat(64)), "handover-changed"),
        ("a missing photo that is a path", "/missing", json!(["../x"]), "handover-unknown"),
    ] {
        add(what, sealed(&parts, change(pointer, value)), code);
    }
    add("a field more", sealed(&parts, |manifest| manifest["more"] = json!(1)), "handover-unknown");
    let many =
        |manifest: &mut Value| manifest["parts"] = Value::Array(vec![manifest["parts"][0].clone(); 60_001]);
    add("60,001 parts", sealed(&parts, many), "handover-too-large");
    let huge = |manifest: &mut Value| {
        let part = |number: usize| json!({ "name": format!("papers/p{number:05}.pdf"), "bytes": 32 * 1024 * 1024, "sha256": "0".repeat(64) });
        manifest["parts"] = (0..200).map(part).collect();
    };
    add("parts of 6 GB together", sealed(&parts, huge), "handover-too-large");
    let deep =
        |manifest: &mut Value| manifest["made_by"] = (0..100).fold(json!(1), |inner, _| json!([inner]));
    add("a nested manifest", sealed(&parts, deep), "handover-unknown");

    found
}

/// Signed files whose ledger is none.
fn ledgers_gone_wrong() -> Corpus {
    let mut found = Corpus::new();
    let mut add = |what: &str, entries: Vec<Entry>, code| found.push((what.to_owned(), zip(&entries), code));
    let parts = strangers_parts();
    let mut ledgers = |what: &str, part: (String, Vec<u8>), code| add(what, sealed(&[part], |_| {}), code);
    let name = format!("visits/{VISIT}.jsonl");
    let text = String::from_utf8(parts[0].1.clone()).unwrap();
    for (what, bytes, code) in [
        ("an empty ledger", String::new(), "handover-chain"),
        ("a blank line", "\n".to_owned(), "handover-chain"),
        ("no JSON", "not JSON\n".to_owned(), "handover-chain"),
        ("a line without its end", text.trim_end().to_owned(), "handover-chain"),
        ("a line twice", text.repeat(2), "handover-chain"),
        (
            "a line of another visit",
            text.replace(VISIT, "0191d2f0-0000-7000-8000-00000000000a"),
            "handover-chain",
        ),
        ("a line that starts at 2", text.replace("\"seq\":1", "\"seq\":2"), "handover-chain"),
        ("a line with another time", text.replace("\"at\":1", "\"at\":2"), "handover-chain"),
        ("a line with a field more", text.replace("\"seq\":1", "\"more\":1,\"seq\":1"), "handover-chain"),
        ("a place beyond numbers", text.replace("\"seq\":1", "\"seq\":1e99"), "handover-chain"),
        ("an open bracket 100,000 deep", format!("{}\n", "[".repeat(100_000)), "handover-chain"),
    ] {
        ledgers(what, (name.clone(), bytes.into_bytes()), code);
    }
    ledgers("bytes that are no text", (name.clone(), vec![0xff; 100]), "handover-chain");
    ledgers(
        "an entry of a later kind",
        strangers_ledger(&[json!({ "kind": "foretold", "by": "x" })]),
        "handover-newer",
    );
    let odd = json!({ "kind": "part-left", "set": "lift", "by": "x", "mood": "good" });
    ledgers("a known entry with a field more", strangers_ledger(&[odd]), "handover-newer");
    ledgers("an entry without a kind", strangers_ledger(&[json!({ "by": "x" })]), "handover-chain");
    ledgers("an entry that is a number", strangers_ledger(&[json!(7)]), "handover-chain");
    for (field, length) in [("plate", 201), ("label", 1_000_000), ("vin", 300)] {
        let vehicle = json!({ "layout": "torque-tube", field: "x".repeat(length) });
        let long = json!({ "kind": "amended", "intake": { "vehicle": vehicle }, "by": "x" });
        ledgers(&format!("a {field} of {length} letters"), strangers_ledger(&[long]), "handover-beyond");
    }
    let endless = "x".repeat(100_000);
    let received = |name: &str, points: usize| {
        json!({ "kind": "received", "receipt": { "decision": "decline", "name": name, "note_sha256": "0", "locale": "en",
            "strokes": [vec![[0.5, 0.5]; points]] } })
    };
    let outcome = |probability: f64| {
        json!({ "kind": "outcome-confirmed", "outcome": { "causes": [], "layout": "torque-tube", "signs": {},
            "sorted": { "misfire": probability }, "knowledge": "1" }, "by": "x" })
    };
    for (what, body) in [
        (
            "an answer with an endless reason",
            json!({ "kind": "answered", "step": "play-vertical", "value": "none", "reason": endless, "by": "x" }),
        ),
        (
            "an undo with an endless reason",
            json!({ "kind": "withdrawn", "entry": "0", "reason": endless, "by": "x" }),
        ),
        ("a receipt with an endless name", received(&endless, 2)),
        (
            "an entry by somebody with an endless name",
            json!({ "kind": "part-left", "set": "lift", "by": endless }),
        ),
        (
            "an opinion on an endless cause",
            json!({ "kind": "opinion-given", "cause": endless, "reason": "x", "by": "x" }),
        ),
        ("a signature of 20,001 points", received("", 20_001)),
        ("a signature of 1,001 strokes of nothing", {
            let mut received = received("", 2);
            received["receipt"]["strokes"] = json!(vec![Vec::<[f32; 2]>::new(); 1_001]);
            received
        }),
        ("a probability above one", outcome(1.5)),
        ("a probability below nothing", outcome(-0.5)),
    ] {
        ledgers(what, strangers_ledger(&[body]), "handover-beyond");
    }
    let dot = json!({ "shape": "freehand", "points": vec![[0.5, 0.5]; 10_000] });
    let off = json!({ "shape": "arrow", "from": [-7.0, 0.5], "to": [0.5, 1e30] });
    let long = json!({ "shape": "label", "at": [0.5, 0.5], "text": "W".repeat(10_000) });
    let turned = json!({ "shape": "label", "at": [0.5, 0.5], "text": "fine\u{202E}" });
    for (what, marks) in [
        ("a mark of 10,000 spots", vec![dot]),
        ("a mark off its picture", vec![off.clone()]),
        ("a mark of 10,000 letters", vec![long]),
        ("a mark that turns the reading direction", vec![turned]),
        ("10,000 marks", vec![off; 10_000]),
    ] {
        let marked = json!({ "kind": "photo-marked", "step": "housing-look", "photo": "0", "marks": marks, "by": "x" });
        ledgers(what, strangers_ledger(&[marked]), "handover-beyond");
    }
    let answered = |_| json!({ "kind": "answered", "step": "play-vertical", "value": "none", "by": "x" });
    ledgers(
        "21 answers to a step that all stand",
        strangers_ledger(&(0..21).map(answered).collect::<Vec<_>>()),
        "handover-beyond",
    );
    let left = json!({ "kind": "part-left", "set": "lift", "by": "x" });
    ledgers("5,001 entries", strangers_ledger(&vec![left.clone(); 5_000]), "handover-beyond");
    for (what, body) in [
        ("blanks", spelled(&left).replace(':', ": ")),
        ("a letter by its number", spelled(&left).replace("lift", "l\\u0069ft")),
        ("its fields in another order", r#"{"set":"lift","kind":"part-left","by":"x"}"#.to_owned()),
        (
            "a nothing that need not be said",
            r#"{"kind":"withdrawn","entry":"","reason":null,"by":"x"}"#.to_owned(),
        ),
        ("a number of many digits", spelled(&answered(0)).replace("\"none\"", "0.50")),
    ] {
        let mut prev = "0".repeat(64);
        let lines = [
            line(VISIT, &stranger(), 1, &mut prev, &opened()),
            line(VISIT, &stranger(), 2, &mut prev, &body),
        ];
        ledgers(&format!("an entry spelled with {what}"), ledger(VISIT, &lines), "handover-spelling");
    }
    let mut prev = "0".repeat(64);
    let forged = line(VISIT, &stranger(), 1, &mut prev, &opened());
    for (field, value) in [
        ("device", json!("")),
        ("device", json!("a\nb")),
        ("device", json!("d".repeat(65))),
        ("hash", json!("0".repeat(64))),
        ("prev", json!("1".repeat(64))),
        ("body", json!(opened().replace("torque", "other"))),
    ] {
        let mut line = forged.clone();
        line[field] = value;
        ledgers(&format!("a line with another {field}"), ledger(VISIT, &[line]), "handover-chain");
    }
    for (what, at) in [("before 1970", -1_i64), ("after the year 9999", 253_402_300_800_000)] {
        let (body, device) = (opened(), stranger());
        let zero = "0".repeat(64);
        let hash = sha256(format!("steady entry 1\n{VISIT}\n{device}\n1\n{at}\n{zero}\n{body}").as_bytes());
        let line = json!({ "visit": VISIT, "device": device, "seq": 1, "at": at, "prev": zero, "hash": hash, "body": body });
        ledgers(&format!("a line {what}"), ledger(VISIT, &[signed(line)]), "handover-chain");
    }
    found
}

/// A picture as intake would write it, and the same with something wrong.
fn photos_gone_wrong() -> Corpus {
    let file = honest();
    let good = entries(&file).into_iter().find(|entry| entry.name.ends_with(b".thumb.jpg")).unwrap().data;
    let tagged = |marker: u8, text: &[u8]| {
        let length = u16::try_from(text.len() + 2).unwrap().to_be_bytes();
        [&good[..2], &[0xff, marker], &length, text, &good[2..]].concat()
    };
    let sized = |height: u16, width: u16| {
        let mut bytes = good.clone();
        let at = bytes.windows(2).position(|pair| pair == [0xff, 0xc0]).unwrap() + 5;
        bytes[at..at + 2].copy_from_slice(&height.to_be_bytes());
        bytes[at + 2..at + 4].copy_from_slice(&width.to_be_bytes());
        bytes
    };
    let mut wrong: Vec<(&str, Vec<u8>)> = vec![
        ("no picture", b"not a picture".to_vec()),
        ("nothing", Vec::new()),
        ("a page of the web", b"<script>alert(1)</script>".to_vec()),
        ("a drawing with a script", b"<svg onload=\"x\"/>".to_vec()),
        ("a picture with a place in it", tagged(0xe1, b"Exif\0\0MM\0\x2a\0\0\0\x08\0\x01\x88\x25")),
        ("a picture with a comment", tagged(0xfe, b"Kim lives at")),
        ("a picture with a maker's note", tagged(0xed, b"Photoshop 3.0\0")),
        ("a picture with a zip behind it", [&good[..], &file].concat()),
        ("a picture cut short", good[..good.len() / 2].to_vec()),
        ("a picture that claims 65,535 a side", sized(65_535, 65_535)),
        ("a picture that claims 2,561 high", sized(2_561, 16)),
        ("a picture of no width", sized(16, 0)),
        ("a picture with restarts", {
            let at = good.windows(2).position(|pair| pair == [0xff, 0xc0]).unwrap();
            [&good[..at], &[0xff, 0xdd, 0, 4, 0, 1], &good[at..]].concat()
        }),
        ("a picture of 200,000 scans", {
            let at = good.windows(2).position(|pair| pair == [0xff, 0xda]).unwrap();
            let scan = [&good[at..at + 14], &[0x5a]].concat();
            [&good[..good.len() - 2], &scan.repeat(200_000), &[0xff, 0xd9]].concat()
        }),
        ("a picture that is coded coarse to fine", {
            let mut bytes = good.clone();
            let at = bytes.windows(2).position(|pair| pair == [0xff, 0xc0]).unwrap();
            bytes[at + 1] = 0xc2;
            bytes
        }),
        ("a picture with five tables", {
            let at = good.windows(2).position(|pair| pair == [0xff, 0xdb]).unwrap();
            [&good[..at], &good[at..at + 69].repeat(4), &good[at..]].concat()
        }),
        ("a picture with a frame type of its own", {
            let mut bytes = good.clone();
            let at = bytes.windows(2).position(|pair| pair == [0xff, 0xc0]).unwrap();
            bytes[at + 1] = 0xc9;
            bytes
        }),
    ];
    let mut found = Vec::new();
    for (what, bytes) in wrong.drain(..) {
        let sum = sha256(&bytes);
        let parts = [
            strangers_ledger(&[kept(&sum)]),
            (format!("photos/{sum}.jpg"), bytes),
            (format!("photos/{sum}.thumb.jpg"), good.clone()),
        ];
        found.push((what.to_owned(), zip(&sealed(&parts, |_| {})), "handover-photo"));
    }
    let sum = sha256(&good);
    let full = (format!("photos/{sum}.jpg"), good.clone());
    let thumb = (format!("photos/{sum}.thumb.jpg"), good.clone());
    let other = (format!("photos/{}.jpg", "0".repeat(64)), good);
    let named = strangers_ledger(&[kept(&sum)]);
    let plain = strangers_ledger(&[]);
    for (what, parts, code) in [
        ("a photo that nothing names", vec![plain, full.clone(), thumb.clone()], "handover-part-extra"),
        ("a photo without its thumbnail", vec![named.clone(), full.clone()], "handover-part-missing"),
        ("a thumbnail without its photo", vec![named.clone(), thumb.clone()], "handover-part-missing"),
        ("a photo under another's name", vec![named.clone(), other, thumb], "handover-changed"),
        ("a named photo that is not there", vec![named], "handover-part-missing"),
    ] {
        found.push((what.to_owned(), zip(&sealed(&parts, |_| {})), code));
    }
    found
}

/// Zips with something wrong around honest parts.
fn zips_gone_wrong() -> Corpus {
    let mut found = Corpus::new();
    let whole = sealed(&strangers_parts(), |_| {});
    let mut add = |what: &str, change: &dyn Fn(&mut Vec<Entry>), code| {
        let mut entries = whole.clone();
        change(&mut entries);
        found.push((what.to_owned(), zip(&entries), code));
    };
    for (index, name) in ["the manifest", "the signature", "the ledger"].into_iter().enumerate() {
        let unlike = ["handover-unknown", "handover-changed", "handover-part-missing"][index];
        let other_name = ["handover-unknown", "handover-changed", "handover-part-extra"][index];
        let twice = ["handover-changed", "handover-part-extra", "handover-part-extra"][index];
        let empty = ["handover-unknown", "handover-changed", "handover-changed"][index];
        let add = &mut add;
        let mut entry = |what: &str, change: &dyn Fn(&mut Entry), code| {
            add(&format!("{name} {what}"), &|entries: &mut Vec<Entry>| change(&mut entries[index]), code);
        };
        entry("compressed", &deflate, "handover-changed");
        entry("encrypted", &|entry| entry.flags = 1, "handover-changed");
        entry("with its length behind it", &|entry| entry.flags = 8, "handover-changed");
        entry("with a date", &|entry| entry.date = 0x5b79, "handover-changed");
        entry("with an extra field", &|entry| entry.extra = vec![0; 8], "handover-changed");
        entry("as a symbolic link", &|entry| entry.attributes = 0o120_777 << 16, "handover-changed");
        entry("as a folder", &|entry| entry.attributes = 0o040_755 << 16, "handover-changed");
        entry("that claims 4 GB", &|entry| entry.claimed = Some(u32::MAX), "handover-changed");
        entry("renamed", &|entry| entry.name = b"../../x".to_vec(), other_name);
        entry("empty", &|entry| entry.data.clear(), empty);
        add(&format!("{name} twice"), &|entries| entries.insert(index, entries[index].clone()), twice);
        add(&format!("{name} missing"), &|entries| drop(entries.remove(index)), unlike);
    }
    for name in ["extra.txt", "/etc/passwd", "../x", "visits/../x", "a\\b", "manifest.json"] {
        add(
            &format!("{name} at the end"),
            &|entries| entries.push(Entry::new(name, b"x")),
            "handover-part-extra",
        );
        add(
            &format!("{name} in front"),
            &|entries| entries.insert(0, Entry::new(name, b"x")),
            "handover-unknown",
        );
        add(
            &format!("{name} in between"),
            &|entries| entries.insert(2, Entry::new(name, b"x")),
            "handover-part-extra",
        );
    }
    add("a bomb of 64 MB at the end", &|entries| entries.push(bomb(64)), "handover-part-extra");
    for (index, place) in ["manifest", "signature", "ledger"].into_iter().enumerate() {
        let bomb = |entries: &mut Vec<Entry>| {
            entries[index] = Entry { name: entries[index].name.clone(), ..bomb(64) }
        };
        add(&format!("a bomb in place of the {place}"), &bomb, "handover-changed");
    }
    let inner = zip(&whole);
    add("a handover file inside another", &|entries| entries[2].data.clone_from(&inner), "handover-changed");
    add("parts in another order", &|entries| entries.swap(1, 2), "handover-changed");
    found.push(("an empty zip".to_owned(), zip(&[]), "handover-unknown"));
    found.push(("a text".to_owned(), b"steady handover".to_vec(), "handover-unknown"));
    found.push(("zeros".to_owned(), vec![0; 100_000], "handover-unknown"));
    found.push(("another zip".to_owned(), zip(&[Entry::new("readme.txt", b"hello")]), "handover-unknown"));
    found.push((
        "a nested bomb".to_owned(),
        zip(&[Entry::new("inner.zip", &zip(&[bomb(64)]))]),
        "handover-unknown",
    ));
    let many: Vec<Entry> = (0..65_000).map(|number| Entry::new(&format!("{number}"), b"")).collect();
    found.push(("65,000 entries".to_owned(), zip(&many), "handover-unknown"));
    let mut commented = zip(&whole);
    let end = commented.len();
    commented[end - 2] = 5;
    commented.extend(b"hello");
    found.push(("a comment at the end".to_owned(), commented, "handover-changed"));
    let vast = sealed(&strangers_parts(), |_| {});
    let mut vast = zip(&vast);
    // The first header claims 4 GB in place of the manifest's length.
    vast[18..26].fill(0xff);
    found.push(("a manifest that claims 4 GB".to_owned(), vast, "handover-too-large"));
    found
}

fn deflate(entry: &mut Entry) {
    let mut packed = flate2::write::DeflateEncoder::new(Vec::new(), flate2::Compression::best());
    packed.write_all(&entry.data).unwrap();
    entry.claimed = Some(u32::try_from(entry.data.len()).unwrap());
    entry.data = packed.finish().unwrap();
    entry.method = 8;
}

/// An entry that would unpack to this many megabytes of zeros.
fn bomb(megabytes: usize) -> Entry {
    let mut packed = flate2::write::DeflateEncoder::new(Vec::new(), flate2::Compression::fast());
    for _ in 0..megabytes {
        packed.write_all(&[0; 1_000_000]).unwrap();
    }
    let claimed = Some(u32::try_from(megabytes * 1_000_000).unwrap());
    Entry { method: 8, claimed, ..Entry::new("bomb", &packed.finish().unwrap()) }
}
