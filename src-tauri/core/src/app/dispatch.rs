//! From a request to the function that answers it, room by room. `Inner::handle` names every request there is, so
//! that a new one has to be given a room; the room's own function then calls what does it.

use crate::model::answer::Circumstances;
use crate::model::rating::Word;

use super::decide::{self, GivenAnswer, GivenIntake, GivenReceipt, Relaid};
use super::fault::{Fault, Refusal};
use super::request::Request;
use super::response::Response;
use super::steady::Inner;
use super::{
    backup, bench, devices, elsewhere, handover, history, intake, knowledge, known_car, learning, list,
    looks, marks, opinion, outcome, papers, qr, set_aside, vin, wishes, workshop,
};

type Answer = Result<Response, Fault>;

/// A room was handed what it does not answer.
fn misplaced() -> Answer {
    Err(Fault::Internal("a request in the wrong room".to_owned()))
}

impl Inner {
    /// Answers one request; `by` is who acts, in place of the technician's name.
    pub(super) fn handle(&mut self, request: Request, by: Option<&str>) -> Answer {
        match request {
            // Answered without the core being held: `app/practice.rs`, `app/snapshot.rs` and `app/backup/file.rs`.
            Request::StartPractice { .. }
            | Request::Practise { .. }
            | Request::EndPractice
            | Request::Paper { .. }
            | Request::Export { .. }
            | Request::PrepareBackup { .. } => Err(Refusal::UnknownRequest.into()),
            Request::Home
            | Request::SetTechnician { .. }
            | Request::SetPreference { .. }
            | Request::Workshop
            | Request::SetWorkshop { .. }
            | Request::Visits { .. }
            | Request::VisitsBefore { .. }
            | Request::Calibration
            | Request::Devices
            | Request::ConfirmDevice { .. }
            | Request::DeviceQr
            | Request::ConfirmDeviceByPhoto { .. }
            | Request::TakeOverDevice { .. }
            | Request::NameDevice { .. }
            | Request::RetireDevice { .. }
            | Request::ResetDevice { .. } => self.of_device(request, by),
            Request::Open { .. }
            | Request::Look { .. }
            | Request::LookAsSorted { .. }
            | Request::AmendTakesBack { .. }
            | Request::TakeBackElsewhere { .. }
            | Request::Amend { .. }
            | Request::History { .. }
            | Request::GiveOpinion { .. }
            | Request::ConfirmOutcome { .. } => self.of_visit(request, by),
            Request::ChooseOrder { .. }
            | Request::ConfirmGate { .. }
            | Request::SayLift { .. }
            | Request::LeavePart { .. }
            | Request::Answer { .. }
            | Request::AllSound { .. }
            | Request::Undo { .. } => self.of_walk(request, by),
            Request::Upload { .. }
            | Request::KeepPhoto { .. }
            | Request::ReadVin { .. }
            | Request::ScanVisit { .. }
            | Request::WantPhoto { .. }
            | Request::WantedPhotos { .. }
            | Request::DropWanted { .. }
            | Request::KeepWanted { .. }
            | Request::MarkPhoto { .. }
            | Request::PairPhotos { .. }
            | Request::WaivePhoto { .. } => self.of_photos(request, by),
            Request::Finding { .. }
            | Request::Note { .. }
            | Request::QrCode { .. }
            | Request::Sign { .. } => self.of_papers(request),
            Request::RecordGauge { .. } | Request::Bench { .. } | Request::LookAtBench { .. } => {
                self.of_bench(request, by)
            }
            Request::ImportPiece { .. }
            | Request::PreviewImport { .. }
            | Request::LeaveImport { .. }
            | Request::Import { .. }
            | Request::TakeBackImport { .. }
            | Request::RestorePiece { .. }
            | Request::Restore { .. }
            | Request::Erase { .. }
            | Request::TakeBack { .. }
            | Request::DismissSetAside { .. } => self.of_handover(request),
        }
    }

    /// The device, the workshop and the list of visits.
    pub(super) fn of_device(&mut self, request: Request, by: Option<&str>) -> Answer {
        match request {
            Request::Home => list::home(self),
            Request::SetTechnician { name } => list::set_technician(self, &name),
            Request::SetPreference { name, value } => list::set_preference(self, &name, &value),
            Request::Workshop => Ok(workshop::workshop(self)),
            Request::SetWorkshop { workshop } => workshop::set(self, &workshop),
            Request::Visits { search, after } => list::visits(self, &search, after.as_deref()),
            Request::VisitsBefore { plate, vin, visit } => {
                known_car::before(self, &plate, &vin, visit.as_deref())
            }
            Request::Calibration => learning::calibration(self),
            Request::Devices => devices::list(self),
            Request::ConfirmDevice { device, code } => devices::confirm(self, &device, &code, by),
            Request::DeviceQr => qr::device(self),
            Request::ConfirmDeviceByPhoto { device, upload } => {
                devices::confirm_by_photo(self, &device, &upload, by)
            }
            Request::TakeOverDevice { device } => devices::take_over(self, &device, by),
            Request::NameDevice { device, name } => devices::name(self, &device, &name, by),
            Request::RetireDevice { device } => devices::retire(self, &device, by),
            Request::ResetDevice { device } => devices::reset(self, &device, by),
            _ => misplaced(),
        }
    }

    /// One visit as a whole: opening, reading, what people say beside the sorting.
    fn of_visit(&mut self, request: Request, by: Option<&str>) -> Answer {
        match request {
            Request::Open { intake } => self.open_visit(intake, by),
            Request::Look { visit } => self.look(&visit),
            Request::LookAsSorted { visit, knowledge } => {
                knowledge::as_sorted(self, &visit, knowledge.as_deref())
            }
            Request::AmendTakesBack { visit, intake } => {
                let Relaid { steps, needs_reason } =
                    self.decided(&visit, "", |scene| decide::relaid(scene, &intake))?;
                Ok(Response::TakesBack { steps, needs_reason })
            }
            Request::Amend { visit, intake, from, takes_back: seen, reason } => {
                let given = GivenIntake { intake, from, seen, reason };
                self.change(&visit, by, |scene| decide::amend(scene, given).map(Some))
            }
            Request::TakeBackElsewhere { visit, entries, reason } => {
                self.change_several(&visit, by, |scene| elsewhere::take_back(scene, &entries, reason))
            }
            Request::History { visit } => history::history(self, &visit),
            Request::GiveOpinion { visit, cause, reason } => {
                self.change(&visit, by, |scene| opinion::give(scene, &cause, &reason).map(Some))
            }
            Request::ConfirmOutcome { visit, causes, by: says } => {
                let by = says.as_deref().map(str::trim).filter(|says| !says.is_empty()).or(by);
                self.change(&visit, by, |scene| outcome::confirm(scene, &causes))
            }
            _ => misplaced(),
        }
    }

    /// The walk's own steps.
    fn of_walk(&mut self, request: Request, by: Option<&str>) -> Answer {
        match request {
            Request::ChooseOrder { visit, order } => {
                self.change(&visit, by, |scene| Ok(Some(decide::choose_order(scene, order))))
            }
            Request::ConfirmGate { visit, set, gate, lift } => {
                self.change(&visit, by, |scene| decide::confirm_gate(scene, &set, (&gate, lift)))
            }
            Request::SayLift { visit, set, lift } => {
                self.change(&visit, by, |scene| decide::say_lift(scene, &set, lift))
            }
            Request::LeavePart { visit } => {
                self.change(&visit, by, |scene| decide::leave_part(scene).map(Some))
            }
            Request::Answer { visit, step, value, temperature, free, engine, heard_at, reason } => {
                let circumstances = Circumstances { temperature, free, engine, heard_at };
                let given = GivenAnswer { step, value, circumstances, reason };
                self.change(&visit, by, |scene| decide::answer(scene, given).map(Some))
            }
            Request::AllSound { visit, layout, steps } => {
                self.change_several(&visit, by, |scene| looks::all_sound(scene, &layout, &steps))
            }
            Request::Undo { visit, entry, reason } => {
                self.change(&visit, by, |scene| decide::undo(scene, &entry, reason).map(Some))
            }
            _ => misplaced(),
        }
    }

    /// Photos: on their way in, wished for, marked, done without.
    fn of_photos(&mut self, request: Request, by: Option<&str>) -> Answer {
        match request {
            Request::Upload { upload, index, piece } => intake::upload(self, &upload, index, &piece.0),
            Request::KeepPhoto { visit, step, upload } => self.keep_photo(&visit, &step, &upload, by),
            Request::ReadVin { upload } => vin::read(self, &upload),
            Request::ScanVisit { upload } => list::scanned(self, &upload),
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
            Request::WaivePhoto { visit, step, reason } => {
                self.change(&visit, by, |scene| decide::waive_photo(scene, &step, &reason).map(Some))
            }
            _ => misplaced(),
        }
    }

    /// The papers and the owner's signature under one.
    fn of_papers(&mut self, request: Request) -> Answer {
        match request {
            Request::Finding { visit, locale } => papers::finding(self, &visit, &locale),
            Request::Note { visit, locale } => papers::note(self, &visit, &locale),
            Request::QrCode { visit, locale } => qr::short_text(self, &visit, &locale),
            Request::Sign { visit, decision, name, note_sha256, locale, strokes } => {
                let current = papers::note_sha256(self, &visit, &locale)?;
                let given = GivenReceipt { decision, name, note_sha256, locale, strokes };
                self.change(&visit, Some("owner"), |scene| {
                    let rating = scene.standing.urgency.word.map_or("unrated", Word::id);
                    decide::sign(given, (&current, rating), scene.entries.len()).map(Some)
                })
            }
            _ => misplaced(),
        }
    }

    /// Gauges and the bench.
    fn of_bench(&mut self, request: Request, by: Option<&str>) -> Answer {
        match request {
            Request::RecordGauge { visit, step, gauge, reason } => {
                bench::gauge(self, &visit, by, &step, (gauge, reason))
            }
            Request::LookAtBench { visit } => bench::bench(self, &visit),
            Request::Bench { visit, act } => bench::act(self, &visit, by, act),
            _ => misplaced(),
        }
    }

    /// Visits on their way to another device and from one, and out of this one for good.
    fn of_handover(&mut self, request: Request) -> Answer {
        match request {
            Request::ImportPiece { upload, index, piece } => {
                handover::take_piece(self, &upload, index, &piece.0)
            }
            Request::PreviewImport { upload } => handover::preview_upload(self, &upload),
            Request::LeaveImport { upload } => Ok(handover::leave_upload(self, &upload)),
            Request::Import { upload } => handover::import_upload(self, &upload),
            Request::TakeBackImport { import } => handover::take_back(self, import),
            Request::RestorePiece { upload, index, piece } => {
                backup::take_piece(self, &upload, index, &piece.0)
            }
            Request::Restore { upload } => backup::restore_upload(self, &upload),
            Request::Erase { visit, word } => handover::erase(self, &visit, &word),
            Request::TakeBack { name } => set_aside::take_back(self, &name),
            Request::DismissSetAside { name } => set_aside::dismiss(self, &name),
            _ => misplaced(),
        }
    }
}
