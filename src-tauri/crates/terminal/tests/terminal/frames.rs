//! A summary shown as codes and photographed: written as pictures, read by an independent reader, received in any order.

use crate::place::{DONE, Place, clinic, program};
use format::frames::{Gathered, read};
use image::{GrayImage, Luma, imageops};

/// A command of the patient whose runs are recorded.
fn done<'a>(arguments: &[&'a str]) -> Vec<&'a str> {
    [&["--home", "done", "--at", DONE, "patient", "summary", "--until", "2026-11-26"][..], arguments].concat()
}

/// A place with the summary of the example in `frames` (at least two of them) and, from the same sealing, in `same.age`. A note
/// without repetition makes it long enough.
fn shown() -> (Place, Vec<String>) {
    let place = Place::prepared();
    place.done(&done(&["--note", &note(280), "--frames", "frames", "--out", "same.age"]));
    let names = names(&place, "frames");
    assert!(names.len() >= 2, "{names:?}");
    (place, names)
}

fn note(length: usize) -> String {
    (1_u32..)
        .scan(7_u32, |state, _| {
            *state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            char::from_u32(0x4E00 + (*state >> 16) % 0x5000)
        })
        .take(length)
        .collect()
}

fn names(place: &Place, folder: &str) -> Vec<String> {
    let files = std::fs::read_dir(place.path(folder)).expect("the folder");
    let mut names: Vec<String> =
        files.map(|file| format!("{folder}/{}", file.expect("a file").file_name().to_string_lossy())).collect();
    names.sort();
    names
}

fn receive<'a>(names: impl IntoIterator<Item = &'a String>) -> Vec<&'a str> {
    clinic(&[&["receive"][..], &names.into_iter().map(String::as_str).collect::<Vec<_>>()].concat())
}

#[test]
fn another_reader_reads_the_frames_and_joined_they_are_the_sealed_file() {
    let (place, names) = shown();
    assert_eq!(names[0], "frames/frame-01.png");
    let mut gathered: Option<Gathered> = None;
    for name in names.iter().rev() {
        let path = place.path(name);
        let options = ["--quiet", "--raw", "-Sdisable", "-Sqrcode.enable"].map(AsRef::as_ref);
        let text = String::from_utf8(program("zbarimg", &[&options[..], &[path.as_ref()]].concat())).expect("text");
        let frame = read(text.trim_end_matches('\n')).expect("a frame");
        match &mut gathered {
            Some(gathered) => gathered.take(frame).expect("of one sealing"),
            None => gathered = Some(Gathered::begin(frame)),
        }
    }
    assert_eq!(gathered.and_then(|all| all.whole()), Some(place.read("same.age")));
}

#[test]
fn pictures_in_any_order_are_received_like_the_file() {
    let (place, names) = shown();
    let said = place.done(&receive(names.iter().rev().chain([&names[0]])));
    let of: Vec<&str> = names.iter().rev().map(String::as_str).collect();
    assert_eq!(said, format!("{}: K17, 2 new days.\n", of.join(", ")));
    assert_eq!(place.clinic(&["receive", "same.age"]), "same.age: K17, nothing new. Nothing was changed.\n");
    assert!(place.clinic(&["review", "K17"]).contains("Record from 25 November to 26 November."));
}

#[test]
fn missing_frames_are_named_and_nothing_is_stored_in_part() {
    let (place, names) = shown();
    let count = names.len();
    let says = format!("{} of {count} codes were read. Missing: 1.", count - 1);
    place.refused(&receive(&names[1..]), &[&says, "receive all of them together"]);
}

#[test]
fn files_foreign_pictures_and_frames_of_two_sealings_are_distinguished() {
    let (place, names) = shown();
    place.done(&done(&["--note", &note(200), "--frames", "second"]));
    let second = self::names(&place, "second");
    let card = "card/card.png".to_owned();
    let file = "summary.age".to_owned();
    let mixed = [&second[0], &names[1], &card, &file, &names[0]].into_iter().chain(&names[2..]);
    let said = place.run(&receive(mixed));
    assert_eq!(said.code, Some(1), "{said:?}");
    assert_eq!(said.out.lines().count(), 3, "the file, the whole sealing, and how many of each: {said:?}");
    assert!(said.out.contains("summary.age: K17, ") && said.out.contains("frame-02.png, frames/frame-01.png"), "{said:?}");
    let refused: Vec<&str> = said.err.lines().collect();
    assert_eq!(refused.len(), 2, "{said:?}");
    let lone = format!("second/frame-01.png: 1 of {} codes were read. Missing: 2", second.len());
    assert!(refused[0].starts_with("card/card.png: This is a plan card, not a summary"), "{said:?}");
    assert!(refused[1].starts_with(&lone), "once all pictures were read: {said:?}");
}

#[test]
fn one_photo_of_all_frames_is_enough() {
    let (place, names) = shown();
    let pictures: Vec<GrayImage> =
        names.iter().map(|name| image::open(place.path(name)).expect("a picture").into_luma8()).collect();
    let width = pictures.iter().map(GrayImage::width).sum();
    let height = pictures.iter().map(GrayImage::height).max().expect("some");
    let mut desk = GrayImage::from_pixel(width, height + 40, Luma([235]));
    let mut left = 0;
    for picture in &pictures {
        imageops::replace(&mut desk, picture, left, 20);
        left += i64::from(picture.width());
    }
    desk.save(place.path("photo.jpg")).expect("saved");
    assert_eq!(place.clinic(&["receive", "photo.jpg"]), "photo.jpg: K17, 2 new days.\n");
}

#[test]
fn a_sealing_counts_once_whatever_it_is_written_to() {
    let (place, _) = shown();
    place.done(&done(&["--out", "next.age"]));
    let counters = |place: &Place| {
        place.done(&["--home", "done", "--at", DONE, "patient", "export", "--out", "mine"]);
        let whole: serde_json::Value = serde_json::from_slice(&place.read("mine/everything.json")).expect("JSON");
        let sealed = whole["entries"].as_array().expect("a list").iter().filter(|one| one["what"] == "summary_sealed");
        sealed.map(|one| one["counter"].as_u64().expect("a number")).collect::<Vec<_>>()
    };
    assert_eq!(counters(&place), [1, 2, 3], "one in the prepared folder, one shown, one more");
}

#[test]
fn a_folder_that_holds_something_takes_no_frames_and_no_number() {
    let place = Place::prepared();
    place.refused(&done(&["--frames", "card"]), &["The folder card is not empty."]);
    place.refused(&done(&["--frames", "new", "--out", "nowhere/one.age"]), &["Could not write nowhere/one.age."]);
    assert_eq!(place.run(&done(&[])).code, Some(2), "neither file nor frames");
}

#[test]
fn pictures_that_are_no_frames_are_refused() {
    let place = Place::prepared();
    GrayImage::from_pixel(300, 200, Luma([200])).save(place.path("wall.png")).expect("saved");
    place.refused(&clinic(&["receive", "wall.png"]), &["wall.png: There is no readable summary code in this picture."]);
    let forged = pictures::qr::Code::of("CARRYOVER-SUMMARY W50KB0*M0DY0O01").expect("short");
    place.write("spoilt.png", forged.png(6));
    place.refused(
        &clinic(&["receive", "spoilt.png"]),
        &["spoilt.png: A code of this summary is damaged, or does not belong with the others."],
    );
}
