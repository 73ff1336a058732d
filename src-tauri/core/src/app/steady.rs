//! An open data folder that answers requests, one at a time.
//!
//! What a request does is found in `dispatch`; the visit at hand and how an entry is written, in `at_hand`.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::PathBuf;
use std::sync::{Arc, Mutex, MutexGuard, RwLock};

use crate::model::device::Devices;
use crate::model::time::Moment;
use crate::model::workshop::Workshop;
use crate::signing::key::DeviceKey;
use crate::signing::line::Writer;
use crate::store::aside::Aside;
use crate::store::fault::StoreFault;
use crate::store::open::{Store, open, suspect};
use crate::store::outgoing::OutgoingFile;
use crate::store::photo_files::PhotoSize;
use crate::trade::Trade;
use crate::words::Words;

use super::at_hand::AtHand;
use super::backup::Prepared;
use super::decide::line_fits;
use super::drawn::DrawnFor;
use super::failure::Failure;
use super::fault::{Fault, Refusal};
use super::handover::Wanted;
use super::practice::Practised;
use super::press::Press;
use super::replies::is_listed;
use super::request::Request;
use super::response::{HomeNotice, Response};
use super::{knowledge, learning, list, photo, set_aside};

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
    /// Held shared by what reads beside the core: `on_snapshot`.
    pub(super) reading: RwLock<()>,
    /// The backup file that is being made or fetched.
    pub(super) prepared: Mutex<Prepared>,
}

/// What answers requests, behind the lock of [`Steady`].
pub(super) struct Inner {
    pub(super) store: Store,
    pub(super) trade: Trade,
    pub(super) press: Arc<dyn Press>,
    pub(super) clock: fn() -> Moment,
    /// How far a replayed case lies back; nought but while one of its requests is at work.
    pub(super) days_ago: u16,
    /// The device that writes here.
    pub(super) writer: Writer,
    /// What was decided about the others, as it is on disk.
    pub(super) devices: Devices,
    pub(super) notices: Vec<HomeNotice>,
    /// What was set aside, now or earlier.
    pub(super) asides: Vec<Aside>,
    /// The workshop's own particulars, as they are on disk.
    pub(super) workshop: Workshop,
    /// The drawn networks of each kind of car sorted since the knowledge last changed.
    pub(super) drawn: DrawnFor,
    /// The visit that was asked for last.
    pub(super) at_hand: Option<AtHand>,
}

impl Steady {
    /// Opens a data folder for this process alone.
    ///
    /// # Errors
    /// A [`Failure`] that says what to do; nothing was changed then.
    pub fn open(setup: Setup) -> Result<Self, Failure> {
        Inner::open(setup).map(Self::of).map_err(|fault| shown(&fault, "en"))
    }

    pub(super) fn of(inner: Inner) -> Self {
        Self {
            inner: Mutex::new(inner),
            practised: Mutex::new(None),
            reading: RwLock::new(()),
            prepared: Mutex::new(None),
        }
    }

    /// Answers one request. A refused request leaves the ledger as it was; so does one that panics, and the next
    /// is answered as if it had not been.
    ///
    /// # Errors
    /// A [`Failure`] that says what to do.
    pub fn handle(&self, request: Request) -> Result<Response, Failure> {
        caught(|| match request {
            Request::StartPractice { intake } => self.start_practice(intake),
            Request::Practise { request } => self.practise(*request),
            Request::EndPractice => self.end_practice(),
            Request::Paper { visit, paper, locale, sheet } => self.paper(&visit, paper, &locale, sheet),
            Request::Export { visits, papers, locale, sheet } => {
                self.prepare(Wanted { visits: &visits, papers, locale: locale.as_deref(), sheet })
            }
            Request::PrepareBackup { backup } => self.prepare_backup(&backup),
            Request::Erase { .. } => {
                let _alone = self.alone();
                self.drop_prepared();
                self.with(|inner| inner.handle(request, None))
            }
            request => self.with(|inner| inner.handle(request, None).map(|answer| inner.as_of_now(answer))),
        })
    }

    /// Answers a request about devices in somebody's name, whoever the technician is.
    ///
    /// # Errors
    /// `name-too-long`, or as [`Steady::handle`].
    pub fn handle_by(&self, request: Request, by: &str) -> Result<Response, Failure> {
        let by = by.trim();
        if !line_fits(by) {
            return Err(self.refused(Refusal::NameTooLong));
        }
        caught(|| self.with(|inner| inner.of_device(request, Some(by).filter(|by| !by.is_empty()))))
    }

    /// Does something with the core while nobody else does.
    pub(super) fn with<T>(&self, work: impl FnOnce(&mut Inner) -> Result<T, Fault>) -> Result<T, Failure> {
        let mut inner = self.lock();
        work(&mut inner).map_err(|fault| inner.told(&fault))
    }

    /// Something that a replayed case does, as if it were that many days ago.
    pub(super) fn back(
        &self,
        days_ago: u16,
        act: impl FnOnce(&mut Inner) -> Result<Response, Fault>,
    ) -> Result<Response, Failure> {
        self.with(|inner| {
            inner.days_ago = days_ago;
            let done = act(inner);
            inner.days_ago = 0;
            done
        })
    }

    /// What a shell tells whoever sent what is no request.
    pub fn unreadable() -> Failure {
        shown(&Refusal::UnknownRequest.into(), "en")
    }

    /// JSON in, JSON of a [`Response`] or of a [`Failure`] out.
    ///
    /// # Errors
    /// The failure as JSON.
    pub fn handle_json(&self, request: &str) -> Result<String, String> {
        let answer = match serde_json::from_str::<Request>(request) {
            Ok(request) => self.handle(request),
            Err(_) => Err(Self::unreadable()),
        };
        let json = |value: serde_json::Result<String>| value.unwrap_or_else(|_| "{}".to_owned());
        let answer = answer.map(|response| json(serde_json::to_string(&response)));
        debug_assert!(
            answer.as_ref().ok().is_none_or(|answer| is_listed(request, answer)),
            "no reply to {request:.80}"
        );
        answer.map_err(|failure| json(serde_json::to_string(&failure)))
    }

    /// A file that was made for a shell to fetch or to share, by the id in the answer, for as long as it is kept:
    /// until newer ones need its place, a visit is erased, or Steady starts anew.
    ///
    /// # Errors
    /// `upload-unknown`.
    pub fn outgoing(&self, file: &str) -> Result<OutgoingFile, Failure> {
        match self.prepared_file(file) {
            Some(backup) => Ok(backup),
            None => self.with(|inner| Ok(inner.store.taken_out(file)?)),
        }
    }

    /// A photo's JPEG bytes by its SHA-256 in hex, proven by it.
    ///
    /// # Errors
    /// `photo-missing`, `photo-damaged`.
    pub fn photo(&self, sha256: &str, size: PhotoSize) -> Result<Vec<u8>, Failure> {
        let missing = {
            let inner = self.lock();
            match photo::read(&inner, sha256, size) {
                Ok(jpeg) => return Ok(jpeg),
                Err(fault) => shown(&fault, &inner.locale()),
            }
        };
        self.practice_photo(sha256, size).ok_or(missing)
    }

    /// The same press and clock on another data folder, with the workshop's own knowledge in it: the place of
    /// a rehearsal.
    pub(super) fn setup_for(&self, data_dir: PathBuf) -> Result<Setup, Failure> {
        let inner = self.lock();
        let copied = inner.store.copy_own_files(&data_dir);
        copied.map_err(|fault| shown(&fault.into(), &inner.locale()))?;
        Ok(Setup { data_dir, press: Arc::clone(&inner.press), clock: inner.clock })
    }

    /// The practice visit's folder; after a panic it is opened anew from disk.
    pub(super) fn practised(&self) -> MutexGuard<'_, Practised> {
        self.practised.lock().unwrap_or_else(|poisoned| {
            self.practised.clear_poison();
            let mut practised = poisoned.into_inner();
            *practised = None;
            practised
        })
    }

    /// The core, one caller at a time. What a panic left half done in memory is read again from disk; on disk a
    /// transaction that was cut off has left nothing.
    pub(super) fn lock(&self) -> MutexGuard<'_, Inner> {
        self.inner.lock().unwrap_or_else(|poisoned| {
            self.inner.clear_poison();
            let mut inner = poisoned.into_inner();
            inner.start_over();
            inner
        })
    }
}

/// Turns a panic into a failure, so that a shell has something to tell.
fn caught<T>(work: impl FnOnce() -> Result<T, Failure>) -> Result<T, Failure> {
    let panicked = |_| Err(shown(&Fault::Internal("a request panicked".to_owned()), "en"));
    catch_unwind(AssertUnwindSafe(work)).unwrap_or_else(panicked)
}

/// A fault in the language of the screens.
pub(super) fn shown(fault: &Fault, locale: &str) -> Failure {
    let words = Words::of(locale).or_else(|_| Words::of("en"));
    words.map(|words| fault.shown(words)).unwrap_or_else(|_| Failure {
        code: "internal".to_owned(),
        message: "the texts cannot be read".to_owned(),
        help: "install Steady again; the data stays where it is".to_owned(),
        field: None,
    })
}

impl Inner {
    /// Opens the folder; where damage shows only once it is read, looks closely and opens it again.
    fn open(setup: Setup) -> Result<Self, Fault> {
        let Setup { data_dir, press, clock } = setup;
        let again = Setup { data_dir: data_dir.clone(), press: Arc::clone(&press), clock };
        match Self::opened(again) {
            Err(Fault::Store(StoreFault::Damaged)) => {
                suspect(&data_dir);
                Self::opened(Setup { data_dir, press, clock })
            }
            other => other,
        }
    }

    fn opened(setup: Setup) -> Result<Self, Fault> {
        let store = open(&setup.data_dir, (setup.clock)())?;
        let mut inner = Self::on(store, setup)?;
        inner.asides = set_aside::counted(&inner)?;
        list::renew_corrected(&mut inner);
        Ok(inner)
    }

    /// What answers from this store.
    pub(super) fn on(mut store: Store, setup: Setup) -> Result<Self, Fault> {
        let Setup { press, clock, .. } = setup;
        let now = clock();
        let (trade, notices) = knowledge::current(&mut store, now)?;
        let writer = store.writer(now, fresh_key)?;
        let devices = store.devices()?;
        let workshop = store.workshop()?;
        let drawn = DrawnFor::default();
        let (days_ago, at_hand, asides) = (0, None, Vec::new());
        let mut inner = Self {
            store,
            trade,
            press,
            clock,
            days_ago,
            writer,
            devices,
            notices,
            asides,
            workshop,
            drawn,
            at_hand,
        };
        inner.learn()?;
        Ok(inner)
    }

    /// Forgets whatever a request that panicked may have left half done.
    fn start_over(&mut self) {
        self.days_ago = 0;
        self.drawn = DrawnFor::default();
        // Where the disk cannot be read now, the request that follows says so.
        let _ = self.ledger_changed();
        if let Ok(workshop) = self.store.workshop() {
            self.workshop = workshop;
        }
        if let Ok(asides) = self.store.asides() {
            self.asides = asides;
        }
    }

    /// A fault in the language of the screens; damage makes the next start look closely.
    pub(super) fn told(&self, fault: &Fault) -> Failure {
        if matches!(fault, Fault::Store(StoreFault::Damaged)) {
            suspect(self.store.folder());
        }
        shown(fault, &self.locale())
    }

    /// What the clock says, or said where a replayed case lies back.
    pub(super) fn now(&self) -> Moment {
        (self.clock)().days_before(self.days_ago)
    }

    pub(super) fn locale(&self) -> String {
        self.store.setting("pref.locale").ok().flatten().unwrap_or_else(|| "en".to_owned())
    }

    /// The words of a language, in the workshop's units.
    pub(super) fn words(&self, locale: &str) -> Result<Words, Fault> {
        Ok(Words::of(locale)?.measured_in(self.workshop.units))
    }

    pub(super) fn technician(&self, by: Option<&str>) -> Result<String, Fault> {
        if let Some(by) = by {
            return Ok(by.to_owned());
        }
        let name = self.store.setting("technician")?.unwrap_or_default();
        if name.is_empty() { Err(Refusal::TechnicianMissing.into()) } else { Ok(name) }
    }

    /// Learns anew from every outcome there is.
    pub(super) fn learn(&mut self) -> Result<(), Fault> {
        let learned = learning::learned(self)?;
        if learned != self.trade.learned {
            self.trade.learned = learned;
            self.drawn = DrawnFor::default();
            if let Some(at_hand) = &mut self.at_hand {
                at_hand.outdate();
            }
        }
        Ok(())
    }
}

/// A key from the system's random bytes, for a device that has none yet.
fn fresh_key() -> Result<DeviceKey, Fault> {
    let mut seed = [0; 32];
    getrandom::fill(&mut seed).map_err(|_| Fault::Internal("the system gave no random bytes".to_owned()))?;
    Ok(DeviceKey::from_seed(&seed))
}
