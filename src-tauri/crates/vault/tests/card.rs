//! Signing and checking cards.

#[path = "../../format/tests/support/mod.rs"]
mod support;

use ed25519_dalek::{Signer, SigningKey};
use exercises::score::Score;
use format::card::{self, Card, CardFault, Unverified};
use proptest::prelude::*;
use std::sync::LazyLock;
use vault::card::{IssueFault, VerifyFault, issue, of_clinic, verify};
use vault::{Cost, Keys, Passphrase, keys};

fn new_keys() -> Keys {
    keys::create(&Passphrase::new("x".to_owned()), Cost::new(1).expect("a cost")).0
}

static KEYS: LazyLock<Keys> = LazyLock::new(new_keys);

fn of_this_clinic(card: Card) -> Card {
    of_clinic(&KEYS, card.plan, card.pairing_secret, card.own)
}

fn opened(bytes: &[u8]) -> Unverified {
    card::open(bytes).expect("well formed")
}

/// `card` signed with `key`, whichever keys it names.
fn signed_by(key: &SigningKey, card: &Card) -> Unverified {
    let payload = card::payload(card).expect("a card");
    opened(&card::seal(&payload, &key.sign(payload.bytes_to_sign()).to_bytes()))
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(32) })]

    #[test]
    fn any_card_that_was_issued_is_taken(card in support::any::card()) {
        let card = of_this_clinic(card);
        let bytes = issue(&KEYS, &card).expect("a card");
        prop_assert_eq!(verify(opened(&bytes), None), Ok(card.clone()));
        prop_assert_eq!(verify(opened(&bytes), Some(KEYS.verify_key())), Ok(card));
    }
}

#[test]
fn a_known_plan_is_not_taken_from_another_clinic() {
    let other = new_keys();
    let card = of_this_clinic(support::card(3));
    let theirs = of_clinic(&other, card.plan.clone(), card.pairing_secret.clone(), Vec::new());
    let bytes = issue(&other, &theirs).expect("a card");
    assert_eq!(verify(opened(&bytes), Some(KEYS.verify_key())), Err(VerifyFault::OtherClinic));
    assert_eq!(verify(opened(&bytes), None), Ok(theirs), "for a plan that is new here it is a card like any other");
}

#[test]
fn a_card_is_not_signed_for_other_keys() {
    let card = of_clinic(&new_keys(), support::plan(1), vault::random::pairing_secret(), Vec::new());
    assert_eq!(issue(&KEYS, &card), Err(IssueFault::OtherKeys));
    let mixed = Card { verify_key: KEYS.verify_key(), ..card };
    assert_eq!(issue(&KEYS, &mixed), Err(IssueFault::OtherKeys), "both keys are looked at");
}

#[test]
fn a_card_that_no_one_could_read_is_not_issued() {
    let mut card = of_this_clinic(support::card(1));
    card.own = vec!["x".repeat(card::MAX_CONTENTS)];
    let too_big = CardFault::TooBig { most: card::MAX_CONTENTS };
    assert_eq!(issue(&KEYS, &card), Err(IssueFault::Contents(too_big)));
}

#[test]
fn contents_changed_under_a_good_checksum_are_not_trusted() {
    let mut card = of_this_clinic(support::card(3));
    let honest = opened(&issue(&KEYS, &card).expect("a card"));
    card.plan.prescription.items[1].pain_limit = Score::at_most_ten(10);
    let forged = card::seal(&card::payload(&card).expect("a card"), honest.signature());
    assert_eq!(verify(opened(&forged), None), Err(VerifyFault::NotSigned));
}

#[test]
fn a_signature_by_another_key_than_the_named_one_is_not_trusted() {
    let card = of_this_clinic(support::card(3));
    let stranger = SigningKey::from_bytes(&[7; 32]);
    assert_eq!(verify(signed_by(&stranger, &card), None), Err(VerifyFault::NotSigned));
}

/// With the neutral point as key, the neutral point and zero form a signature that the loose equation of RFC 8032 accepts for any
/// message.
#[test]
fn a_weak_key_that_accepts_any_signature_is_not_trusted() {
    let mut neutral = [0; 32];
    neutral[0] = 1;
    let mut signature = [0; 64];
    signature[0] = 1;
    let card = Card { verify_key: neutral, ..support::card(1) };
    let bytes = card::seal(&card::payload(&card).expect("a card"), &signature);
    assert_eq!(verify(opened(&bytes), None), Err(VerifyFault::NotSigned));
}

#[test]
fn a_recipient_to_which_nothing_can_be_sealed_is_refused() {
    let key = SigningKey::from_bytes(&[7; 32]);
    let card = Card { verify_key: key.verifying_key().to_bytes(), recipient: [0; 32], ..support::card(1) };
    assert_eq!(verify(signed_by(&key, &card), None), Err(VerifyFault::UnfitRecipient));
}

#[test]
fn the_frozen_card_of_version_1_is_still_accepted() {
    let (bin, text) =
        (include_bytes!("../../format/tests/frozen/card-1.bin"), include_str!("../../format/tests/frozen/card-1.txt"));
    let file = include_bytes!("frozen/keys-1.bin");
    let keys = keys::open(file, &Passphrase::new("seven grey herons".to_owned())).expect("the frozen passphrase");
    let expected = support::frozen_card(keys.verify_key(), keys.recipient());
    for read in [card::read(bin), card::read(text.as_bytes())] {
        assert_eq!(verify(read.expect("well formed"), Some(keys.verify_key())), Ok(expected.clone()));
    }
    let with_days = include_bytes!("../../format/tests/frozen/card-1-days.bin");
    let expected = support::frozen_card_with_days(keys.verify_key(), keys.recipient());
    assert_eq!(verify(card::read(with_days).expect("well formed"), Some(keys.verify_key())), Ok(expected));
}

#[test]
fn the_frozen_card_of_version_2_is_still_accepted() {
    let keys = keys::open(include_bytes!("frozen/keys-1.bin"), &Passphrase::new("seven grey herons".to_owned()));
    let keys = keys.expect("the frozen passphrase");
    let expected = support::frozen_card_2(keys.verify_key(), keys.recipient());
    let read = card::read(include_bytes!("../../format/tests/frozen/card-2.bin")).expect("well formed");
    assert_eq!(verify(read, Some(keys.verify_key())), Ok(expected));
}

#[test]
fn each_revision_of_each_plan_has_its_own_secret_which_the_same_clinic_derives_again() {
    let keys = keys::create(&Passphrase::new("x".to_owned()), Cost::new(1).expect("a cost")).0;
    let other = keys::create(&Passphrase::new("x".to_owned()), Cost::new(1).expect("a cost")).0;
    let secret = |keys: &Keys, plan: u8, revision: u16| {
        *vault::card::pairing_secret(keys, exercises::id::PlanId([plan; 8]), revision).expose_the_secret_bytes()
    };
    assert_eq!(secret(&keys, 1, 2), secret(&keys, 1, 2));
    for another in [secret(&keys, 1, 3), secret(&keys, 2, 2), secret(&other, 1, 2)] {
        assert_ne!(secret(&keys, 1, 2), another);
    }
}

#[test]
fn the_frozen_card_of_version_3_is_still_accepted() {
    let passphrase = Passphrase::new("seven grey herons".to_owned());
    let first = keys::open(include_bytes!("frozen/keys-1.bin"), &passphrase).expect("the frozen passphrase");
    let renewed = keys::open(include_bytes!("frozen/keys-2.bin"), &passphrase).expect("the frozen passphrase");
    let bytes = include_bytes!("../../format/tests/frozen/card-3.bin");
    for pinned in [None, Some(first.verify_key()), Some(renewed.verify_key())] {
        let card = verify(card::read(bytes).expect("well formed"), pinned).expect("a card of this clinic");
        assert_eq!(card, support::frozen_card_3(renewed.verify_key(), renewed.recipient(), card.former.clone()));
        assert_eq!(card.former[0].key, first.verify_key());
    }
}
