//! Logs reduced to summaries: examples and general properties.

mod examples;
mod laws;

use super::*;
use crate::history::History;
use crate::id::EntryRef;
use crate::log::{Entry, Log, LogEvent};
use crate::plan::Plan;
use crate::review::samples::{HOLD, PHONE, PLAN, catalogue, plan, start};
use crate::run::{HoldRecord, RunEnd, Work};
use crate::slots::SlotRef;

fn zone() -> Offsets {
    Offsets::fixed(3600)
}

/// The moment that is `minute` minutes after midnight on the given day of the plan.
fn at(day: i64, minute: i64) -> Stamp {
    let midnight = (start() + chrono::Duration::days(day)).and_time(chrono::NaiveTime::MIN).and_utc();
    zone().stamp(midnight.timestamp_millis() + (minute * 60 - 3600) * 1000)
}

fn fold(events: &[(Stamp, LogEvent)]) -> History {
    let entries = (1..).zip(events).map(|(n, (at, event))| Entry { n, plan: PLAN, at: *at, event: event.clone() });
    History::fold(&Log { id: PHONE, former: Vec::new(), entries: entries.collect() }, PLAN)
}

fn taken(revision: u16) -> LogEvent {
    LogEvent::Taken { revision, agreed: Vec::new() }
}

fn slot(day: i64, number: u8) -> SlotRef {
    SlotRef { day: start() + chrono::Duration::days(day), item: HOLD, number }
}

/// A run of the hold in which `whole` of its three holds were complete.
fn run(n: u32, started: Stamp, slot: Option<SlotRef>, whole: usize) -> Run {
    let item = plan().prescription.items[0].clone();
    Run {
        id: RunId(n),
        item: HOLD,
        exercise: item.exercise,
        rung: item.rung,
        dose: item.dose,
        slot,
        started,
        live: true,
        end: if whole == 3 { RunEnd::Completed } else { RunEnd::Stopped },
        paused_ms: 0,
        interruptions: Vec::new(),
        work: Work::Timed(vec![HoldRecord { side: None, held_ms: 10_000 }; whole]),
    }
}

/// The summary of days `from` to `until`, made at `now`.
fn sealed(events: &[(Stamp, LogEvent)], plans: &[Plan], (from, until): (i64, i64), now: Stamp) -> Option<Summary> {
    let revisions = plans.iter().map(|plan| (plan.header.revision, plan.clone())).collect();
    let day = |number| start() + chrono::Duration::days(number);
    let period = Period { from: day(from), until: day(until) };
    reduce(&fold(events), &revisions, &catalogue(), &zone(), Sealing { log: PHONE, period, now, counter: 1, note: None })
}
