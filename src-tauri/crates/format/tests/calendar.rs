//! The calendar file, as read by another program: the times of its events are those of the slots, even when clocks change.

use chrono::{DateTime, Duration, NaiveDate, NaiveDateTime, NaiveTime};
use exercises::alarm::Trouble;
use exercises::catalogue::{Catalogue, Dose, ExerciseId};
use exercises::history::History;
use exercises::id::{ItemId, LogId, PlanId};
use exercises::log::{DayOffReason, Entry, Log, LogEvent};
use exercises::plan::{Days, Header, Item, Pattern, Plan, Prescription, Schedule, Weekdays};
use exercises::remind::{PlanInForce, Weekly, weekly};
use exercises::slots;
use exercises::time::{Offsets, Stamp};
use exercises::today::Followed;
use format::calendar::{self, Head};
use icalendar::{Calendar, Component};
use proptest::prelude::*;
use rrule::{RRuleSet, Tz};
use std::collections::BTreeSet;

const PLAN: PlanId = PlanId([0xA1, 0xB2, 3, 4, 5, 6, 7, 8]);

fn midnight(day: NaiveDate) -> Stamp {
    Stamp { utc_ms: day.and_time(NaiveTime::MIN).and_utc().timestamp_millis(), offset_s: 0 }
}

/// A Friday, and clocks that change in the night before the following Sunday at 01:00 UTC: once back, once forward.
fn changes() -> [(NaiveDate, Offsets); 2] {
    let date = |month, day| NaiveDate::from_ymd_opt(2026, month, day).expect("a date");
    let back = Offsets { first_s: 7200, changes: vec![(1_792_890_000, 3600)] };
    let forward = Offsets { first_s: 3600, changes: vec![(1_774_746_000, 7200)] };
    [(date(10, 23), back), (date(3, 27), forward)]
}

fn plan(start: NaiveDate, weeks: i64, schedules: &[Schedule]) -> Plan {
    let item = |(at, schedule): (usize, &Schedule)| {
        let exercise = ExerciseId::new("sit-tall").expect("an id");
        let dose = Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 10 };
        let note = "Neck long; chin level, \\ not down".into();
        Item { note, ..Item::new(ItemId(at as u8 + 1), exercise, dose, schedule.clone()) }
    };
    Plan {
        header: Header { id: PLAN, revision: 1, clinic: "Bridge Street".into(), phone: None, start, issued: start },
        prescription: Prescription {
            review: start + Duration::weeks(weeks),
            age: None,
            absent: BTreeSet::new(),
            confirmed: None,
            items: schedules.iter().enumerate().map(item).collect(),
            complaints: Vec::new(),
            activities: Vec::new(),
            baselines: Vec::new(),
            aftercare: Vec::new(),
            cleared: Vec::new(),
        },
    }
}

fn schedule() -> impl Strategy<Value = Schedule> {
    let window = (15u16..=720, 0u16..1440, 0u16..1440).prop_map(|(minutes, from, to)| Pattern::Every { minutes, from, to });
    let times =
        prop::collection::btree_set(0u16..1440, 1..=12).prop_map(|times| Pattern::At { times: times.into_iter().collect() });
    let weekdays = (1u8..128).prop_map(|days| Days::On(Weekdays::from_bits(days).expect("seven bits")));
    let from = |ahead: i64| changes()[0].0 + Duration::days(ahead);
    let rhythm = (2u8..=28, -400i64..10).prop_map(move |(n, ahead)| Days::EveryNth { n, from: from(ahead) });
    let at_any_time =
        (prop_oneof![weekdays, rhythm], prop_oneof![window, times]).prop_map(|(days, pattern)| Schedule { days, pattern });
    let chosen = (1u8..=6, -400i64..10, 180u16..1440).prop_map(move |(n, ahead, time)| Schedule {
        days: Days::TimesAWeek { n, from: from(ahead) },
        pattern: Pattern::At { times: vec![time] },
    });
    prop_oneof![3 => at_any_time, 1 => chosen]
}

fn followed(plan: &Plan, taken: Stamp, happened: Vec<LogEvent>) -> Followed {
    let entries = happened.into_iter().enumerate();
    let entries = entries.map(|(n, event)| Entry { n: n as u32 + 1, plan: PLAN, at: taken, event });
    let log = Log { id: LogId([2; 8]), former: Vec::new(), entries: entries.collect() };
    Followed { plan: plan.clone(), taken, ahead: None, history: History::fold(&log, PLAN) }
}

fn events(followed: &Followed, now: Stamp, zone: &Offsets) -> Vec<Weekly> {
    weekly(PlanInForce { followed, catalogue: &Catalogue::default() }, now, zone)
}

fn write(events: &[Weekly]) -> String {
    let made = Stamp { utc_ms: 1_795_600_000_000, offset_s: 3600 };
    calendar::write(events, Head { version: "0.1.0", made, sequence: 7, title: "Carryover" })
}

/// All times of the wall clock in the events, found by independent libraries for reading calendars and repeating dates.
fn read(text: &str) -> Vec<NaiveDateTime> {
    let calendar: Calendar = text.parse().expect("a calendar");
    let mut all: Vec<NaiveDateTime> = calendar.components.iter().filter_map(|one| one.as_event()).flat_map(times).collect();
    all.sort();
    all
}

/// Floating times repeat by the wall clock. Computing in UTC is the same as computing without a zone.
fn times(event: &icalendar::Event) -> Vec<NaiveDateTime> {
    let value = |name: &str| event.property_value(name).expect(name).to_owned();
    let until = |rule: String| {
        let parts = rule.split(';').map(|part| if part.starts_with("UNTIL=") { format!("{part}Z") } else { part.into() });
        parts.collect::<Vec<_>>().join(";")
    };
    let mut set = format!("DTSTART:{}Z\nRRULE:{}", value("DTSTART"), until(value("RRULE")));
    for except in event.multi_properties().get("EXDATE").into_iter().flatten() {
        let dates: Vec<String> = except.value().split(',').map(|date| format!("{date}Z")).collect();
        set.push_str(&format!("\nEXDATE:{}", dates.join(",")));
    }
    let set: RRuleSet = set.parse().unwrap_or_else(|fault| panic!("{set}: {fault}"));
    set.all_unchecked().iter().map(|at: &DateTime<Tz>| at.naive_utc()).collect()
}

/// The slots from `now` on that are not on a day off, as times of the wall clock; two items at the same time count once.
fn due(followed: &Followed, now: Stamp, zone: &Offsets) -> Vec<NaiveDateTime> {
    let days = (now.date() - Duration::days(1)).iter_days().take(500);
    let open = days.filter(|day| followed.history.day_off(*day).is_none());
    let slots = open.flat_map(|day| slots::of_day(&followed.plan, day, zone, followed.taken));
    let dues = slots.filter_map(|slot| slot.due).filter(|due| due.utc_ms >= now.utc_ms);
    dues.map(Stamp::local).collect::<BTreeSet<_>>().into_iter().collect()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 256, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn what_a_calendar_shows_are_the_slots(
        change in 0usize..2,
        weeks in 0i64..5,
        hours in 0i64..96,
        schedules in prop::collection::vec(schedule(), 1..=3),
        day_off in prop::collection::vec((0i64..30, 0i64..5), 0..3),
    ) {
        let (start, zone) = changes()[change].clone();
        let plan = plan(start, weeks, &schedules);
        let excuse = |(from, days): &(i64, i64)| {
            let from = start + Duration::days(*from);
            LogEvent::DaysOff { from, until: from + Duration::days(*days), why: DayOffReason::Ill }
        };
        let taken = zone.stamp(midnight(start).utc_ms + 6 * 3_600_000);
        let followed = followed(&plan, taken, day_off.iter().map(excuse).collect());
        let now = zone.stamp(taken.utc_ms + hours * 3_600_000);
        let events = events(&followed, now, &zone);
        let text = write(&events);
        prop_assert_eq!(read(&text), due(&followed, now, &zone));
        let names: BTreeSet<&str> = text.lines().filter(|line| line.starts_with("UID:")).collect();
        prop_assert_eq!(names.len(), events.len(), "no name twice");
    }

    /// For any title, the lines are short and ended as the standard requires, and a reader finds the title again.
    #[test]
    fn any_title_is_folded_and_comes_back(title in "[^\\p{Cc}]{0,120}|[;,\\\\ü漢😀 ]{60}") {
        let (start, zone) = changes()[0].clone();
        let hourly = Schedule { days: Days::WORKDAYS, pattern: Pattern::Every { minutes: 60, from: 540, to: 600 } };
        let followed = followed(&plan(start, 2, &[hourly]), midnight(start), Vec::new());
        let head = Head { version: "0.1.0", made: midnight(start), sequence: 1, title: &title };
        let text = calendar::write(&events(&followed, midnight(start), &zone), head);
        prop_assert!(text.ends_with("\r\n") && !text.replace("\r\n", "").contains(['\r', '\n']));
        prop_assert!(text.split("\r\n").all(|line| line.len() <= 75), "{text}");
        let calendar: Calendar = text.parse().expect("a calendar");
        let read: Vec<&str> = calendar.components.iter().filter_map(|one| one.as_event()?.get_summary()).collect();
        prop_assert!(!read.is_empty());
        prop_assert!(read.iter().all(|said| *said == title), "{read:?}");
    }
}

fn hourly() -> Schedule {
    Schedule { days: Days::WORKDAYS, pattern: Pattern::Every { minutes: 60, from: 540, to: 1020 } }
}

#[test]
fn an_hourly_plan_is_nine_events_that_say_nothing_of_it() {
    let (start, zone) = changes()[0].clone();
    let followed = followed(&plan(start, 2, &[hourly(), hourly()]), midnight(start), Vec::new());
    let text = write(&events(&followed, midnight(start), &zone));
    assert_eq!(text.matches("BEGIN:VEVENT").count(), 9, "two items at one time are one event");
    assert_eq!(text.matches("BEGIN:VALARM").count(), 9);
    let nine = "BEGIN:VEVENT\r\nUID:a1b2030405060708-0900@carryover\r\nDTSTAMP:20261125T094640Z\r\nSEQUENCE:7\r\n\
                DTSTART:20261023T090000\r\nDURATION:PT1M\r\n\
                RRULE:FREQ=WEEKLY;UNTIL=20261106T090000;BYDAY=MO,TU,WE,TH,FR\r\n\
                SUMMARY:Carryover\r\nCLASS:PRIVATE\r\nTRANSP:TRANSPARENT\r\n\
                BEGIN:VALARM\r\nACTION:DISPLAY\r\nTRIGGER:PT0S\r\nDESCRIPTION:Carryover\r\nEND:VALARM\r\n\
                END:VEVENT\r\n";
    assert!(text.contains(nine), "{text}");
    for word in ["sit-tall", "Bridge", "Neck", "chin"] {
        assert!(!text.contains(word), "somebody else may see the calendar: {word}");
    }
}

#[test]
fn what_an_alarm_pauses_is_not_in_the_calendar() {
    let (start, zone) = changes()[0].clone();
    let plan = plan(start, 2, &[hourly()]);
    let stopped =
        LogEvent::Trouble { trouble: Trouble::HeartOrBreath, item: None, id: None, circumstances: BTreeSet::new() };
    assert_eq!(events(&followed(&plan, midnight(start), vec![stopped]), midnight(start), &zone), []);
}

#[test]
fn an_hour_that_does_not_exist_is_an_exception() {
    let (start, zone) = changes()[1].clone();
    let night = Schedule { days: Days::ALL, pattern: Pattern::At { times: vec![150] } };
    let events = events(&followed(&plan(start, 2, &[night]), midnight(start), Vec::new()), midnight(start), &zone);
    let sunday = start + Duration::days(2);
    assert_eq!(events[0].except, [sunday.and_hms_opt(2, 30, 0).expect("a time")]);
}
