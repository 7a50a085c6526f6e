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
fn spoiled(from: &str, to: &str) -> Vec<FileFault> {
    let text = whole().beside[1].text;
    assert!(text.contains(from), "the sample has no {from:?}");
    let faults = changed(|text| text.replacen(from, to, 1)).expect_err("this must be refused");
    assert!(faults.iter().all(|fault| fault.file == "mine.es.ftl"), "{faults:?}");
    faults.into_iter().map(|fault| fault.fault).collect()
}

/// The sample with `from` put for `to` has exactly one fault, of a message at a line.
#[track_caller]
fn one_fault_at(line: usize, from: &str, to: &str, field: &str, kind: FaultKind) {
    assert_eq!(spoiled(from, to), [FileFault { line: line as u32, field: field.into(), kind }], "{to:?}");
}

fn of(fault: ExerciseFault) -> FaultKind {
    FaultKind::Exercise(fault)
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
fn one_fault(message: &str, to: &str, field: &str, kind: FaultKind) {
    let (line, number) = line_of(message);
    one_fault_at(number, &line, to, field, kind);
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
            let lines = match stem {
                "step" => 5,
                "careful" => 2,
                "stop" => 4,
                _ => 3,
            };
            (1..=lines).map(|n| format!("{stem}-{n} = {stem} {n}\n")).collect::<String>()
        });
        let levels =
            ["wall", "chair", "standing"].map(|id| format!("level-{id}-name = N {id}\nlevel-{id}-change = C {id}\n"));
        let single = "name = A\npurpose = B\nset-up = C\nshould-feel = D\nshould-not-feel = E\n";
        let own = ["wall", "standing"].map(|id| {
            let steps: String = (1..=5).map(|n| format!("level-{id}-step-{n} = {id} {n}\n")).collect();
            format!("level-{id}-set-up = S {id}\n{steps}")
        });
        format!("{}{}{single}{}", levels.concat(), own.concat(), lists.concat())
    });
    let exercise = exercise.expect("a good file");
    let texts = &exercise.texts[&Lang::Es];
    let single = [&texts.name, &texts.purpose, &texts.set_up, &texts.should_feel, &texts.should_not_feel];
    assert_eq!(single, ["A", "B", "C", "D", "E"]);
    assert_eq!(texts.steps, ["step 1", "step 2", "step 3", "step 4", "step 5"]);
    assert_eq!(texts.mistakes, ["mistake 1", "mistake 2", "mistake 3"]);
    assert_eq!(texts.cautions, ["careful 1", "careful 2"]);
    assert_eq!(texts.stop_signs, ["stop 1", "stop 2", "stop 3", "stop 4"]);
    let rungs = exercise.ladders.iter().flat_map(|ladder| &ladder.rungs).map(|rung| &rung.texts[&Lang::Es]);
    let rungs: Vec<_> = rungs.map(|texts| format!("{}, {}", texts.name, texts.change)).collect();
    assert_eq!(rungs, ["N wall, C wall", "N chair, C chair", "N standing, C standing"]);
    let [wall, chair, _] = &exercise.ladders[0].rungs[..] else { panic!("three levels") };
    assert_eq!(wall.texts[&Lang::Es].set_up.as_deref(), Some("S wall"));
    assert_eq!(wall.texts[&Lang::Es].steps.as_ref().map(|steps| steps[4].as_str()), Some("wall 5"));
    assert_eq!((&chair.texts[&Lang::Es].set_up, &chair.texts[&Lang::Es].steps), (&None, &None));
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
    let allowed = [
        "name",
        "purpose",
        "set-up",
        "step-N",
        "should-feel",
        "should-not-feel",
        "mistake-N",
        "careful-N",
        "stop-N",
        "level-RUNG-name",
        "level-RUNG-change",
        "level-RUNG-set-up",
        "level-RUNG-step-N",
    ];
    for id in ["aim", "step-0", "step-01", "step-x", "step", "set_up", "level-wall", "step-99999999999"] {
        let unknown = of(ExerciseFault::UnknownMessage { allowed: owned(&allowed) });
        one_fault_at(number + 1, &line, &format!("{line}{id} = x\n"), id, unknown);
    }
}

#[test]
fn a_message_that_is_missing_is_named() {
    for message in ["name", "purpose", "set-up", "should-feel", "should-not-feel", "level-chair-name", "level-wall-change"] {
        one_fault_at(1, &line_of(message).0, "", message, of(ExerciseFault::MissingMessage));
    }
    let none = changed(|_| String::new()).expect_err("an empty file has no messages");
    let missing = |id: &str| {
        let gone = FileFault { line: 1, field: id.into(), kind: of(ExerciseFault::MissingMessage) };
        none.iter().any(|fault| fault.fault == gone)
    };
    assert!(["step-1", "mistake-1", "careful-1", "stop-1"].into_iter().all(missing), "{none:?}");
}

#[test]
fn the_same_message_twice_is_named_where_it_comes_again() {
    let (line, number) = line_of("purpose");
    one_fault_at(number + 1, &line, &line.repeat(2), "purpose", twice("purpose"));
}

#[test]
fn a_list_is_numbered_without_a_gap_and_ends_at_its_bound() {
    let (_, third) = line_of("step-3");
    let gap = of(ExerciseFault::Gap { missing: "step-2".into() });
    one_fault_at(third - 1, &line_of("step-2").0, "", "step-3", gap);
    let (line, number) = line_of("step-5");
    let more: String = (6..=9).map(|n| format!("step-{n} = Otro.\n")).collect();
    let nine = FaultKind::ListLength { least: 1, most: 8, found: 9 };
    one_fault_at(number + 4, &line, &(line.clone() + &more), "step-9", nine);
    let in_any_order = changed(|text| text.replacen(&line, "", 1) + &line).expect("the order of a file says nothing");
    assert_eq!(Ok(in_any_order), whole().read(&whole().toml));
}

#[test]
fn both_languages_say_equally_much() {
    let (_, last) = line_of("stop-3");
    one_fault_at(last, &line_of("stop-4").0, "", "stop-3", of(ExerciseFault::ListsDiffer { here: 3, first: 4 }));
}

#[test]
fn a_text_keeps_to_the_same_bounds_as_in_toml() {
    let length = |most, found| FaultKind::TextLength { least: 1, most, found };
    one_fault("name", &format!("name = {}\n", "n".repeat(41)), "name", length(40, 41));
    one_fault("name", "name = {\"  \"}\n", "name", length(40, 0));
    one_fault("step-2", &format!("step-2 = {}\n", "p".repeat(281)), "step-2", length(280, 281));
    let level = format!("level-chair-name = {}\n", "n".repeat(41));
    one_fault("level-chair-name", &level, "level-chair-name", length(40, 41));
    let unseen = of(ExerciseFault::Unprintable { character: '\u{202E}' });
    one_fault("name", "name = {\"\\u202E\"}x\n", "name", unseen);
}

#[test]
fn a_level_belongs_to_a_rung_of_the_exercise() {
    let (line, number) = line_of("level-wall-name");
    let levels = owned(&["wall", "chair", "standing"]);
    let sofa = of(ExerciseFault::NoSuchLevel { found: "sofa".into(), levels });
    one_fault_at(number + 1, &line, &format!("{line}level-sofa-name = En el sofá\n"), "level-sofa-name", sofa);
    let found = faults(&whole(), "id = \"wall\"", "id = \"The Wall\"");
    assert_eq!(found.len(), 1, "while the rungs are not known, their texts are not too many: {found:?}");
}

#[test]
fn a_message_is_plain_text() {
    let placed = ["{ $name }", "{ set-up }", "{ -brand }", "{ 3 }", "{ NUMBER($n) }", "{ {\"x\"} }", "{\n    \"x\" }"];
    for value in placed.into_iter().chain(["{ $n ->\n    [one] x\n   *[other] y\n }"]) {
        one_fault("name", &format!("name = Espalda {value}\n"), "", of(ExerciseFault::Placeable));
    }
    let (line, number) = line_of("name");
    let short = format!("{line}    .short = Espalda\n");
    one_fault_at(number + 1, &line, &short, "name.short", of(ExerciseFault::Attribute));
    one_fault_at(number, &line, &format!("-brand = x\n{line}"), "-brand", of(ExerciseFault::Term));
}

#[test]
fn what_is_not_fluent_names_its_line() {
    for junk in ["just words\n", "name =\n", "name = { \"x\n", "name = x }\n", "1st = x\n"] {
        let (line, number) = line_of("name");
        let found = spoiled(&line, junk);
        assert!(found.len() == 1 && found[0].line as usize == number, "{junk:?}: {found:?}");
        let not = matches!(found[0].kind, FaultKind::Exercise(ExerciseFault::NotFluent { .. } | ExerciseFault::Placeable));
        assert!(not, "{junk:?}: {found:?}");
    }
}

#[test]
fn a_language_without_a_file_and_one_with_two_are_named() {
    let Sample { toml, beside } = whole();
    let only = |texts: &[TextFile]| {
        let mut faults = read("mine.toml", &toml, texts).expect_err("refused");
        assert_eq!(faults.len(), 1, "{faults:?}");
        let Fault { file, fault } = faults.swap_remove(0);
        (file, fault.line, fault.field, fault.kind)
    };
    let lacks = of(ExerciseFault::MissingLanguage { lang: Lang::Es });
    assert_eq!(only(&beside[..1]), ("mine.toml".into(), 1, "text".into(), lacks));
    let again = only(&[beside[0], beside[1], beside[0]]);
    assert_eq!(again, ("sit-tall-chin-back.en.ftl".into(), 1, String::new(), twice("en")));
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
    let bytes = (whole().beside[1].text.len() + MAX_BYTES) as u64;
    let found = changed(|text| format!("{text}{}", "#\n".repeat(MAX_BYTES / 2))).expect_err("too large");
    assert_eq!(kinds(found), [FaultKind::TooLarge { bytes, most: 65_536 }]);
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
        assert_eq!(exercise_file_name(name), Err(ExerciseFault::NoLanguage), "{name}");
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
            let lines = damaged.lines().count() as u32 + 1;
            let in_it = |fault: &Fault| fault.file == "mine.es.ftl" && (1..=lines).contains(&fault.fault.line);
            prop_assert!(faults.iter().all(in_it));
        }
    }
}
