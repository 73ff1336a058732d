//! The text files that are compiled in. The screens' own, `screens.ftl` and `bay.ftl`, are
//! read by the screens alone.

/// One language and its files, each with its name.
pub struct Locale {
    /// RFC 5646, such as `de`.
    pub tag: &'static str,
    /// The language that says what this one does not: a way of writing, such as `en-US`, holds only what differs.
    pub over: Option<&'static str>,
    /// File name and text.
    pub files: &'static [(&'static str, &'static str)],
}

/// The files of one language. A macro, because a path to compile in must be written out.
macro_rules! files {
    ($tag:literal, $over:expr, $($name:literal)+) => {
        Locale {
            tag: $tag,
            over: $over,
            files: &[$((
                concat!($tag, "/", $name, ".ftl"),
                include_str!(concat!("../../text/", $tag, "/", $name, ".ftl")),
            )),+],
        }
    };
}

/// One language: each has the same files.
macro_rules! locale {
    ($tag:literal) => {
        files!($tag, None, "answers" "backup" "before" "before-after" "bench-bore" "bench-entry" "bench-fit" "bench-gauge" "bench-hold"
            "bench-old-sleeve" "bench-read" "bench-run-out" "bench-sleeve" "bench-verdict" "causes" "devices" "drawings" "driveline" "errors"
            "found" "gates" "handover" "in-part" "language" "limits" "machinist" "papers" "photos" "quick" "repair"
            "repair-parts" "road" "road-test" "rules" "set-aside" "signals" "sorting" "steps" "together" "vin" "workshop"
            "workshop-lists")
    };
}

/// A way of writing a language that stands before it: what it does not say, that one says.
macro_rules! variant {
    ($tag:literal over $whole:literal) => {
        files!($tag, Some($whole), "differs" "language")
    };
}

/// Every language, English first: the others are measured against it.
pub const LOCALES: &[Locale] =
    &[locale!("en"), variant!("en-US" over "en"), locale!("de"), locale!("es"), locale!("fr"), locale!("he")];
