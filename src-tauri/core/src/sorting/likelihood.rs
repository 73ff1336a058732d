//! The words for a probability.
//!
//! Source: IPCC, Guidance Note for Lead Authors of the Fifth Assessment Report on Consistent Treatment
//! of Uncertainties (2010), table 1, from memory.

/// Id of the likelihood word for a probability from 0 to 1; the text is `likelihood-ID`.
pub fn word(probability: f64) -> &'static str {
    const SCALE: [(f64, &str); 6] = [
        (0.01, "exceptionally-unlikely"),
        (0.10, "very-unlikely"),
        (0.33, "unlikely"),
        (0.66, "about-as-likely-as-not"),
        (0.90, "likely"),
        (0.99, "very-likely"),
    ];
    SCALE.iter().find(|(below, _)| probability < *below).map_or("virtually-certain", |(_, word)| word)
}
