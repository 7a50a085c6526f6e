//! Keys, signatures, sealing with age, passphrases. The only crate that names age.
//!
//! Secrets are types: masked in debug output, wiped when dropped, without a way to be serialized. Every label under which
//! something is derived or bound stands in `labels.rs`; those under which something is signed, beside the bytes in `format`.
//!
//! Nothing here reads a file, a clock or a database: bytes in, bytes out.
#![forbid(unsafe_code)]

pub mod card;
pub mod keys;
pub mod random;
pub mod rows;
pub mod summary;

mod fingerprint;
mod labels;
mod passphrase;
mod recipient;

pub use fingerprint::fingerprint;
pub use format::card::PairingSecret;
pub use keys::{IdentityText, Keys, KeysFault};
pub use passphrase::{Cost, Passphrase};
