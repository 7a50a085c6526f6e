//! Examples of reduced logs.

use super::*;
use crate::alarm::Trouble;
use crate::log::{Barrier, DayOffReason};
use crate::plan::{BodySide, Pattern, Schedule};
use crate::review::samples::{BACK, BALANCE, REPS, revised};
use crate::run::{Balance, SetUp, Share, Trial, TrialEnd, Work};
use crate::score::Score;
use crate::time::DayNumber;

/// The marks of the hold on one day.
fn hold_on(summary: &Summary, day: u16) -> Vec<(u8, Mark)> {
    let of_day = summary.days.iter().filter(|one| one.day == DayNumber(day) && one.item == HOLD);
    of_day.flat_map(|one| one.slots.clone()).collect()
}

fn taken_at_eight() -> (Stamp, LogEvent) {
    (at(0, 8 * 60), taken(1))
}

#[test]
fn what_is_not_over_is_left_out_and_what_was_done_is_not() {
    let done = run(1, at(1, 9 * 60 + 55), Some(slot(1, 1)), 3);
    let events = [taken_at_eight(), (done.started, LogEvent::Run(done))];
    let summary = sealed(&events, &[plan()], (0, 1), at(1, 9 * 60 + 58)).expect("a period");
    assert_eq!(hold_on(&summary, 1), [(1, Mark::Done)], "nine is still open, eleven to come, ten done ahead");
    assert_eq!(hold_on(&summary, 0).len(), 3);
    let later = sealed(&events, &[plan()], (0, 5), at(1, 11 * 60)).expect("a period");
    assert_eq!((later.until, hold_on(&later, 1)), (DayNumber(1), vec![(0, Mark::NotDone), (1, Mark::Done)]), "no day ahead");
}

#[test]
fn only_slots_after_the_taking_count() {
    let events = [(at(0, 9 * 60 + 30), taken(1))];
    let summary = sealed(&events, &[plan()], (0, 0), at(0, 23 * 60)).expect("a period");
    assert_eq!(hold_on(&summary, 0), [(1, Mark::NotDone), (2, Mark::NotDone)]);
    assert_eq!(sealed(&[], &[plan()], (0, 0), at(0, 23 * 60)).map(|summary| summary.days.len()), Some(0), "no card taken");
}

#[test]
fn a_period_needs_a_day_of_the_plan() {
    let events = [taken_at_eight()];
    assert_eq!(sealed(&events, &[plan()], (3, 2), at(5, 0)), None);
    assert_eq!(sealed(&events, &[plan()], (2, 4), at(1, 600)), None, "ahead of now");
    assert_eq!(sealed(&events, &[], (0, 1), at(1, 600)), None, "no plan");
    let early = sealed(&events, &[plan()], (-10, 1), at(1, 600)).expect("a period");
    assert_eq!((early.from, early.until), (DayNumber(0), DayNumber(1)));
}

#[test]
fn a_long_period_keeps_its_last_days() {
    let summary = sealed(&[taken_at_eight()], &[plan()], (0, 500), at(500, 600)).expect("a period");
    assert_eq!((summary.from, summary.until), (DayNumber(500 + 1 - MAX_DAYS), DayNumber(500)));
}

#[test]
fn marks_that_a_patient_can_give() {
    let events = [
        taken_at_eight(),
        (at(1, 9 * 60 + 5), LogEvent::Run(run(1, at(1, 9 * 60 + 5), Some(slot(1, 0)), 2))),
        (at(1, 10 * 60 + 5), LogEvent::Skipped { slot: slot(1, 1), reason: Barrier::NoTime }),
        (at(2, 8 * 60), LogEvent::DaysOff { from: slot(2, 0).day, until: slot(2, 0).day, why: DayOffReason::Ill }),
        (
            at(3, 8 * 60),
            LogEvent::Trouble { trouble: Trouble::Other, item: Some(HOLD), id: None, circumstances: Default::default() },
        ),
    ];
    let summary = sealed(&events, &[plan()], (1, 3), at(4, 3 * 60)).expect("a period");
    let partly = Mark::Partly(Share { done: 2, of: 3 });
    assert_eq!(hold_on(&summary, 1), [(0, partly), (1, Mark::Skipped(Barrier::NoTime)), (2, Mark::NotDone)]);
    assert!(hold_on(&summary, 2).iter().all(|(_, mark)| *mark == Mark::DayOff(DayOffReason::Ill)));
    assert!(hold_on(&summary, 3).iter().all(|(_, mark)| *mark == Mark::Paused));
    let reps = summary.days.iter().find(|one| one.day == DayNumber(3) && one.item == REPS).expect("asked for");
    assert_eq!(reps.slots, [(0, Mark::NotDone)], "another exercise is not paused");
}

/// A second card, in force from half past ten of day 2, on which the hold is due at eleven and at fifteen.
fn second() -> Plan {
    let mut second = revised(2, 2);
    second.prescription.items[0].schedule.pattern = Pattern::At { times: vec![11 * 60, 15 * 60] };
    second
}

#[test]
fn two_cards_on_one_day_each_keep_their_part() {
    let events = [
        taken_at_eight(),
        (at(2, 9 * 60 + 5), LogEvent::Run(run(1, at(2, 9 * 60 + 5), Some(slot(2, 0)), 3))),
        (at(2, 10 * 60 + 30), taken(2)),
    ];
    let summary = sealed(&events, &[plan(), second()], (2, 3), at(4, 3 * 60)).expect("a period");
    let of_hold = summary.days.iter().filter(|one| one.item == HOLD);
    let told: Vec<_> = of_hold.map(|one| (one.day.0, one.revision, one.slots.clone())).collect();
    let passed = |numbers: &[u8]| numbers.iter().map(|number| (*number, Mark::NotDone)).collect::<Vec<_>>();
    let before = vec![(0, Mark::Done), (1, Mark::NotDone)];
    assert_eq!(told, [(2, 1, before), (2, 2, passed(&[0, 1])), (3, 2, passed(&[0, 1]))]);
    assert_eq!(summary.taken.iter().map(|taken| (taken.day.0, taken.revision)).collect::<Vec<_>>(), [(0, 1), (2, 2)]);
}

#[test]
fn an_hour_that_does_not_exist_is_reported_once() {
    // The clocks are put forward from two to three in the night before day 3.
    let night = start() + chrono::Duration::days(3);
    let jump = night.and_time(chrono::NaiveTime::MIN).and_utc().timestamp() + 3600;
    let zone = Offsets { first_s: 3600, changes: vec![(jump, 7200)] };
    let at_half_past_two = |mut plan: Plan| {
        plan.prescription.items.truncate(1);
        plan.prescription.items[0].schedule.pattern = Pattern::At { times: vec![150] };
        plan
    };
    let revisions = [plan(), second()].map(at_half_past_two).map(|plan| (plan.header.revision, plan)).into();
    let history = fold(&[taken_at_eight(), (at(2, 10 * 60), taken(2))]);
    let period = Period { from: start(), until: night };
    let summary = reduce(
        &history,
        &revisions,
        &catalogue(),
        &zone,
        Sealing { log: PHONE, period, now: at(3, 600), counter: 1, note: None },
    )
    .expect("a period");
    let told: Vec<_> = summary.days.iter().map(|one| (one.day.0, one.revision, one.slots[0].1)).collect();
    assert_eq!(told, [(1, 1, Mark::NotDone), (2, 1, Mark::NotDone), (3, 2, Mark::NoSuchHour)]);
}

#[test]
fn the_schedule_that_was_agreed_counts() {
    let mut later = plan().prescription.items[0].schedule.clone();
    later.pattern = Pattern::At { times: vec![20 * 60] };
    let events = [(at(0, 8 * 60), LogEvent::Taken { revision: 1, agreed: vec![(HOLD, later.clone())] })];
    let open = sealed(&events, &[plan()], (0, 0), at(0, 23 * 60)).expect("a period");
    assert_eq!(hold_on(&open, 0), [], "its part of the day goes on until three o'clock");
    let summary = sealed(&events, &[plan()], (0, 0), at(1, 3 * 60)).expect("a period");
    assert_eq!(hold_on(&summary, 0), [(0, Mark::NotDone)]);
    assert_eq!(summary.taken[0].agreed, [(HOLD, later)]);
}

#[test]
fn an_alarm_goes_with_every_summary_until_a_card_clears_it() {
    let events = [
        taken_at_eight(),
        (at(1, 600), LogEvent::Trouble { trouble: Trouble::Nerve, item: None, id: None, circumstances: Default::default() }),
        (
            at(6, 600),
            LogEvent::Trouble { trouble: Trouble::Fell, item: Some(BALANCE), id: None, circumstances: Default::default() },
        ),
    ];
    let days = |plans: &[Plan], period| {
        let summary = sealed(&events, plans, period, at(9, 600)).expect("a period");
        summary.alarms.iter().map(|alarm| (alarm.n, alarm.day.0)).collect::<Vec<_>>()
    };
    assert_eq!(days(&[plan()], (4, 9)), [(2, 1), (3, 6)]);
    assert_eq!(days(&[plan()], (3, 4)), [(2, 1), (3, 6)], "also one after the period");
    let mut clears = revised(2, 0);
    clears.prescription.cleared = vec![crate::alarm::ClearedAlarm::of_entry(EntryRef { log: PHONE, n: 2 })];
    assert_eq!(days(&[plan(), clears.clone()], (4, 9)), [(3, 6)]);
    assert_eq!(days(&[plan(), clears], (0, 9)), [(2, 1), (3, 6)], "within the period a cleared one is included too");
}

#[test]
fn a_card_taken_after_the_period_is_not_of_it() {
    let events = [taken_at_eight(), (at(6, 600), taken(2))];
    let summary = sealed(&events, &[plan(), second()], (0, 4), at(9, 600)).expect("a period");
    assert_eq!(summary.taken.len(), 1);
}

#[test]
fn a_card_taken_by_a_clock_centuries_ahead_takes_no_day_from_the_one_before() {
    let events = [
        taken_at_eight(),
        (at(130_000, 600), taken(2)),
        (
            at(130_000, 601),
            LogEvent::Trouble { trouble: Trouble::Nerve, item: None, id: None, circumstances: Default::default() },
        ),
    ];
    let summary = sealed(&events, &[plan(), second()], (0, 4), at(9, 600)).expect("a period");
    let told: Vec<_> = summary.days.iter().filter(|one| one.item == HOLD).map(|one| (one.day.0, one.revision)).collect();
    assert_eq!(told, [(0, 1), (1, 1), (2, 1), (3, 1), (4, 1)]);
    assert_eq!(summary.taken.iter().map(|taken| taken.revision).collect::<Vec<_>>(), [1]);
    assert_eq!(summary.alarms.iter().map(|alarm| alarm.day.0).collect::<Vec<_>>(), [u16::MAX], "it must not be lost");
}

#[test]
fn ratings_are_reported_only_within_the_period_by_the_persons_day() {
    let score = Score::at_most_ten;
    let events = [
        taken_at_eight(),
        (at(1, 480), LogEvent::Morning { complaint: BACK, score: score(4) }),
        (at(1, 550), LogEvent::During { item: HOLD, score: score(5) }),
        (at(3, 170), LogEvent::During { item: HOLD, score: score(6) }),
        (at(3, 480), LogEvent::Morning { complaint: BACK, score: score(7) }),
    ];
    let summary = sealed(&events, &[plan()], (0, 2), at(5, 600)).expect("a period");
    let mornings: Vec<_> = summary.mornings.iter().map(|one| (one.n, one.day.0, one.score.points())).collect();
    let during: Vec<_> = summary.during.iter().map(|one| (one.n, one.day.0, one.item, one.score.points())).collect();
    assert_eq!(mornings, [(2, 1, 4)]);
    assert_eq!(during, [(3, 1, HOLD, 5), (4, 2, HOLD, 6)], "before three o'clock it is still the day before");
}

#[test]
fn runs_are_in_time_late_or_moved() {
    let mut plan = plan();
    plan.prescription.items[0].schedule = Schedule {
        days: [chrono::Weekday::Wed, chrono::Weekday::Fri].into_iter().collect(),
        pattern: Pattern::At { times: vec![18 * 60] },
    };
    let done = |n, day, minute, named| (at(day, minute), LogEvent::Run(run(n, at(day, minute), Some(named), 3)));
    let events = [taken_at_eight(), done(1, 0, 1080, slot(0, 0)), done(2, 2, 1141, slot(2, 0)), done(3, 8, 600, slot(7, 0))];
    let summary = sealed(&events, &[plan], (0, 9), at(9, 600)).expect("a period");
    let told: Vec<_> = summary.runs.iter().map(|run| (run.run.0, run.day.0, run.timing)).collect();
    assert_eq!(told, [(1, 0, RunTiming::InTime), (2, 2, RunTiming::Late), (3, 7, RunTiming::Moved)]);
}

#[test]
fn a_run_is_reported_with_its_dose_its_hour_and_its_trials() {
    let balance = plan().prescription.items[1].clone();
    let trial = |leg, held_ms, end| Trial { leg, held_ms, end };
    let trials =
        vec![trial(Some(BodySide::Left), 12_400, TrialEnd::Touch), trial(Some(BodySide::Right), 3_000, TrialEnd::CutOff)];
    let (surface, eyes) = (crate::catalogue::Surface::Firm, crate::catalogue::Eyes::Open);
    let work = Work::Balance(Balance { set_up: SetUp::OnSupport, surface, eyes, trials: trials.clone() });
    let extra = Run {
        item: BALANCE,
        exercise: balance.exercise.clone(),
        rung: balance.rung.clone(),
        dose: balance.dose,
        work,
        ..run(1, at(1, 18 * 60 + 59), None, 3)
    };
    let events = [taken_at_eight(), (extra.started, LogEvent::Run(extra))];
    let told = sealed(&events, &[plan()], (0, 1), at(1, 23 * 60)).expect("a period").runs.remove(0);
    assert_eq!(
        (told.hour, told.slot, told.day.0),
        (18, Some(0), 1),
        "it counts for the slot whose part of the day it is in"
    );
    assert_eq!((told.dose, told.parts), (Share { done: 1, of: 6 }, Share { done: 1, of: 6 }));
    assert_eq!(told.stance.map(|stance| (stance.target_s, stance.trials)), Some((30, trials)));
}

#[test]
fn delays_are_weekly_quartiles_by_nearest_rank() {
    let mut events = vec![taken_at_eight()];
    for (n, (day, delay_s)) in (1u32..).zip([(1, 10), (2, 20), (3, 30), (4, 400), (8, 70)]) {
        let due = at(day, 9 * 60);
        events.push((due, LogEvent::Reminded { slot: slot(day, 0) }));
        let begun = due.plus_ms(delay_s * 1000);
        events.push((begun, LogEvent::Run(run(n, begun, Some(slot(day, 0)), 3))));
    }
    let before = at(5, 9 * 60 - 2);
    events.push((before, LogEvent::Run(run(9, before, Some(slot(5, 0)), 3))));
    events.push((at(5, 9 * 60), LogEvent::Reminded { slot: slot(5, 0) }));
    events.sort_by_key(|(at, _)| at.utc_ms);
    let summary = sealed(&events, &[plan()], (0, 9), at(9, 600)).expect("a period");
    let week = |week, runs, [lower_s, median_s, upper_s]: [u16; 3]| WeekDelay { week, runs, lower_s, median_s, upper_s };
    assert_eq!(summary.delays, [week(0, 4, [10, 20, 30]), week(1, 1, [70, 70, 70])]);
}
