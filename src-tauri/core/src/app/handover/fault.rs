//! The codes under which a refused handover file is known outside.

use crate::handover::fault::HandoverFault;

/// The code of a refusal; its sentences are the texts `error-CODE` and `error-CODE-help`.
pub fn code(fault: &HandoverFault) -> &'static str {
    match fault {
        HandoverFault::Unknown => "handover-unknown",
        HandoverFault::CutShort => "handover-cut-short",
        HandoverFault::Newer => "handover-newer",
        HandoverFault::Changed { .. } => "handover-changed",
        HandoverFault::FileChanged => "file-changed",
        HandoverFault::Signature => "handover-signature",
        HandoverFault::BeforeSignatures => "handover-before-signatures",
        HandoverFault::Missing { .. } => "handover-part-missing",
        HandoverFault::Extra { .. } => "handover-part-extra",
        HandoverFault::Name { .. } => "handover-part-name",
        HandoverFault::TooLarge { .. } => "handover-too-large",
        HandoverFault::Chain { .. } => "handover-chain",
        HandoverFault::Forked { .. } => "handover-forked",
        HandoverFault::Unproven { .. } => "handover-unproven",
        HandoverFault::Unsigned { .. } => "handover-unsigned",
        HandoverFault::OwnName { .. } => "handover-own-name",
        HandoverFault::Spelling { .. } => "handover-spelling",
        HandoverFault::Beyond { .. } => "handover-beyond",
        HandoverFault::Retired { .. } => "handover-retired",
        HandoverFault::Ahead { .. } => "handover-ahead",
        HandoverFault::OpenedTwice { .. } => "handover-opened-twice",
        HandoverFault::MilderByStranger { .. } => "handover-milder",
        HandoverFault::HeldBack { .. } => "handover-held-back",
        HandoverFault::TooManyWriters { .. } => "handover-writers",
        HandoverFault::Photo { .. } => "handover-photo",
        HandoverFault::Read(fault) if fault.kind() == std::io::ErrorKind::StorageFull => "disk-full",
        HandoverFault::Read(_) => "handover-unreadable",
        HandoverFault::Write(_) => "handover-unwritable",
    }
}
