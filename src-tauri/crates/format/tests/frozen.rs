//! Samples of every version. They were written once and never change, because cards on paper and sent files must remain
//! readable.

mod support;

use exercises::draft::{Draft, Kept, TypedField, UsedNumbers};
use exercises::id::ItemId;
use exercises::plan::{BodySide, Plan};
use format::card::{self, VERSION as CARD_VERSION};
use format::draft;
use format::summary::{self, Letter, VERSION as SUMMARY_VERSION};

const CARD: &[u8] = include_bytes!("frozen/card-1.bin");
const CARD_TEXT: &str = include_str!("frozen/card-1.txt");
const CARD_WITH_DAYS: &[u8] = include_bytes!("frozen/card-1-days.bin");
const LETTER: &[u8] = include_bytes!("frozen/summary-1.letter");
const CARD_2: &[u8] = include_bytes!("frozen/card-2.bin");
const CARD_3: &[u8] = include_bytes!("frozen/card-3.bin");
const CARD_4: &[u8] = include_bytes!("frozen/card-4.bin");
const CARD_4_PHASES: &[u8] = include_bytes!("frozen/card-4-phases.bin");
const CARD_4_LOADS: &[u8] = include_bytes!("frozen/card-4-loads.bin");
const DRAFT: &[u8] = include_bytes!("frozen/draft-1.bin");
const LETTER_2: &[u8] = include_bytes!("frozen/summary-2.letter");

#[test]
fn the_samples_have_not_been_rewritten() {
    let sums = [
        CARD,
        CARD_TEXT.as_bytes(),
        CARD_WITH_DAYS,
        LETTER,
        CARD_2,
        LETTER_2,
        CARD_3,
        CARD_4,
        CARD_4_PHASES,
        CARD_4_LOADS,
        DRAFT,
    ]
    .map(crc32fast::hash);
    assert_eq!(
        sums,
        [
            0xEB3C_76F6,
            0x1C23_BD16,
            0x66DF_6DB4,
            0x45B7_889E,
            0xA08D_0777,
            0xCB43_1997,
            0x34E4_EC20,
            0x9943_BD53,
            0x9621_BF76,
            0xC120_4074,
            0x261A_6A35
        ],
        "{sums:x?}"
    );
}

#[test]
fn there_is_a_sample_of_the_newest_version() {
    assert_eq!((CARD_VERSION, SUMMARY_VERSION), (4, 2), "a new version needs a sample of its own beside the old ones");
}

#[test]
fn the_card_of_version_1_is_read_correctly() {
    assert_eq!(card::from_text(CARD_TEXT).as_deref(), Ok(CARD), "both forms carry the same bytes");
    let read = card::open(CARD).expect("well formed");
    let expected = support::frozen_card(read.claimed_key(), read.claimed_recipient());
    assert_eq!(read.into_card_after_checking_the_signature(), expected);
}

/// The key for the days of stance times was added later.
#[test]
fn the_card_with_days_is_read_correctly() {
    let read = card::open(CARD_WITH_DAYS).expect("well formed");
    let expected = support::frozen_card_with_days(read.claimed_key(), read.claimed_recipient());
    assert_eq!(read.into_card_after_checking_the_signature(), expected);
}

#[test]
fn the_summary_of_version_1_is_read_correctly() {
    let letter = Letter::parse(LETTER).expect("a letter");
    assert_eq!(summary::read(&letter.body), Ok(support::frozen_summary()));
}

#[test]
fn the_card_of_version_2_is_read_correctly() {
    let read = card::open(CARD_2).expect("well formed");
    let expected = support::frozen_card_2(read.claimed_key(), read.claimed_recipient());
    assert_eq!(read.into_card_after_checking_the_signature(), expected);
}

#[test]
fn the_card_of_version_3_is_read_correctly() {
    let read = card::open(CARD_3).expect("well formed");
    let former = read.claimed_former().to_vec();
    assert_eq!(former.len(), 1);
    let expected = support::frozen_card_3(read.claimed_key(), read.claimed_recipient(), former);
    assert_eq!(read.into_card_after_checking_the_signature(), expected);
}

#[test]
fn the_card_of_version_4_is_read_correctly() {
    let read = card::open(CARD_4).expect("well formed");
    assert_eq!((CARD_4[4], read.claimed_former().len()), (4, 0), "with or without former keys");
    let expected = support::frozen_card_4(read.claimed_key(), read.claimed_recipient());
    assert_eq!(read.into_card_after_checking_the_signature(), expected);
}

/// What version 4 has besides: items as needed, and phases.
#[test]
fn the_card_with_phases_is_read_correctly() {
    let read = card::open(CARD_4_PHASES).expect("well formed");
    let expected = support::frozen_card_4_phases(read.claimed_key(), read.claimed_recipient());
    assert_eq!(read.into_card_after_checking_the_signature(), expected);
}

/// And loads, beside a former key.
#[test]
fn the_card_with_loads_is_read_correctly() {
    let read = card::open(CARD_4_LOADS).expect("well formed");
    let former = read.claimed_former().to_vec();
    assert_eq!((CARD_4_LOADS[4], former.len()), (4, 1));
    let expected = support::frozen_card_4_loads(read.claimed_key(), read.claimed_recipient(), former);
    assert_eq!(read.into_card_after_checking_the_signature(), expected);
}

#[test]
fn the_summary_of_version_2_is_read_correctly() {
    let letter = Letter::parse(LETTER_2).expect("a letter");
    assert_eq!(summary::read(&letter.body), Ok(support::frozen_summary_2()));
}

/// What an early program kept of an unfinished plan, with the practice's name and the plan's dates, which drafts have no more.
#[test]
fn the_draft_of_an_early_program_is_read_correctly() {
    let Plan { header, prescription } = support::frozen_card([0; 32], [0; 32]).plan;
    let typed = [
        TypedField::Times(ItemId(2)),
        TypedField::Stance(BodySide::Left),
        TypedField::Stance(BodySide::Right),
        TypedField::Visit,
    ];
    let day = header.issued;
    let used = UsedNumbers { items: 7, complaints: 2, activities: 0 };
    let expected = Kept {
        draft: Draft { prescription, today: day, used },
        replaces: Some(2),
        unread: typed.into_iter().map(|field| (field, "8am 7pn".to_owned())).collect(),
        on: day,
    };
    assert_eq!(draft::read(DRAFT), Ok(expected));
}
