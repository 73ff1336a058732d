//! What a sleeve of the workshop's stock would do, as a sentence.

use crate::model::fit::StockSays;
use crate::model::workshop::StockSleeve;
use crate::words::Words;

/// The sentence of one sleeve, with what the housing's bore may be for it, mm.
pub fn stock_line(words: &Words, sleeve: &StockSleeve, says: StockSays, bore: Option<[f64; 2]>) -> String {
    let name = words.with(
        "stock-sleeve",
        &[
            ("material", words.text(&format!("material-{}", sleeve.material)).into()),
            ("outside", words.measured(sleeve.outside_mm).into()),
            ("bore", words.measured(sleeve.bore_mm).into()),
        ],
    );
    let id = match says {
        StockSays::Open => "stock-open",
        StockSays::Fits => "stock-fits",
        StockSays::BoreTo => "stock-bore-to",
        StockSays::BoreTooWide => "stock-bore-too-wide",
        StockSays::TooThin => "stock-too-thin",
        StockSays::NoWall => "stock-no-wall",
        StockSays::OwnBoreTooWide => "stock-own-bore-too-wide",
        StockSays::NoneHolds => "stock-none-holds",
        StockSays::WallTooThin => "stock-wall-too-thin",
        StockSays::HousingReplaced => "stock-housing-replaced",
    };
    let [least, most] = bore.map_or_else(Default::default, |ends| ends.map(|mm| words.measured(mm)));
    words.with(id, &[("sleeve", name.into()), ("least", least.into()), ("most", most.into())])
}

#[cfg(test)]
mod tests {
    use super::stock_line;
    use crate::model::fit::StockSays;
    use crate::model::workshop::StockSleeve;
    use crate::words::Words;

    /// A missing text stops the test: see `words::in_place_of_text`.
    #[test]
    fn every_sleeve_of_the_stock_has_its_sentence() {
        let words = Words::of("en").expect("English is shipped");
        let sleeve = StockSleeve { material: "mild-steel".to_owned(), outside_mm: 76.0, bore_mm: 70.0 };
        for says in [
            StockSays::Open,
            StockSays::Fits,
            StockSays::BoreTo,
            StockSays::BoreTooWide,
            StockSays::TooThin,
            StockSays::NoWall,
            StockSays::OwnBoreTooWide,
            StockSays::NoneHolds,
            StockSays::WallTooThin,
            StockSays::HousingReplaced,
        ] {
            let line = stock_line(words, &sleeve, says, Some([75.9, 75.96]));
            assert!(line.contains("76.0000 mm") || line.contains("76 mm"), "{line}");
        }
    }
}
