//! Summaries sealed and opened, here and with the age program.

#[path = "../../format/tests/support/mod.rs"]
mod support;

use age::x25519::{Identity, Recipient};
use exercises::id::PlanId;
use exercises::summary::Summary;
use format::card::PairingSecret;
use format::summary::{Letter, MAX_CONTENTS, MAX_SEALED, SummaryFault, write};
use hkdf::Hkdf;
use hmac::{Hmac, Mac};
use proptest::prelude::*;
use sha2::Sha256;
use std::process::{Command, Stdio};
use std::sync::LazyLock;
use vault::summary::{OpenFault, SealFault, open, seal};
use vault::{Cost, Keys, Passphrase, keys};

fn new_keys() -> Keys {
    keys::create(&Passphrase::new("x".to_owned()), Cost::new(1).expect("a cost")).0
}

static KEYS: LazyLock<Keys> = LazyLock::new(new_keys);

fn secret() -> PairingSecret {
    PairingSecret::new(support::scattered(3))
}

fn sealed(summary: &Summary) -> Vec<u8> {
    seal(summary, &secret(), &KEYS.recipient()).expect("a summary")
}

/// Opens a file as a clinic that knows the secret of every plan.
fn opened(sealed: &[u8]) -> Result<Summary, OpenFault> {
    open(sealed, &KEYS, |_| vec![secret()]).map(|(summary, _)| summary)
}

fn identity(keys: &Keys) -> Identity {
    keys.identity_string().expose_the_identity_for_printing().parse().expect("an identity")
}

fn to(keys: &Keys) -> Recipient {
    identity(keys).to_public()
}

/// The tag as documented, computed independently.
fn tag(letter: &Letter, recipient: &[u8; 32]) -> [u8; 32] {
    let mut key = [0; 32];
    let derive = Hkdf::<Sha256>::new(Some(&letter.body.plan.0), secret().expose_the_secret_bytes());
    derive.expand(b"carryover/summary-tag/v1", &mut key).expect("32 bytes");
    let mut tag = Hmac::<Sha256>::new_from_slice(&key).expect("any length");
    tag.update(&Letter::authenticated(&letter.body, recipient));
    tag.finalize().into_bytes().into()
}

/// A letter of six weeks, changed, with a correct tag, sealed to the clinic.
fn letter_with(change: impl FnOnce(&mut Letter)) -> Vec<u8> {
    let mut letter = Letter { body: write(&support::six_weeks()).expect("a summary"), tag: [0; 32] };
    change(&mut letter);
    letter.tag = tag(&letter, &KEYS.recipient());
    age::encrypt(&to(&KEYS), &letter.to_bytes()).expect("sealed")
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(32) })]

    #[test]
    fn any_summary_comes_back(summary in support::any::summary()) {
        let found = open(&sealed(&summary), &KEYS, |plan| if plan == summary.plan { vec![secret()] } else { Vec::new() });
        prop_assert_eq!(found, Ok((summary, 0)));
    }

    #[test]
    fn any_bytes_give_a_value_or_a_fault(bytes: Vec<u8>) {
        prop_assert!(opened(&bytes).is_err());
        prop_assert!(opened(&[b"age-encryption.org/v1\n".as_slice(), &bytes].concat()).is_err());
        prop_assert!(opened(&age::encrypt(&to(&KEYS), &bytes).expect("sealed")).is_err());
    }
}

#[test]
fn any_flipped_byte_is_refused_and_no_contents_are_returned() {
    let sealed = sealed(&support::frozen_summary());
    let header = sealed.windows(4).position(|bytes| bytes == b"\n---").expect("the end of the header");
    for at in 0..sealed.len() {
        let mut flipped = sealed.clone();
        flipped[at] ^= 0x01;
        let fault = opened(&flipped).expect_err("a flipped byte");
        let expected = match at {
            0..22 => matches!(fault, OpenFault::NotSealed),
            // In the lines that name the recipient, damage may look like another recipient.
            at if at <= header => matches!(fault, OpenFault::ForAnotherClinic | OpenFault::Damaged),
            _ => matches!(fault, OpenFault::Damaged),
        };
        assert!(expected, "byte {at}: {fault:?}");
    }
}

#[test]
fn a_truncation_at_any_length_is_reported_as_damage() {
    let sealed = sealed(&support::frozen_summary());
    assert_eq!(opened(&[]), Err(OpenFault::NotSealed));
    for length in 1..sealed.len() {
        assert_eq!(opened(&sealed[..length]), Err(OpenFault::Damaged), "at {length}");
    }
    assert_eq!(opened(&[sealed, vec![0]].concat()), Err(OpenFault::Damaged), "a tail");
}

#[test]
fn it_does_not_open_at_another_clinic() {
    let sealed = sealed(&support::six_weeks());
    assert_eq!(open(&sealed, &new_keys(), |_| vec![secret()]), Err(OpenFault::ForAnotherClinic));
}

#[test]
fn a_plan_that_is_not_known_is_named() {
    let summary = support::six_weeks();
    let found = open(&sealed(&summary), &KEYS, |_| Vec::new());
    assert_eq!(found, Err(OpenFault::UnknownPlan { plan: summary.plan }));
}

#[test]
fn a_sender_without_the_card_is_not_believed() {
    let summary = support::six_weeks();
    let forged = seal(&summary, &vault::random::pairing_secret(), &KEYS.recipient()).expect("anyone can seal");
    assert_eq!(opened(&forged), Err(OpenFault::NotFromTheCard { plan: summary.plan }));
}

#[test]
fn the_secret_of_any_card_of_the_plan_is_enough_and_it_is_said_which() {
    let summary = support::six_weeks();
    let others: Vec<PairingSecret> = (0..2).map(|_| vault::random::pairing_secret()).collect();
    let secrets = [others.as_slice(), &[secret(), secret()]].concat();
    assert_eq!(open(&sealed(&summary), &KEYS, |_| secrets), Ok((summary.clone(), 2)));
    assert_eq!(open(&sealed(&summary), &KEYS, |_| others), Err(OpenFault::NotFromTheCard { plan: summary.plan }));
}

#[test]
fn one_clinic_cannot_pass_a_patients_letter_on_to_another() {
    let (summary, second) = (support::six_weeks(), new_keys());
    let letter = age::decrypt(&identity(&KEYS), &sealed(&summary)).expect("the first clinic reads it");
    let passed_on = age::encrypt(&to(&second), &letter).expect("and encrypts it again");
    let found = open(&passed_on, &second, |_| vec![secret()]);
    assert_eq!(found, Err(OpenFault::NotFromTheCard { plan: summary.plan }));
}

#[test]
fn every_field_of_the_letter_is_under_the_tag() {
    let letter = Letter { body: write(&support::six_weeks()).expect("a summary"), tag: [0; 32] };
    let good = Letter { tag: tag(&letter, &KEYS.recipient()), ..letter };
    let changes: [fn(&mut Letter); 5] = [
        |letter| letter.body.plan.0[0] ^= 1,
        |letter| letter.body.log.0[0] ^= 1,
        |letter| letter.body.counter += 1,
        |letter| letter.body.packed[0] ^= 1,
        |letter| letter.tag[31] ^= 1,
    ];
    for (at, change) in changes.into_iter().enumerate() {
        let mut changed = good.clone();
        change(&mut changed);
        let plan = changed.body.plan;
        let sealed = age::encrypt(&to(&KEYS), &changed.to_bytes()).expect("sealed");
        assert_eq!(opened(&sealed), Err(OpenFault::NotFromTheCard { plan }), "change {at}");
    }
}

#[test]
fn invalid_contents_are_refused_with_their_fault_even_from_somebody_with_the_card() {
    let bomb = |letter: &mut Letter| letter.body.packed = miniz_oxide::deflate::compress_to_vec(&vec![0; 60_000_000], 9);
    let too_big = SummaryFault::TooBig { most: MAX_CONTENTS };
    assert_eq!(opened(&letter_with(bomb)), Err(OpenFault::Contents(too_big)));
    let rubbish = |letter: &mut Letter| letter.body.packed = vec![0xFF; 40];
    let packing = SummaryFault::Malformed { field: "packing" };
    assert_eq!(opened(&letter_with(rubbish)), Err(OpenFault::Contents(packing)));
    let other = |letter: &mut Letter| letter.body.counter += 1;
    let not_the_letters = SummaryFault::Malformed { field: "letter" };
    assert_eq!(opened(&letter_with(other)), Err(OpenFault::Contents(not_the_letters)));
    assert_eq!(opened(&letter_with(|_| {})), Ok(support::six_weeks()), "unchanged it opens");
}

#[test]
fn a_newer_letter_and_other_sealed_files_have_different_faults() {
    let mut newer = Letter { body: write(&support::six_weeks()).expect("a summary"), tag: [0; 32] }.to_bytes();
    newer[4] = 3;
    for (plain, fault) in [
        (newer.as_slice(), SummaryFault::NewerVersion { found: 3 }),
        (b"a shopping list", SummaryFault::NotASummary),
        (b"", SummaryFault::NotASummary),
        (b"\x8FCsu\x01", SummaryFault::Cut),
    ] {
        let sealed = age::encrypt(&to(&KEYS), plain).expect("sealed");
        assert_eq!(opened(&sealed), Err(OpenFault::Contents(fault)));
    }
}

#[test]
fn a_file_under_a_passphrase_is_refused_before_any_work() {
    let (_, file) = keys::create(&Passphrase::new("x".to_owned()), Cost::new(1).expect("a cost"));
    let age_file = keys::age_file(&file).expect("whole");
    assert_eq!(opened(age_file), Err(OpenFault::UnderPassphrase));
}

#[test]
fn files_over_the_limit_are_refused_by_their_length() {
    let mut big = sealed(&support::six_weeks());
    big.resize(MAX_SEALED + 1, 0);
    assert_eq!(opened(&big), Err(OpenFault::TooBig { most: MAX_SEALED }));
}

#[test]
fn nothing_is_sealed_to_a_point_of_low_order() {
    assert_eq!(seal(&support::six_weeks(), &secret(), &[0; 32]), Err(SealFault::UnfitRecipient));
}

#[test]
fn the_frozen_summary_of_version_1_still_opens() {
    let keys = keys::open(include_bytes!("frozen/keys-1.bin"), &Passphrase::new("seven grey herons".to_owned()));
    let keys = keys.expect("the frozen passphrase");
    let known = |plan: PlanId| if plan == support::frozen_summary().plan { vec![secret()] } else { Vec::new() };
    assert_eq!(open(include_bytes!("frozen/summary-1.age"), &keys, known), Ok((support::frozen_summary(), 0)));
}

#[test]
fn the_frozen_summary_of_version_2_still_opens() {
    let keys = keys::open(include_bytes!("frozen/keys-1.bin"), &Passphrase::new("seven grey herons".to_owned()));
    let keys = keys.expect("the frozen passphrase");
    let known = |plan: PlanId| if plan == support::frozen_summary_2().plan { vec![secret()] } else { Vec::new() };
    assert_eq!(open(include_bytes!("frozen/summary-2.age"), &keys, known), Ok((support::frozen_summary_2(), 0)));
}

/// Runs the age program with these arguments and this input; returns its output.
fn age_program(arguments: &[&str], input: &[u8]) -> Vec<u8> {
    use std::io::Write;
    let started = Command::new("age").args(arguments).stdin(Stdio::piped()).stdout(Stdio::piped()).spawn();
    let mut running =
        started.unwrap_or_else(|fault| panic!("this test needs the age program, see tests/packages.txt: {fault}"));
    running.stdin.take().expect("piped").write_all(input).expect("it reads to the end");
    let output = running.wait_with_output().expect("it ends");
    assert!(output.status.success(), "age {arguments:?} ends with {}", output.status);
    output.stdout
}

#[test]
fn the_age_program_opens_it_with_the_printed_identity() {
    let summary = support::six_weeks();
    let folder = tempfile::tempdir().expect("a folder");
    let file = folder.path().join("identity.txt");
    std::fs::write(&file, KEYS.identity_string().expose_the_identity_for_printing()).expect("written");
    let arguments = ["--decrypt", "--identity", file.to_str().expect("a plain path")];
    let plain = age_program(&arguments, &sealed(&summary));
    let letter = Letter::parse(&plain).expect("a letter");
    assert_eq!(format::summary::read(&letter.body), Ok(summary));
}

#[test]
fn a_file_encrypted_by_the_age_program_opens_here_if_its_tag_is_correct() {
    let mut letter = Letter { body: write(&support::six_weeks()).expect("a summary"), tag: [0; 32] };
    let recipient = to(&KEYS).to_string();
    let arguments = ["--encrypt", "--recipient", recipient.as_str()];
    let forged = age_program(&arguments, &letter.to_bytes());
    assert_eq!(opened(&forged), Err(OpenFault::NotFromTheCard { plan: letter.body.plan }));
    letter.tag = tag(&letter, &KEYS.recipient());
    let sealed = age_program(&arguments, &letter.to_bytes());
    assert_eq!(opened(&sealed), Ok(support::six_weeks()));
}
