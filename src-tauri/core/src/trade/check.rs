//! The checks that data must pass before any rule reads it: ids that meet, numbers in range, a basis
//! on every row.

use std::collections::BTreeSet;

use crate::model::ids::STATIONS;
use crate::model::standing::{CauseGroup, Support};

use super::load::{MAX_SUPPORTS, NUMBERS, Trade};
use super::rows::{CauseRow, Form, Layout, PriorShift, SignRow, StepRow};

/// Checks everything that is shipped.
///
/// # Errors
/// The first fault, naming the row.
pub fn check_trade(trade: &Trade) -> Result<(), String> {
    for step in &trade.steps {
        check_step(trade, step)?;
    }
    for gate in &trade.gates {
        basis("gate", &gate.id, &gate.basis)?;
    }
    for sound in &trade.sounds {
        basis("sound", &sound.id, &sound.basis)?;
    }
    for waiver in &trade.waivers {
        basis("waiver", &waiver.id, &waiver.basis)?;
    }
    check_causes(trade)?;
    for sign in &trade.signs {
        check_sign(trade, sign)?;
    }
    for row in &trade.road {
        basis("road row", &row.id, &row.basis)?;
        for when in &row.when {
            check_answers(trade, &when.step, &when.any)?;
        }
    }
    trade.losses.check()?;
    for row in &trade.rules.numbers {
        basis("number", &row.id, &row.basis)?;
    }
    if let Some(missing) = NUMBERS.into_iter().find(|id| trade.number(id).is_nan() || trade.number(id) <= 0.0)
    {
        return Err(format!("rules: the number {missing} is missing or not above 0"));
    }
    for row in &trade.rules.rules {
        basis("rule", &row.id, &row.basis)?;
        let known = |id: &&String| trade.rules.numbers.iter().any(|number| &number.id == *id);
        if let Some(unknown) = row.numbers.iter().find(|id| !known(id)) {
            return Err(format!("rules: the rule {} turns on {unknown}, which is no number", row.id));
        }
    }
    let mut seen = Trade { layouts: Vec::new(), ..trade.clone() };
    for layout in &trade.layouts {
        check_layout(&seen, layout)?;
        seen.layouts.push(layout.clone());
    }
    Ok(())
}

/// Checks one layout against the rest of the data.
///
/// # Errors
/// What is wrong with it.
pub fn check_layout(trade: &Trade, layout: &Layout) -> Result<(), String> {
    basis("layout", &layout.id, &layout.basis)?;
    if layout.id.is_empty() || !layout.id.bytes().all(|byte| byte.is_ascii_lowercase() || byte == b'-') {
        return Err("id: lower-case letters and hyphens only".to_owned());
    }
    if trade.layout(&layout.id).is_some() {
        return Err("id: this layout exists already; choose another id".to_owned());
    }
    if layout.supports > MAX_SUPPORTS || (layout.supports == 0) != (layout.support == Support::Absent) {
        return Err(format!("supports: at most {MAX_SUPPORTS}, and 0 where nothing supports the shaft"));
    }
    let unique: BTreeSet<&String> = layout.causes.iter().collect();
    if unique.len() != layout.causes.len() {
        return Err("causes: one is listed twice".to_owned());
    }
    if !layout.causes.iter().all(|id| trade.causes.iter().any(|cause| &cause.id == id)) {
        return Err("causes: one is not in causes.toml".to_owned());
    }
    let bearing =
        |id: &String| trade.causes.iter().any(|cause| &cause.id == id && cause.group == CauseGroup::Bearing);
    if layout.support != Support::Absent && !layout.causes.iter().any(bearing) {
        return Err("causes: at least one bearing cause is needed".to_owned());
    }
    Ok(())
}

fn check_step(trade: &Trade, step: &StepRow) -> Result<(), String> {
    basis("step", &step.id, &step.basis)?;
    let named = |what: &str| format!("step {}: {what}", step.id);
    if !STATIONS.contains(&step.station.as_str()) {
        return Err(named("its station is none of `ids::STATIONS`"));
    }
    if step.form == Form::Reading {
        if !(step.min < step.usual && step.usual < step.max) {
            return Err(named("min, usual and max must rise"));
        }
    } else if step.answers.is_empty() {
        return Err(named("answers are missing"));
    }
    if step.sound_together && step.sound().is_none() {
        return Err(named("it cannot be said to be sound: no answer stands alone and reads clear"));
    }
    let in_pair = |other: &&StepRow| {
        other.pair == step.pair
            && other.support_number == step.support_number
            && other.supports == step.supports
    };
    if step.pair.is_some() && trade.steps.iter().filter(in_pair).count() != 2 {
        return Err(named("a pair is two steps of the same supports"));
    }
    for set in step.set.iter().chain(&step.also_in) {
        if !trade.gates.iter().any(|gate| &gate.set == set) {
            return Err(named("its gate set has no gates"));
        }
    }
    for condition in step.needs.iter().flatten().chain(&step.after) {
        check_answers(trade, &condition.step, &condition.any)?;
    }
    if step.minutes.is_nan() || step.minutes <= 0.0 || !(0.0..=1.0).contains(&step.hazard) {
        return Err(named("minutes must be above 0 and hazard between 0 and 1"));
    }
    Ok(())
}

fn check_causes(trade: &Trade) -> Result<(), String> {
    let unique: BTreeSet<&String> = trade.causes.iter().map(|cause| &cause.id).collect();
    if unique.len() != trade.causes.len() {
        return Err("causes: an id stands twice".to_owned());
    }
    trade.causes.iter().try_for_each(check_cause)
}

/// Checks one cause by itself.
///
/// # Errors
/// What is wrong with it.
pub fn check_cause(cause: &CauseRow) -> Result<(), String> {
    basis("cause", &cause.id, &cause.basis)?;
    probability(&format!("cause {}: prior", cause.id), cause.prior)?;
    for PriorShift { odds, basis: why, .. } in &cause.shifts {
        basis("a shift of cause", &cause.id, why)?;
        if !(*odds > 0.0 && *odds <= MAX_SHIFT) {
            return Err(format!("cause {}: odds must be above 0 and at most {MAX_SHIFT}", cause.id));
        }
    }
    weight(&format!("cause {}", cause.id), cause.weight)
}

/// Checks one sign against the rest of the data.
///
/// # Errors
/// What is wrong with it.
pub fn check_sign(trade: &Trade, sign: &SignRow) -> Result<(), String> {
    basis("sign", &sign.id, &sign.basis)?;
    let name = format!("sign {}", sign.id);
    if sign.steps.is_empty() || sign.links.is_empty() {
        return Err(format!("{name}: steps and links are needed"));
    }
    let unique: BTreeSet<&String> = sign.links.iter().map(|link| &link.cause).collect();
    if unique.len() != sign.links.len() {
        return Err(format!("{name}: a cause is linked twice"));
    }
    probability(&format!("{name}: leak"), sign.leak)?;
    weight(&name, sign.weight)?;
    for link in &sign.links {
        probability(&format!("{name}: link"), link.p)?;
        if !trade.causes.iter().any(|cause| cause.id == link.cause) {
            return Err(format!("{name}: a linked cause is unknown"));
        }
    }
    for step in &sign.steps {
        for answers in [&sign.present, &sign.absent] {
            check_answers(trade, step, answers)?;
        }
    }
    if let Some(cold) = &sign.cold {
        basis("the cold of sign", &sign.id, &cold.basis)?;
        probability(&format!("{name}: cold"), cold.present)?;
        probability(&format!("{name}: cold"), cold.absent)?;
    }
    for soft in &sign.soft {
        probability(&format!("{name}: soft"), soft.present)?;
        probability(&format!("{name}: soft"), soft.absent)?;
    }
    Ok(())
}

fn check_answers(trade: &Trade, step: &str, answers: &[String]) -> Result<(), String> {
    let rows: Vec<&StepRow> = trade.steps.iter().filter(|row| row.id == step).collect();
    if rows.is_empty() {
        return Err(format!("step {step} is unknown"));
    }
    match answers.iter().find(|answer| rows.iter().all(|row| row.reads(answer).is_none())) {
        Some(answer) => Err(format!("step {step} has no answer {answer}")),
        None => Ok(()),
    }
}

fn basis(table: &str, id: &str, basis: &str) -> Result<(), String> {
    if basis.trim().is_empty() { Err(format!("{table} {id}: its basis is missing")) } else { Ok(()) }
}

/// The most a shift may multiply odds by: more would decide beforehand what checks are for.
const MAX_SHIFT: f64 = 10.0;

/// The most cars a judged number may stand for: more, and no workshop's outcomes would ever move it.
const MAX_WEIGHT: f64 = 1_000.0;

/// A probability that evidence can move: strictly between 0 and 1.
fn probability(name: &str, value: f64) -> Result<(), String> {
    if value > 0.0 && value < 1.0 {
        Ok(())
    } else {
        Err(format!("{name} must be above 0 and below 1, so that evidence can move it"))
    }
}

fn weight(name: &str, value: f64) -> Result<(), String> {
    if value > 0.0 && value <= MAX_WEIGHT {
        Ok(())
    } else {
        Err(format!("{name}: weight must be above 0 and at most {MAX_WEIGHT}"))
    }
}
