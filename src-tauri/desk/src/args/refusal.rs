//! Why a command line is not understood: a code, a sentence, and what to do. What was typed is never repeated: it may
//! be a name or a plate. What is suggested is one of our own words.

use clap::error::{ContextKind, ContextValue, ErrorKind};
use steady_core::app::failure::Failure;

use super::Asked;
use crate::fault;

/// Options whose value can be wrong, each with its code and what is wrong then.
const VALUES: [(&str, &str, &str); 5] = [
    ("--port", "bad-port", "the port is not a number from 0 to 65535"),
    ("--sheet", "bad-sheet", "there is no such sheet"),
    ("--lang", "unknown-locale", "there are no texts in that language"),
    ("--axis", "bad-axis", "the axis is not known"),
    ("<SHELL>", "bad-shell", "there are no completions for that shell"),
];

/// Help and version are no refusals.
pub fn of(error: &clap::Error) -> Result<Asked, Failure> {
    let (code, message) = match error.kind() {
        ErrorKind::DisplayHelp
        | ErrorKind::DisplayVersion
        | ErrorKind::DisplayHelpOnMissingArgumentOrSubcommand => {
            return Ok(Asked::Say(error.render().to_string()));
        }
        ErrorKind::InvalidSubcommand => ("unknown-command", "there is no such command".to_owned()),
        ErrorKind::MissingRequiredArgument => {
            ("missing-argument", format!("{} is missing", listed(error, ContextKind::InvalidArg).join(", ")))
        }
        ErrorKind::InvalidValue | ErrorKind::ValueValidation => value(error),
        _ => ("unknown-argument", "there is an argument that Steady does not know".to_owned()),
    };
    Err(fault::failure(code, message, &help(error)))
}

fn value(error: &clap::Error) -> (&'static str, String) {
    let option = listed(error, ContextKind::InvalidArg).join(" ");
    if listed(error, ContextKind::InvalidValue).concat().is_empty() {
        return ("missing-value", format!("{option} lacks its value"));
    }
    let known = VALUES.iter().find(|(name, ..)| option.starts_with(name));
    known.map_or_else(
        || ("bad-value", format!("{option} does not take that value")),
        |(_, code, message)| (*code, (*message).to_owned()),
    )
}

/// What was meant perhaps, or what can be given, and where the whole is told.
fn help(error: &clap::Error) -> String {
    let suggested = [ContextKind::SuggestedSubcommand, ContextKind::SuggestedArg]
        .map(|kind| listed(error, kind))
        .concat();
    let can_be = listed(error, ContextKind::ValidValue);
    let first = if let Some(word) = suggested.first() {
        format!("Did you mean {word}? ")
    } else if can_be.is_empty() {
        String::new()
    } else {
        format!("Give one of {}. ", can_be.join(", "))
    };
    format!("{first}See steady --help, or steady COMMAND --help.")
}

fn listed(error: &clap::Error, kind: ContextKind) -> Vec<String> {
    match error.get(kind) {
        Some(ContextValue::String(text)) => vec![text.clone()],
        Some(ContextValue::Strings(texts)) => texts.clone(),
        _ => Vec::new(),
    }
}
