//! The plan card, versions 2 to 4: what a clinician hands to a patient, as bytes, as text or as a QR code.
//!
//! ```text
//! head        8F 43 72 64 | version | kind of recipient | length of the rest, u16 | CRC-32, u32
//! contents    plan, 8 | clinic's key, 32 | recipient, 32 | pairing secret, 32 | the plan and own exercises, packed
//!             in version 3 before the packed part: number of former keys, 1 to 3 | each: key, 32 | its signature, 64
//!             in version 4 the same, and the number may be 0
//! signature   Ed25519, 64
//! packed      CBOR with integer keys (RFC 8949), deflated (RFC 1951) behind a dictionary
//! ```
//!
//! Numbers are big-endian. The signature covers a prefix of its own, the version, the kind of recipient and the contents
//! exactly as received, never encoded again. The checksum proves nothing about the sender; together with the length it
//! distinguishes a card that was cut from one with a changed character, so that the program can say what went wrong. The
//! header keeps its form in all later versions. Parts that cannot be compressed (keys and ids) are outside the packing,
//! because packing would only make them longer.
//!
//! The text form is a word, a space and the same bytes in Base45 (RFC 9285). It uses only characters that a QR code stores
//! compactly.
//!
//! Version 2 adds the day on which the absent risks were last confirmed, the clinic's telephone number, and alarms to clear by id, sign
//! and day. Version 1 names those by their log entries instead; it is read, and no longer written.
//!
//! Version 3 adds the clinic's former keys, each with its signature of the keys on this card ([`renewed_keys`]), in ascending order. It is
//! written only for a plan whose earlier cards may have been signed with a former key; every other card is of version 2, so that it
//! does not grow. Each former key signs the present keys directly: a device needs one signature, whichever cards it missed, and the key
//! of a generation in between cannot speak for an earlier one.
//!
//! Version 4 has items of which an older program would not know what they ask for: days that are counted from one of
//! them, exercises as needed, phases, loads, an effort, a helper. It is written only for a plan with such an item, with or without former keys, so that every other card can be taken by older programs as well.
//!
//! All functions here work on bytes only and return a value or a [`CardFault`] for any input.

mod contents;
mod dictionary;
mod envelope;
mod former;
mod items;
mod secret;
mod text;

use exercises::id::PlanId;
use exercises::plan::Plan;
use std::fmt;

pub(crate) use contents::{read_prescription, write_prescription};
pub use former::{FormerKey, MAX_FORMER, renewed_keys};
pub use secret::PairingSecret;
pub(crate) use text::decode as strict_base45;
pub use text::{from_text, to_text};

/// The newest version. This program writes it for a plan of which an older program would misunderstand an item, version 3 for any other
/// card with former keys, and version 2 for the rest. It also reads version 1, which names cleared alarms by their entries and has no
/// telephone number.
pub const VERSION: u8 = 4;
/// The version of a card with former keys whose items every program understands.
const WITH_FORMER_KEYS: u8 = 3;
/// The version of a card without former keys whose items every program understands.
const WITHOUT_FORMER_KEYS: u8 = 2;
/// Largest number of bytes in a card.
pub const MAX_BYTES: usize = envelope::MAX_BYTES;
/// Largest number of bytes in a card as text, line breaks included.
pub const MAX_TEXT: usize = 110_000;
/// Largest number of bytes in the unpacked contents.
pub const MAX_CONTENTS: usize = 64 * 1024;
/// Largest number of the clinic's own exercises on one card.
pub const MAX_OWN: usize = exercises::plan::MAX_ITEMS;

/// What a card contains.
///
/// Whoever sees the card can read the plan, and can also send summaries in the patient's name, because the pairing secret is
/// on it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Card {
    /// The plan.
    pub plan: Plan,
    /// The clinic's Ed25519 key. The signatures of this and every later card of the plan are checked with it.
    pub verify_key: [u8; 32],
    /// The clinic's X25519 key, to which summaries are encrypted.
    pub recipient: [u8; 32],
    /// The secret that shows the clinic that a summary comes from someone who had the card.
    pub pairing_secret: PairingSecret,
    /// The clinic's own exercises on this card, each as a whole TOML file.
    pub own: Vec<String>,
    /// Former keys with which the plan's earlier cards may have been signed: at most [`MAX_FORMER`], in ascending order.
    pub former: Vec<FormerKey>,
}

impl Card {
    /// Whether the clinic that signed a plan's earlier card with this key has signed this one: with the same key, or with one that the
    /// earlier key has signed. Only for a card whose signatures have been checked.
    pub fn continues(&self, key: &[u8; 32]) -> bool {
        self.verify_key == *key || self.former.iter().any(|former| former.key == *key)
    }
}

/// Why the bytes are not a card that can be taken. No variant contains anything from the card's contents.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum CardFault {
    /// It is something else, such as the code or file of another program.
    #[error("not a plan card")]
    NotACard,
    /// It is larger than a card may be and was not read, or its contents are larger than allowed when unpacked.
    #[error("larger than the {most} that a card may have")]
    TooBig {
        /// The limit that was exceeded, in characters of text, bytes, or bytes unpacked.
        most: usize,
    },
    /// The end is missing.
    #[error("cut short")]
    Cut,
    /// There is something after the end.
    #[error("something follows the end")]
    Surplus,
    /// A character or a byte was changed.
    #[error("damaged on the way")]
    Damaged,
    /// It is complete, but of a version that this program does not know.
    #[error("version {found}, newer than {VERSION}")]
    NewerVersion {
        /// The card's version.
        found: u8,
    },
    /// It is complete, but wants summaries encrypted to a kind of key that this program does not know.
    #[error("unknown kind of recipient {found}")]
    UnknownRecipient {
        /// The number of that kind.
        found: u8,
    },
    /// It is complete, but a part of it has a value that a plan cannot have.
    #[error("no card has such a part: {field}")]
    Malformed {
        /// The part.
        field: &'static str,
    },
}

/// The contents of a card, ready to be signed.
#[derive(Clone, PartialEq, Eq)]
pub struct Payload {
    message: Vec<u8>,
}

impl Payload {
    /// The bytes to be signed.
    pub fn bytes_to_sign(&self) -> &[u8] {
        &self.message
    }
}

/// Shows none of the bytes, because they contain the pairing secret.
impl fmt::Debug for Payload {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Payload(..)")
    }
}

/// A card as received. It is well-formed, but its signature has not been checked yet.
#[derive(Clone, PartialEq, Eq)]
pub struct Unverified {
    message: Vec<u8>,
    signature: [u8; 64],
    card: Card,
}

impl Unverified {
    /// The bytes that the signature covers, as received.
    pub fn signed_bytes(&self) -> &[u8] {
        &self.message
    }

    /// The signature.
    pub fn signature(&self) -> &[u8; 64] {
        &self.signature
    }

    /// The key with which the card claims to be signed.
    pub fn claimed_key(&self) -> [u8; 32] {
        self.card.verify_key
    }

    /// The key to which the card wants summaries to be encrypted.
    pub fn claimed_recipient(&self) -> [u8; 32] {
        self.card.recipient
    }

    /// The former keys that the card claims to have signatures of.
    pub fn claimed_former(&self) -> &[FormerKey] {
        &self.card.former
    }

    /// Whether the card claims to continue a plan whose earlier card was signed with this key.
    pub fn claims_to_continue(&self, key: &[u8; 32]) -> bool {
        self.card.continues(key)
    }

    /// The id of the plan that the card claims to be for. A key for that plan may already be known.
    pub fn claimed_plan(&self) -> PlanId {
        self.card.plan.header.id
    }

    /// The card. Call it only after the signature has been checked.
    pub fn into_card_after_checking_the_signature(self) -> Card {
        self.card
    }
}

impl fmt::Debug for Unverified {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_tuple("Unverified").field(&self.card).finish()
    }
}

/// Packs the contents of `card` so that they can be signed.
///
/// # Errors
/// [`CardFault::TooBig`] or [`CardFault::Malformed`] for a card that [`open`] would refuse.
pub fn payload(card: &Card) -> Result<Payload, CardFault> {
    let version = contents::version_of(card);
    let contents = contents::write(card)?;
    contents::read(version, &contents)?;
    let message = envelope::message(version, &contents);
    if envelope::sealed_len(&message) > MAX_BYTES {
        return Err(CardFault::TooBig { most: MAX_BYTES });
    }
    Ok(Payload { message })
}

/// The whole card: `payload` together with its signature.
pub fn seal(payload: &Payload, signature: &[u8; 64]) -> Vec<u8> {
    envelope::seal(&payload.message, signature)
}

/// Reads a card without checking its signature.
///
/// # Errors
/// [`CardFault`] says why the bytes are not a card that can be taken.
pub fn open(bytes: &[u8]) -> Result<Unverified, CardFault> {
    let envelope::Opened { version, message, contents, signature } = envelope::open(bytes)?;
    Ok(Unverified { message, signature, card: contents::read(version, contents)? })
}

/// Reads a card from a file that holds it as bytes or as text.
///
/// # Errors
/// [`CardFault`] says why the file is not a card that can be taken.
pub fn read(file: &[u8]) -> Result<Unverified, CardFault> {
    if file.len() > MAX_TEXT {
        return Err(CardFault::TooBig { most: MAX_TEXT });
    }
    match std::str::from_utf8(file) {
        Ok(text) => open(&from_text(text)?),
        Err(_) => open(file),
    }
}
