//! Cards and summaries as a malicious person, or a later version of the program, would make them.

use crate::place::{Place, program};
use format::card::{self, Card};
use format::summary::{Body, Letter, VERSION};
use hkdf::Hkdf;
use hmac::{Hmac, Mac};
use sha2::Sha256;
use std::path::Path;
use vault::{Cost, Keys, Passphrase, keys};

/// The card that the prepared clinic issued.
pub fn card(place: &Place) -> Card {
    let unverified = card::open(&place.read("card/card.bin")).expect("the clinic's card");
    unverified.into_card_after_checking_the_signature()
}

/// The keys of another clinic.
pub fn other_keys() -> Keys {
    keys::create(&Passphrase::new("x".to_owned()), Cost::new(1).expect("a cost")).0
}

/// The prepared card, changed and signed by another clinic.
pub fn signed_by_another(place: &Place, change: impl FnOnce(&mut Card)) -> Vec<u8> {
    let keys = other_keys();
    let Card { plan, pairing_secret, own, .. } = card(place);
    let mut card = vault::card::of_clinic(&keys, plan, pairing_secret, own);
    change(&mut card);
    vault::card::issue(&keys, &card).expect("a card")
}

/// The prepared card with another version number and a correct checksum.
pub fn of_version(place: &Place, version: u8) -> Vec<u8> {
    let mut bytes = place.read("card/card.bin");
    bytes[4] = version;
    let mut sum = crc32fast::Hasher::new();
    sum.update(&bytes[4..6]);
    sum.update(&bytes[12..]);
    bytes[8..12].copy_from_slice(&sum.finalize().to_be_bytes());
    bytes
}

/// A letter for the card's plan with this packed body and a correct tag (HMAC-SHA-256 under a key that HKDF derives from the card's
/// secret): what somebody with the card can make.
pub fn letter(card: &Card, counter: u32, packed: Vec<u8>) -> Letter {
    let body = Body { plan: card.plan.header.id, log: exercises::id::LogId([7; 8]), counter, version: VERSION, packed };
    let mut key = [0; 32];
    let derive = Hkdf::<Sha256>::new(Some(&body.plan.0), card.pairing_secret.expose_the_secret_bytes());
    derive.expand(b"carryover/summary-tag/v1", &mut key).expect("32 bytes");
    let mut tag = Hmac::<Sha256>::new_from_slice(&key).expect("any length");
    tag.update(&Letter::authenticated(&body, &card.recipient));
    Letter { tag: tag.finalize().into_bytes().into(), body }
}

/// Encrypts any bytes to the prepared clinic with the age program.
pub fn sealed(place: &Place, plain: &[u8]) -> Vec<u8> {
    identity(place);
    let recipient = program("age-keygen", &["-y".as_ref(), place.path("identity.txt").as_ref()]);
    let recipient = String::from_utf8(recipient).expect("text");
    place.write("plain", plain);
    let plain = place.path("plain");
    let sealed = program("age", &["-r".as_ref(), recipient.trim().as_ref(), Path::new(&plain).as_ref()]);
    std::fs::remove_file(plain).expect("the test owns it");
    sealed
}

/// Writes the clinic's age identity to `identity.txt`.
pub fn identity(place: &Place) {
    let said = place.run(&crate::place::clinic(&["identity", "--show"]));
    assert_eq!(said.code, Some(0), "{said:?}");
    assert!(said.err.contains("keep it offline"), "printing it comes with a warning: {said:?}");
    place.write("identity.txt", said.out);
}
