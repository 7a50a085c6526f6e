//! The proposals for a whole plan.

use super::facts::{Since, gather};
use super::{Suggestion, advise};
use crate::adherence::SlotOn;
use crate::catalogue::Catalogue;
use crate::plan::Plan;
use crate::summary::union::United;

/// What the rules propose for each item of `plan`, in the plan's order. `plan` is the newest revision; `slots` are those of
/// all devices combined.
pub fn of_plan(plan: &Plan, catalogue: &Catalogue, united: &United<'_>, slots: &[SlotOn]) -> Vec<Suggestion> {
    let since = Since::taking(plan, united);
    plan.prescription.items.iter().map(|item| advise(&gather(plan, catalogue, &since, slots, item))).collect()
}
