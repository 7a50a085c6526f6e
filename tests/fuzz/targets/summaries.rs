//! Any contents of summaries, as somebody who has the card can seal them, are either read or refused; what is read is united and
//! reviewed, and the review is written as JSON. The input is pieces: the contents of one summary each.
#![no_main]

use exercises::id::LogId;
use exercises::review;
use exercises::summary::union::{arrival_effect, unite};
use format::summary::Body;
use fuzz::{CATALOGUE, PLAN};
use libfuzzer_sys::fuzz_target;
use std::collections::BTreeMap;

/// Where the log is in contents that are written in the usual order: after the map's head, the plan and the log's own head.
const LOG: std::ops::Range<usize> = 13..21;

fuzz_target!(|input: &[u8]| {
    let mut summaries = Vec::new();
    for contents in fuzz::pieces(input) {
        let log = contents.get(LOG).and_then(|log| log.try_into().ok()).unwrap_or_default();
        // The letter says what its contents say; a counter is one byte or follows a head of one, two or four.
        let counter = match contents.get(LOG.end + 1..) {
            Some([24, one, ..]) => (*one).into(),
            Some([25, high, low, ..]) => u16::from_be_bytes([*high, *low]).into(),
            Some([26, bytes @ ..]) => bytes.first_chunk().map_or(0, |four| u32::from_be_bytes(*four)),
            Some([small @ 0..24, ..]) => (*small).into(),
            _ => 0,
        };
        let packed = fuzz::stored(contents);
        let body = Body { plan: PLAN.header.id, log: LogId(log), counter, packed, version: 2 };
        let Ok(summary) = format::summary::read(&body) else { continue };
        let _ = arrival_effect(&summaries, &summary);
        summaries.push(summary);
    }
    let _ = unite(&summaries);
    let second = { let mut plan = PLAN.clone(); plan.header.revision = 2; plan };
    for revisions in [BTreeMap::from([(1, PLAN.clone())]), BTreeMap::from([(1, PLAN.clone()), (2, second)])] {
        let Some(review) = review::build(&revisions, &CATALOGUE, &summaries) else { continue };
        let whole = serde_json::json!(review);
        let plan = revisions.values().next_back().expect("a plan");
        let _ = format::review_json::write(&review, plan, &whole);
    }
});
