//! Looking ahead gives the same as waiting: the reminders that [`ahead`] lists come, minute by minute, and no others do.

use chrono::{Duration, NaiveDate, NaiveTime};
use exercises::alarm::Trouble;
use exercises::catalogue::{Catalogue, Dose, ExerciseId};
use exercises::history::History;
use exercises::id::{ItemId, LogId, PlanId, RunId};
use exercises::log::{Barrier, DayOffReason, Entry, Log, LogEvent};
use exercises::plan::{Days, Header, Item, Pattern, Plan, Prescription, Schedule};
use exercises::remind::{MAX_AHEAD, Meeting, PlanInForce, ReminderContext, Settings, Span, UpcomingReminder, upcoming};
use exercises::run::{HoldRecord, Run, RunEnd, Work};
use exercises::slots::SlotRef;
use exercises::time::{Offsets, Stamp};
use exercises::today::Followed;
use proptest::prelude::*;
use std::collections::BTreeSet;

const PLAN: PlanId = PlanId([1; 8]);
const DOSE: Dose = Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 10 };

/// The Saturday before clocks go back at 01:00 UTC on 25 October 2026, or forward at 01:00 UTC on 29 March 2026.
fn changes() -> [(NaiveDate, Offsets); 2] {
    let date = |month, day| NaiveDate::from_ymd_opt(2026, month, day).expect("a date");
    let back = Offsets { first_s: 7200, changes: vec![(1_792_890_000, 3600)] };
    let forward = Offsets { first_s: 3600, changes: vec![(1_774_746_000, 7200)] };
    [(date(10, 24), back), (date(3, 28), forward)]
}

fn plan(start: NaiveDate, patterns: &[Pattern]) -> Plan {
    let item = |(at, pattern): (usize, &Pattern)| {
        let schedule = Schedule { days: Days::ALL, pattern: pattern.clone() };
        Item::new(ItemId(at as u8 + 1), ExerciseId::new("sit-tall").expect("an id"), DOSE, schedule)
    };
    Plan {
        header: Header {
            id: PLAN,
            revision: 1,
            clinic: "Bridge Street".into(),
            phone: None,
            start: start - Duration::days(3),
            issued: start - Duration::days(3),
        },
        prescription: Prescription {
            review: start + Duration::days(1),
            age: None,
            absent: BTreeSet::new(),
            confirmed: None,
            items: patterns.iter().enumerate().map(item).collect(),
            complaints: Vec::new(),
            activities: Vec::new(),
            baselines: Vec::new(),
            aftercare: Vec::new(),
            cleared: Vec::new(),
        },
    }
}

fn pattern() -> impl Strategy<Value = Pattern> {
    let window = (30u16..=240, 0u16..24, 0u16..24).prop_map(|(minutes, from, to)| Pattern::Every {
        minutes,
        from: from * 60,
        to: to * 60,
    });
    // Midway between two of these lies a whole minute, because the loop of this test asks once a minute.
    let times = prop::collection::btree_set(0u16..48, 1..=6)
        .prop_map(|times| Pattern::At { times: times.into_iter().map(|half| half * 30).collect() });
    prop_oneof![window, times]
}

fn settings(now: Stamp) -> impl Strategy<Value = Settings> {
    let span = (0u16..96, 0u16..96).prop_map(|(from, to)| Span { from: from * 15, to: to * 15 });
    let quiet = prop::collection::vec(span.prop_filter("two minutes", |span| span.fits()), 0..=3);
    let meeting = proptest::option::of((-60i64..600, 1i64..=720)).prop_map(move |meeting| {
        let from = |from: i64| now.plus_ms(from * 60_000);
        meeting.map(|(begins, lasts)| Meeting { from: from(begins), until: from(begins + lasts) })
    });
    (quiet, meeting).prop_map(|(quiet, meeting)| Settings { quiet, meeting })
}

/// An event at, before or after a slot near `now`.
fn happening(day: NaiveDate) -> impl Strategy<Value = (i64, LogEvent)> {
    let slot = (0i64..=1, 1u8..=3, 0u8..12).prop_map(move |(days, item, number)| SlotRef {
        day: day + Duration::days(days),
        item: ItemId(item),
        number,
    });
    let run = |slot: SlotRef, end, held_ms| {
        LogEvent::Run(Run {
            id: RunId(u32::from(slot.number) + 1),
            item: slot.item,
            exercise: ExerciseId::new("sit-tall").expect("an id"),
            rung: None,
            dose: DOSE,
            slot: Some(slot),
            started: Stamp { utc_ms: 0, offset_s: 0 },
            live: false,
            end,
            paused_ms: 0,
            interruptions: Vec::new(),
            work: Work::Timed(vec![HoldRecord { side: None, held_ms }; 3]),
        })
    };
    let day_off = move |days: i64| day + Duration::days(days);
    let event = prop_oneof![
        4 => slot.clone().prop_map(|slot| LogEvent::Reminded { slot }),
        2 => (slot.clone(), 1u16..60).prop_map(|(slot, minutes)| LogEvent::PutOff { slot, minutes }),
        1 => slot.clone().prop_map(|slot| LogEvent::Skipped { slot, reason: Barrier::NoTime }),
        2 => slot.clone().prop_map(move |slot| run(slot, RunEnd::Completed, 10_000)),
        1 => slot.prop_map(move |slot| run(slot, RunEnd::Going, 0)),
        1 => (0i64..2).prop_map(move |days| LogEvent::DaysOff { from: day_off(days), until: day_off(days), why: DayOffReason::Ill }),
        1 => (1u8..=3).prop_map(|item| LogEvent::Trouble { trouble: Trouble::TooMuchPain, item: Some(ItemId(item)), id: None, circumstances: Default::default() }),
    ];
    (-600i64..=0, event)
}

/// Asks at every minute, as the loop does, and logs the reminders that are shown.
fn waited(plan: &Plan, log: &mut Log, settings: &Settings, zone: &Offsets, now: Stamp, hours: u16) -> Vec<UpcomingReminder> {
    let (taken, catalogue) = (now.plus_ms(-3 * 86_400_000), Catalogue::default());
    let fold = |log: &Log| Followed { plan: plan.clone(), taken, ahead: None, history: History::fold(log, PLAN) };
    let mut followed = fold(log);
    let mut shown = Vec::new();
    for minute in 0..=i64::from(hours) * 60 {
        let at = zone.stamp(now.utc_ms + minute * 60_000);
        let due =
            ReminderContext::new(vec![PlanInForce { followed: &followed, catalogue: &catalogue }], settings, zone).due(at);
        if let Some(reminder) = due {
            let n = log.entries.len() as u32 + 1;
            log.entries.push(Entry { n, plan: PLAN, at, event: LogEvent::Reminded { slot: reminder.slot } });
            followed = fold(log);
            shown.push(UpcomingReminder { at, reminder });
        }
    }
    shown.truncate(MAX_AHEAD);
    shown
}

fn story() -> impl Strategy<Value = (Plan, Offsets, Stamp, Settings, Log, u16)> {
    (0usize..2, 0i64..30, 1u16..=26).prop_flat_map(|(change, hour, hours)| {
        let (day, zone) = changes()[change].clone();
        let midnight = day.and_time(NaiveTime::MIN).and_utc().timestamp_millis() - i64::from(zone.first_s) * 1000;
        let now = zone.stamp(midnight + hour * 3_600_000);
        let log = prop::collection::vec(happening(day), 0..12).prop_map(move |mut all| {
            all.sort_by_key(|(minute, _)| *minute);
            let entry = |(n, (minute, event)): (usize, (i64, LogEvent))| Entry {
                n: n as u32 + 1,
                plan: PLAN,
                at: now.plus_ms(minute * 60_000),
                event,
            };
            Log { id: LogId([2; 8]), former: Vec::new(), entries: all.into_iter().enumerate().map(entry).collect() }
        });
        let plan = prop::collection::vec(pattern(), 1..=3).prop_map(move |patterns| plan(day, &patterns));
        (plan, Just(zone), Just(now), settings(now), log, Just(hours))
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 192, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn the_listed_reminders_come_and_no_others((plan, zone, now, settings, mut log, hours) in story()) {
        let (taken, catalogue) = (now.plus_ms(-3 * 86_400_000), Catalogue::default());
        let followed = Followed { plan: plan.clone(), taken, ahead: None, history: History::fold(&log, PLAN) };
        let context = ReminderContext::new(vec![PlanInForce { followed: &followed, catalogue: &catalogue }], &settings, &zone);
        let listed = upcoming(context, now, hours);
        for coming in &listed {
            prop_assert!(coming.at.utc_ms < coming.reminder.closes.utc_ms, "never once the slot has closed");
            prop_assert!(!settings.is_silent(coming.at), "never in silence");
        }
        prop_assert!(listed.windows(2).all(|pair| pair[0].at < pair[1].at), "in order, one at a time");
        prop_assert_eq!(&listed, &waited(&plan, &mut log, &settings, &zone, now, hours));
    }
}

#[test]
fn generated_histories_do_contain_reminders() {
    let mut runner = proptest::test_runner::TestRunner::deterministic();
    let mut all = 0;
    for _ in 0..30 {
        let (plan, zone, now, settings, mut log, hours) =
            proptest::strategy::ValueTree::current(&story().new_tree(&mut runner).expect("a story"));
        all += waited(&plan, &mut log, &settings, &zone, now, hours).len();
    }
    assert!(all > 30, "{all} reminders in thirty stories: the law would hold of nothing");
}
