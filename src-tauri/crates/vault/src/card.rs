//! Signs a plan card, and checks a card's signature.

use crate::{Keys, labels, recipient};
use ed25519_dalek::{Signature, Signer, VerifyingKey};
use exercises::id::PlanId;
use exercises::plan::Plan;
use format::card::{Card, CardFault, PairingSecret, Unverified, payload, seal};

/// Why a card cannot be issued.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum IssueFault {
    /// The card names other keys than the ones that would sign it.
    #[error("the card names other keys")]
    OtherKeys,
    /// The contents do not form a valid card.
    #[error(transparent)]
    Contents(#[from] CardFault),
}

/// Why a card is not trusted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum VerifyFault {
    /// The plan is known and came from a clinic with another key.
    #[error("the card comes from another clinic than the plan")]
    OtherClinic,
    /// The card was not signed with the key that it names: it is forged, or changed in a way that the checksum does not detect.
    #[error("the card's signature does not hold")]
    NotSigned,
    /// Anyone could decrypt what is encrypted to the recipient on the card.
    #[error("the card's recipient is no key")]
    UnfitRecipient,
}

/// A card of this clinic.
pub fn of_clinic(keys: &Keys, plan: Plan, pairing_secret: PairingSecret, own: Vec<String>) -> Card {
    Card { plan, verify_key: keys.verify_key(), recipient: keys.recipient(), pairing_secret, own }
}

/// The secret on the card of this revision of a plan. Each revision has its own, so that an old card cannot speak for a new plan; they
/// are derived, so that a clinic whose store was put back to an older copy still knows those of the cards that it issued since.
pub fn pairing_secret(keys: &Keys, plan: PlanId, revision: u16) -> PairingSecret {
    labels::pairing_secret(keys, plan, revision)
}

/// Signs `card` and returns the bytes that are handed over as a file, as text or as a QR code.
///
/// # Errors
/// [`IssueFault::OtherKeys`] for a card that names other keys than `keys`, [`IssueFault::Contents`] for one that no program would
/// accept.
pub fn issue(keys: &Keys, card: &Card) -> Result<Vec<u8>, IssueFault> {
    if (card.verify_key, card.recipient) != (keys.verify_key(), keys.recipient()) {
        return Err(IssueFault::OtherKeys);
    }
    let payload = payload(card)?;
    let signature = keys.signing().sign(payload.bytes_to_sign());
    Ok(seal(&payload, &signature.to_bytes()))
}

/// Checks the signature over the bytes as received, strictly (no weak keys, one form of each signature).
///
/// `pinned` is the key that signed an earlier card of the same plan; `None` for a plan that is new here.
///
/// # Errors
/// [`VerifyFault`]; the card's contents are not returned then.
pub fn verify(card: Unverified, pinned: Option<[u8; 32]>) -> Result<Card, VerifyFault> {
    if pinned.is_some_and(|pinned| pinned != card.claimed_key()) {
        return Err(VerifyFault::OtherClinic);
    }
    let key = VerifyingKey::from_bytes(&card.claimed_key()).map_err(|_| VerifyFault::NotSigned)?;
    let signature = Signature::from_bytes(card.signature());
    key.verify_strict(card.signed_bytes(), &signature).map_err(|_| VerifyFault::NotSigned)?;
    if recipient::has_low_order(&card.claimed_recipient()) {
        return Err(VerifyFault::UnfitRecipient);
    }
    Ok(card.into_card_after_checking_the_signature())
}
