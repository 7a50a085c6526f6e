//! Tests of the rules in single states. `tests/reminders.rs` tests that looking ahead gives the same as waiting.

use super::*;
use crate::alarm::Trouble;
use crate::history::History;
use crate::id::{ItemId, RunId};
use crate::log::{Barrier, DayOffReason, Entry, Log, LogEvent};
use crate::review::samples::{BALANCE, HOLD, HOLD_DOSE, PHONE, REPS, catalogue, plan, start};
use crate::run::{HoldRecord, Run, RunEnd, Work};
use crate::slots::SlotRef;
use crate::time::{Offsets, Stamp};
use crate::today::Followed;

/// A moment on a day of the plan.
fn at(day: i64, hour: i64, minute: i64) -> Stamp {
    let midnight = start().and_time(chrono::NaiveTime::MIN).and_utc().timestamp_millis();
    Stamp { utc_ms: midnight + ((day * 24 + hour) * 60 + minute) * 60_000, offset_s: 0 }
}

fn slot(day: i64, item: ItemId, number: u8) -> SlotRef {
    SlotRef { day: at(day, 0, 0).date(), item, number }
}

/// A plan whose card was taken on day 0 at eight, followed by these events.
fn followed(happened: &[(Stamp, LogEvent)]) -> Followed {
    let entries = happened.iter().enumerate();
    let entries =
        entries.map(|(n, (at, event))| Entry { n: n as u32 + 1, plan: plan().header.id, at: *at, event: event.clone() });
    let log = Log { id: PHONE, former: Vec::new(), entries: entries.collect() };
    Followed { plan: plan(), taken: at(0, 8, 0), ahead: None, history: History::fold(&log, plan().header.id) }
}

fn due_with(happened: &[(Stamp, LogEvent)], settings: &Settings, now: Stamp) -> Option<Reminder> {
    let (followed, catalogue, zone) = (followed(happened), catalogue(), Offsets::fixed(0));
    ReminderContext::new(vec![PlanInForce { followed: &followed, catalogue: &catalogue }], settings, &zone).due(now)
}

fn due(happened: &[(Stamp, LogEvent)], now: Stamp) -> Option<SlotRef> {
    due_with(happened, &Settings::default(), now).map(|reminder| reminder.slot)
}

fn coming(happened: &[(Stamp, LogEvent)], settings: &Settings, now: Stamp, hours: u16) -> Vec<(Stamp, SlotRef)> {
    let (followed, catalogue, zone) = (followed(happened), catalogue(), Offsets::fixed(0));
    let context = ReminderContext::new(vec![PlanInForce { followed: &followed, catalogue: &catalogue }], settings, &zone);
    upcoming(context, now, hours).into_iter().map(|coming| (coming.at, coming.reminder.slot)).collect()
}

fn quiet(from: u16, to: u16) -> Settings {
    Settings { quiet: vec![Span { from: from * 60, to: to * 60 }], meeting: None }
}

fn reminded(when: Stamp, slot: SlotRef) -> (Stamp, LogEvent) {
    (when, LogEvent::Reminded { slot })
}

fn done(when: Stamp, slot: SlotRef) -> (Stamp, LogEvent) {
    let run = Run {
        id: RunId(1),
        item: HOLD,
        exercise: plan().prescription.items[0].exercise.clone(),
        rung: None,
        dose: HOLD_DOSE,
        slot: Some(slot),
        started: when,
        live: true,
        end: RunEnd::Completed,
        paused_ms: 0,
        interruptions: Vec::new(),
        work: Work::Timed(vec![HoldRecord { side: None, held_ms: 10_000 }; 3]),
    };
    (when, LogEvent::Run(run))
}

#[test]
fn a_slot_is_reminded_of_from_its_time_until_it_closes() {
    assert_eq!(due(&[], at(1, 8, 59)), None);
    assert_eq!(due(&[], at(1, 9, 0)), Some(slot(1, HOLD, 0)));
    assert_eq!(due(&[], at(1, 11, 59)), Some(slot(1, HOLD, 2)));
    assert_eq!(due(&[], at(1, 12, 0)), None, "eleven has closed");
}

#[test]
fn a_reminder_in_a_quiet_time_comes_at_its_end_if_the_slot_is_still_open() {
    let lunch = Settings { quiet: vec![Span { from: 9 * 60, to: 9 * 60 + 30 }], meeting: None };
    assert_eq!(due_with(&[], &lunch, at(1, 9, 29)), None);
    assert_eq!(due_with(&[], &lunch, at(1, 9, 30)).map(|reminder| reminder.slot), Some(slot(1, HOLD, 0)));
    assert_eq!(coming(&[], &quiet(9, 11), at(1, 8, 0), 4), [(at(1, 11, 0), slot(1, HOLD, 2))], "the open one alone");
}

#[test]
fn a_quiet_time_may_go_over_midnight() {
    let night = quiet(17, 8);
    assert!([17, 23, 0, 7].iter().all(|hour| night.is_silent(at(1, *hour, 0))));
    assert!([8, 12, 16].iter().all(|hour| !night.is_silent(at(1, *hour, 0))));
    assert_eq!(night.silent_until(at(1, 18, 0), &Offsets::fixed(0)), Some(at(2, 8, 0)));
    assert_eq!(night.silent_until(at(1, 12, 0), &Offsets::fixed(0)), None);
}

#[test]
fn adjacent_quiet_times_join_and_a_day_full_of_them_has_no_end() {
    let two = Settings { quiet: vec![Span { from: 540, to: 600 }, Span { from: 600, to: 660 }], meeting: None };
    assert_eq!(two.silent_until(at(1, 9, 15), &Offsets::fixed(0)), Some(at(1, 11, 0)));
    let full = Settings { quiet: vec![Span { from: 0, to: 720 }, Span { from: 720, to: 0 }], meeting: None };
    assert_eq!((full.is_silent(at(1, 9, 0)), full.silent_until(at(1, 9, 0), &Offsets::fixed(0))), (true, None));
}

#[test]
fn where_clocks_go_back_a_quiet_time_lasts_by_the_wall_clock() {
    // On 25 October 2026 the clock goes from three o'clock back to two.
    let zone = Offsets { first_s: 7200, changes: vec![(1_792_890_000, 3600)] };
    let early = Settings { quiet: vec![Span { from: 120, to: 150 }], meeting: None };
    let first = zone.stamp(1_792_890_000_000 - 3_600_000);
    let second = zone.stamp(1_792_890_000_000);
    assert_eq!((first.minute(), second.minute()), (120, 120));
    for begins in [first, second] {
        assert_eq!(early.silent_until(begins, &zone), Some(zone.stamp(begins.utc_ms + 30 * 60_000)));
    }
}

#[test]
fn a_meeting_ends_by_itself_and_one_begun_by_a_wrong_clock_suppresses_nothing() {
    let meeting = |from, until| Settings { quiet: Vec::new(), meeting: Some(Meeting { from, until }) };
    let two_hours = meeting(at(1, 8, 30), at(1, 10, 30));
    assert_eq!(due_with(&[], &two_hours, at(1, 10, 29)), None);
    assert_eq!(due_with(&[], &two_hours, at(1, 10, 30)).map(|reminder| reminder.slot), Some(slot(1, HOLD, 1)));
    let put_back_by_a_second = at(1, 10, 0).plus_ms(-1000);
    assert!(due_with(&[], &Settings::default(), put_back_by_a_second).is_some());
    assert_eq!(due_with(&[], &meeting(at(1, 10, 0), at(1, 10, 30)), put_back_by_a_second), None);
    let years_ahead = meeting(at(1000, 8, 30), at(1000, 10, 30));
    assert!(due_with(&[], &years_ahead, at(1, 10, 29)).is_some());
}

#[test]
fn a_span_needs_two_different_minutes_of_the_day() {
    for (from, to, fits) in [(720, 780, true), (1320, 420, true), (0, 1439, true), (600, 600, false), (600, 1440, false)] {
        assert_eq!(Span { from, to }.fits(), fits, "{from} {to}");
    }
}

#[test]
fn a_second_reminder_of_the_same_hour_comes_when_the_first_is_done() {
    let (balance, reps) = (slot(1, BALANCE, 0), slot(1, REPS, 0));
    assert_eq!(due(&[], at(1, 18, 0)), Some(balance));
    let shown = reminded(at(1, 18, 0), balance);
    assert_eq!(due(std::slice::from_ref(&shown), at(1, 18, 1)), None, "one at a time");
    let skipped = (at(1, 18, 5), LogEvent::Skipped { slot: balance, reason: Barrier::NoTime });
    assert_eq!(due(&[shown.clone(), skipped], at(1, 18, 5)), Some(reps));
    let later = (at(1, 18, 5), LogEvent::PutOff { slot: balance, minutes: 10 });
    assert_eq!(due(&[shown.clone(), later.clone()], at(1, 18, 6)), Some(reps));
    let both = [shown, later, reminded(at(1, 18, 6), reps)];
    assert_eq!(due(&both, at(1, 18, 15)), Some(balance), "put off to a time after the other's reminder: it comes");
}

#[test]
fn after_a_reminder_that_was_acted_on_the_next_has_no_sound() {
    let light = |happened: &[(Stamp, LogEvent)]| due_with(happened, &Settings::default(), at(1, 10, 0)).expect("ten").light;
    let nine = slot(1, HOLD, 0);
    assert!(!light(&[]), "the first one");
    assert!(!light(&[reminded(at(1, 9, 0), nine)]), "nothing was done");
    assert!(light(&[reminded(at(1, 9, 0), nine), done(at(1, 9, 2), nine)]));
    assert!(!light(&[done(at(1, 9, 2), nine)]), "no reminder led to it");
    let yesterdays = done(at(0, 9, 2), slot(0, HOLD, 0));
    assert!(!light(&[yesterdays, reminded(at(1, 9, 0), nine)]), "another was done");
}

#[test]
fn slots_on_days_off_skipped_and_paused_are_not_reminded_of() {
    let day = at(1, 0, 0).date();
    let ill = (at(1, 7, 0), LogEvent::DaysOff { from: day, until: day, why: DayOffReason::Ill });
    let skipped = (at(1, 8, 55), LogEvent::Skipped { slot: slot(1, HOLD, 0), reason: Barrier::NoTime });
    let nerve = (
        at(1, 8, 55),
        LogEvent::Trouble { trouble: Trouble::Nerve, item: None, id: None, circumstances: Default::default() },
    );
    for happened in [ill, skipped, nerve] {
        assert_eq!(due(&[happened], at(1, 9, 0)), None);
    }
}

#[test]
fn a_reminder_stops_applying_as_soon_as_it_is_useless() {
    let nine = slot(1, HOLD, 0);
    let stands = |happened: &[(Stamp, LogEvent)], now: Stamp| {
        let happened = [&[reminded(at(1, 9, 0), nine)], happened].concat();
        let (followed, catalogue, zone) = (followed(&happened), catalogue(), Offsets::fixed(0));
        let settings = Settings::default();
        let context =
            ReminderContext::new(vec![PlanInForce { followed: &followed, catalogue: &catalogue }], &settings, &zone);
        context.still_applies(plan().header.id, nine, now)
    };
    assert!(stands(&[], at(1, 9, 5)));
    assert!(!stands(&[], at(1, 10, 0)), "the slot has closed");
    assert!(!stands(&[done(at(1, 9, 2), nine)], at(1, 9, 5)));
    let (when, LogEvent::Run(run)) = done(at(1, 9, 4), nine) else { panic!("a run") };
    assert!(!stands(&[(when, LogEvent::Run(Run { end: RunEnd::Going, work: Work::Timed(vec![]), ..run }))], at(1, 9, 5)));
    assert!(!stands(&[(at(1, 9, 2), LogEvent::Skipped { slot: nine, reason: Barrier::NoTime })], at(1, 9, 5)));
    assert!(!stands(&[(at(1, 9, 2), LogEvent::PutOff { slot: nine, minutes: 10 })], at(1, 9, 5)));
    assert!(!stands(
        &[(
            at(1, 9, 2),
            LogEvent::Trouble { trouble: Trouble::Nerve, item: None, id: None, circumstances: Default::default() }
        )],
        at(1, 9, 5)
    ));
    let day = at(1, 0, 0).date();
    assert!(!stands(&[(at(1, 9, 2), LogEvent::DaysOff { from: day, until: day, why: DayOffReason::Ill })], at(1, 9, 5)));
}

#[test]
fn upcoming_reminders_of_a_day_leave_out_days_off() {
    let day = |day| {
        [
            (at(day, 9, 0), slot(day, HOLD, 0)),
            (at(day, 10, 0), slot(day, HOLD, 1)),
            (at(day, 11, 0), slot(day, HOLD, 2)),
            (at(day, 18, 0), slot(day, BALANCE, 0)),
        ]
    };
    let day_off = at(2, 0, 0).date();
    let ill = (at(1, 7, 0), LogEvent::DaysOff { from: day_off, until: day_off, why: DayOffReason::Ill });
    assert_eq!(coming(&[ill], &Settings::default(), at(1, 7, 0), 72), [day(1), day(3)].concat());
}

#[test]
fn there_are_no_more_reminders_than_the_most_limited_system_accepts() {
    assert_eq!(coming(&[], &Settings::default(), at(1, 7, 0), 14 * 24).len(), 14 * 4);
    assert_eq!(coming(&[], &Settings::default(), at(1, 7, 0), 28 * 24).len(), MAX_AHEAD);
}

#[test]
fn after_the_review_nothing_comes() {
    assert_eq!(coming(&[], &Settings::default(), at(29, 0, 0), 336), []);
}

/// One hold of three, in a run that began at `began` and was recorded at `recorded`.
fn in_part(began: Stamp, recorded: Stamp, slot: SlotRef, end: RunEnd) -> (Stamp, LogEvent) {
    let (_, LogEvent::Run(run)) = done(began, slot) else { panic!("a run") };
    (recorded, LogEvent::Run(Run { end, work: Work::Timed(vec![HoldRecord { side: None, held_ms: 10_000 }]), ..run }))
}

fn stays(happened: &[(Stamp, LogEvent)], slot: SlotRef, now: Stamp) -> bool {
    let (followed, catalogue, zone) = (followed(happened), catalogue(), Offsets::fixed(0));
    let settings = Settings::default();
    ReminderContext::new(vec![PlanInForce { followed: &followed, catalogue: &catalogue }], &settings, &zone).still_applies(
        plan().header.id,
        slot,
        now,
    )
}

#[test]
fn a_run_that_was_stopped_and_put_off_comes_back_in_ten_minutes() {
    let nine = slot(1, HOLD, 0);
    let stopped = [reminded(at(1, 9, 0), nine), in_part(at(1, 9, 1), at(1, 9, 2), nine, RunEnd::Stopped)];
    assert_eq!(due(&stopped, at(1, 9, 20)), None, "stopped, and nothing was asked for");
    let later = (at(1, 9, 3), LogEvent::PutOff { slot: nine, minutes: 10 });
    let put_off = [&stopped[..], std::slice::from_ref(&later)].concat();
    assert_eq!((due(&put_off, at(1, 9, 12)), due(&put_off, at(1, 9, 13))), (None, Some(nine)));
    let again = [&put_off[..], &[reminded(at(1, 9, 13), nine)]].concat();
    assert_eq!(due(&again, at(1, 9, 14)), None, "once");
    assert!(stays(&again, nine, at(1, 9, 20)), "it stays until something is done");
    let goes_on = [&again[..], &[in_part(at(1, 9, 20), at(1, 9, 20), nine, RunEnd::Going)]].concat();
    assert!(!stays(&goes_on, nine, at(1, 9, 21)));
    // The program was killed, so the run has no end.
    let cut_off = [in_part(at(1, 9, 1), at(1, 9, 2), nine, RunEnd::Going), later.clone()];
    assert_eq!(due(&cut_off, at(1, 9, 13)), Some(nine));
    let shown = [&cut_off[..], &[reminded(at(1, 9, 13), nine)]].concat();
    assert!(stays(&shown, nine, at(1, 9, 14)));
}

#[test]
fn a_slot_put_off_is_not_reminded_of_while_being_done_or_when_done() {
    let nine = slot(1, HOLD, 0);
    let later = (at(1, 9, 3), LogEvent::PutOff { slot: nine, minutes: 10 });
    let with = |more: &[(Stamp, LogEvent)]| due(&[std::slice::from_ref(&later), more].concat(), at(1, 9, 16));
    assert_eq!(with(&[in_part(at(1, 9, 5), at(1, 9, 6), nine, RunEnd::Stopped)]), Some(nine), "stopped before its time");
    assert_eq!(with(&[in_part(at(1, 9, 12), at(1, 9, 12), nine, RunEnd::Going)]), None, "being done");
    assert_eq!(with(&[in_part(at(1, 9, 12), at(1, 9, 15), nine, RunEnd::Stopped)]), None, "stopped after its time");
    assert_eq!(with(&[done(at(1, 9, 5), nine)]), None);
    let part = in_part(at(1, 9, 5), at(1, 9, 6), nine, RunEnd::Stopped);
    let skipped = (at(1, 9, 7), LogEvent::Skipped { slot: nine, reason: Barrier::NoTime });
    assert_eq!(with(&[part.clone(), skipped]), None);
    let day = at(1, 0, 0).date();
    assert_eq!(with(&[part, (at(1, 9, 7), LogEvent::DaysOff { from: day, until: day, why: DayOffReason::Ill })]), None);
}

#[test]
fn a_slot_begun_early_and_stopped_is_reminded_of_at_its_time() {
    let nine = slot(1, HOLD, 0);
    let begun = |recorded, end| due(&[in_part(at(1, 8, 58), recorded, nine, end)], at(1, 9, 2));
    assert_eq!(begun(at(1, 8, 59), RunEnd::Stopped), Some(nine));
    assert_eq!(begun(at(1, 8, 59), RunEnd::Going), None, "being done");
    assert_eq!(begun(at(1, 9, 1), RunEnd::Stopped), None, "the person was at it when it was due");
}

#[test]
fn a_repeated_reminder_of_a_slot_done_in_part_waits_like_any_other() {
    let (balance, reps) = (slot(1, BALANCE, 0), slot(1, REPS, 0));
    let part = {
        let (when, LogEvent::Run(run)) = done(at(1, 18, 1), reps) else { panic!("a run") };
        let dose = plan().item(REPS).expect("an item").dose;
        let work = Work::Counted(vec![crate::run::SetRecord { side: None, done: 2, failed: 0 }]);
        (when, LogEvent::Run(Run { item: REPS, dose, end: RunEnd::Stopped, work, ..run }))
    };
    let later = |slot, minute| (at(1, 18, minute), LogEvent::PutOff { slot, minutes: 10 });
    let happened = [reminded(at(1, 18, 0), balance), later(balance, 1), part, later(reps, 1), reminded(at(1, 18, 11), reps)];
    assert_eq!(due(&happened, at(1, 18, 12)), None, "one at a time");
}
