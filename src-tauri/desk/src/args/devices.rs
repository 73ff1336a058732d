//! The commands about devices: whom to trust, and what was taken in from them.

use clap::builder::NonEmptyStringValueParser;
use clap::{Args, Subcommand};

use super::handover::How;

/// One of them, with what it works on.
#[derive(Debug, PartialEq, Eq, Subcommand)]
pub enum Task {
    /// List this device's code, every other device that was met, and every file that was taken in
    Devices {
        #[command(flatten)]
        how: How,
    },
    /// Decide about a device that was met
    Device {
        #[command(subcommand)]
        decision: DeviceVerb,
    },
    /// Take a whole import back; what it brought is left out again
    TakeBack {
        /// Its number, as `steady devices` lists it
        import: i64,
        #[command(flatten)]
        how: How,
    },
}

/// What is decided.
#[derive(Debug, PartialEq, Eq, Subcommand)]
pub enum DeviceVerb {
    /// Its code was read from its own screen, and is this
    Confirm {
        #[command(flatten)]
        which: Which,
        /// The digits, as the other device shows them; spaces may be left out
        #[arg(value_name = "CODE", required = true, num_args = 1.., value_parser = NonEmptyStringValueParser::new())]
        code: Vec<String>,
        #[command(flatten)]
        how: How,
    },
    /// Call it by a name; an empty one takes the name away
    Name {
        #[command(flatten)]
        which: Which,
        /// The name
        name: String,
        #[command(flatten)]
        how: How,
    },
    /// It was lost or replaced: nothing new comes in from it
    Retire {
        #[command(flatten)]
        which: Which,
        #[command(flatten)]
        how: How,
    },
    /// This device took its place: what it wrote counts as confirmed, and nothing new comes in from it
    TakeOver {
        #[command(flatten)]
        which: Which,
        #[command(flatten)]
        how: How,
    },
    /// It counts as not yet confirmed, as when it was first met
    StartOver {
        #[command(flatten)]
        which: Which,
        #[command(flatten)]
        how: How,
    },
}

/// Which device.
#[derive(Debug, PartialEq, Eq, Args)]
pub struct Which {
    /// The beginning of its id, as `steady devices` lists it
    #[arg(value_name = "DEVICE", value_parser = NonEmptyStringValueParser::new())]
    pub device: String,
    /// Who decides it; the technician if not given
    #[arg(long, value_name = "NAME", value_parser = NonEmptyStringValueParser::new())]
    pub by: Option<String>,
}
