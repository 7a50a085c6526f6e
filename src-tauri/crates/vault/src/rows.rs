//! Encrypts the clinic's rows: XChaCha20-Poly1305 under the data key, bound to table and row.
//!
//! A row that is moved to another table or another id cannot be decrypted there.
//!
//! ```text
//! sealed   version | nonce, 24 | ciphertext | tag, 16
//! ```

use crate::{Keys, labels, random};
use chacha20poly1305::aead::{Aead, KeyInit, Payload};
use chacha20poly1305::{XChaCha20Poly1305, XNonce};

const VERSION: u8 = 1;
const NONCE: usize = 24;

/// Why a row cannot be decrypted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum RowFault {
    /// It was changed, truncated, moved from another row, or encrypted under other keys.
    #[error("the row does not open under these keys at this place")]
    Damaged,
    /// It has a version that this program does not know.
    #[error("version {found}, newer than {VERSION}")]
    NewerVersion {
        /// Its version.
        found: u8,
    },
}

/// Encrypts one row's payload for its table and id.
pub fn seal(keys: &Keys, table: &str, row: &[u8], plain: &[u8]) -> Vec<u8> {
    let nonce = random::bytes::<NONCE>();
    let payload = Payload { msg: plain, aad: &labels::row(table, row) };
    let sealed = cipher(keys).encrypt(XNonce::from_slice(nonce.as_slice()), payload);
    let sealed = sealed.expect("a payload is far below the cipher's limit");
    [&[VERSION], nonce.as_slice(), &sealed].concat()
}

/// Decrypts one row's payload for its table and id.
///
/// # Errors
/// [`RowFault`].
pub fn open(keys: &Keys, table: &str, row: &[u8], sealed: &[u8]) -> Result<Vec<u8>, RowFault> {
    let (version, rest) = sealed.split_first().ok_or(RowFault::Damaged)?;
    if *version > VERSION {
        return Err(RowFault::NewerVersion { found: *version });
    }
    let (nonce, sealed) = rest.split_at_checked(NONCE).filter(|_| *version == VERSION).ok_or(RowFault::Damaged)?;
    let payload = Payload { msg: sealed, aad: &labels::row(table, row) };
    cipher(keys).decrypt(XNonce::from_slice(nonce), payload).map_err(|_| RowFault::Damaged)
}

fn cipher(keys: &Keys) -> XChaCha20Poly1305 {
    XChaCha20Poly1305::new(keys.data_key().as_slice().into())
}
