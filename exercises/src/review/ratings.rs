//! The patient's answers: pain, named activities, reasons for skipping.

use super::{ActivitySeries, PainSeries};
use crate::adherence::SlotOn;
use crate::change::{activity_change, pain_over_days};
use crate::history::Mark;
use crate::id::{ActivityId, ComplaintId};
use crate::log::Barrier;
use crate::plan::Plan;
use crate::score::Score;
use crate::summary::pain_points;
use crate::summary::union::United;
use crate::time::DayNumber;
use std::collections::BTreeMap;

pub(super) fn pain(
    united: &United<'_>,
    revisions: &BTreeMap<u16, Plan>,
    day_of: impl Fn(&Plan) -> DayNumber,
) -> Vec<PainSeries> {
    let named = revisions.values().rev().flat_map(|plan| plan.prescription.complaints.iter().map(|complaint| complaint.id));
    let told = united.pain.values().map(|rating| rating.complaint);
    let one = |complaint: ComplaintId| {
        let points = pain_points(united.pain.values().filter(|rating| rating.complaint == complaint));
        let at_visits = revisions.values().filter_map(|plan| {
            Some((day_of(plan), plan.prescription.complaints.iter().find(|other| other.id == complaint)?.pain?))
        });
        PainSeries { complaint, at_visits: at_visits.collect(), change: pain_over_days(&points), points }
    };
    unique(named.chain(told)).into_iter().map(one).collect()
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
    let count = |barrier: Barrier| slots.iter().filter(|slot| slot.mark == Mark::Skipped(barrier)).count() as u16;
    let counted = Barrier::ALL.into_iter().map(|barrier| (barrier, count(barrier)));
    let mut named: Vec<(Barrier, u16)> = counted.filter(|(_, times)| *times > 0).collect();
    named.sort_by_key(|(barrier, times)| (!barrier.first(), std::cmp::Reverse(*times)));
    named
}
