//! What the desk keeps in the data folder for itself: the page that leads the owner's browser in, and the port that
//! the browser's own drafts belong to. The folder and the page are the account's alone, so the key is on no command
//! line, which every account of a computer can list.

use std::fs;
use std::path::{Path, PathBuf};

use steady_core::app::failure::Failure;
use steady_core::store::private;

use crate::fault;

/// Name of the folder inside the data folder.
const FOLDER: &str = "desk";
/// The page that a browser is sent to first.
const PAGE: &str = "open.html";
/// The port of this data folder.
const PORT: &str = "port";

/// The desk's own folder.
pub struct Doorway(PathBuf);

impl Doorway {
    /// The desk's folder in a data folder; made if it is not there.
    pub fn of(data_dir: &Path) -> Result<Self, Failure> {
        let folder = data_dir.join(FOLDER);
        private::folder(&folder).map_err(|error| unwritten(&error))?;
        Ok(Self(folder))
    }

    /// The port that this data folder was served at before. What a browser keeps belongs to an address, port and
    /// all: half an answer that was typed is found again at the same one alone.
    pub fn port(&self) -> Option<u16> {
        let port = fs::read_to_string(self.0.join(PORT)).ok()?.trim().parse().ok()?;
        (port > 0).then_some(port)
    }

    /// Remembers the port for the next start.
    pub fn remember(&self, port: u16) {
        // Without it the next start takes another port, and says so.
        let _ = private::write(&self.0.join(PORT), port.to_string().as_bytes());
    }

    /// Writes the page that leads to this address, key and all, and says where it lies.
    pub fn page(&self, address: &str) -> Result<PathBuf, Failure> {
        let page = self.0.join(PAGE);
        private::write(&page, html(address).as_bytes()).map_err(|error| unwritten(&error))?;
        // A browser that was started elsewhere needs the whole path.
        page.canonicalize().map_err(|error| unwritten(&error))
    }
}

/// The address is of digits and letters alone, so that nothing in it needs to be escaped.
fn html(address: &str) -> String {
    format!(
        "<!doctype html><html><head><meta charset=\"utf-8\"><meta name=\"referrer\" content=\"no-referrer\">\
         <meta http-equiv=\"refresh\" content=\"0; url={address}\"><title>Steady</title></head>\
         <body><a href=\"{address}\">Steady</a></body></html>\n"
    )
}

fn unwritten(error: &std::io::Error) -> Failure {
    fault::failure(
        "data-folder-unwritable",
        format!("the desk's page in the data folder: {}", fault::cause(error)),
        "Free some space, or let this account write there.",
    )
}
