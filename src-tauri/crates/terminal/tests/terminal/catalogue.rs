//! Exercise files with a fault: the message names file, line, and what is expected there.

use crate::place::{Place, ProgramOutput};
use std::fs;
use std::path::Path;

fn shipped(name: &str) -> String {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../exercises/catalogue");
    fs::read_to_string(folder.join(name)).expect("shipped")
}

/// Puts the language files of a shipped exercise next to `own/NAME.toml`.
fn with_texts(place: &Place, exercise: &str, name: &str) {
    for lang in ["en", "es"] {
        place.write(&format!("own/{name}.{lang}.ftl"), shipped(&format!("{exercise}.{lang}.ftl")));
    }
}

/// The shipped exercise with one change is refused at that line, with this message.
#[track_caller]
fn refused(place: &Place, from: &str, to: &str, says: &str) {
    let text = shipped("sit-tall-chin-back.toml");
    let at = text.find(from).unwrap_or_else(|| panic!("{from:?} is in the file"));
    let line = 1 + text[..at].matches('\n').count();
    place.write("own/own.toml", text.replacen(from, to, 1));
    with_texts(place, "sit-tall-chin-back", "own");
    let before = place.all();
    let said = place.run(&["catalogue", "check", "own"]);
    assert_eq!((said.code, said.out.as_str()), (Some(1), ""), "{to:?}: {said:?}");
    let named = format!("own/own.toml, line {line}: ");
    let found = said.err.lines().any(|fault| fault.starts_with(&named) && fault.contains(says));
    assert!(found, "{named}…{says} is missing for {to:?} in\n{}", said.err);
    assert!(before == place.all());
}

fn with_own() -> Place {
    let place = Place::empty();
    fs::create_dir(place.path("own")).expect("the test owns it");
    place
}

#[test]
fn every_kind_of_fault_by_file_and_line() {
    let place = with_own();
    refused(
        &place,
        "region = \"neck-upper-back\"",
        "regoin = \"neck-upper-back\"",
        "there is no field “regoin” here; allowed: id, ",
    );
    refused(&place, "hold_s = 10", "hold_s = -10", "hold_s: a number from 1 to 120 is expected here");
    refused(&place, "repetitions = 3", "repetitions = 10000", "repetitions: a number from 1 to 50 is expected here");
    refused(&place, "{ trunk = -1, back = 14", "{ tronk = -1, back = 14", "no field “tronk” here; allowed: trunk, ");
    refused(&place, "kind = \"hold\"", "kind = \"hover\"", "kind: “hover” is not allowed here; allowed: hold, ");
    refused(&place, "revision = 2", "revision = \"one\"", "a whole number is expected here, but this is text");
    refused(&place, "back = 14", "back = 999", "back: a number from -50 to 60 is expected here");
    refused(&place, "id = \"wall\"", "id = \"The Wall\"", "an identifier has lower-case letters");
    refused(&place, "hold_s = 10", "hold_s = ", "this is not valid TOML");
}

#[test]
fn in_the_persons_language() {
    let place = with_own();
    let text = shipped("sit-tall-chin-back.toml").replacen("plumb = true", "plumb = 1", 1);
    place.write("own/own.toml", text.replacen("kind = \"hold\"", "kind = \"hover\"", 1));
    with_texts(&place, "sit-tall-chin-back", "own");
    let spanish = shipped("sit-tall-chin-back.es.ftl");
    let name = spanish.lines().find(|line| line.starts_with("name = ")).expect("in the file");
    place.write("own/own.es.ftl", spanish.replacen(name, &format!("name = {}", "n".repeat(41)), 1));
    let mut command = place.command(&["catalogue", "check", "own"]);
    let said = ProgramOutput::of(command.env("LC_ALL", "es_ES.UTF-8").output().expect("the binary starts"));
    assert_eq!((said.code, said.out.as_str()), (Some(1), ""), "{said:?}");
    let plumb = 1 + text[..text.find("plumb = 1").expect("replaced")].matches('\n').count();
    let lines: Vec<&str> = said.err.lines().collect();
    assert_eq!(
        lines,
        [
            "own/own.toml, línea 6: kind: aquí no se permite «hover»; se permite: hold, balance, reps, stretch, move, go, breath, care, prompt, limit, count, beat, quota, quota-times.",
            &format!("own/own.toml, línea {plumb}: plumb: aquí se espera true o false, pero hay un número entero."),
            "own/own.es.ftl, línea 3: name: aquí se espera un texto de 1 a 40 caracteres, pero este tiene 41.",
        ]
    );
}

#[test]
fn a_missing_field_is_named_with_its_table() {
    let place = with_own();
    let text = shipped("sit-tall-chin-back.toml");
    place.write("own/own.toml", text.replacen("hold_s = 10\n", "", 1));
    with_texts(&place, "sit-tall-chin-back", "own");
    let said = place.run(&["catalogue", "check", "own"]);
    let dose = 1 + text[..text.find("[dose]").expect("a dose")].matches('\n').count();
    assert_eq!(said.code, Some(1));
    assert_eq!(said.err, format!("own/own.toml, line {dose}: the field “hold_s” is missing.\n"));
    let said = place.run(&["--json", "catalogue", "check", "own"]);
    let fault: serde_json::Value = serde_json::from_str(said.err.trim_end()).expect("an object");
    assert!(fault["fault"].as_str().is_some_and(|fault| fault.contains("hold_s")), "{fault}");
    let facts = &fault["refused"]["NotUnderstood"]["fault"];
    assert_eq!(facts["kind"], serde_json::json!({ "MissingField": { "field": "hold_s" } }), "{fault}");
}

#[test]
fn all_faults_of_all_files_at_once_and_the_good_files_too() {
    let place = with_own();
    place.write("own/good.toml", shipped("heel-raise.toml"));
    with_texts(&place, "heel-raise", "good");
    with_texts(&place, "sit-tall-chin-back", "bad");
    let text = shipped("sit-tall-chin-back.toml");
    place.write("own/bad.toml", text.replacen("hold_s = 10", "hold_s = -1", 1).replacen("rest_s = 10", "rest_s = 1.5", 1));
    place.write("own/notes.txt", "not an exercise, and not looked at");
    let said = place.run(&["catalogue", "check", "own"]);
    assert_eq!(said.code, Some(1));
    assert!(said.out.starts_with("heel-raise (edition 2): "), "{said:?}");
    let faults: Vec<&str> = said.err.lines().collect();
    assert_eq!(faults.len(), 2, "{said:?}");
    assert!(faults.iter().all(|fault| fault.starts_with("own/bad.toml, line ")), "{said:?}");
}

#[test]
fn files_that_are_not_text_or_too_large() {
    let place = with_own();
    let mut broken = shipped("heel-raise.toml").into_bytes();
    broken[30] = 0xFF;
    place.write("own/broken.toml", &broken);
    let said = place.run(&["catalogue", "check", "own"]);
    let line = 1 + broken[..30].iter().filter(|byte| **byte == b'\n').count();
    assert_eq!((said.code, said.err), (Some(1), format!("own/broken.toml, line {line}: UTF-8 text is expected here.\n")));
    place.write("own/broken.toml", format!("{}# {}", shipped("heel-raise.toml"), "x".repeat(70_000)));
    let said = place.run(&["catalogue", "check", "own"]);
    assert!(said.code == Some(1) && said.err.contains("the file is larger than the limit of 64 kB"), "{said:?}");
}

#[test]
fn one_exercise_in_two_files() {
    let place = with_own();
    place.write("own/a.toml", shipped("heel-raise.toml"));
    place.write("own/b.toml", shipped("heel-raise.toml"));
    with_texts(&place, "heel-raise", "a");
    with_texts(&place, "heel-raise", "b");
    let said = place.run(&["catalogue", "check", "own"]);
    assert_eq!(said.code, Some(1));
    assert_eq!(said.err, "Could not understand own/b.toml: another file in this folder has the same id, “heel-raise”.\n");
}

#[test]
fn language_files_are_read_beside_their_exercise_file() {
    let place = with_own();
    place.write("own/calf.toml", shipped("heel-raise.toml"));
    let said = place.run(&["catalogue", "check", "own"]);
    let missing = |lang| {
        format!("own/calf.toml, line 1: text: the texts in “{lang}” are missing; every exercise needs texts in: en, es.\n")
    };
    assert_eq!((said.code, said.err), (Some(1), missing("en") + &missing("es")));
    with_texts(&place, "heel-raise", "calf");
    assert!(place.done(&["catalogue", "check", "own"]).starts_with("heel-raise (edition 2): Heel raise."));
    let text = shipped("heel-raise.es.ftl");
    let line = 1 + text[..text.find("step-2 =").expect("a second step")].matches('\n').count();
    place.write("own/calf.es.ftl", text.replacen("step-2 =", "stop-2 =", 1));
    let said = place.run(&["catalogue", "check", "own"]);
    assert!(said.code == Some(1) && said.out.is_empty(), "{said:?}");
    assert!(
        said.err.contains(&format!("own/calf.es.ftl, line {}: step-3: “step-2” is missing before it", line + 1)),
        "{said:?}"
    );
    place.write("own/calf.es.ftl", b"name = \xFF");
    let said = place.run(&["catalogue", "check", "own"]);
    assert_eq!((said.code, said.err), (Some(1), "own/calf.es.ftl, line 1: UTF-8 text is expected here.\n".to_owned()));
}

#[test]
fn a_language_file_without_an_exercise_file() {
    let place = with_own();
    place.write("own/good.toml", shipped("heel-raise.toml"));
    with_texts(&place, "heel-raise", "good");
    place.write("own/gone.es.ftl", shipped("heel-raise.es.ftl"));
    place.write("own/good.xx.ftl", shipped("heel-raise.es.ftl"));
    let said = place.run(&["catalogue", "check", "own"]);
    assert!(said.code == Some(1) && said.out.starts_with("heel-raise (edition 2): "), "{said:?}");
    let faults: Vec<&str> = said.err.lines().collect();
    let name = "a language file has the name of its exercise file with another ending in place of .toml: .en.ftl, .es.ftl.";
    assert_eq!(
        faults,
        [
            "own/gone.es.ftl, line 1: it belongs to own/gone.toml, which is not in this folder.",
            &format!("own/good.xx.ftl, line 1: {name}"),
        ]
    );
}

#[test]
fn a_folder_without_exercises_is_a_failure() {
    let place = with_own();
    place.refused(&["catalogue", "check", "own"], &["own", "there is no exercise file in it; their names end in .toml."]);
    place.refused(&["catalogue", "check", "nowhere"], &["There is no file nowhere."]);
    place.write("file", "x");
    place.refused(&["catalogue", "check", "file"], &["Could not read file.", "the file or folder asked for"]);
}

#[test]
fn what_ships_is_without_fault() {
    let place = Place::empty();
    let said = place.done(&["catalogue", "check"]);
    assert_eq!(said.lines().count(), format::catalogue::FILES.len());
    assert!(said.contains("one-leg-stand (edition 2): Stand on one leg. Levels: "), "{said}");
}

/// The ids that are found.
fn found(place: &Place, asked: &[&str]) -> Vec<String> {
    let said = place.done(&[&["--json", "catalogue", "find"], asked].concat());
    let id = |line: &str| {
        let line: serde_json::Value = serde_json::from_str(line).expect("an object");
        line["exercise"].as_str().expect("an id").to_owned()
    };
    said.lines().map(id).collect()
}

#[test]
fn exercises_are_found_by_words_with_mistakes_and_by_what_they_are() {
    let place = Place::empty();
    assert_eq!(found(&place, &["hael", "rais"])[0], "heel-raise");
    let has = |asked: &[&str], id: &str| found(&place, asked).iter().any(|one| one == id);
    assert!(has(&["sentadilla"], "wall-sit"), "by its name in the other language");
    assert_eq!(found(&place, &["xylophone"]), [""; 0]);
    assert!(has(&["--region", "hip"], "side-lying-leg-lift") && !has(&["--region", "hip"], "heel-raise"));
    let on_a_mat = ["--region", "hip", "--at-hand", "mat"];
    assert!(has(&on_a_mat, "hip-bridge") && !has(&on_a_mat, "side-lying-leg-lift"), "which needs a pillow as well");
    let with_nothing = ["--at-hand", "nothing"];
    assert!(has(&with_nothing, "neck-side-press") && !has(&with_nothing, "hip-bridge"));
    let careful = found(&place, &["--kind", "balance"]);
    assert_eq!(careful.len(), 3);
    assert_eq!(found(&place, &["--kind", "balance", "--unflagged", "pregnancy,osteoporosis"]), [""; 0]);
    assert!(found(&place, &["--purpose", "strength", "--posture", "lying"]).contains(&"hip-bridge".to_owned()));
    let said = place.run(&["catalogue", "find", "--region", "tail"]);
    assert_eq!(said.code, Some(2), "{said:?}");
    assert!(said.err.contains("neck-upper-back"), "the regions are named: {}", said.err);
}
