//! The key file: what opens it, and which fault each refusal has.

use sha2::{Digest, Sha256};
use vault::keys::{self, KeysFault};
use vault::{Cost, Keys, Passphrase};

fn passphrase(text: &str) -> Passphrase {
    Passphrase::new(text.to_owned())
}

/// Keys and their file under "seven grey herons" at the lowest cost.
fn sealed() -> (Keys, Vec<u8>) {
    keys::create(&passphrase("seven grey herons"), Cost::new(1).expect("a cost"))
}

fn fault(file: &[u8], text: &str) -> Option<KeysFault> {
    keys::open(file, &passphrase(text)).err()
}

/// A key file around an age file, with a correct checksum.
fn framed(version: u8, age_file: &[u8]) -> Vec<u8> {
    [b"\x8FCky", &[version][..], &Sha256::digest(age_file)[..8], age_file].concat()
}

#[test]
fn the_passphrase_opens_the_same_keys() {
    let (keys, file) = sealed();
    let opened = keys::open(&file, &passphrase("seven grey herons")).expect("it is the passphrase");
    assert_eq!(opened.verify_key(), keys.verify_key());
    assert_eq!(opened.recipient(), keys.recipient());
    assert_eq!(opened.fingerprint(), keys.fingerprint());
    let place = vault::rows::RowPlace::new("table", &[b"row"]);
    let sealed = vault::rows::seal(&keys, &place, b"payload");
    assert_eq!(vault::rows::open(&opened, &place, &sealed).as_deref(), Ok(&b"payload"[..]));
}

#[test]
fn no_two_clinics_have_a_key_in_common() {
    let (one, two) = (sealed().0, sealed().0);
    assert_ne!(one.verify_key(), two.verify_key());
    assert_ne!(one.recipient(), two.recipient());
}

#[test]
fn a_wrong_passphrase_is_distinguished_from_damage() {
    let (_, file) = sealed();
    for other in ["seven grey heron", "Seven grey herons", "", "seven grey herons "] {
        assert_eq!(fault(&file, other), Some(KeysFault::WrongPassphrase), "{other:?}");
    }
}

#[test]
fn any_flipped_byte_and_any_truncation_is_reported_as_damage() {
    let (_, file) = sealed();
    for at in 0..file.len() {
        let mut flipped = file.clone();
        flipped[at] ^= 0x01;
        let expected = match at {
            0..4 => KeysFault::NotKeys,
            _ => KeysFault::Damaged,
        };
        assert_eq!(fault(&flipped, "seven grey herons"), Some(expected), "byte {at}");
        let expected = if at < 4 { KeysFault::NotKeys } else { KeysFault::Damaged };
        assert_eq!(fault(&file[..at], "seven grey herons"), Some(expected), "cut at {at}");
    }
    assert_eq!(fault(&[file, vec![0]].concat(), "seven grey herons"), Some(KeysFault::Damaged), "a tail");
}

#[test]
fn a_file_that_asks_for_too_much_work_is_refused_before_any() {
    let (_, file) = sealed();
    let age_file = keys::age_file(&file).expect("whole");
    let header = age_file.windows(3).position(|bytes| bytes == b" 1\n").expect("the cost in the header");
    for asked in [19_u8, 40, 63] {
        let (before, after) = (&age_file[..header], &age_file[header + 3..]);
        let costly = [before, format!(" {asked}\n").as_bytes(), after].concat();
        assert_eq!(fault(&framed(1, &costly), "seven grey herons"), Some(KeysFault::TooCostly { asked }));
    }
}

#[test]
fn other_files_are_not_key_files() {
    for other in [&b""[..], b"\x8FCk", b"age-encryption.org/v1\n", b"\x8FCrd\x01\x01", &[0x8F; 10_000]] {
        assert_eq!(fault(other, "x"), Some(KeysFault::NotKeys), "{:?}", &other[..other.len().min(20)]);
    }
    assert_eq!(fault(&framed(1, b"no age file"), "x"), Some(KeysFault::Damaged));
    assert_eq!(fault(&framed(1, &[b'x'; 4096 - 13]), "x"), Some(KeysFault::Damaged), "as large as a key file may be");
    assert_eq!(fault(&framed(1, &[b'x'; 4096 - 12]), "x"), Some(KeysFault::NotKeys), "larger");
    let newer = framed(3, b"who knows");
    assert_eq!(fault(&newer, "x"), Some(KeysFault::NewerVersion { found: 3 }));
}

#[test]
fn a_file_says_its_cost_and_the_usual_one_is_accepted() {
    let (_, file) = keys::create(&passphrase("seven grey herons"), Cost::USUAL);
    let age_file = keys::age_file(&file).expect("whole");
    let header = String::from_utf8_lossy(&age_file[..80]).into_owned();
    let stanza = header.lines().nth(1).expect("a second line");
    assert!(stanza.starts_with("-> scrypt ") && stanza.ends_with(" 17"), "{stanza}");
    assert!(fault(&file, "seven grey herons").is_none());
}

#[test]
fn the_passphrase_can_be_changed() {
    let (keys, _) = sealed();
    let file = keys::seal(&keys, &passphrase("eight brown wrens"), Cost::new(1).expect("a cost"));
    assert_eq!(fault(&file, "seven grey herons"), Some(KeysFault::WrongPassphrase));
    let opened = keys::open(&file, &passphrase("eight brown wrens")).expect("the new one");
    assert_eq!(opened.recipient(), keys.recipient());
}

#[test]
fn the_printed_identity_is_the_one_of_the_card() {
    let (keys, _) = sealed();
    let printed = keys.identity_string();
    let text = printed.expose_the_identity_for_printing();
    assert!(text.starts_with("AGE-SECRET-KEY-1"), "as any age tool accepts it");
    let identity: age::x25519::Identity = text.parse().expect("an identity");
    let public: String = identity.to_public().to_string();
    let (_, bytes) = bech32::decode(&public).expect("Bech32");
    assert_eq!(bytes, keys.recipient());
}

#[test]
fn debug_output_shows_no_secret() {
    let (keys, _) = sealed();
    assert_eq!(format!("{keys:?}"), "Keys(..)");
    assert_eq!(format!("{:?}", keys.identity_string()), "IdentityText(..)");
}

#[test]
fn a_passphrase_opens_however_the_keyboard_writes_its_letters() {
    let cost = Cost::new(1).expect("a cost");
    let [composed, decomposed] = ["siete garzas peque\u{f1}as", "siete garzas pequen\u{303}as"];
    let (_, file) = keys::create(&passphrase(decomposed), cost);
    for typed in [composed, decomposed] {
        assert!(fault(&file, typed).is_none(), "{typed:?}");
    }
    assert_eq!(fault(&file, "siete garzas pequenas"), Some(KeysFault::WrongPassphrase));
}

/// The file of keys under a passphrase that was not brought into the composed form, as earlier programs wrote it.
fn sealed_as_typed(typed: &str, cost: u8) -> Vec<u8> {
    let mut recipient = age::scrypt::Recipient::new(typed.to_owned().into());
    recipient.set_work_factor(cost);
    let plain = [&[1_u8][..], &[7; 96]].concat();
    framed(1, &age::encrypt(&recipient, &plain).expect("a vector takes every byte"))
}

#[test]
fn an_older_file_opens_and_is_renewed_with_the_form_and_the_cost_of_new_ones() {
    let [composed, decomposed] = ["siete garzas peque\u{f1}as", "siete garzas pequen\u{303}as"];
    for typed in [composed, decomposed] {
        let (old, renewed) =
            keys::open_and_renew(&sealed_as_typed(decomposed, 1), &passphrase(typed), Cost::USUAL).expect("the passphrase");
        let renewed = renewed.expect("it is renewed");
        let (new, again) = keys::open_and_renew(&renewed, &passphrase(composed), Cost::USUAL).expect("the passphrase");
        assert_eq!(new.fingerprint(), old.fingerprint());
        assert!(again.is_none(), "once is enough");
        let header = String::from_utf8_lossy(&keys::age_file(&renewed).expect("whole")[..80]).into_owned();
        assert!(header.lines().nth(1).expect("a second line").ends_with(" 17"), "{header}");
    }
    let (_, renewed) =
        keys::open_and_renew(include_bytes!("frozen/keys-1.bin"), &passphrase("seven grey herons"), Cost::USUAL)
            .expect("the frozen passphrase");
    assert!(renewed.is_some(), "the frozen file has a lower cost");
}

#[test]
fn the_text_for_paper_is_the_key_file_and_any_age_tool_opens_it() {
    let (keys, file) = sealed();
    let text = keys::to_text(&file).expect("whole");
    assert!(text.lines().all(|line| line.len() <= 64), "{text}");
    let squeezed = text.replace('\n', " \r\n  ");
    for kept in [file.as_slice(), text.as_bytes(), squeezed.as_bytes()] {
        let back = keys::of_kept(kept).expect("whole");
        assert_eq!(back, file);
        assert_eq!(fault(&back, "seven grey herons"), None);
    }
    let opened = keys::open(&keys::of_kept(text.as_bytes()).expect("whole"), &passphrase("seven grey herons"));
    assert_eq!(opened.expect("the passphrase").fingerprint(), keys.fingerprint());
    let cut = &text[..text.len() - 10];
    assert_eq!(keys::of_kept(cut.as_bytes()), Err(KeysFault::Damaged));
    assert_eq!(keys::of_kept(b"a shopping list"), Err(KeysFault::NotKeys));
    let changed = text.replacen("IEFHRSB", "*", 1);
    assert_eq!(keys::of_kept(changed.replacen('\n', "\n*", 1).as_bytes()), Err(KeysFault::Damaged));
}

/// A key file of this version around these bytes, at the lowest cost.
fn around(version: u8, plain: &[u8]) -> Vec<u8> {
    let mut recipient = age::scrypt::Recipient::new("seven grey herons".to_owned().into());
    recipient.set_work_factor(1);
    framed(version, &age::encrypt(&recipient, plain).expect("a vector takes every byte"))
}

#[test]
fn what_is_within_a_key_file_has_one_form_only() {
    let within = |version: u8, former: &[u8]| [&[version], &[7; 96][..], former].concat();
    let former = |number: usize| [[5; 64].as_slice(), &738_000_i32.to_be_bytes()].concat().repeat(number);
    let of = |plain: &[u8]| fault(&around(2, plain), "seven grey herons");
    for number in 1..=5_u8 {
        assert_eq!(of(&within(2, &[&[number], &former(number.into())[..]].concat())), None, "{number}");
        assert_eq!(of(&within(2, &[&[number - 1], &former(number.into())[..]].concat())), Some(KeysFault::Damaged));
        assert_eq!(of(&within(2, &[&[number + 1], &former(number.into())[..]].concat())), Some(KeysFault::Damaged));
    }
    assert_eq!(of(&within(2, &[&[6], &former(6)[..]].concat())), Some(KeysFault::Damaged), "more than five");
    assert_eq!(of(&within(2, &[])), Some(KeysFault::Damaged));
    assert_eq!(of(&within(2, &[0])), Some(KeysFault::Damaged), "without any it is version 1");
    assert_eq!(of(&within(1, &[1])), Some(KeysFault::Damaged));
    assert_eq!(of(&within(0, &[])), Some(KeysFault::Damaged));
    assert_eq!(of(&within(3, &[])), Some(KeysFault::NewerVersion { found: 3 }));
    let no_day = [[5; 64].as_slice(), &i32::MAX.to_be_bytes()].concat();
    assert_eq!(of(&within(2, &[&[1], &no_day[..]].concat())), Some(KeysFault::Damaged));
    let whole = within(2, &[&[1], &former(1)[..]].concat());
    for length in (0..whole.len()).step_by(7) {
        assert_eq!(of(&whole[..length]), Some(KeysFault::Damaged), "cut at {length}");
    }
}

#[test]
fn the_frozen_file_of_renewed_keys_opens_also_from_paper() {
    let file = include_bytes!("frozen/keys-2.bin");
    let passphrase = passphrase("seven grey herons");
    let first = keys::open(include_bytes!("frozen/keys-1.bin"), &passphrase).expect("the frozen passphrase");
    let opened = keys::open(file, &passphrase).expect("the frozen passphrase");
    let [former] = opened.former() else { panic!("renewed once") };
    assert_eq!((former.fingerprint(), former.until().to_string()), (first.fingerprint(), "2026-12-16".to_owned()));
    assert_ne!(opened.fingerprint(), first.fingerprint());
    let text = keys::to_text(file).expect("whole");
    let kept = keys::of_kept(text.as_bytes()).expect("whole");
    let (read, renewed) = keys::open_and_renew(&kept, &passphrase, Cost::USUAL).expect("the frozen passphrase");
    assert_eq!(read.fingerprint(), opened.fingerprint());
    assert_eq!(renewed.expect("the version is put in front")[4], 2);
}

#[test]
fn keys_that_were_never_renewed_stay_a_file_of_version_1() {
    let (_, file) = sealed();
    assert_eq!(file[4], 1);
}
