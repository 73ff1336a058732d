//! The visit at hand: read and derived once, and kept until another is asked for, so that an answer need neither
//! read the whole ledger again nor derive twice.

use std::sync::Arc;

use crate::model::device::Devices;
use crate::model::entry::EntryBody;
use crate::model::fresh_id::fresh_id;
use crate::model::gates::Lock;
use crate::model::rating::Word;
use crate::model::standing::Standing;
use crate::model::visit::Intake;
use crate::store::ledger::{Chain, next_entry};
use crate::trade::Trade;
use crate::walk::record::{self, Record};
use crate::walk::{former, locks};

use super::decide::{self, Scene};
use super::derive;
use super::drawn::DrawnFor;
use super::fault::{Fault, Refusal};
use super::response::Response;
use super::steady::Inner;
use super::still_open::Earlier;
use super::{asks, learning, list, room, still_open};

/// A visit as it was read from disk, and what that adds up to.
pub(super) struct AtHand {
    visit: String,
    pub(super) chain: Chain,
    /// What stands of `chain`.
    pub(super) record: Record,
    /// Derived from `chain` and `record` when first asked for.
    standing: Option<Arc<Standing>>,
    /// Where earlier visits of the car stand, once they were looked for; none of them where nothing of theirs is grave.
    earlier: Option<Arc<Earlier>>,
}

impl AtHand {
    /// Reads a chain, steps of earlier versions under the names they have in this knowledge.
    pub(super) fn of(trade: &Trade, visit: &str, chain: Chain) -> Self {
        let record = former::named(trade, record::read(&chain.entries));
        Self { visit: visit.to_owned(), chain, record, standing: None, earlier: None }
    }

    /// Where it stands has to be derived anew, by other knowledge.
    pub(super) fn outdate(&mut self) {
        self.standing = None;
    }

    /// Where it stands by this knowledge, whatever was derived before.
    ///
    /// # Errors
    /// As [`derive::standing`].
    pub(super) fn derived(
        &self,
        trade: &Trade,
        (device, devices): (&str, &Devices),
        drawn: &DrawnFor,
    ) -> Result<Standing, Refusal> {
        let Chain { entries, broken_at } = &self.chain;
        let (record, broken_at) = (&self.record, *broken_at);
        let visit = derive::Visit { id: &self.visit, entries, record, broken_at, device, devices };
        derive::standing(trade, visit, drawn)
    }
}

impl Inner {
    /// The visit's entries and what stands of them.
    ///
    /// # Errors
    /// [`Refusal::UnknownVisit`] for one without entries, or what SQLite says.
    pub(super) fn read(&mut self, visit: &str) -> Result<&AtHand, Fault> {
        self.take_in_hand(visit)?;
        let read = self.at_hand.as_ref().filter(|at_hand| !at_hand.chain.entries.is_empty());
        read.ok_or_else(|| Refusal::UnknownVisit.into())
    }

    /// Where a visit stands, from what is at hand or from disk.
    ///
    /// # Errors
    /// As [`Inner::read`] and [`derive::standing`].
    pub(super) fn standing(&mut self, visit: &str) -> Result<Arc<Standing>, Fault> {
        self.take_in_hand(visit)?;
        let Some(at_hand) = &mut self.at_hand else { return Err(Refusal::UnknownVisit.into()) };
        if let Some(standing) = &at_hand.standing {
            return Ok(Arc::clone(standing));
        }
        let mut standing = at_hand.derived(&self.trade, (&self.writer.device, &self.devices), &self.drawn)?;
        let known = at_hand.earlier.clone();
        let earlier = self.left_open(&mut standing, known)?;
        let standing = Arc::new(standing);
        if let Some(at_hand) = &mut self.at_hand {
            at_hand.standing = Some(Arc::clone(&standing));
            at_hand.earlier = Some(earlier);
        }
        Ok(standing)
    }

    /// Says in a standing what earlier visits left open; `known` is where they stand, if that was looked for before.
    fn left_open(
        &mut self,
        standing: &mut Standing,
        known: Option<Arc<Earlier>>,
    ) -> Result<Arc<Earlier>, Fault> {
        let earlier = match known {
            Some(earlier) => earlier,
            None => still_open::earlier(self, standing)?,
        };
        let warm_from_c = self.trade.rules_for(standing.intake.vehicle.warm_from_c).warm_from_c;
        let open = still_open::left_by(&earlier, standing, warm_from_c);
        standing.headline = asks::headline(&standing.urgency, &standing.asks, open.as_ref());
        if open.is_some() {
            derive::close_road(standing);
        }
        // Whoever was told not to start the engine has it felt by hand first.
        if open.as_ref().is_some_and(|open| open.word == Word::Danger) && !standing.urgency.complete {
            derive::close(standing, &locks::ENGINE_SETS, &Lock::EarlierDanger);
        }
        standing.still_open = open;
        Ok(earlier)
    }

    /// Where a visit stands, with the visit at hand left there.
    ///
    /// # Errors
    /// As [`Inner::standing`].
    pub(super) fn standing_of_other(&mut self, visit: &str) -> Result<Standing, Fault> {
        let other = AtHand::of(&self.trade, visit, self.store.chain(visit)?);
        Ok(other.derived(&self.trade, (&self.writer.device, &self.devices), &self.drawn)?)
    }

    /// The DANGER or WARNING that earlier visits left open to one, with the visit at hand left there.
    ///
    /// # Errors
    /// As [`Inner::standing`].
    pub(super) fn left_open_to(&mut self, visit: &str) -> Result<Option<Word>, Fault> {
        let mut standing = self.standing_of_other(visit)?;
        self.left_open(&mut standing, None)?;
        Ok(standing.still_open.map(|open| open.word))
    }

    /// What stands of the visit at hand.
    pub(super) fn record_at_hand(&self, visit: &str) -> Option<&Record> {
        self.at_hand.as_ref().filter(|at_hand| at_hand.visit == visit).map(|at_hand| &at_hand.record)
    }

    fn take_in_hand(&mut self, visit: &str) -> Result<(), Fault> {
        if self.at_hand.as_ref().is_none_or(|at_hand| at_hand.visit != visit) {
            self.at_hand = Some(AtHand::of(&self.trade, visit, self.store.chain(visit)?));
        }
        Ok(())
    }

    /// Entries came or went beside the usual way: what is on disk decides what comes next, and outcomes among
    /// them teach.
    pub(super) fn ledger_changed(&mut self) -> Result<(), Fault> {
        self.devices_changed()?;
        self.learn()
    }

    /// Something was decided about a device, or one was met: visits read otherwise.
    pub(super) fn devices_changed(&mut self) -> Result<(), Fault> {
        self.at_hand = None;
        self.devices = self.store.devices()?;
        Ok(())
    }

    pub(super) fn look(&mut self, visit: &str) -> Result<Response, Fault> {
        Ok(Response::Visit(self.standing(visit)?))
    }

    pub(super) fn open_visit(&mut self, intake: Intake, by: Option<&str>) -> Result<Response, Fault> {
        decide::check_intake(&self.trade, &intake)?;
        let by = self.technician(by)?;
        let visit = fresh_id().to_string();
        let knowledge = self.trade.version_for(&intake.vehicle.layout);
        let rules = self.trade.rules.version;
        let body = EntryBody::Opened { intake, knowledge, rules, by };
        self.at_hand = Some(AtHand::of(&self.trade, &visit, Chain::default()));
        self.write(&visit, body)
    }

    /// Reads, decides and writes; a request that changes nothing writes nothing.
    pub(super) fn change(
        &mut self,
        visit: &str,
        by: Option<&str>,
        decide: impl FnOnce(Scene<'_>) -> Result<Option<EntryBody>, Refusal>,
    ) -> Result<Response, Fault> {
        self.change_several(visit, by, |scene| decide(scene).map(|body| body.into_iter().collect()))
    }

    /// The same of several entries at once: all of them are written or none.
    pub(super) fn change_several(
        &mut self,
        visit: &str,
        by: Option<&str>,
        decide: impl FnOnce(Scene<'_>) -> Result<Vec<EntryBody>, Refusal>,
    ) -> Result<Response, Fault> {
        let by = self.technician(by)?;
        let bodies = self.decided(visit, &by, decide)?;
        if bodies.is_empty() { self.look(visit) } else { self.write_several(visit, bodies) }
    }

    /// What a decision says of the visit as it stands.
    pub(super) fn decided<T>(
        &mut self,
        visit: &str,
        by: &str,
        decide: impl FnOnce(Scene<'_>) -> Result<T, Refusal>,
    ) -> Result<T, Fault> {
        let standing = self.standing(visit)?;
        let now = self.now();
        let Some(AtHand { chain, record, .. }) = &self.at_hand else {
            return Err(Refusal::UnknownVisit.into());
        };
        let (trade, entries, standing) = (&self.trade, &chain.entries, &standing);
        let (device, devices) = (self.writer.device.as_str(), &self.devices);
        let scene = Scene { trade, entries, record, standing, by, device, devices, now };
        Ok(decide(scene)?)
    }

    /// Appends one entry and its card.
    pub(super) fn write(&mut self, visit: &str, body: EntryBody) -> Result<Response, Fault> {
        self.write_several(visit, vec![body])
    }

    /// Appends entries and the visit's card, synced, then says where the visit stands. After a failure nothing is at
    /// hand: what is on disk decides.
    fn write_several(&mut self, visit: &str, bodies: Vec<EntryBody>) -> Result<Response, Fault> {
        let Some(AtHand { mut chain, earlier, .. }) = self.at_hand.take() else {
            return Err(Refusal::UnknownVisit.into());
        };
        // Papers bear the day, and a device whose clock is right refuses lines from years ahead.
        if !(self.clock)().is_believable() {
            return Err(Refusal::ClockWrong.into());
        }
        let now = self.now();
        let (mut lines, mut teaches, mut known) = (Vec::with_capacity(bodies.len()), false, earlier);
        for body in bodies {
            room::check(&chain.entries, &body)?;
            let at = decide::dated(&chain.entries, &self.writer.device, now);
            let (entry, line) = next_entry(&chain.entries, visit, &self.writer, at, body);
            teaches |= learning::teaches(&chain.entries, &entry);
            known = known.filter(|_| !still_open::asks_anew(&entry.body));
            chain.entries.push(entry);
            lines.push(line);
        }
        let mut at_hand = AtHand::of(&self.trade, visit, chain);
        let mut standing = at_hand.derived(&self.trade, (&self.writer.device, &self.devices), &self.drawn)?;
        at_hand.earlier = Some(self.left_open(&mut standing, known)?);
        let standing = Arc::new(standing);
        self.store.append(&lines, &list::card(&standing))?;
        at_hand.standing = Some(Arc::clone(&standing));
        self.at_hand = Some(at_hand);
        if teaches {
            self.learn()?;
            return self.look(visit);
        }
        Ok(Response::Visit(standing))
    }

    /// Notes in the ledger what a replay arranged.
    pub(super) fn arranged(&mut self, visit: &str, what: &str, by: &str) -> Result<Response, Fault> {
        let what = what.to_owned();
        self.change(visit, Some(by), |scene| Ok(Some(EntryBody::Arranged { what, by: scene.by.to_owned() })))
    }
}
