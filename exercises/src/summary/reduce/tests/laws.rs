//! Properties that hold for every log whose entries are in order of time.

use super::*;
use crate::alarm::Trouble;
use crate::log::{Barrier, DayOffReason};
use crate::review::build;
use crate::review::samples::BACK;
use crate::score::Score;
use crate::summary::union::{United, unite};
use crate::time::DayNumber;
use proptest::prelude::*;

#[derive(Debug, Clone, Copy)]
enum Act {
    Open,
    Run(usize),
    LeaveOut(usize),
    Remind,
    Rate(u8),
    DayOffReason,
    Trouble,
}

fn any_act() -> impl Strategy<Value = Act> {
    prop_oneof![
        2 => Just(Act::Open),
        6 => (0usize..=3).prop_map(Act::Run),
        2 => (0..Barrier::ALL.len()).prop_map(Act::LeaveOut),
        3 => Just(Act::Remind),
        2 => (0u8..=10).prop_map(Act::Rate),
        1 => Just(Act::DayOffReason),
        1 => Just(Act::Trouble),
    ]
}

/// What a person does on one device: acts, each with the minutes since the one before.
fn any_log() -> impl Strategy<Value = Vec<(Stamp, LogEvent)>> {
    prop::collection::vec((1i64..500, any_act()), 0..80).prop_map(|acts| {
        let plan = plan();
        let mut minute = 8 * 60;
        let mut events = vec![(at(0, minute), taken(1))];
        for (n, (gap, act)) in (1u32..).zip(acts) {
            minute += gap;
            let now = at(0, minute);
            let open = History::default().slot_for(&plan, HOLD, now, &zone(), at(0, 8 * 60));
            let happened = match (act, open) {
                (Act::Run(whole), open) => LogEvent::Run(run(n, now, open, whole)),
                (Act::LeaveOut(why), Some(slot)) => LogEvent::Skipped { slot, reason: Barrier::ALL[why] },
                (Act::Remind, Some(slot)) => LogEvent::Reminded { slot },
                (Act::Rate(score), _) => LogEvent::Pain { complaint: BACK, score: Score::at_most_ten(score), after: None },
                (Act::DayOffReason, _) => LogEvent::DaysOff { from: now.date(), until: now.date(), why: DayOffReason::Ill },
                (Act::Trouble, _) => LogEvent::Trouble {
                    trouble: Trouble::Other,
                    item: Some(HOLD),
                    id: None,
                    circumstances: Default::default(),
                },
                _ => LogEvent::Opened,
            };
            events.push((now, happened));
        }
        events
    })
}

/// Everything that happened until `now`.
fn until(events: &[(Stamp, LogEvent)], now: Stamp) -> Vec<(Stamp, LogEvent)> {
    events.iter().filter(|(at, _)| at.utc_ms <= now.utc_ms).cloned().collect()
}

fn last_day(events: &[(Stamp, LogEvent)]) -> i64 {
    events.last().map_or(0, |(at, _)| at.date().signed_duration_since(start()).num_days())
}

/// The summary of the days `from` to `last`, made in the evening of the last.
fn in_the_evening(events: &[(Stamp, LogEvent)], from: i64, last: i64, counter: u32) -> Summary {
    let now = at(last, 22 * 60);
    let summary = sealed(&until(events, now), &[plan()], (from, last), now).expect("days of the plan");
    Summary { counter, ..summary }
}

/// Without the delays, because the quartiles of a week cannot be computed from those of its two parts.
fn without_delays(united: Option<United<'_>>) -> Option<United<'_>> {
    united.map(|united| United { delays: std::collections::BTreeMap::new(), ..united })
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn every_row_lies_within_the_period(events in any_log(), from in 0i64..10) {
        let last = last_day(&events).max(from);
        let told = in_the_evening(&events, from, last, 1);
        let within = |day: DayNumber| (told.from..=told.until).contains(&day);
        prop_assert!(told.seen.iter().all(|day| within(*day)));
        prop_assert!(told.days.iter().all(|row| within(row.day)));
        prop_assert!(told.runs.iter().all(|row| within(row.day)));
        prop_assert!(told.mornings.iter().all(|row| within(row.day)));
        prop_assert!(told.delays.iter().all(|row| (told.from.0 / 7..=told.until.0 / 7).contains(&row.week)));
        prop_assert!(told.taken.iter().all(|taken| taken.day <= told.until));
        for row in &told.days {
            prop_assert!(row.slots.windows(2).all(|pair| pair[0].0 < pair[1].0), "ascending, none twice");
            prop_assert!(!row.slots.iter().any(|(_, mark)| matches!(mark, Mark::Due | Mark::ToCome)));
        }
    }

    /// The summaries of two visits together contain the same as one summary of the whole period.
    #[test]
    fn two_summaries_of_parts_are_one_of_the_whole(events in any_log(), cut in 0.0f64..1.0) {
        let last = last_day(&events);
        let cut = (cut * last as f64) as i64;
        let parts = [in_the_evening(&events, 0, cut, 1), in_the_evening(&events, cut, last, 2)];
        let whole = in_the_evening(&events, 0, last, 2);
        prop_assert_eq!(without_delays(unite(&parts)), without_delays(unite([&whole])));
    }

    /// The review counts each slot of the period once, whatever happened.
    #[test]
    fn each_slot_is_counted_once(events in any_log()) {
        let last = last_day(&events);
        let told = in_the_evening(&events, 0, last, 1);
        let review = build(&[(1, plan())].into(), &catalogue(), &[told]).expect("a summary");
        let hold = &review.adherence[0];
        let counts = hold.slots;
        let sum = counts.done + counts.written_in + counts.partly + counts.skipped + counts.not_done
            + counts.day_off + counts.unrecorded + counts.paused + counts.no_such_hour;
        prop_assert_eq!(i64::from(sum), 3 * (last.min(28) + 1));
        if let Some(kept) = hold.kept {
            prop_assert!(kept.k <= kept.n && hold.kept_timed.is_some_and(|timed| timed.k <= kept.k));
            prop_assert!(hold.dose.is_some_and(|dose| dose.done <= dose.of));
        }
    }

    /// Every run is reported once, for one slot or none.
    #[test]
    fn every_run_is_reported_once(events in any_log()) {
        let last = last_day(&events);
        let told = in_the_evening(&events, 0, last, 1);
        let before = until(&events, at(last, 22 * 60));
        let runs = before.iter().filter(|(_, event)| matches!(event, LogEvent::Run(_))).count();
        prop_assert_eq!(told.runs.len(), runs);
    }
}
