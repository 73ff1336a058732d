//! `steady sorted`: a visit as the knowledge of a version sorts it, the one it recorded if none is named.

use steady_core::app::failure::Failure;
use steady_core::app::response::Response;
use steady_core::model::standing::Standing;

use crate::args::Sorted;
use crate::{fault, house, say};

/// Runs the command.
pub fn run(how: &Sorted) -> Result<(), Failure> {
    let copy = house::open_copy(&house::data_dir(how.data.as_deref(), house::Begin::Never)?)?;
    let sorted = copy.as_sorted(how.visit.clone(), how.knowledge.clone())?;
    let Response::Visit(standing) = sorted else { return Err(fault::internal()) };
    if how.json {
        let json = serde_json::to_string_pretty(&*standing).map_err(|_| fault::internal())?;
        say::line(&json);
    } else {
        lines(&standing);
    }
    Ok(())
}

fn lines(standing: &Standing) {
    say::line(&format!("Knowledge   {}", standing.knowledge));
    let word = standing.urgency.word.map_or("not yet checked", |word| word.id());
    say::line(&format!("Urgency     {word}"));
    for cause in &standing.sorting.causes {
        say::line(&format!("{:>7.3}     {}", cause.probability, cause.id));
    }
}
