//! The plan, and what is to be reached by it.

use super::codes::{IMPROVING, NO_CHANGE, WORSENING};
use super::elements::{Activity, CarePlan, CodeableConcept, Goal, GoalTarget, Identifier, Reference, Resource};
use super::{Facts, Known, Named, observation, timing};
use crate::measures::{About, Code, Measure};
use exercises::change::ActivityVerdict;
use exercises::id::ActivityId;
use exercises::plan::Plan;

/// The plan, if there is one, with a reference to each of its items.
pub(super) fn care_plan(facts: &Facts<'_>) -> Option<Named> {
    let name = facts.plan_name();
    let Plan { header, prescription } = facts.plan?;
    let plan = CarePlan {
        identifier: vec![name.clone()],
        status: "active",
        intent: "plan",
        category: vec![home_exercise()],
        title: facts.texts.plan(),
        subject: facts.patient(),
        period: Some(timing::period(header.start, prescription.review)),
        created: header.issued.to_string(),
        goal: prescription.activities.iter().map(|activity| Reference::to(&goal_name(facts, activity.id))).collect(),
        activity: prescription
            .items
            .iter()
            .map(|item| Activity { reference: Reference::to(&facts.order_name(item.id)) })
            .collect(),
    };
    Some(Named { name, resource: Resource::CarePlan(plan), known: Known::Replaced })
}

/// By this category one search finds everything that is written here.
pub(super) fn home_exercise() -> CodeableConcept {
    Code::HomeExercise.coding().into()
}

fn goal_name(facts: &Facts<'_>, activity: ActivityId) -> Identifier {
    facts.name(&format!("goal-{activity}"))
}

/// The activities that the patient named as hard are what the plan is for. The target of a balance trial is no goal: it is where a
/// trial ends.
pub(super) fn goals(facts: &Facts<'_>, measures: &[Measure]) -> Vec<Named> {
    let of_plan =
        |plan: &Plan| plan.prescription.activities.iter().map(|activity| goal(facts, plan, activity.id, measures)).collect();
    facts.plan.map(of_plan).unwrap_or_default()
}

fn goal(facts: &Facts<'_>, plan: &Plan, activity: ActivityId, measures: &[Measure]) -> Named {
    let name = goal_name(facts, activity);
    let series = facts.review.iter().flat_map(|review| &review.activities).find(|series| series.activity == activity);
    let achieved = series.and_then(|series| match series.change.verdict {
        ActivityVerdict::Better => Some(IMPROVING),
        ActivityVerdict::Worse => Some(WORSENING),
        ActivityVerdict::NoClearChange => Some(NO_CHANGE),
        ActivityVerdict::TooFewRatings => None,
    });
    let rated = measures.iter().filter(|measure| measure.about == About::Activity(activity));
    let goal = Goal {
        identifier: vec![name.clone()],
        lifecycle_status: "active",
        achievement_status: achieved.map(|known| known.concept()),
        description: CodeableConcept::said(facts.texts.activity(activity)),
        subject: facts.patient(),
        start_date: plan.header.start.to_string(),
        target: vec![GoalTarget {
            measure: CodeableConcept::new(Code::Activity.coding(), facts.texts.measured(Code::Activity, None)),
        }],
        outcome_reference: rated.map(|measure| Reference::to(&observation::name(facts, measure))).collect(),
    };
    Named { name, resource: Resource::Goal(goal), known: Known::Replaced }
}
