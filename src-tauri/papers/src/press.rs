//! Content in, PDF out: the one implementation of the core's press.
//!
//! Nothing here knows a sentence or a rule. The files it sets the type from are in `world`.

use serde_json::{Value, json};
use steady_core::app::press::{Paper, Press, PressError, PrintRun};
use steady_core::content::shared::PhotoLine;
use steady_core::model::time::Moment;
use steady_core::words::Words;
use typst::comemo;
use typst::diag::SourceDiagnostic;
use typst::foundations::{Bytes, Datetime, Smart};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards, Timestamp};

use crate::legible;
use crate::photos::{self, Picture, Prepared};
use crate::world::{PaperWorld, Resources, Template};

/// Type sizes a note is tried at, in points, until it fits one page. The owner may be long-sighted and
/// reads it standing, so the first is large and nothing goes below the last: a note that still does not
/// fit runs on to a second page rather than lose a word.
const NOTE_SIZES: [f64; 8] = [12.5, 12.0, 11.5, 11.0, 10.5, 10.0, 9.5, 9.0];
/// A finding is read at a desk and may have as many pages as it needs.
const FINDING_SIZE: f64 = 9.5;
/// Type sizes the machinist's sheet is tried at until it fits one page.
const MACHINIST_SIZES: [f64; 6] = [9.5, 9.0, 8.5, 8.0, 7.5, 7.0];

/// Builds the press. The fonts are read once, here.
///
/// # Errors
/// [`PressError`] if the embedded fonts cannot be read.
pub fn press() -> Result<TypstPress, PressError> {
    let resources =
        Resources::open().ok_or_else(|| PressError("the embedded fonts cannot be read".to_owned()))?;
    let standards = PdfStandards::new(&[PdfStandard::A_3a, PdfStandard::Ua_1])
        .map_err(|error| PressError(error.message().to_string()))?;
    Ok(TypstPress { resources, standards })
}

/// A press that sets type with Typst and writes PDF/A-3a that is PDF/UA-1 as well.
pub struct TypstPress {
    resources: Resources,
    standards: PdfStandards,
}

impl Press for TypstPress {
    fn print(&self, paper: Paper<'_>, run: &PrintRun<'_>) -> Result<Vec<u8>, PressError> {
        let printed = match paper {
            Paper::Finding(finding) => {
                let lines = finding
                    .steps
                    .iter()
                    .flat_map(|step| step.photo.iter().chain(&step.before).chain(&step.further));
                let inputs = PrintInputs::gather(Template::Finding, lines, run);
                content(finding)
                    .and_then(|content| self.set(&inputs, content, &finding.locale, &[FINDING_SIZE]))
            }
            Paper::Note(note) => {
                let inputs = PrintInputs::gather(Template::Note, note.photo.as_ref(), run);
                content(note).and_then(|content| self.set(&inputs, content, &note.locale, &NOTE_SIZES))
            }
            Paper::Repair(record) => {
                let inputs = PrintInputs::gather(Template::Repair, &record.photos, run);
                content(record)
                    .and_then(|content| self.set(&inputs, content, &record.locale, &[FINDING_SIZE]))
            }
            Paper::Machinist(page) => {
                let inputs = PrintInputs::gather(Template::Machinist, None, run);
                content(page).and_then(|content| self.set(&inputs, content, &page.locale, &MACHINIST_SIZES))
            }
            Paper::BeforeAfter(page) => {
                let inputs = PrintInputs::gather(Template::BeforeAfter, None, run);
                content(page).and_then(|content| self.set(&inputs, content, &page.locale, &NOTE_SIZES))
            }
        };
        // Each paper is printed once; what the typesetter remembers of it would only pile up.
        comemo::evict(0);
        printed
    }
}

impl TypstPress {
    /// Sets the paper at the first of `sizes` that fits one page, else at the last.
    fn set(
        &self,
        inputs: &PrintInputs<'_>,
        content: Value,
        locale: &str,
        sizes: &[f64],
    ) -> Result<Vec<u8>, PressError> {
        // A finding carries its content along, as data; no other paper does.
        let attached = match inputs.template {
            Template::Finding => Some(serde_json::to_vec_pretty(&content).map_err(unreadable)?),
            Template::Note | Template::Repair | Template::Machinist | Template::BeforeAfter => None,
        };
        let attached = attached.map(|json| ("/finding.json", Bytes::new(json)));
        let ident = format!("{:?} {content}", inputs.template);
        let (content, replaced) = legible::make_legible(content, &self.resources);
        let content = Bytes::new(content.to_string().into_bytes());
        let mut document = None;
        for size in sizes {
            let run = inputs.run_json(locale, *size, replaced);
            let run = Bytes::new(run.to_string().into_bytes());
            let files =
                [("/content.json", content.clone()), ("/run.json", run)].into_iter().chain(attached.clone());
            let world = PaperWorld::new(&self.resources, inputs.template, files, &inputs.pictures)
                .ok_or_else(|| PressError("a file of the paper has no usable path".to_owned()))?;
            let set: PagedDocument = typst::compile(&world).output.map_err(|all| refused(&all))?;
            let fits = set.pages().len() <= 1;
            document = Some(set);
            if fits {
                break;
            }
        }
        let document = document.ok_or_else(|| PressError("no type size was given".to_owned()))?;
        let options = PdfOptions {
            ident: Smart::Custom(ident),
            creator: Smart::Custom(Some("Steady".to_owned())),
            timestamp: timestamp(inputs.at),
            standards: self.standards.clone(),
            ..PdfOptions::default()
        };
        typst_pdf::pdf(&document, &options).map_err(|all| refused(&all))
    }
}

/// What goes into one paper beside its words.
struct PrintInputs<'a> {
    template: Template,
    sheet: &'static str,
    at: Moment,
    pictures: Vec<Picture<'a>>,
    damaged: Vec<&'a str>,
}

impl<'a> PrintInputs<'a> {
    fn gather(
        template: Template,
        lines: impl IntoIterator<Item = &'a PhotoLine>,
        run: &PrintRun<'_>,
    ) -> Self {
        let sheet = run.sheet.id();
        let budget = match template {
            Template::Finding | Template::Repair | Template::Machinist | Template::BeforeAfter => {
                photos::BESIDE_A_STEP
            }
            Template::Note => photos::ON_THE_NOTE,
        };
        let Prepared { pictures, damaged } = photos::prepare(lines, run.photo, budget);
        Self { template, sheet, at: run.at, pictures, damaged }
    }

    /// Sheet, size and language with its direction, where each photo that can be printed is found, which are damaged, and whether
    /// letters that no font has were replaced.
    fn run_json(&self, locale: &str, size: f64, replaced: bool) -> Value {
        let found: serde_json::Map<String, Value> = self
            .pictures
            .iter()
            .map(|picture| (picture.sha256.to_owned(), Value::from(picture.path())))
            .collect();
        let (lang, region) = language(locale);
        let from_right = Words::of(&lang).is_ok_and(Words::reads_from_right);
        let sheet = self.sheet;
        json!({
            "sheet": sheet, "size": size, "lang": lang, "region": region, "from_right": from_right, "photos": found,
            "damaged": self.damaged, "replaced": replaced
        })
    }
}

fn content(paper: &impl serde::Serialize) -> Result<Value, PressError> {
    serde_json::to_value(paper).map_err(unreadable)
}

/// Language and region of a tag such as `en` or `en-GB`; English where the tag is not one.
fn language(tag: &str) -> (String, Option<String>) {
    let mut parts = tag.split(['-', '_']);
    let letters = |part: &&str| part.bytes().all(|b| b.is_ascii_alphabetic());
    let lang = parts.next().filter(letters).filter(|part| matches!(part.len(), 2 | 3));
    let region = parts.filter(letters).find(|part| part.len() == 2);
    (lang.unwrap_or("en").to_ascii_lowercase(), region.map(str::to_ascii_uppercase))
}

/// The moment as the document carries it: whole seconds, UTC.
fn timestamp(at: Moment) -> Option<Timestamp> {
    let text = at.rfc3339();
    let mut parts = text.split(|c: char| !c.is_ascii_digit());
    let year = parts.next()?.parse().ok()?;
    let mut small = || parts.next()?.parse::<u8>().ok();
    let (month, day, hour, minute, second) = (small()?, small()?, small()?, small()?, small()?);
    Datetime::from_ymd_hms(year, month, day, hour, minute, second).map(Timestamp::new_utc)
}

/// Says how many complaints there were and of what sort. Their own text may quote what a person typed,
/// so only the template's line would be safe to name, and that helps nobody outside this crate.
fn refused(all: &[SourceDiagnostic]) -> PressError {
    PressError(format!("the typesetter refused it, {} complaint(s)", all.len()))
}

fn unreadable(_: serde_json::Error) -> PressError {
    PressError("the content could not be written as data".to_owned())
}

#[cfg(test)]
mod tests {
    use super::{language, timestamp};
    use steady_core::model::time::Moment;

    #[test]
    fn odd_language_tags_become_english() {
        #[track_caller]
        fn check(tag: &str, lang: &str, region: Option<&str>) {
            assert_eq!(language(tag), (lang.to_owned(), region.map(str::to_owned)), "{tag}");
        }
        check("en", "en", None);
        check("en-GB", "en", Some("GB"));
        check("de_at", "de", Some("AT"));
        check("zh-Hant-TW", "zh", Some("TW"));
        check("", "en", None);
        check("#panic()", "en", None);
        check("e1", "en", None);
    }

    #[test]
    fn every_moment_the_clock_can_show_has_a_timestamp() {
        for millis in [0, 1_795_000_000_000, 951_782_400_000] {
            assert!(timestamp(Moment(millis)).is_some(), "{millis}");
        }
    }
}
