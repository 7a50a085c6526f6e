//! The patient's answers: pain, named activities, reasons for skipping.

use super::{ActivitySeries, DuringSeries, PainSeries};
use crate::adherence::{KofN, SlotOn};
use crate::change::{activity_change, flares, pain_over_days, unsettled};
use crate::history::Mark;
use crate::id::{ActivityId, ComplaintId, ItemId};
use crate::log::Barrier;
use crate::plan::Plan;
use crate::saturating::at_most;
use crate::score::Score;
use crate::summary::morning_points;
use crate::summary::union::United;
use crate::time::DayNumber;
use std::collections::{BTreeMap, BTreeSet};

/// The pain of each complaint in the mornings, with its flares. `until` is the last day that summaries cover.
pub(super) fn pain(
    united: &United<'_>,
    revisions: &BTreeMap<u16, Plan>,
    during: &[DuringSeries],
    until: DayNumber,
    day_of: impl Fn(&Plan) -> DayNumber,
) -> Vec<PainSeries> {
    let named = revisions.values().rev().flat_map(|plan| plan.prescription.complaints.iter().map(|complaint| complaint.id));
    let told = united.mornings.values().map(|rating| rating.complaint);
    let serves = |item: ItemId| revisions.values().rev().find_map(|plan| plan.item(item)).and_then(|item| item.serves);
    let one = |complaint: ComplaintId| {
        let points = morning_points(united.mornings.iter().filter(|(_, rating)| rating.complaint == complaint));
        let at_visits: Vec<(DayNumber, Score)> = revisions
            .values()
            .filter_map(|plan| {
                Some((day_of(plan), plan.prescription.complaints.iter().find(|other| other.id == complaint)?.pain?))
            })
            .collect();
        let at_visit = at_visits.first().map(|(_, pain)| *pain);
        let of_items = during.iter().filter(|one| serves(one.item) == Some(complaint));
        let series: Vec<&[(DayNumber, Score)]> =
            std::iter::once(points.as_slice()).chain(of_items.map(|one| one.points.as_slice())).collect();
        PainSeries {
            complaint,
            change: pain_over_days(&points, at_visit, until),
            flares: flares(&series),
            unsettled: unsettled_mornings(united, complaint, &points, at_visit),
            at_visits,
            points,
        }
    };
    unique(named.chain(told)).into_iter().map(one).collect()
}

/// Mornings that had not settled after a day with any session, and those of which a log of version 1 says so.
fn unsettled_mornings(
    united: &United<'_>,
    complaint: ComplaintId,
    points: &[(DayNumber, Score)],
    at_visit: Option<Score>,
) -> Vec<DayNumber> {
    let sessions: BTreeSet<DayNumber> = united.runs.values().map(|run| run.day).collect();
    let mut days = unsettled(points, at_visit, |day| sessions.contains(&day));
    let answered = united.settled.values().filter(|answer| answer.complaint == complaint && !answer.settled);
    days.extend(answered.map(|answer| answer.day));
    days.sort_unstable();
    days.dedup();
    days
}

/// The pain while doing each item of the newest plan and each other that was rated.
pub(super) fn during(united: &United<'_>, revisions: &BTreeMap<u16, Plan>) -> Vec<DuringSeries> {
    let newest = revisions.values().next_back();
    let in_plan = newest.into_iter().flat_map(|plan| plan.prescription.items.iter().map(|item| item.id));
    let told = united.during.values().map(|rating| rating.item);
    let one = |item: ItemId| {
        let mut days: BTreeMap<DayNumber, Score> = BTreeMap::new();
        for rating in united.during.values().filter(|rating| rating.item == item) {
            let known = days.entry(rating.day).or_insert(rating.score);
            *known = (*known).max(rating.score);
        }
        let sessions: BTreeSet<DayNumber> =
            united.runs.values().filter(|run| run.item == item).map(|run| run.day).chain(days.keys().copied()).collect();
        let above = |(day, score): &(&DayNumber, &Score)| {
            limit_on(united, revisions, item, **day).is_some_and(|limit| **score > limit)
        };
        DuringSeries {
            item,
            known: KofN::of(days.len() as u32, sessions.len() as u32),
            above_limit: at_most(days.iter().filter(above).count()),
            points: days.into_iter().collect(),
        }
    };
    unique(in_plan.chain(told)).into_iter().map(one).collect()
}

/// The limit of an item's pain by the highest revision that any device had taken by `day`; by the newest that has the item otherwise.
pub(super) fn limit_on(united: &United<'_>, revisions: &BTreeMap<u16, Plan>, item: ItemId, day: DayNumber) -> Option<Score> {
    let in_force = revision_on(united, day).and_then(|revision| revisions.get(&revision)?.item(item));
    in_force.or_else(|| revisions.values().rev().find_map(|plan| plan.item(item))).map(|item| item.pain_limit)
}

/// The highest revision that any device had taken by `day`.
pub(super) fn revision_on(united: &United<'_>, day: DayNumber) -> Option<u16> {
    united.logs.values().filter_map(|of_log| of_log.in_force(day)).map(|taken| taken.revision).max()
}

pub(super) fn activities(
    united: &United<'_>,
    revisions: &BTreeMap<u16, Plan>,
    day_of: impl Fn(&Plan) -> DayNumber,
) -> Vec<ActivitySeries> {
    let named = revisions.values().rev().flat_map(|plan| plan.prescription.activities.iter().map(|activity| activity.id));
    let told = united.rated.values().map(|rating| rating.activity);
    let one = |activity: ActivityId| {
        let of_it = united.rated.values().filter(|rating| rating.activity == activity);
        // If an activity was rated several times on one day, the last entry of a device's log counts; between devices the
        // choice is arbitrary, because the order of their entries is not known.
        let points: BTreeMap<DayNumber, Score> = of_it.map(|rating| (rating.day, rating.score)).collect();
        let points: Vec<(DayNumber, Score)> = points.into_iter().collect();
        let at_visits: Vec<(DayNumber, Score)> = revisions
            .values()
            .filter_map(|plan| {
                Some((day_of(plan), plan.prescription.activities.iter().find(|other| other.id == activity)?.rating?))
            })
            .collect();
        let change = activity_change(at_visits.first().map(|(_, rating)| *rating), &points);
        ActivitySeries { activity, at_visits, change, points }
    };
    unique(named.chain(told)).into_iter().map(one).collect()
}

/// The values without duplicates, each at the place where it first occurs.
pub(super) fn unique<T: PartialEq>(values: impl IntoIterator<Item = T>) -> Vec<T> {
    let mut kept: Vec<T> = Vec::new();
    for value in values {
        if !kept.contains(&value) {
            kept.push(value);
        }
    }
    kept
}

/// Reasons for skipping slots with their counts: first those that need attention, then the others, the most frequent first.
pub(super) fn barriers(slots: &[SlotOn]) -> Vec<(Barrier, u16)> {
    let count = |barrier: Barrier| at_most(slots.iter().filter(|slot| slot.mark == Mark::Skipped(barrier)).count());
    let counted = Barrier::ALL.into_iter().map(|barrier| (barrier, count(barrier)));
    let mut named: Vec<(Barrier, u16)> = counted.filter(|(_, times)| *times > 0).collect();
    named.sort_by_key(|(barrier, times)| (!barrier.first(), std::cmp::Reverse(*times)));
    named
}
