//! The start of a plan: empty, or from the last one.

use super::{Draft, UsedNumbers};
use crate::plan::check::GATE_DAYS;
use crate::plan::stance::longest;
use crate::plan::{Aftercare, Plan, Prescription};
use chrono::{Days, NaiveDate};
use std::collections::BTreeSet;

/// Days until the review if no earlier plan says otherwise.
pub const DEFAULT_DAYS: u64 = 28;

/// The first prescription, empty except for the instructions that apply after every hands-on visit.
pub fn first(today: NaiveDate) -> Draft {
    let prescription = Prescription {
        review: after(today, DEFAULT_DAYS),
        age: None,
        absent: BTreeSet::new(),
        confirmed: None,
        items: Vec::new(),
        complaints: Vec::new(),
        activities: Vec::new(),
        baselines: Vec::new(),
        aftercare: vec![Aftercare::SorenessIsUsual, Aftercare::ContactIfWorse],
        cleared: Vec::new(),
    };
    Draft { prescription, today, used: UsedNumbers::default() }
}

/// The prescription that follows `last`, in a plan whose revisions together used the numbers in `used`: the same items, complaints
/// and activities, until a review after the same time.
///
/// What belongs to the last visit is dropped: ratings, and the clinician's own line. The list of absent risks is carried over with the
/// day on which it was last confirmed, and has to be confirmed again. Of the stance times the longest
/// ones of each condition stay, from as many days as a gate requires: a gate that was open stays open. Graded activity goes on from the amount reached. A revision on the same day is
/// a correction of the same visit and keeps all of that. Alarms that were cleared stay cleared.
pub fn next(last: &Plan, used: UsedNumbers, today: NaiveDate) -> Draft {
    let used = used.and(UsedNumbers::of(&last.prescription));
    let mut prescription = Prescription { baselines: last.dated_baselines(), ..last.prescription.clone() };
    let issued = last.header.issued;
    if issued >= today {
        return Draft { prescription, today, used };
    }
    let span = prescription.review.signed_duration_since(issued).num_days();
    prescription.review = after(today, u64::try_from(span).ok().filter(|days| *days > 0).unwrap_or(DEFAULT_DAYS));
    prescription.items.iter_mut().for_each(|item| item.dose = item.on(today, issued).dose);
    prescription.confirmed = prescription.confirmed.or(Some(issued));
    prescription.baselines = longest(&prescription.baselines, GATE_DAYS);
    prescription.complaints.iter_mut().for_each(|complaint| complaint.pain = None);
    prescription.activities.iter_mut().for_each(|activity| activity.rating = None);
    prescription.aftercare.retain(|line| !matches!(line, Aftercare::Own(_)));
    Draft { prescription, today, used }
}

fn after(day: NaiveDate, days: u64) -> NaiveDate {
    day.checked_add_days(Days::new(days)).unwrap_or(day)
}
