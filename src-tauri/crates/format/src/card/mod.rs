//! The plan card, version 1: what a clinician hands to a patient, as bytes, as text, as a QR code.
//!
//! ```text
//! head        8F 43 72 64 | version | kind of recipient | length of the rest, u16 | CRC-32, u32
//! contents    plan, 8 | clinic's key, 32 | recipient, 32 | pairing secret, 32 | the plan and own exercises, packed
//! signature   Ed25519, 64
//! packed      CBOR with integer keys (RFC 8949), deflated (RFC 1951) behind a dictionary
//! ```
//!
//! Numbers are big-endian. The signature covers a prefix of its own, version, kind of recipient and the contents as they
//! were received, never a re-encoding. The checksum proves nothing; with the length it tells a cut card from one with a
//! flipped character, so that a person hears what went wrong. The head keeps its shape in every later version. What cannot
//! be packed stands outside the packing, which would only grow by it.
//!
//! The text form is a word, a space and the same bytes in Base45 (RFC 9285), all within the characters that a QR code packs
//! tightly.
//!
//! Everything here is a plain function on bytes that answers any input with a value or a [`CardFault`].

mod contents;
mod dictionary;
mod envelope;
mod items;
mod secret;
mod text;

use exercises::id::PlanId;
use exercises::plan::Plan;
use std::fmt;

pub use secret::PairingSecret;
pub(crate) use text::decode as strict_base45;
pub use text::{from_text, to_text};

/// The newest version that this program writes and reads.
pub const VERSION: u8 = 1;
/// Most bytes of a card.
pub const MAX_BYTES: usize = envelope::MAX_BYTES;
/// Most characters of a card as text, with room for line breaks.
pub const MAX_TEXT: usize = 110_000;
/// Most bytes of the contents, unpacked.
pub const MAX_CONTENTS: usize = 64 * 1024;
/// Most exercises of the clinic's own on one card.
pub const MAX_OWN: usize = exercises::plan::MAX_ITEMS;

/// What a card carries.
///
/// Whoever sees the card can read the plan and write in the patient's name: the pairing secret is on it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Card {
    /// The plan.
    pub plan: Plan,
    /// The clinic's Ed25519 key, against which this and every later card of the plan is checked.
    pub verify_key: [u8; 32],
    /// The clinic's X25519 key, to which the summary is sealed.
    pub recipient: [u8; 32],
    /// What shows the clinic that a summary comes from someone who held the card.
    pub pairing_secret: PairingSecret,
    /// Exercises of the clinic's own, each a whole TOML source.
    pub own: Vec<String>,
}

/// Why bytes are no card that can be taken. No variant carries anything of the contents.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum CardFault {
    /// Something else: another program's code or file.
    #[error("not a plan card")]
    NotACard,
    /// More than any card has; nothing of it was read, or it would unpack to more than allowed.
    #[error("larger than the {most} that a card may have")]
    TooBig {
        /// The limit that it breaks: characters of text, bytes, or bytes unpacked.
        most: usize,
    },
    /// The end is missing.
    #[error("cut short")]
    Cut,
    /// Something follows the end.
    #[error("something follows the end")]
    Surplus,
    /// A character or a byte has changed on the way.
    #[error("damaged on the way")]
    Damaged,
    /// Whole, but of a version that this program does not know.
    #[error("version {found}, newer than {VERSION}")]
    NewerVersion {
        /// Its version.
        found: u8,
    },
    /// Whole, but it asks for summaries to be sealed to a kind of key that this program does not know.
    #[error("unknown kind of recipient {found}")]
    UnknownRecipient {
        /// Its kind.
        found: u8,
    },
    /// Whole, but a part of it says nothing that a plan can hold.
    #[error("no card has such a part: {field}")]
    Malformed {
        /// Which part.
        field: &'static str,
    },
}

/// A card's contents, ready to be signed.
#[derive(Clone, PartialEq, Eq)]
pub struct Payload {
    message: Vec<u8>,
}

impl Payload {
    /// The bytes that are signed.
    pub fn bytes_to_sign(&self) -> &[u8] {
        &self.message
    }
}

/// The bytes hold the pairing secret.
impl fmt::Debug for Payload {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Payload(..)")
    }
}

/// A card as it was received: well formed, but nobody has looked at its signature yet.
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

    /// The key that the card says it was signed with.
    pub fn claimed_key(&self) -> [u8; 32] {
        self.card.verify_key
    }

    /// The key that the card wants summaries to be sealed to.
    pub fn claimed_recipient(&self) -> [u8; 32] {
        self.card.recipient
    }

    /// The plan that the card says it is for: the name under which a key may have been kept.
    pub fn claimed_plan(&self) -> PlanId {
        self.card.plan.id
    }

    /// The card, for the one who has just checked the signature.
    pub fn into_card_after_checking_the_signature(self) -> Card {
        self.card
    }
}

impl fmt::Debug for Unverified {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_tuple("Unverified").field(&self.card).finish()
    }
}

/// The contents of `card`, packed, ready to be signed.
///
/// # Errors
/// [`CardFault::TooBig`] or [`CardFault::Malformed`] for a card that [`open`] would not take back.
pub fn payload(card: &Card) -> Result<Payload, CardFault> {
    let contents = contents::write(card)?;
    contents::read(&contents)?;
    let message = envelope::message(&contents);
    if envelope::sealed_len(&message) > MAX_BYTES {
        return Err(CardFault::TooBig { most: MAX_BYTES });
    }
    Ok(Payload { message })
}

/// The whole card: `payload` with its signature.
pub fn seal(payload: &Payload, signature: &[u8; 64]) -> Vec<u8> {
    envelope::seal(&payload.message, signature)
}

/// Reads a card as far as it goes without looking at the signature.
///
/// # Errors
/// [`CardFault`] tells what the bytes are instead.
pub fn open(bytes: &[u8]) -> Result<Unverified, CardFault> {
    let envelope::Opened { message, contents, signature } = envelope::open(bytes)?;
    Ok(Unverified { message, signature, card: contents::read(contents)? })
}

/// Reads a card from a file that may hold either form.
///
/// # Errors
/// [`CardFault`] tells what the bytes are instead.
pub fn read(file: &[u8]) -> Result<Unverified, CardFault> {
    if file.len() > MAX_TEXT {
        return Err(CardFault::TooBig { most: MAX_TEXT });
    }
    match std::str::from_utf8(file) {
        Ok(text) => open(&from_text(text)?),
        Err(_) => open(file),
    }
}
