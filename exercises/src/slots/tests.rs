//! Slots of ordinary days; `tests/slots_in_every_zone.rs` checks every zone of the tz database.

use super::*;
use crate::plan::{Days, Pattern};
use crate::review::samples::{HOLD, REPS, plan, start};
use chrono::Duration;

fn at(day: i64, minute: i64) -> Stamp {
    let midnight = (start() + Duration::days(day)).and_time(chrono::NaiveTime::MIN).and_utc();
    Stamp { utc_ms: midnight.timestamp_millis() + minute * 60_000, offset_s: 0 }
}

fn utc() -> Offsets {
    Offsets::fixed(0)
}

/// The sample plan with this pattern for its first item.
fn with(pattern: Pattern) -> Plan {
    let mut plan = plan();
    plan.prescription.items[0].schedule.pattern = pattern;
    plan
}

fn every(minutes: u16, from: u16, to: u16) -> Plan {
    with(Pattern::Every { minutes, from, to })
}

fn open(plan: &Plan, number: usize) -> (i64, i64) {
    let slot = of_item(&plan.prescription.items[0], start(), &utc())[number];
    let minutes = |stamp: Option<Stamp>| stamp.expect("it exists").seconds_since(at(0, 0)) / 60;
    (minutes(slot.due), minutes(slot.closes))
}

#[test]
fn outside_its_phase_an_item_has_no_slots() {
    let mut plan = with(Pattern::At { times: vec![1080] });
    let item = &mut plan.prescription.items[0];
    item.phase = crate::plan::Phase { first: Some(start() + Duration::days(2)), last: Some(start() + Duration::days(4)) };
    let on = |plan: &Plan| {
        let slots = |day: &i64| !of_item(&plan.prescription.items[0], start() + Duration::days(*day), &utc()).is_empty();
        (0..10).filter(slots).collect::<Vec<i64>>()
    };
    assert_eq!(on(&plan), [2, 3, 4]);
    plan.prescription.items[0].schedule.days = Days::EveryNth { n: 2, from: start() + Duration::days(2) };
    assert_eq!(on(&plan), [2, 4]);
    // Of the week from day 2, a Friday, to day 4, a Sunday, three days are left: one of three times.
    plan.prescription.items[0].schedule.days = Days::TimesAWeek { n: 3, from: start() };
    assert_eq!(on(&plan), [2]);
}

#[test]
fn a_slot_closes_at_the_next_or_after_an_hour() {
    assert_eq!(open(&every(60, 540, 1020), 0), (540, 600));
    assert_eq!(open(&every(30, 540, 1020), 0), (540, 570));
    assert_eq!(open(&every(120, 540, 1020), 0), (540, 600));
    assert_eq!(open(&every(30, 540, 600), 2), (600, 660), "the last of the day");
}

#[test]
fn a_late_slot_closes_when_the_next_days_first_opens() {
    assert_eq!(open(&every(30, 15, 1425), 47), (1425, 1440 + 15));
    let mut weekdays = every(30, 15, 1425);
    weekdays.prescription.items[0].schedule.days = [chrono::Weekday::Wed].into_iter().collect();
    assert_eq!(open(&weekdays, 47), (1425, 1440 + 45), "no slot on the day after");
}

#[test]
fn days_that_the_schedule_leaves_out_have_none() {
    let mut plan = plan();
    plan.prescription.items[0].schedule.days = Days::WORKDAYS;
    let counts = (0..7).map(|day| of_item(&plan.prescription.items[0], start() + Duration::days(day), &utc()).len());
    assert_eq!(counts.collect::<Vec<_>>(), [3, 3, 3, 0, 0, 3, 3], "from a Wednesday on");
}

#[test]
fn the_first_day_has_slots_after_the_card_was_taken_and_the_review_day_is_the_last() {
    let plan = plan();
    let minutes = |day: i64, taken: Stamp| {
        let slots = of_day(&plan, start() + Duration::days(day), &utc(), taken);
        slots.iter().map(|slot| (slot.minute, slot.slot.item)).collect::<Vec<_>>()
    };
    let evening = [(1080, crate::review::samples::BALANCE), (1080, REPS)];
    let day = [(540, HOLD), (600, HOLD), (660, HOLD), evening[0], evening[1]];
    assert_eq!(minutes(0, at(0, 600)), day[1..], "a slot due at the moment of taking counts");
    assert_eq!(minutes(0, at(0, 601)), day[2..]);
    assert_eq!(minutes(28, at(0, 0)), day);
    assert_eq!(minutes(29, at(0, 0)), []);
}

#[test]
fn at_set_times_each_slot_owns_the_nearest_part_of_the_day() {
    let part = |plan: &Plan, number: usize| {
        let slot = of_item(&plan.prescription.items[0], start(), &utc())[number];
        assert!(slot.at_set_time);
        let minutes = |stamp: Option<Stamp>| stamp.expect("it exists").seconds_since(at(0, 0)) / 60;
        (minutes(slot.opens), minutes(slot.closes), minutes(slot.announced_until))
    };
    let set = |times: &[u16]| with(Pattern::At { times: times.to_vec() });
    let night = 24 * 60 + 180;
    assert_eq!(part(&set(&[18 * 60]), 0), (180, night, 19 * 60), "alone it owns the day");
    let two = set(&[8 * 60, 20 * 60]);
    assert_eq!(part(&two, 0), (180, 14 * 60, 9 * 60));
    assert_eq!(part(&two, 1), (14 * 60, night, 21 * 60));
    let close = set(&[8 * 60, 8 * 60 + 30]);
    assert_eq!(part(&close, 0), (180, 8 * 60 + 15, 8 * 60 + 15), "announced no longer than it is open");
    let small_hours = set(&[60, 22 * 60]);
    assert_eq!(part(&small_hours, 0), (23 * 60 + 30 - 1440, 180, 120), "one o'clock belongs to the evening before");
    assert_eq!(part(&small_hours, 1), (180, 23 * 60 + 30, 23 * 60));
}

#[test]
fn late_is_more_than_an_hour_after_it_was_due() {
    let slot = of_item(&with(Pattern::At { times: vec![1080] }).prescription.items[0], start(), &utc())[0];
    let late = |minute| slot.late_at(at(0, minute));
    assert_eq!([600, 1080, 1140, 1141].map(late), [false, false, false, true]);
    // Five hours behind the place in which the due time was worked out, it is 18:05, or 19:05.
    let there = |minute: i64| slot.late_at(Stamp { offset_s: -5 * 3600, ..at(0, minute + 5 * 60) });
    assert_eq!([1085, 1145].map(there), [false, true]);
}
