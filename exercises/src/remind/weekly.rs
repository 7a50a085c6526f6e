//! The slots to come in a form that a calendar can store: one time of day, some days of the week, until the review, with exceptions.

use super::PlanInForce;
use crate::history::Mark;
use crate::id::PlanId;
use crate::plan::Weekdays;
use crate::suspension;
use crate::time::{Offsets, Stamp};
use chrono::{Datelike, Duration, NaiveDateTime, NaiveTime, Timelike};
use std::collections::{BTreeMap, BTreeSet};

/// One time of day of a plan, by the wall clock wherever the person is.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Weekly {
    /// The plan.
    pub plan: PlanId,
    /// The days of the week on which it occurs.
    pub days: Weekdays,
    /// The first occurrence.
    pub first: NaiveDateTime,
    /// The last occurrence.
    pub last: NaiveDateTime,
    /// Occurrences between first and last that are left out: days off, and times skipped by a clock change.
    pub except: Vec<NaiveDateTime>,
    /// Approximate duration, in seconds.
    pub takes_s: u32,
}

/// The slots of a plan from `now` on, in order of the time of day; items at the same time are combined. Items that an alarm pauses
/// are left out.
pub fn weekly(of: PlanInForce<'_>, now: Stamp, zone: &Offsets) -> Vec<Weekly> {
    let plan = &of.followed.plan;
    let suspended = of.followed.history.suspended(plan, now);
    let mut times: BTreeMap<NaiveTime, (BTreeSet<NaiveDateTime>, u32)> = BTreeMap::new();
    // A slot of yesterday may reach over midnight.
    let days = (now.date() - Duration::days(1)).iter_days().take_while(|day| *day <= plan.prescription.review);
    for slot in days.flat_map(|day| of.followed.slots_on(day, zone)) {
        let Some(due) = slot.due.filter(|due| due.utc_ms >= now.utc_ms) else { continue };
        let item = plan.item(slot.slot.item).filter(|_| of.followed.history.day_off(slot.slot.day).is_none());
        let paused = |item| suspension::blocking(&suspended, item, plan, of.catalogue).is_some();
        // Where the person chooses the days, a slot may have been done before it is due.
        let done = |item| slot.week.is_some() && of.followed.history.mark(&slot, item, now) == Mark::Done;
        let Some(item) = item.filter(|item| !paused(item) && !done(item)) else { continue };
        let (dates, takes_s) = times.entry(due.local().time()).or_default();
        dates.insert(due.local());
        let asked = item.on(slot.slot.day, plan.header.issued);
        *takes_s = asked.dose.total_s(item.side.sidedness()).max(*takes_s);
    }
    times.into_values().filter_map(|(dates, takes_s)| one(plan.header.id, &dates, takes_s)).collect()
}

fn one(plan: PlanId, dates: &BTreeSet<NaiveDateTime>, takes_s: u32) -> Option<Weekly> {
    let (first, last) = (*dates.first()?, *dates.last()?);
    let days: Weekdays = dates.iter().map(Datelike::weekday).collect();
    let named = first.date().iter_days().take_while(|day| *day <= last.date()).filter(|day| days.contains(day.weekday()));
    let except = named.map(|day| day.and_time(first.time())).filter(|at| !dates.contains(at)).collect();
    Some(Weekly { plan, days, first, last, except, takes_s })
}

impl Weekly {
    /// The minute of the day, 0 to 1439.
    pub fn minute(&self) -> u16 {
        (self.first.num_seconds_from_midnight() / 60) as u16
    }
}
