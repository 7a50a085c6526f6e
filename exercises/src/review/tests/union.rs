//! United summaries: their general properties, then what an arriving summary adds.

use crate::alarm::Trouble;
use crate::history::Mark;
use crate::id::{EntryRef, LogId};
use crate::log::Barrier;
use crate::review::samples::{
    BACK, DESK, HOLD, PHONE, REPS, alarm, catalogue, item_day, morning, plan, revisions, run, settled, summary,
};
use crate::review::{Review, build};
use crate::run::{RunEnd, Share};
use crate::score::Score;
use crate::summary::union::{ArrivalEffect, arrival_effect, unite};
use crate::summary::{RatedOn, Summary, WeekDelay};
use crate::time::DayNumber;
use proptest::prelude::*;
use std::collections::BTreeSet;

fn page(summaries: &[Summary]) -> Review {
    build(&revisions([plan()]), &catalogue(), summaries).expect("a plan and a summary")
}

#[test]
fn of_one_log_the_higher_counter_counts() {
    let mut old = summary(PHONE, 1, 0, 3);
    old.days.push(item_day(3, HOLD, &[Mark::Done]));
    old.runs.push(run(7, 3, HOLD, Some(0)));
    let mut new = summary(PHONE, 2, 2, 5);
    new.days.push(item_day(3, HOLD, &[Mark::Done, Mark::NotDone, Mark::Done]));
    new.runs.push(crate::summary::RunOn { end: RunEnd::Stopped, ..run(7, 3, HOLD, Some(0)) });
    for order in [[&old, &new], [&new, &old]] {
        let united = unite(order).expect("two");
        assert_eq!(united.days[&(PHONE, DayNumber(3), HOLD)], new.days.iter().collect::<Vec<_>>());
        assert_eq!(united.runs[&(PHONE, new.runs[0].run)], &new.runs[0]);
        assert_eq!(united.covered, (0..=5).map(DayNumber).collect::<BTreeSet<_>>());
    }
}

#[test]
fn of_one_name_in_one_summary_the_last_counts() {
    let mut told = summary(PHONE, 1, 0, 3);
    told.mornings = vec![morning(4, 1, BACK, 6), morning(4, 1, BACK, 2)];
    assert_eq!(unite([&told]).expect("one").mornings[&EntryRef { log: PHONE, n: 4 }].score, Score::at_most_ten(2));
}

#[test]
fn what_only_an_older_summary_contains_is_kept() {
    let mut old = summary(PHONE, 1, 0, 3);
    old.days.push(item_day(1, REPS, &[Mark::Done]));
    old.mornings.push(morning(4, 1, BACK, 6));
    old.settled.push(settled(5, 2, BACK, true));
    let new = summary(PHONE, 2, 3, 5);
    let united = unite([&new, &old]).expect("two");
    assert_eq!(united.days[&(PHONE, DayNumber(1), REPS)], old.days.iter().collect::<Vec<_>>());
    assert_eq!(united.mornings[&EntryRef { log: PHONE, n: 4 }].score, Score::at_most_ten(6));
    assert_eq!(united.settled.len(), 1);
}

#[test]
fn entries_of_two_logs_never_collide() {
    let with = |log: LogId, score| {
        let mut told = summary(log, 1, 0, 3);
        told.mornings.push(morning(4, 1, BACK, score));
        told.runs.push(run(1, 1, REPS, None));
        told
    };
    let told = [with(PHONE, 6), with(DESK, 3)];
    let united = unite(&told).expect("two");
    assert_eq!((united.mornings.len(), united.runs.len(), united.logs.len()), (2, 2, 2));
}

#[test]
fn another_plans_summary_is_left_out() {
    let mut other = summary(DESK, 1, 0, 3);
    other.plan = crate::id::PlanId([9; 8]);
    assert_eq!(unite([&summary(PHONE, 1, 0, 3), &other]).map(|united| united.logs.len()), Some(1));
    assert_eq!(build(&revisions([plan()]), &catalogue(), &[other.clone()]), None);
    assert_eq!(page(&[other, summary(PHONE, 1, 0, 3)]).logs, 1);
    assert_eq!(unite([]), None);
}

#[test]
fn of_two_reports_of_a_week_the_fuller_counts() {
    let delay = |runs, median_s| WeekDelay { week: 0, runs, lower_s: 10, median_s, upper_s: 900 };
    let with = |counter, runs, median_s| {
        let mut told = summary(PHONE, counter, 0, 6);
        told.delays.push(delay(runs, median_s));
        told
    };
    assert_eq!(page(&[with(1, 9, 60), with(2, 3, 500)]).delays, [delay(9, 60)]);
    assert_eq!(page(&[with(1, 9, 60), with(2, 9, 500)]).delays, [delay(9, 500)]);
}

#[test]
fn what_an_arriving_summary_adds() {
    let mut first = summary(PHONE, 2, 3, 9);
    first.days.push(item_day(4, HOLD, &[Mark::Done, Mark::NotDone, Mark::NotDone]));
    assert_eq!(arrival_effect(&[], &first), ArrivalEffect::New { days: 7 });
    assert_eq!(arrival_effect(std::slice::from_ref(&first), &first), ArrivalEffect::Known, "the same file twice");
    let later = summary(PHONE, 3, 8, 12);
    assert_eq!(arrival_effect(std::slice::from_ref(&first), &later), ArrivalEffect::New { days: 3 });
    let mut older = summary(PHONE, 1, 3, 5);
    older.days.push(item_day(4, HOLD, &[Mark::Done]));
    assert_eq!(arrival_effect(std::slice::from_ref(&first), &older), ArrivalEffect::Known, "the newer one knows better");
    older.mornings.push(morning(7, 5, BACK, 4));
    assert_eq!(arrival_effect(std::slice::from_ref(&first), &older), ArrivalEffect::Filled { days: 1 });
}

#[test]
fn a_second_device_fills_days_that_were_covered() {
    let mut desk = summary(DESK, 1, 2, 4);
    desk.days.push(item_day(3, HOLD, &[Mark::Done]));
    desk.rated.push(RatedOn { n: 3, day: DayNumber(4), activity: crate::id::ActivityId(1), score: Score::at_most_ten(7) });
    assert_eq!(arrival_effect(&[summary(PHONE, 1, 0, 9)], &desk), ArrivalEffect::Filled { days: 2 });
    desk.note = Some("away on Friday".into());
    desk.days.clear();
    desk.rated.clear();
    assert_eq!(arrival_effect(&[summary(PHONE, 1, 0, 9)], &desk), ArrivalEffect::Filled { days: 0 }, "a device and a note");
}

fn any_mark() -> impl Strategy<Value = Mark> {
    prop::sample::select(vec![
        Mark::Done,
        Mark::Partly(Share { done: 1, of: 3 }),
        Mark::Partly(Share { done: 2, of: 3 }),
        Mark::Skipped(Barrier::NoTime),
        Mark::DayOff(crate::log::DayOffReason::Ill),
        Mark::Paused,
        Mark::NotDone,
        Mark::NoSuchHour,
    ])
}

/// Summaries of one log as the program makes them: the numbers rise, the last day never moves back, and an entry never
/// changes. A later summary may know more about a day's slots or a run.
fn any_log(log: LogId) -> impl Strategy<Value = Vec<Summary>> {
    let one = (0u16..4, 0u16..8, prop::collection::vec((0u16..20, prop::collection::vec(any_mark(), 1..4)), 0..5));
    prop::collection::vec((one, any::<bool>()), 0..4).prop_map(move |all| {
        let mut until = 0;
        let made = (1u32..).zip(all).map(|(counter, ((ahead, back, days), noted))| {
            until += ahead;
            let mut told = summary(log, counter, until.saturating_sub(back), until);
            let within = days.into_iter().filter(|(day, _)| (told.from..=told.until).contains(&DayNumber(*day)));
            let named: std::collections::BTreeMap<u16, Vec<Mark>> = within.collect();
            told.days = named.iter().map(|(day, marks)| item_day(*day, HOLD, marks)).collect();
            told.runs = named.keys().map(|day| run(u32::from(*day) + 1, *day, HOLD, Some(0))).collect();
            told.mornings = named.keys().map(|day| morning(u32::from(*day) + 100, *day, BACK, (*day % 11) as u8)).collect();
            let alarm = |day: &u16| alarm(log, u32::from(*day) + 200, *day, Trouble::Other, None);
            told.alarms = named.keys().filter(|day| **day % 5 == 0).map(alarm).collect();
            told.note = noted.then(|| format!("note {counter}"));
            told
        });
        made.collect()
    })
}

fn any_summaries() -> impl Strategy<Value = Vec<Summary>> {
    (any_log(PHONE), any_log(DESK)).prop_map(|(phone, desk)| phone.into_iter().chain(desk).collect())
}

fn rank(mark: Mark) -> u8 {
    match mark {
        Mark::Done => 0,
        Mark::Partly(_) => 1,
        Mark::Skipped(_) => 2,
        Mark::DayOff(_) => 3,
        Mark::Paused => 4,
        Mark::NotDone => 5,
        _ => 6,
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn the_order_of_arrival_does_not_matter(all in any_summaries().prop_shuffle(), turn in 0usize..8) {
        let mut other = all.clone();
        if !other.is_empty() {
            let by = turn % other.len();
            other.rotate_left(by);
            other.reverse();
        }
        prop_assert_eq!(unite(&all), unite(&other));
        prop_assert_eq!(build(&revisions([plan()]), &catalogue(), &all), build(&revisions([plan()]), &catalogue(), &other));
    }

    #[test]
    fn a_replay_changes_nothing(all in any_summaries(), again in any::<prop::sample::Index>()) {
        prop_assume!(!all.is_empty());
        let twice: Vec<Summary> = all.iter().chain([again.get(&all)]).cloned().collect();
        prop_assert_eq!(unite(&twice), unite(&all));
        prop_assert_eq!(arrival_effect(&all, again.get(&all)), ArrivalEffect::Known);
    }

    #[test]
    fn nothing_that_was_reported_is_lost(all in any_summaries()) {
        prop_assume!(!all.is_empty());
        let united = unite(&all).expect("one at least");
        for told in &all {
            prop_assert!(told.from.through(told.until).all(|day| united.covered.contains(&day)));
            prop_assert!(told.seen.is_subset(&united.seen));
            prop_assert!(told.runs.iter().all(|run| united.runs.contains_key(&(told.log, run.run))));
            prop_assert!(told.alarms.iter().all(|alarm| united.alarms.contains_key(&alarm.id)));
            prop_assert!(told.days.iter().all(|day| united.days.contains_key(&(told.log, day.day, day.item))));
        }
    }

    #[test]
    fn new_days_are_counted_once(all in any_summaries()) {
        let mut before: Vec<Summary> = Vec::new();
        let mut days = 0;
        for told in &all {
            if let ArrivalEffect::New { days: more } = arrival_effect(&before, told) {
                days += more;
            }
            before.push(told.clone());
        }
        prop_assert_eq!(usize::from(days), unite(&all).map_or(0, |united| united.covered.len()));
    }

    /// Over all devices each slot appears once, with the best mark that any device has for it.
    #[test]
    fn a_slot_appears_once_with_the_best_mark(phone in any_log(PHONE), desk in any_log(DESK)) {
        let all: Vec<Summary> = phone.into_iter().chain(desk).collect();
        prop_assume!(!all.is_empty());
        let united = unite(&all).expect("one at least");
        for day in page(&all).days {
            let knots: BTreeSet<(crate::id::ItemId, u8)> = day.knots.iter().map(|knot| (knot.item, knot.number)).collect();
            prop_assert_eq!(knots.len(), day.knots.len(), "no knot twice");
            for knot in &day.knots {
                let told = united.days.iter().filter(|((_, of, item), _)| (*of, *item) == (day.day, knot.item));
                let marks = told.flat_map(|(_, days)| days.iter().flat_map(|day| &day.slots));
                let best = marks.filter(|(number, _)| *number == knot.number).map(|(_, mark)| rank(*mark)).min();
                prop_assert_eq!(best, Some(rank(knot.mark)));
            }
        }
    }
}
