//! Each rule and its limits.

use super::{facts, item, met};
use crate::alarm::Trouble;
use crate::catalogue::{Dose, Quantity};
use crate::id::EntryRef;
use crate::plan::{Item, Side};
use crate::review::samples::{HOLD_DOSE, PHONE, REPS_DOSE, catalogue, rung};
use crate::score::Score;
use crate::suggest::{Advice, Facts, Hindrance, Reached, Reason, Rise, Session, Step, advise, gate_open};
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
