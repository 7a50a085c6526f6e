mod figures;
mod language;
mod one_file;
mod shipped;

use super::*;
use exercises::catalogue::{Arms, ExerciseId, Feet, Kind, Quantity, RungTexts, Sidedness, Texts};

const FIGURE: &str = r#"
[figure]
view = "side"
poses = [{ knee-near = 0 }, { knee-near = 5 }]
"#;

/// An exercise that the tests damage.
struct Sample {
    toml: String,
    beside: &'static [TextFile<'static>],
}

impl Sample {
    /// A shipped exercise.
    fn shipped(id: &str) -> Self {
        let name = format!("{id}.toml");
        let files = FILES.iter().find(|files| files.name == name).expect("shipped");
        Sample { toml: files.text.to_owned(), beside: &files.texts }
    }

    /// A shipped exercise as one file, with its texts in the TOML.
    fn one_file(id: &str) -> Self {
        let exercise = embedded().expect("tested below").exercises.into_iter().find(|one| one.id.as_str() == id);
        let Exercise { ladders, texts, .. } = exercise.expect("shipped");
        let mut toml = Self::shipped(id).toml;
        for rung in ladders.iter().flat_map(|ladder| &ladder.rungs) {
            let head = format!("[[ladder.rung]]\nid = \"{}\"\n", rung.id);
            let of = |lang| {
                let RungTexts { name, change } = &rung.texts[lang];
                format!("text.{} = {{ name = {name:?}, change = {change:?} }}\n", lang.code())
            };
            toml = toml.replacen(&head, &format!("{head}{}", Lang::ALL.iter().map(of).collect::<String>()), 1);
        }
        for (lang, text) in texts {
            let Texts { name, purpose, set_up, steps, should_feel, should_not_feel, mistakes, cautions, stop_signs } = text;
            let lines = [
                format!(
                    "[text.{}]\nname = {name:?}\npurpose = {purpose:?}\nset_up = {set_up:?}\nsteps = {steps:#?}",
                    lang.code()
                ),
                format!("should_feel = {should_feel:?}\nshould_not_feel = {should_not_feel:?}\nmistakes = {mistakes:#?}"),
                format!("cautions = {cautions:#?}\nstop_signs = {stop_signs:#?}\n"),
            ];
            toml = toml + "\n" + &lines.join("\n");
        }
        Sample { toml, beside: &[] }
    }

    fn read(&self, toml: &str) -> Result<Exercise, Vec<Fault>> {
        read("mine.toml", toml, self.beside)
    }
}

fn whole() -> Sample {
    Sample::shipped("sit-tall-chin-back")
}

fn balance() -> Sample {
    Sample::shipped("one-leg-stand")
}

/// Reads the sample with `from` replaced by `to`; returns the faults as the terminal prints them.
#[track_caller]
fn faults(sample: &Sample, from: &str, to: &str) -> Vec<String> {
    assert!(sample.toml.contains(from), "the sample has no {from:?}");
    let faults = sample.read(&sample.toml.replacen(from, to, 1)).expect_err("this must be refused");
    assert!(!faults.is_empty());
    faults.iter().map(ToString::to_string).collect()
}

/// Like [`faults`], if exactly one is expected; `expected` is its text after the file's name.
#[track_caller]
fn fault(sample: &Sample, from: &str, to: &str, expected: &str) {
    assert_eq!(faults(sample, from, to), [format!("mine.toml, {expected}")]);
}

#[test]
fn every_shipped_file_is_read_without_a_fault() {
    match embedded() {
        Ok(catalogue) => assert_eq!(catalogue.exercises.len(), FILES.len()),
        Err(faults) => panic!("{}", faults.iter().map(|f| f.to_string() + "\n").collect::<String>()),
    }
}

#[test]
fn what_a_file_says_arrives_in_the_exercise() {
    let catalogue = embedded().expect("tested above");
    let id = ExerciseId::new("one-leg-stand").expect("an id");
    let stand = catalogue.get(&id).expect("shipped");
    assert_eq!((stand.kind, stand.side), (Kind::Balance, Sidedness::EachSide));
    assert_eq!(stand.ladders.len(), 2);
    assert!(stand.one_leg);
    let rung = &stand.ladders[0].rungs[0];
    assert_eq!((rung.feet, rung.arms), (Some(Feet::Bare), None), "its instructions leave the arms open");
    assert!(!stand.ladders[0].closes_the_eyes() && stand.ladders[1].closes_the_eyes());
    assert_eq!(stand.texts[&Lang::Es].name, "De pie sobre una pierna");
}

#[test]
fn what_an_exercise_says_of_feet_and_arms_is_one_of_those_allowed() {
    let rung = "feet = \"bare\"\n";
    let read = |to: &str| balance().read(&balance().toml.replacen(rung, to, 1)).expect("allowed");
    let exercise = read("feet = \"covered\"\narms = \"on-hips\"\n");
    let first = exercise.first_rung().expect("a rung");
    assert_eq!((first.feet, first.arms), (Some(Feet::Covered), Some(Arms::OnHips)));
    fault(
        &balance(),
        rung,
        "feet = \"wet\"\n",
        "line 21: ladder 1, rung 1, feet: \"wet\" is not known; allowed here: bare, covered",
    );
    fault(
        &balance(),
        rung,
        "arms = \"hand-in-use\"\n",
        "line 21: ladder 1, rung 1, arms: \"hand-in-use\" is not known; allowed here: crossed, on-hips, free",
    );
    fault(
        &balance(),
        "one_leg = true",
        "one_leg = 1",
        "line 6: one_leg: a whole number stands here; true or false belongs here",
    );
}

#[test]
fn a_field_that_is_missing_is_named() {
    fault(&whole(), "revision = 1\n", "", "line 1: revision: this field is missing");
    fault(&whole(), "hold_s = 10\n", "", "line 7: dose, hold_s: this field is missing");
    let faults = read("empty.toml", "", &[]).expect_err("an empty file is no exercise");
    let missing = faults.iter().filter(|fault| fault.kind == FaultKind::Missing).count();
    assert_eq!(missing, 8, "every field of an exercise is asked for: {faults:?}");
    assert_eq!(faults.len(), missing + Lang::ALL.len(), "and every language: {faults:?}");
}

#[test]
fn an_unknown_field_is_named_with_those_allowed() {
    fault(
        &whole(),
        "rest_s = 10\n",
        "rest_s = 10\nweight_kg = 4\n",
        "line 11: dose, weight_kg: no such field; allowed here: repetitions, hold_s, rest_s",
    );
}

#[test]
fn seconds_and_repetitions_stay_within_their_range() {
    fault(
        &whole(),
        "hold_s = 10",
        "hold_s = -10",
        "line 9: dose, hold_s: hold of -10 seconds; allowed are 1 to 120 seconds",
    );
    fault(&whole(), "hold_s = 10", "hold_s = 0", "line 9: dose, hold_s: hold of 0 seconds; allowed are 1 to 120 seconds");
    fault(
        &whole(),
        "repetitions = 3",
        "repetitions = 10_000",
        "line 8: dose, repetitions: repetitions of 10000; allowed are 1 to 50",
    );
    let huge = "rest_s = 99999999999999999999999999";
    assert_eq!(faults(&whole(), "rest_s = 10", huge).len(), 1, "a number beyond 64 bits is out of range, not a crash");
    fault(
        &balance(),
        "target_s = 30",
        "target_s = 4",
        "line 10: dose, target_s: target of 4 seconds; allowed are 5 to 60 seconds",
    );
}

#[test]
fn a_number_is_a_whole_number() {
    fault(
        &whole(),
        "hold_s = 10",
        "hold_s = 9.5",
        "line 9: dose, hold_s: a number with a point stands here; a whole number belongs here",
    );
    fault(&whole(), "hold_s = 10", "hold_s = \"10\"", "line 9: dose, hold_s: text stands here; a whole number belongs here");
}

#[test]
fn a_dose_belongs_to_the_kind() {
    let found = faults(&whole(), "kind = \"hold\"", "kind = \"balance\"");
    assert!(found.iter().any(|fault| fault.contains("dose, trials: this field is missing")), "{found:?}");
    assert!(found.iter().any(|fault| fault.contains("dose, hold_s: no such field")), "{found:?}");
}

#[test]
fn a_word_that_is_not_allowed_is_named_with_those_that_are() {
    fault(
        &whole(),
        "kind = \"hold\"",
        "kind = \"dance\"",
        "line 4: kind: \"dance\" is not known; allowed here: hold, balance, reps",
    );
    fault(
        &balance(),
        "surface = \"cushion\"",
        "surface = \"ice\"",
        "line 30: ladder 1, rung 3, surface: \"ice\" is not known; allowed here: firm, folded-towel, cushion, foam",
    );
    let found = faults(&whole(), "furniture = [\"wall\"]", "furniture = [\"throne\"]");
    assert!(found[0].contains("ladder 1, rung 1, figure, furniture 1: \"throne\" is not known"), "{found:?}");
}

#[test]
fn unknown_joints_and_impossible_angles_are_refused() {
    let found = faults(&whole(), "knee-near = 92", "tail = 90");
    assert_eq!(found.len(), 1);
    assert!(found[0].contains("poses 1, tail: \"tail\" is no joint; the joints are trunk, "), "{found:?}");
    let found = faults(&whole(), "knee-near = 92", "knee-near = 190");
    assert!(found[0].ends_with("knee-near: 190 degrees are out of reach; knee-near takes -5 to 150"), "{found:?}");
}

#[test]
fn furniture_and_contacts_are_named_once() {
    let found = faults(&whole(), "furniture = [\"chair\"]", "furniture = [\"chair\", \"chair\"]");
    assert_eq!(found.len(), 1);
    assert!(found[0].ends_with("figure, furniture 2: \"chair\" stands twice; once is enough"), "{found:?}");
}

#[test]
fn a_file_that_was_cut_or_lost_a_line_is_refused_or_read_but_never_a_crash() {
    for sample in [whole(), balance(), Sample::one_file("one-leg-stand")] {
        let text = &sample.toml;
        let lines = text.lines().count();
        let cuts = (0..text.len()).step_by(17).filter(|&at| text.is_char_boundary(at)).map(|at| text[..at].to_owned());
        let without = (0..lines)
            .map(|gone| text.lines().enumerate().filter(|(i, _)| *i != gone).map(|(_, l)| format!("{l}\n")).collect());
        let mut refused = 0;
        for damaged in cuts.chain(without) {
            if let Err(faults) = sample.read(&damaged) {
                refused += 1;
                assert!(!faults.is_empty());
                let in_it = |fault: &Fault| fault.file != "mine.toml" || (1..=lines + 1).contains(&fault.line);
                assert!(faults.iter().all(in_it), "{faults:?}");
            }
        }
        assert!(refused > lines / 2, "most damage is seen");
    }
}

#[test]
fn one_position_alone_is_no_movement() {
    let found = faults(&Sample { toml: FIGURE.to_owned(), beside: &[] }, ", { knee-near = 5 }", "");
    assert!(found.iter().any(|fault| fault.ends_with("figure, poses: poses of 1; allowed are 2 to 8")), "{found:?}");
}

#[test]
fn an_id_is_used_once_and_is_kebab_case() {
    let found = faults(&balance(), "id = \"towel-open\"", "id = \"firm-open\"");
    assert!(found[0].contains("rung 2, id: \"firm-open\" stands twice"), "{found:?}");
    let found = faults(&balance(), "id = \"firm-closed\"", "id = \"firm-open\"");
    assert!(found[0].contains("ladder 2, rung 1, id: \"firm-open\" stands twice"), "unique over all ladders: {found:?}");
    let found = faults(&balance(), "id = \"eyes-closed\"", "id = \"eyes-open\"");
    assert!(found[0].contains("ladder 2, id: \"eyes-open\" stands twice"), "{found:?}");
    let found = faults(&balance(), "id = \"firm-open\"", "id = \"Firm open\"");
    assert!(found[0].contains("an id is 1 to 32 small letters"), "{found:?}");
}

#[test]
fn a_balance_rung_says_where_it_is_stood_and_with_which_eyes() {
    let found = faults(&balance(), "eyes = \"closed\"\n", "");
    assert!(found[0].contains("names its surface and whether the eyes are open or closed"), "{found:?}");
}

#[test]
fn what_is_not_toml_names_its_line() {
    let found = faults(&whole(), "region = \"neck-upper-back\"", "region = neck and back");
    assert_eq!(found.len(), 1);
    assert!(found[0].starts_with("mine.toml, line 3: not TOML: "), "{found:?}");
    let found = faults(&whole(), "revision = 1", "revision = 1\nrevision = 2");
    assert!(found[0].starts_with("mine.toml, line 3: not TOML: "), "the same key twice: {found:?}");
}

#[test]
fn a_file_over_64_kib_is_not_even_parsed() {
    let large = format!("{}{}", whole().toml, "#\n".repeat(MAX_BYTES / 2));
    let faults = read("large.toml", &large, &[]).expect_err("too large");
    assert_eq!(faults.len(), 1);
    assert_eq!(faults[0].kind, FaultKind::TooLarge { bytes: large.len(), max: MAX_BYTES });
    assert!(faults[0].to_string().ends_with("at most 65536 are read"));
}

#[test]
fn deep_nesting_is_refused_without_harm() {
    let deep = format!("id = {}{}", "[".repeat(20_000), "]".repeat(20_000));
    assert!(read("deep.toml", &deep, &[]).is_err());
}

#[test]
fn all_faults_of_a_file_come_at_once_in_the_order_of_their_lines() {
    let text = whole().toml.replace("hold_s = 10", "hold_s = 999").replace("kind = \"hold\"", "kind = \"hold\"\ncolour = 1");
    let faults = whole().read(&text.replace("plumb = true", "plumb = 1")).expect_err("three faults");
    let lines: Vec<_> = faults.iter().map(|fault| fault.line).collect();
    assert_eq!(lines.len(), 3);
    assert!(lines.is_sorted(), "{lines:?}");
}

#[test]
fn a_rung_takes_from_the_figure_what_it_does_not_say_itself() {
    let exercise = whole().read(&whole().toml).expect("shipped");
    let wall = exercise.ladders[0].rungs[0].figure.as_ref().expect("the wall rung looks different");
    assert_ne!(wall.poses, exercise.poses.poses);
    assert_eq!((wall.view, wall.plumb), (exercise.poses.view, exercise.poses.plumb));
}
