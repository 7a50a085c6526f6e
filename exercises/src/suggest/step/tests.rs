//! Which step comes next, forward and back.

use super::*;
use crate::catalogue::{Basis, Catalogue, StepRule};
use crate::plan::{Band, Side};
use crate::review::samples::{self, BALANCE_DOSE, HOLD_DOSE, REPS_DOSE, catalogue, rung, three_times_a_day};

fn item(dose: Dose) -> Item {
    samples::item(dose, if matches!(dose, Dose::Balance { .. }) { Side::Both } else { Side::Neither })
}

fn to_rung(id: &str, dose: Dose) -> Step {
    Step::Rung { to: rung(id), dose }
}

/// The catalogue with rules of its own for the hold: 5 s more up to 15 s, then the next rung, then one repetition more up to 6.
fn with_step_rules() -> Catalogue {
    let mut catalogue = catalogue();
    let step = |quantity, by, most| StepForward { quantity, by, percent: 0, most, short_if_often: true };
    let rule = |grows| StepRule { grows, basis: Basis::WorkingRange };
    catalogue.exercises[0].step_rules = vec![
        rule(Grows::Dose(step(Quantity::HoldSeconds, 5, 15))),
        rule(Grows::Level),
        rule(Grows::Dose(step(Quantity::Repetitions, 1, 6))),
    ];
    catalogue
}

fn conditions<'a>(catalogue: &'a Catalogue, item: &Item) -> StepConditions<'a> {
    StepConditions { exercise: catalogue.get(&item.exercise), age: Some(AgeBand::From40), gate_open: true }
}

#[test]
fn the_order_of_steps_forward() {
    let catalogue = catalogue();
    let hold = |repetitions, hold_s| item(Dose::Hold { repetitions, hold_s, rest_s: 10 });
    let reps = |repetitions| {
        let Dose::Reps { sets, rest_s, tempo, .. } = REPS_DOSE else { panic!("repetitions") };
        item(Dose::Reps { sets, repetitions, rest_s, tempo })
    };
    let balance = |target_s| item(Dose::Balance { trials: 3, target_s, rest_s: 30 });
    let on = |id: &str, of: Item| Item { rung: Some(rung(id)), ..of };
    for (row, step) in [
        (hold(3, 10), Ok(Step::Change { quantity: Quantity::HoldSeconds, by: 5 })),
        (hold(3, 25), Ok(Step::Change { quantity: Quantity::HoldSeconds, by: 5 })),
        (hold(3, 26), Ok(Step::Change { quantity: Quantity::Repetitions, by: 1 })),
        (hold(9, 30), Ok(Step::Change { quantity: Quantity::Repetitions, by: 1 })),
        (hold(10, 30), Ok(to_rung("chair", HOLD_DOSE))),
        (on("chair", hold(10, 30)), Err(Hindrance::AtTheTop)),
        (Item { rung: None, ..hold(10, 30) }, Err(Hindrance::AtTheTop)),
        (on("gone", hold(10, 30)), Err(Hindrance::Unknown)),
        (reps(19), Ok(Step::Change { quantity: Quantity::Repetitions, by: 1 })),
        (reps(20), Ok(to_rung("low", REPS_DOSE))),
        (balance(55), Ok(Step::Change { quantity: Quantity::TargetSeconds, by: 5 })),
        (balance(56), Ok(to_rung("towel", BALANCE_DOSE))),
        (on("towel", balance(60)), Ok(to_rung("foam", BALANCE_DOSE))),
        (on("foam", balance(60)), Err(Hindrance::AtTheTop)),
        (on("firm-closed", balance(60)), Ok(to_rung("towel-closed", BALANCE_DOSE))),
    ] {
        assert_eq!(next(&row, conditions(&catalogue, &row)), step, "{:?} {:?}", row.rung, row.dose);
    }
}

#[test]
fn an_exercises_own_step_rules_in_their_order() {
    let catalogue = with_step_rules();
    let hold = |repetitions, hold_s| item(Dose::Hold { repetitions, hold_s, rest_s: 10 });
    let on = |id: &str, of: Item| Item { rung: Some(rung(id)), ..of };
    for (row, step) in [
        (hold(3, 10), Ok(Step::Change { quantity: Quantity::HoldSeconds, by: 5 })),
        (hold(3, 11), Ok(to_rung("chair", HOLD_DOSE))),
        (hold(2, 15), Ok(to_rung("chair", hold(2, 10).dose))),
        (on("chair", hold(3, 15)), Ok(Step::Change { quantity: Quantity::Repetitions, by: 1 })),
        (on("chair", hold(6, 15)), Err(Hindrance::AtTheTop)),
    ] {
        assert_eq!(next(&row, conditions(&catalogue, &row)), step, "{:?} {:?}", row.rung, row.dose);
    }
    let (more, planned) = (on("chair", hold(4, 15)), on("chair", hold(3, 15)));
    let fewer = Step::Change { quantity: Quantity::Repetitions, by: -1 };
    assert_eq!(undo(&more, &planned, catalogue.get(&more.exercise)), Some(fewer), "the rule that came last goes first");
}

#[test]
fn a_rung_that_is_not_allowed_yet_does_not_hinder_the_rules_after_it() {
    let mut catalogue = catalogue();
    let step = |most| StepForward { quantity: Quantity::TargetSeconds, by: 5, percent: 0, most, short_if_often: false };
    let rule = |grows| StepRule { grows, basis: Basis::StanceTime };
    catalogue.exercises[1].step_rules = [Grows::Dose(step(30)), Grows::Level, Grows::Dose(step(60))].map(rule).to_vec();
    let at = |target_s, gate_open| {
        let row = item(Dose::Balance { trials: 3, target_s, rest_s: 30 });
        next(&row, StepConditions { gate_open, ..conditions(&catalogue, &row) })
    };
    assert_eq!(at(30, true), Ok(to_rung("towel", BALANCE_DOSE)));
    assert_eq!(at(30, false), Ok(Step::Change { quantity: Quantity::TargetSeconds, by: 5 }));
    assert_eq!(at(60, false), Err(Hindrance::GateClosed), "the reason that is left");
}

#[test]
fn a_harder_rung_begins_with_its_own_dose_and_never_with_more_than_now() {
    let mut catalogue = catalogue();
    let own = Dose::Hold { repetitions: 5, hold_s: 6, rest_s: 20 };
    catalogue.exercises[0].ladders[0].rungs[1].dose = Some(own);
    catalogue.exercises[0].step_rules = vec![StepRule { grows: Grows::Level, basis: Basis::Convention }];
    let after = |repetitions, hold_s, rest_s| {
        let row = item(Dose::Hold { repetitions, hold_s, rest_s });
        next(&row, conditions(&catalogue, &row)).map(|step| step.apply(&row).dose)
    };
    assert_eq!(after(10, 30, 10), Ok(own));
    assert_eq!(after(2, 30, 10), Ok(Dose::Hold { repetitions: 2, hold_s: 6, rest_s: 20 }), "as few as now");
    assert_eq!(after(5, 5, 40), Ok(Dose::Hold { repetitions: 5, hold_s: 5, rest_s: 40 }), "as short, with as much rest");
}

#[test]
fn no_step_changes_a_test() {
    let mut catalogue = catalogue();
    catalogue.exercises[1].test = true;
    let row = item(BALANCE_DOSE);
    assert_eq!(next(&row, conditions(&catalogue, &row)), Err(Hindrance::Test));
    let on_towel = Item { rung: Some(rung("towel")), ..row };
    assert_eq!(back(&on_towel, catalogue.get(&on_towel.exercise)), None);
    assert_eq!(undo(&on_towel, &on_towel, catalogue.get(&on_towel.exercise)), None);
}

#[test]
fn what_is_due_every_hour_stays_within_two_minutes_of_work() {
    let catalogue = catalogue();
    let hourly =
        |repetitions, hold_s| Item { schedule: three_times_a_day(), ..item(Dose::Hold { repetitions, hold_s, rest_s: 5 }) };
    for (row, step) in [
        (hourly(5, 15), Ok(Step::Change { quantity: Quantity::HoldSeconds, by: 5 })),
        (hourly(6, 15), Ok(Step::Change { quantity: Quantity::HoldSeconds, by: 5 })),
        (hourly(7, 15), Ok(Step::Change { quantity: Quantity::Repetitions, by: 1 })),
        (hourly(8, 15), Ok(to_rung("chair", hourly(3, 10).dose))),
        (Item { side: Side::Both, ..hourly(4, 15) }, Ok(to_rung("chair", hourly(3, 10).dose))),
    ] {
        assert_eq!(next(&row, conditions(&catalogue, &row)), step, "{:?}", row.dose);
    }
    let every = |minutes| {
        let mut row = hourly(8, 15);
        row.schedule.pattern = Pattern::Every { minutes, from: 540, to: 1020 };
        next(&row, conditions(&catalogue, &row))
    };
    assert_eq!(every(120), Ok(to_rung("chair", hourly(3, 10).dose)));
    assert_eq!(every(121), Ok(Step::Change { quantity: Quantity::HoldSeconds, by: 5 }));
}

#[test]
fn the_gates_of_soft_surfaces_and_closed_eyes() {
    let catalogue = catalogue();
    let full = Dose::Balance { trials: 3, target_s: 60, rest_s: 30 };
    let on = |id: &str| Item { rung: Some(rung(id)), ..item(full) };
    let step = |id: &str, age, gate_open| {
        let row = on(id);
        next(&row, StepConditions { age, gate_open, ..conditions(&catalogue, &row) })
    };
    let (young, old) = (Some(AgeBand::From60), Some(AgeBand::From65));
    assert_eq!(step("firm", young, false), Err(Hindrance::GateClosed));
    assert_eq!(step("firm", young, true), Ok(to_rung("towel", BALANCE_DOSE)));
    assert_eq!(step("firm", old, true), Ok(to_rung("towel", BALANCE_DOSE)), "soft with eyes open is open to all");
    assert_eq!(step("firm", None, true), Ok(to_rung("towel", BALANCE_DOSE)));
    assert_eq!(step("firm-closed", young, true), Ok(to_rung("towel-closed", BALANCE_DOSE)));
    assert_eq!(step("firm-closed", young, false), Err(Hindrance::GateClosed));
    assert_eq!(step("firm-closed", old, true), Err(Hindrance::SoftAndClosed));
    assert_eq!(step("firm-closed", None, true), Err(Hindrance::SoftAndClosed));
    for age in AgeBand::ALL {
        let refused = step("firm-closed", Some(age), true) == Err(Hindrance::SoftAndClosed);
        assert_eq!(refused, age >= AgeBand::From65, "{age:?}");
    }
}

#[test]
fn a_step_never_closes_the_eyes() {
    let mut catalogue = catalogue();
    let stance = catalogue.exercises.iter_mut().find(|exercise| exercise.id.as_str() == "one-leg").expect("there");
    let closed = stance.ladders[1].rungs.clone();
    stance.ladders[0].rungs.extend(closed);
    stance.ladders.truncate(1);
    let full = Dose::Balance { trials: 3, target_s: 60, rest_s: 30 };
    let row = Item { rung: Some(rung("foam")), ..item(full) };
    assert_eq!(next(&row, conditions(&catalogue, &row)), Err(Hindrance::EyesApart));
}

#[test]
fn the_order_of_steps_back() {
    let catalogue = catalogue();
    let hold = |repetitions, hold_s| item(Dose::Hold { repetitions, hold_s, rest_s: 10 });
    let balance = |trials, target_s| item(Dose::Balance { trials, target_s, rest_s: 30 });
    let on = |id: &str, of: Item| Item { rung: Some(rung(id)), ..of };
    for (row, step) in [
        (on("chair", hold(3, 10)), Some(to_rung("wall", HOLD_DOSE))),
        (hold(3, 10), Some(Step::Change { quantity: Quantity::HoldSeconds, by: -5 })),
        (hold(3, 6), Some(Step::Change { quantity: Quantity::HoldSeconds, by: -5 })),
        (hold(3, 5), Some(Step::Change { quantity: Quantity::Repetitions, by: -1 })),
        (hold(1, 5), None),
        (item(REPS_DOSE), Some(Step::Change { quantity: Quantity::Repetitions, by: -1 })),
        (on("foam", balance(3, 30)), Some(to_rung("towel", BALANCE_DOSE))),
        (balance(3, 10), Some(Step::Change { quantity: Quantity::TargetSeconds, by: -5 })),
        (balance(3, 9), Some(Step::Change { quantity: Quantity::Trials, by: -1 })),
        (balance(1, 5), None),
    ] {
        assert_eq!(back(&row, catalogue.get(&row.exercise)), step, "{:?} {:?}", row.rung, row.dose);
    }
}

#[test]
fn what_was_added_since_the_card_goes_first() {
    let catalogue = catalogue();
    let longer = Step::Change { quantity: Quantity::TargetSeconds, by: 5 }.apply(&item(BALANCE_DOSE));
    let hold = |repetitions, hold_s| item(Dose::Hold { repetitions, hold_s, rest_s: 10 });
    let on = |id: &str, of: Item| Item { rung: Some(rung(id)), ..of };
    let more = Step::Change { quantity: Quantity::Repetitions, by: 1 }.apply(&item(REPS_DOSE));
    for (row, planned, step) in [
        (on("low", more), on("low", item(REPS_DOSE)), Step::Change { quantity: Quantity::Repetitions, by: -1 }),
        (on("low", item(REPS_DOSE)), on("low", item(REPS_DOSE)), to_rung("high", REPS_DOSE)),
        (on("chair", hold(3, 15)), on("chair", hold(3, 10)), Step::Change { quantity: Quantity::HoldSeconds, by: -5 }),
        (on("chair", hold(4, 15)), on("chair", hold(3, 10)), Step::Change { quantity: Quantity::Repetitions, by: -1 }),
        (on("chair", hold(4, 15)), on("wall", hold(3, 10)), to_rung("wall", hold(4, 15).dose)),
        (on("chair", hold(3, 10)), on("chair", hold(3, 10)), to_rung("wall", HOLD_DOSE)),
        (on("towel", item(BALANCE_DOSE)), on("towel", item(BALANCE_DOSE)), to_rung("firm", BALANCE_DOSE)),
        (on("towel", longer), on("towel", item(BALANCE_DOSE)), Step::Change { quantity: Quantity::TargetSeconds, by: -5 }),
    ] {
        assert_eq!(undo(&row, &planned, catalogue.get(&row.exercise)), Some(step), "{:?} {:?}", row.rung, row.dose);
    }
}

#[test]
fn a_heavier_load_comes_after_the_dose_and_before_the_level_and_a_lighter_one_first() {
    let catalogue = catalogue();
    let band = |band| Some(Load::Band(band));
    let grown = REPS_DOSE.with(Quantity::Repetitions, 20);
    let row = |dose, load| Item { rung: Some(rung("high")), load, ..item(dose) };
    let forward = |item: &Item| next(item, conditions(&catalogue, item));
    let light = row(REPS_DOSE, band(Band::Light));
    assert_eq!(forward(&light), Ok(Step::Change { quantity: Quantity::Repetitions, by: 1 }));
    let light = row(grown, band(Band::Light));
    let heavier = Step::Load { to: Load::Band(Band::Medium), dose: REPS_DOSE };
    assert_eq!(forward(&light), Ok(heavier.clone()));
    assert_eq!((heavier.apply(&light).load, heavier.apply(&light).dose), (band(Band::Medium), REPS_DOSE));
    let top = row(grown, band(Band::ExtraStrong));
    assert_eq!(forward(&top), Ok(to_rung("low", REPS_DOSE)));
    let easier = |item: &Item| back(item, catalogue.get(&item.exercise));
    let medium = row(REPS_DOSE, band(Band::Medium));
    assert_eq!(easier(&medium), Some(Step::Load { to: Load::Band(Band::Light), dose: REPS_DOSE }));
    let low = Item { rung: Some(rung("low")), ..row(REPS_DOSE, band(Band::Light)) };
    assert_eq!(easier(&low), Some(to_rung("high", REPS_DOSE)));
}
