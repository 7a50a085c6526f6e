//! Files that are not cards, or not for this patient: each is refused in one sentence, and nothing changes.

use crate::forge;
use crate::place::{DONE, ISSUED, Place, TAKEN, patient};
use exercises::catalogue::{ExerciseId, RungId};
use exercises::id::PlanId;
use exercises::plan::check::{Problem, problems};
use format::card::{self, Card};
use pictures::qr::Code;

/// Refused by the patient who follows the plan, and by a new installation, for which not even the folder is created.
#[track_caller]
fn refused(place: &Place, file: &str, says: &[&str]) {
    place.refused(&patient(&["accept", file]), says);
    place.refused(&["--home", "new", "--at", TAKEN, "patient", "accept", file], says);
    place.refused(&["--home", "new", "--at", TAKEN, "--json", "patient", "accept", file], &["\"refused\":", "\"advice\":"]);
}

#[test]
fn another_programs_code() {
    let place = Place::prepared();
    place.write("url.png", Code::of("https://example.org/menu?table=7").expect("fits").png(8));
    refused(&place, "url.png", &["This is not a Carryover plan card.", "your clinic gave you"]);
}

#[test]
fn a_picture_without_a_code_or_with_two() {
    let place = Place::prepared();
    let code = Code::of(&place.text("card/card.txt")).expect("fits");
    let side = code.outer_side() as u32 * 4;
    let blank = encode(&image::GrayImage::from_pixel(200, 200, image::Luma([250])));
    place.write("blank.png", blank);
    refused(&place, "blank.png", &["There is no readable code in this picture.", "or use the card's text"]);
    let one = image::load_from_memory(&code.png(4)).expect("our own").into_luma8();
    let mut two = image::GrayImage::from_pixel(side * 2, side, image::Luma([255]));
    image::imageops::replace(&mut two, &one, 0, 0);
    image::imageops::replace(&mut two, &one, i64::from(side), 0);
    place.write("two.png", encode(&two));
    let said = place.run(&patient(&["accept", "two.png"]));
    assert_eq!(said.code, Some(1), "twice the same card is this patient's known card, or one code too many: {said:?}");
}

fn encode(picture: &image::GrayImage) -> Vec<u8> {
    let mut bytes = std::io::Cursor::new(Vec::new());
    picture.write_to(&mut bytes, image::ImageFormat::Png).expect("to memory");
    bytes.into_inner()
}

#[test]
fn a_damaged_picture() {
    let place = Place::prepared();
    let picture = place.read("card/card.png");
    place.write("cut.png", &picture[..picture.len() / 3]);
    refused(&place, "cut.png", &["This file is neither a picture (PNG or JPEG) nor a card file."]);
    place.write("picture.gif", b"GIF89a\x01\x00\x01\x00\x80\xFF\xFF");
    refused(&place, "picture.gif", &["This is not a Carryover plan card."]);
}

#[test]
fn one_flipped_character() {
    let place = Place::prepared();
    let text = place.text("card/card.txt");
    for at in (16..text.trim_end().len()).step_by(61) {
        let mut flipped = text.clone().into_bytes();
        flipped[at] = if flipped[at] == b'7' { b'K' } else { b'7' };
        place.write("flipped.txt", flipped);
        place.refused(&patient(&["accept", "flipped.txt"]), &["The card is damaged", "Scan or copy it again"]);
    }
    place.write("flipped.txt", text.replacen("CARRYOVER", "CARRY0VER", 1));
    refused(&place, "flipped.txt", &["This is not a Carryover plan card."]);
}

#[test]
fn one_flipped_byte_of_the_card_file() {
    let place = Place::prepared();
    let card = place.read("card/card.bin");
    for at in (4..card.len()).step_by(37) {
        let mut flipped = card.clone();
        flipped[at] ^= 0x10;
        place.write("flipped.bin", flipped);
        place.refused(&patient(&["accept", "flipped.bin"]), &["The card is damaged"]);
    }
}

#[test]
fn a_card_that_is_cut_off() {
    let place = Place::prepared();
    let text = place.text("card/card.txt");
    for length in [5, 20, 100, text.trim_end().len() - 1] {
        place.write("cut.txt", &text[..length]);
        place.refused(
            &patient(&["accept", "cut.txt"]),
            &["The card is incomplete: part of it is missing.", "the whole card"],
        );
    }
    let bytes = place.read("card/card.bin");
    place.write("cut.bin", &bytes[..bytes.len() / 2]);
    refused(&place, "cut.bin", &["The card is incomplete: part of it is missing."]);
    place.write("empty", "");
    refused(&place, "empty", &["This is not a Carryover plan card."]);
}

#[test]
fn a_card_with_something_behind_it() {
    let place = Place::prepared();
    place.write("more.txt", format!("{}\nSee you in January!\n", place.text("card/card.txt")));
    refused(&place, "more.txt", &["The card is damaged"]);
}

#[test]
fn a_card_of_a_newer_version() {
    let place = Place::prepared();
    place.write("newer.bin", forge::of_version(&place, 5));
    refused(
        &place,
        "newer.bin",
        &["The card is version 5. This program reads cards up to version 4.", "Update the program"],
    );
    place.write("newer.txt", card::to_text(&forge::of_version(&place, 9)));
    refused(&place, "newer.txt", &["version 9"]);
}

#[test]
fn another_clinics_signature_on_a_plan_that_is_followed() {
    let place = Place::prepared();
    place.write("stranger.bin", forge::signed_by_another(&place, |card| card.plan.header.revision = 2));
    place.refused(
        &patient(&["accept", "stranger.bin"]),
        &["from another clinic, but that clinic did not sign it.", "Do not use this card."],
    );
    place.refused(&["--home", "done", "--at", DONE, "patient", "accept", "stranger.bin"], &["that clinic did not sign it."]);
}

#[test]
fn a_known_clinics_name_under_another_key_is_taken_only_if_it_is_confirmed() {
    let place = Place::prepared();
    let new_plan = |card: &mut Card| card.plan.header.id = PlanId([9; 8]);
    place.write("stranger.bin", forge::signed_by_another(&place, new_plan));
    let says = ["names Linden Lane Practice, but it was not signed with the key", "Ask your clinic", "add --yes"];
    place.refused(&patient(&["accept", "stranger.bin"]), &says);
    let named = |card: &mut Card| {
        new_plan(card);
        card.plan.header.clinic = "linden lane\u{200e} practice".into();
    };
    place.write("marked.bin", forge::signed_by_another(&place, named));
    place.refused(&patient(&["accept", "marked.bin"]), &["was not signed with the key"]);
    let other = |card: &mut Card| {
        new_plan(card);
        card.plan.header.clinic = "Elm House".into();
    };
    place.write("other.bin", forge::signed_by_another(&place, other));
    place.done(&patient(&["accept", "other.bin"]));
    place.done(&["--home", "done", "--at", DONE, "patient", "accept", "stranger.bin", "--yes"]);
}

#[test]
fn a_card_that_names_the_clinics_key_but_is_signed_by_nobody() {
    let place = Place::prepared();
    let mut card = forge::card(&place);
    card.plan.header.revision = 2;
    let payload = card::payload(&card).expect("a card");
    place.write("unsigned.bin", card::seal(&payload, &[0x5A; 64]));
    refused(&place, "unsigned.bin", &["The card is damaged"]);
}

#[test]
fn exercises_and_rungs_that_this_program_does_not_have() {
    let place = Place::prepared();
    let new_plan = PlanId([9; 8]);
    let unknown = forge::signed_by_another(&place, |card| {
        card.plan.header.id = new_plan;
        card.plan.prescription.items[0].exercise = ExerciseId::new("stork-on-a-ball").expect("an id");
    });
    place.write("exercise.bin", unknown);
    let says = [
        "The plan on this card cannot be used here.",
        "The exercise “stork-on-a-ball” is not in this program's catalogue.",
        "Update",
    ];
    refused(&place, "exercise.bin", &says);
    let rung = forge::signed_by_another(&place, |card| {
        card.plan.header.id = new_plan;
        card.plan.prescription.items[0].rung = Some(RungId::new("on-the-moon").expect("an id"));
    });
    place.write("rung.bin", rung);
    refused(&place, "rung.bin", &["The level “on-the-moon” is not in this program's catalogue."]);
    let edition = forge::signed_by_another(&place, |card| {
        card.plan.header.id = new_plan;
        card.plan.prescription.items[0].content += 1;
    });
    place.write("edition.bin", edition);
    refused(&place, "edition.bin", &["This program has a different version of the exercise “sit-tall-chin-back”."]);
}

#[test]
fn balance_that_the_rules_forbid_even_on_a_card_from_another_program() {
    let place = Place::prepared();
    let unscreened = forge::signed_by_another(&place, |card| {
        card.plan.header.id = PlanId([9; 8]);
        card.plan.prescription.absent.clear();
        card.plan.prescription.baselines[0].tenths = 31;
    });
    let catalogue = format::catalogue::embedded().expect("the shipped one");
    let read = card::open(&unscreened).expect("a card").into_card_after_checking_the_signature();
    assert!(problems(&read.plan, &catalogue).iter().any(|problem| matches!(problem, Problem::StanceTooShort(_))));
    place.write("unscreened.bin", unscreened);
    refused(
        &place,
        "unscreened.bin",
        &["the patient stands less than 5 seconds on one leg with eyes open", "Parkinson's disease"],
    );
}

#[test]
fn ten_megabytes_of_text() {
    let place = Place::prepared();
    place.write("big.txt", format!("CARRYOVER {}", "A".repeat(10_000_000)));
    refused(&place, "big.txt", &["This is too large to be a plan card."]);
    let file = std::fs::File::create(place.path("huge")).expect("the test owns it");
    file.set_len(1 << 30).expect("sparse");
    refused(&place, "huge", &["huge is larger than the limit of 20 MB."]);
}

#[test]
fn the_card_that_is_followed_already_and_an_older_one() {
    let place = Place::prepared();
    place.refused(
        &patient(&["accept", "card/card.png"]),
        &["This card has version 1 of the plan. You already have version 1."],
    );
    place.done(&[
        "--home",
        "clinic",
        "--at",
        ISSUED,
        "clinic",
        "--passphrase-file",
        "pw",
        "issue",
        "K17",
        "plan.toml",
        "--out",
        "two",
    ]);
    place.done(&patient(&["accept", "two/card.png"]));
    place.refused(
        &patient(&["accept", "card/card.png"]),
        &["version 1 of the plan. You already have version 2.", "You do not need to do anything."],
    );
}

#[test]
fn a_path_that_is_not_a_readable_file() {
    let place = Place::prepared();
    refused(&place, "nothing.png", &["There is no file nothing.png.", "Check the path."]);
    refused(&place, "card", &["Could not read card.", "the file or folder asked for"]);
}
