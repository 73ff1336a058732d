//! The bench's entries read once, front to back: of each kind the latest stands.

use std::collections::BTreeMap;

use crate::model::bench::{
    BearingPlace, BenchBody, BoreStage, HousingLook, InstrumentUsed, NoteStand, PassStand, RingStand,
    RunOutStand, SleeveWay, TurnedFree,
};
use crate::model::bore::BoreReadings;
use crate::model::entry::{Entry, EntryBody};
use crate::model::fit::FitInput;
use crate::model::gauge::GaugeInput;
use crate::model::standing::Confirmed;
use crate::model::time::Moment;
use crate::model::visit::Seat;
use crate::trade::bench::BenchTables;

use super::record::Record;

/// Something recorded, with who and when.
#[derive(Debug, Clone, PartialEq)]
pub struct Recorded<T> {
    /// As its entry says it.
    pub what: T,
    /// Name, as typed, of who recorded it.
    pub by: String,
    /// Date of its entry, by the clock of the device that wrote it.
    pub at: Moment,
}

/// Readings of a gauge and the device that recorded them.
#[derive(Debug, Clone, PartialEq)]
pub struct StandingReadings {
    /// With who read them and when.
    pub read: Recorded<GaugeInput>,
    /// Id of the device that recorded them: two that did not know of each other both stand.
    pub device: String,
    /// SHA-256, 64 hex digits.
    pub entry: String,
}

/// What the bench's entries add up to.
#[derive(Debug, Clone, Default)]
pub struct BenchRecord {
    /// Gauges, by step. More than one where devices read without knowing of each other; the worse one counts.
    pub gauges: BTreeMap<String, Vec<StandingReadings>>,
    /// Confirmed gates of the teardown.
    pub gates: BTreeMap<String, Confirmed>,
    /// As last looked; of each thing `None` means not looked at.
    pub look: HousingLook,
    /// Latest of each stage.
    pub bores: BTreeMap<BoreStage, Recorded<BoreReadings>>,
    /// The workshop's instruments that they were read with, where one was named.
    pub instruments: BTreeMap<BoreStage, InstrumentUsed>,
    /// The old sleeve that came out: how, and its outside diameter in mm where it was measured.
    pub sleeve_out: Option<Recorded<(SleeveWay, Option<f64>)>>,
    /// The last pass cut before that: up to it the cutter touched the old sleeve, not the housing.
    pub last_in_sleeve: Option<u32>,
    /// Passes, by number.
    pub passes: BTreeMap<u32, PassStand>,
    /// Latest values given.
    pub fit: Option<FitInput>,
    /// Latest turn by hand; `turned_free` says whether it still holds.
    pub ring: Option<RingStand>,
    /// The run-out of the shaft.
    pub run_out: Option<RunOutStand>,
    /// The ring turned freely, and nothing was cut or read since: that takes it apart again.
    pub turned_free: bool,
    /// Which bearings did.
    turned: TurnedFree,
    /// The latest turn of each bearing; of one alone, without its place.
    pub rings: BTreeMap<Option<BearingPlace>, RingStand>,
    /// Something of the car was answered or gauged since.
    pub checked_again: bool,
    /// Notes, oldest first.
    pub notes: Vec<NoteStand>,
    /// Hash of the latest entry of the bench, with the device that wrote it.
    pub latest: Option<(String, String)>,
}

/// Reads the bench's entries; `record` knows which were taken back.
pub fn read(entries: &[Entry], record: &Record) -> BenchRecord {
    let mut bench = BenchRecord::default();
    for entry in entries.iter().filter(|entry| !record.withdrawn.contains(&entry.hash)) {
        match &entry.body {
            EntryBody::Bench { bench: body, by } => {
                bench.take(body, (by, entry), entry.at);
                // A gauge at a step is of the walk, and the walk's undo asks why.
                if matches!(body, BenchBody::Gauged { .. }) {
                    continue;
                }
            }
            body if body.is_bench_photo() => {}
            EntryBody::Answered { .. } => {
                bench.checked_again |= bench.turned_free;
                continue;
            }
            _ => continue,
        }
        bench.latest = Some((entry.hash.clone(), entry.device.clone()));
    }
    bench
}

/// The gates before heavy parts come off: nothing of the bench is recorded before.
pub const TEARDOWN: &str = "teardown";
impl BenchRecord {
    /// The last pass cut into the housing itself.
    pub fn last_pass(&self) -> Option<&PassStand> {
        let in_sleeve = |pass: &&PassStand| self.last_in_sleeve.is_some_and(|last| pass.number <= last);
        self.passes.values().next_back().filter(|pass| !in_sleeve(pass))
    }

    /// Whether an old sleeve is, or was, in the bore: what the bench saw goes before what the intake says of the seat.
    pub fn old_sleeve(&self, seat: Option<Seat>) -> Option<bool> {
        if self.sleeve_out.is_some() {
            return Some(true);
        }
        self.look.sleeved.or_else(|| seat.map(|seat| seat == Seat::Sleeved))
    }
}

/// The gates before a cut.
pub const MACHINING: &str = "machining";

impl BenchRecord {
    /// Whether every gate of a set is confirmed.
    pub fn is_open(&self, set: &str, tables: &BenchTables) -> bool {
        tables.gates.iter().filter(|row| row.set == set).all(|row| self.gates.contains_key(&row.id))
    }

    fn take(&mut self, body: &BenchBody, (by, entry): (&str, &Entry), at: Moment) {
        let by = by.to_owned();
        self.turned = self.turned.after(body);
        self.turned_free = self.turned.all();
        self.checked_again = match body {
            BenchBody::Gauged { .. } => self.checked_again || self.turned_free,
            BenchBody::RingTurned { .. } => false,
            _ => self.checked_again && self.turned_free,
        };
        match body.clone() {
            BenchBody::Gauged { step, gauge, supersedes, .. } => {
                let all = self.gauges.entry(step).or_default();
                // Before it named them, readings took the place of those of their own device.
                all.retain(|earlier| !supersedes.contains(&earlier.entry) && earlier.device != entry.device);
                let read = Recorded { what: *gauge, by, at };
                let (device, entry) = (entry.device.clone(), entry.hash.clone());
                all.push(StandingReadings { read, device, entry });
            }
            BenchBody::GateConfirmed { gate } => {
                self.gates.insert(gate, Confirmed { by, at });
            }
            BenchBody::BoreRead { stage, bore, instrument } => {
                self.instruments.remove(&stage);
                self.instruments.extend(instrument.map(|used| (stage, used)));
                self.bores.insert(stage, Recorded { what: *bore, by, at });
            }
            BenchBody::Looked { look } => self.look = look,
            BenchBody::SleeveOut { way, outside_mm } => {
                self.sleeve_out = Some(Recorded { what: (way, outside_mm), by, at });
                self.last_in_sleeve = self.passes.keys().next_back().copied();
                // What the sleeve hid was not looked at: a crack that was seen stays, sound walls are looked at anew.
                self.look.cracked = self.look.cracked.filter(|cracked| *cracked);
                self.look.dyed = self.look.dyed.filter(|_| self.look.cracked.is_some());
                self.look.sleeved = Some(true);
            }
            BenchBody::PassCut { number, contact, diameter_mm } => {
                self.passes.insert(number, PassStand { number, contact, diameter_mm, by, at });
            }
            BenchBody::FitGiven { fit } => self.fit = Some(*fit),
            BenchBody::RingTurned { turns, bearing, cold, clearance_mm } => {
                let ring = RingStand { turns, bearing, cold, clearance_mm, by, at };
                self.rings.retain(|place, _| place.is_some() == bearing.is_some());
                self.rings.insert(bearing, ring.clone());
                self.ring = Some(ring);
            }
            BenchBody::RunOutRead { run_out_mm } => {
                self.run_out = Some(RunOutStand { run_out_mm, by, at });
            }
            BenchBody::Noted { text } => self.notes.push(NoteStand { text, by, at }),
        }
    }
}
