//! Receiving a folder: what is in it and below it, what is refused, and how many of each.

use crate::place::{BINARY, Place, ProgramOutput, clinic, surroundings};
use serde_json::{Value, json};
use std::fs;
use std::process::Command;

/// A folder with a summary, the same below it, a file that is none, and one that is left alone.
fn brought(place: &Place) {
    fs::create_dir_all(place.path("brought/monday")).expect("a folder");
    let summary = place.read("summary.age");
    place.write("brought/one.age", &summary);
    place.write("brought/monday/again.age", &summary);
    place.write("brought/none.age", "no summary");
    place.write("brought/list.txt", "bread");
}

#[test]
fn a_folder_is_received_with_what_is_below_it_and_ends_with_counts() {
    let place = Place::prepared();
    brought(&place);
    let said = place.run(&clinic(&["receive", "brought"]));
    let lines: Vec<&str> = said.out.lines().collect();
    let taken = ["brought/one.age: K17, 2 new days.", "brought/monday/again.age: K17, nothing new. Nothing was changed."];
    assert_eq!(
        (said.code, &lines[..2], lines[2]),
        (Some(1), &taken[..], "New: 1 · known already: 1 · refused: 1"),
        "{said:?}"
    );
    let faults: Vec<&str> = said.err.lines().collect();
    assert!(faults[0].starts_with("brought/none.age: ") && faults[1].starts_with("1 other file"), "{said:?}");
    assert_eq!((lines.len(), faults.len()), (3, 2), "no line says how far it is where nobody looks: {said:?}");

    fs::remove_file(place.path("brought/none.age")).expect("there");
    let said = place.run(&clinic(&["receive", "brought", "summary.age"]));
    assert_eq!((said.code, said.out.lines().last()), (Some(0), Some("New: 0 · known already: 3 · refused: 0")), "{said:?}");
}

/// On a terminal, which is here one of `script`, each file counts as soon as it is read: all of them may be read before one is taken in.
#[test]
fn who_looks_at_a_terminal_sees_how_many_files_were_read() {
    let place = Place::prepared();
    brought(&place);
    let line = [&[BINARY][..], &clinic(&["receive", "brought"])].concat().join(" ");
    let mut script = Command::new("script");
    script.args(["--quiet", "--return", "--command", &line, "/dev/null"]).current_dir(place.path(""));
    surroundings(&mut script, &place.path(""));
    let said = ProgramOutput::of(script.output().expect("these tests need util-linux"));
    let seen: Vec<&str> = said.out.split(['\r', '\n']).map(|part| part.trim_end_matches("\x1b[K")).collect();
    let seen: Vec<&str> = seen.into_iter().filter(|part| part.contains("of 3")).collect();
    let each = ["0 of 3 · read: 1", "0 of 3 · read: 2", "0 of 3 · read: 3", "3 of 3"];
    assert_eq!((said.code, &seen[..]), (Some(1), &each[..]), "{said:?}");
}

#[test]
fn for_programs_the_counts_are_an_object() {
    let place = Place::prepared();
    brought(&place);
    let said = place.run(&[&["--json"][..], &clinic(&["receive", "brought"])].concat());
    let last: Value = serde_json::from_str(said.out.lines().last().expect("lines")).expect("JSON");
    assert_eq!(
        last,
        json!({ "counts": { "new": 1, "known": 1, "refused": 1 }, "passed_over": 1, "untouched": 0 }),
        "{said:?}"
    );
    assert!(said.err.lines().all(|line| serde_json::from_str::<Value>(line).is_ok()), "{said:?}");
}

#[test]
fn an_empty_folder_holds_nothing() {
    let place = Place::prepared();
    fs::create_dir(place.path("empty")).expect("a folder");
    assert_eq!(place.clinic(&["receive", "empty"]), "New: 0 · known already: 0 · refused: 0\n");
    place.refused(&clinic(&["receive", "gone.age"]), &["gone.age"]);
}
