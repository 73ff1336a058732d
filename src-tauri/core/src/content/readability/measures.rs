//! The reading measures, with the limit a note has to keep. Which of them a language is held to, its `checks.toml` says.

use super::counts::{Counts, counts};
use super::syllables::{Rule, english, french, german, spanish};
use crate::words::for_tests::checks;

/// A published formula and what it allows.
pub struct Measure {
    pub name: &'static str,
    /// How syllables are counted in the language it was made for.
    pub syllables: Rule,
    /// The figure of a text's counts.
    pub formula: fn(Counts) -> f64,
    /// The limit that stands for eight years of school.
    pub limit: Limit,
}

/// On which side of a figure easy texts lie.
#[derive(Debug, Clone, Copy)]
pub enum Limit {
    /// A school grade: at most this.
    AtMost(f64),
    /// Reading ease: at least this.
    AtLeast(f64),
}

/// Every measure that a language may be held to.
pub const MEASURES: [Measure; 6] = [
    // Kincaid, Fishburne, Rogers & Chissom (1975), Navy Research Branch Report 8-75, quoted by the US
    // Department of Veterans Affairs, HSR&D.
    Measure {
        name: "Flesch-Kincaid grade",
        syllables: english,
        formula: |it| 0.39 * a_sentence(it) + 11.8 * a_word(it) - 15.59,
        limit: Limit::AtMost(8.0),
    },
    // Bamberger & Vanecek (1984), Lesen, Verstehen, Lernen, Schreiben: the first Wiener Sachtextformel. Its
    // figure is the school grade.
    Measure {
        name: "Wiener Sachtextformel 1",
        syllables: german,
        formula: |it| {
            0.1935 * share(it.of_three, it) + 0.1672 * a_sentence(it) + 0.1297 * share(it.long, it)
                - 0.0327 * share(it.of_one, it)
                - 0.875
        },
        limit: Limit::AtMost(8.0),
    },
    // Fernández Huerta (1959), Medidas sencillas de lecturabilidad, Consigna 214. His table reads 60 to 70 as
    // normal, seventh and eighth grade.
    Measure {
        name: "Fernández Huerta",
        syllables: spanish,
        formula: |it| 206.84 - 60.0 * a_word(it) - 1.02 * a_sentence(it),
        limit: Limit::AtLeast(60.0),
    },
    // Kandel & Moles (1958), Application de l'indice de Flesch à la langue française. Read with Flesch's own
    // table (1949), in which 60 to 70 is standard, eighth and ninth grade: its middle is the end of the eighth.
    Measure {
        name: "Kandel-Moles",
        syllables: french,
        formula: |it| 207.0 - 1.015 * a_sentence(it) - 73.6 * a_word(it),
        limit: Limit::AtLeast(65.0),
    },
    // Amstad (1978), Wie verständlich sind unsere Zeitungen?, Zürich: Flesch's reading ease for German.
    Measure {
        name: "Amstad",
        syllables: german,
        formula: |it| 180.0 - a_sentence(it) - 58.5 * a_word(it),
        limit: Limit::AtLeast(60.0),
    },
    // Szigriszt Pazos (1993), Sistemas predictivos de legibilidad del mensaje escrito, Madrid. His constant is
    // 206.835; the figure is kept beside Fernández Huerta's because later Spanish studies use it.
    Measure {
        name: "Szigriszt-Pazos",
        syllables: spanish,
        formula: |it| 206.835 - 62.3 * a_word(it) - a_sentence(it),
        limit: Limit::AtLeast(60.0),
    },
];

impl Measure {
    /// The figure of a text.
    pub fn of(&self, text: &str) -> f64 {
        (self.formula)(counts(text, self.syllables))
    }

    /// Whether a figure keeps the limit.
    pub fn keeps(&self, figure: f64) -> bool {
        match self.limit {
            Limit::AtMost(most) => figure <= most,
            Limit::AtLeast(least) => figure >= least,
        }
    }

    /// The harder of two figures.
    pub fn harder(&self, one: f64, other: f64) -> f64 {
        match self.limit {
            Limit::AtMost(_) => one.max(other),
            Limit::AtLeast(_) => one.min(other),
        }
    }
}

/// The measures of a language; none where no formula is known for it, and its `checks.toml` then says so.
pub fn measures(locale: &str) -> Vec<&'static Measure> {
    let named = checks(locale).readability;
    let found = named.iter().map(|name| MEASURES.iter().find(|measure| measure.name == name));
    found
        .map(|measure| measure.unwrap_or_else(|| panic!("{locale} names a measure that is not there")))
        .collect()
}

/// Words a sentence.
pub fn a_sentence(it: Counts) -> f64 {
    it.words as f64 / it.sentences as f64
}

fn a_word(it: Counts) -> f64 {
    it.syllables as f64 / it.words as f64
}

fn share(some: usize, it: Counts) -> f64 {
    100.0 * some as f64 / it.words as f64
}
