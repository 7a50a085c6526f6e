//! Frames of an encrypted summary: in any order, repeated, missing, of another summary, damaged, too many.

mod support;

use format::frames::{self, Frame, FrameFault, Gathered, MAX_FRAMES, MAX_PART, MAX_WHOLE, Transfer, VERSION, read, split};
use proptest::collection::vec;
use proptest::prelude::*;
use qrcode::{EcLevel, QrCode, Version};

const ONE: Transfer = Transfer([1, 2, 3, 4, 5, 6, 7, 8]);
const OTHER: Transfer = Transfer([8, 7, 6, 5, 4, 3, 2, 1]);
const FROZEN: &str = include_str!("frozen/frames-1.txt");

/// Bytes without a pattern, like those of encrypted data.
fn sealed(length: usize) -> Vec<u8> {
    (0..=u8::MAX).cycle().flat_map(support::scattered).take(length).collect()
}

fn frames(texts: &[String]) -> Vec<Frame> {
    texts.iter().map(|text| read(text).expect("a frame")).collect()
}

/// Collects the frames of one summary.
fn gather(frames: impl IntoIterator<Item = Frame>) -> Gathered {
    let mut frames = frames.into_iter();
    let mut gathered = Gathered::begin(frames.next().expect("at least one"));
    frames.for_each(|frame| gathered.take(frame).expect("of this sealing"));
    gathered
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(128) })]

    #[test]
    fn in_any_order_and_doubled_they_make_the_whole(
        (whole, order) in vec(any::<u8>(), 1..=MAX_WHOLE).prop_flat_map(|whole| {
            let count = split(&whole, ONE).expect("within the limit").len();
            let order = (Just((0..count).collect::<Vec<_>>()).prop_shuffle(), vec(0..count, 0..12));
            (Just(whole), order.prop_map(|(all, again)| [all, again].concat()))
        }),
    ) {
        let all = frames(&split(&whole, ONE).expect("within the limit"));
        let gathered = gather(order.into_iter().map(|at| all[at].clone()));
        prop_assert_eq!(gathered.missing(), Vec::<u8>::new());
        prop_assert_eq!(gathered.whole(), Some(whole));
    }

    #[test]
    fn missing_frames_are_named(length in 1..=MAX_WHOLE, come in any::<u8>()) {
        let all = frames(&split(&sealed(length), ONE).expect("within the limit"));
        let (came, missing): (Vec<Frame>, Vec<Frame>) =
            all.into_iter().partition(|frame| come & (1 << (frame.place - 1)) != 0);
        prop_assume!(!came.is_empty() && !missing.is_empty());
        let gathered = gather(came.clone());
        prop_assert_eq!(gathered.missing(), missing.iter().map(|frame| frame.place).collect::<Vec<_>>());
        prop_assert_eq!((gathered.have(), gathered.of()), (came.len() as u8, (came.len() + missing.len()) as u8));
        prop_assert_eq!(gathered.whole(), None);
    }

    #[test]
    fn frames_of_two_summaries_are_not_mixed(first in 1..3000_usize, second in 1..3000_usize) {
        let mut gathered = gather(frames(&split(&sealed(first), ONE).expect("short")));
        let before = gathered.clone();
        for foreign in frames(&split(&sealed(second), OTHER).expect("short")) {
            prop_assert_eq!(gathered.take(foreign), Err(FrameFault::NotAFrame));
        }
        prop_assert_eq!(gathered, before);
    }

    #[test]
    fn one_changed_character_is_detected(length in 1..2000_usize, at in any::<prop::sample::Index>(), to in any::<prop::sample::Index>()) {
        const SIGNS: &[u8] = b"0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";
        for text in split(&sealed(length), ONE).expect("short") {
            let mut changed = text.clone().into_bytes();
            let at = at.index(changed.len());
            changed[at] = SIGNS[to.index(SIGNS.len())];
            let changed = String::from_utf8(changed).expect("signs");
            if changed != text {
                prop_assert!(read(&changed).is_err(), "{} at {}", changed, at);
            }
        }
    }

    #[test]
    fn any_text_gives_a_value_or_a_fault(text: String, groups in "[0-9A-Z $%*+./:-]{0,90}") {
        prop_assert_eq!(read(&text), Err(FrameFault::NotAFrame));
        if let Ok(frame) = read(&format!("CARRYOVER-SUMMARY {groups}")) {
            prop_assert!(frame.place >= 1 && frame.place <= frame.of && frame.of <= MAX_FRAMES);
        }
    }
}

/// A frame with a correct check sum and arbitrary content.
fn forged(version: u8, place: u8, of: u8, part: &[u8]) -> String {
    let head = [&[version][..], &ONE.0, &[place, of]].concat();
    let sum = crc32fast::hash(&[&head[..], part].concat()).to_be_bytes();
    format!("CARRYOVER-SUMMARY {}", base45::encode([&head[..], &sum, part].concat()))
}

#[test]
fn frames_that_no_program_writes_are_refused() {
    assert!(read(&forged(1, 1, 1, b"part")).is_ok(), "the forger's hand is right");
    for (text, why) in [
        (forged(1, 0, 1, b"part"), "counted from 1"),
        (forged(1, 3, 2, b"part"), "the third of two"),
        (forged(1, 1, 0, b"part"), "of none"),
        (forged(1, 1, MAX_FRAMES + 1, b"part"), "too many"),
        (forged(1, 1, 1, b""), "nothing in it"),
        (forged(1, 1, 1, &[7; MAX_PART + 1]), "too long"),
        (forged(0, 1, 1, b"part"), "no version"),
        ("CARRYOVER-SUMMARY ".into(), "nothing at all"),
        ("CARRYOVER-SUMMARY GGW".into(), "65536 in three characters"),
    ] {
        let told = read(&text);
        assert!(matches!(told, Err(FrameFault::Damaged | FrameFault::NotAFrame)), "{why}: {told:?}");
    }
    assert_eq!(read(&forged(2, 1, 1, b"part")), Err(FrameFault::NewerVersion { found: 2 }));
    let endless = format!("CARRYOVER-SUMMARY {}", "A".repeat(10_000_000));
    assert_eq!(read(&endless), Err(FrameFault::TooBig { most: 2048 }));
}

#[test]
fn frames_that_contradict_each_other_change_nothing() {
    let frame = |place, of, part: &[u8]| read(&forged(1, place, of, part)).expect("a frame");
    let mut gathered = Gathered::begin(frame(1, 3, b"one"));
    for (other, why) in [(frame(2, 4, b"two"), "of four"), (frame(1, 3, b"eno"), "another first one")] {
        assert_eq!(gathered.take(other), Err(FrameFault::Damaged), "{why}");
    }
    assert_eq!((gathered.have(), gathered.missing()), (1, vec![2, 3]));
}

#[test]
fn other_codes_are_no_frames() {
    for other in ["", " ", "https://example.org/", "CARRYOVER BB8", "CARRYOVER-SUMMARYBB8", "carryover-summary BB8"] {
        assert_eq!(read(other), Err(FrameFault::NotAFrame), "{other}");
    }
    let text = split(b"sealed", ONE).expect("short").remove(0);
    assert_eq!(format::card::from_text(&text), Err(format::card::CardFault::NotACard), "nor is a frame a card");
    assert!(read(&format!("\u{FEFF}\r\n {text}\n")).is_ok(), "white space around does not matter");
}

/// The version (size) of the QR code that holds a text at a level.
fn version(text: &str, level: EcLevel) -> i16 {
    match QrCode::with_error_correction_level(text, level).expect("a code").version() {
        Version::Normal(version) | Version::Micro(version) => version,
    }
}

#[test]
fn every_frame_is_a_code_that_a_camera_reads() {
    for length in [1, 728, 729, 730, 1459, 4000, 8 * 729] {
        let texts = split(&sealed(length), ONE).expect("within the limit");
        assert_eq!(texts.len(), length.div_ceil(729), "{length} bytes");
        assert!(texts.iter().all(|text| version(text, EcLevel::M) <= 22), "{length} bytes");
        let (least, most) = (texts.iter().map(String::len).min(), texts.iter().map(String::len).max());
        assert!(most.zip(least).is_some_and(|(most, least)| most - least <= 3 * texts.len()), "all about equally long");
    }
    let most = split(&sealed(MAX_WHOLE), ONE).expect("just fits");
    assert_eq!(most.len(), usize::from(MAX_FRAMES));
    assert!(most.iter().all(|text| version(text, EcLevel::L) <= 22));
    assert_eq!(split(&sealed(MAX_WHOLE + 1), ONE), Err(FrameFault::TooBig { most: MAX_WHOLE }));
}

#[test]
fn the_frames_of_version_1_never_change() {
    assert_eq!(VERSION, 1, "a new version needs a sample of its own beside the old one");
    assert_eq!(crc32fast::hash(FROZEN.as_bytes()), 0xD235_D4B6, "nobody has written the sample again");
    let written = split(&sealed(2000), ONE).expect("three frames");
    assert_eq!(FROZEN.lines().collect::<Vec<_>>(), written);
    let read = gather(FROZEN.lines().rev().map(|line| read(line).expect("a frame")));
    assert_eq!(read.whole(), Some(sealed(2000)));
}

/// A frozen card as codes, one a line. The bytes of cards and of their frames never change within a version.
#[test]
fn a_card_is_cut_as_it_always_was_and_comes_back() {
    let card = include_bytes!("frozen/card-3.bin");
    let texts = frames::split_card(card).expect("small enough");
    assert_eq!(texts.join("\n") + "\n", include_str!("frozen/card-frames-1.txt"));
    assert_eq!(frames::split_card(card).expect("the same"), texts, "however often");
    let mut read = texts.iter().rev().map(|text| frames::read_card(text).expect("a frame"));
    let mut gathered = Gathered::begin(read.next().expect("at least one"));
    read.try_for_each(|frame| gathered.take(frame)).expect("they fit together");
    assert_eq!(gathered.whole().as_deref(), Some(&card[..]));
}

#[test]
fn a_frame_of_a_card_is_none_of_a_summary_nor_the_other_way() {
    let card = frames::split_card(include_bytes!("frozen/card-3.bin")).expect("small enough").swap_remove(0);
    let summary = frames::split(b"sealed", Transfer([7; 8])).expect("small enough").swap_remove(0);
    assert_eq!(frames::read(&card), Err(FrameFault::NotAFrame));
    assert_eq!(frames::read_card(&summary), Err(FrameFault::NotAFrame));
    assert_eq!(frames::split_card(b"short"), Err(FrameFault::NotAFrame));
    let large = frames::split_card(&vec![0; frames::MAX_WHOLE + 1]);
    assert_eq!(large, Err(FrameFault::TooBig { most: frames::MAX_WHOLE }));
    for at in 0..card.len() {
        assert!(frames::read_card(&card[..at]).is_err(), "cut at {at}");
    }
    let texts = frames::card_texts(&[frames::read_card(&card).expect("a frame")]);
    assert_eq!(texts, [card]);
}
