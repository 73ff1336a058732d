//! A visit to practise on, in a data folder of its own inside the data folder: no list, outcome or handover
//! file of the real one can hold it, because it was never there. Ending it removes the folder.

use std::path::PathBuf;
use std::sync::MutexGuard;

use crate::model::visit::Intake;

use super::decide;
use super::failure::Failure;
use super::fault::Refusal;
use super::request::Request;
use super::response::Response;
use super::steady::{Steady, shown};

/// The folder practised in, if it is open.
pub(super) type Practised = Option<Box<Steady>>;

impl Steady {
    /// Opens a visit to practise on, in place of any before.
    pub(super) fn start_practice(&self, intake: Intake) -> Result<Response, Failure> {
        let (technician, locale) = self.who()?;
        self.checked(&intake)?;
        let mut practised = self.practised();
        *practised = None;
        self.cleared()?;
        let fresh = Self::open(self.setup_for(self.practice_folder()?)?)?;
        fresh.handle(Request::SetTechnician { name: technician })?;
        fresh.handle(Request::SetPreference { name: "locale".to_owned(), value: locale })?;
        fresh.measure_as(self.lock().workshop.clone())?;
        let opened = fresh.handle(Request::Open { intake })?;
        *practised = Some(Box::new(fresh));
        Ok(opened)
    }

    /// Hands a request about the practice visit to where it is kept.
    pub(super) fn practise(&self, request: Request) -> Result<Response, Failure> {
        if !is_for_practice(&request) {
            return Err(self.refused(Refusal::NotInPractice));
        }
        let practised = self.reopened()?;
        match practised.as_ref() {
            Some(steady) => steady.handle(request),
            None => Err(self.refused(Refusal::NoPractice)),
        }
    }

    /// Throws the practice visit away and says what the first screen needs.
    pub(super) fn end_practice(&self) -> Result<Response, Failure> {
        *self.practised() = None;
        self.cleared()?;
        self.handle(Request::Home)
    }

    /// A photo of the practice visit.
    pub(super) fn practice_photo(&self, sha256: &str, size: super::PhotoSize) -> Option<Vec<u8>> {
        let practised = self.reopened().ok()?;
        practised.as_ref()?.photo(sha256, size).ok()
    }

    /// The folder practised in, opened again after a restart if there is one.
    fn reopened(&self) -> Result<MutexGuard<'_, Practised>, Failure> {
        let mut practised = self.practised();
        let folder = self.practice_folder()?;
        if practised.is_none() && folder.exists() {
            *practised = Some(Box::new(Self::open(self.setup_for(folder)?)?));
        }
        Ok(practised)
    }

    fn who(&self) -> Result<(String, String), Failure> {
        let inner = self.lock();
        let who = inner.technician(None).map_err(|fault| shown(&fault, &inner.locale()))?;
        Ok((who, inner.locale()))
    }

    /// A refused intake leaves the practice visit before it.
    fn checked(&self, intake: &Intake) -> Result<(), Failure> {
        let inner = self.lock();
        let checked = decide::check_intake(&inner.trade, intake);
        checked.map_err(|refusal| shown(&refusal.into(), &inner.locale()))
    }

    fn practice_folder(&self) -> Result<PathBuf, Failure> {
        Ok(self.lock().store.practice_folder())
    }

    /// Nothing is left of a practice folder.
    fn cleared(&self) -> Result<(), Failure> {
        let inner = self.lock();
        inner.store.clear_practice().map_err(|fault| shown(&fault.into(), &inner.locale()))
    }

    pub(super) fn refused(&self, refusal: Refusal) -> Failure {
        let locale = self.lock().locale();
        shown(&refusal.into(), &locale)
    }
}

/// What can be practised: everything about one visit that leaves nothing behind it. No paper, no file, no
/// outcome, and nothing of the device.
fn is_for_practice(request: &Request) -> bool {
    matches!(
        request,
        Request::Look { .. }
            | Request::LookAsSorted { .. }
            | Request::AmendTakesBack { .. }
            | Request::TakeBackElsewhere { .. }
            | Request::Amend { .. }
            | Request::ChooseOrder { .. }
            | Request::ConfirmGate { .. }
            | Request::SayLift { .. }
            | Request::LeavePart { .. }
            | Request::Answer { .. }
            | Request::AllSound { .. }
            | Request::Upload { .. }
            | Request::KeepPhoto { .. }
            | Request::ReadVin { .. }
            | Request::WantPhoto { .. }
            | Request::WantedPhotos { .. }
            | Request::DropWanted { .. }
            | Request::KeepWanted { .. }
            | Request::MarkPhoto { .. }
            | Request::PairPhotos { .. }
            | Request::WaivePhoto { .. }
            | Request::Undo { .. }
            | Request::Finding { .. }
            | Request::Note { .. }
            | Request::Sign { .. }
            | Request::History { .. }
            | Request::GiveOpinion { .. }
            | Request::RecordGauge { .. }
            | Request::LookAtBench { .. }
            | Request::Bench { .. }
    )
}
