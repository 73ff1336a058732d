//! How papers are asked for on the command line: their language and their sheet.

use clap::builder::{PossibleValuesParser, TypedValueParser};
use steady_core::app::request::Sheet;
use steady_core::words::Words;

/// A language there are texts in.
pub fn language() -> impl TypedValueParser<Value = String> {
    PossibleValuesParser::new(Words::locales())
}

/// `a4` or `us-letter`.
pub fn sheet() -> impl TypedValueParser<Value = Sheet> {
    let ids = [Sheet::A4, Sheet::UsLetter].map(Sheet::id);
    PossibleValuesParser::new(ids).map(|id| Sheet::from_id(&id).unwrap_or_default())
}
