//! A clinic's own exercises from the file to the review, and the errors of files that are not exercises.

use crate::place::{DONE, Place, VISIT, clinic};
use format::catalogue::OWN_EXAMPLE;
use serde_json::Value;

const ITEM: &str = r#"
[[item]]
number = 4
exercise = "my-doorway-lean"
hold = { repetitions = 3, seconds = 20, rest = 20 }
at = ["12:00"]
days = "every-day"
"#;

/// A clinic that has the example exercise and, in `own-plan.toml`, a plan with it.
fn prepared() -> Place {
    let place = Place::prepared();
    place.write("mine.toml", place.done(&["example", "exercise"]));
    place.write("own-plan.toml", place.text("plan.toml") + ITEM);
    place
}

fn with_exercise() -> Place {
    let place = prepared();
    place.clinic(&["exercise", "add", "mine.toml"]);
    place
}

/// Changes the file, adds it, and expects this on the only line of stderr.
#[track_caller]
fn fault(place: &Place, from: &str, to: &str, says: &str) {
    assert!(OWN_EXAMPLE.contains(from), "the example has no {from:?}");
    place.write("wrong.toml", OWN_EXAMPLE.replacen(from, to, 1));
    for command in ["check", "add"] {
        let before = place.all();
        let said = place.run(&clinic(&["exercise", command, "wrong.toml"]));
        assert_eq!((said.code, said.out.as_str()), (Some(1), ""), "{said:?}");
        assert!(said.err.lines().count() == 1 && said.err.contains(says), "{says:?} is missing in {:?}", said.err);
        assert!(before == place.all(), "{command}: something changed");
    }
}

#[test]
fn an_own_exercise_goes_from_its_file_to_the_review_and_back_into_a_file() {
    let place = with_exercise();
    let listed = place.clinic(&["exercise", "list"]);
    assert_eq!(listed, "my-doorway-lean\t1\ten, es\toffered\t\n");
    let issue = ["issue", "K17", "own-plan.toml", "--out", "own-card"];
    let said = place.run(&clinic(&issue));
    assert_eq!(said.code, Some(0), "{said:?}");
    assert!(said.out.starts_with("own-card/card-1.png\nown-card/card-1.svg\nown-card/card-2.png\n"), "{said:?}");
    assert!(said.err.starts_with("This card does not fit into one code. The patient reads 3 codes in turn"), "{said:?}");
    let accept = ["--home", "done", "--at", "2026-11-27T09:30:00+01:00", "patient", "accept"];
    let one_missing = [&accept[..], &["own-card/card-3.png", "own-card/card-1.png"]].concat();
    place.refused(&one_missing, &["This card is shown as 3 codes, of which 2 are read. Still missing: 2."]);
    let taken = place.done(&[&one_missing[..], &["own-card/card-2.png"]].concat());
    assert!(taken.contains("4. Lean through a doorway: 3 holds of 20 seconds; every day, at 12:00"), "{taken}");
    let now = place.done(&["--home", "done", "--at", "2026-11-27T12:00:00+01:00", "patient", "now"]);
    assert!(now.contains("12:00 due now"), "{now}");
    let run = r#"{"do":"run","at":"2026-11-27T12:02:00+01:00","item":4,"held":[20,20,15]}"#;
    place.write("run.jsonl", run);
    let evening = ["--home", "done", "--at", "2026-11-27T20:00:00+01:00", "patient"];
    place.done(&[&evening[..], &["record", "run.jsonl"]].concat());
    place.done(&[&evening[..], &["summary", "--until", "2026-11-27", "--out", "own.age"]].concat());
    place.done(&[&evening[..], &["export", "--out", "mine"]].concat());
    assert!(place.text("mine/everything.json").contains("Lean through a doorway"), "the person's own data name it");
    assert!(place.clinic(&["receive", "own.age"]).starts_with("own.age: K17, "));
    let review = place.clinic(&["review", "K17"]);
    for line in ["Lean through a doorway", "Held 55 of 60 seconds, 92%."] {
        assert!(review.contains(line), "{line:?} is missing in\n{review}");
    }
    let json: Value = serde_json::from_str(&place.clinic(&["review", "K17", "--as", "json"])).expect("JSON");
    let done = json["adherence"].as_array().expect("a list").iter().find(|line| line["item"] == 4).expect("item 4").clone();
    assert_eq!((&done["in_part"], &done["in_force"]), (&Value::from(1), &Value::from(true)), "{done}");
    assert_eq!(place.clinic(&["exercise", "list"]), "my-doorway-lean\t1\ten, es\toffered\tK17\n");
    place.clinic(&["exercise", "export", "my-doorway-lean", "--out", "out.toml"]);
    let removed = place.clinic(&["exercise", "remove", "my-doorway-lean"]);
    assert!(removed.contains("It is kept because a card has it."), "{removed}");
    assert!(place.clinic(&["review", "K17"]) == review, "reviews are as they were");
    assert_eq!(place.clinic(&["exercise", "list"]), "my-doorway-lean\t1\ten, es\tremoved, kept for reviews\tK17\n");
    let again = place.clinic(&["exercise", "add", "out.toml"]);
    assert!(again.starts_with("out.toml: my-doorway-lean, revision 1, added. Its id is own-"), "{again}");
}

#[test]
fn what_it_says_is_shown_and_a_second_time_changes_nothing() {
    let place = with_exercise();
    let shown = place.clinic(&["exercise", "show", "my-doorway-lean"]);
    let (head, rest) = shown.split_once('\n').expect("several lines");
    assert!(head.starts_with("own-") && head.ends_with("-my-doorway-lean\t1\toffered"), "{head}");
    assert!(rest.contains("1. Lean forwards slowly until the front of the shoulders stretches.\n"), "{rest}");
    let id = head.split('\t').next().expect("an id");
    assert_eq!(place.clinic(&["exercise", "show", id]), shown, "by its id");
    let before = place.all();
    assert!(place.clinic(&["exercise", "add", "mine.toml"]).ends_with("is there already. Nothing was changed.\n"));
    assert_eq!(before.keys().collect::<Vec<_>>(), place.all().keys().collect::<Vec<_>>());
    place.refused(&clinic(&["exercise", "show", "other"]), &["You have no exercise of your own called other."]);
    place.refused(&clinic(&["exercise", "remove", "other"]), &["You have no exercise of your own called other."]);
}

#[test]
fn a_card_is_told_to_go_as_several_codes_before_it_is_issued() {
    let place = with_exercise();
    let before = place.all();
    let said = place.run(&clinic(&["issue", "K17", "own-plan.toml", "--check"]));
    assert_eq!((said.code, said.out.as_str()), (Some(0), "The card can be issued, as 3 codes.\n"), "{said:?}");
    assert!(said.err.contains("The patient reads 3 codes in turn, or you hand it over as a file or as text."), "{said:?}");
    let said = place.run(&clinic(&["--json", "issue", "K17", "own-plan.toml", "--check"]));
    assert!(said.err.starts_with("{\"note\":"), "{said:?}");
    assert_eq!(place.clinic(&["issue", "K17", "plan.toml", "--check"]), "The card can be issued, as a code.\n");
    assert_eq!(before.keys().collect::<Vec<_>>(), place.all().keys().collect::<Vec<_>>(), "nothing is issued");
    place.write("unknown.toml", place.text("own-plan.toml").replace("my-doorway-lean", "my-other"));
    place.refused(&clinic(&["issue", "K17", "unknown.toml", "--check"]), &["my-other"]);
}

#[test]
fn a_file_that_is_none_is_refused_in_one_sentence_with_its_line() {
    let place = with_exercise();
    fault(&place, "id = \"my-doorway-lean\"", "id = \"wall-sit\"", "line 7: id: “wall-sit” is an exercise of this program");
    fault(&place, "id = \"my-", "id = \"own-", "line 7: id: an id that begins with “own-” is given by the program");
    fault(
        &place,
        "id = \"my-",
        "id = \"my-very-long-",
        "line 7: id: the id of an exercise of your own has up to 21 characters",
    );
    fault(&place, "hold_s = 20", "hold_s = 25", "line 8: revision: this differs from revision 1");
    fault(&place, "equipment = [", "colour = 1\nequipment = [", "line 13: there is no field “colour” here");
    fault(&place, "elbow-near = 90", "elbow-near = 190", "elbow-near: a number from 0 to 150 is expected here");
    fault(&place, "id = \"long-step\"", "id = \"short-step\"", "short-step");
    fault(&place, "name = \"Lean", "name = \"\\u202ELean", "U+202E");
    fault(&place, "name = \"Lean", "name = \"\\u001B[2JLean", "U+001B");
}

#[test]
fn what_is_cut_foreign_or_huge_is_refused() {
    let place = with_exercise();
    place.write("cut.toml", &OWN_EXAMPLE[..700]);
    place.write("foreign.toml", place.read("card/card.png"));
    place.write("huge.toml", "#".repeat(10_000_000));
    for (file, says) in [("cut.toml", "cut.toml, line "), ("foreign.toml", "foreign.toml, line 1: ")] {
        let said = place.run(&clinic(&["exercise", "add", file]));
        assert_eq!((said.code, said.out.as_str()), (Some(1), ""), "{said:?}");
        assert!(said.err.contains(says), "{said:?}");
    }
    place.refused(&clinic(&["exercise", "add", "huge.toml"]), &["huge.toml", "64 kB"]);
    place.refused(&clinic(&["exercise", "add", "missing.toml"]), &["missing.toml"]);
    let said = place.run(&clinic(&["exercise", "add", "mine.toml", "cut.toml"]));
    assert_eq!((said.code, said.out.as_str()), (Some(1), ""), "all of them or none: {said:?}");
}

#[test]
fn texts_in_one_language_are_told_and_not_refused() {
    let place = prepared();
    let mut exercise = format::catalogue::read_own("x", OWN_EXAMPLE).expect("the example");
    exercise.texts.remove(&exercises::catalogue::Lang::Es);
    for rung in exercise.ladders.iter_mut().flat_map(|ladder| &mut ladder.rungs) {
        rung.texts.remove(&exercises::catalogue::Lang::Es);
    }
    place.write("english.toml", format::catalogue::write(&exercise));
    for command in ["check", "add"] {
        let said = place.run(&clinic(&["exercise", command, "english.toml"]));
        assert_eq!(said.code, Some(0), "{said:?}");
        assert!(said.err.starts_with("The texts of my-doorway-lean are in one language only, English"), "{said:?}");
    }
    assert_eq!(place.clinic(&["exercise", "list"]), "my-doorway-lean\t1\ten\toffered\t\n");
}

#[test]
fn markup_in_its_texts_stays_text() {
    let place = prepared();
    let name = "<b>Lean</b> [here](http://x.test)";
    place.write("mine.toml", OWN_EXAMPLE.replacen("Lean through a doorway", name, 1));
    place.clinic(&["exercise", "add", "mine.toml"]);
    assert!(place.clinic(&["exercise", "show", "my-doorway-lean"]).contains(name));
    let said = place.run(&clinic(&["issue", "K17", "own-plan.toml", "--out", "own-card"]));
    assert_eq!(said.code, Some(0), "{said:?}");
    let taken = place.done(&["--home", "patient", "--at", VISIT, "patient", "accept", "own-card/card.txt"]);
    assert!(taken.contains(&format!("4. {name}: ")), "{taken}");
}

#[test]
fn a_later_card_with_a_newer_revision_is_followed_from_then_on() {
    let place = with_exercise();
    place.run(&clinic(&["issue", "K17", "own-plan.toml", "--out", "one"]));
    place.write(
        "mine.toml",
        OWN_EXAMPLE.replace("revision = 1", "revision = 2").replace("Lean through a doorway", "Lean anew"),
    );
    place.clinic(&["exercise", "add", "mine.toml"]);
    assert_eq!(place.clinic(&["exercise", "list"]), "my-doorway-lean\t1, 2\ten, es\toffered\tK17\n");
    place.run(&clinic(&["issue", "K17", "own-plan.toml", "--out", "two"]));
    let accept = |card: &str, at: &str| place.done(&["--home", "patient", "--at", at, "patient", "accept", card]);
    assert!(accept("one/card.bin", VISIT).contains("4. Lean through a doorway: "));
    assert!(accept("two/card.bin", "2026-11-27T09:10:00+01:00").contains("4. Lean anew: "));
    place.refused(&["--home", "patient", "--at", "2026-11-27T09:20:00+01:00", "patient", "accept", "one/card.bin"], &["3"]);
}

#[test]
fn own_exercises_and_sets_are_in_the_backup_and_sealed() {
    let place = with_exercise();
    place.clinic(&["set", "save", "Desk work", "--from", "own-plan.toml"]);
    place.done(&["--home", "clinic", "--at", DONE, "backup", "--to", "saved.db"]);
    for file in ["clinic/carryover.db", "saved.db"] {
        let bytes = place.read(file);
        for secret in ["doorway", "Desk work", "Lean through"] {
            assert!(!bytes.windows(secret.len()).any(|part| part == secret.as_bytes()), "{secret} is readable in {file}");
        }
    }
    let restored = place.run(&["--home", "other", "--at", DONE, "restore", "saved.db"]);
    assert_eq!(restored.code, Some(0), "{restored:?}");
    let other = |rest: &[&str]| {
        place.done(&[&["--home", "other", "--at", VISIT, "clinic", "--passphrase-file", "pw"][..], rest].concat())
    };
    assert_eq!(other(&["exercise", "list"]), place.clinic(&["exercise", "list"]));
    assert_eq!(other(&["set", "list"]), "Desk work: 4 items\n");
}

#[test]
fn a_set_is_saved_listed_exported_as_a_plan_file_and_removed() {
    let place = with_exercise();
    assert_eq!(place.clinic(&["set", "save", "desk", "--from", "own-plan.toml"]), "Set desk saved.\n");
    assert_eq!(place.clinic(&["set", "list"]), "desk: 4 items\n");
    assert_eq!(place.clinic(&["set", "export", "desk", "--out", "desk.toml"]), "desk.toml\n");
    let text = place.text("desk.toml");
    assert!(text.contains("exercise = \"my-doorway-lean\"") && !text.contains("ankle gives way"), "{text}");
    assert_eq!(place.clinic(&["set", "save", "again", "--from", "desk.toml"]), "Set again saved.\n");
    assert_eq!(place.clinic(&["set", "list"]), "again: 4 items\ndesk: 4 items\n");
    place.clinic(&["set", "remove", "again"]);
    place.refused(&clinic(&["set", "remove", "again"]), &["You have no set called again."]);
    place.refused(&clinic(&["set", "save", "x", "--from", "runs.jsonl"]), &["runs.jsonl, line 4"]);
    place.write("unknown.toml", place.text("own-plan.toml").replace("my-doorway-lean", "my-other"));
    place.refused(&clinic(&["set", "save", "x", "--from", "unknown.toml"]), &["my-other"]);
}

/// How large cards are, as DEVELOPERS.md says.
#[test]
fn cards_of_six_items_are_as_large_as_is_documented() {
    let place = with_exercise();
    let bridge =
        format::catalogue::embedded().expect("sound").exercises.into_iter().find(|one| one.id.as_str() == "hip-bridge");
    let id = exercises::catalogue::ExerciseId::new("my-bridge").expect("an id");
    place.write("second.toml", format::catalogue::write(&exercises::catalogue::Exercise { id, ..bridge.expect("shipped") }));
    place.clinic(&["exercise", "add", "second.toml"]);
    let item = |n: usize, exercise: &str| ITEM.replace("= 4", &format!("= {n}")).replace("my-doorway-lean", exercise);
    let stock = |from| (from..=6).map(|n| item(n, "wall-sit")).collect::<String>();
    let own = [String::new(), item(4, "my-doorway-lean"), item(4, "my-doorway-lean") + &item(5, "my-bridge")];
    let sizes = own.iter().zip(4..).map(|(own, next)| {
        place.write("six.toml", place.text("plan.toml") + own + &stock(next));
        let said = place.run(&clinic(&["--json", "issue", "K17", "six.toml", "--out", "six"]));
        assert_eq!(said.code, Some(0), "{said:?}");
        let card: Value = serde_json::from_str(&said.out).expect("JSON");
        (place.read("six/card.bin").len(), card["version"].as_u64(), card["codes"].as_u64())
    });
    let sizes: Vec<(usize, Option<u64>, Option<u64>)> = sizes.collect();
    println!("{sizes:?}");
    assert!(sizes[0].1.is_some_and(|version| version <= 22), "one code: {sizes:?}");
    let several = |(_, version, codes): &(usize, Option<u64>, Option<u64>)| version.is_none() && *codes > Some(1);
    assert!(sizes[1..].iter().all(several), "several: {sizes:?}");
    assert!(sizes[1].0 < 1_700 && sizes[2].0 < 3_400, "{sizes:?}");
}
