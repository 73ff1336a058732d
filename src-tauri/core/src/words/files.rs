//! The text files that are compiled in. The screens' own file, `screens.ftl`, is read by the screens alone.

/// One language and its files, each with its name.
pub struct Locale {
    /// Language tag.
    pub tag: &'static str,
    /// File name and text.
    pub files: &'static [(&'static str, &'static str)],
}

/// The files of one language. A macro, because a path to compile in must be written out.
macro_rules! locale {
    ($tag:literal, $($name:literal)+) => {
        Locale {
            tag: $tag,
            files: &[$((
                concat!($tag, "/", $name, ".ftl"),
                include_str!(concat!("../../text/", $tag, "/", $name, ".ftl")),
            )),+],
        }
    };
}

/// Every language, English first: the others are measured against it.
#[rustfmt::skip]
pub const LOCALES: &[Locale] = &[
    locale!("en", "answers" "bench-bore" "bench-fit" "bench-gauge" "bench-verdict" "causes" "drawings" "errors" "gates"
        "handover" "papers" "repair" "road" "rules" "signals" "sorting" "steps"
        "workshop"),
    locale!("de", "answers" "bench-bore" "bench-fit" "bench-gauge" "bench-verdict" "causes" "drawings" "errors" "gates"
        "handover" "papers" "repair" "road" "rules" "signals" "sorting" "steps"
        "workshop"),
    locale!("es", "answers" "bench-bore" "bench-fit" "bench-gauge" "bench-verdict" "causes" "drawings" "errors" "gates"
        "handover" "papers" "repair" "road" "rules" "signals" "sorting" "steps"
        "workshop"),
    locale!("fr", "answers" "bench-bore" "bench-fit" "bench-gauge" "bench-verdict" "causes" "drawings" "errors" "gates"
        "handover" "papers" "repair" "road" "rules" "signals" "sorting" "steps"
        "workshop"),
];
