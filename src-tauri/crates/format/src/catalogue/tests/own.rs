//! A clinic's own exercise as a single file: what [`write()`] writes, in one language or in several, and what is refused.
use super::*;

/// A shipped exercise as a clinic would hand over its own, under the id `mine`.
fn file(id: &str) -> String {
    let exercise = embedded().expect("tested above").exercises.into_iter().find(|one| one.id.as_str() == id);
    write(&Exercise { id: ExerciseId::new("mine").expect("an id"), ..exercise.expect("shipped") })
}

/// The file with the texts in Spanish alone.
fn in_spanish() -> String {
    let mut exercise = read_own("mine.toml", &file("one-leg-stand")).expect("a good file");
    exercise.texts.remove(&Lang::En);
    exercise.ladders.iter_mut().flat_map(|ladder| &mut ladder.rungs).for_each(|rung| drop(rung.texts.remove(&Lang::En)));
    write(&exercise)
}

#[track_caller]
fn refused(text: &str, from: &str, to: &str) -> Vec<FaultKind> {
    assert!(text.contains(from), "the file has no {from:?}");
    let faults = read_own("mine.toml", &text.replacen(from, to, 1)).expect_err("this must be refused");
    assert!(faults.iter().all(|fault| fault.file == "mine.toml" && fault.fault.line > 0), "{faults:?}");
    kinds(faults)
}

#[test]
fn every_exercise_is_written_so_that_it_reads_the_same() {
    for exercise in embedded().expect("tested above").exercises {
        let text = write(&exercise);
        assert_eq!(read_on_card(&text), Ok(exercise.clone()), "{text}");
        assert_eq!(write(&read_on_card(&text).expect("read above")), text, "written once, it stays");
    }
}

#[test]
fn a_level_without_the_arrows_of_its_exercise_stays_without() {
    let text = file("heel-raise");
    let mut exercise = read_own("mine.toml", &text).expect("a good file");
    let rung = &mut exercise.ladders[0].rungs[2];
    rung.figure.as_mut().expect("it has one").arrows.clear();
    assert_eq!(read_own("mine.toml", &write(&exercise)), Ok(exercise));
}

#[test]
fn one_language_is_enough_if_all_of_it_is_in_it() {
    let exercise = read_own("mine.toml", &in_spanish()).expect("a good file");
    assert_eq!(exercise.texts.keys().collect::<Vec<_>>(), [&Lang::Es]);
    assert_eq!(exercise.text(Lang::En), exercise.text(Lang::Es), "who reads English sees the Spanish text");
    assert!(read("mine.toml", &in_spanish(), &[]).is_err(), "of a shipped exercise every language is asked for");
    let lacks = FaultKind::Exercise(ExerciseFault::MissingLanguage { lang: Lang::Es });
    assert_eq!(
        refused(&in_spanish(), "[ladder.rung.text.es]", "[ladder.rung.text.en]")[..2],
        [FaultKind::UnknownField { found: "en".into(), allowed: vec!["es".into()] }, lacks]
    );
}

#[test]
fn a_file_without_texts_lacks_them() {
    let text = file("wall-sit");
    let without = text.split("\n[text.en]").next().expect("a first part");
    assert!(kinds(read_own("mine.toml", without).expect_err("no texts")).contains(&missing("text")));
    let lacks = |lang| FaultKind::Exercise(ExerciseFault::MissingLanguage { lang });
    let empty = format!("{without}\n[text]\n");
    let found = kinds(read_own("mine.toml", &empty).expect_err("no texts"));
    assert!(found.contains(&lacks(Lang::En)) && found.contains(&lacks(Lang::Es)), "{found:?}");
}

#[test]
fn its_name_is_not_the_programs_and_leaves_room_for_the_clinics_mark() {
    let text = file("wall-sit");
    let (reserved, form) = (FaultKind::Exercise(ExerciseFault::ReservedId), FaultKind::Id(IdFault::NotKebabCase));
    let long = FaultKind::Exercise(ExerciseFault::OwnIdTooLong { most: 21 });
    let shipped = FaultKind::Exercise(ExerciseFault::ShippedId { id: "wall-sit".into() });
    let id = "id = \"mine\"";
    assert_eq!(refused(&text, id, "id = \"wall-sit\""), [shipped]);
    assert_eq!(refused(&text, id, "id = \"own-abcdef-wall-sit\""), [reserved]);
    assert_eq!(refused(&text, id, &format!("id = \"{}\"", "x".repeat(22))), [long]);
    assert_eq!(refused(&text, id, "id = \"Wall sit\""), [form]);
    assert_eq!(refused(&text, id, "id = 5").len(), 1, "said once");
    let shipped = embedded().expect("tested above").exercises;
    assert!(shipped.iter().all(|exercise| !exercise.id.is_reserved()), "no shipped exercise begins so");
}

#[test]
fn what_acts_instead_of_being_seen_is_refused_also_where_it_is_written_as_an_escape() {
    let text = file("wall-sit");
    for (written, character) in
        [("\\u001B[2J", '\u{1b}'), ("\\u202E", '\u{202e}'), ("\\u061C", '\u{61c}'), ("\\u200F", '\u{200f}')]
    {
        let kind = FaultKind::Exercise(ExerciseFault::Unprintable { character });
        assert_eq!(refused(&text, "name = \"", &format!("name = \"{written}")), [kind], "{written}");
    }
}

#[test]
fn markup_is_text_like_any_other() {
    let name = "<b>a</b> [x](http://x) &amp;";
    let text = file("wall-sit").replacen("name = \"Wall sit\"", &format!("name = \"{name}\""), 1);
    let read = read_own("mine.toml", &text).expect("a good file");
    assert_eq!(read.text(Lang::En).map(|texts| texts.name.as_str()), Some(name));
}

#[test]
fn joints_outside_anatomy_levels_that_come_twice_and_unknown_keys_are_named_with_their_line() {
    let text = file("heel-raise");
    assert_eq!(refused(&text, "elbow-near = 66", "elbow-near = 166"), [FaultKind::NumberRange { least: 0, most: 150 }]);
    let twice = || twice("both-hands");
    assert!(
        refused(&text, "id = \"no-hands\"", "id = \"both-hands\"").contains(&twice()),
        "a level cannot lead back to itself"
    );
    let found = refused(&text, "revision = ", "level = \"both-hands\"\nrevision = ");
    assert!(matches!(&found[..], [FaultKind::UnknownField { found, .. }] if found == "level"), "{found:?}");
}

#[test]
fn ten_megabytes_are_refused_by_their_length_and_what_is_cut_is_refused() {
    let found = kinds(read_own("mine.toml", &"#".repeat(10_000_000)).expect_err("too large"));
    assert_eq!(found, [FaultKind::TooLarge { bytes: 10_000_000, most: MAX_BYTES as u64 }]);
    let text = in_spanish();
    let last = text.trim_end().len();
    for at in (0..last).step_by(11).filter(|at| text.is_char_boundary(*at)) {
        assert!(read_own("mine.toml", &text[..at]).is_err(), "cut at {at}");
    }
}

#[test]
fn the_example_is_a_good_exercise_that_is_written_as_a_file_that_says_the_same() {
    let example = read_own("mine.toml", OWN_EXAMPLE).expect("a good file");
    assert_eq!(read_own("mine.toml", &write(&example)), Ok(example));
}
