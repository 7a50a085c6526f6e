//! Files that are not summaries for this clinic: each is refused in one sentence, and nothing changes.

use crate::forge;
use crate::place::{Place, clinic};
use exercises::id::LogId;
use format::summary::MAX_SEALED;
use miniz_oxide::deflate::compress_to_vec;

#[track_caller]
fn refused(place: &Place, file: &str, says: &[&str]) {
    let said = format!("{file}: ");
    place.refused(&clinic(&["receive", file]), &[&[said.as_str()], says].concat());
}

/// A refusal whose text already contains the file's name, so that it must not be added in front.
#[track_caller]
fn refused_by_name(place: &Place, file: &str, says: &str) {
    let said = place.run(&clinic(&["receive", file]));
    assert!(said.err.starts_with(says) && said.err.matches(file).count() == 1, "{said:?}");
    place.refused(&clinic(&["receive", file]), &[says]);
}

#[test]
fn one_flipped_byte_anywhere() {
    let place = Place::prepared();
    let sealed = place.read("summary.age");
    // The vault's own tests flip every byte; here a sample from each part goes through the whole program.
    let places: Vec<usize> = [0, 10, 21].into_iter().chain((22..sealed.len()).step_by(23)).collect();
    let names: Vec<String> = places.iter().map(|at| format!("flipped-{at}.age")).collect();
    for (name, at) in names.iter().zip(&places) {
        let mut flipped = sealed.clone();
        flipped[*at] ^= 1;
        place.write(name, flipped);
    }
    let before = place.all();
    let files: Vec<&str> = names.iter().map(String::as_str).collect();
    let said = place.run(&clinic(&[&["receive"][..], &files].concat()));
    let counts = format!("New: 0 · known already: 0 · refused: {}\n", files.len());
    assert_eq!((said.code, said.out.as_str()), (Some(1), counts.as_str()), "{said:?}");
    assert_eq!(said.err.lines().count(), files.len());
    for (line, name) in said.err.lines().zip(&names) {
        let known =
            ["is not an encrypted Carryover summary.", "is damaged or incomplete.", "is encrypted for another clinic."];
        assert!(line.starts_with(name.as_str()) && known.iter().any(|fault| line.contains(fault)), "{line}");
    }
    assert!(before == place.all(), "not a byte of the clinic's folder");
}

#[test]
fn a_summary_that_is_truncated_or_has_extra_bytes() {
    let place = Place::prepared();
    let sealed = place.read("summary.age");
    for length in [5, 100, sealed.len() / 2, sealed.len() - 1] {
        place.write("cut.age", &sealed[..length]);
        refused(&place, "cut.age", &["The summary is damaged or incomplete.", "save it again"]);
    }
    place.write("long.age", [sealed.as_slice(), b"more"].concat());
    refused(&place, "long.age", &["The summary is damaged or incomplete."]);
}

#[test]
fn a_file_that_is_not_a_summary_is_refused() {
    let place = Place::prepared();
    for (name, bytes) in [("empty", &b""[..]), ("list.txt", b"a shopping list"), ("picture", b"\x89PNG\r\n\x1a\n")] {
        place.write(name, bytes);
        refused(
            &place,
            name,
            &["This is not an encrypted Carryover summary.", "Ask the patient for the file that Carryover saved."],
        );
    }
    refused(&place, "card/card.bin", &["This is a plan card, not a summary.", "The card is for the patient to scan."]);
    place.write("letter.age", forge::sealed(&place, b"a shopping list, sealed"));
    refused(&place, "letter.age", &["This is not an encrypted Carryover summary."]);
}

#[test]
fn a_summary_for_another_clinic() {
    let place = Place::prepared();
    place.done(&["--home", "elm", "clinic", "--passphrase-file", "pw", "start", "--name", "Elm Row"]);
    let receive = ["--home", "elm", "clinic", "--passphrase-file", "pw", "receive", "summary.age"];
    place.refused(&receive, &["summary.age: The summary is encrypted for another clinic."]);
}

#[test]
fn a_summary_of_a_plan_that_this_clinic_does_not_have() {
    let place = Place::prepared();
    let mut other = forge::card(&place);
    other.plan.header.id = exercises::id::PlanId([3; 8]);
    let letter = forge::letter(&other, 1, compress_to_vec(&[0xA0], 6));
    place.write("unknown.age", forge::sealed(&place, &letter.to_bytes()));
    refused(
        &place,
        "unknown.age",
        &["a plan that is not in this clinic's data", "the data folder in which the card was issued"],
    );
}

#[test]
fn a_summary_by_somebody_who_never_held_the_card() {
    let place = Place::prepared();
    let mut letter = forge::letter(&forge::card(&place), 1, compress_to_vec(&[0xA0], 6));
    letter.tag = [1; 32];
    place.write("forged.age", forge::sealed(&place, &letter.to_bytes()));
    refused(&place, "forged.age", &["does not come from a device that has the plan card.", "Do not use it"]);
}

#[test]
fn a_summary_of_a_newer_version() {
    let place = Place::prepared();
    let mut letter = forge::letter(&forge::card(&place), 1, Vec::new()).to_bytes();
    letter[4] = 3;
    place.write("newer.age", forge::sealed(&place, &letter));
    refused(
        &place,
        "newer.age",
        &["The summary is version 3. This program reads summaries up to version 2.", "Update the program"],
    );
}

#[test]
fn a_file_of_a_gigabyte_is_refused() {
    let place = Place::prepared();
    let file = std::fs::File::create(place.path("huge.age")).expect("the test owns it");
    file.set_len(1 << 30).expect("sparse");
    refused_by_name(&place, "huge.age", "huge.age is larger than the limit of 4 MB. Choose the right file.");
    refused_by_name(&place, "missing.age", "There is no file missing.age. Check the path.");
    place.write("big.age", vec![b'x'; MAX_SEALED]);
    refused(&place, "big.age", &["This is not an encrypted Carryover summary."]);
}

/// Both decompression bombs are correctly sealed, the second one with the tag of somebody who has the card.
#[test]
fn a_small_file_that_unpacks_to_a_quarter_of_a_gigabyte() {
    let place = Place::prepared();
    let bomb = compress_to_vec(&vec![0; 1 << 28], 6);
    assert!(bomb.len() < MAX_SEALED / 4, "{} bytes are no size to take offence at", bomb.len());
    let mut letter = forge::letter(&forge::card(&place), 1, bomb);
    place.write("bomb.age", forge::sealed(&place, &letter.to_bytes()));
    refused_by_name(&place, "bomb.age", "bomb.age is larger than the limit of 8 MB. Choose the right file.");
    letter.body.log = LogId([8; 8]);
    place.write("tagless.age", forge::sealed(&place, &letter.to_bytes()));
    refused(&place, "tagless.age", &["does not come from a device that has the plan card."]);
}

#[test]
fn contents_that_are_not_a_summary() {
    let place = Place::prepared();
    let card = forge::card(&place);
    for packed in [vec![0xFF; 40], compress_to_vec(b"\xA0", 6), Vec::new()] {
        place.write("odd.age", forge::sealed(&place, &forge::letter(&card, 1, packed).to_bytes()));
        refused(&place, "odd.age", &["The summary is damaged or incomplete."]);
    }
}
