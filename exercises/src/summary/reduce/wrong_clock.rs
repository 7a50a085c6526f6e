//! What was recorded while the device's clock was wrong: all of it, whatever the period, because the days are not known.

use super::{Days, extra};
use crate::history::History;
use crate::plan::Plan;
use crate::summary::{ByWrongClock, DuringOn, MorningOn, RatedOn};
use std::collections::BTreeMap;

pub(super) fn recorded(history: &History, revisions: &BTreeMap<u16, Plan>, days: &Days) -> ByWrongClock {
    let record = &history.wrong_clock;
    let marked = |n: &u32| record.mark(*n).is_some();
    ByWrongClock {
        runs: record.runs.values().map(|run| extra(history, revisions, run, days.nearest(run.started))).collect(),
        mornings: (record.mornings.iter())
            .map(|one| MorningOn { n: one.n, day: days.nearest(one.at), complaint: one.of, score: one.score })
            .collect(),
        during: (record.during.iter())
            .map(|one| DuringOn { n: one.n, day: days.nearest(one.at), item: one.of, score: one.score })
            .collect(),
        rated: (record.rated.iter())
            .map(|one| RatedOn { n: one.n, day: days.nearest(one.at), activity: one.of, score: one.score })
            .collect(),
        alarms: history.alarms.iter().map(|alarm| alarm.entry.n).filter(marked).collect(),
        ahead_days: 0,
    }
}
