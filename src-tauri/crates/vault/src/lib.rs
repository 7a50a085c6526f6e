//! Keys, signatures, encryption with age ("sealing"), passphrases. The only crate that uses age.
//!
//! Secrets have types of their own: masked in debug output, wiped when dropped, and not serializable. Every label under which
//! something is derived or bound is in `labels.rs`; the labels of signatures are next to the bytes in `format`.
//!
//! Nothing here reads a file, a clock or a database: bytes in, bytes out.
#![forbid(unsafe_code)]

pub mod card;
pub mod keys;
pub mod manifest;
pub mod random;
pub mod rows;
pub mod screen_code;
pub mod summary;

mod fingerprint;
mod generation;
mod labels;
mod passphrase;
mod recipient;

pub use fingerprint::fingerprint;
pub use format::card::PairingSecret;
pub use generation::FormerGeneration;
pub use keys::{IdentityText, Keys, KeysFault};
pub use passphrase::{Cost, Passphrase, Strength};
