//! The reading measures, one language each, with the limit a note has to keep.

use super::counts::{Counts, counts};

/// A published formula and what it allows.
pub struct Measure {
    /// Language tag.
    pub locale: &'static str,
    /// Its name.
    pub name: &'static str,
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

/// The first measure of each language is the one that binds its note.
pub const MEASURES: [Measure; 6] = [
    // Kincaid, Fishburne, Rogers & Chissom (1975), Navy Research Branch Report 8-75, quoted by the US
    // Department of Veterans Affairs, HSR&D.
    Measure {
        locale: "en",
        name: "Flesch-Kincaid grade",
        formula: |it| 0.39 * a_sentence(it) + 11.8 * a_word(it) - 15.59,
        limit: Limit::AtMost(8.0),
    },
    // Bamberger & Vanecek (1984), Lesen, Verstehen, Lernen, Schreiben: the first Wiener Sachtextformel. Its
    // figure is the school grade.
    Measure {
        locale: "de",
        name: "Wiener Sachtextformel 1",
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
        locale: "es",
        name: "Fernández Huerta",
        formula: |it| 206.84 - 60.0 * a_word(it) - 1.02 * a_sentence(it),
        limit: Limit::AtLeast(60.0),
    },
    // Kandel & Moles (1958), Application de l'indice de Flesch à la langue française. Read with Flesch's own
    // table (1949), in which 60 to 70 is standard, eighth and ninth grade: its middle is the end of the eighth.
    Measure {
        locale: "fr",
        name: "Kandel-Moles",
        formula: |it| 207.0 - 1.015 * a_sentence(it) - 73.6 * a_word(it),
        limit: Limit::AtLeast(65.0),
    },
    // Amstad (1978), Wie verständlich sind unsere Zeitungen?, Zürich: Flesch's reading ease for German.
    Measure {
        locale: "de",
        name: "Amstad",
        formula: |it| 180.0 - a_sentence(it) - 58.5 * a_word(it),
        limit: Limit::AtLeast(60.0),
    },
    // Szigriszt Pazos (1993), Sistemas predictivos de legibilidad del mensaje escrito, Madrid. His constant is
    // 206.835; the figure is kept beside Fernández Huerta's because later Spanish studies use it.
    Measure {
        locale: "es",
        name: "Szigriszt-Pazos",
        formula: |it| 206.835 - 62.3 * a_word(it) - a_sentence(it),
        limit: Limit::AtLeast(60.0),
    },
];

impl Measure {
    /// The figure of a text.
    pub fn of(&self, text: &str) -> f64 {
        (self.formula)(counts(text, self.locale))
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

/// The measures of a language.
pub fn measures(locale: &str) -> impl Iterator<Item = &'static Measure> {
    MEASURES.iter().filter(move |measure| measure.locale == locale)
}

fn a_sentence(it: Counts) -> f64 {
    it.words as f64 / it.sentences as f64
}

fn a_word(it: Counts) -> f64 {
    it.syllables as f64 / it.words as f64
}

fn share(some: usize, it: Counts) -> f64 {
    100.0 * some as f64 / it.words as f64
}
