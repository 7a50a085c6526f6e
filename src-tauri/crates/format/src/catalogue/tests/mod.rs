mod figures;
mod language;
mod levels;
mod one_file;
mod own;
mod shipped;
mod shipped_texts;
mod step_rules;

use super::*;
use crate::fields::owned;
use exercises::catalogue::{
    Arms, Basis, ExerciseId, Feet, IdFault, Joint, Kind, PrescriberFlag, Purpose, RungTexts, Sidedness, Texts,
};
use exercises::file_fault::{FileFault, ValueKind};

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
                let RungTexts { name, change, set_up, steps } = &rung.texts[lang];
                let set_up = set_up.as_ref().map(|set_up| format!(", set_up = {set_up:?}")).unwrap_or_default();
                let steps = steps.as_ref().map(|steps| format!(", steps = {steps:?}")).unwrap_or_default();
                format!("text.{} = {{ name = {name:?}, change = {change:?}{set_up}{steps} }}\n", lang.code())
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
fn faults(sample: &Sample, from: &str, to: &str) -> Vec<FileFault> {
    assert!(sample.toml.contains(from), "the sample has no {from:?}");
    let faults = sample.read(&sample.toml.replacen(from, to, 1)).expect_err("this must be refused");
    assert_eq!(faults[0].file, "mine.toml", "{faults:?}");
    faults.into_iter().map(|fault| fault.fault).collect()
}

/// Like [`faults`], if exactly one is expected; `expected` is its text after the file's name.
#[track_caller]
fn fault(sample: &Sample, from: &str, to: &str, line: u32, field: &str, kind: FaultKind) {
    assert_eq!(faults(sample, from, to), [FileFault { line, field: field.into(), kind }]);
}

/// As [`fault`], at the line on which `from` begins.
#[track_caller]
fn fault_there(sample: &Sample, from: &str, to: &str, field: &str, kind: FaultKind) {
    let at = sample.toml.find(from).expect("in the sample");
    let line = 1 + sample.toml[..at].matches('\n').count() as u32;
    fault(sample, from, to, line, field, kind);
}

fn missing(field: &str) -> FaultKind {
    FaultKind::MissingField { field: field.into() }
}

fn unknown_word(found: &str, allowed: &[&str]) -> FaultKind {
    FaultKind::UnknownWord { found: found.into(), allowed: owned(allowed) }
}

fn twice(id: &str) -> FaultKind {
    FaultKind::Duplicate { id: id.into() }
}

fn kinds(faults: Vec<Fault>) -> Vec<FaultKind> {
    faults.into_iter().map(|fault| fault.fault.kind).collect()
}

#[test]
fn every_shipped_file_is_read_without_a_fault() {
    match embedded() {
        Ok(catalogue) => assert_eq!(catalogue.exercises.len(), FILES.len()),
        Err(faults) => panic!("{faults:#?}"),
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
    fault_there(&balance(), rung, "feet = \"wet\"\n", "feet", unknown_word("wet", &["bare", "covered"]));
    let arms = unknown_word("hand-in-use", &["crossed", "on-hips", "free"]);
    fault_there(&balance(), rung, "arms = \"hand-in-use\"\n", "arms", arms);
    let number = FaultKind::WrongKind { expected: ValueKind::Truth, found: ValueKind::WholeNumber };
    fault_there(&balance(), "one_leg = true", "one_leg = 1", "one_leg", number);
}

#[test]
fn purposes_flags_and_the_basis_of_the_dose_are_words_of_their_lists_and_need_not_be_there() {
    let exercise = balance().read(&balance().toml).expect("shipped");
    assert_eq!(exercise.purposes, [Purpose::Balance, Purpose::Control]);
    assert_eq!(exercise.flags[..2], [PrescriberFlag::Pregnancy, PrescriberFlag::BloodThinners]);
    assert_eq!(exercise.dose_basis, Some(Basis::Convention));
    let plain = |line: &str| !["purpose", "flags", "dose_basis"].iter().any(|field| line.starts_with(field));
    let bare: String = balance().toml.lines().filter(|line| plain(line)).map(|line| format!("{line}\n")).collect();
    let bare = balance().read(&bare).expect("a clinic's own file may leave them out");
    assert_eq!((bare.purposes, bare.flags, bare.dose_basis), (Vec::new(), Vec::new(), None));
    let bases = crate::names::all::<Basis>();
    let unknown = FaultKind::UnknownWord { found: "proof".into(), allowed: bases };
    fault_there(&balance(), "dose_basis = \"convention\"", "dose_basis = \"proof\"", "dose_basis", unknown);
    let found = faults(&balance(), "\"osteoporosis\"", "\"pregnancy\"");
    assert_eq!((found[0].field.as_str(), &found[0].kind), ("flags", &twice("pregnancy")), "{found:?}");
}

#[test]
fn a_field_that_is_missing_is_named() {
    fault(&whole(), "revision = 2\n", "", 1, "", missing("revision"));
    fault(&whole(), "hold_s = 10\n", "", 12, "", missing("hold_s"));
    let faults = kinds(read("empty.toml", "", &[]).expect_err("an empty file is no exercise"));
    let missing = faults.iter().filter(|kind| matches!(kind, FaultKind::MissingField { .. })).count();
    assert_eq!(missing, 8, "every field of an exercise is asked for: {faults:?}");
    assert_eq!(faults.len(), missing + Lang::ALL.len(), "and every language: {faults:?}");
}

#[test]
fn an_unknown_field_is_named_with_those_allowed() {
    let weight =
        || FaultKind::UnknownField { found: "weight_kg".into(), allowed: owned(&["repetitions", "hold_s", "rest_s"]) };
    fault(&whole(), "rest_s = 10\n", "rest_s = 10\nweight_kg = 4\n", 16, "", weight());
    let both = faults(&whole(), "rest_s = 10\n", "rest_s = 10\nweight_kg = 4\nheight_cm = 4\n");
    assert_eq!(both.len(), 2, "each of them: {both:?}");
}

#[test]
fn seconds_and_repetitions_stay_within_their_range() {
    let hold = || FaultKind::NumberRange { least: 1, most: 120 };
    for seconds in ["-10", "0", "121"] {
        fault_there(&whole(), "hold_s = 10", &format!("hold_s = {seconds}"), "hold_s", hold());
    }
    let repetitions = FaultKind::NumberRange { least: 1, most: 50 };
    fault_there(&whole(), "repetitions = 3", "repetitions = 10_000", "repetitions", repetitions);
    let rest = FaultKind::NumberRange { least: 0, most: 300 };
    fault_there(&whole(), "rest_s = 10", "rest_s = 99999999999999999999999999", "rest_s", rest);
    fault_there(&balance(), "target_s = 30", "target_s = 4", "target_s", FaultKind::NumberRange { least: 5, most: 60 });
}

#[test]
fn a_number_is_a_whole_number() {
    let found = |found| FaultKind::WrongKind { expected: ValueKind::WholeNumber, found };
    fault_there(&whole(), "hold_s = 10", "hold_s = 9.5", "hold_s", found(ValueKind::Number));
    fault_there(&whole(), "hold_s = 10", "hold_s = \"10\"", "hold_s", found(ValueKind::Text));
}

#[test]
fn a_dose_belongs_to_the_kind() {
    let found: Vec<FaultKind> =
        faults(&whole(), "kind = \"hold\"", "kind = \"balance\"").into_iter().map(|fault| fault.kind).collect();
    assert!(found.contains(&missing("trials")), "{found:?}");
    let unknown = |kind: &FaultKind| matches!(kind, FaultKind::UnknownField { found, .. } if found == "hold_s");
    assert!(found.iter().any(unknown), "{found:?}");
}

#[test]
fn a_word_that_is_not_allowed_is_named_with_those_that_are() {
    let kind = unknown_word("dance", &Kind::ALL.iter().map(|kind| kind.rules().name()).collect::<Vec<_>>());
    fault_there(&whole(), "kind = \"hold\"", "kind = \"dance\"", "kind", kind);
    let surface = unknown_word("ice", &["firm", "folded-towel", "cushion", "foam"]);
    fault_there(&balance(), "surface = \"cushion\"", "surface = \"ice\"", "surface", surface);
    let found = faults(&whole(), "furniture = [\"wall\"]", "furniture = [\"throne\"]");
    let throne = |fault: &FileFault| {
        fault.field == "furniture" && matches!(&fault.kind, FaultKind::UnknownWord { found, .. } if found == "throne")
    };
    assert!(throne(&found[0]), "{found:?}");
}

#[test]
fn unknown_joints_and_impossible_angles_are_refused() {
    let joints: Vec<&str> = Joint::ALL.iter().map(|joint| joint.name()).collect();
    let tail = FaultKind::UnknownField { found: "tail".into(), allowed: owned(&joints) };
    fault_there(&whole(), "knee-near = 92", "tail = 90", "", tail);
    let knee = FaultKind::NumberRange { least: -5, most: 150 };
    fault_there(&whole(), "knee-near = 92", "knee-near = 190", "knee-near", knee);
}

#[test]
fn furniture_and_contacts_are_named_once() {
    let chairs = "furniture = [\"chair\", \"chair\"]";
    fault_there(&whole(), "furniture = [\"chair\"]", chairs, "furniture", twice("chair"));
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
                let in_it = |fault: &Fault| fault.file != "mine.toml" || (1..=lines as u32 + 1).contains(&fault.fault.line);
                assert!(faults.iter().all(in_it), "{faults:?}");
            }
        }
        assert!(refused > lines / 2, "most damage is seen");
    }
}

#[test]
fn one_position_alone_is_no_movement() {
    let found = faults(&Sample { toml: FIGURE.to_owned(), beside: &[] }, ", { knee-near = 5 }", "");
    let poses = FileFault { line: 4, field: "poses".into(), kind: FaultKind::ListLength { least: 2, most: 8, found: 1 } };
    assert!(found.contains(&poses), "{found:?}");
}

#[test]
fn an_id_is_used_once_and_is_kebab_case() {
    let first = |from: &str, to: &str| faults(&balance(), from, to).swap_remove(0);
    let is = |found: FileFault, kind: FaultKind| assert_eq!((found.field.as_str(), &found.kind), ("id", &kind), "{found:?}");
    is(first("id = \"towel-open\"", "id = \"firm-open\""), twice("firm-open"));
    is(first("id = \"firm-closed\"", "id = \"firm-open\""), twice("firm-open"));
    is(first("id = \"eyes-closed\"", "id = \"eyes-open\""), twice("eyes-open"));
    is(first("id = \"firm-open\"", "id = \"Firm open\""), FaultKind::Id(IdFault::NotKebabCase));
}

#[test]
fn a_balance_rung_says_where_it_is_stood_and_with_which_eyes() {
    let found = faults(&balance(), "eyes = \"closed\"\n", "");
    assert_eq!(found[0].kind, FaultKind::Exercise(ExerciseFault::BalanceNeeds), "{found:?}");
}

#[test]
fn what_is_not_toml_names_its_line() {
    for (from, to) in
        [("region = \"neck-upper-back\"", "region = neck and back"), ("revision = 2", "revision = 2\nrevision = 3")]
    {
        let found = faults(&whole(), from, to);
        assert_eq!(found.len(), 1);
        assert!(matches!(found[0], FileFault { line: 3, kind: FaultKind::NotToml { .. }, .. }), "{found:?}");
    }
}

#[test]
fn a_file_over_64_kib_is_not_even_parsed() {
    let large = format!("{}{}", whole().toml, "#\n".repeat(MAX_BYTES / 2));
    let found = kinds(read("large.toml", &large, &[]).expect_err("too large"));
    assert_eq!(found, [FaultKind::TooLarge { bytes: large.len() as u64, most: 65_536 }]);
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
    let lines: Vec<_> = faults.iter().map(|fault| fault.fault.line).collect();
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
