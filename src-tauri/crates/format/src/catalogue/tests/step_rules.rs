//! How an exercise is made harder: what is read, and every fault of it.
use super::*;
use exercises::catalogue::kind::StepForward;
use exercises::catalogue::{Basis, Grows, Quantity, StepRule};
use strum::VariantArray;

#[test]
fn step_rules_arrive_in_their_order() {
    let exercise = whole().read(&whole().toml).expect("shipped");
    let dose = |quantity, by, most| Grows::Dose(StepForward { quantity, by, percent: 0, most, short_if_often: true });
    let rules = [
        (dose(Quantity::HoldSeconds, 5, 15), Basis::WorkingRange),
        (dose(Quantity::Repetitions, 1, 5), Basis::WorkingRange),
        (Grows::Level, Basis::Convention),
    ];
    assert_eq!(exercise.step_rules, rules.map(|(grows, basis)| StepRule { grows, basis }));
    assert_eq!(exercise.grows(), rules.map(|(grows, _)| grows));
    let target = StepForward { quantity: Quantity::TargetSeconds, by: 5, percent: 0, most: 60, short_if_often: false };
    assert_eq!(balance().read(&balance().toml).expect("shipped").grows()[0], Grows::Dose(target));
}

#[test]
fn an_exercise_without_step_rules_has_those_of_its_kind() {
    let first = whole().toml.find("[[step]]").expect("there");
    let last = whole().toml.find("[[ladder]]").expect("there");
    let without = format!("{}{}", &whole().toml[..first], &whole().toml[last..]);
    let exercise = whole().read(&without).expect("allowed");
    assert_eq!(exercise.step_rules, []);
    let of_kind = exercise.kind.rules().forward().iter().copied().map(Grows::Dose).chain([Grows::Level]);
    assert!(exercise.grows().into_iter().eq(of_kind));
}

#[test]
fn what_grows_is_the_level_or_a_part_of_the_dose_that_steps_change() {
    let allowed = |words: &[&str], found| unknown_word(found, words);
    let hold = ["repetitions", "hold_s", "level"];
    fault_there(&whole(), "grows = \"hold_s\"", "grows = \"rest_s\"", "grows", allowed(&hold, "rest_s"));
    fault_there(&whole(), "grows = \"hold_s\"", "grows = \"weight\"", "grows", allowed(&hold, "weight"));
    let trials = ["trials", "target_s", "level"];
    fault_there(&balance(), "grows = \"target_s\"", "grows = \"sets\"", "grows", allowed(&trials, "sets"));
}

#[test]
fn a_step_has_an_amount_a_limit_and_a_basis() {
    let found = |from: &str, to: &str| faults(&whole(), from, to);
    let gone = |from: &str, field: &str| {
        let found = found(from, "");
        assert_eq!((found.len(), &found[0].kind), (1, &missing(field)), "{found:?}");
    };
    gone("by = 5\n", "by");
    gone("to = 15\n", "to");
    gone("\nbasis = \"working-range\"", "basis");
    gone("grows = \"hold_s\"\n", "grows");
    fault_there(&whole(), "by = 5", "by = 0", "by", FaultKind::NumberRange { least: 1, most: 120 });
    fault_there(&whole(), "to = 15", "to = 121", "to", FaultKind::NumberRange { least: 1, most: 120 });
    let level = found("grows = \"level\"\n", "grows = \"level\"\nby = 1\n");
    assert!(
        matches!(&level[..], [FileFault { kind: FaultKind::UnknownField { found, .. }, .. }] if found == "by"),
        "{level:?}"
    );
    let basis = found("\nbasis = \"working-range\"", "\nbasis = \"hearsay\"");
    assert!(matches!(&basis[..], [FileFault { field, kind: FaultKind::UnknownWord { .. }, .. }] if field == "basis"));
}

#[test]
fn a_test_has_no_step_rules() {
    let rule = "\n[[step]]\ngrows = \"level\"\nbasis = \"convention\"\n\n[[ladder]]\n";
    let timed = Sample::shipped("one-leg-timed");
    let found = faults(&timed, "\n[[ladder]]\n", rule);
    let step = FaultKind::Exercise(ExerciseFault::StepOfTest);
    assert!(matches!(&found[..], [FileFault { field, kind, .. }] if field == "step" && *kind == step), "{found:?}");
    assert!(timed.read(&timed.toml).expect("shipped").test);
}

#[test]
fn only_what_was_read_is_named_as_a_source() {
    let with: Vec<Basis> = Basis::VARIANTS.iter().copied().filter(|basis| basis.source().is_some()).collect();
    assert_eq!(with, [Basis::StanceTime, Basis::GradedActivity], "a convention and a recalled figure have no source");
}
