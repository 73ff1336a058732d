//! The words of `steady fit`: one option for each size and material that the core knows by name. What a value means
//! is the core's business.

use clap::{Arg, ArgMatches, Args, Command, Error, FromArgMatches};

/// Which fit to work out.
#[derive(Debug, PartialEq, Eq, Args)]
#[command(
    after_help = "Sizes in mm; each measured one wins over its class, and takes its uncertainty (95 %) in um."
)]
pub struct Fit {
    #[command(flatten)]
    pub values: Values,
    /// Print one JSON object instead of a summary
    #[arg(long)]
    pub json: bool,
}

/// The values as given, by the names the core knows.
#[derive(Debug, Default, PartialEq, Eq)]
pub struct Values(pub Vec<(String, String)>);

/// Each name, what stands for its value in the help, and what it is.
pub(super) const OPTIONS: [(&str, &str, &str); 17] = [
    ("bearing-od", "MM", "Bearing: nominal outside diameter"),
    ("bearing-bore", "MM", "Bearing: nominal bore"),
    ("bearing-width", "MM", "Bearing: nominal width"),
    ("od", "MM", "Bearing: outside diameter as measured"),
    ("od-u", "UM", "Bearing: uncertainty of that"),
    ("group", "GROUP", "Bearing: clearance group, such as C3"),
    ("class", "CLASS", "Seat: hole class, such as N7"),
    ("bore", "MM", "Seat: bore as measured"),
    ("bore-u", "UM", "Seat: uncertainty of that"),
    ("housing", "MATERIAL", "Housing: material, such as A356"),
    ("housing-od", "MM", "Housing: outside diameter"),
    ("sleeve", "MATERIAL", "Sleeve: material, such as mild-steel"),
    ("sleeve-od", "MM", "Sleeve: outside diameter"),
    ("sleeve-od-u", "UM", "Sleeve: uncertainty of that"),
    ("housing-bore", "MM", "Sleeve: bore of the housing that it sits in"),
    ("housing-bore-u", "UM", "Sleeve: uncertainty of that"),
    ("temp", "A..B", "Lowest and highest temperature in use, Celsius"),
];

impl Args for Values {
    fn augment_args(command: Command) -> Command {
        let option = |(name, value, help): (&'static str, &'static str, &'static str)| {
            Arg::new(name).long(name).value_name(value).help(help).allow_hyphen_values(true)
        };
        command.args(OPTIONS.map(option))
    }

    fn augment_args_for_update(command: Command) -> Command {
        Self::augment_args(command)
    }
}

impl FromArgMatches for Values {
    fn from_arg_matches(matches: &ArgMatches) -> Result<Self, Error> {
        let given = |(name, ..): (&str, &str, &str)| {
            matches.get_one::<String>(name).map(|value| (name.to_owned(), value.clone()))
        };
        Ok(Self(OPTIONS.into_iter().filter_map(given).collect()))
    }

    fn update_from_arg_matches(&mut self, matches: &ArgMatches) -> Result<(), Error> {
        *self = Self::from_arg_matches(matches)?;
        Ok(())
    }
}
