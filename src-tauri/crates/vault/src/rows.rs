//! Encrypts the clinic's rows: XChaCha20-Poly1305 under the data key, bound to the table, the row's id and its other plain columns.
//!
//! A row that is moved to another table or another id, or whose plain columns are changed (a card given to another patient), cannot
//! be decrypted there. That a row is missing, or was put back as it was earlier, is found by the [`crate::manifest`].
//!
//! ```text
//! sealed   version | nonce, 24 | ciphertext | tag, 16
//! ```
//!
//! Version 1 was bound to table and id alone. It is opened only to be sealed anew.

use crate::{Keys, labels, random};
use chacha20poly1305::aead::{Aead, KeyInit, Payload};
use chacha20poly1305::{XChaCha20Poly1305, XNonce};

/// The version of rows that this program writes.
pub const VERSION: u8 = 2;
const NONCE: usize = 24;

/// Why a row cannot be decrypted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum RowFault {
    /// It was changed, truncated, moved from another row, encrypted under other keys, or is of an older version.
    #[error("the row does not open under these keys at this place")]
    Damaged,
    /// It has a version that this program does not know.
    #[error("version {found}, newer than {VERSION}")]
    NewerVersion {
        /// Its version.
        found: u8,
    },
}

/// Where a row is: its table and all its plain columns, the id first.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct RowPlace {
    bound: Vec<u8>,
}

impl RowPlace {
    /// The place of the row with these plain `columns`, the id first, in the order in which the table has them.
    pub fn new(table: &str, columns: &[&[u8]]) -> RowPlace {
        RowPlace { bound: labels::row(table, columns) }
    }

    /// What the encryption is bound to.
    pub(crate) fn bound(&self) -> &[u8] {
        &self.bound
    }
}

/// Encrypts one row's payload for its place.
pub fn seal(keys: &Keys, place: &RowPlace, plain: &[u8]) -> Vec<u8> {
    let nonce = random::bytes::<NONCE>();
    let payload = Payload { msg: plain, aad: place.bound() };
    let sealed = cipher(keys).encrypt(XNonce::from_slice(nonce.as_slice()), payload);
    let sealed = sealed.expect("a payload is far below the cipher's limit");
    [&[VERSION], nonce.as_slice(), &sealed].concat()
}

/// Decrypts one row's payload for its place.
///
/// # Errors
/// [`RowFault`], also for a row of version 1.
pub fn open(keys: &Keys, place: &RowPlace, sealed: &[u8]) -> Result<Vec<u8>, RowFault> {
    decrypt(keys, VERSION, place.bound(), sealed)
}

/// Decrypts a row of version 1, to seal it anew.
///
/// # Errors
/// [`RowFault`], also for a row of another version.
pub fn open_version_1(keys: &Keys, table: &str, id: &[u8], sealed: &[u8]) -> Result<Vec<u8>, RowFault> {
    decrypt(keys, 1, &labels::row_version_1(table, id), sealed)
}

/// The version of a sealed row, as its first byte says; `None` for no bytes. Nothing is checked.
pub fn version(sealed: &[u8]) -> Option<u8> {
    sealed.first().copied()
}

fn decrypt(keys: &Keys, expected: u8, bound: &[u8], sealed: &[u8]) -> Result<Vec<u8>, RowFault> {
    let (version, rest) = sealed.split_first().ok_or(RowFault::Damaged)?;
    if *version > VERSION {
        return Err(RowFault::NewerVersion { found: *version });
    }
    let (nonce, sealed) = rest.split_at_checked(NONCE).filter(|_| *version == expected).ok_or(RowFault::Damaged)?;
    let payload = Payload { msg: sealed, aad: bound };
    cipher(keys).decrypt(XNonce::from_slice(nonce), payload).map_err(|_| RowFault::Damaged)
}

fn cipher(keys: &Keys) -> XChaCha20Poly1305 {
    XChaCha20Poly1305::new(keys.data_key().as_slice().into())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A row as version 1 of this format was written.
    fn seal_version_1(keys: &Keys, table: &str, id: &[u8], plain: &[u8]) -> Vec<u8> {
        let payload = Payload { msg: plain, aad: &labels::row_version_1(table, id) };
        let sealed = cipher(keys).encrypt(XNonce::from_slice(&[7; NONCE]), payload).expect("short");
        [&[1], [7; NONCE].as_slice(), &sealed].concat()
    }

    #[test]
    fn a_row_of_version_1_is_opened_only_where_it_is_asked_for() {
        let keys = crate::keys::for_now();
        let old = seal_version_1(&keys, "issued", b"17", b"payload");
        assert_eq!(open_version_1(&keys, "issued", b"17", &old), Ok(b"payload".to_vec()));
        assert_eq!(open_version_1(&keys, "issued", b"18", &old), Err(RowFault::Damaged));
        assert_eq!(open(&keys, &RowPlace::new("issued", &[b"17"]), &old), Err(RowFault::Damaged));
        let mut relabelled = old;
        relabelled[0] = VERSION;
        assert_eq!(open(&keys, &RowPlace::new("issued", &[b"17"]), &relabelled), Err(RowFault::Damaged));
        let new = seal(&keys, &RowPlace::new("issued", &[b"17"]), b"payload");
        assert_eq!(open_version_1(&keys, "issued", b"17", &new), Err(RowFault::Damaged));
    }
}
