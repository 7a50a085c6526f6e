//! Language files next to an exercise file: what is read from them, and every fault with its file and line.
use super::*;
use proptest::prelude::*;

/// The shipped exercise with its Spanish file changed by `change`.
fn changed(change: impl Fn(&str) -> String) -> Result<Exercise, Vec<Fault>> {
    let Sample { toml, beside } = whole();
    let spanish = change(beside[1].text);
    read("mine.toml", &toml, &[beside[0], TextFile { lang: Lang::Es, name: "mine.es.ftl", text: &spanish }])
}

/// Like [`changed`], with `from` replaced by `to`; returns the faults as the terminal prints them.
#[track_caller]
fn spoiled(from: &str, to: &str) -> Vec<String> {
    let text = whole().beside[1].text;
    assert!(text.contains(from), "the sample has no {from:?}");
    let faults = changed(|text| text.replacen(from, to, 1)).expect_err("this must be refused");
    faults.iter().map(ToString::to_string).collect()
}

/// The line of the sample that begins with `message`, including its line end, and its number.
#[track_caller]
fn line_of(message: &str) -> (String, usize) {
    let mut lines = whole().beside[1].text.lines().zip(1..);
    let (line, number) = lines.find(|(line, _)| line.starts_with(&format!("{message} ="))).expect("in the sample");
    (format!("{line}\n"), number)
}

/// Checks that the sample with that message's line replaced by `to` has exactly one fault, `expected`, at that line.
#[track_caller]
fn one_fault(message: &str, to: &str, expected: &str) {
    let (line, number) = line_of(message);
    assert_eq!(spoiled(&line, to), [format!("mine.es.ftl, line {number}: {expected}")]);
}

/// The shipped exercise's Spanish name, written as `value` in the file.
fn name_of(value: &str) -> String {
    let (line, _) = line_of("name");
    let exercise = changed(|text| text.replacen(&line, &format!("name = {value}\n"), 1));
    exercise.expect("a good name").texts[&Lang::Es].name.clone()
}

#[test]
fn what_a_file_says_arrives_in_the_exercise() {
    let exercise = changed(|_| {
        let lists = ["step", "mistake", "careful", "stop"].map(|stem| {
            let lines = if stem == "step" {
                5
            } else if stem == "careful" {
                2
            } else {
                3
            };
            (1..=lines).map(|n| format!("{stem}-{n} = {stem} {n}\n")).collect::<String>()
        });
        let levels =
            ["wall", "chair", "standing"].map(|id| format!("level-{id}-name = N {id}\nlevel-{id}-change = C {id}\n"));
        let single = "name = A\npurpose = B\nset-up = C\nshould-feel = D\nshould-not-feel = E\n";
        format!("{}{single}{}", levels.concat(), lists.concat())
    });
    let exercise = exercise.expect("a good file");
    let texts = &exercise.texts[&Lang::Es];
    let single = [&texts.name, &texts.purpose, &texts.set_up, &texts.should_feel, &texts.should_not_feel];
    assert_eq!(single, ["A", "B", "C", "D", "E"]);
    assert_eq!(texts.steps, ["step 1", "step 2", "step 3", "step 4", "step 5"]);
    assert_eq!(texts.mistakes, ["mistake 1", "mistake 2", "mistake 3"]);
    assert_eq!(texts.cautions, ["careful 1", "careful 2"]);
    assert_eq!(texts.stop_signs, ["stop 1", "stop 2", "stop 3"]);
    let rungs = exercise.ladders.iter().flat_map(|ladder| &ladder.rungs).map(|rung| &rung.texts[&Lang::Es]);
    let rungs: Vec<_> = rungs.map(|texts| format!("{}, {}", texts.name, texts.change)).collect();
    assert_eq!(rungs, ["N wall, C wall", "N chair, C chair", "N standing, C standing"]);
}

#[test]
fn a_text_may_go_on_over_several_lines_and_quote_what_fluent_reads_otherwise() {
    assert_eq!(name_of("Espalda\n    recta"), "Espalda recta");
    assert_eq!(name_of("\n    Espalda\n    recta,\n    barbilla"), "Espalda recta, barbilla");
    assert_eq!(name_of("Espalda\r\n    recta"), "Espalda recta", "lines that end as on another system");
    assert_eq!(name_of("Llaves { \"{\" }y{\"}\"}"), "Llaves {y}");
    assert_eq!(name_of("{\"\\\"Recta\\\"\"}"), "\"Recta\"");
    assert_eq!(name_of("{\"\\u00D1\"}u"), "Ñu");
    let comment = changed(|text| format!("# a {{ comment\n{text}"));
    assert!(comment.is_ok(), "comments may hold anything: {comment:?}");
    assert!(changed(|text| text.replace('\n', "\r\n")).is_ok());
}

#[test]
fn an_unknown_message_is_named_with_those_allowed() {
    let (line, number) = line_of("purpose");
    let expected = "no such message; allowed here: name, purpose, set-up, step-N, should-feel, should-not-feel, mistake-N, \
                    careful-N, stop-N, level-RUNG-name, level-RUNG-change, with N from 1 and the id of a rung for RUNG";
    for id in ["aim", "step-0", "step-01", "step-x", "step", "set_up", "level-wall", "step-99999999999"] {
        let found = spoiled(&line, &format!("{line}{id} = x\n"));
        assert_eq!(found, [format!("mine.es.ftl, line {}: {id}: {expected}", number + 1)]);
    }
}

#[test]
fn a_message_that_is_missing_is_named() {
    for message in ["name", "purpose", "set-up", "should-feel", "should-not-feel", "level-chair-name", "level-wall-change"] {
        let found = spoiled(&line_of(message).0, "");
        assert_eq!(found, [format!("mine.es.ftl, line 1: {message}: this message is missing")]);
    }
    let none = changed(|_| String::new()).expect_err("an empty file has no messages");
    let missing = |id: &str| none.iter().any(|fault| fault.field == id && fault.kind == FaultKind::MissingMessage);
    assert!(["step-1", "mistake-1", "careful-1", "stop-1"].into_iter().all(missing), "{none:?}");
}

#[test]
fn the_same_message_twice_is_named_where_it_comes_again() {
    let (line, number) = line_of("purpose");
    let found = spoiled(&line, &line.repeat(2));
    assert_eq!(found, [format!("mine.es.ftl, line {}: purpose: \"purpose\" stands twice; once is enough", number + 1)]);
}

#[test]
fn a_list_is_numbered_without_a_gap_and_ends_at_its_bound() {
    let (_, third) = line_of("step-3");
    let found = spoiled(&line_of("step-2").0, "");
    let expected = "step-3: \"step-2\" is missing before it; a list is numbered from 1 without a gap";
    assert_eq!(found, [format!("mine.es.ftl, line {}: {expected}", third - 1)]);
    let (line, number) = line_of("step-5");
    let more: String = (6..=9).map(|n| format!("step-{n} = Otro.\n")).collect();
    let found = spoiled(&line, &(line.clone() + &more));
    assert_eq!(found, [format!("mine.es.ftl, line {}: step-9: steps of 9; allowed are 1 to 8", number + 4)]);
    let in_any_order = changed(|text| text.replacen(&line, "", 1) + &line).expect("the order of a file says nothing");
    assert_eq!(Ok(in_any_order), whole().read(&whole().toml));
}

#[test]
fn both_languages_say_equally_much() {
    let (_, last) = line_of("stop-2");
    let expected = "stop-2: 2 lines here, but 3 in the first language; both say the same";
    assert_eq!(spoiled(&line_of("stop-3").0, ""), [format!("mine.es.ftl, line {last}: {expected}")]);
}

#[test]
fn a_text_keeps_to_the_same_bounds_as_in_toml() {
    one_fault(
        "name",
        &format!("name = {}\n", "n".repeat(41)),
        "name: name of 41 characters; allowed are 1 to 40 characters",
    );
    one_fault("name", "name = {\"  \"}\n", "name: name of 0 characters; allowed are 1 to 40 characters");
    let long = format!("step-2 = {}\n", "p".repeat(281));
    one_fault("step-2", &long, "step-2: text of 281 characters; allowed are 1 to 280 characters");
    let level = format!("level-chair-name = {}\n", "n".repeat(41));
    one_fault("level-chair-name", &level, "level-chair-name: name of 41 characters; allowed are 1 to 40 characters");
    let unseen = "name: the character U+202E cannot be shown; plain text on one line belongs here";
    one_fault("name", "name = {\"\\u202E\"}x\n", unseen);
}

#[test]
fn a_level_belongs_to_a_rung_of_the_exercise() {
    let (line, number) = line_of("level-wall-name");
    let expected = "level-sofa-name: the exercise has no rung \"sofa\"; its rungs are wall, chair, standing";
    let found = spoiled(&line, &format!("{line}level-sofa-name = En el sofá\n"));
    assert_eq!(found, [format!("mine.es.ftl, line {}: {expected}", number + 1)]);
    let found = faults(&whole(), "id = \"wall\"", "id = \"The Wall\"");
    assert_eq!(found.len(), 1, "while the rungs are not known, their texts are not too many: {found:?}");
}

#[test]
fn a_message_is_plain_text() {
    let other = "a placeable other than text in quotes stands here; plain text belongs here";
    let placed = ["{ $name }", "{ set-up }", "{ -brand }", "{ 3 }", "{ NUMBER($n) }", "{ {\"x\"} }", "{\n    \"x\" }"];
    for value in placed.into_iter().chain(["{ $n ->\n    [one] x\n   *[other] y\n }"]) {
        one_fault("name", &format!("name = Espalda {value}\n"), other);
    }
    let (line, number) = line_of("name");
    let found = spoiled(&line, &format!("{line}    .short = Espalda\n"));
    let attribute = "name, short: an attribute stands here; plain text belongs here";
    assert_eq!(found, [format!("mine.es.ftl, line {}: {attribute}", number + 1)]);
    let found = spoiled(&line, &format!("-brand = x\n{line}"));
    assert_eq!(found, [format!("mine.es.ftl, line {number}: -brand: a term stands here; a message belongs here")]);
}

#[test]
fn what_is_not_fluent_names_its_line() {
    for junk in ["just words\n", "name =\n", "name = { \"x\n", "name = x }\n", "1st = x\n"] {
        let (line, number) = line_of("name");
        let found = spoiled(&line, junk);
        assert_eq!(found.len(), 1, "{junk:?}: {found:?}");
        assert!(found[0].starts_with(&format!("mine.es.ftl, line {number}: ")), "{junk:?}: {found:?}");
        let said = ["not Fluent: ", "a placeable other than text in quotes"];
        assert!(said.iter().any(|said| found[0].contains(said)), "{junk:?}: {found:?}");
    }
}

#[test]
fn a_language_without_a_file_and_one_with_two_are_named() {
    let Sample { toml, beside } = whole();
    let said = |texts: &[TextFile]| -> Vec<String> {
        read("mine.toml", &toml, texts).expect_err("refused").iter().map(ToString::to_string).collect()
    };
    let missing = "mine.toml, line 1: text: not written in \"es\"; every exercise is written in \"en\" and \"es\"";
    assert_eq!(said(&beside[..1]), [missing]);
    let twice = "sit-tall-chin-back.en.ftl, line 1: \"en\" stands twice; once is enough";
    assert_eq!(said(&[beside[0], beside[1], beside[0]]), [twice]);
}

#[test]
fn faults_of_all_files_come_at_once_those_of_the_exercise_first() {
    let Sample { toml, beside } = whole();
    let texts = beside.iter().map(|file| file.text.replacen("name = ", "nam = ", 1)).collect::<Vec<_>>();
    let texts = [0, 1].map(|place| TextFile { text: &texts[place], ..beside[place] });
    let found = read("mine.toml", &toml.replacen("hold_s = 10", "hold_s = 999", 1), &texts).expect_err("three faults");
    let files: Vec<&str> = found.iter().map(|fault| fault.file.as_str()).collect();
    assert_eq!(files, ["mine.toml", beside[0].name, beside[0].name, beside[1].name, beside[1].name], "{found:?}");
}

#[test]
fn a_file_over_64_kib_is_not_even_parsed() {
    let bytes = whole().beside[1].text.len() + MAX_BYTES;
    let found = changed(|text| format!("{text}{}", "#\n".repeat(MAX_BYTES / 2))).expect_err("too large");
    assert_eq!(found.iter().map(|fault| &fault.kind).collect::<Vec<_>>(), [&FaultKind::TooLarge { bytes, max: MAX_BYTES }]);
}

#[test]
fn deep_nesting_is_refused_without_harm() {
    for piece in ["{", "{ ", "{\n", "{ $n ->\n *[a] ", "{ $n ->\n *[a] \"", "{F(\"}\",", "{ \"\" {", "#{"] {
        let deep = format!("name = {}", piece.repeat(MAX_BYTES / piece.len() - 8));
        assert!(changed(|_| deep.clone()).is_err(), "{piece:?}");
    }
}

#[test]
fn a_language_file_and_its_exercise_file_are_named_after_each_other() {
    assert_eq!(text_file_name("own/wall-sit.toml", Lang::Es), "own/wall-sit.es.ftl");
    assert_eq!(exercise_file_name("own/wall-sit.es.ftl"), Ok("own/wall-sit.toml".to_owned()));
    for name in ["wall-sit.ftl", "wall-sit.xx.ftl", "wall-sit.es", "es.ftl"] {
        assert_eq!(exercise_file_name(name), Err(FaultKind::NoLanguage), "{name}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn any_text_in_a_language_file_gives_an_exercise_or_faults(text in any::<String>()) {
        prop_assert!(changed(|_| text.clone()).is_err(), "no chance text is a whole file");
    }

    #[test]
    fn a_damaged_language_file_gives_an_exercise_or_faults_within_it(
        at in any::<prop::sample::Index>(),
        gone in 0..60_usize,
        put in "[ -~\n\"{}$*\\[\\]ñ]{0,12}",
    ) {
        let whole = whole().beside[1].text;
        let characters: Vec<char> = whole.chars().collect();
        let at = at.index(characters.len());
        let rest = &characters[(at + gone).min(characters.len())..];
        let damaged: String = characters[..at].iter().copied().chain(put.chars()).chain(rest.iter().copied()).collect();
        if let Err(faults) = changed(|_| damaged.clone()) {
            prop_assert!(!faults.is_empty());
            let lines = damaged.lines().count() + 1;
            prop_assert!(faults.iter().all(|fault| fault.file == "mine.es.ftl" && (1..=lines).contains(&fault.line)));
        }
    }
}
