//! Each rule and its limits.

use super::{facts, item, met};
use crate::alarm::Trouble;
use crate::catalogue::kind::StepForward;
use crate::catalogue::{Basis, Dose, Grows, Quantity, StepRule};
use crate::id::EntryRef;
use crate::plan::{AgeBand, Item, Pattern, Side};
use crate::review::samples::{BALANCE_DOSE, HOLD_DOSE, PHONE, REPS_DOSE, catalogue, rung, three_times_a_day};
use crate::score::Score;
use crate::suggest::StepConditions;
use crate::suggest::{Advice, Facts, Hindrance, Reached, Reason, Rise, Session, Step, advise, back, gate_open, next, undo};
use crate::time::DayNumber;

const ENTRY: EntryRef = EntryRef { log: PHONE, n: 9 };
const FIVE_MORE: Advice = Advice::Advance(Step::Change { quantity: Quantity::HoldSeconds, by: 5 });

fn to_rung(id: &str, dose: Dose) -> Step {
    Step::Rung { to: rung(id), dose }
}

#[track_caller]
fn check(facts: &Facts<'_>, advice: Advice, reason: Reason) -> Vec<u16> {
    let got = advise(facts);
    assert_eq!((&got.advice, &got.reason), (&advice, &reason));
    assert_eq!((got.item, &got.rung, got.dose), (facts.item.id, &facts.item.rung, facts.item.dose));
    got.based_on.iter().map(|day| day.0).collect()
}

#[track_caller]
fn hold(sessions: &[Session], advice: Advice, reason: Reason) {
    check(&facts(&catalogue(), &item(HOLD_DOSE), sessions), advice, reason);
}

fn reached(session: Session, reached: Reached) -> Session {
    Session { reached, ..session }
}

fn morning(session: Session, morning: Option<bool>) -> Session {
    Session { morning, ..session }
}

fn unrated(session: Session) -> Session {
    Session { pain: None, morning: None, ..session }
}

#[test]
fn met_in_two_sessions_with_little_pain_advances_by_one_factor() {
    hold(&[met(10, 0), met(12, 3)], FIVE_MORE, Reason::MetTwice);
    let catalogue = catalogue();
    let chosen = item(HOLD_DOSE);
    let days = check(&facts(&catalogue, &chosen, &[met(8, 9), met(10, 0), met(12, 3)]), FIVE_MORE, Reason::MetTwice);
    assert_eq!(days, [10, 12], "older sessions do not count");
    hold(&[reached(met(8, 0), Reached::Missed), met(10, 0), met(12, 0)], FIVE_MORE, Reason::MetTwice);
}

#[test]
fn too_few_sessions_keep() {
    hold(&[], Advice::Keep, Reason::TooFewSessions { sessions: 0 });
    hold(&[met(10, 0)], Advice::Keep, Reason::MetOnce);
    hold(&[reached(met(10, 0), Reached::Short)], Advice::Keep, Reason::TooFewSessions { sessions: 1 });
    hold(&[reached(met(10, 0), Reached::Missed)], Advice::Keep, Reason::TooFewSessions { sessions: 1 });
}

#[test]
fn the_target_decides_between_forward_and_keep() {
    let short = reached(met(12, 0), Reached::Short);
    let missed = reached(met(12, 0), Reached::Missed);
    hold(&[met(10, 0), short], Advice::Keep, Reason::NotMet);
    hold(&[met(10, 0), missed], Advice::Keep, Reason::NotMet);
    hold(&[Session { day: DayNumber(10), ..missed }, met(12, 0)], Advice::Keep, Reason::MetOnce);
    hold(&[Session { day: DayNumber(10), ..short }, met(12, 0)], Advice::Keep, Reason::MetOnce);
    hold(&[Session { day: DayNumber(10), ..short }, missed], Advice::Keep, Reason::NotMet);
}

#[test]
fn a_target_missed_in_two_sessions_steps_back() {
    let missed = |day| reached(met(day, 0), Reached::Missed);
    let mut on_the_chair = item(HOLD_DOSE);
    on_the_chair.rung = Some(rung("chair"));
    let catalogue = catalogue();
    let row = facts(&catalogue, &on_the_chair, &[missed(10), missed(12)]);
    assert_eq!(check(&row, Advice::StepBack(to_rung("wall", HOLD_DOSE)), Reason::MissedTwice), [10, 12]);
    hold(
        &[missed(10), missed(12)],
        Advice::StepBack(Step::Change { quantity: Quantity::HoldSeconds, by: -5 }),
        Reason::MissedTwice,
    );
    hold(&[missed(10), reached(met(11, 0), Reached::Short), missed(12)], Advice::Keep, Reason::NotMet);
    let least = item(Dose::Hold { repetitions: 1, hold_s: 5, rest_s: 0 });
    let row = facts(&catalogue, &least, &[missed(10), missed(12)]);
    check(&row, Advice::Keep, Reason::MissedTwice);
}

#[test]
fn pain_and_its_borders() {
    let back = Advice::StepBack(Step::Change { quantity: Quantity::HoldSeconds, by: -5 });
    hold(&[met(10, 3), met(12, 3)], FIVE_MORE, Reason::MetTwice);
    hold(&[met(10, 3), met(12, 4)], Advice::Keep, Reason::PainBetween { score: Score::at_most_ten(4) });
    hold(&[met(10, 5), met(12, 0)], Advice::Keep, Reason::PainBetween { score: Score::at_most_ten(5) });
    hold(
        &[met(10, 0), met(12, 6)],
        back.clone(),
        Reason::PainTooHigh { score: Score::at_most_ten(6), limit: Score::at_most_ten(5) },
    );
    hold(
        &[met(10, 10), met(12, 0)],
        back,
        Reason::PainTooHigh { score: Score::at_most_ten(10), limit: Score::at_most_ten(5) },
    );
    hold(&[met(8, 10), met(10, 0), met(12, 0)], FIVE_MORE, Reason::MetTwice);
}

#[test]
fn the_items_own_limit_holds_where_it_is_lower() {
    let catalogue = catalogue();
    let back = Advice::StepBack(Step::Change { quantity: Quantity::HoldSeconds, by: -5 });
    let low = Item { pain_limit: Score::at_most_ten(2), ..item(HOLD_DOSE) };
    check(&facts(&catalogue, &low, &[met(10, 2), met(12, 2)]), FIVE_MORE, Reason::MetTwice);
    let row = facts(&catalogue, &low, &[met(10, 0), met(12, 3)]);
    check(&row, back.clone(), Reason::PainTooHigh { score: Score::at_most_ten(3), limit: Score::at_most_ten(2) });
    let high = Item { pain_limit: Score::at_most_ten(8), ..item(HOLD_DOSE) };
    let row = facts(&catalogue, &high, &[met(10, 0), met(12, 6)]);
    check(&row, back, Reason::PainTooHigh { score: Score::at_most_ten(6), limit: Score::at_most_ten(5) });
    let row = facts(&catalogue, &high, &[met(10, 0), met(12, 4)]);
    check(&row, Advice::Keep, Reason::PainBetween { score: Score::at_most_ten(4) });
}

#[test]
fn pain_at_the_easiest_is_to_stop_and_talk() {
    let catalogue = catalogue();
    let least = item(Dose::Hold { repetitions: 1, hold_s: 5, rest_s: 0 });
    let row = facts(&catalogue, &least, &[met(10, 0), met(12, 6)]);
    check(&row, Advice::StopAndTalk, Reason::PainTooHigh { score: Score::at_most_ten(6), limit: Score::at_most_ten(5) });
    let row = facts(&catalogue, &least, &[met(10, 0), morning(met(12, 2), Some(false))]);
    check(&row, Advice::StopAndTalk, Reason::NotSettled);
}

#[test]
fn the_morning_after() {
    let back = Advice::StepBack(Step::Change { quantity: Quantity::HoldSeconds, by: -5 });
    hold(&[met(10, 2), morning(met(12, 2), Some(false))], back.clone(), Reason::NotSettled);
    hold(&[morning(met(10, 4), Some(false)), met(12, 0)], back, Reason::NotSettled);
    hold(&[met(10, 2), morning(met(12, 1), None)], Advice::Keep, Reason::MorningUnanswered);
    hold(&[morning(met(10, 3), None), met(12, 1)], Advice::Keep, Reason::MorningUnanswered);
    hold(&[met(10, 0), morning(met(12, 0), None)], FIVE_MORE, Reason::MetTwice);
    hold(&[met(10, 0), morning(met(12, 5), None)], Advice::Keep, Reason::PainBetween { score: Score::at_most_ten(5) });
}

#[test]
fn unanswered_pain_is_not_advanced() {
    hold(&[met(10, 0), unrated(met(12, 0))], Advice::Keep, Reason::PainUnanswered);
    hold(&[unrated(met(10, 0)), met(12, 0)], Advice::Keep, Reason::PainUnanswered);
    let catalogue = catalogue();
    let chosen = item(HOLD_DOSE);
    let nothing_asked =
        Facts { asks_pain: false, ..facts(&catalogue, &chosen, &[unrated(met(10, 0)), unrated(met(12, 0))]) };
    check(&nothing_asked, FIVE_MORE, Reason::MetTwice);
}

#[test]
fn todays_session_waits_for_its_morning() {
    let before = [met(17, 0), met(19, 0)];
    let with_today = |today: Session| [before[0], before[1], today];
    hold(&with_today(morning(met(20, 3), None)), FIVE_MORE, Reason::MetTwice);
    hold(&with_today(unrated(met(20, 0))), FIVE_MORE, Reason::MetTwice);
    hold(&with_today(reached(met(20, 0), Reached::Short)), FIVE_MORE, Reason::MetTwice);
    hold(&with_today(reached(met(20, 0), Reached::Missed)), Advice::Keep, Reason::NotMet);
    hold(&with_today(morning(met(20, 4), None)), Advice::Keep, Reason::PainBetween { score: Score::at_most_ten(4) });
    hold(&[before[1], met(20, 0)], Advice::Keep, Reason::MetOnce);
    let back = Advice::StepBack(Step::Change { quantity: Quantity::HoldSeconds, by: -5 });
    hold(&with_today(met(20, 7)), back, Reason::PainTooHigh { score: Score::at_most_ten(7), limit: Score::at_most_ten(5) });
}

#[test]
fn pain_that_rises_for_two_weeks_steps_back() {
    let catalogue = catalogue();
    let chosen = item(HOLD_DOSE);
    let rise = Rise { base: 1.0, week_before: 3.0, last_week: 3.0 };
    let row = Facts { rise: Some(rise), ..facts(&catalogue, &chosen, &[met(10, 3), met(12, 3)]) };
    check(&row, Advice::StepBack(Step::Change { quantity: Quantity::HoldSeconds, by: -5 }), Reason::PainRising(rise));
}

#[test]
fn one_step_a_week() {
    let catalogue = catalogue();
    let chosen = item(HOLD_DOSE);
    let stepped =
        |day: u16| Facts { last_step: Some(DayNumber(day)), ..facts(&catalogue, &chosen, &[met(17, 0), met(19, 0)]) };
    check(&stepped(14), Advice::Keep, Reason::StepThisWeek { stepped: DayNumber(14) });
    check(&stepped(13), FIVE_MORE, Reason::MetTwice);
}

#[test]
fn an_alarm_stops_the_item_and_holds_every_step_forward() {
    let catalogue = catalogue();
    let chosen = item(HOLD_DOSE);
    let good = facts(&catalogue, &chosen, &[met(10, 0), met(12, 0)]);
    let alarm = Some((ENTRY, Trouble::Nerve));
    let reason = Reason::Alarm { entry: ENTRY, trouble: Trouble::Nerve };
    let stopped = Facts { alarm, any_alarm: alarm, ..good.clone() };
    check(&stopped, Advice::StopAndTalk, reason);
    let elsewhere = Some((ENTRY, Trouble::Fell));
    let waiting = Facts { any_alarm: elsewhere, ..good };
    check(&waiting, Advice::Keep, Reason::Alarm { entry: ENTRY, trouble: Trouble::Fell });
}

#[test]
fn an_exercise_that_the_catalogue_does_not_know_is_kept() {
    let catalogue = catalogue();
    let chosen = item(Dose::Hold { repetitions: 10, hold_s: 30, rest_s: 0 });
    let row = Facts { exercise: None, ..facts(&catalogue, &chosen, &[met(10, 0), met(12, 0)]) };
    check(&row, Advice::Keep, Reason::Hindered(Hindrance::Unknown));
}

fn conditions<'a>(catalogue: &'a crate::catalogue::Catalogue, item: &Item) -> StepConditions<'a> {
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

/// The catalogue with rules of its own for the hold: 5 s more up to 15 s, then the next rung, then one repetition more up to 6.
fn with_step_rules() -> crate::catalogue::Catalogue {
    let mut catalogue = catalogue();
    let step = |quantity, by, most| StepForward { quantity, by, most, short_if_often: true };
    let rule = |grows| StepRule { grows, basis: Basis::WorkingRange };
    catalogue.exercises[0].step_rules = vec![
        rule(Grows::Dose(step(Quantity::HoldSeconds, 5, 15))),
        rule(Grows::Level),
        rule(Grows::Dose(step(Quantity::Repetitions, 1, 6))),
    ];
    catalogue
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
    let step = |most| StepForward { quantity: Quantity::TargetSeconds, by: 5, most, short_if_often: false };
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
fn thirty_seconds_on_two_days_for_each_leg() {
    use crate::plan::BodySide::{Left, Right};
    use crate::review::samples::{baseline, start};
    let on = |day: i64| start() + chrono::Duration::days(day);
    let home = [(on(1), Left, 300), (on(2), Left, 310), (on(2), Right, 300), (on(3), Right, 450)];
    assert!(gate_open(Side::Both, &home, &[]));
    assert!(!gate_open(Side::Both, &home[..3], &[]), "the right leg on one day only");
    assert!(gate_open(Side::Left, &home[..3], &[]));
    assert!(!gate_open(Side::Left, &[(on(1), Left, 300), (on(1), Left, 300)], &[]), "twice on one day is one day");
    assert!(!gate_open(Side::Left, &[(on(1), Left, 300), (on(2), Left, 299)], &[]));
    assert!(gate_open(Side::Left, &[(on(1), Left, 300)], &[baseline(Left, 300)]), "a visit is a day");
    assert!(!gate_open(Side::Left, &[(on(1), Left, 300)], &[baseline(Left, 299)]));
    assert!(!gate_open(Side::Left, &[(on(1), Left, 300)], &[baseline(Right, 450)]));
    let dated = |day, leg| crate::plan::StanceBaseline { taken: Some(on(day)), ..baseline(leg, 300) };
    assert!(!gate_open(Side::Left, &[(on(1), Left, 300)], &[dated(1, Left)]), "at home on the day of the visit");
    assert!(gate_open(Side::Left, &[(on(2), Left, 300)], &[dated(1, Left)]));
    assert!(!gate_open(Side::Left, &[], &[dated(1, Left), dated(1, Left)]), "two times of one visit");
    let closed = crate::plan::StanceBaseline { eyes: crate::catalogue::Eyes::Closed, ..baseline(Left, 450) };
    assert!(!gate_open(Side::Left, &[(on(1), Left, 300)], &[closed]), "only eyes open on the firm floor");
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
fn the_patients_copy_offers_a_step_only_where_it_may() {
    let catalogue = catalogue();
    let may = item(HOLD_DOSE);
    let may_not = Item { may_step: false, ..may.clone() };
    let suggestion = advise(&facts(&catalogue, &may_not, &[met(10, 0), met(12, 0)]));
    assert_eq!(suggestion.advice, FIVE_MORE, "the clinician still sees it");
    assert_eq!(suggestion.offered(&may_not), None);
    assert_eq!(suggestion.offered(&may), Some(&Step::Change { quantity: Quantity::HoldSeconds, by: 5 }));
    assert_eq!(suggestion.offered(&item(REPS_DOSE)), None, "another item's permission does not count");
}
