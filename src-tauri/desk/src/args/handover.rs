//! The commands that hand visits over, erase them and keep them safe.

use std::path::PathBuf;

use clap::builder::NonEmptyStringValueParser;
use clap::{Args, Subcommand};
use steady_core::app::request::Sheet;

use super::paper;

/// One of them, with what it works on.
#[derive(Debug, PartialEq, Eq, Subcommand)]
pub enum Task {
    /// Write visits, all of them if none is named, into a signed handover file
    Export(Export),
    /// Take in a handover file, after showing what it would change and asking; what is here already grows by what is new,
    /// and a visit that is not proven is left outside
    Import {
        /// The handover file
        #[arg(value_name = "FILE.steady")]
        file: PathBuf,
        /// Only say who sends it and what it would change; take nothing in
        #[arg(long)]
        look: bool,
        /// Take it in without showing and asking first: for scripts
        #[arg(long, conflicts_with = "look")]
        yes: bool,
        /// Begin a new data folder where none of that name is there
        #[arg(long)]
        new: bool,
        #[command(flatten)]
        how: How,
    },
    /// Check every byte, chain and photo of a handover file, and say who made it
    Verify {
        /// The handover file
        #[arg(value_name = "FILE.steady")]
        file: PathBuf,
        /// Print one JSON object instead of a summary
        #[arg(long)]
        json: bool,
    },
    /// Erase a visit for good, at its owner's wish
    Erase {
        /// The visit
        visit: String,
        /// Its plate, or the last block of its id
        #[arg(long = "confirm", value_name = "WORD", value_parser = NonEmptyStringValueParser::new())]
        word: String,
        #[command(flatten)]
        how: How,
    },
    /// Back everything up in a folder of its own, beside a Steady that is at work; the latest seven backups stay, and
    /// one a month
    Backup {
        /// The backup's folder
        #[arg(value_name = "DIR")]
        folder: PathBuf,
        /// Only name the backups that are there
        #[arg(long)]
        list: bool,
        /// Only read everything in them back, and name what is damaged
        #[arg(long, conflicts_with = "list")]
        check: bool,
        #[command(flatten)]
        how: How,
    },
    /// Take in what a backup holds and the data folder does not, and make damaged photos whole
    Restore {
        /// The backup's folder, or a backup that is one file
        #[arg(value_name = "DIR")]
        folder: PathBuf,
        /// The backup of that time, or the last of that day; the latest if not given
        #[arg(long, value_name = "WHEN", value_parser = NonEmptyStringValueParser::new())]
        generation: Option<String>,
        /// Begin a new data folder where none of that name is there
        #[arg(long)]
        new: bool,
        #[command(flatten)]
        how: How,
    },
    /// Take in every visit of a set-aside, damaged database that still verifies
    Salvage {
        /// The database
        #[arg(value_name = "STEADY.DB")]
        file: PathBuf,
        /// Begin a new data folder where none of that name is there
        #[arg(long)]
        new: bool,
        #[command(flatten)]
        how: How,
    },
}

/// What goes into a handover file. What is not given of the papers is as each was last made.
#[derive(Debug, PartialEq, Eq, Args)]
pub struct Export {
    /// The visits
    #[arg(value_name = "VISIT")]
    pub visits: Vec<String>,
    /// The file to write
    #[arg(long, value_name = "FILE.steady")]
    pub out: PathBuf,
    /// Put it in the place of a file of that name
    #[arg(long)]
    pub replace: bool,
    /// Their papers too
    #[arg(long)]
    pub papers: bool,
    /// Language of the papers; the one each was last made in if not given
    #[arg(long, value_name = "TAG", requires = "papers", value_parser = paper::language())]
    pub lang: Option<String>,
    /// Sheet of the papers; the one each was last made on if not given
    #[arg(long, requires = "papers", value_parser = paper::sheet())]
    pub sheet: Option<Sheet>,
    #[command(flatten)]
    pub how: How,
}

/// Where, and how it is answered.
#[derive(Debug, Default, Clone, PartialEq, Eq, Args)]
pub struct How {
    /// Folder of the visits; the platform's data folder if not given
    #[arg(long, value_name = "DIR")]
    pub data: Option<PathBuf>,
    /// Print one JSON object instead of a summary
    #[arg(long)]
    pub json: bool,
}
