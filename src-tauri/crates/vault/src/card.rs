//! Signs a plan card, and checks a card's signature.

use crate::{FormerGeneration, Keys, labels, recipient};
use ed25519_dalek::{Signature, Signer, VerifyingKey};
use exercises::id::PlanId;
use exercises::plan::Plan;
use format::card::{Card, CardFault, FormerKey, MAX_FORMER, PairingSecret, Unverified, payload, renewed_keys, seal};

/// Why a card cannot be issued.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum IssueFault {
    /// The card names other keys than the ones that would sign it.
    #[error("the card names other keys")]
    OtherKeys,
    /// More than [`MAX_FORMER`] former keys have signed cards of this plan.
    #[error("more than {MAX_FORMER} former keys have signed cards of this plan")]
    TooManyFormerKeys,
    /// A card of this plan was signed with a key that is not among these: they were saved before the clinic renewed its keys.
    #[error("a card of this plan was signed with a key that is missing")]
    MissingKey,
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
    let (verify_key, recipient) = (keys.verify_key(), keys.recipient());
    Card { plan, verify_key, recipient, pairing_secret, own, former: Vec::new() }
}

/// `card` for a plan whose earlier cards were signed with the keys in `signed`: with the signatures of the former keys by which a
/// device knows that it comes from the same clinic. A card of a plan that was begun under the present key stays as it is.
///
/// The former keys are those from the one of the plan's first known card on, because the clinic's store may not know all cards that it
/// issued; if they are too many, only those of the known cards.
///
/// # Errors
/// [`IssueFault::TooManyFormerKeys`], [`IssueFault::MissingKey`].
pub fn continuing(keys: &Keys, card: Card, signed: &[[u8; 32]]) -> Result<Card, IssueFault> {
    let is_known = |key: &[u8; 32]| *key == keys.verify_key() || keys.former().iter().any(|one| one.verify_key() == *key);
    if !signed.iter().all(is_known) {
        return Err(IssueFault::MissingKey);
    }
    let has_signed = |one: &&FormerGeneration| signed.contains(&one.verify_key());
    let since_first = keys.former().iter().rposition(|one| has_signed(&one)).map_or(0, |oldest| oldest + 1);
    let mut former: Vec<&FormerGeneration> = keys.former()[..since_first].iter().collect();
    if former.len() > MAX_FORMER {
        former.retain(has_signed);
    }
    if former.len() > MAX_FORMER {
        return Err(IssueFault::TooManyFormerKeys);
    }
    let message = renewed_keys(card.plan.header.id, &card.verify_key, &card.recipient);
    let sign = |one: &FormerGeneration| one.generation.signing().sign(&message).to_bytes();
    let mut former: Vec<_> =
        former.into_iter().map(|one| FormerKey { key: one.verify_key(), signature: sign(one) }).collect();
    former.sort_by_key(|one| one.key);
    Ok(Card { former, ..card })
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
    let signature = keys.present().signing().sign(payload.bytes_to_sign());
    Ok(seal(&payload, &signature.to_bytes()))
}

/// Checks the signature over the bytes as received, and that of each former key, strictly (no weak keys, one form of each signature).
///
/// `pinned` is the key that signed an earlier card of the same plan; `None` for a plan that is new here. The card must be signed with it,
/// or with a key that it has signed.
///
/// # Errors
/// [`VerifyFault`]; the card's contents are not returned then.
pub fn verify(card: Unverified, pinned: Option<[u8; 32]>) -> Result<Card, VerifyFault> {
    if pinned.is_some_and(|pinned| !card.claims_to_continue(&pinned)) {
        return Err(VerifyFault::OtherClinic);
    }
    if !holds(&card.claimed_key(), card.signed_bytes(), card.signature()) {
        return Err(VerifyFault::NotSigned);
    }
    let renewed = renewed_keys(card.claimed_plan(), &card.claimed_key(), &card.claimed_recipient());
    if !card.claimed_former().iter().all(|former| holds(&former.key, &renewed, &former.signature)) {
        return Err(VerifyFault::OtherClinic);
    }
    if recipient::has_low_order(&card.claimed_recipient()) {
        return Err(VerifyFault::UnfitRecipient);
    }
    Ok(card.into_card_after_checking_the_signature())
}

fn holds(key: &[u8; 32], message: &[u8], signature: &[u8; 64]) -> bool {
    VerifyingKey::from_bytes(key).is_ok_and(|key| key.verify_strict(message, &Signature::from_bytes(signature)).is_ok())
}
