//! Slots of several devices and cards combined.

use crate::adherence::{DoseKept, DoseUnit, KofN};
use crate::history::Mark;
use crate::id::LogId;
use crate::log::{Barrier, DayOffReason};
use crate::plan::{Pattern, Plan, Schedule};
use crate::review::samples::{
    DESK, HOLD, PHONE, REPS, catalogue, item_day, plan, revised, revisions, run, summary, three_times_a_day,
};
use crate::review::{Review, build};
use crate::run::Share;
use crate::summary::{ItemDay, RunOn, Summary, TakenOn};
use crate::time::DayNumber;

fn page(plans: impl IntoIterator<Item = Plan>, summaries: &[Summary]) -> Review {
    build(&revisions(plans), &catalogue(), summaries).expect("a plan and a summary")
}

/// One day of the hold, as this device recorded it.
fn saw(log: LogId, day: u16, marks: &[Mark]) -> Summary {
    let mut told = summary(log, 1, day, day);
    told.days.push(item_day(day, HOLD, marks));
    told
}

fn marks_of(review: &Review, day: u16) -> Vec<(u16, Mark)> {
    let on = review.days.iter().find(|string| string.day == DayNumber(day)).expect("a covered day");
    on.knots.iter().map(|knot| (knot.minute, knot.mark)).collect()
}

#[test]
fn done_on_any_device_is_done() {
    let partly = |done| Mark::Partly(Share { done, of: 3 });
    let (skipped, day_off) = (Mark::Skipped(Barrier::NoTime), Mark::DayOff(DayOffReason::Ill));
    let ordered = [Mark::Done, partly(2), partly(1), skipped, day_off, Mark::Paused, Mark::NotDone, Mark::NoSuchHour];
    for (place, better) in ordered.iter().enumerate() {
        for worse in &ordered[place..] {
            for (one, other) in [(better, worse), (worse, better)] {
                let united = page([plan()], &[saw(PHONE, 2, &[*one]), saw(DESK, 2, &[*other])]);
                assert_eq!(marks_of(&united, 2), [(9 * 60, *better)], "{one:?} with {other:?}");
            }
        }
    }
}

#[test]
fn knots_are_at_the_minutes_that_were_agreed() {
    let mut told = saw(PHONE, 2, &[Mark::Done, Mark::NotDone, Mark::Done]);
    let by_half_hour =
        Schedule { pattern: Pattern::Every { minutes: 30, from: 10 * 60, to: 11 * 60 }, ..three_times_a_day() };
    assert_eq!(marks_of(&page([plan()], &[told.clone()]), 2).iter().map(|(m, _)| *m).collect::<Vec<_>>(), [540, 600, 660]);
    told.taken[0].agreed.push((HOLD, by_half_hour));
    assert_eq!(marks_of(&page([plan()], &[told]), 2).iter().map(|(m, _)| *m).collect::<Vec<_>>(), [600, 630, 660]);
}

/// A second card, issued on day 4, on which the hold is due at ten, eleven and twelve.
fn second() -> Plan {
    let mut second = revised(2, 4);
    second.prescription.items[0].schedule.pattern = Pattern::Every { minutes: 60, from: 10 * 60, to: 12 * 60 };
    second
}

fn taken(day: u16) -> TakenOn {
    TakenOn { day: DayNumber(day), revision: 2, agreed: Vec::new() }
}

#[test]
fn two_cards_on_one_day_each_ask_for_their_own_part() {
    let mut told = summary(PHONE, 1, 4, 4);
    told.taken.push(taken(4));
    told.days = vec![
        item_day(4, HOLD, &[Mark::Done]),
        ItemDay { day: DayNumber(4), item: HOLD, revision: 2, slots: vec![(1, Mark::Done), (2, Mark::NotDone)] },
    ];
    let united = page([plan(), second()], &[told]);
    assert_eq!(marks_of(&united, 4), [(540, Mark::Done), (660, Mark::Done), (720, Mark::NotDone)]);
    assert_eq!(united.adherence[0].kept, Some(KofN { k: 2, n: 3 }));
    assert_eq!(united.revision, 2);
}

#[test]
fn a_device_with_an_older_card_only_fills_the_newer_cards_slots() {
    let mut phone = summary(PHONE, 1, 6, 6);
    phone.taken.push(taken(4));
    let slots = vec![(0, Mark::NotDone), (1, Mark::NotDone), (2, Mark::NotDone)];
    phone.days = vec![ItemDay { day: DayNumber(6), item: HOLD, revision: 2, slots }];
    let mut desk = saw(DESK, 6, &[Mark::Done, Mark::Done, Mark::NotDone]);
    desk.runs = vec![run(1, 6, HOLD, Some(0)), run(2, 6, HOLD, Some(1))];
    let united = page([plan(), second()], &[phone, desk]);
    assert_eq!(marks_of(&united, 6), [(600, Mark::Done), (660, Mark::NotDone), (720, Mark::NotDone)]);
    let hold = &united.adherence[0];
    assert_eq!(hold.kept, Some(KofN { k: 1, n: 3 }));
    assert_eq!((hold.extra.runs, hold.extra.done), (1, 30), "what the older card asked for at nine is extra now");
}

#[test]
fn a_device_with_an_older_card_counts_where_no_newer_one_covers_the_day() {
    let mut phone = summary(PHONE, 1, 0, 4);
    phone.taken.push(taken(4));
    let united = page([plan(), second()], &[phone, saw(DESK, 6, &[Mark::Done, Mark::NotDone])]);
    assert_eq!(marks_of(&united, 6), [(540, Mark::Done), (600, Mark::NotDone)]);
}

#[test]
fn the_dose_of_a_slot_is_capped_and_the_excess_is_counted_separately() {
    let mut told = saw(PHONE, 2, &[Mark::Done, Mark::Partly(Share { done: 1, of: 3 }), Mark::NotDone]);
    let part = |n, slot| RunOn {
        dose: Share { done: 12_000, of: 30_000 },
        parts: Share { done: 1, of: 3 },
        ..run(n, 2, HOLD, Some(slot))
    };
    told.runs = vec![run(1, 2, HOLD, Some(0)), part(2, 0), part(3, 1), run(4, 2, HOLD, None)];
    let hold = &page([plan()], &[told]).adherence[0];
    let dose = DoseKept { unit: DoseUnit::HoldSeconds, done: 42, of: 90, over: 12 };
    assert_eq!(hold.dose, Some(dose));
    assert_eq!((hold.extra.runs, hold.extra.done), (1, 30));
}

#[test]
fn entries_written_in_are_counted_separately_and_do_not_double_timed_ones() {
    let written = |n, slot| RunOn { live: false, ..run(n, 2, HOLD, Some(slot)) };
    let mut phone = saw(PHONE, 2, &[Mark::Done, Mark::Done, Mark::NotDone]);
    phone.runs = vec![run(1, 2, HOLD, Some(0)), written(2, 1)];
    let mut desk = saw(DESK, 2, &[Mark::Done, Mark::NotDone, Mark::NotDone]);
    desk.runs = vec![written(1, 0)];
    let hold = &page([plan()], &[phone, desk]).adherence[0];
    assert_eq!((hold.slots.done, hold.slots.written_in, hold.slots.not_done), (1, 1, 1));
    assert_eq!((hold.kept, hold.kept_timed), (Some(KofN { k: 2, n: 3 }), Some(KofN { k: 1, n: 3 })));
    assert_eq!(hold.dose.map(|dose| (dose.done, dose.over)), Some((60, 0)));
}

#[test]
fn a_timed_part_does_not_make_a_whole_entry_written_in_timed() {
    let mut told = saw(PHONE, 2, &[Mark::Done, Mark::NotDone, Mark::NotDone]);
    let part = RunOn { parts: Share { done: 1, of: 3 }, ..run(1, 2, HOLD, Some(0)) };
    told.runs = vec![part, RunOn { live: false, ..run(2, 2, HOLD, Some(0)) }];
    let hold = &page([plan()], &[told]).adherence[0];
    assert_eq!((hold.slots.done, hold.slots.written_in), (0, 1));
}

#[test]
fn days_without_a_record_are_marked_and_days_ahead_are_not_counted() {
    let mut told = summary(PHONE, 1, 0, 3);
    told.seen.remove(&DayNumber(1));
    told.days = (0..=3).map(|day| item_day(day, REPS, &[Mark::NotDone])).collect();
    let mut later = summary(PHONE, 2, 6, 7);
    later.days = vec![item_day(6, REPS, &[Mark::Done]), item_day(7, REPS, &[Mark::Done])];
    let united = page([plan()], &[told, later]);
    let seen: Vec<(u16, bool, usize)> = united.days.iter().map(|day| (day.day.0, day.seen, day.knots.len())).collect();
    assert_eq!(
        seen,
        [(0, true, 1), (1, false, 1), (2, true, 1), (3, true, 1), (4, false, 0), (5, false, 0), (6, true, 1), (7, true, 1)]
    );
    let reps = united.adherence.iter().find(|one| one.item == REPS).expect("an item");
    assert_eq!((reps.kept, reps.slots.unrecorded), (Some(KofN { k: 2, n: 6 }), 1));
    assert_eq!(reps.days.unrecorded, 1);
}

#[test]
fn a_run_after_midnight_makes_its_slots_day_seen() {
    let mut told = summary(PHONE, 1, 0, 3);
    told.seen = [DayNumber(3)].into();
    told.days = vec![item_day(2, REPS, &[Mark::Done])];
    let reps = page([plan()], &[told]).adherence.into_iter().find(|one| one.item == REPS).expect("an item");
    assert_eq!(reps.kept, Some(KofN { k: 1, n: 1 }));
}
