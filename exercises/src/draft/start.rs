//! What a plan starts from: nothing, or the last one.

use super::stance::longest;
use super::{Draft, UsedNumbers};
use crate::id::PlanId;
use crate::plan::{Aftercare, Plan};
use chrono::{Days, NaiveDate};
use std::collections::BTreeSet;

/// A review is due after so many days, where no earlier plan says otherwise.
pub const DEFAULT_DAYS: u64 = 28;

/// The first revision, empty but for the lines that hold after every hands-on visit.
pub fn first(id: PlanId, clinic: &str, today: NaiveDate) -> Draft {
    let plan = Plan {
        id,
        revision: 1,
        clinic: clinic.to_owned(),
        start: today,
        issued: today,
        review: after(today, DEFAULT_DAYS),
        age: None,
        absent: BTreeSet::new(),
        items: Vec::new(),
        complaints: Vec::new(),
        activities: Vec::new(),
        baselines: Vec::new(),
        aftercare: vec![Aftercare::SorenessIsUsual, Aftercare::ContactIfWorse],
        cleared: Vec::new(),
    };
    Draft { plan, used: UsedNumbers::default(), earlier: 0 }
}

/// The revision that follows `last`, in a plan whose revisions together gave the numbers in `used`: the same items,
/// complaints and activities until the same span ahead.
///
/// What belongs to the last visit is left behind: ratings, the clinician's own line, the ticked list. Of the stance times
/// the two longest of each condition stay as earlier visits': a gate that was open stays open. A revision of the same day is a correction of the same visit:
/// it keeps all of that. Alarms that were cleared stay cleared.
pub fn next(last: &Plan, used: UsedNumbers, clinic: &str, today: NaiveDate) -> Draft {
    let mut plan =
        Plan { revision: last.revision.saturating_add(1), clinic: clinic.to_owned(), issued: today, ..last.clone() };
    let used = used.and(UsedNumbers::of(last));
    if last.issued >= today {
        return Draft { plan, used, earlier: 0 };
    }
    let span = last.review.signed_duration_since(last.issued).num_days();
    plan.review = after(today, u64::try_from(span).ok().filter(|days| *days > 0).unwrap_or(DEFAULT_DAYS));
    plan.absent = BTreeSet::new();
    plan.baselines = longest(&last.baselines);
    plan.complaints.iter_mut().for_each(|complaint| complaint.pain = None);
    plan.activities.iter_mut().for_each(|activity| activity.rating = None);
    plan.aftercare.retain(|line| !matches!(line, Aftercare::Own(_)));
    Draft { earlier: plan.baselines.len(), plan, used }
}

fn after(day: NaiveDate, days: u64) -> NaiveDate {
    day.checked_add_days(Days::new(days)).unwrap_or(day)
}
