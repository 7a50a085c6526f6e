//! An exercise as a single file with its texts in the TOML, the form in which clinics hand over their own exercises.
use super::*;

fn own() -> Sample {
    Sample::one_file("sit-tall-chin-back")
}

#[test]
fn every_exercise_reads_the_same_as_one_file() {
    for exercise in embedded().expect("tested above").exercises {
        let sample = Sample::one_file(exercise.id.as_str());
        assert_eq!(sample.read(&sample.toml), Ok(exercise));
    }
}

fn lacks(lang: Lang) -> FaultKind {
    FaultKind::Exercise(ExerciseFault::MissingLanguage { lang })
}

#[test]
fn a_language_that_is_missing_is_named() {
    let sample = own();
    let without = sample.toml.split("[text.es]").next().expect("a first part");
    assert_eq!(kinds(sample.read(without).expect_err("Spanish is missing")), [lacks(Lang::Es)]);
    let of_rung = "text.es = { name = \"Cojín, ojos abiertos\"";
    let found = faults(&Sample::one_file("one-leg-stand"), of_rung, "# { name = \"\"");
    assert_eq!((found[0].field.as_str(), &found[0].kind), ("", &lacks(Lang::Es)), "{found:?}");
}

#[test]
fn an_exercise_without_any_texts_lacks_every_language() {
    let found = read("mine.toml", &whole().toml, &[]).expect_err("no texts");
    assert!(found.iter().all(|fault| fault.fault.line == 1 && fault.fault.field == "text"), "{found:?}");
    assert_eq!(kinds(found), [lacks(Lang::En), lacks(Lang::Es)]);
}

#[test]
fn texts_inside_and_language_files_beside_are_one_too_many() {
    let both = Sample { beside: whole().beside, ..own() };
    let found = both.read(&both.toml).expect_err("texts twice");
    assert!(found.iter().all(|fault| fault.fault.field == "text" && fault.file == "mine.toml"), "{found:?}");
    let whole_texts = both.toml.lines().position(|line| line == "[text.en]").expect("in the sample") + 1;
    assert_eq!(found[3].fault.line as usize, whole_texts);
    let twice = || FaultKind::Exercise(ExerciseFault::TextsTwice);
    assert_eq!(kinds(found), [twice(), twice(), twice(), twice()], "each level and the exercise itself");
}

#[test]
fn both_languages_say_equally_much() {
    let sample = own();
    let spanish = sample.toml.find("[text.es]").expect("in the sample");
    let steps = spanish + sample.toml[spanish..].find("steps = [\n").expect("in the sample") + "steps = [\n".len();
    let line = sample.toml[..steps].matches('\n').count() as u32;
    let first_step = sample.toml[steps..].lines().next().expect("a step");
    let differ = FaultKind::Exercise(ExerciseFault::ListsDiffer { here: 4, first: 5 });
    fault(&sample, &format!("{first_step}\n"), "", line, "steps", differ);
}

#[test]
fn a_text_over_its_limit_an_empty_one_and_one_that_cannot_be_shown_are_refused() {
    let name = |text: &str, kind: FaultKind| {
        let from = "name = \"Sit tall, chin back\"";
        fault_there(&own(), from, &format!("name = \"{text}\""), "name", kind);
    };
    let length = |found| FaultKind::TextLength { least: 1, most: 40, found };
    let unprintable = |character| FaultKind::Exercise(ExerciseFault::Unprintable { character });
    name(&"n".repeat(41), length(41));
    name("  ", length(0));
    name("two\\nlines", unprintable('\n'));
    name("\u{FFFD}", unprintable('\u{FFFD}'));
    name("turned \\u202E round", unprintable('\u{202E}'));
    let found = faults(&own(), "purpose = \"", &format!("purpose = \"{}", "p".repeat(280)));
    assert!(matches!(found[0].kind, FaultKind::TextLength { least: 1, most: 280, .. }), "{found:?}");
}

#[test]
fn a_list_has_neither_no_lines_nor_too_many() {
    for found in [0, 9] {
        let list = format!("\nsteps = [{}]\nwas = [", "\"s\",".repeat(found));
        let kinds: Vec<FaultKind> = faults(&own(), "\nsteps = [", &list).into_iter().map(|fault| fault.kind).collect();
        let length = FaultKind::ListLength { least: 1, most: 8, found: found as i64 };
        assert!(kinds.contains(&length), "{kinds:?}");
    }
}
