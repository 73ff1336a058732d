//! Opens the core for a command: which folder, which press, which clock.

use std::collections::BTreeSet;
use std::fs;
use std::io::{ErrorKind, IsTerminal as _, stderr, stdin};
use std::path::{Path, PathBuf};
use std::sync::Arc;

use steady_core::app::failure::Failure;
use steady_core::app::request::Request;
use steady_core::app::response::Response;
use steady_core::app::{ReadCopy, Setup, Steady};
use steady_core::model::time::Moment;
use steady_core::store::open::holds_ledger;
use steady_papers::press;

use crate::{fault, say};

/// The phone app's identifier, so that desk and app on one computer share their visits.
const APP_FOLDER: &str = "app.steady.bay";

/// Opens the core on a data folder.
pub fn open(data_dir: &Path) -> Result<Steady, Failure> {
    let press = Arc::new(press().map_err(|_| fault::internal())?);
    let before = set_aside_in(data_dir);
    let steady = Steady::open(Setup { data_dir: data_dir.to_owned(), press, clock: Moment::now })?;
    set_aside_in(data_dir).difference(&before).for_each(|folder| say_set_aside(data_dir, folder));
    Ok(steady)
}

/// Does something with the core on a data folder, which may be begun for it. One that was not there before goes again
/// where the command is refused and nothing came into it.
pub fn in_begun<T>(
    given: Option<&Path>,
    begin: Begin,
    work: impl FnOnce(&Steady) -> Result<T, Failure>,
) -> Result<T, Failure> {
    let data = data_dir(given, begin)?;
    let is_new = is_absent(&data);
    let steady = open(&data)?;
    let done = work(&steady);
    let is_empty = matches!(steady.handle(Request::Home), Ok(Response::Home(home)) if home.visits == 0);
    drop(steady);
    if done.is_err() && is_new && is_empty {
        // What cannot be removed is an empty data folder.
        let _ = fs::remove_dir_all(&data);
    }
    done
}

/// Whether nothing of that name is there. What leads to it is made first: `absent/../there` is there once it stands.
fn is_absent(data: &Path) -> bool {
    let stands =
        data.parent().is_none_or(|above| above.as_os_str().is_empty() || fs::create_dir_all(above).is_ok());
    stands && fs::symlink_metadata(data).is_err_and(|fault| fault.kind() == ErrorKind::NotFound)
}

/// The folders in which a ledger was set aside.
fn set_aside_in(data_dir: &Path) -> BTreeSet<String> {
    let found = fs::read_dir(data_dir).into_iter().flatten().flatten();
    let names = found.map(|entry| entry.file_name().to_string_lossy().into_owned());
    names.filter(|name| name.starts_with("set-aside-")).collect()
}

/// Says what a command set aside as it began: nobody looks at a screen.
fn say_set_aside(data_dir: &Path, folder: &str) {
    let aside = data_dir.join(folder);
    say::note(&format!(
        "The database could not be used. It was set aside with its photos, and nothing was deleted: {}\n\
         What can be read comes back with: steady salvage {}/steady.db --data {}",
        aside.display(),
        aside.display(),
        data_dir.display()
    ));
}

/// Reads a data folder beside whoever has it open.
pub fn open_copy(data_dir: &Path) -> Result<ReadCopy, Failure> {
    let press = Arc::new(press().map_err(|_| fault::internal())?);
    ReadCopy::open(Setup { data_dir: data_dir.to_owned(), press, clock: Moment::now })
}

/// Whether a command may begin a new data folder where it is told to look.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Begin {
    /// It only works on what is there.
    Never,
    /// Where an empty folder waits, or a person at the terminal says so.
    Asked,
    /// It was told to, with `--new`.
    Told,
}

impl Begin {
    /// Of a command that takes `--new`.
    pub fn new(told: bool) -> Self {
        if told { Self::Told } else { Self::Asked }
    }
}

/// The folder given with `--data`, or the platform's. A folder that was named and holds no data is not taken for
/// granted: the name may be mistyped.
pub fn data_dir(given: Option<&Path>, begin: Begin) -> Result<PathBuf, Failure> {
    let Some(named) = given else {
        return dirs::data_dir().map(|data| data.join(APP_FOLDER)).ok_or_else(|| {
            fault::failure(
                "no-data-folder",
                "this account has no folder for data",
                "Name a folder with --data DIR.",
            )
        });
    };
    // What cannot be a folder at all is the core's to refuse.
    if holds_ledger(named) || named.is_file() {
        return Ok(named.to_owned());
    }
    let waits = fs::read_dir(named).is_ok_and(|mut files| files.next().is_none());
    let begins = match begin {
        Begin::Never => false,
        Begin::Told => true,
        Begin::Asked => waits || agreed(named),
    };
    if !begins {
        return Err(fault::failure(
            "no-data-here",
            "there are no visits of Steady in the folder named with --data",
            "Check its name. serve, replay, import, restore, salvage and workshop begin a new data folder with --new.",
        ));
    }
    say::note(&format!("A new data folder is begun: {}", named.display()));
    Ok(named.to_owned())
}

/// Where there is no terminal, nobody agreed.
fn agreed(folder: &Path) -> bool {
    let there = format!("There are no visits of Steady in {}.", folder.display());
    asked(&format!("{there} Begin a new data folder there? [y/N]")) == Some(true)
}

/// Asks the person at the terminal; none where there is no terminal.
pub fn asked(question: &str) -> Option<bool> {
    if !(stdin().is_terminal() && stderr().is_terminal()) {
        return None;
    }
    say::note(question);
    let mut answer = String::new();
    Some(stdin().read_line(&mut answer).is_ok() && matches!(answer.trim(), "y" | "Y" | "yes"))
}
