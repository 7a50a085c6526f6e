//! The only place where keys are derived or encryption is bound to a context; each use has its own label.

use crate::Keys;
use exercises::id::PlanId;
use format::card::PairingSecret;
use hkdf::Hkdf;
use hmac::{Hmac, Mac};
use sha2::{Digest, Sha256};
use zeroize::Zeroizing;

/// The keyed hash that proves who made a summary, before any data are added: HMAC-SHA-256 (RFC 2104) under a key that HKDF-SHA-256
/// (RFC 5869) derives from the card's secret, with the plan as salt.
pub(crate) fn summary_tag(secret: &PairingSecret, plan: PlanId) -> Hmac<Sha256> {
    let derive = Hkdf::<Sha256>::new(Some(&plan.0), secret.expose_the_secret_bytes());
    let mut key = Zeroizing::new([0; 32]);
    derive.expand(b"carryover/summary-tag/v1", key.as_mut_slice()).expect("32 bytes are within what HKDF gives");
    Hmac::new_from_slice(key.as_slice()).expect("HMAC takes a key of any length")
}

/// The context that a row's encryption is bound to: its table and its plain columns, each preceded by its length.
pub(crate) fn row(table: &str, columns: &[&[u8]]) -> Vec<u8> {
    let mut bound = b"carryover/row/v2\0".to_vec();
    put_with_length(&mut bound, table.as_bytes());
    columns.iter().for_each(|column| put_with_length(&mut bound, column));
    bound
}

/// The context of rows of version 1: the table and the row's id alone.
pub(crate) fn row_version_1(table: &str, id: &[u8]) -> Vec<u8> {
    let mut bound = b"carryover/row/v1\0".to_vec();
    put_with_length(&mut bound, table.as_bytes());
    put_with_length(&mut bound, id);
    bound
}

fn put_with_length(bound: &mut Vec<u8>, part: &[u8]) {
    bound.extend((part.len() as u64).to_be_bytes());
    bound.extend(part);
}

/// The keyed hash of a row for the manifest, before any data are added: HMAC-SHA-256 under a key that HKDF-SHA-256 derives from the
/// data key.
pub(crate) fn row_sum(keys: &Keys) -> Hmac<Sha256> {
    let derive = Hkdf::<Sha256>::new(None, keys.data_key().as_slice());
    let mut key = Zeroizing::new([0; 32]);
    derive.expand(b"carryover/row-sum/v1", key.as_mut_slice()).expect("32 bytes are within what HKDF gives");
    Hmac::new_from_slice(key.as_slice()).expect("HMAC takes a key of any length")
}

/// The secret on the card of one revision of a plan, derived from the data key.
pub(crate) fn pairing_secret(keys: &Keys, plan: PlanId, revision: u16) -> PairingSecret {
    let derive = Hkdf::<Sha256>::new(Some(&plan.0), keys.data_key().as_slice());
    let mut secret = Zeroizing::new([0; 32]);
    let info = [b"carryover/pairing-secret/v1\0".as_slice(), &revision.to_be_bytes()].concat();
    derive.expand(&info, secret.as_mut_slice()).expect("32 bytes are within what HKDF gives");
    PairingSecret::new(*secret)
}

/// The bytes that a clinic's mark is made from, derived from the data key: the mark stays when the other keys are renewed. It is on cards,
/// and says nothing about the key.
pub(crate) fn clinic_mark(keys: &Keys) -> [u8; 4] {
    let derive = Hkdf::<Sha256>::new(None, keys.data_key().as_slice());
    let mut mark = [0; 4];
    derive.expand(b"carryover/clinic-mark/v1", &mut mark).expect("4 bytes are within what HKDF gives");
    mark
}

/// The hash that a clinic's fingerprint is made from.
pub(crate) fn fingerprint(verify_key: &[u8; 32], recipient: &[u8; 32]) -> [u8; 32] {
    Sha256::new()
        .chain_update(b"carryover/fingerprint/v1\0")
        .chain_update(verify_key)
        .chain_update(recipient)
        .finalize()
        .into()
}

/// The checksum in front of an encrypted key file. It proves nothing; it only distinguishes damage from a wrong passphrase.
pub(crate) fn checksum(sealed: &[u8]) -> [u8; 8] {
    let [a, b, c, d, e, f, g, h, ..]: [u8; 32] = Sha256::digest(sealed).into();
    [a, b, c, d, e, f, g, h]
}
