//! Slots of ordinary days; `tests/slots_in_every_zone.rs` checks every zone of the tz database.

use super::*;
use crate::plan::{Pattern, Weekdays};
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
    plan.prescription.items[0].schedule.days = Weekdays::WORKDAYS;
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
fn the_slot_for_which_a_run_counts() {
    let plan = with(Pattern::At { times: vec![540, 720] });
    let number = |minute| counts_for(&plan, HOLD, at(1, minute), &utc(), at(0, 0)).map(|slot| slot.number);
    for (minute, expected) in [
        (529, None),
        (530, Some(0)),
        (540, Some(0)),
        (599, Some(0)),
        (600, None),
        (709, None),
        (710, Some(1)),
        (779, Some(1)),
        (780, None),
    ] {
        assert_eq!(number(minute), expected, "{minute}");
    }
    let hourly = every(60, 540, 660);
    let named = counts_for(&hourly, HOLD, at(1, 595), &utc(), at(0, 0)).map(|slot| slot.number);
    assert_eq!(named, Some(0), "the open slot takes precedence over the coming one");
}

#[test]
fn a_window_over_midnight_belongs_to_the_day_on_which_it_opened() {
    let plan = every(60, 23 * 60, 60);
    let named = counts_for(&plan, HOLD, at(2, 30), &utc(), at(0, 0)).expect("open");
    assert_eq!((named.day, named.number), (start() + Duration::days(1), 1));
    let early = counts_for(&with(Pattern::At { times: vec![5] }), HOLD, at(1, 1435), &utc(), at(0, 0)).expect("soon");
    assert_eq!(early.day, start() + Duration::days(2));
}

#[test]
fn another_items_slot_is_not_filled() {
    assert_eq!(counts_for(&plan(), REPS, at(1, 545), &utc(), at(0, 0)), None);
    assert_eq!(counts_for(&plan(), crate::id::ItemId(99), at(1, 545), &utc(), at(0, 0)), None);
}
