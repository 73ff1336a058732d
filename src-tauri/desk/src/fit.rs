//! `steady fit`: sizes and materials through the core, then printed.

use steady_core::app::failure::Failure;
use steady_core::app::fit::fit_of_values;

use crate::args::fit::Fit;
use crate::{fault, say};

/// Language of the sentences.
const LOCALE: &str = "en";

/// Runs the command.
pub fn run(how: &Fit) -> Result<(), Failure> {
    let fitted = fit_of_values(&how.values.0, LOCALE)?;
    if how.json {
        say::line(&serde_json::to_string(&fitted.result).map_err(|_| fault::internal())?);
    } else {
        say::line(&fitted.lines.join("\n"));
    }
    Ok(())
}
