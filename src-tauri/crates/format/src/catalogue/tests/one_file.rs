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

#[test]
fn a_language_that_is_missing_is_named() {
    let sample = own();
    let without = sample.toml.split("[text.es]").next().expect("a first part");
    let found: Vec<_> = sample.read(without).expect_err("Spanish is missing").into_iter().map(|f| f.kind).collect();
    assert_eq!(found, [FaultKind::MissingLanguage { lang: Lang::Es }]);
    let found = faults(&Sample::one_file("one-leg-stand"), "text.es = { name = \"Cojín, ojos abiertos\"", "# { name = \"\"");
    let expected = "ladder 1, rung 3, text: not written in \"es\"; every exercise is written in \"en\" and \"es\"";
    assert!(found[0].contains(expected), "{found:?}");
}

#[test]
fn an_exercise_without_any_texts_lacks_every_language() {
    let found = read("mine.toml", &whole().toml, &[]).expect_err("no texts");
    let found: Vec<_> = found.iter().map(ToString::to_string).collect();
    let lacks = |lang: &str| {
        format!("mine.toml, line 1: text: not written in \"{lang}\"; every exercise is written in \"en\" and \"es\"")
    };
    assert_eq!(found, [lacks("en"), lacks("es")]);
}

#[test]
fn texts_inside_and_language_files_beside_are_one_too_many() {
    let both = Sample { beside: whole().beside, ..own() };
    let found = both.read(&both.toml).expect_err("texts twice");
    assert!(found.iter().all(|fault| fault.kind == FaultKind::TextsTwice && fault.file == "mine.toml"), "{found:?}");
    let fields: Vec<&str> = found.iter().map(|fault| fault.field.as_str()).collect();
    assert_eq!(fields, ["ladder 1, rung 1, text", "ladder 1, rung 2, text", "ladder 1, rung 3, text", "text"]);
    let whole_texts = both.toml.lines().position(|line| line == "[text.en]").expect("in the sample") + 1;
    assert_eq!(
        found[3].to_string(),
        format!(
            "mine.toml, line {whole_texts}: text: texts stand here and in the language files beside this file; keep them in one place"
        )
    );
}

#[test]
fn both_languages_say_equally_much() {
    let sample = own();
    let spanish = sample.toml.find("[text.es]").expect("in the sample");
    let steps = spanish + sample.toml[spanish..].find("steps = [\n").expect("in the sample") + "steps = [\n".len();
    let first_step = sample.toml[steps..].lines().next().expect("a step");
    let found = faults(&sample, &format!("{first_step}\n"), "");
    assert_eq!(found.len(), 1);
    assert!(
        found[0].ends_with("text, es, steps: 4 lines here, but 5 in the first language; both say the same"),
        "{found:?}"
    );
}

#[test]
fn a_text_over_its_limit_an_empty_one_and_one_that_cannot_be_shown_are_refused() {
    let name = |text: &str| faults(&own(), "name = \"Sit tall, chin back\"", &format!("name = \"{text}\""));
    assert!(name(&"n".repeat(41))[0].ends_with("text, en, name: name of 41 characters; allowed are 1 to 40 characters"));
    assert!(name("  ")[0].ends_with("name of 0 characters; allowed are 1 to 40 characters"));
    assert!(name("two\\nlines")[0].contains("the character U+000A cannot be shown"));
    assert!(name("\u{FFFD}")[0].contains("the character U+FFFD cannot be shown"), "bytes that are no text");
    assert!(name("turned \\u202E round")[0].contains("the character U+202E cannot be shown"));
    let found = faults(&own(), "purpose = \"", &format!("purpose = \"{}", "p".repeat(280)));
    assert!(found[0].contains("allowed are 1 to 280 characters"), "{found:?}");
}

#[test]
fn a_list_has_neither_no_lines_nor_too_many() {
    let steps = |lines: usize| {
        let list = format!("steps = [{}]\nwas = [", "\"s\",".repeat(lines));
        faults(&own(), "steps = [", &list).join("\n")
    };
    assert!(steps(0).contains("steps of 0; allowed are 1 to 8"));
    assert!(steps(9).contains("steps of 9; allowed are 1 to 8"));
}
