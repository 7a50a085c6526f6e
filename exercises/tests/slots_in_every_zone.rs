//! Slots in every zone of the tz database, around every change of its clocks over thirty years.
//!
//! The zones' offsets are passed as plain data, as in the program; what the wall clock shows is asked from the tz database itself,
//! so that the two ways are compared.

use chrono::{DateTime, Datelike, Duration, MappedLocalTime, NaiveDate, NaiveDateTime, NaiveTime, Offset, TimeZone};
use chrono_tz::{TZ_VARIANTS, Tz};
use exercises::catalogue::{Dose, ExerciseId};
use exercises::history::History;
use exercises::id::{ItemId, PlanId};
use exercises::plan::{Days, Header, Item, Pattern, Plan, Prescription, Schedule, Weekdays};
use exercises::slots::{self, Slot};
use exercises::time::{Offsets, Stamp};
use proptest::prelude::*;
use std::collections::BTreeSet;

const FIRST_YEAR: i32 = 2001;
const LAST_YEAR: i32 = 2031;
const SCAN_S: i64 = 6 * 3600;

fn first_of(year: i32) -> NaiveDate {
    NaiveDate::from_ymd_opt(year, 1, 1).expect("a date")
}

fn seconds(day: NaiveDate) -> i64 {
    day.and_time(NaiveTime::MIN).and_utc().timestamp()
}

fn offset_at(zone: Tz, utc_s: i64) -> i32 {
    let at = DateTime::from_timestamp(utc_s, 0).expect("an instant").naive_utc();
    zone.offset_from_utc_datetime(&at).fix().local_minus_utc()
}

/// The zone's offsets as plain data: sampled every six hours, and each change then located to the second.
fn offsets(zone: Tz) -> Offsets {
    let (begin, end) = (seconds(first_of(FIRST_YEAR)) - 30 * 86_400, seconds(first_of(LAST_YEAR)) + 30 * 86_400);
    let mut before = offset_at(zone, begin);
    let mut found = Offsets { first_s: before, changes: Vec::new() };
    for at in (begin..end).step_by(SCAN_S as usize) {
        let until = at + SCAN_S;
        let after = offset_at(zone, until);
        if after != before {
            let (mut low, mut high) = (at, until);
            while high - low > 1 {
                let middle = low + (high - low) / 2;
                if offset_at(zone, middle) == before { low = middle } else { high = middle }
            }
            found.changes.push((high, after));
            before = after;
        }
    }
    found
}

fn item(pattern: Pattern) -> Item {
    let dose = Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 10 };
    let schedule = Schedule { days: Days::ALL, pattern };
    Item::new(ItemId(1), ExerciseId::new("sit-tall").expect("an id"), dose, schedule)
}

fn plan(item: Item, start: NaiveDate) -> Plan {
    Plan {
        header: Header {
            id: PlanId([1; 8]),
            revision: 1,
            clinic: "Bridge Street".into(),
            phone: None,
            start,
            issued: start,
        },
        prescription: Prescription {
            review: start + Duration::days(300),
            age: None,
            absent: BTreeSet::new(),
            confirmed: None,
            items: vec![item],
            complaints: Vec::new(),
            activities: Vec::new(),
            baselines: Vec::new(),
            aftercare: Vec::new(),
            cleared: Vec::new(),
        },
    }
}

fn every(minutes: u16, from: u16, to: u16) -> Pattern {
    Pattern::Every { minutes, from, to }
}

/// Every half hour round the clock, every fifty minutes over midnight, and the hours at which clocks usually change.
fn patterns() -> Vec<Pattern> {
    let at_odd_hours = Pattern::At { times: vec![15, 90, 120, 150, 180, 1439] };
    vec![every(30, 0, 23 * 60 + 30), every(50, 20 * 60, 7 * 60), at_odd_hours]
}

/// The first moment at which the tz database says that the wall clock shows this, if any.
fn shown(zone: Tz, local: NaiveDateTime) -> Option<i64> {
    match zone.from_local_datetime(&local) {
        MappedLocalTime::Single(at) => Some(at.timestamp_millis()),
        MappedLocalTime::Ambiguous(one, other) => Some(one.timestamp_millis().min(other.timestamp_millis())),
        MappedLocalTime::None => None,
    }
}

/// Checks every law of slots for one item over a range of days.
fn check(zone: Tz, offsets: &Offsets, item: &Item, days: &[NaiveDate]) {
    let name = zone.name();
    let all: Vec<Slot> = days.iter().flat_map(|day| slots::of_item(item, *day, offsets)).collect();
    let asked: usize = days.len() * item.schedule.pattern.minutes().len();
    assert_eq!(all.len(), asked, "{name} {days:?}: a slot for every minute asked for, and no more");
    let names: BTreeSet<_> = all.iter().map(|slot| slot.slot).collect();
    assert_eq!(names.len(), all.len(), "{name} {days:?}: no slot twice");
    for slot in &all {
        let local = slot.slot.day.and_time(NaiveTime::MIN) + Duration::minutes(i64::from(slot.minute));
        assert_eq!(slot.due.map(|due| due.utc_ms), shown(zone, local), "{name} {local}: due when the clock first shows it");
        assert_eq!(slot.due.is_none(), slot.closes.is_none(), "{name} {local}");
        if let Some(due) = slot.due {
            assert_eq!(due.local(), local, "{name}: the stamp shows its own wall clock");
        }
    }
    let mut existing: Vec<&Slot> = all.iter().filter(|slot| slot.due.is_some()).collect();
    existing.sort_by_key(|slot| slot.due);
    for slot in &existing {
        let ms = |stamp: Option<Stamp>| stamp.expect("it exists").utc_ms;
        let (due, opens, closes, announced) = (ms(slot.due), ms(slot.opens), ms(slot.closes), ms(slot.announced_until));
        assert!(opens <= due && due < closes, "{name} {slot:?}: open when it is due");
        assert!(
            announced == closes.min(due + slots::OPEN_MINUTES * 60_000),
            "{name} {slot:?}: announced for an hour at most"
        );
        assert!(
            slot.at_set_time || (opens == due && closes == announced),
            "{name} {slot:?}: by the hour, open for an hour at most"
        );
        assert!(
            closes - opens <= 30 * 3_600_000,
            "{name} {slot:?}: a part is never longer than a day in which clocks go back"
        );
    }
    for pair in existing.windows(2) {
        let (one, next) = (pair[0], pair[1]);
        assert!(one.due < next.due, "{name} {days:?}: no two at the same instant");
        assert!(one.closes <= next.opens, "{name} {days:?}: never two open at once");
        // The person's day begins at 03:00; where no slot is due on a day, nothing is open on it.
        let own_day = |slot: &Slot| slot.due.expect("it exists").plus_ms(-3 * 3_600_000).date();
        let same = own_day(one) == own_day(next);
        assert!(!same || !one.at_set_time || one.closes == next.opens, "{name} {days:?}: parts of one day leave no gap");
    }
}

#[test]
fn around_every_change_of_every_zone_over_thirty_years() {
    let mut looked_at = 0usize;
    let mut known: Vec<Offsets> = Vec::new();
    for zone in TZ_VARIANTS {
        let offsets = offsets(zone);
        if known.contains(&offsets) {
            continue;
        }
        for (change, _) in &offsets.changes {
            let day = offsets.stamp(change * 1000).date();
            if !(FIRST_YEAR..LAST_YEAR).contains(&day.year()) {
                continue;
            }
            let days: Vec<NaiveDate> = (-2..=2).map(|around| day + Duration::days(around)).collect();
            for pattern in patterns() {
                check(zone, &offsets, &item(pattern), &days);
            }
            looked_at += 1;
        }
        known.push(offsets);
    }
    assert!(known.len() > 150 && looked_at > 4000, "{} zones, {looked_at} changes: the database was not read", known.len());
}

#[test]
fn a_day_that_a_zone_left_out_has_only_marked_slots() {
    let zone: Tz = "Pacific/Apia".parse().expect("a zone");
    let skipped = NaiveDate::from_ymd_opt(2011, 12, 30).expect("a date");
    let slots = slots::of_item(&item(every(60, 9 * 60, 17 * 60)), skipped, &offsets(zone));
    assert_eq!(slots.len(), 9);
    assert!(slots.iter().all(|slot| slot.due.is_none() && slot.closes.is_none()));
}

#[test]
fn a_zone_on_the_half_hour_has_slots_on_its_own_hours() {
    let zone: Tz = "Asia/Kolkata".parse().expect("a zone");
    let day = NaiveDate::from_ymd_opt(2026, 11, 25).expect("a date");
    let slots = slots::of_item(&item(every(60, 9 * 60, 17 * 60)), day, &offsets(zone));
    let minutes: Vec<u16> = slots.iter().filter_map(|slot| Some(slot.due?.minute())).collect();
    assert_eq!(minutes, (9..=17).map(|hour| hour * 60).collect::<Vec<u16>>());
}

#[test]
fn a_leap_day_is_a_day_like_any_other() {
    let zone: Tz = "Europe/Madrid".parse().expect("a zone");
    let leap = NaiveDate::from_ymd_opt(2028, 2, 29).expect("a leap day");
    let days = [leap.pred_opt().expect("a day"), leap, leap.succ_opt().expect("a day")];
    for pattern in patterns() {
        check(zone, &offsets(zone), &item(pattern), &days);
    }
    let over_midnight = slots::of_item(&item(every(60, 22 * 60, 2 * 60)), leap, &offsets(zone));
    let dates: Vec<NaiveDate> = over_midnight.iter().filter_map(|slot| Some(slot.due?.date())).collect();
    assert_eq!(dates, [leap, leap, days[2], days[2], days[2]]);
    assert!(over_midnight.iter().all(|slot| slot.slot.day == leap), "the day of a slot is the day its window opened");
}

fn any_pattern() -> impl Strategy<Value = Pattern> {
    let window = (15u16..=720, 0u16..1440, 0u16..1440).prop_map(|(minutes, from, to)| every(minutes, from, to));
    let times =
        prop::collection::btree_set(0u16..1440, 1..=12).prop_map(|times| Pattern::At { times: times.into_iter().collect() });
    prop_oneof![window, times]
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn any_pattern_on_any_day_of_any_zone(pattern in any_pattern(), zone in 0..TZ_VARIANTS.len(), day in 0i64..10_950) {
        let zone = TZ_VARIANTS[zone];
        let first = first_of(FIRST_YEAR) + Duration::days(day);
        let days: Vec<NaiveDate> = first.iter_days().take(4).collect();
        check(zone, &offsets(zone), &item(pattern), &days);
    }

    /// Whenever a run starts, it counts for the slot that is open, by the hour for one that opens within ten minutes, at set times on
    /// a day without the item for a missed one of the days before that are near enough, or it is extra.
    #[test]
    fn a_run_counts_for_the_open_slot_or_the_next(
        pattern in any_pattern(),
        weekdays in 1u8..128,
        zone in 0..TZ_VARIANTS.len(),
        day in 0i64..10_950,
        minute in 0i64..4320,
    ) {
        let offsets = offsets(TZ_VARIANTS[zone]);
        let first = first_of(FIRST_YEAR) + Duration::days(day);
        let mut item = item(pattern);
        item.schedule.days = Days::On(Weekdays::from_bits(weekdays).expect("seven bits"));
        let plan = plan(item, first);
        let begin = offsets.stamp((seconds(first) - 86_400) * 1000);
        let at: Stamp = offsets.stamp((seconds(first) + 86_400 + minute * 60) * 1000);
        let counted = History::default().slot_for(&plan, ItemId(1), at, &offsets, begin);
        let near: Vec<Slot> = (-6..=3)
            .flat_map(|around| slots::of_day(&plan, at.date() + Duration::days(around), &offsets, begin))
            .collect();
        let open: Vec<&Slot> = near.iter().filter(|slot| slot.open_at(at)).collect();
        prop_assert!(open.len() <= 1, "never two open at once");
        let reach = plan.prescription.items[0].schedule.days.reach();
        let own_day = |stamp: Stamp| stamp.plus_ms(-3 * 3_600_000).date();
        let late = |due: Stamp| own_day(at).signed_duration_since(own_day(due)).num_days();
        let missed = |slot: &Slot| slot.at_set_time && slot.due.is_some_and(|due| (1..=reach).contains(&late(due)));
        match (open.first(), counted) {
            (Some(open), counted) => prop_assert_eq!(Some(open.slot), counted),
            (None, Some(named)) => prop_assert!(near.iter().any(|slot| slot.slot == named && (slot.soon_at(at) || missed(slot)))),
            (None, None) => prop_assert!(!near.iter().any(|slot| slot.soon_at(at) || missed(slot))),
        }
    }

    /// The day on which the card is taken has only the slots after that moment, and nothing is due after the review date.
    #[test]
    fn the_first_and_the_last_day_are_cut(pattern in any_pattern(), zone in 0..TZ_VARIANTS.len(), day in 0i64..10_000, minute in 0i64..1440) {
        let offsets = offsets(TZ_VARIANTS[zone]);
        let start = first_of(FIRST_YEAR) + Duration::days(day);
        let plan = plan(item(pattern), start);
        let taken = offsets.stamp((seconds(start) + minute * 60) * 1000);
        for date in [taken.date(), taken.date() + Duration::days(1)] {
            let kept = slots::of_day(&plan, date, &offsets, taken);
            let all = slots::of_item(&plan.prescription.items[0], date, &offsets);
            for slot in all {
                let after = slot.due.is_some_and(|due| due.utc_ms >= taken.utc_ms);
                let marked = slot.due.is_none() && date > taken.date();
                prop_assert_eq!(kept.contains(&slot), after || marked);
            }
        }
        prop_assert!(!slots::of_day(&plan, plan.prescription.review, &offsets, taken).is_empty(), "the day of the visit counts");
        prop_assert!(slots::of_day(&plan, plan.prescription.review + Duration::days(1), &offsets, taken).is_empty());
    }
}
