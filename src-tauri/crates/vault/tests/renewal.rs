//! Renewed keys: cards that continue a plan of former keys, summaries sealed to them, and what a forger could try.

#[path = "../../format/tests/support/mod.rs"]
mod support;

use chrono::NaiveDate;
use format::card::{self, Card, CardFault, FormerKey, PairingSecret, Unverified};
use vault::card::{IssueFault, VerifyFault, continuing, issue, of_clinic, pairing_secret, verify};
use vault::keys::{self, MAX_FORMER, RenewedTooOften};
use vault::{Cost, Keys, Passphrase, summary};

fn new_keys() -> Keys {
    keys::for_now()
}

fn day(nth: u32) -> NaiveDate {
    support::date(2026, 12, nth)
}

/// Four generations of one clinic's keys, each renewed from the one before.
fn generations() -> [Keys; 4] {
    let first = new_keys();
    let second = keys::renew(&first, day(1)).expect("the first time");
    let third = keys::renew(&second, day(2)).expect("the second time");
    let fourth = keys::renew(&third, day(3)).expect("the third time");
    [first, second, third, fourth]
}

/// The card of this revision, for a plan whose earlier cards were signed with `signed`.
fn card_of(keys: &Keys, revision: u16, signed: &[[u8; 32]]) -> Result<Card, IssueFault> {
    let mut plan = support::plan(3);
    plan.header.revision = revision;
    let secret = pairing_secret(keys, plan.header.id, revision);
    continuing(keys, of_clinic(keys, plan, secret, Vec::new()), signed)
}

fn issued(keys: &Keys, revision: u16, signed: &[[u8; 32]]) -> Vec<u8> {
    issue(keys, &card_of(keys, revision, signed).expect("few enough renewals")).expect("a card")
}

fn opened(bytes: &[u8]) -> Unverified {
    card::open(bytes).expect("well formed")
}

/// What a device says that has pinned this key.
fn taken(bytes: &[u8], pinned: &Keys) -> Result<(), VerifyFault> {
    verify(opened(bytes), Some(pinned.verify_key())).map(drop)
}

#[test]
fn a_card_of_renewed_keys_is_taken_by_every_device_of_the_clinic() {
    let [first, second, third, fourth] = generations();
    let signed = [first.verify_key()];
    for (keys, former) in [(&second, 1), (&third, 2), (&fourth, 3)] {
        let bytes = issued(keys, 2, &signed);
        let card = verify(opened(&bytes), None).expect("signed");
        assert_eq!((card.former.len(), bytes[4]), (former, 3));
        assert!(card.continues(&first.verify_key()) && card.continues(&keys.verify_key()));
        assert_eq!(taken(&bytes, &first), Ok(()), "also with what it missed in between");
    }
    let last = issued(&fourth, 2, &signed);
    assert_eq!([&second, &third, &fourth].map(|pinned| taken(&last, pinned)), [Ok(()); 3]);
}

#[test]
fn a_plan_that_was_begun_under_the_present_keys_has_a_card_of_version_2() {
    let [first, second, ..] = generations();
    for (keys, signed) in [(&first, &[][..]), (&second, &[]), (&second, &[second.verify_key()])] {
        let bytes = issued(keys, 1, signed);
        assert_eq!(bytes[4], 2);
        assert_eq!(verify(opened(&bytes), None).expect("signed").former, []);
    }
}

#[test]
fn a_card_of_the_former_key_is_refused_once_the_new_one_is_pinned() {
    let [first, second, third, _] = generations();
    let signed = [first.verify_key()];
    assert_eq!(taken(&issued(&first, 9, &signed), &second), Err(VerifyFault::OtherClinic));
    assert_eq!(taken(&issued(&second, 9, &signed), &third), Err(VerifyFault::OtherClinic));
}

#[test]
fn a_plan_of_more_than_three_former_keys_needs_a_new_one() {
    let [first, second, third, fourth] = generations();
    let fifth = keys::renew(&fourth, day(4)).expect("the fourth time");
    let all = [&first, &second, &third, &fourth].map(Keys::verify_key);
    assert_eq!(card_of(&fifth, 5, &all), Err(IssueFault::TooManyFormerKeys));
    let card = card_of(&fifth, 5, &all[..1]).expect("one known card");
    assert_eq!(card.former.iter().map(|one| one.key).collect::<Vec<_>>(), [first.verify_key()], "only what is needed");
    assert_eq!(card_of(&fifth, 5, &all[1..]).expect("three").former.len(), 3);
}

#[test]
fn keys_that_do_not_know_who_signed_a_plan_do_not_continue_it() {
    let [first, second, ..] = generations();
    let known = [first.verify_key(), second.verify_key()];
    assert_eq!(card_of(&first, 3, &known), Err(IssueFault::MissingKey), "saved before they were renewed");
    assert_eq!(card_of(&second, 3, &[new_keys().verify_key()]), Err(IssueFault::MissingKey));
}

/// `card` signed with the present keys, whatever is wrong with its former ones.
fn signed_anyway(keys: &Keys, card: &Card) -> Result<Vec<u8>, CardFault> {
    match issue(keys, card) {
        Ok(bytes) => Ok(bytes),
        Err(IssueFault::Contents(fault)) => Err(fault),
        Err(other) => panic!("{other}"),
    }
}

#[test]
fn a_thief_of_another_clinic_cannot_continue_a_plan() {
    let [first, second, third, _] = generations();
    let thief = new_keys();
    let honest = card_of(&third, 2, &[first.verify_key()]).expect("two former keys");
    // The honest signatures, under the thief's own key and recipient.
    let mut stolen = of_clinic(&thief, honest.plan.clone(), honest.pairing_secret.clone(), Vec::new());
    stolen.former = honest.former.clone();
    let bytes = signed_anyway(&thief, &stolen).expect("well formed");
    for pinned in [&first, &second, &third] {
        assert_eq!(taken(&bytes, pinned), Err(VerifyFault::OtherClinic));
    }
    // Signatures that the thief made with a key of their own, named as the clinic's.
    let own = keys::renew(&thief, day(1)).expect("the first time");
    let mut named = card_of(&own, 2, &[thief.verify_key()]).expect("one");
    assert_eq!(taken(&issue(&own, &named).expect("a card"), &first), Err(VerifyFault::OtherClinic));
    named.former[0].key = first.verify_key();
    let bytes = signed_anyway(&own, &named).expect("well formed");
    assert_eq!(taken(&bytes, &first), Err(VerifyFault::OtherClinic));
    assert_eq!(verify(opened(&bytes), None).err(), Some(VerifyFault::OtherClinic), "also where the plan is new");
}

#[test]
fn a_former_keys_signature_is_of_one_plan_one_key_and_one_recipient() {
    let [first, second, ..] = generations();
    let honest = card_of(&second, 2, &[first.verify_key()]).expect("one");
    let mut other_plan = honest.clone();
    other_plan.plan.header.id.0[0] ^= 1;
    let mut flipped = honest.clone();
    flipped.former[0].signature[5] ^= 1;
    // A card's own signature is none of renewed keys.
    let mut of_a_card = honest.clone();
    let card = issued(&first, 2, &[]);
    of_a_card.former[0].signature = *card.last_chunk().expect("a signature at the end");
    for changed in [other_plan, flipped, of_a_card] {
        let bytes = signed_anyway(&second, &changed).expect("well formed");
        assert_eq!(taken(&bytes, &first), Err(VerifyFault::OtherClinic));
        assert_eq!(taken(&bytes, &second), Err(VerifyFault::OtherClinic), "also by who needs no former key");
    }
    // Another recipient under the same signing key: what the former key has signed names the recipient.
    let renewed = format::card::renewed_keys(honest.plan.header.id, &honest.verify_key, &honest.recipient);
    assert_ne!(renewed, format::card::renewed_keys(honest.plan.header.id, &honest.verify_key, &first.recipient()));
}

#[test]
fn the_neutral_point_is_no_former_key() {
    let second = new_keys();
    let mut neutral = [0; 32];
    neutral[0] = 1;
    let mut signature = [0; 64];
    signature[0] = 1;
    let mut card = card_of(&second, 2, &[]).expect("none");
    card.former = vec![FormerKey { key: neutral, signature }];
    let bytes = signed_anyway(&second, &card).expect("well formed");
    assert_eq!(verify(opened(&bytes), Some(neutral)).err(), Some(VerifyFault::OtherClinic));
}

#[test]
fn reordered_repeated_or_too_many_former_keys_are_no_card() {
    let [first, _, third, fourth] = generations();
    let malformed = Err(CardFault::Malformed { field: "former keys" });
    let honest = card_of(&third, 2, &[first.verify_key()]).expect("two");
    let mut reordered = honest.clone();
    reordered.former.reverse();
    assert_eq!(signed_anyway(&third, &reordered), malformed);
    let mut repeated = honest.clone();
    repeated.former[1] = repeated.former[0].clone();
    assert_eq!(signed_anyway(&third, &repeated), malformed);
    let mut long = card_of(&fourth, 2, &[first.verify_key()]).expect("three");
    long.former.push(FormerKey { key: [0xFF; 32], signature: [0; 64] });
    assert_eq!(signed_anyway(&fourth, &long), malformed);
}

#[test]
fn summaries_open_with_the_keys_of_every_generation_and_no_others() {
    let [first, second, third, _] = generations();
    let written = support::six_weeks();
    for keys in [&first, &second, &third] {
        let secret = pairing_secret(keys, written.plan, 2);
        let sealed = summary::seal(&written, &secret, &keys.recipient()).expect("a summary");
        let open = |with: &Keys| summary::open(&sealed, with, |_| vec![secret.clone()]);
        assert_eq!(open(&third), Ok((written.clone(), 0)));
        assert_eq!(open(&new_keys()), Err(summary::OpenFault::ForAnotherClinic));
    }
    let later = summary::seal(&written, &pairing_secret(&third, written.plan, 2), &third.recipient()).expect("a summary");
    let found = summary::open(&later, &second, |_| vec![pairing_secret(&second, written.plan, 2)]);
    assert_eq!(found, Err(summary::OpenFault::ForAnotherClinic), "keys that were saved before");
}

/// A tag that was made for one recipient does not hold for another generation's.
#[test]
fn a_summary_sealed_again_to_another_generation_is_not_taken() {
    let [first, second, ..] = generations();
    let written = support::six_weeks();
    let secret = PairingSecret::new([7; 32]);
    let sealed = summary::seal(&written, &secret, &first.recipient()).expect("a summary");
    let identity: age::x25519::Identity =
        first.identity_string().expose_the_identity_for_printing().parse().expect("an identity");
    let letter = age::decrypt(&identity, &sealed).expect("sealed to it");
    let present = second.identity_string();
    let present = present.expose_the_identity_for_printing().lines().nth(1).expect("the present identity");
    let present: age::x25519::Identity = present.parse().expect("an identity");
    let again = age::encrypt(&present.to_public(), &letter).expect("a vector takes every byte");
    let found = summary::open(&again, &second, |_| vec![secret.clone()]).map(drop);
    assert_eq!(found, Err(summary::OpenFault::NotFromTheCard { plan: written.plan }));
}

#[test]
fn keys_can_be_renewed_five_times_and_all_of_it_comes_back_from_the_file() {
    let passphrase = Passphrase::new("seven grey herons".to_owned());
    let mut keys = new_keys();
    let mut before = Vec::new();
    for nth in 1..=5 {
        before.insert(0, (keys.verify_key(), keys.fingerprint(), day(nth)));
        keys = keys::renew(&keys, day(nth)).expect("not too often");
        let file = keys::seal(&keys, &passphrase, Cost::new(1).expect("a cost"));
        assert_eq!(file[4], 2);
        let read = keys::open(&file, &passphrase).expect("the passphrase");
        assert_eq!((read.verify_key(), read.recipient()), (keys.verify_key(), keys.recipient()));
        let former: Vec<_> = read.former().iter().map(|one| (one.verify_key(), one.fingerprint(), one.until())).collect();
        assert_eq!(former, before, "{nth}");
    }
    assert_eq!(MAX_FORMER, 5);
    assert_eq!(keys::renew(&keys, day(6)).err(), Some(RenewedTooOften));
}

#[test]
fn rows_and_secrets_of_cards_stay_those_of_the_clinic() {
    let [first, second, ..] = generations();
    let place = vault::rows::RowPlace::new("table", &[b"row"]);
    let sealed = vault::rows::seal(&first, &place, b"payload");
    assert_eq!(vault::rows::open(&second, &place, &sealed).as_deref(), Ok(&b"payload"[..]));
    let plan = support::plan(1).header.id;
    assert_eq!(pairing_secret(&first, plan, 2), pairing_secret(&second, plan, 2));
    assert_eq!(first.mark(), second.mark(), "its own exercises stay its own");
    assert_ne!(first.mark(), keys::for_now().mark());
}

#[test]
fn the_printed_identities_open_what_was_sealed_to_each_generation() {
    let [first, _, third, _] = generations();
    assert_eq!(first.identity_string().expose_the_identity_for_printing().lines().count(), 1, "as ever");
    let printed = third.identity_string();
    let lines: Vec<&str> = printed.expose_the_identity_for_printing().lines().collect();
    let comments: Vec<&str> = lines.iter().copied().filter(|line| line.starts_with('#')).collect();
    assert_eq!(comments, ["# cards from 2026-12-02", "# cards until 2026-12-02", "# cards until 2026-12-01"]);
    assert_eq!(lines.len(), 6);
    let last: age::x25519::Identity = lines[5].parse().expect("an identity");
    let by_first = first.identity_string();
    let by_first: age::x25519::Identity = by_first.expose_the_identity_for_printing().parse().expect("an identity");
    assert_eq!(last.to_public(), by_first.to_public());
    assert_eq!(format!("{printed:?} {:?}", third.former()), "IdentityText(..) [FormerGeneration(..), FormerGeneration(..)]");
}
