//! An open data folder that answers requests, one at a time.

use std::path::PathBuf;
use std::sync::{Arc, Mutex, MutexGuard};

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use uuid::Uuid;

use crate::model::entry::{EntryBody, PhotoRef};
use crate::model::rating::Word;
use crate::model::standing::Standing;
use crate::model::time::Moment;
use crate::model::visit::Intake;
use crate::model::workshop::Workshop;
use crate::photos::intake::take_in;
use crate::signing::key::DeviceKey;
use crate::signing::line::Writer;
use crate::store::ledger::{Chain, hex, next_entry};
use crate::store::open::{Store, open};
use crate::store::photo_files::PhotoSize;
use crate::store::uploads::MAX_PIECE_BYTES;
use crate::trade::Trade;
use crate::words::Words;

use super::bench::Given;
use super::decide::{self, GivenAnswer, GivenReceipt, Scene};
use super::derive;
use super::drawn::DrawnFor;
use super::failure::Failure;
use super::fault::{Fault, Refusal};
use super::practice::Practised;
use super::press::Press;
use super::request::Request;
use super::response::{HomeNotice, Response};
use super::{
    bench, handover, history, judged, knowledge, learning, list, marks, papers, qr, vin, wishes, workshop,
};

/// What a shell gives to open a data folder.
pub struct Setup {
    /// The data folder; made if it is not there.
    pub data_dir: PathBuf,
    /// Prints the papers.
    pub press: Arc<dyn Press>,
    /// Tells the time; [`Moment::now`] but in tests.
    pub clock: fn() -> Moment,
}

/// An open data folder.
pub struct Steady {
    inner: Mutex<Inner>,
    practised: Mutex<Practised>,
}

pub(super) struct Inner {
    pub(super) store: Store,
    pub(super) trade: Trade,
    pub(super) press: Arc<dyn Press>,
    clock: fn() -> Moment,
    /// How far a replayed case lies back; nought but while one of its requests is at work.
    days_ago: u16,
    /// The device that writes here.
    pub(super) writer: Writer,
    pub(super) notices: Vec<HomeNotice>,
    /// The workshop's own particulars, as they are on disk.
    pub(super) workshop: Workshop,
    /// The drawn networks of each kind of car sorted since the knowledge last changed.
    pub(super) drawn: DrawnFor,
    at_hand: Option<AtHand>,
}

/// The visit at hand and where it stands, so that an answer need neither read the whole ledger again nor
/// derive twice.
struct AtHand {
    visit: String,
    chain: Chain,
    /// Derived from `chain` when first asked for.
    standing: Option<Standing>,
}

impl Steady {
    /// Opens a data folder for this process alone.
    ///
    /// # Errors
    /// A [`Failure`] that says what to do; nothing was changed then.
    pub fn open(setup: Setup) -> Result<Self, Failure> {
        Inner::open(setup)
            .map(|inner| Self { inner: Mutex::new(inner), practised: Mutex::new(None) })
            .map_err(|fault| shown(&fault, "en"))
    }

    /// Answers one request. A refused request leaves the ledger as it was.
    ///
    /// # Errors
    /// A [`Failure`] that says what to do.
    pub fn handle(&self, request: Request) -> Result<Response, Failure> {
        match request {
            Request::StartPractice { intake } => return self.start_practice(intake),
            Request::Practise { request } => return self.practise(*request),
            Request::EndPractice => return self.end_practice(),
            _ => {}
        }
        let mut inner = self.lock()?;
        inner.handle(request, None).map_err(|fault| shown(&fault, &inner.locale()))
    }

    /// Something that a replayed case does, as if it were that many days ago.
    pub(super) fn back(
        &self,
        days_ago: u16,
        act: impl FnOnce(&mut Inner) -> Result<Response, Fault>,
    ) -> Result<Response, Failure> {
        let mut inner = self.lock()?;
        inner.days_ago = days_ago;
        let done = act(&mut inner);
        inner.days_ago = 0;
        done.map_err(|fault| shown(&fault, &inner.locale()))
    }

    /// JSON in, JSON of a [`Response`] or of a [`Failure`] out.
    ///
    /// # Errors
    /// The failure as JSON.
    pub fn handle_json(&self, request: &str) -> Result<String, String> {
        let answer = match serde_json::from_str::<Request>(request) {
            Ok(request) => self.handle(request),
            Err(_) => Err(shown(&Refusal::UnknownRequest.into(), "en")),
        };
        let json = |value: serde_json::Result<String>| value.unwrap_or_else(|_| "{}".to_owned());
        answer
            .map(|response| json(serde_json::to_string(&response)))
            .map_err(|failure| json(serde_json::to_string(&failure)))
    }

    /// A photo's JPEG bytes by its SHA-256 in hex.
    ///
    /// # Errors
    /// `photo-missing`.
    pub fn photo(&self, sha256: &str, size: PhotoSize) -> Result<Vec<u8>, Failure> {
        let missing = {
            let inner = self.lock()?;
            match inner.store.photo(sha256, size) {
                Ok(jpeg) => return Ok(jpeg),
                Err(fault) => shown(&fault.into(), &inner.locale()),
            }
        };
        self.practice_photo(sha256, size).ok_or(missing)
    }

    pub(super) fn practised(&self) -> Result<MutexGuard<'_, Practised>, Failure> {
        self.practised
            .lock()
            .map_err(|_| shown(&Fault::Internal("a practice request panicked".to_owned()), "en"))
    }

    pub(super) fn lock(&self) -> Result<MutexGuard<'_, Inner>, Failure> {
        self.inner.lock().map_err(|_| shown(&Fault::Internal("a request panicked".to_owned()), "en"))
    }
}

/// A fault in the language of the screens.
pub(super) fn shown(fault: &Fault, locale: &str) -> Failure {
    let words = Words::of(locale).or_else(|_| Words::of("en"));
    words.map(|words| fault.shown(words)).unwrap_or_else(|_| Failure {
        code: "internal".to_owned(),
        message: "the texts cannot be read".to_owned(),
        help: "install Steady again; the data stays where it is".to_owned(),
    })
}

impl Inner {
    fn open(setup: Setup) -> Result<Self, Fault> {
        let now = (setup.clock)();
        let mut opened = open(&setup.data_dir, now)?;
        let (trade, mut notices) = knowledge::current(&mut opened.store, now)?;
        notices.extend(opened.set_aside.take().map(|folder| HomeNotice {
            id: "database-set-aside".to_owned(),
            detail: folder.display().to_string(),
        }));
        let writer = opened.store.writer(now, fresh_key)?;
        let workshop = opened.store.workshop()?;
        let Setup { press, clock, .. } = setup;
        let drawn = DrawnFor::default();
        let store = opened.store;
        let (days_ago, at_hand) = (0, None);
        let mut inner =
            Self { store, trade, press, clock, days_ago, writer, notices, workshop, drawn, at_hand };
        inner.learn()?;
        Ok(inner)
    }

    /// What the clock says, or said where a replayed case lies back.
    pub(super) fn now(&self) -> Moment {
        (self.clock)().days_before(self.days_ago)
    }

    pub(super) fn locale(&self) -> String {
        let settings = self.store.settings().unwrap_or_default();
        settings.get("pref.locale").cloned().unwrap_or_else(|| "en".to_owned())
    }

    /// The words of a language, in the workshop's units.
    pub(super) fn words(&self, locale: &str) -> Result<Words, Fault> {
        Ok(Words::of(locale)?.measured_in(self.workshop.units))
    }

    pub(super) fn technician(&self, by: Option<&str>) -> Result<String, Fault> {
        if let Some(by) = by {
            return Ok(by.to_owned());
        }
        let name = self.store.settings()?.remove("technician").unwrap_or_default();
        if name.is_empty() { Err(Refusal::TechnicianMissing.into()) } else { Ok(name) }
    }

    /// Answers one request; `by` is who acts, in place of the technician's name.
    pub(super) fn handle(&mut self, request: Request, by: Option<&str>) -> Result<Response, Fault> {
        match request {
            Request::Home => list::home(self),
            // Taken before the data folder is: `app/practice.rs`.
            Request::StartPractice { .. } | Request::Practise { .. } | Request::EndPractice => {
                Err(Refusal::UnknownRequest.into())
            }
            Request::SetTechnician { name } => list::set_technician(self, &name),
            Request::SetPreference { name, value } => list::set_preference(self, &name, &value),
            Request::Workshop => Ok(workshop::workshop(self)),
            Request::SetWorkshop { workshop } => workshop::set(self, &workshop),
            Request::Visits { search, after } => list::visits(self, &search, after.as_deref()),
            Request::Open { intake } => self.open_visit(intake, by),
            Request::Look { visit } => self.look(&visit),
            Request::LookAsSorted { visit, knowledge } => {
                knowledge::as_sorted(self, &visit, knowledge.as_deref())
            }
            Request::Upload { upload, index, base64 } => self.upload(&upload, index, &base64),
            Request::KeepPhoto { visit, step, upload } => self.keep_photo(&visit, &step, &upload, by),
            Request::ReadVin { upload } => vin::read(self, &upload),
            Request::WantPhoto { visit, step, wish } => wishes::want(self, &visit, by, &step, &wish),
            Request::WantedPhotos { visit } => wishes::wanted(self, &visit),
            Request::DropWanted { visit, step } => wishes::drop(self, &visit, &step),
            Request::KeepWanted { wish, upload } => wishes::keep(self, &wish, &upload, by),
            Request::MarkPhoto { visit, step, photo, marks } => {
                self.change(&visit, by, |scene| marks::mark(scene, &step, &photo, marks))
            }
            Request::PairPhotos { visit, step, before } => {
                self.change(&visit, by, |scene| marks::pair(scene, &step, before))
            }
            Request::QrCode { visit, locale } => qr::short_text(self, &visit, &locale),
            Request::Finding { visit, locale } => papers::finding(self, &visit, &locale),
            Request::Note { visit, locale } => papers::note(self, &visit, &locale),
            Request::Paper { visit, paper, locale, sheet } => {
                papers::paper(self, &visit, paper, &locale, sheet)
            }
            Request::RecordGauge { visit, step, gauge } => bench::gauge(self, &visit, by, &step, gauge),
            Request::Bench { visit } => bench::bench(self, &visit),
            Request::BenchGate { visit, gate } => bench::record(self, &visit, by, Given::Gate(gate)),
            Request::BenchLook { visit, look, wall } => {
                bench::record(self, &visit, by, Given::Look(look, wall))
            }
            Request::BenchBore { visit, stage, file } => {
                bench::record(self, &visit, by, Given::Bore(stage, file))
            }
            Request::BenchPass { visit, number, contact, diameter } => {
                bench::record(self, &visit, by, Given::Pass(number, contact, diameter))
            }
            Request::BenchFit { visit, values } => bench::record(self, &visit, by, Given::Fit(values)),
            Request::BenchRing { visit, turns } => bench::record(self, &visit, by, Given::Ring(turns)),
            Request::BenchNote { visit, text } => bench::record(self, &visit, by, Given::Note(text)),
            Request::BenchPhoto { visit, of, upload } => bench::photo(self, &visit, by, &of, &upload),
            Request::BenchMark { visit, of, photo, marks } => {
                bench::mark(self, &visit, by, (&of, &photo), marks)
            }
            Request::BenchUndo { visit, entry } => bench::undo(self, &visit, by, &entry),
            Request::Calibration => learning::calibration(self),
            Request::GiveOpinion { visit, cause, reason } => {
                self.change(&visit, by, |scene| judged::give_opinion(scene, &cause, &reason).map(Some))
            }
            Request::ConfirmOutcome { visit, causes, by: says } => {
                let by = says.as_deref().map(str::trim).filter(|says| !says.is_empty()).or(by);
                self.change(&visit, by, |scene| judged::confirm_outcome(scene, &causes))
            }
            Request::History { visit } => history::history(self, &visit),
            Request::Export { visits, papers, locale, sheet } => {
                let locale = locale.as_deref();
                handover::prepare(self, handover::Wanted { visits: &visits, papers, locale, sheet })
            }
            Request::ExportPiece { export, index } => handover::piece(self, &export, index),
            Request::ImportPiece { upload, index, base64 } => {
                handover::take_piece(self, &upload, index, &base64)
            }
            Request::Import { upload } => handover::import_upload(self, &upload),
            Request::Erase { visit, word } => handover::erase(self, &visit, &word),
            Request::Sign { visit, decision, name, note_sha256, locale, strokes } => {
                let current = papers::note_sha256(self, &visit, &locale)?;
                let given = GivenReceipt { decision, name, note_sha256, locale, strokes };
                self.change(&visit, Some("owner"), |scene| {
                    let rating = scene.standing.urgency.word.map_or("unrated", Word::id);
                    decide::sign(given, &current, rating).map(Some)
                })
            }
            Request::Amend { visit, intake } => {
                self.change(&visit, by, |scene| decide::amend(scene, intake).map(Some))
            }
            Request::ChooseOrder { visit, order } => {
                self.change(&visit, by, |scene| Ok(Some(decide::choose_order(scene, order))))
            }
            Request::ConfirmGate { visit, set, gate } => {
                self.change(&visit, by, |scene| decide::confirm_gate(scene, &set, &gate))
            }
            Request::LeavePart { visit } => {
                self.change(&visit, by, |scene| decide::leave_part(scene).map(Some))
            }
            Request::Answer { visit, step, value, temperature, reason } => {
                let given = GivenAnswer { step, value, temperature, reason };
                self.change(&visit, by, |scene| decide::answer(scene, given).map(Some))
            }
            Request::WaivePhoto { visit, step, reason } => {
                self.change(&visit, by, |scene| decide::waive_photo(scene, &step, &reason).map(Some))
            }
            Request::Undo { visit, entry, reason } => {
                self.change(&visit, by, |scene| decide::undo(scene, &entry, reason).map(Some))
            }
        }
    }

    /// Where a visit stands, from what is at hand or from disk.
    pub(super) fn standing(&mut self, visit: &str) -> Result<Standing, Fault> {
        self.derive_at_hand(visit)?;
        let standing = self.at_hand.as_ref().and_then(|at_hand| at_hand.standing.clone());
        standing.ok_or_else(|| Refusal::UnknownVisit.into())
    }

    /// Where a visit stands, with the visit at hand left there.
    pub(super) fn standing_beside(&mut self, visit: &str) -> Result<Standing, Fault> {
        let chain = self.store.chain(visit)?;
        Ok(derived(&self.trade, visit, &chain, &self.writer.device, &self.drawn)?)
    }

    fn derive_at_hand(&mut self, visit: &str) -> Result<(), Fault> {
        self.take_in_hand(visit)?;
        let Some(at_hand) = &mut self.at_hand else { return Err(Refusal::UnknownVisit.into()) };
        if at_hand.standing.is_none() {
            at_hand.standing =
                Some(derived(&self.trade, visit, &at_hand.chain, &self.writer.device, &self.drawn)?);
        }
        Ok(())
    }

    /// The visit's entries.
    pub(super) fn chain(&mut self, visit: &str) -> Result<&Chain, Fault> {
        self.take_in_hand(visit)?;
        match &self.at_hand {
            Some(at_hand) if !at_hand.chain.entries.is_empty() => Ok(&at_hand.chain),
            _ => Err(Refusal::UnknownVisit.into()),
        }
    }

    fn take_in_hand(&mut self, visit: &str) -> Result<(), Fault> {
        if self.at_hand.as_ref().is_none_or(|at_hand| at_hand.visit != visit) {
            let chain = self.store.chain(visit)?;
            self.at_hand = Some(AtHand { visit: visit.to_owned(), chain, standing: None });
        }
        Ok(())
    }

    /// Entries came or went beside the usual way: what is on disk decides what comes next, and outcomes among
    /// them teach.
    pub(super) fn ledger_changed(&mut self) -> Result<(), Fault> {
        self.at_hand = None;
        self.learn()
    }

    fn look(&mut self, visit: &str) -> Result<Response, Fault> {
        Ok(Response::Visit(Box::new(self.standing(visit)?)))
    }

    fn open_visit(&mut self, intake: Intake, by: Option<&str>) -> Result<Response, Fault> {
        decide::check_intake(&self.trade, &intake)?;
        let by = self.technician(by)?;
        let visit = Uuid::now_v7().to_string();
        let knowledge = self.trade.version_for(&intake.vehicle.layout);
        let body = EntryBody::Opened { intake, knowledge, by };
        self.at_hand = Some(AtHand { visit: visit.clone(), chain: Chain::default(), standing: None });
        self.write(&visit, body)
    }

    /// Reads, decides and writes; a request that changes nothing writes nothing.
    pub(super) fn change(
        &mut self,
        visit: &str,
        by: Option<&str>,
        decide: impl FnOnce(Scene<'_>) -> Result<Option<EntryBody>, Refusal>,
    ) -> Result<Response, Fault> {
        let by = self.technician(by)?;
        self.derive_at_hand(visit)?;
        match decide(self.scene(&by)?)? {
            Some(body) => self.write(visit, body),
            None => self.look(visit),
        }
    }

    /// Appends one entry and its card, synced, then says where the visit stands.
    fn write(&mut self, visit: &str, body: EntryBody) -> Result<Response, Fault> {
        let Some(AtHand { mut chain, .. }) = self.at_hand.take() else {
            return Err(Refusal::UnknownVisit.into());
        };
        let at = decide::dated(&chain.entries, &self.writer.device, self.now());
        let entry = next_entry(&chain.entries, visit, &self.writer, at, body);
        chain.entries.push(entry.clone());
        let teaches = learning::teaches(&chain.entries, &entry);
        let standing = derived(&self.trade, visit, &chain, &self.writer.device, &self.drawn)?;
        // After a failure nothing is at hand: what is on disk decides.
        self.store.append(&[entry], &list::card(&standing))?;
        let at_hand = AtHand { visit: visit.to_owned(), chain, standing: Some(standing.clone()) };
        self.at_hand = Some(at_hand);
        if teaches {
            self.learn()?;
            return self.look(visit);
        }
        Ok(Response::Visit(Box::new(standing)))
    }

    fn upload(&mut self, upload: &str, index: u32, base64: &str) -> Result<Response, Fault> {
        let piece = STANDARD.decode(base64).map_err(|_| Refusal::UnknownRequest)?;
        if piece.len() as u64 > MAX_PIECE_BYTES {
            return Err(Refusal::UploadTooLarge.into());
        }
        Ok(Response::Uploaded { bytes: self.store.add_piece(upload, index, &piece)? })
    }

    pub(super) fn keep_photo(
        &mut self,
        visit: &str,
        step: &str,
        upload: &str,
        by: Option<&str>,
    ) -> Result<Response, Fault> {
        let bytes = self.store.upload(upload)?;
        let response = self.keep_bytes(visit, step, &bytes, by)?;
        self.store.drop_upload(upload);
        // The photo itself shows that the wish was met.
        let _ = self.store.forget_wish(visit, step);
        Ok(response)
    }

    /// Who acts, where a photo of this step can be kept.
    pub(super) fn checked_step(
        &mut self,
        visit: &str,
        by: Option<&str>,
        step: &str,
    ) -> Result<String, Fault> {
        let by = self.technician(by)?;
        self.derive_at_hand(visit)?;
        decide::check_step(self.scene(&by)?, step)?;
        Ok(by)
    }

    /// The visit at hand as a decision looks at it.
    fn scene<'a>(&'a self, by: &'a str) -> Result<Scene<'a>, Refusal> {
        match &self.at_hand {
            Some(AtHand { chain, standing: Some(standing), .. }) => {
                Ok(Scene { trade: &self.trade, entries: &chain.entries, standing, by })
            }
            _ => Err(Refusal::UnknownVisit),
        }
    }

    pub(super) fn keep_bytes(
        &mut self,
        visit: &str,
        step: &str,
        bytes: &[u8],
        by: Option<&str>,
    ) -> Result<Response, Fault> {
        let by = self.checked_step(visit, by, step)?;
        let photo = self.taken_in(bytes)?;
        self.write(visit, EntryBody::PhotoKept { step: step.to_owned(), photo, by })
    }

    /// A photo taken in, on disk under its hash before any entry names it.
    pub(super) fn taken_in(&self, bytes: &[u8]) -> Result<PhotoRef, Fault> {
        let taken = take_in(bytes)?;
        let sha256 = self.store.keep_photo(&taken.full, &taken.thumb)?;
        Ok(PhotoRef {
            sha256,
            original_sha256: hex(&taken.original_sha256),
            width: taken.width,
            height: taken.height,
            taken: taken.taken,
        })
    }

    /// Learns anew from every outcome there is.
    fn learn(&mut self) -> Result<(), Fault> {
        let learned = learning::learned(self)?;
        if learned != self.trade.learned {
            self.trade.learned = learned;
            self.drawn = DrawnFor::default();
            if let Some(at_hand) = &mut self.at_hand {
                at_hand.standing = None;
            }
        }
        Ok(())
    }

    /// Notes in the ledger what a replay arranged.
    pub(super) fn arranged(&mut self, visit: &str, what: &str, by: &str) -> Result<Response, Fault> {
        let what = what.to_owned();
        self.change(visit, Some(by), |scene| Ok(Some(EntryBody::Arranged { what, by: scene.by.to_owned() })))
    }
}

impl Steady {
    /// The same press and clock on another data folder, with the workshop's own knowledge in it: the place of
    /// a rehearsal.
    pub(super) fn setup_for(&self, data_dir: PathBuf) -> Result<Setup, Failure> {
        let inner = self.lock()?;
        let copied = inner.store.copy_own_files(&data_dir);
        copied.map_err(|fault| shown(&fault.into(), &inner.locale()))?;
        Ok(Setup { data_dir, press: Arc::clone(&inner.press), clock: inner.clock })
    }
}

fn derived(
    trade: &Trade,
    visit: &str,
    chain: &Chain,
    device: &str,
    drawn: &DrawnFor,
) -> Result<Standing, Refusal> {
    let visit = derive::Visit { id: visit, entries: &chain.entries, broken_at: chain.broken_at, device };
    derive::standing(trade, visit, drawn)
}

/// A key from the system's random bytes, for a device that has none yet.
fn fresh_key() -> Result<DeviceKey, Fault> {
    let mut seed = [0; 32];
    getrandom::fill(&mut seed).map_err(|_| Fault::Internal("the system gave no random bytes".to_owned()))?;
    Ok(DeviceKey::from_seed(&seed))
}
