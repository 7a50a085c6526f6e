//! The plan card: writing and reading it, its limits, and the fault for each kind of damage.

mod support;

use exercises::plan::Schedule;
use format::card::{self, Card, CardFault, MAX_CONTENTS, MAX_FORMER, MAX_TEXT};
use miniz_oxide::deflate::compress_to_vec;
use proptest::prelude::*;
use qrcode::{EcLevel, QrCode, Version};

/// The whole card with an arbitrary signature, because this crate does not check signatures.
fn whole(card: &Card) -> Vec<u8> {
    card::seal(&card::payload(card).expect("a card"), &[0x5A; 64])
}

fn fault(bytes: &[u8]) -> Option<CardFault> {
    card::open(bytes).err()
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(64) })]

    #[test]
    fn any_card_comes_back_from_bytes_and_from_text(card in support::any::card()) {
        let bytes = whole(&card);
        let text = card::to_text(&bytes);
        prop_assert_eq!(card::from_text(&text), Ok(bytes.clone()));
        for file in [bytes.as_slice(), text.as_bytes()] {
            let read = card::read(file).expect("a whole card");
            prop_assert_eq!(read.claimed_key(), card.verify_key);
            prop_assert_eq!(read.into_card_after_checking_the_signature(), card.clone());
        }
    }

    #[test]
    fn any_bytes_give_a_value_or_a_fault(bytes: Vec<u8>) {
        prop_assert!(card::read(&bytes).is_err());
        prop_assert!(card::open(&[b"\x8FCrd\x01\x01".as_slice(), &bytes].concat()).is_err());
    }

    #[test]
    fn any_text_gives_a_value_or_a_fault(text in "(CARRYOVER )?[A-Z0-9 $%*+./:-]{0,300}") {
        prop_assert!(card::read(text.as_bytes()).is_err());
    }
}

#[test]
fn any_changed_character_of_the_text_is_reported_as_damage() {
    let text = card::to_text(&whole(&support::card(1)));
    for at in 0..text.len() {
        let mut flipped = text.clone().into_bytes();
        flipped[at] = if flipped[at] == b'7' { b'K' } else { b'7' };
        let flipped = String::from_utf8(flipped).expect("still ASCII");
        let found = card::read(flipped.as_bytes()).err();
        // The word and the first four bytes show that it is a card.
        let expected = if at < 16 { CardFault::NotACard } else { CardFault::Damaged };
        assert_eq!(found, Some(expected), "character {at}: {flipped}");
    }
}

#[test]
fn the_text_cut_at_any_length_is_reported_as_cut() {
    let text = card::to_text(&whole(&support::card(1)));
    for length in 4..text.len() {
        assert_eq!(card::read(&text.as_bytes()[..length]).err(), Some(CardFault::Cut), "at {length}");
    }
}

#[test]
fn words_behind_the_text_are_refused_as_such() {
    for count in 1..=6 {
        let text = card::to_text(&whole(&support::card(count)));
        for tail in [text.as_str(), "\n\nSee you in January!", ".", "-- \nsent from somewhere"] {
            assert_eq!(card::read(format!("{text}{tail}").as_bytes()).err(), Some(CardFault::Surplus), "{count}, {tail}");
        }
    }
}

#[test]
fn contents_that_unpack_to_more_than_allowed_are_refused() {
    let bomb = compress_to_vec(&vec![0; 30_000_000], 9);
    assert_eq!(fault(&sealed(&bomb)), Some(CardFault::TooBig { most: MAX_CONTENTS }));
}

#[test]
fn ten_megabytes_are_refused_before_any_work() {
    let big = vec![b'A'; 10_000_000];
    assert_eq!(card::read(&big).err(), Some(CardFault::TooBig { most: MAX_TEXT }));
}

#[test]
fn contents_that_are_no_card_are_named_by_their_part() {
    for (cbor, field) in [
        (&[][..], "contents"),
        (b"\xA0", "revision"),
        (b"\xA1\x00\x41\x00", "revision"),
        (b"\x80", "contents"),
        (b"\xA0\x00", "contents"),
        (b"\xA1\x07\x8D", "contents"),
        // The plan's id, the clinic and the days are read before the exercises.
        (b"\xA1\x07\x81\xA0", "revision"),
        (b"\xA5\x00\x01\x01\x61x\x02\x00\x03\x00\x07\x81\xA0", "items"),
    ] {
        assert_eq!(fault(&sealed(&compress_to_vec(cbor, 9))), Some(CardFault::Malformed { field }), "{cbor:x?}");
    }
    assert_eq!(fault(&sealed(b"\xFF not deflate")), Some(CardFault::Malformed { field: "packing" }));
}

#[test]
fn a_card_that_no_one_could_read_is_not_made() {
    let without = |change: fn(&mut Card)| {
        let mut card = support::card(6);
        change(&mut card);
        card::payload(&card).err()
    };
    let too_many = |card: &mut Card| {
        let item = card.plan.prescription.items[0].clone();
        card.plan.prescription.items = vec![item; 13];
    };
    let ancient = |card: &mut Card| card.plan.prescription.review = support::date(1999, 12, 31);
    let endless = |card: &mut Card| {
        let Schedule { pattern, .. } = &mut card.plan.prescription.items[0].schedule;
        *pattern = exercises::plan::Pattern::Every { minutes: 0, from: 0, to: 0 };
    };
    let huge = |card: &mut Card| card.own = vec!["x".repeat(MAX_CONTENTS)];
    assert_eq!(without(too_many), Some(CardFault::Malformed { field: "items" }));
    assert_eq!(without(ancient), Some(CardFault::Malformed { field: "review" }));
    assert_eq!(without(endless), Some(CardFault::Malformed { field: "items" }));
    assert_eq!(without(huge), Some(CardFault::TooBig { most: MAX_CONTENTS }));
}

#[test]
fn neither_card_nor_payload_shows_the_secret_in_debug_output() {
    let shown = format!("{:?}", support::card(1));
    assert!(shown.contains("PairingSecret(..)"), "{shown}");
}

/// The version (size, 1 to 40) of the smallest QR code that holds a text.
fn qr_version(text: &str, level: EcLevel) -> i16 {
    let code = QrCode::with_error_correction_level(text, level).expect("it fits a code");
    match code.version() {
        Version::Normal(version) | Version::Micro(version) => version,
    }
}

/// Version 22 (105 modules) is the largest that paper and simple cameras handle well.
#[test]
fn six_items_fit_a_code_that_paper_carries() {
    for count in [1, 3, 6] {
        let bytes = whole(&support::card(count));
        let text = card::to_text(&bytes);
        let (low, middle) = (qr_version(&text, EcLevel::L), qr_version(&text, EcLevel::M));
        println!("{count} items: {} bytes, {} characters, version {low} at L, {middle} at M", bytes.len(), text.len());
        assert!(low <= 22 && middle <= 22, "{count} items need version {low} at L, {middle} at M");
    }
}

/// The most that a code has to carry: six items of a clinic that has renewed its keys three times since the plan's first card.
#[test]
fn six_items_with_former_keys_fit_a_code_that_can_be_read() {
    let sizes: Vec<_> = (0..=3)
        .map(|count| {
            let card = Card { former: support::former(count), ..support::card(6) };
            let bytes = whole(&card);
            let text = card::to_text(&bytes);
            let (low, middle) = (qr_version(&text, EcLevel::L), qr_version(&text, EcLevel::M));
            println!(
                "{count} former keys: {} bytes, {} characters, version {low} at L, {middle} at M",
                bytes.len(),
                text.len()
            );
            (bytes.len(), low)
        })
        .collect();
    let without = sizes[0].0;
    assert_eq!(sizes[1..].iter().map(|(bytes, _)| bytes - without).collect::<Vec<_>>(), [97, 193, 289]);
    assert!(sizes.iter().all(|(_, low)| *low <= 22), "{sizes:?}");
}

#[test]
fn a_card_is_of_version_3_only_with_former_keys() {
    let version = |count| whole(&Card { former: support::former(count), ..support::card(1) })[4];
    assert_eq!([0, 1, 2, 3].map(version), [2, 3, 3, 3]);
    assert_eq!(MAX_FORMER, 3);
}

#[test]
fn former_keys_have_one_form_only() {
    let malformed = Some(CardFault::Malformed { field: "former keys" });
    let of = |change: fn(&mut Card)| {
        let mut card = Card { former: support::former(3), ..support::card(1) };
        change(&mut card);
        card::payload(&card).err()
    };
    assert_eq!(of(|_| {}), None);
    assert_eq!(of(|card| card.former.reverse()), malformed);
    assert_eq!(of(|card| card.former[1] = card.former[0].clone()), malformed);
    assert_eq!(of(|card| card.former[0].key = card.verify_key), malformed);
    assert_eq!(of(|card| card.former = support::former(4)), malformed);
    let mut relabelled = whole(&support::card(1));
    relabelled[4] = 3;
    let check = checksum(&relabelled);
    relabelled[8..12].copy_from_slice(&check);
    assert!(fault(&relabelled).is_some(), "a card without former keys is of version 2");
}

/// The checksum of a card's header for its version and its rest.
fn checksum(card: &[u8]) -> [u8; 4] {
    let mut sum = crc32fast::Hasher::new();
    sum.update(&card[4..6]);
    sum.update(&card[12..]);
    sum.finalize().to_be_bytes()
}

/// Packed contents with arbitrary keys, under a valid header.
fn sealed(packed: &[u8]) -> Vec<u8> {
    let rest = [&[7; 104], packed, &[0; 64]].concat();
    let mut sum = crc32fast::Hasher::new();
    sum.update(&[1, 1]);
    sum.update(&rest);
    let length = u16::try_from(rest.len()).expect("small enough");
    [b"\x8FCrd\x01\x01".as_slice(), &length.to_be_bytes(), &sum.finalize().to_be_bytes(), &rest].concat()
}
