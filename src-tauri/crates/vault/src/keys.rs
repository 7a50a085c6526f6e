//! A clinic's keys, and the file that contains all of them, encrypted under a passphrase.
//!
//! ```text
//! key file   8F 43 6B 79 | version | checksum, 8 | age file with a single scrypt recipient
//! within     version | Ed25519 seed, 32 | X25519 secret, 32 | data key, 32
//!            in version 2 also: number of former generations, 1 to 5 | each, the last one first: seed, 32 | secret, 32 | day, i32
//! ```
//!
//! A clinic can renew the key that signs its cards and the one that opens its summaries ([`renew`]). The former ones stay, because old
//! cards are still out there; with the day on which they were replaced, counted from the first of January of the year 1. The data key
//! stays the same: it seals the rows and is in nothing that is handed over. Keys that were never renewed are written in version 1.
//!
//! The checksum in front distinguishes a damaged file from a wrong passphrase, which the age format alone cannot. [`age_file`]
//! returns the part that any age tool can decrypt.

use crate::generation::{FORMER, FormerGeneration, GENERATION, Generation};
use crate::labels::{self, checksum};
use crate::{Cost, Passphrase, random};
use age::secrecy::SecretString;
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use chrono::NaiveDate;
use exercises::catalogue::ClinicMark;
use std::fmt;
use std::io::{Read, Write};
use std::iter::once;
use zeroize::Zeroizing;

const MAGIC: [u8; 4] = *b"\x8FCky";
/// The newest version, for keys that were renewed.
const VERSION: u8 = 2;
/// The version of keys that were never renewed.
const NEVER_RENEWED: u8 = 1;
/// Length of magic, version and checksum, in bytes.
const HEAD: usize = 4 + 1 + 8;
/// Largest number of former generations: how often a clinic can renew its keys. With more, the code on the sheet for paper would be too
/// large to be read.
pub const MAX_FORMER: usize = 5;
/// Length of the present generation and the data key, in bytes.
const MATERIAL: usize = GENERATION + 32;
/// Largest length of everything within, in bytes.
const MAX_PLAIN: usize = 1 + MATERIAL + 1 + MAX_FORMER * FORMER;
/// Largest size of a key file, in bytes; a real one has three hundred to seven hundred.
const MAX_BYTES: usize = 4096;

/// A clinic's decrypted keys. Masked in debug output, wiped when dropped.
pub struct Keys {
    present: Generation,
    data_key: Zeroizing<[u8; 32]>,
    /// The last one first.
    former: Vec<FormerGeneration>,
}

impl Keys {
    /// The clinic's public Ed25519 key, which is on every card.
    pub fn verify_key(&self) -> [u8; 32] {
        self.present.verify_key()
    }

    /// The clinic's public X25519 key, which is on every card.
    pub fn recipient(&self) -> [u8; 32] {
        self.present.recipient()
    }

    /// The clinic's fingerprint, as shown on screen and paper.
    pub fn fingerprint(&self) -> String {
        self.present.fingerprint()
    }

    /// The generations that were replaced, the last one first.
    pub fn former(&self) -> &[FormerGeneration] {
        &self.former
    }

    /// The identities that decrypt every summary with any age tool; to be printed and locked away. A single line for keys that were never
    /// renewed; otherwise the present identity and then the former ones, each below a comment with the days of the cards that it is for,
    /// as age tools read them from a file.
    pub fn identity_string(&self) -> IdentityText {
        let Some(last) = self.former.first() else { return self.present.identity_string() };
        let mut text = Zeroizing::new(String::with_capacity((1 + self.former.len()) * LINES_OF_IDENTITY));
        let mut put = |days: String, identity: &Generation| {
            text.push_str(&days);
            text.push_str(identity.identity_string().expose_the_identity_for_printing());
            text.push('\n');
        };
        put(format!("# cards from {}\n", last.until()), &self.present);
        self.former.iter().for_each(|one| put(format!("# cards until {}\n", one.until()), &one.generation));
        text.pop();
        IdentityText(text)
    }

    /// All generations, the present one first.
    pub(crate) fn generations(&self) -> impl Iterator<Item = &Generation> {
        std::iter::once(&self.present).chain(self.former.iter().map(|one| &one.generation))
    }

    pub(crate) fn present(&self) -> &Generation {
        &self.present
    }

    /// The part of an own exercise's id that is the same for all exercises of this clinic and differs from other clinics.
    pub fn mark(&self) -> ClinicMark {
        ClinicMark::of_bytes(labels::clinic_mark(self))
    }

    pub(crate) fn data_key(&self) -> Zeroizing<[u8; 32]> {
        self.data_key.clone()
    }
}

/// Largest number of bytes of an identity and the comment above it.
const LINES_OF_IDENTITY: usize = 128;

impl fmt::Debug for Keys {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Keys(..)")
    }
}

/// `AGE-SECRET-KEY-1…`: whoever has it can read every summary. Masked in debug output, wiped when dropped.
pub struct IdentityText(Zeroizing<String>);

impl IdentityText {
    pub(crate) fn new(text: String) -> IdentityText {
        IdentityText(Zeroizing::new(text))
    }

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

/// The keys were renewed as often as they can be.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("the keys were renewed {MAX_FORMER} times")]
pub struct RenewedTooOften;

/// Keys with a new generation in place of the present one, which becomes a former one that was replaced on the day `today`.
///
/// # Errors
/// [`RenewedTooOften`] if there are [`MAX_FORMER`] former generations: without the oldest one, its cards and summaries could no longer
/// be used.
pub fn renew(keys: &Keys, today: NaiveDate) -> Result<Keys, RenewedTooOften> {
    if keys.former.len() >= MAX_FORMER {
        return Err(RenewedTooOften);
    }
    let copy = |generation: &Generation| Generation::of_bytes(generation.bytes());
    // The room is there from the beginning, so that no copy is left behind when the list grows.
    let mut former = Vec::with_capacity(MAX_FORMER);
    former.push(FormerGeneration::new(copy(&keys.present), today));
    former.extend(keys.former.iter().map(|one| FormerGeneration::new(copy(&one.generation), one.until())));
    Ok(Keys { present: Generation::new(), data_key: keys.data_key(), former })
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
    Keys { present: Generation::new(), data_key: random::bytes(), former: Vec::new() }
}

/// New keys, and their file under `passphrase`, at the given cost.
pub fn create(passphrase: &Passphrase, cost: Cost) -> (Keys, Vec<u8>) {
    let keys = for_now();
    let sealed = seal(&keys, passphrase, cost);
    (keys, sealed)
}

/// The file of `keys` under another passphrase. Copies of the old file still open with the old passphrase.
pub fn seal(keys: &Keys, passphrase: &Passphrase, cost: Cost) -> Vec<u8> {
    let version = version_of(keys);
    let mut plain = Zeroizing::new(Vec::with_capacity(MAX_PLAIN));
    plain.push(version);
    plain.extend(keys.present.bytes());
    plain.extend(keys.data_key.as_slice());
    if version == VERSION {
        plain.push(u8::try_from(keys.former.len()).expect("few enough to count"));
        keys.former.iter().for_each(|one| one.write(&mut plain));
    }
    frame(version, &seal_bytes(&plain, passphrase, cost))
}

/// The version in which keys are written.
fn version_of(keys: &Keys) -> u8 {
    if keys.former.is_empty() { NEVER_RENEWED } else { VERSION }
}

/// Reads what is within a key file.
fn read(plain: &[u8]) -> Result<Keys, KeysFault> {
    let (version, rest) = plain.split_first().ok_or(KeysFault::Damaged)?;
    let (generation, rest) = rest.split_first_chunk::<GENERATION>().ok_or(KeysFault::Damaged)?;
    let (data_key, rest) = rest.split_first_chunk::<32>().ok_or(KeysFault::Damaged)?;
    let former = match (*version, rest) {
        (NEVER_RENEWED, []) => Vec::new(),
        (VERSION, [number, listed @ ..]) if (1..=MAX_FORMER).contains(&usize::from(*number)) => {
            read_former(*number, listed)?
        }
        (NEVER_RENEWED | VERSION | 0, _) => return Err(KeysFault::Damaged),
        (found, _) => return Err(KeysFault::NewerVersion { found }),
    };
    Ok(Keys { present: Generation::of_bytes(generation), data_key: Zeroizing::new(*data_key), former })
}

fn read_former(number: u8, listed: &[u8]) -> Result<Vec<FormerGeneration>, KeysFault> {
    let (parts, []) = listed.as_chunks::<FORMER>() else { return Err(KeysFault::Damaged) };
    if parts.len() != usize::from(number) {
        return Err(KeysFault::Damaged);
    }
    let mut former = Vec::with_capacity(MAX_FORMER);
    for part in parts {
        former.push(FormerGeneration::read(part).ok_or(KeysFault::Damaged)?);
    }
    Ok(former)
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

fn frame(version: u8, sealed: &[u8]) -> Vec<u8> {
    [&MAGIC, &[version][..], &checksum(sealed), sealed].concat()
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
        (NEVER_RENEWED | VERSION, true) => Ok(sealed),
        (NEVER_RENEWED | VERSION, false) | (0, _) => Err(KeysFault::Damaged),
        (found, _) => Err(KeysFault::NewerVersion { found }),
    }
}

/// Opens a key file.
///
/// # Errors
/// [`KeysFault`], which distinguishes a wrong passphrase, a damaged file, and a file that would need too much work.
pub fn open(file: &[u8], passphrase: &Passphrase) -> Result<Keys, KeysFault> {
    open_and_renew(file, passphrase, Cost::LEAST).map(|(keys, _)| keys)
}

/// Opens a key file. If trying a passphrase costs less than `usual`, the cost of new files, or the file was sealed under another form of the
/// passphrase than the composed one, the second result is a file to replace it; also if it comes from paper, where the version in front
/// is missing.
///
/// # Errors
/// As for [`open`].
pub fn open_and_renew(file: &[u8], passphrase: &Passphrase, usual: Cost) -> Result<(Keys, Option<Vec<u8>>), KeysFault> {
    let sealed = age_file(file)?;
    let mut fault = KeysFault::WrongPassphrase;
    for (nth, form) in passphrase.for_opening().into_iter().enumerate() {
        match open_with(sealed, form) {
            Ok(keys) => {
                let old = nth > 0 || cost(sealed).is_none_or(|cost| cost < usual.log_n());
                let version = version_of(&keys);
                let framed = (file[MAGIC.len()] != version).then(|| frame(version, sealed));
                let renewed = if old { Some(seal(&keys, passphrase, usual)) } else { framed };
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
    read(&plain)
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
    // The version is also within; what opens the file puts it in front.
    let file = frame(NEVER_RENEWED, &STANDARD.decode(body).map_err(|_| KeysFault::Damaged)?);
    age_file(&file).map(|_| file.clone())
}
