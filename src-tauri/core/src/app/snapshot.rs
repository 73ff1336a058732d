//! Work that takes long, printing and exporting, done beside the core: on a copy of it that reads the ledger as it
//! stood at one moment and writes nothing. Answers are given meanwhile, and what they write is not in the copy.

use std::sync::{Arc, PoisonError, RwLockWriteGuard};

use super::failure::Failure;
use super::fault::Fault;
use super::handover::{self, Wanted};
use super::papers::{self, Printed};
use super::request::{PaperKind, Sheet};
use super::response::{PaperFile, Response};
use super::steady::{Inner, Steady, shown};
use crate::signing::line::Writer;
use crate::store::workshop::PaperMade;

impl Steady {
    /// Prints a paper of a visit, and remembers how it was made, so that a handover file's is made alike.
    ///
    /// # Errors
    /// A [`Failure`] that says what to do.
    pub fn print(
        &self,
        visit: &str,
        kind: PaperKind,
        locale: &str,
        sheet: Sheet,
    ) -> Result<Printed, Failure> {
        self.printed(visit, kind, (locale, sheet), |_, printed| Ok(printed))
    }

    /// Prints a paper for a shell to fetch by its id.
    pub(super) fn paper(
        &self,
        visit: &str,
        kind: PaperKind,
        locale: &str,
        sheet: Sheet,
    ) -> Result<Response, Failure> {
        self.printed(visit, kind, (locale, sheet), |inner, printed| {
            let Printed { name, mime, bytes, text } = printed;
            let file = inner.store.put_out(&bytes)?;
            let (mime, bytes) = (mime.to_owned(), bytes.len() as u64);
            Ok(Response::Paper(PaperFile { file, name, mime, bytes, text }))
        })
    }

    fn printed<T>(
        &self,
        visit: &str,
        kind: PaperKind,
        (locale, sheet): (&str, Sheet),
        then: impl FnOnce(&mut Inner, Printed) -> Result<T, Fault>,
    ) -> Result<T, Failure> {
        let print = |copy: &mut Inner| papers::printed(copy, visit, kind, (locale, sheet));
        self.on_snapshot(print, |inner, printed| {
            if kind != PaperKind::ShortText {
                let made = PaperMade { locale: locale.to_owned(), sheet: sheet.id().to_owned() };
                // The paper is worth more than the memory of it: a full disk does not hold it back.
                let _ = inner.store.paper_made(visit, kind.id(), &made);
            }
            then(inner, printed)
        })
    }

    /// Writes a handover file for a shell to fetch by its id.
    pub(super) fn prepare(&self, wanted: Wanted<'_>) -> Result<Response, Failure> {
        self.on_snapshot(|copy| handover::prepare(copy, wanted), |_, made| Ok(made))
    }

    /// Does something on a copy of the core that reads what is on disk now, `then` something with the core itself.
    /// Erasing waits until both are done: a copy would keep alive in the log what was erased, and what came of it
    /// would outlive it.
    pub(super) fn on_snapshot<T, U>(
        &self,
        work: impl FnOnce(&mut Inner) -> Result<T, Fault>,
        then: impl FnOnce(&mut Inner, T) -> Result<U, Fault>,
    ) -> Result<U, Failure> {
        let _reading = self.reading.read().unwrap_or_else(PoisonError::into_inner);
        let mut copy = self.with(|inner| inner.snapshot())?;
        let done = work(&mut copy).map_err(|fault| shown(&fault, &copy.locale()))?;
        drop(copy);
        self.with(|inner| then(inner, done))
    }

    /// Waits until nobody reads beside the core, and lets nobody begin.
    pub(super) fn alone(&self) -> RwLockWriteGuard<'_, ()> {
        self.reading.write().unwrap_or_else(PoisonError::into_inner)
    }
}

impl Inner {
    fn snapshot(&self) -> Result<Self, Fault> {
        Ok(Self {
            store: self.store.snapshot()?,
            trade: self.trade.clone(),
            press: Arc::clone(&self.press),
            clock: self.clock,
            days_ago: self.days_ago,
            writer: Writer::of(self.writer.key().clone()),
            devices: self.devices.clone(),
            notices: Vec::new(),
            asides: self.asides.clone(),
            workshop: self.workshop.clone(),
            drawn: self.drawn.clone(),
            at_hand: None,
        })
    }
}
