//! One generation of the keys that a clinic renews: the key that signs its cards, and the one that opens its summaries.

use crate::{IdentityText, random, recipient};
use age::x25519::Identity;
use chrono::{Datelike, NaiveDate};
use ed25519_dalek::SigningKey;
use std::fmt;
use zeroize::Zeroizing;

/// Length of a generation, in bytes: Ed25519 seed, X25519 secret.
pub(crate) const GENERATION: usize = 2 * 32;
/// Length of a former generation with the day on which it was replaced.
pub(crate) const FORMER: usize = GENERATION + 4;

/// A generation. Wiped when dropped.
pub(crate) struct Generation {
    material: Zeroizing<[u8; GENERATION]>,
}

impl Generation {
    /// A new one, from the operating system.
    pub(crate) fn new() -> Generation {
        Generation { material: random::bytes() }
    }

    /// The one with this material.
    pub(crate) fn of_bytes(bytes: &[u8; GENERATION]) -> Generation {
        Generation { material: Zeroizing::new(*bytes) }
    }

    /// Its material, to be sealed.
    pub(crate) fn bytes(&self) -> &[u8; GENERATION] {
        &self.material
    }

    pub(crate) fn signing(&self) -> SigningKey {
        SigningKey::from_bytes(&self.part(0))
    }

    pub(crate) fn identity(&self) -> Identity {
        recipient::identity(&self.part(1))
    }

    pub(crate) fn verify_key(&self) -> [u8; 32] {
        self.signing().verifying_key().to_bytes()
    }

    pub(crate) fn recipient(&self) -> [u8; 32] {
        recipient::public(&self.part(1))
    }

    pub(crate) fn fingerprint(&self) -> String {
        crate::fingerprint(&self.verify_key(), &self.recipient())
    }

    /// The identity as any age tool reads it.
    pub(crate) fn identity_string(&self) -> IdentityText {
        use age::secrecy::ExposeSecret;
        IdentityText::new(self.identity().to_string().expose_secret().to_owned())
    }

    fn part(&self, at: usize) -> Zeroizing<[u8; 32]> {
        let mut part = Zeroizing::new([0; 32]);
        part.copy_from_slice(&self.material[32 * at..32 * (at + 1)]);
        part
    }
}

/// A generation that a later one has replaced. Masked in debug output, wiped when dropped.
pub struct FormerGeneration {
    pub(crate) generation: Generation,
    until: NaiveDate,
}

impl FormerGeneration {
    /// `generation`, which was replaced on the day `until`.
    pub(crate) fn new(generation: Generation, until: NaiveDate) -> FormerGeneration {
        FormerGeneration { generation, until }
    }

    /// Reads what [`FormerGeneration::write`] wrote; `None` for a day that there is not.
    pub(crate) fn read(bytes: &[u8; FORMER]) -> Option<FormerGeneration> {
        let (material, day) = bytes.split_first_chunk::<GENERATION>()?;
        let day = i32::from_be_bytes(day.try_into().ok()?);
        Some(FormerGeneration::new(Generation::of_bytes(material), NaiveDate::from_num_days_from_ce_opt(day)?))
    }

    /// Appends the material and the day, as days since the first of January of the year 1.
    pub(crate) fn write(&self, to: &mut Vec<u8>) {
        to.extend(self.generation.bytes());
        to.extend(self.until.num_days_from_ce().to_be_bytes());
    }

    /// The day on which it was replaced, by the clinic's calendar.
    pub fn until(&self) -> NaiveDate {
        self.until
    }

    /// The public Ed25519 key, which is on the cards of that time.
    pub fn verify_key(&self) -> [u8; 32] {
        self.generation.verify_key()
    }

    /// The fingerprint of that time.
    pub fn fingerprint(&self) -> String {
        self.generation.fingerprint()
    }
}

impl fmt::Debug for FormerGeneration {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("FormerGeneration(..)")
    }
}
