//! The proposals for a whole plan.

use super::facts::{PlanFacts, gather};
use super::{Suggestion, propose};

/// What the rules propose for each item of the newest revision, in the plan's order.
pub fn of_plan(known: &PlanFacts<'_>) -> Vec<Suggestion> {
    known.plan.prescription.items.iter().map(|item| propose(&gather(known, item))).collect()
}
