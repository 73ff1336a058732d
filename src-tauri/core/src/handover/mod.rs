//! The handover file, `*.steady`: whole visits on their way to another device. Knows the file's form and
//! nothing of the ledger's rules; what is taken from it is the store's business (`store::merge`).
//!
//! A zip of uncompressed entries that any unzip program opens: `manifest.json` (who made it, and every
//! part with its length and SHA-256), `manifest.sig` (Ed25519 over the manifest's bytes by the device's
//! own key), then `visits/ID.jsonl` (ledger lines), `photos/SHA256.jpg` with its `.thumb.jpg`, and
//! `papers/`. The manifest fixes every other byte of the file, so that a changed one shows wherever it
//! is, and nothing is compressed, so that no part can be larger than the file. Reading holds the manifest
//! and one part at a time, each of at most 16 MiB; papers are passed on piece by piece.

mod container;
pub mod fault;
pub mod manifest;
pub mod read;
pub mod write;
