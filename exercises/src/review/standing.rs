//! How a patient stands, for the list of all patients: two answers of the review, without the sums of the others.

use super::alarms::clears;
use crate::plan::Plan;
use crate::saturating::at_most;
use crate::summary::Summary;
use crate::summary::union::unite;
use chrono::NaiveDate;

/// How a patient stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Standing {
    /// The last day that any summary covers, whether anything was recorded on it or not: [`super::Review::until`].
    pub until: NaiveDate,
    /// The number of [`super::Review::alarms`] that are not cleared.
    pub open_alarms: u16,
}

/// How a patient with this newest plan stands, by the summaries of that plan; `None` if there are none.
pub fn standing<'a>(newest: &Plan, summaries: impl IntoIterator<Item = &'a Summary>) -> Option<Standing> {
    let of_plan = summaries.into_iter().filter(|summary| summary.plan == newest.header.id);
    let united = unite(of_plan)?;
    let until = united.covered.last().copied().unwrap_or_default();
    let open = united.alarms.values().filter(|(_, alarm)| !clears(&united, newest, alarm));
    Some(Standing { until: until.date(newest.header.start), open_alarms: at_most(open.count()) })
}
