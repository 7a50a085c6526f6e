//! What a level says itself: its posture, side, dose, equipment, set-up and steps, and every fault of them.
use super::*;
use exercises::catalogue::{Dose, Equipment, Posture, RungId};

fn id(text: &str) -> RungId {
    RungId::new(text).expect("an id")
}

#[test]
fn what_a_level_says_itself_arrives_and_the_rest_is_the_exercises() {
    let exercise = whole().read(&whole().toml).expect("shipped");
    let (wall, chair) = (exercise.level(Some(&id("wall"))), exercise.level(Some(&id("chair"))));
    assert_eq!((wall.posture(), chair.posture()), (Some(Posture::Standing), Some(Posture::Sitting)));
    assert_eq!((wall.equipment(), chair.equipment()), (&[Equipment::Wall][..], &[Equipment::Chair][..]));
    assert_eq!(exercise.level(Some(&id("standing"))).equipment(), [], "nothing, although the exercise needs a chair");
    for lang in Lang::ALL {
        let (wall, chair) = (wall.texts(lang).expect("texts"), chair.texts(lang).expect("texts"));
        assert_eq!((&chair.set_up, &chair.steps), (&exercise.texts[&lang].set_up, &exercise.texts[&lang].steps));
        assert_ne!((&wall.set_up, &wall.steps), (&chair.set_up, &chair.steps));
        assert_eq!(wall.cautions, chair.cautions);
    }
    let raise = Sample::shipped("heel-raise");
    let raise = raise.read(&raise.toml).expect("shipped");
    let one_leg = raise.level(Some(&id("one-leg-both-hands")));
    assert_eq!((one_leg.side(), raise.side), (Sidedness::EachSide, Sidedness::None));
    assert!(matches!(one_leg.dose(), Dose::Reps { sets: 2, repetitions: 6, .. }));
}

#[test]
fn a_clinics_own_file_need_not_say_the_posture() {
    let toml = whole().toml.replace("posture = \"sitting\"\n", "").replace("posture = \"standing\"\n", "");
    assert_eq!(whole().read(&toml).expect("allowed").posture_at(Some(&id("chair"))), None);
}

#[test]
fn words_of_a_level_are_those_allowed() {
    let postures = &["standing", "sitting", "lying", "kneeling"];
    let from = "id = \"chair\"\n";
    let at = |field: &str, kind: FaultKind| {
        let word = format!("{from}{field} = \"floating\"\n");
        let found = faults(&whole(), from, &word);
        assert_eq!((found.len(), found[0].field.as_str(), &found[0].kind), (1, field, &kind));
        let line = 1 + whole().toml[..whole().toml.find(from).expect("there")].matches('\n').count() as u32;
        assert_eq!(found[0].line, line + 1);
    };
    at("posture", unknown_word("floating", postures));
    at("side", unknown_word("floating", &["none", "each-side", "alternating"]));
    fault_there(&whole(), "posture = \"sitting\"", "posture = \"sat\"", "posture", unknown_word("sat", postures));
    let chairs = "equipment = [\"chair\", \"chair\"]";
    fault_there(&whole(), "equipment = [\"chair\"]", chairs, "equipment", twice("chair"));
    fault_there(&whole(), "equipment = [\"wall\"]", "equipment = [\"wall\", \"wall\"]", "equipment", twice("wall"));
}

#[test]
fn a_levels_dose_is_whole_and_of_the_exercises_kind() {
    let raise = Sample::shipped("heel-raise");
    fault_there(&raise, "repetitions = 6", "repetitions = 60", "repetitions", FaultKind::NumberRange { least: 1, most: 50 });
    let found = faults(&raise, "repetitions = 6\n", "");
    assert_eq!((found.len(), &found[0].kind), (1, &missing("repetitions")));
    let found = faults(&raise, "repetitions = 6\n", "repetitions = 6\nhold_s = 6\n");
    assert!(matches!(&found[..], [FileFault { kind: FaultKind::UnknownField { found, .. }, .. }] if found == "hold_s"));
}

#[test]
fn levels_of_one_ladder_are_done_on_the_same_sides() {
    let sides = FaultKind::Exercise(ExerciseFault::SidesOfLadder);
    let to = "id = \"fingertips\"\nside = \"each-side\"\n";
    let raise = Sample::shipped("heel-raise");
    let found = faults(&raise, "id = \"fingertips\"\n", to);
    let line = 2 + raise.toml[..raise.toml.find("id = \"fingertips\"").expect("there")].matches('\n').count() as u32;
    assert_eq!(found, [FileFault { line, field: "side".into(), kind: sides }]);
}

/// The shipped exercise with its Spanish file changed: the faults of that file.
#[track_caller]
fn spanish_faults(from: &str, to: &str) -> Vec<FileFault> {
    let Sample { toml, beside } = whole();
    assert!(beside[1].text.contains(from), "the file has no {from:?}");
    let text = beside[1].text.replacen(from, to, 1);
    let files = [beside[0], TextFile { lang: Lang::Es, name: "mine.es.ftl", text: &text }];
    let found = read("mine.toml", &toml, &files).expect_err("refused");
    assert!(found.iter().all(|fault| fault.file == "mine.es.ftl"), "{found:?}");
    found.into_iter().map(|fault| fault.fault).collect()
}

fn message(id: &str) -> (String, u32) {
    let mut lines = whole().beside[1].text.lines().zip(1..);
    let (line, number) = lines.find(|(line, _)| line.starts_with(&format!("{id} ="))).expect("in the file");
    (format!("{line}\n"), number)
}

#[test]
fn a_levels_set_up_and_steps_are_there_in_every_language_or_in_none() {
    let gone = FaultKind::Exercise(ExerciseFault::MissingMessage);
    let (set_up, _) = message("level-wall-set-up");
    let missing = FileFault { line: 1, field: "level-wall-set-up".into(), kind: gone.clone() };
    assert_eq!(spanish_faults(&set_up, ""), [missing]);
    let steps: String = (1..=5).map(|n| message(&format!("level-wall-step-{n}")).0).collect();
    let missing = FileFault { line: 1, field: "level-wall-step-1".into(), kind: gone };
    assert_eq!(spanish_faults(&steps, ""), [missing]);
    let (change, _) = message("level-chair-change");
    let only_here = format!("{change}level-chair-set-up = Siéntese.\n");
    let Sample { toml, beside } = whole();
    let text = beside[1].text.replacen(&change, &only_here, 1);
    let files = [beside[0], TextFile { lang: Lang::Es, name: "mine.es.ftl", text: &text }];
    let found = read("mine.toml", &toml, &files).expect_err("English lacks it");
    assert_eq!(
        (found.len(), found[0].file.as_str(), found[0].fault.field.as_str()),
        (1, beside[0].name, "level-chair-set-up")
    );
}

#[test]
fn a_levels_steps_are_as_many_in_each_language_and_without_a_gap() {
    let (fifth, _) = message("level-wall-step-5");
    let (_, fourth) = message("level-wall-step-4");
    let fewer = FaultKind::Exercise(ExerciseFault::ListsDiffer { here: 4, first: 5 });
    let fault = FileFault { line: fourth, field: "level-wall-step-4".into(), kind: fewer };
    assert_eq!(spanish_faults(&fifth, ""), [fault]);
    let (second, number) = message("level-wall-step-2");
    let gap = FaultKind::Exercise(ExerciseFault::Gap { missing: "level-wall-step-2".into() });
    let fault = FileFault { line: number, field: "level-wall-step-3".into(), kind: gap };
    assert_eq!(spanish_faults(&second, ""), [fault]);
}

#[test]
fn set_up_and_steps_of_no_level_are_named_with_the_levels_there_are() {
    let (change, number) = message("level-chair-change");
    for id in ["level-sofa-set-up", "level-sofa-step-1"] {
        let levels = ["wall", "chair", "standing"].map(str::to_owned).to_vec();
        let kind = FaultKind::Exercise(ExerciseFault::NoSuchLevel { found: "sofa".into(), levels });
        let fault = FileFault { line: number + 1, field: id.into(), kind };
        assert_eq!(spanish_faults(&change, &format!("{change}{id} = x\n")), [fault]);
    }
}

#[test]
fn in_one_file_a_levels_texts_follow_the_same_rules() {
    let sample = Sample::one_file("sit-tall-chin-back");
    let spanish = sample.toml.find("text.es = { name = \"De pie, con la espalda en la pared\"").expect("in the sample");
    let line = 1 + sample.toml[..spanish].matches('\n').count() as u32;
    let whole_line = sample.toml[spanish..].lines().next().expect("a line");
    let set_up = whole_line.find(", set_up = ").expect("there");
    let steps = whole_line.find(", steps = ").expect("there");
    let without = format!("{}{}", &whole_line[..set_up], &whole_line[steps..]);
    fault(&sample, whole_line, &without, line, "", missing("set_up"));
    let without = format!("{} }}", &whole_line[..steps]);
    fault(&sample, whole_line, &without, line, "", missing("steps"));
    let one = format!("{}, steps = [\"Uno.\"] }}", &whole_line[..steps]);
    let differ = FaultKind::Exercise(ExerciseFault::ListsDiffer { here: 1, first: 5 });
    fault(&sample, whole_line, &one, line, "steps", differ);
}

#[test]
fn trials_on_one_leg_have_sides_and_those_on_both_feet_have_none() {
    let kind = FaultKind::Exercise(ExerciseFault::SidesOfKind);
    for (sample, from, to) in [
        (Sample::shipped("stand-turn-head"), "side = \"none\"", "side = \"each-side\""),
        (Sample::shipped("one-leg-stand"), "side = \"each-side\"", "side = \"none\""),
    ] {
        let found = faults(&sample, from, to);
        assert!(found.iter().any(|fault| (fault.field.as_str(), &fault.kind) == ("side", &kind)), "{found:?}");
    }
}
