//! How papers are asked for on the command line: their language and their sheet.

use lexopt::Parser;
use steady_core::app::failure::Failure;
use steady_core::app::request::Sheet;
use steady_core::words::Words;

use super::value;
use crate::fault;

/// A language there are texts in.
pub fn language(words: &mut Parser) -> Result<String, Failure> {
    let tag = value(words)?;
    let known = Words::locales().into_iter().find(|known| tag == **known);
    known.map(str::to_owned).ok_or_else(|| {
        let help = format!("Give one of {}.", Words::locales().join(", "));
        fault::failure("unknown-locale", "there are no texts in that language", &help)
    })
}

/// A sheet.
pub fn sheet(words: &mut Parser) -> Result<Sheet, Failure> {
    let id = value(words)?;
    id.to_str().and_then(Sheet::from_id).ok_or_else(|| {
        fault::failure("bad-paper", "there is no such sheet", "Give --paper a4 or --paper us-letter.")
    })
}
