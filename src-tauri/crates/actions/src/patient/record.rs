//! The Record page: the person's own log, evaluated with the same rules as the clinician's review.

use super::plans::{self, FollowedPlan};
use crate::{ActionResult, DataFolder, Moment};
use exercises::history::{Known, last_true};
use exercises::review;
use exercises::suggest::Suggestion;
use exercises::summary::{Period, Sealing, reduce};
use exercises::time::Stamp;
use wire::patient::RecordPage;

/// One record for each plan.
pub fn pages(folder: &DataFolder, moment: &Moment) -> ActionResult<Vec<RecordPage>> {
    Ok(plans::all_at(folder, moment)?.iter().map(|one| page(folder, one, moment)).collect())
}

/// The changes of level that the person may make now, if the clinician allowed any.
pub(crate) fn steps(folder: &DataFolder, one: &FollowedPlan, moment: &Moment) -> Vec<Suggestion> {
    if !one.plan().prescription.items.iter().any(|item| item.may_step) {
        return Vec::new();
    }
    let proposed = page(folder, one, moment).review.map(|review| review.items).unwrap_or_default();
    let offered = |of: &Suggestion| one.plan().item(of.item).is_some_and(|item| of.offered(item).is_some());
    proposed.into_iter().filter(offered).collect()
}

/// The moment of the plan's last entry, if it is on a later day than today and nothing that was recorded since speaks against it: then the
/// device's clock is behind.
fn later(folder: &DataFolder, one: &FollowedPlan, moment: &Moment) -> Option<Stamp> {
    let read = folder.plan_cache.borrow();
    let issued = one.revisions.iter().map(|(revision, plan)| (*revision, plan.header.issued)).collect();
    let last = read.log().and_then(|log| last_true(log, one.plan().header.id, &Known { issued, now: None }));
    last.filter(|at| at.date() > moment.now.date())
}

fn page(folder: &DataFolder, one: &FollowedPlan, moment: &Moment) -> RecordPage {
    let period = Period { from: one.plan().header.start, until: moment.now.date() };
    let summary = reduce(
        &one.followed.history,
        &one.revisions,
        &one.catalogue,
        &moment.zone,
        Sealing { log: one.log, period, now: moment.now, counter: 0, note: None },
    );
    let review = summary.and_then(|summary| review::build(&one.revisions, &one.catalogue, &[summary]));
    RecordPage {
        later: later(folder, one, moment),
        plan: one.plan().clone(),
        exercises: one.exercises(),
        review,
        offer: (one.plan().header.start, moment.now.date()),
    }
}
