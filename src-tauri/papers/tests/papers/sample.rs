//! Invented papers. The words are written here by hand; what the core really says is tested there.

use std::collections::BTreeMap;
use std::sync::{LazyLock, Mutex};

use image::codecs::jpeg::JpegEncoder;
use image::{Rgb, RgbImage};
use steady_core::content::finding::{
    Finding, FindingHeadings, GaugeRow, GaugeTable, ReasonLine, Scope, ScopeTier, StepLine,
};
use steady_core::content::note::{DecisionLine, Note, NoteSection};
use steady_core::content::shared::{Band, CauseLine, Field, Labels, Letterhead, PhotoLine, Signed};

/// Every word a band can carry, as printed, with what it asks for.
pub const BANDS: [(&str, &str, &str); 5] = [
    ("danger", "DANGER", "DO NOT DRIVE this car"),
    ("warning", "WARNING", "Move it only to be repaired"),
    ("caution", "CAUTION", "Book the repair"),
    ("notice", "NOTICE", "No bearing work needed"),
    ("unrated", "NOT YET CHECKED", "The hands-on check is not done: no rating"),
];

/// Text that has broken papers elsewhere: markup, marks that turn the direction, letters no font here
/// has, a run without a space, stacked marks, controls.
pub const HOSTILE: &str = "#panic(\"x\") $a_1^2$ *bold* _it_ = head \\ @ref <tag> `raw` [x] // c /* c */ \
    \u{202E}evil\u{202C} \u{5E9}\u{5DC}\u{5D5}\u{5DD} \u{645}\u{631}\u{62D}\u{628}\u{627} \u{65E5}\u{672C} \
    \u{1F697}\u{1F3FD}\u{200D}\u{1F527} z\u{300}\u{301}\u{302}\u{303}\u{304} \u{0}\u{7}\u{FEFF}\u{FFFE}\u{E000}\u{FFFC} \
    \u{FB01}x \u{1D400} #set page(width: 1pt) &amp; %00 \"quoted\"";

pub fn band(word: &str) -> Band {
    let (word, label, headline) =
        BANDS.into_iter().find(|(id, ..)| *id == word).expect("one of the five words");
    Band { word: word.into(), label: label.into(), headline: headline.into() }
}

pub fn field(label: &str, value: &str) -> Field {
    Field { label: label.into(), value: value.into() }
}

fn owned(all: &[&str]) -> Vec<String> {
    all.iter().map(|one| (*one).to_owned()).collect()
}

pub fn photo(index: usize) -> PhotoLine {
    PhotoLine {
        sha256: format!("{index:064x}"),
        caption: "Up and down at the support: Movement felt".into(),
        alt: "Photo taken at the step \"Up and down at the support\".".into(),
        marks: Vec::new(),
    }
}

const WIDTH: u32 = 1440;
const HEIGHT: u32 = 1080;

/// Rings with enough grain that they do not pack well, three bytes a pixel.
static GRAINY: LazyLock<Vec<u8>> = LazyLock::new(|| {
    let mut state = 1_u32;
    let picture = RgbImage::from_fn(WIDTH, HEIGHT, |x, y| {
        state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        let away = x.abs_diff(WIDTH / 2).pow(2) + y.abs_diff(HEIGHT / 2).pow(2);
        let shade = 50 + (state >> 26) as u8 + (away >> 14) as u8 % 2 * 60;
        Rgb([shade, shade - 10, shade - 20])
    });
    picture.into_raw()
});

static PHOTOS: Mutex<BTreeMap<usize, Vec<u8>>> = Mutex::new(BTreeMap::new());

/// A photo larger than any paper needs, another for each name.
pub fn jpeg(sha256: &str) -> Option<Vec<u8>> {
    let number = usize::from_str_radix(sha256.get(48..)?, 16).ok()?;
    let mut photos = PHOTOS.lock().ok()?;
    Some(photos.entry(number).or_insert_with(|| grainy_jpeg(number)).clone())
}

fn grainy_jpeg(number: usize) -> Vec<u8> {
    let (tail, head) = GRAINY.split_at(number * 3 * 1_001 % GRAINY.len());
    let picture = RgbImage::from_raw(WIDTH, HEIGHT, [head, tail].concat()).expect("as many bytes as before");
    let mut bytes = Vec::new();
    let encoder = JpegEncoder::new_with_quality(&mut bytes, 88);
    picture.write_with_encoder(encoder).expect("a picture of this size can be written");
    bytes
}

pub fn signed() -> Signed {
    let wave = |from: f32, to: f32, lift: f32| -> Vec<[f32; 2]> {
        (0..60)
            .map(|i| {
                let t = i as f32 / 59.0;
                [from + (to - from) * t, 0.55 - lift * (t * 19.0).sin() * (1.0 - t)]
            })
            .collect()
    };
    Signed {
        text: "Have it repaired. Note received on 25 November 2026, 10:04 UTC by R. Example.".into(),
        note_line: format!("Signed for the note with SHA-256 {}.", "5c".repeat(32)),
        strokes: vec![wave(0.08, 0.5, 0.35), wave(0.45, 0.92, 0.2), vec![[0.3, 0.12]]],
        alt: "Signature, drawn by hand.".into(),
    }
}

pub fn finding(word: &str, photos: usize) -> Finding {
    Finding {
        locale: "en".into(),
        title: "Finding: prop shaft and its support bearing".into(),
        workshop: Some(letterhead()),
        band: band(word),
        answer: owned(&[
            "Movement was felt up and down at the support. A bearing carried like this must not move at all.",
            "Most likely: bearing loose in its housing (97%). At least one bearing cause: over 99%.",
            "Nothing else stands out; the engine idles in its range.",
        ]),
        next: owned(&[
            "Do not drive it, do not road-test it, do not run the engine again. If it must move, have it carried.",
            "Tell the owner today, and have them sign that they received the note.",
            "Before any repair, read the maker's procedure for this car.",
        ]),
        vehicle: vehicle(),
        complaint: vec![
            field(
                "In the owner's words",
                "It buzzes under my seat when I rev it, and sometimes it knocks when I set off.",
            ),
            field("When it happens", "Engine at about 2,500 rpm, standing"),
        ],
        reasons: vec![
            reason(
                "danger",
                "DANGER",
                "Movement by hand at a support that allows none. Rests on: Up and down at the support: movement felt.",
            ),
            reason("warning", "WARNING", "The causes that sit in the bearing are more likely than not."),
            reason("caution", "CAUTION", "A buzz through the floor is not explained by anything else."),
        ],
        scope: Some(scope()),
        steps: steps(photos),
        not_checked: Some("Not checked: Misfire counts, Far end of the shaft.".into()),
        gauges: Some(gauges()),
        causes: causes(),
        said: vec!["Kim Demo thinks: Worn bearing. It sings like the last one did.".into()],
        unknown: owned(&[
            "Side to side at the support: done, and left unsure. Unsure never reads as good.",
            "Not done or not read: fault counts of each cylinder.",
        ]),
        road: owned(&[
            "MOT inspection manual, 6.1.7: a transmission shaft bearing. Major if excessively worn, Dangerous if likely to break up. Your local rules decide.",
        ]),
        cautions: owned(&[
            "This finding covers what was checked, as it was on that day. Parts not named were not checked.",
            "Probabilities rest on workshop judgement and are not measured. Only the hands-on check decides about the bearing.",
            "This is not a quote and not an expert report for a court.",
        ]),
        signed: None,
        foot: vec![
            field("Technician", "Sam Example"),
            field("Last checked", "25 November 2026, 09:12 UTC"),
            field("Visit", "019ab1f2-0000-7000-8000-000000000001"),
            field("Record", &format!("31 entries, latest hash {}", "a7".repeat(32))),
        ],
        page_foot: "Finding, visit 019ab1f2-0000-7000-8000-000000000001. What is not named was not checked."
            .into(),
        headings: headings(),
        labels: labels(),
    }
}

pub fn letterhead() -> Letterhead {
    Letterhead {
        name: "Example Motor Works".into(),
        address: owned(&["1 Example Yard", "Exampleford"]),
        phone: "Phone 01632 960417".into(),
    }
}

fn scope() -> Scope {
    let tier = |tier: &str, name: &str, hours: &str, state: &str, label: &str| ScopeTier {
        tier: tier.into(),
        name: name.into(),
        about: "What it takes in, in a sentence of some length, so that it wraps to a second line.".into(),
        hours: hours.into(),
        state: state.into(),
        state_label: label.into(),
    };
    Scope {
        lead: owned(&[
            "The bench says: Skim the seat and press in a sleeve.",
            "The bearing has spun in its bore.",
        ]),
        tiers: vec![
            tier("bearings-only", "Bearings only", "3 to 4.5 h", "ruled-out", "Ruled out"),
            tier(
                "skim-and-sleeve",
                "Seat restored and sleeved",
                "6 to 9 h",
                "chosen",
                "The bench came to this",
            ),
            tier("replace-housing", "Housing replaced", "", "ruled-out", "Ruled out"),
        ],
        terms: owned(&["Rate: 86.50 GBP an hour.", "This is a scope of work, never a quote."]),
    }
}

fn gauges() -> GaugeTable {
    let row = |place: &str, ratio: &str, decision: &str| GaugeRow {
        place: place.into(),
        readings: "0.31; 0.29; 0.30; 0.32; 0.30 mm".into(),
        ratio: ratio.into(),
        mean: "0.304 mm".into(),
        expanded: "± 0.018 mm".into(),
        limit: "0.036 mm".into(),
        decision: decision.into(),
    };
    GaugeTable {
        columns: owned(&["Where", "Readings", "Mean", "Expanded uncertainty, 95%", "Limit", "Decision"]),
        rows: vec![
            row("Up and down", "", "Movement beyond the limit is proven."),
            row("Side to side", "1 mm at the gauge is 0.8 mm at the bearing.", "Not decided."),
        ],
    }
}

fn vehicle() -> Vec<Field> {
    vec![
        field("Make and model", "Demo tourer"),
        field("Plate", "TR 4417"),
        field("VIN", "1M8GDM9AXKP042788"),
        field("Shaft layout", "One-piece shaft at engine speed, bearing held rigidly"),
        field("Gearbox", "Automated clutch"),
        field("Odometer", "128,400 km"),
        field("Owner", "R. Example"),
        field("Car came in", "25 November 2026, 08:31 UTC"),
    ]
}

fn reason(word: &str, label: &str, text: &str) -> ReasonLine {
    ReasonLine { word: word.into(), label: label.into(), text: text.into() }
}

fn steps(photos: usize) -> Vec<StepLine> {
    let plain = StepLine {
        step: "idle-speed".into(),
        title: "Idle speed".into(),
        how: "Engine warm, nothing switched on; read the rev counter.".into(),
        answer: "740 rpm".into(),
        word: None,
        label: "none yet".into(),
        details: owned(&["25 November 2026, 08:40 UTC, by Sam Example"]),
        photo: None,
        before: None,
        further: Vec::new(),
        waiver: Some("No photo: gloves on, hands in use".into()),
    };
    let felt = StepLine {
        step: "play-vertical".into(),
        title: "Up and down at the support".into(),
        how: "Both hands on the shaft close to the bearing. Push up, let down; watch the shaft against the housing.".into(),
        answer: "Movement felt".into(),
        word: Some("danger".into()),
        label: "DANGER".into(),
        details: owned(&[
            "25 November 2026, 09:02 UTC, by Sam Example",
            "Felt with the housing cold",
        ]),
        photo: None,
        before: None,
        further: Vec::new(),
        waiver: None,
    };
    let smooth = StepLine {
        step: "turn-by-hand".into(),
        title: "Turn the shaft by hand".into(),
        how: "One full turn, fingers clear of the joints.".into(),
        answer: "Turns smoothly".into(),
        word: Some("notice".into()),
        label: "NOTICE".into(),
        ..plain.clone()
    };
    let with_photo = (0..photos).map(|index| StepLine { photo: Some(photo(index + 1)), ..felt.clone() });
    [plain, smooth].into_iter().chain(with_photo).collect()
}

fn causes() -> Vec<CauseLine> {
    let cause = |id: &str, name: &str, probability: f64, percent: &str, likelihood: &str| CauseLine {
        cause: id.into(),
        name: name.into(),
        probability,
        percent: percent.into(),
        likelihood: likelihood.into(),
        speaks_for: owned(&[
            "Up and down at the support: movement felt (strong)",
            "Buzz at 2,500 rpm: felt (clear)",
        ]),
        against: owned(&["Turned by hand: smooth (slight)"]),
    };
    vec![
        cause("loose-seat", "Bearing loose in its housing", 0.97, "97%", "extremely likely"),
        cause("worn-bearing", "Worn bearing", 0.18, "18%", "unlikely"),
        CauseLine { speaks_for: Vec::new(), ..cause("misfire", "Misfire", 0.03, "3%", "extremely unlikely") },
    ]
}

fn headings() -> FindingHeadings {
    FindingHeadings {
        next: "What to do next".into(),
        vehicle: "Vehicle and visit".into(),
        complaint: "Complaint".into(),
        reasons: "Why this rating".into(),
        scope: "Scope of work on the bearing".into(),
        steps: "What was checked".into(),
        gauges: "Gauge readings".into(),
        causes: "Likely causes".into(),
        unknown: "What is not known".into(),
        road: "Roadworthiness rules, for information".into(),
        cautions: "Cautions".into(),
        signed: "Receipt of the owner's note".into(),
    }
}

pub fn note(word: &str, drawing: &str) -> Note {
    let section = |id: &str, heading: &str, text: &[&str]| NoteSection {
        id: id.into(),
        heading: heading.into(),
        text: owned(text),
    };
    Note {
        locale: "en".into(),
        title: "What we found on your car".into(),
        workshop: Some(letterhead()),
        band: band(word),
        vehicle: vec![
            field("Vehicle", "Demo tourer"),
            field("Plate", "TR 4417"),
            field("Date (UTC)", "25 November 2026"),
        ],
        sections: vec![
            section("found", "What we found", &["The shaft moves up and down in its bearing. It must not move at all."]),
            section("means", "What it means", &[
                "The prop shaft brings the engine's power to the wheels. A bearing holds the shaft steady.",
                "This is our most serious rating. The car must not be driven.",
            ]),
            section("could-happen", "What could happen", &["The shaft can break loose while you drive. It can hit the floor of the car or the road. You could lose control."]),
            section("do-now", "What to do now", &["Do not drive the car, not even home. Leave it here, or have it carried on a truck. Ask us for a price to fix it."]),
            section("not-known", "What we do not know yet", &["We felt for movement from side to side, but we are not sure."]),
            section("ask", "Who to ask", &["Ask Sam Example, who took in your car, or the workshop that gave you this note.", "You may ask another workshop to look too."]),
        ],
        photo: Some(photo(1)),
        drawing: drawing.into(),
        drawing_words: "Where the bearing sits: the shaft runs under the floor from the engine to the rear axle. Near the engine its bearing sits in a solid metal housing.".into(),
        receipt_heading: "Your receipt".into(),
        receipt_from: "Note from: Example Motor Works, 1 Example Yard, Exampleford".into(),
        receipt_text: "You sign only that you got this note. You can choose any of these, and you can change your mind.".into(),
        decisions: [("repair", "Have it repaired"), ("decide-later", "I will think about it"), ("decline", "Leave it as it is, I was told the risk")]
            .map(|(id, label)| DecisionLine { id: id.into(), label: label.into() })
            .into(),
        signed: None,
        labels: labels(),
        page_foot: "Note for the owner. It covers what was checked, as it was on that day.".into(),
        short_text: "Demo tourer, 25 November 2026: DANGER. Do not drive.".into(),
        sha256: "5c".repeat(32),
    }
}

fn labels() -> Labels {
    Labels {
        speaks_for: "Speaks for it:".into(),
        against: "Speaks against it:".into(),
        photo_missing: "The photo is recorded, but its file could not be read when this was printed.".into(),
        photo_damaged: "The photo's file is not the one that was kept.".into(),
        name: "Name".into(),
        date: "Date".into(),
        signature: "Signature".into(),
        unprintable: "\"[…]\" stands for letters that this paper has no font for.".into(),
        page: "Page {page} of {pages}".into(),
    }
}
