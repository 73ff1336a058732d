//! The workshop's particulars: what is typed is read here, strictly, and kept.

use std::ops::RangeInclusive;

use crate::model::limits;
use crate::model::verdict::Verdict;
use crate::model::workshop::{HoursGiven, OwnInstrument, TierHours, Workshop, WorkshopGiven};

use super::failure::Failure;
use super::fault::{Fault, Refusal};
use super::response::Response;
use super::steady::{Inner, Steady, shown};
use super::workshop_lists;

/// The particulars as they stand.
pub(super) fn workshop(inner: &Inner) -> Response {
    Response::Workshop(Box::new(Workshop { instruments: instruments(inner), ..inner.workshop.clone() }))
}

/// The instruments, with what is overdue today.
pub(super) fn instruments(inner: &Inner) -> Vec<OwnInstrument> {
    let today = (inner.clock)().day();
    let as_of_today = |own: &OwnInstrument| OwnInstrument { overdue: own.is_overdue(&today), ..own.clone() };
    inner.workshop.instruments.iter().map(as_of_today).collect()
}

/// Takes the particulars anew, all of them.
pub(super) fn set(inner: &mut Inner, given: &WorkshopGiven) -> Result<Response, Fault> {
    let workshop = checked(given)?;
    inner.store.set_workshop(&workshop)?;
    inner.workshop = workshop;
    Ok(self::workshop(inner))
}

impl Steady {
    /// Takes over particulars that were checked elsewhere, with their units.
    pub(super) fn measure_as(&self, workshop: Workshop) -> Result<(), Failure> {
        let mut inner = self.lock();
        inner.store.set_workshop(&workshop).map_err(|fault| shown(&fault.into(), &inner.locale()))?;
        inner.workshop = workshop;
        Ok(())
    }

    /// Takes the workshop's particulars from the text of a JSON file, in the form of a request's.
    ///
    /// # Errors
    /// `workshop-unreadable`, or what a screen would have been told; the earlier ones then stand.
    pub fn set_workshop_json(&self, json: &str) -> Result<Workshop, Failure> {
        let mut inner = self.lock();
        let given = serde_json::from_str(json).map_err(|_| Refusal::WorkshopUnreadable.into());
        let set = given.and_then(|given| set(&mut inner, &given));
        set.map_err(|fault: Fault| shown(&fault, &inner.locale()))?;
        Ok(inner.workshop.clone())
    }
}

fn checked(given: &WorkshopGiven) -> Result<Workshop, Refusal> {
    let address: Vec<String> =
        given.address.iter().map(|text| line(text, limits::WORKSHOP_LINE)).collect::<Result<_, _>>()?;
    let address: Vec<String> = address.into_iter().filter(|text| !text.is_empty()).collect();
    if address.len() > limits::WORKSHOP_ADDRESS {
        return Err(Refusal::WorkshopTooLong);
    }
    let mut hours: Vec<TierHours> = Vec::new();
    for tier in Verdict::ALL {
        let typed = given.hours.iter().rfind(|typed| typed.tier == tier);
        hours.extend(typed.map(hours_of).transpose()?.flatten());
    }
    Ok(Workshop {
        name: line(&given.name, limits::WORKSHOP_LINE)?,
        address,
        phone: line(&given.phone, limits::WORKSHOP_PHONE)?,
        units: given.units,
        hours,
        rate: amount(&given.rate, &limits::WORKSHOP_RATE)?,
        currency: line(&given.currency, limits::WORKSHOP_CURRENCY)?,
        sleeves: workshop_lists::sleeves(&given.sleeves)?,
        instruments: workshop_lists::instruments(&given.instruments)?,
    })
}

/// Whether particulars that a folder brings are such as could have been entered here.
pub(super) fn is_sound(workshop: &Workshop) -> bool {
    let Workshop { name, address, phone, units: _, hours, rate, currency, sleeves, instruments } = workshop;
    let fits = |text: &String, longest: usize| line(text, longest).is_ok_and(|kept| kept == *text);
    let lines = fits(name, limits::WORKSHOP_LINE)
        && address.len() <= limits::WORKSHOP_ADDRESS
        && address.iter().all(|text| fits(text, limits::WORKSHOP_LINE))
        && fits(phone, limits::WORKSHOP_PHONE)
        && fits(currency, limits::WORKSHOP_CURRENCY);
    let sound = |TierHours { from, to, .. }: &TierHours| {
        *from > 0.0 && from <= to && limits::WORKSHOP_HOURS.contains(to)
    };
    let paid = |rate: &f64| *rate > 0.0 && limits::WORKSHOP_RATE.contains(rate);
    let lists = workshop_lists::are_sound(sleeves, instruments);
    lines && lists && hours.len() <= Verdict::ALL.len() && hours.iter().all(sound) && rate.iter().all(paid)
}

/// One line of text, trimmed; what would break out of a line, or turn round what stands in it, is refused.
pub(super) fn line(text: &str, longest: usize) -> Result<String, Refusal> {
    let text = text.trim();
    let fits = text.chars().count() <= longest && limits::is_printable(text, false);
    if fits { Ok(text.to_owned()) } else { Err(Refusal::WorkshopTooLong) }
}

fn hours_of(typed: &HoursGiven) -> Result<Option<TierHours>, Refusal> {
    let (from, to) =
        (amount(&typed.from, &limits::WORKSHOP_HOURS)?, amount(&typed.to, &limits::WORKSHOP_HOURS)?);
    let Some((from, to)) = from.or(to).zip(to.or(from)) else { return Ok(None) };
    if from > to {
        return Err(Refusal::WorkshopNumber);
    }
    Ok(Some(TierHours { tier: typed.tier, from, to }))
}

/// A number above zero with at most two decimals, in any of our languages: a point or a comma sets decimals
/// off. Three digits behind it could be either and are refused, as is everything else.
fn amount(text: &str, bound: &RangeInclusive<f64>) -> Result<Option<f64>, Refusal> {
    let text = text.trim();
    if text.is_empty() {
        return Ok(None);
    }
    let (whole, decimals) = text.split_once(['.', ',']).unwrap_or((text, ""));
    let digits = |part: &str| part.bytes().all(|byte| byte.is_ascii_digit());
    if whole.is_empty() || whole.len() > 9 || decimals.len() > 2 || !digits(whole) || !digits(decimals) {
        return Err(Refusal::WorkshopNumber);
    }
    let value: f64 = format!("{whole}.{decimals}0").parse().map_err(|_| Refusal::WorkshopNumber)?;
    if value > 0.0 && bound.contains(&value) { Ok(Some(value)) } else { Err(Refusal::WorkshopNumber) }
}

#[cfg(test)]
mod tests {
    use super::{amount, checked};
    use crate::app::fault::Refusal;
    use crate::model::verdict::Verdict;
    use crate::model::workshop::{HoursGiven, WorkshopGiven};

    #[track_caller]
    fn check_amount(text: &str, expected: Result<Option<f64>, Refusal>) {
        assert_eq!(amount(text, &(0.0..=1_000.0)), expected, "{text}");
    }

    #[test]
    fn a_point_and_a_comma_set_decimals_off() {
        check_amount("95", Ok(Some(95.0)));
        check_amount(" 2.5 ", Ok(Some(2.5)));
        check_amount("2,50", Ok(Some(2.5)));
        check_amount("1000", Ok(Some(1_000.0)));
        check_amount("", Ok(None));
    }

    #[test]
    fn what_could_mean_two_things_is_refused() {
        for text in ["1,000", "1.000", "1 000", "-1", "0", "1e2", "1000.01", ".5", "1.5.2", "2 h", "\u{0661}"]
        {
            check_amount(text, Err(Refusal::WorkshopNumber));
        }
    }

    fn hours(from: &str, to: &str) -> WorkshopGiven {
        let tier = Verdict::BearingsOnly;
        let hours = vec![HoursGiven { tier, from: from.to_owned(), to: to.to_owned() }];
        WorkshopGiven { hours, ..WorkshopGiven::default() }
    }

    #[test]
    fn hours_have_two_ends_in_order_or_none() {
        let ends = |from: &str, to: &str| {
            checked(&hours(from, to)).map(|workshop| workshop.hours.first().map(|it| (it.from, it.to)))
        };
        assert_eq!(ends("2", "3,5"), Ok(Some((2.0, 3.5))));
        assert_eq!(ends("2", ""), Ok(Some((2.0, 2.0))));
        assert_eq!(ends("", ""), Ok(None));
        assert_eq!(ends("3", "2"), Err(Refusal::WorkshopNumber));
        assert_eq!(ends("201", ""), Err(Refusal::WorkshopNumber));
    }

    #[test]
    fn texts_are_bounded_and_stay_on_their_line() {
        let named = |name: String| checked(&WorkshopGiven { name, ..WorkshopGiven::default() });
        assert_eq!(named(format!(" {} ", "\u{00e9}".repeat(100))).map(|it| it.name.chars().count()), Ok(100));
        assert_eq!(named("a".repeat(101)), Err(Refusal::WorkshopTooLong));
        assert_eq!(named("a\nb".to_owned()), Err(Refusal::WorkshopTooLong));
        let address = |lines: &[&str]| {
            let address = lines.iter().map(|line| (*line).to_owned()).collect();
            checked(&WorkshopGiven { address, ..WorkshopGiven::default() }).map(|it| it.address.len())
        };
        assert_eq!(address(&["a", " ", "b", "c", "d"]), Ok(4));
        assert_eq!(address(&["a", "b", "c", "d", "e"]), Err(Refusal::WorkshopTooLong));
    }
}
