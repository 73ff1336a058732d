//! The text files that are compiled in. The screens' own file, `screens.ftl`, is read by the screens alone.

/// One language and its files, each with its name.
pub struct Locale {
    /// Language tag.
    pub tag: &'static str,
    /// File name and text.
    pub files: &'static [(&'static str, &'static str)],
}

/// Every language.
pub const LOCALES: &[Locale] = &[Locale {
    tag: "en",
    files: &[
        ("en/answers.ftl", include_str!("../../text/en/answers.ftl")),
        ("en/bench-bore.ftl", include_str!("../../text/en/bench-bore.ftl")),
        ("en/bench-fit.ftl", include_str!("../../text/en/bench-fit.ftl")),
        ("en/bench-gauge.ftl", include_str!("../../text/en/bench-gauge.ftl")),
        ("en/bench-verdict.ftl", include_str!("../../text/en/bench-verdict.ftl")),
        ("en/causes.ftl", include_str!("../../text/en/causes.ftl")),
        ("en/drawings.ftl", include_str!("../../text/en/drawings.ftl")),
        ("en/errors.ftl", include_str!("../../text/en/errors.ftl")),
        ("en/gates.ftl", include_str!("../../text/en/gates.ftl")),
        ("en/handover.ftl", include_str!("../../text/en/handover.ftl")),
        ("en/papers.ftl", include_str!("../../text/en/papers.ftl")),
        ("en/repair.ftl", include_str!("../../text/en/repair.ftl")),
        ("en/road.ftl", include_str!("../../text/en/road.ftl")),
        ("en/rules.ftl", include_str!("../../text/en/rules.ftl")),
        ("en/signals.ftl", include_str!("../../text/en/signals.ftl")),
        ("en/sorting.ftl", include_str!("../../text/en/sorting.ftl")),
        ("en/steps.ftl", include_str!("../../text/en/steps.ftl")),
    ],
}];
