//! A clinic's keys, and the file that contains all of them, encrypted under a passphrase.
//!
//! ```text
//! key file   8F 43 6B 79 | version | checksum, 8 | age file with a single scrypt recipient
//! within     version | Ed25519 seed, 32 | X25519 secret, 32 | data key, 32
//! ```
//!
//! The checksum in front distinguishes a damaged file from a wrong passphrase, which the age format alone cannot. [`age_file`]
//! returns the part that any age tool can decrypt.

use crate::labels::checksum;
use crate::{Cost, Passphrase, random, recipient};
use age::secrecy::SecretString;
use age::x25519::Identity;
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use ed25519_dalek::SigningKey;
use std::fmt;
use std::io::{Read, Write};
use std::iter::once;
use zeroize::Zeroizing;

const MAGIC: [u8; 4] = *b"\x8FCky";
const VERSION: u8 = 1;
/// Length of magic, version and checksum, in bytes.
const HEAD: usize = 4 + 1 + 8;
/// Length of the three keys, in bytes.
const MATERIAL: usize = 3 * 32;
/// Largest size of a key file, in bytes; a real one has about three hundred.
const MAX_BYTES: usize = 4096;

/// A clinic's decrypted keys. Masked in debug output, wiped when dropped.
pub struct Keys {
    material: Zeroizing<[u8; MATERIAL]>,
}

impl Keys {
    /// The clinic's public Ed25519 key, which is on every card.
    pub fn verify_key(&self) -> [u8; 32] {
        self.signing().verifying_key().to_bytes()
    }

    /// The clinic's public X25519 key, which is on every card.
    pub fn recipient(&self) -> [u8; 32] {
        recipient::public(&self.part(1))
    }

    /// The clinic's fingerprint, as shown on screen and paper.
    pub fn fingerprint(&self) -> String {
        crate::fingerprint(&self.verify_key(), &self.recipient())
    }

    /// The identity that decrypts every summary with any age tool; to be printed and locked away.
    pub fn identity_string(&self) -> IdentityText {
        use age::secrecy::ExposeSecret;
        IdentityText(Zeroizing::new(self.identity().to_string().expose_secret().to_owned()))
    }

    pub(crate) fn signing(&self) -> SigningKey {
        SigningKey::from_bytes(&self.part(0))
    }

    pub(crate) fn identity(&self) -> Identity {
        recipient::identity(&self.part(1))
    }

    pub(crate) fn data_key(&self) -> Zeroizing<[u8; 32]> {
        self.part(2)
    }

    fn part(&self, at: usize) -> Zeroizing<[u8; 32]> {
        let mut part = Zeroizing::new([0; 32]);
        part.copy_from_slice(&self.material[32 * at..32 * (at + 1)]);
        part
    }
}

impl fmt::Debug for Keys {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Keys(..)")
    }
}

/// `AGE-SECRET-KEY-1…`: whoever has it can read every summary. Masked in debug output, wiped when dropped.
pub struct IdentityText(Zeroizing<String>);

impl IdentityText {
    /// The text itself. Only for printing on paper that is then locked away.
    pub fn expose_the_identity_for_printing(&self) -> &str {
        &self.0
    }
}

impl fmt::Debug for IdentityText {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("IdentityText(..)")
    }
}

/// Why a key file cannot be opened.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum KeysFault {
    /// It is not a key file.
    #[error("not a key file")]
    NotKeys,
    /// Bytes were changed or are missing; no passphrase opens it.
    #[error("the key file is damaged")]
    Damaged,
    /// The file is undamaged, but the passphrase is wrong.
    #[error("the passphrase is another")]
    WrongPassphrase,
    /// Trying a passphrase would need more work than this program allows.
    #[error("a passphrase costs 2^{asked}, over the limit of 2^{}", Cost::MAX_READ.log_n())]
    TooCostly {
        /// The exponent of the work that the file demands.
        asked: u8,
    },
    /// The file has a version that this program does not know.
    #[error("version {found}, newer than {VERSION}")]
    NewerVersion {
        /// Its version.
        found: u8,
    },
}

/// New keys that are never stored, for data that nobody needs to decrypt later.
pub fn for_now() -> Keys {
    Keys { material: random::bytes() }
}

/// New keys, and their file under `passphrase`, at the usual cost.
pub fn create(passphrase: &Passphrase) -> (Keys, Vec<u8>) {
    create_at(passphrase, Cost::WRITTEN)
}

/// New keys, and their file under `passphrase`, at the given cost.
pub fn create_at(passphrase: &Passphrase, cost: Cost) -> (Keys, Vec<u8>) {
    let keys = for_now();
    let sealed = seal(&keys, passphrase, cost);
    (keys, sealed)
}

/// The file of `keys` under another passphrase. Copies of the old file still open with the old passphrase.
pub fn seal(keys: &Keys, passphrase: &Passphrase, cost: Cost) -> Vec<u8> {
    let mut plain = Zeroizing::new(vec![VERSION]);
    plain.extend(keys.material.as_slice());
    let sealed = seal_bytes(&plain, passphrase, cost);
    frame(&sealed)
}

/// Encrypts bytes as an age file under a passphrase.
fn seal_bytes(plain: &[u8], passphrase: &Passphrase, cost: Cost) -> Vec<u8> {
    let mut recipient = age::scrypt::Recipient::new(passphrase.for_sealing());
    recipient.set_work_factor(cost.log_n());
    let encryptor = age::Encryptor::with_recipients(once(&recipient as &dyn age::Recipient))
        .expect("a single scrypt recipient is allowed");
    let mut sealed = Vec::new();
    let mut writer = encryptor.wrap_output(&mut sealed).expect("a vector takes every byte");
    writer.write_all(plain).expect("a vector takes every byte");
    writer.finish().expect("a vector takes every byte");
    sealed
}

fn frame(sealed: &[u8]) -> Vec<u8> {
    [&MAGIC, &[VERSION][..], &checksum(sealed), sealed].concat()
}

/// The part of a key file that any age tool can decrypt with the passphrase.
///
/// # Errors
/// [`KeysFault`], except those that need the passphrase.
pub fn age_file(file: &[u8]) -> Result<&[u8], KeysFault> {
    if file.len() > MAX_BYTES {
        return Err(KeysFault::NotKeys);
    }
    let rest = file.strip_prefix(&MAGIC).ok_or(KeysFault::NotKeys)?;
    let (head, sealed) = rest.split_at_checked(HEAD - MAGIC.len()).ok_or(KeysFault::Damaged)?;
    match (head[0], checksum(sealed) == head[1..]) {
        (VERSION, true) => Ok(sealed),
        (VERSION, false) | (0, _) => Err(KeysFault::Damaged),
        (found, _) => Err(KeysFault::NewerVersion { found }),
    }
}

/// Opens a key file.
///
/// # Errors
/// [`KeysFault`], which distinguishes a wrong passphrase, a damaged file, and a file that would need too much work.
pub fn open(file: &[u8], passphrase: &Passphrase) -> Result<Keys, KeysFault> {
    open_and_renew(file, passphrase).map(|(keys, _)| keys)
}

/// Opens a key file. If trying a passphrase costs less than it does for new files, or the file was sealed under another form of the
/// passphrase than the composed one, the second result is a file to replace it.
///
/// # Errors
/// As for [`open`].
pub fn open_and_renew(file: &[u8], passphrase: &Passphrase) -> Result<(Keys, Option<Vec<u8>>), KeysFault> {
    let sealed = age_file(file)?;
    let mut fault = KeysFault::WrongPassphrase;
    for (nth, form) in passphrase.for_opening().into_iter().enumerate() {
        match open_with(sealed, form) {
            Ok(keys) => {
                let old = nth > 0 || cost(sealed).is_none_or(|cost| cost < Cost::WRITTEN.log_n());
                let renewed = old.then(|| seal(&keys, passphrase, Cost::WRITTEN));
                return Ok((keys, renewed));
            }
            Err(KeysFault::WrongPassphrase) => {}
            Err(other) => {
                fault = other;
                break;
            }
        }
    }
    Err(fault)
}

/// The exponent of the work that an age file under a passphrase demands, as its second line says.
fn cost(sealed: &[u8]) -> Option<u8> {
    let stanza = sealed.split(|byte| *byte == b'\n').nth(1)?;
    std::str::from_utf8(stanza).ok()?.strip_prefix("-> scrypt ")?.rsplit(' ').next()?.parse().ok()
}

fn open_with(sealed: &[u8], passphrase: SecretString) -> Result<Keys, KeysFault> {
    let decryptor = age::Decryptor::new_buffered(sealed).map_err(|_| KeysFault::Damaged)?;
    let mut identity = age::scrypt::Identity::new(passphrase);
    identity.set_max_work_factor(Cost::MAX_READ.log_n());
    let reader = decryptor.decrypt(once(&identity as &dyn age::Identity)).map_err(|fault| match fault {
        age::DecryptError::DecryptionFailed => KeysFault::WrongPassphrase,
        age::DecryptError::ExcessiveWork { required, .. } => KeysFault::TooCostly { asked: required },
        _ => KeysFault::Damaged,
    })?;
    let mut plain = Zeroizing::new(Vec::with_capacity(MAX_BYTES));
    reader.take(MAX_BYTES as u64).read_to_end(&mut plain).map_err(|_| KeysFault::Damaged)?;
    match plain.split_first() {
        Some((&VERSION, material)) if material.len() == MATERIAL => {
            let mut kept = Zeroizing::new([0; MATERIAL]);
            kept.copy_from_slice(material);
            Ok(Keys { material: kept })
        }
        Some((found, _)) if *found > VERSION => Err(KeysFault::NewerVersion { found: *found }),
        _ => Err(KeysFault::Damaged),
    }
}

const ARMOR: [&str; 2] = ["-----BEGIN AGE ENCRYPTED FILE-----", "-----END AGE ENCRYPTED FILE-----"];
/// Characters of Base64 in a line of the armor.
const LINE: usize = 64;

/// The key file as text for paper, in the armor of the age format: any age tool can decrypt it with the passphrase.
///
/// # Errors
/// As for [`age_file`].
pub fn to_text(file: &[u8]) -> Result<String, KeysFault> {
    let body = STANDARD.encode(age_file(file)?);
    let mut lines = vec![ARMOR[0]];
    let mut rest = body.as_str();
    while !rest.is_empty() {
        let (line, after) = rest.split_at(rest.len().min(LINE));
        lines.push(line);
        rest = after;
    }
    lines.push(ARMOR[1]);
    Ok(lines.join("\n") + "\n")
}

/// The key file of what a clinic has kept: the file itself, or its text from paper, in which spaces and line breaks do not matter.
///
/// # Errors
/// [`KeysFault`], except those that need the passphrase.
pub fn of_kept(bytes: &[u8]) -> Result<Vec<u8>, KeysFault> {
    let text = std::str::from_utf8(bytes).ok().map(str::trim).filter(|text| text.starts_with(ARMOR[0]));
    let Some(text) = text else { return age_file(bytes).map(|_| bytes.to_vec()) };
    if text.len() > 2 * MAX_BYTES {
        return Err(KeysFault::NotKeys);
    }
    let inner = text.strip_prefix(ARMOR[0]).and_then(|rest| rest.strip_suffix(ARMOR[1])).ok_or(KeysFault::Damaged)?;
    let body: String = inner.split_whitespace().collect();
    let file = frame(&STANDARD.decode(body).map_err(|_| KeysFault::Damaged)?);
    age_file(&file).map(|_| file.clone())
}
