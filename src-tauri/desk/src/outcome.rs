//! `steady outcome`: records what a visit turned out to be, and says how far learning has come.

use steady_core::app::failure::Failure;
use steady_core::app::request::Request;
use steady_core::app::response::Response;

use crate::args::Outcome;
use crate::{fault, house, say};

/// Runs the command.
pub fn run(how: &Outcome) -> Result<(), Failure> {
    let steady = house::open(&house::data_dir(how.data.as_deref(), house::Begin::Never)?)?;
    let request =
        Request::ConfirmOutcome { visit: how.visit.clone(), causes: how.causes.clone(), by: how.by.clone() };
    let Response::Visit(standing) = steady.handle(request)? else { return Err(fault::internal()) };
    let Response::Calibration(page) = steady.handle(Request::Calibration)? else {
        return Err(fault::internal());
    };
    let recorded = standing.outcome.as_ref().map(|outcome| outcome.causes.join(", ")).unwrap_or_default();
    say::line(&format!("Outcome     {recorded}"));
    say::line(&format!("Outcomes    {} in all; a layout learns from {} on", page.outcomes, page.enough));
    Ok(())
}
