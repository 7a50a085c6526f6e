//! Any entries of a log are either read or refused; what is read is folded, shown, reduced to a summary, and that read again. The input
//! is pieces: four bytes for the time since the entry before, in seconds, and an entry.
#![no_main]

use chrono::Days;
use exercises::history::History;
use exercises::id::LogId;
use exercises::log::{Entry, Log};
use exercises::summary::{Period, Sealing, reduce};
use exercises::time::Offsets;
use exercises::today::{Followed, compose};
use fuzz::{CATALOGUE, PLAN};
use libfuzzer_sys::fuzz_target;
use std::collections::BTreeMap;

/// The morning of the plan's first day.
const START_MS: i64 = 1_795_590_000_000;

fuzz_target!(|input: &[u8]| {
    let zone = Offsets::fixed(3600);
    let mut at_ms = START_MS;
    let mut log = Log { id: LogId([7; 8]), former: Vec::new(), entries: Vec::new() };
    for piece in fuzz::pieces(input) {
        let Some((gap, entry)) = piece.split_first_chunk::<4>() else { continue };
        // Clocks are put back as well; over all entries the time stays within the years that the program reads.
        at_ms = (at_ms + i64::from(i32::from_le_bytes(*gap) % 10_000_000) * 1000).clamp(START_MS - 10_000_000_000, START_MS + 100_000_000_000);
        let Ok(event) = format::entry::read(entry) else { continue };
        assert_eq!(format::entry::read(&format::entry::write(&event)).as_ref(), Ok(&event), "written as it was read");
        let n = log.entries.len() as u32 + 1;
        log.entries.push(Entry { n, plan: PLAN.header.id, at: zone.stamp(at_ms), event });
    }
    let history = History::fold(&log, PLAN.header.id);
    let now = zone.stamp(at_ms + 3_600_000);
    let period = Period { from: PLAN.header.start, until: now.date().checked_add_days(Days::new(1)).expect("a date") };
    let sealing = Sealing { log: log.id, period, now, counter: 1, note: None };
    let revisions = BTreeMap::from([(1, PLAN.clone())]);
    if let Some(summary) = reduce(&history, &revisions, &CATALOGUE, &zone, sealing)
        && let Ok(body) = format::summary::write(&summary)
    {
        assert_eq!(format::summary::read(&body), Ok(summary), "a summary says what was reduced");
    }
    let followed = Followed { plan: PLAN.clone(), taken: zone.stamp(START_MS), ahead: None, history };
    let _ = compose(&[(&followed, &CATALOGUE)], now, &zone);
});
