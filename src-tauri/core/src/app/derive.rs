//! From a visit's entries to its [`Standing`]: hands the walk's result to the sorting, and both to the
//! urgency. Pure; nothing here is stored.

use std::cell::LazyCell;
use std::collections::BTreeMap;

use crate::content::{urgency_id, word_reasons};
use crate::model::bench::{BenchBody, GaugeStand};
use crate::model::by_hash::HashesSeen;
use crate::model::case::{Case, CaseAnswer};
use crate::model::device::{Devices, WriterStand};
use crate::model::entry::{Entry, EntryBody, PhotoRef};
use crate::model::gates::Lock;
use crate::model::ids::{self, STATIONS, step};
use crate::model::photo_of::PhotoOf;
use crate::model::rating::{Urgency, Word};
use crate::model::standing::{
    AnswerForm, Answered, Choice, Elsewhere, LedgerStand, PhotoStand, Position, ReceiptStand, RepairStage,
    RoadRow, Standing, StationStand, StepStand, Support, TurnsWith, UndoOffer,
};
use crate::model::time::Moment;
use crate::model::visit::Intake;
use crate::sorting::draws::Draws;
use crate::sorting::next::OpenStep;
use crate::sorting::sort::{explain_judged, sort, sort_judged};
use crate::trade::Trade;
use crate::trade::bench::BenchTables;
use crate::trade::rows::{AnswerRow, Form, Layout, Reads, Speed, StepRow};
use crate::urgency::rating;
use crate::walk::bench::{self, BenchRecord, TEARDOWN};
use crate::walk::record::{self, Record, StandingAnswer};
use crate::walk::{applies, case, former, locks, order, position, relayout, together, undo, vin};

use super::drawn::DrawnFor;
use super::fault::Refusal;
use super::{asks, concern, devices, explained, milder, next_check, outcome, play_gauge};

/// What a standing is derived from: a visit's entries, what stands of them, what is known of their chain, and on which
/// device it is looked at.
#[derive(Debug, Clone, Copy)]
pub struct Visit<'a> {
    /// The visit's id.
    pub id: &'a str,
    /// Its entries, in order.
    pub entries: &'a [Entry],
    pub record: &'a Record,
    /// Place of the first entry that does not fit its chain.
    pub broken_at: Option<u64>,
    pub device: &'a str,
    /// What was decided about the others.
    pub devices: &'a Devices,
}

/// Where a visit stands. `drawn` keeps the drawn networks of each kind of car.
///
/// # Errors
/// [`Refusal::UnknownVisit`] without entries, [`Refusal::UnknownLayout`] if its layout file is gone.
pub fn standing(trade: &Trade, visit: Visit<'_>, drawn: &DrawnFor) -> Result<Standing, Refusal> {
    visit.entries.first().ok_or(Refusal::UnknownVisit)?;
    let record = visit.record;
    let visit = Visit { broken_at: visit.broken_at.or_else(|| names_what_is_gone(visit)), ..visit };
    let layout = trade.layout(&record.intake.vehicle.layout).ok_or(Refusal::UnknownLayout)?;
    let mut case = case::case(trade, layout, record);
    let mut bench = bench::read(visit.entries, record);
    let apart = play_gauge::set_apart(trade, layout, record, &mut bench);
    let gauges = gauge_stands(&bench, record)?;
    let hands = case.clone();
    play_gauge::count_in(&mut case, &gauges);
    let danger = rating::danger_step(&case);
    let rows = shown_steps(trade, layout, record);
    let apart: Vec<Elsewhere> = record.elsewhere.iter().map(elsewhere).chain(apart).collect();
    case.apart = apart.iter().any(|each| relayout::found(trade, &each.step, &each.value));
    let known = (trade, &*drawn.of(trade, &case));
    let (steps, mut urgency) = rated(known, layout, (visit, danger.as_deref()), &rows, (&case, &hands));
    let off_the_road = urgency.do_not_drive == Some(true);
    // A car that is not to be driven is not run to find out more.
    let still = urgency.word >= Some(Word::Warning);
    let found = asks::found(&steps);
    let open = open_steps(&case, &rows, still, concern::is_not_at_idle(trade, &case, &found));
    let mut sorting = sort(trade, &case, &open, Some(known.1));
    // What a rating says of itself rests on the numbers as judged too, whatever outcomes have taught.
    let other = (sorting.outcomes > 0).then(|| explain_judged(trade, &case, known.1));
    let untaught = other.as_ref().unwrap_or(&sorting);
    explained::leave_out(&mut urgency, untaught);
    let asks = asks::asks(&urgency, &steps, untaught);
    next_check::add_decisions(known, &case, &open, &urgency, &mut sorting);
    next_check::road_test_left(&steps, &mut sorting);
    explained::put_first(&mut sorting, &found, urgency.word);
    let order = order::order(trade, record);
    let sets = position::sets_in_order(order, &steps);
    let receipt = receipt(visit, urgency.word);
    let stops = danger.is_some() || off_the_road && record.entered.as_deref() == Some(locks::ROAD);
    let not_at_once = |row: &StepRow| is_behind_closed_tube(&case, row) || is_apart(trade, &apart, row);
    let looks = together::looks(&rows, &steps, order, not_at_once);
    let standing = Standing {
        visit: visit.id.to_owned(),
        opened_at: record.opened_at.unwrap_or(Moment(0)),
        updated_at: record.updated_at.unwrap_or(Moment(0)),
        vin_hint: vin::hint(&record.intake.vehicle.vin),
        layout_name: layout.name.clone(),
        support: layout.support,
        order,
        offers_order: record.entered.is_none() && position::offer_order(record, &steps, stops),
        entered: record.entered.clone(),
        position: position::position(trade, record, (&steps, &looks), stops),
        warmth: record.warmth,
        stations: stations(&steps),
        gate_sets: locks::gate_sets(trade, record, &sets, danger.as_deref()),
        headline: asks::headline(&urgency, &asks, None),
        asks,
        urgency,
        sorting,
        gauges,
        opinion: record.opinion.clone(),
        outcome: outcome::confirmed(record),
        repair: repair(&bench),
        found,
        milder: milder::told(trade, layout, record),
        elsewhere: apart,
        still_open: None,
        sounds: case.complaint_sounds.clone(),
        road_rows: road_rows(trade, &case),
        undo: undo_offer(trade, layout, (visit, &case)),
        receipt,
        ledger: ledger(visit),
        writers: writers(visit),
        knowledge: trade.version_for(&layout.id),
        opened_under: record.opened_under,
        technician: record.opened_by.clone(),
        intake: record.intake.clone(),
        intake_entry: record.intake_entry.clone(),
        former_cars: record.former_cars.clone(),
        pairs: together::pairs(&rows, &steps),
        looks,
        steps,
    };
    Ok(worded(standing, case.apart))
}

/// With what is closed, and why, in words.
fn worded(mut standing: Standing, apart: bool) -> Standing {
    shut(&mut standing, apart);
    word_reasons(&mut standing);
    standing
}

/// The steps with their own ratings, and the visit's.
fn rated(
    (trade, draws): (&Trade, &Draws),
    layout: &Layout,
    (visit, danger): (Visit<'_>, Option<&str>),
    rows: &[&StepRow],
    (case, hands): (&Case, &Case),
) -> (Vec<StepStand>, Urgency) {
    let record = visit.record;
    let mut steps = steps(trade, layout, record, (case, hands), rows, danger);
    let mut urgency = rating::rate(case, &sort_judged(trade, case, draws));
    if case.apart {
        close_steps(&mut steps, &locks::ENGINE_SETS, &Lock::SetApart);
    }
    if urgency.do_not_drive == Some(true) {
        close_steps(&mut steps, &[locks::ROAD], &Lock::NotDriven);
    }
    for reason in &mut urgency.reasons {
        reason.basis = trade.basis_of_rule(&reason.rule);
    }
    (steps, urgency)
}

/// Closes what a rating keeps shut.
fn shut(standing: &mut Standing, apart: bool) {
    if standing.urgency.do_not_drive == Some(true) {
        close_road(standing);
    }
    if apart {
        close(standing, &locks::ENGINE_SETS, &Lock::SetApart);
    }
}

/// Whether something was found at a step that counts for nothing now: it is answered by itself, with a reason.
fn is_apart(trade: &Trade, apart: &[Elsewhere], row: &StepRow) -> bool {
    apart.iter().any(|each| each.step == row.id && relayout::found(trade, &each.step, &each.value))
}

/// Closes the road test of a car that may not be driven, whatever was felt before.
pub fn close_road(standing: &mut Standing) {
    close(standing, &[locks::ROAD], &Lock::NotDriven);
}

/// Closes gate sets and what is behind them.
pub fn close(standing: &mut Standing, sets: &[&str], why: &Lock) {
    close_steps(&mut standing.steps, sets, why);
    for set in standing.gate_sets.iter_mut().filter(|set| sets.contains(&set.id.as_str())) {
        set.open = false;
        set.lock.get_or_insert_with(|| why.clone());
    }
    // Where the walk would go on into them, what is under the car comes first.
    let inside = |set: &str| sets.contains(&set);
    let goes_in = match &standing.position {
        Position::Gates { set } => inside(set),
        Position::Step { step } => {
            let found = standing.steps.iter().find(|other| other.id == *step);
            found.and_then(|step| step.set.as_deref()).is_some_and(inside)
        }
        _ => false,
    };
    if goes_in {
        standing.position = match &standing.entered {
            Some(set) => Position::Leave { set: set.clone() },
            None => Position::Gates { set: locks::LIFT.to_owned() },
        };
    }
}

fn close_steps(steps: &mut [StepStand], sets: &[&str], why: &Lock) {
    let open = |lock: &Lock| matches!(lock, Lock::GatesOpen { .. });
    let behind = |step: &&mut StepStand| step.set.as_deref().is_some_and(|set| sets.contains(&set));
    for step in steps.iter_mut().filter(behind) {
        if step.lock.as_ref().is_none_or(open) {
            step.lock = Some(why.clone());
        }
    }
}

/// The place of the first entry that names one which is nowhere in the visit: a line that was there when it was written
/// is gone.
fn names_what_is_gone(visit: Visit<'_>) -> Option<u64> {
    let entries = visit.entries;
    // Whoever nobody knows can name what never was in a visit of this workshop.
    let doubtful = |entry: &Entry| devices::is_doubtful(&entry.device, visit.device, visit.devices);
    let foreign = entries.iter().all(doubtful);
    let known = |entry: &&Entry| foreign || !doubtful(entry);
    // Most visits name none.
    let here = LazyCell::new(|| entries.iter().map(|entry| entry.hash.as_str()).collect::<HashesSeen<'_>>());
    let is_gone = |named: &String| !here.contains(named.as_str());
    let lacks = |entry: &&Entry| match &entry.body {
        EntryBody::Answered { supersedes, .. } => supersedes.iter().any(is_gone),
        EntryBody::Withdrawn { entry, .. } => is_gone(entry),
        EntryBody::Bench { bench: BenchBody::Gauged { supersedes, .. }, .. } => {
            supersedes.iter().any(is_gone)
        }
        EntryBody::Amended { takes_back, .. } => takes_back.iter().any(is_gone),
        _ => false,
    };
    entries.iter().filter(known).find(lacks).map(|entry| entry.seq)
}

fn gauge_stands(bench: &BenchRecord, record: &Record) -> Result<Vec<GaugeStand>, Refusal> {
    if bench.gauges.is_empty() {
        return Ok(Vec::new());
    }
    // The shipped tables were read when the readings were recorded; a test keeps them readable.
    BenchTables::shipped()
        .map(|tables| play_gauge::stands(bench, record.intake.vehicle.maker_play_mm, tables))
        .map_err(|_| Refusal::UnknownRequest)
}

/// None before every gate of the teardown is confirmed: nothing else of the bench is recorded before.
fn repair(bench: &BenchRecord) -> Option<RepairStage> {
    if !BenchTables::shipped().is_ok_and(|tables| bench.is_open(TEARDOWN, tables)) {
        return None;
    }
    Some(match (bench.turned_free, bench.checked_again) {
        (true, true) => RepairStage::CheckedAgain,
        (true, false) => RepairStage::TurnsFree,
        (false, _) => RepairStage::TornDown,
    })
}

/// Steps that apply and are not hidden, in walk order.
pub fn shown_steps<'t>(trade: &'t Trade, layout: &Layout, record: &Record) -> Vec<&'t StepRow> {
    applies::Car::of(trade, layout, record).shown()
}

/// Each step's own rating as the record has it.
pub fn step_words(trade: &Trade, entries: &[Entry], record: &Record) -> BTreeMap<String, Word> {
    let layout = trade.layout(&record.intake.vehicle.layout);
    layout.map(|layout| rating::rate_steps(&counted(trade, layout, entries, record))).unwrap_or_default()
}

/// The same, were one more entry written.
pub fn step_words_with(
    trade: &Trade,
    (entries, device): (&[Entry], &str),
    body: EntryBody,
) -> BTreeMap<String, Word> {
    let entries = record::with(entries, device, body);
    step_words(trade, &entries, &former::named(trade, record::read(&entries)))
}

/// The steps that are made milder only with a reason, with their words.
pub fn grave_steps(trade: &Trade, entries: &[Entry], record: &Record) -> BTreeMap<String, Word> {
    let Some(layout) = trade.layout(&record.intake.vehicle.layout) else { return BTreeMap::new() };
    let case = counted(trade, layout, entries, record);
    let mut words = rating::rate_steps(&case);
    words.retain(|step, word| is_grave(&case, step, Some(*word)));
    words
}

/// What counts: what hands and eyes found, and gauges.
fn counted(trade: &Trade, layout: &Layout, entries: &[Entry], record: &Record) -> Case {
    let mut case = case::case(trade, layout, record);
    let mut bench = bench::read(entries, record);
    play_gauge::set_apart(trade, layout, record, &mut bench);
    let gauges = gauge_stands(&bench, record).unwrap_or_default();
    play_gauge::count_in(&mut case, &gauges);
    case
}

/// What is read and heard at idle on every car, whatever it came in for.
const STILL_ASKED: [&str; 2] = [ids::step::IDLE_SPEED, ids::step::IDLE_NOISE];

/// `case` is what counts, gauges included; `hands` is what was answered, and that is what is shown.
fn steps(
    trade: &Trade,
    layout: &Layout,
    record: &Record,
    (case, hands): (&Case, &Case),
    rows: &[&StepRow],
    danger: Option<&str>,
) -> Vec<StepStand> {
    let words = rating::rate_steps(case);
    // Of the road, and silent at idle: what looks for the cause of an idle noise is left to whoever wants it.
    let quiet = concern::is_the_road(trade, case) && concern::is_silent_at_idle(case);
    let stand = |row: &&StepRow| {
        let word = words.get(&row.id).copied();
        let counts = case.answer(&row.id);
        let shows = counts.is_some_and(|answer| shows_something(row, answer, &record.intake));
        let nothing = row.pictured && !shows && counts.is_some_and(|answer| !answer.open);
        let mut photos = photos(record, &row.id);
        StepStand {
            id: row.id.clone(),
            set: row.set.clone(),
            station: row.station.clone(),
            form: form(row, record),
            asks_temperature: row.asks_temperature,
            asks_free: row.asks_free.then_some(match layout.speed {
                Speed::Engine => TurnsWith::Engine,
                Speed::Output => TurnsWith::Wheels,
            }),
            asks_engine: row.asks_engine,
            asks_heard_at: row.asks_heard_at
                && counts
                    .is_some_and(|answer| case::reads(row, &answer.value, &record.intake) == Reads::Found),
            asks_figure: !knows_figure(record)
                && row.answers.iter().any(|answer| answer.figure == Some(true)),
            optional: row.optional || quiet && row.at_idle && !STILL_ASKED.contains(&row.id.as_str()),
            both_ends: row.both_ends,
            figures: row.figures.clone(),
            at_support: (row.each_support && layout.supports > 1).then(|| ids::support_number(&row.id)),
            hands_on: row.is_hands_on_check(),
            wants_photo: row.pictured && (counts.is_none() || shows),
            answered: answered(record, row, (case, hands), word),
            word,
            lock: locks::step_lock(trade, record, row, danger),
            photo: photos.pop(),
            before: before(record, &row.id, &photos),
            earlier: photos,
            waiver: record
                .waivers
                .get(&row.id)
                .cloned()
                .or_else(|| nothing.then(|| ids::NOTHING_TO_SHOW.to_owned())),
            gauge: play_gauge::direction(&row.id).is_some(),
        }
    };
    rows.iter().map(stand).collect()
}

fn elsewhere((step, answer): &(String, StandingAnswer)) -> Elsewhere {
    let StandingAnswer { entry, value, by, at, .. } = answer.clone();
    Elsewhere { entry, step: step.clone(), value, by, at }
}

/// Whether an answer leaves something for a photo to show: what was found or is in doubt, and what holds the shaft.
fn shows_something(row: &StepRow, answer: &CaseAnswer, intake: &Intake) -> bool {
    let holds = row.is_hands_on_check() && row.form == Form::AnyOf;
    match case::reads(row, &answer.value, intake) {
        Reads::Found | Reads::Unsure => true,
        Reads::Clear | Reads::Neutral => holds,
        Reads::Open => false,
    }
}

fn knows_figure(record: &Record) -> bool {
    record.intake.vehicle.maker_play_mm.is_some()
}

/// What is offered; of answers that go by the maker's figure those that it allows, and whatever stands.
fn form(row: &StepRow, record: &Record) -> AnswerForm {
    let figure = knows_figure(record);
    let stands =
        |id: &str| record.answers.get(&row.id).into_iter().flatten().any(|answer| answer.value.has(id));
    let fits =
        |answer: &&AnswerRow| answer.figure.is_none_or(|needed| needed == figure) || stands(&answer.id);
    let offered = || row.answers.iter().filter(|answer| answer.offered).filter(fits);
    let choices = || offered().map(|answer| Choice { id: answer.id.clone(), lone: answer.lone }).collect();
    match row.form {
        Form::OneOf => AnswerForm::OneOf { choices: choices() },
        Form::AnyOf => AnswerForm::AnyOf { choices: choices() },
        Form::Reading => {
            AnswerForm::Reading { unit: row.unit.clone(), min: row.min, max: row.max, usual: row.usual }
        }
    }
}

/// The answer shown is the one that counts; time and name are those of the latest that stands.
fn answered(
    record: &Record,
    row: &StepRow,
    (case, hands): (&Case, &Case),
    word: Option<Word>,
) -> Option<Answered> {
    let standing = record.answers.get(&row.id)?;
    let latest: &StandingAnswer = standing.last()?;
    let counts = hands.answer(&row.id)?;
    let chosen = standing.iter().find(|answer| answer.value == counts.value).unwrap_or(latest);
    // Given again for its temperature, say, an answer made milder stays one.
    let made = record.milder.iter().rev().find(|made| made.step == row.id && made.now.is_some());
    let found = case.answer(&row.id).is_some_and(|answer| answer.found);
    let grave = is_grave(case, &row.id, word);
    let milder = made.filter(|_| !grave);
    Some(Answered {
        value: counts.value.clone(),
        temperature: counts.temperature,
        free: chosen.circumstances.free,
        engine: chosen.circumstances.engine,
        heard_at: chosen.circumstances.heard_at,
        reason: chosen.reason.clone().or_else(|| milder.map(|made| made.reason.clone())),
        by: chosen.by.clone(),
        at: chosen.at,
        disputed: standing.iter().any(|answer| answer.value != chosen.value),
        milder_needs_reason: grave,
        found,
        conclusive: case
            .answer(&row.id)
            .is_some_and(|answer| case::is_conclusive(row, answer, &record.intake)),
    })
}

/// Whether an answer is made milder only with a reason: one that asks for DANGER, or that found what asks for WARNING.
/// What was left unsure is felt again and needs none.
fn is_grave(case: &Case, step: &str, word: Option<Word>) -> bool {
    let found = case.answer(step).is_some_and(|answer| answer.found);
    word == Some(Word::Danger) || found && word == Some(Word::Warning)
}

/// Every photo of a step, oldest first.
fn photos(record: &Record, step: &str) -> Vec<PhotoStand> {
    let of = PhotoOf::Step(step.to_owned());
    let stand = |(photo, at): &(PhotoRef, Moment)| PhotoStand {
        photo: photo.clone(),
        at: *at,
        marks: record.marks_over(&of, photo),
    };
    record.photos.get(&of).into_iter().flatten().map(stand).collect()
}

/// The earlier photo of a pair whose later one is the latest of all.
fn before(record: &Record, step: &str, earlier: &[PhotoStand]) -> Option<PhotoStand> {
    let (before, after) = record.pairs.get(step)?;
    let (latest, _) = record.photos.get(&PhotoOf::Step(step.to_owned()))?.last()?;
    let named = |stand: &&PhotoStand| &stand.photo.sha256 == before && &latest.sha256 == after;
    earlier.iter().find(named).cloned()
}

/// Steps worth recommending: not looked at, and none with the engine running where `still`. `elsewhere`: idle is not
/// what it is about.
fn open_steps<'t>(case: &Case, rows: &[&'t StepRow], still: bool, elsewhere: bool) -> Vec<OpenStep<'t>> {
    let engine = |row: &StepRow| row.set.as_deref().is_some_and(|set| locks::ENGINE_SETS.contains(&set));
    let open = |row: &&&'t StepRow| {
        row.recommended && !(is_done(case, row) || still && engine(row) || is_behind_closed_tube(case, row))
    };
    rows.iter().filter(open).map(|row| OpenStep { row, off_topic: elsewhere && row.at_idle }).collect()
}

/// A closed tube hides its shaft from hands and eyes.
fn is_behind_closed_tube(case: &Case, row: &StepRow) -> bool {
    let closed = case.support == Support::Tube && !case.looked(step::TUBE_OPEN_CHECK);
    closed && [step::TURN_BY_HAND, step::SHAFT_LOOK].contains(&row.id.as_str())
}

/// Whether a step has said what it can: a look that decides saw all, and an idle was read warm.
fn is_done(case: &Case, row: &StepRow) -> bool {
    let wholly = row.hands_on && row.form == Form::AnyOf || row.asks_engine;
    if wholly { case.says_all(&row.id) } else { case.looked(&row.id) }
}

/// The stations that this car has steps at.
fn stations(steps: &[StepStand]) -> Vec<StationStand> {
    let stand = |id: &&str| {
        let here: Vec<&StepStand> =
            steps.iter().filter(|step| step.counts() && step.station == **id).collect();
        let count = |steps: usize| u32::try_from(steps).unwrap_or(u32::MAX);
        StationStand {
            id: (*id).to_owned(),
            word: here.iter().filter_map(|step| step.word).max(),
            answered: count(here.iter().filter(|step| step.answered.is_some()).count()),
            conclusive: count(here.iter().filter(|step| step.is_conclusive()).count()),
            steps: count(here.len()),
        }
    };
    STATIONS.iter().map(stand).filter(|station| station.steps > 0).collect()
}

fn road_rows(trade: &Trade, case: &Case) -> Vec<RoadRow> {
    let falls = |when: &crate::trade::rows::StepAnswers| {
        let speaks = |answer: &CaseAnswer| answer.found || !answer.limited;
        let so = |answer: &CaseAnswer| when.any.iter().any(|choice| answer.value.has(choice));
        case.at(&when.step).any(|(_, answer)| speaks(answer) && so(answer))
    };
    trade.road.iter().filter(|row| row.when.iter().any(falls)).map(|row| row.shown()).collect()
}

/// `case` is what counts now, gauges included.
fn undo_offer(trade: &Trade, layout: &Layout, (visit, case): (Visit<'_>, &Case)) -> Option<UndoOffer> {
    let mut offer = undo::offer(visit.entries, visit.record, visit.device)?;
    // What counts for nothing now was found all the same.
    let apart = |(step, answer): &(String, StandingAnswer)| {
        answer.entry == offer.entry && relayout::found(trade, step, &answer.value)
    };
    offer.needs_reason = visit.record.elsewhere.iter().any(apart);
    let now_called = |step: &String| former::step(trade, layout, step).map(|row| row.id.clone());
    if let Some(now) = offer.step.as_ref().and_then(now_called) {
        offer.step = Some(now);
    }
    if let Some(step) = &offer.step {
        let now = rating::rate_steps(case).get(step).copied();
        if is_grave(case, step, now) {
            let withdrawn =
                EntryBody::Withdrawn { entry: offer.entry.clone(), reason: None, by: String::new() };
            let then = step_words_with(trade, (visit.entries, visit.device), withdrawn).get(step).copied();
            offer.needs_reason |= then < now;
        }
    }
    Some(offer)
}

/// One that was signed for another rating than the visit has is out of date, whatever became of the lines between.
fn receipt(visit: Visit<'_>, word: Option<Word>) -> Option<ReceiptStand> {
    let record = visit.record;
    let (receipt, at) = record.receipt.as_ref()?;
    // What another device had written before, and nobody who signed had seen.
    let is_it = |entry: &Entry| matches!(&entry.body, EntryBody::Received { receipt: its } if its == receipt);
    let before = visit.entries.iter().position(is_it).map(|place| place as u64);
    let unseen = receipt.lines.is_some() && receipt.lines != before;
    let rated_otherwise = receipt.rating.as_deref().is_some_and(|rating| rating != urgency_id(word));
    Some(ReceiptStand {
        decision: receipt.decision,
        name: receipt.name.clone(),
        note_sha256: receipt.note_sha256.clone(),
        locale: receipt.locale.clone(),
        rating: receipt.rating.clone(),
        at: *at,
        strokes: receipt.strokes.clone(),
        outdated: record.after_receipt || unseen || rated_otherwise,
    })
}

/// Who wrote the entries, in the order of their first.
fn writers(visit: Visit<'_>) -> Vec<WriterStand> {
    let mut writers: Vec<WriterStand> = Vec::new();
    for entry in visit.entries {
        match writers.iter_mut().find(|writer| writer.device.device == entry.device) {
            Some(writer) => writer.entries += 1,
            None => {
                let device = devices::stand(&entry.device, visit.device, visit.devices);
                writers.push(WriterStand { device, entries: 1 });
            }
        }
    }
    writers
}

fn ledger(visit: Visit<'_>) -> LedgerStand {
    LedgerStand {
        entries: u64::try_from(visit.entries.len()).unwrap_or(u64::MAX),
        head: visit.entries.last().map(|entry| entry.hash.clone()).unwrap_or_default(),
        broken_at: visit.broken_at,
    }
}
