//! `steady export`, `import`, `verify`, `erase` and `salvage`: files for the core, and what it says of them
//! for the person at the terminal.

use std::fs::File;
use std::io::{self, BufReader, BufWriter};
use std::path::Path;

use serde_json::{Value, json};
use steady_core::app::backup::damaged;
use steady_core::app::failure::Failure;
use steady_core::app::handover::{
    AsShown, Exported, Imported, Preview, PreviewVisit, Salvaged, SetApart, Verified, Wanted, Wrote, verify,
};
use steady_core::app::{ReadCopy, Steady};
use steady_core::model::device::WriterStand;
use steady_core::model::rating::Word;

use crate::args::handover::{Export, How, Task};
use crate::house::Begin;
use crate::out::{self, Leave, Output};
use crate::quoted::quoted;
use crate::{backup, devices, fault, house, say};

/// Runs the command.
pub fn run(task: &Task) -> Result<(), Failure> {
    let there = |how: &How| house::open(&house::data_dir(how.data.as_deref(), Begin::Never)?);
    let (said, json) = match task {
        Task::Verify { file, json } => (verified(&verify(&mut opened(file)?)?), *json),
        Task::Export(wanted) => (exported(wanted)?, wanted.how.json),
        Task::Import { file, look, yes, new, how } => {
            let work = |steady: &Steady| match (look, yes) {
                (true, _) => Ok(previewed(&steady.preview(&mut opened(file)?)?)),
                (false, true) => Ok(imported(&steady.import(&mut opened(file)?)?)),
                (false, false) => taken_in(steady, opened(file)?),
            };
            (house::in_begun(how.data.as_deref(), Begin::new(*new), work)?, how.json)
        }
        Task::Erase { visit, word, how } => (erased(&there(how)?, visit, word)?, how.json),
        Task::Backup { folder, list: true, how, .. } => (backup::listed(folder)?, how.json),
        Task::Backup { folder, check: true, how, .. } => {
            let (said, is_whole) = backup::checked(folder)?;
            tell(&said, how.json);
            return if is_whole { Ok(()) } else { Err(damaged()) };
        }
        Task::Backup { folder, list: false, check: false, how } => {
            (backup::made(&house::data_dir(how.data.as_deref(), Begin::Never)?, folder)?, how.json)
        }
        Task::Restore { folder, generation, new, how } => {
            let restored = |steady: &Steady| backup::restored(steady, folder, generation.as_deref());
            (house::in_begun(how.data.as_deref(), Begin::new(*new), restored)?, how.json)
        }
        Task::Salvage { file, new, how } => {
            let salvage = |steady: &Steady| steady.salvage(file).map(|done| salvaged(&done));
            (house::in_begun(how.data.as_deref(), Begin::new(*new), salvage)?, how.json)
        }
    };
    tell(&said, json);
    Ok(())
}

fn tell(said: &Said, json: bool) {
    say::line(&if json { said.value.to_string() } else { said.lines.join("\n") });
}

/// The same answer for a script and for a person.
pub struct Said {
    /// For a script.
    pub value: Value,
    /// For a person.
    pub lines: Vec<String>,
}

fn erased(steady: &Steady, visit: &str, word: &str) -> Result<Said, Failure> {
    steady.erase(visit, word)?;
    Ok(Said { value: json!({ "erased": visit }), lines: vec!["Erased for good.".to_owned()] })
}

fn exported(export: &Export) -> Result<Said, Failure> {
    let Export { visits, papers, lang, sheet, out, replace, how } = export;
    let data = house::data_dir(how.data.as_deref(), Begin::Never)?;
    let copy = house::open_copy(&data)?;
    let output = Output::begin(out, Leave { replace: *replace, data: &data })?;
    let wanted = Wanted { visits, papers: *papers, locale: lang.as_deref(), sheet: *sheet };
    Ok(export_said(&write(&copy, wanted, output)?, out))
}

fn opened(path: &Path) -> Result<BufReader<File>, Failure> {
    // A pipe would be waited for with the data folder held.
    if path.exists() && !path.is_file() {
        return Err(fault::failure(
            "handover-unreadable",
            "the file: it is no file".to_owned(),
            "Name a file that exists and that you may read.",
        ));
    }
    File::open(path).map(BufReader::new).map_err(|error| unreadable(&error))
}

fn unreadable(error: &io::Error) -> Failure {
    fault::failure(
        "handover-unreadable",
        format!("the file: {}", fault::cause(error)),
        "Name a file that exists and that you may read.",
    )
}

fn write(copy: &ReadCopy, wanted: Wanted<'_>, mut output: Output) -> Result<Exported, Failure> {
    let mut sink = Sink { to: BufWriter::with_capacity(1 << 20, output.file()), fault: None };
    let made = copy.export(wanted, &mut sink);
    // What the place of the output said tells more than that an export failed.
    if let Some(fault) = sink.fault.take() {
        return Err(out::unwritten(&fault));
    }
    drop(sink);
    let made = made?;
    output.persist()?;
    Ok(made)
}

/// Remembers what went wrong at the output itself.
struct Sink<W> {
    to: W,
    fault: Option<io::Error>,
}

impl<W: io::Write> Sink<W> {
    fn told<T>(&mut self, done: io::Result<T>) -> io::Result<T> {
        done.inspect_err(|fault| self.fault = Some(fault.kind().into()))
    }
}

impl<W: io::Write> io::Write for Sink<W> {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        let done = self.to.write(bytes);
        self.told(done)
    }

    fn flush(&mut self) -> io::Result<()> {
        let done = self.to.flush();
        self.told(done)
    }
}

fn export_said(made: &Exported, out: &Path) -> Said {
    let mut lines = vec![format!("{}: {}, {}", out.display(), visits(made.visits), size(made.bytes))];
    lines.extend(left("Left out, the ledger is broken", &made.left_out));
    lines.extend(left("Left out, the photo's file is damaged", &made.photos_damaged));
    Said { value: json!(made), lines }
}

/// Shows what a file would change, and takes it in once a person at the terminal agreed to that.
fn taken_in(steady: &Steady, mut file: BufReader<File>) -> Result<Said, Failure> {
    let seen = AsShown::of(&mut file)?;
    let told = steady.preview(&mut file)?;
    say::note(&preview_lines(&told).join("\n"));
    if house::asked("Take this in? [y/N]") != Some(true) {
        return Err(fault::failure(
            "import-not-agreed",
            "nothing was taken in: nobody agreed to it",
            "Answer y at a terminal, or give --yes once you have read what it would change.",
        ));
    }
    // The same open file, and the same bytes in it: nothing else was agreed to.
    seen.still_is(&mut file)?;
    Ok(imported(&steady.import(&mut file)?))
}

fn imported(done: &Imported) -> Said {
    Said { value: json!(done), lines: import_lines(done) }
}

/// What an import changed.
pub fn import_lines(done: &Imported) -> Vec<String> {
    let mut lines: Vec<String> = done.taken.iter().map(|visit| format!("Taken in: {visit}")).collect();
    lines.extend(left_as_they_are(done));
    lines.extend(done.set_apart.iter().map(apart));
    lines.push(format!("{} new entries, {} photos.", done.entries, done.photos));
    if done.mended > 0 {
        lines.push(format!("Damaged entries made whole: {}", done.mended));
    }
    lines
}

/// How many visits of a file bring nothing, and why.
fn left_as_they_are(done: &Imported) -> Vec<String> {
    let counted = [("Here already", done.unchanged), ("Erased here, and so left out", done.erased)];
    let told = counted.into_iter().filter(|(_, count)| *count > 0);
    told.map(|(why, count)| format!("{why}: {}", visits(count))).collect()
}

fn salvaged(done: &Salvaged) -> Said {
    let mut lines = import_lines(&done.imported);
    lines.extend(backup::another(done.of_another).map(str::to_owned));
    lines.extend(backup::devices(done.devices));
    lines.extend(left("Not taken, the ledger is no longer whole or differs", &done.lost));
    if done.photos_missing > 0 {
        lines.push(format!("Photos not found whole: {}", done.photos_missing));
    }
    Said { value: json!(done), lines }
}

fn verified(told: &Verified) -> Said {
    // What nobody signed anybody can have written: the file is as it was sent, and an import refuses those entries.
    let unproven: u64 =
        told.writers.iter().filter(|wrote| wrote.code.is_empty()).map(|wrote| wrote.entries).sum();
    let whole = if unproven == 0 {
        "Whole and unchanged since it was signed.".to_owned()
    } else {
        format!(
            "Not proven: {unproven} entries are not signed by whoever wrote them. The file is as it was sent."
        )
    };
    let mut lines = vec![
        whole,
        format!("Made {} with Steady {} on the device with the code {}", told.at, told.made_by, told.code),
    ];
    for visit in &told.visits {
        lines.push(format!("Visit {visit}"));
        lines.extend(told.writers.iter().filter(|wrote| wrote.visit == *visit).map(wrote));
    }
    lines.push(format!("{} entries, {} photos, {} papers.", told.entries, told.photos, told.papers));
    if told.photos_missing > 0 {
        lines.push(format!("Photos that were not on the device: {}", told.photos_missing));
    }
    Said { value: json!(told), lines }
}

fn previewed(told: &Preview) -> Said {
    let lines = preview_lines(told).into_iter().chain(["Nothing was taken in.".to_owned()]).collect();
    Said { value: json!(told), lines }
}

/// Who sends a file and what it would change.
fn preview_lines(told: &Preview) -> Vec<String> {
    let Preview { sender, visits, imported, .. } = told;
    let mut lines =
        vec![format!("Sent by the device with the code {}, {}", sender.code, devices::trust(sender))];
    lines.extend(visits.iter().map(would_change));
    lines.extend(left_as_they_are(imported));
    lines.extend(imported.set_apart.iter().map(apart));
    lines.push(format!("{} new entries, {} photos.", imported.entries, imported.photos));
    lines
}

fn would_change(visit: &PreviewVisit) -> String {
    let word = |word: Option<Word>| word.map_or("not yet checked", Word::id);
    let turn = match (visit.is_new, visit.milder) {
        (true, _) => format!("new here, {}", word(visit.after)),
        (false, true) => format!("now {}, then milder: {}", word(visit.before), word(visit.after)),
        (false, false) => format!("now {}, then {}", word(visit.before), word(visit.after)),
    };
    let mends =
        (visit.mended > 0).then(|| format!("{} entries are damaged here and whole in it", visit.mended));
    let told: Vec<String> = visit.writers.iter().map(by).chain(mends).collect();
    format!("Visit {} {}: {turn}\n  {}", visit.visit, quoted(&visit.plate), told.join("\n  "))
}

/// Who wrote in a visit, whoever carries it.
fn by(writer: &WriterStand) -> String {
    let WriterStand { device, entries } = writer;
    format!("{entries} entries by the device with the code {}, {}", device.code, devices::trust(device))
}

fn apart(apart: &SetApart) -> String {
    format!("Set apart: {}: {}. {}", apart.visit, apart.why.message, apart.why.help)
}

fn wrote(wrote: &Wrote) -> String {
    match wrote.code.as_str() {
        "" => format!("  {} entries from before signatures: nothing proves who wrote them", wrote.entries),
        code => format!("  {} entries signed by the device with the code {code}", wrote.entries),
    }
}

/// Those that were left out, if any were.
pub fn left(why: &str, ids: &[String]) -> Option<String> {
    (!ids.is_empty()).then(|| format!("{why}: {}", ids.join(" ")))
}

/// A count in words: "1 visit", "2 visits".
pub fn visits(count: u64) -> String {
    if count == 1 { "1 visit".to_owned() } else { format!("{count} visits") }
}

fn size(bytes: u64) -> String {
    let tenths = bytes.div_ceil(100_000);
    format!("{}.{} MB", tenths / 10, tenths % 10)
}
