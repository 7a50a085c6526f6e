//! One step forward or back: one factor at a time.
//!
//! Rule (our design): forward, the dose grows as its kind states, then the next rung: a hold gets 5 s more up to 30 s, then a
//! repetition more up to 10; a counted movement gets a repetition more up to 20; a balance trial gets 5 s more up to 60 s
//! (60 s without loss of balance, then the surface: J Foot Ankle Res 2022, 10.1186/s13047-022-00514-x table 2; seen). Where an
//! exercise is due every two hours or more often, one doing stays within two minutes of work. Back, what the patient added
//! since the card goes first, then the rung, then what the kind states. A rung keeps its dose and a dose its rung, so that one
//! factor changes. A ladder is never left for another: closed eyes are switched on apart, by a clinician.

use super::gate::{self, Hindrance};
use crate::catalogue::kind::StepForward;
use crate::catalogue::{Exercise, Quantity, RungId};
use crate::plan::{AgeBand, Item, Pattern};

/// Most work of one doing that is due at least every [`OFTEN_MINUTES`], seconds (our design).
pub const MAX_OFTEN_S: u32 = 120;
/// From this interval down an item counts as due often, minutes.
pub const OFTEN_MINUTES: u16 = 120;

/// What exactly would change.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Step {
    /// One quantity of the dose, more or less.
    Change {
        /// Which.
        quantity: Quantity,
        /// By how much.
        by: i16,
    },
    /// This rung instead.
    Rung(RungId),
}

/// What a step forward depends on, besides the item.
#[derive(Debug, Clone, Copy)]
pub struct StepConditions<'a> {
    /// The item's exercise; `None` where the catalogue does not know it.
    pub exercise: Option<&'a Exercise>,
    /// The patient's age band.
    pub age: Option<AgeBand>,
    /// Whether the gate of softer surfaces and closed eyes is open, see [`super::gate_open`].
    pub gate_open: bool,
}

/// The next step from `item`'s rung and dose.
///
/// # Errors
/// The [`Hindrance`], where there is none to be had.
pub fn next(item: &Item, conditions: StepConditions<'_>) -> Result<Step, Hindrance> {
    let exercise = conditions.exercise.ok_or(Hindrance::Unknown)?;
    let forward = item.dose.kind().rules().forward();
    match forward.iter().find(|step| is_free(item, step)) {
        Some(StepForward { quantity, by, .. }) => Ok(Step::Change { quantity: *quantity, by: *by }),
        None => harder_rung(item, exercise, conditions),
    }
}

/// Whether the step stays within the most that steps lead to, and leaves an item short that is due often.
fn is_free(item: &Item, step: &StepForward) -> bool {
    let StepForward { quantity, by, most, short_if_often } = *step;
    let within = item.dose.value(quantity).is_some_and(|value| value + i64::from(by) <= most);
    within && (!short_if_often || short_enough(&Step::Change { quantity, by }.apply(item)))
}

fn harder_rung(item: &Item, exercise: &Exercise, conditions: StepConditions<'_>) -> Result<Step, Hindrance> {
    let Some(id) = &item.rung else { return Err(Hindrance::AtTheTop) };
    let now = exercise.rung(id).ok_or(Hindrance::Unknown)?;
    let harder = exercise.harder(id).ok_or(Hindrance::AtTheTop)?;
    gate::allows(now, harder, conditions.age, conditions.gate_open)?;
    Ok(Step::Rung(harder.id.clone()))
}

/// Whether an item that is due often stays within [`MAX_OFTEN_S`] of work.
fn short_enough(item: &Item) -> bool {
    let often = matches!(item.schedule.pattern, Pattern::Every { minutes, .. } if minutes <= OFTEN_MINUTES);
    !often || item.dose.work_s() * item.side.in_turn().len() as u32 <= MAX_OFTEN_S
}

/// One step back from `item`'s rung and dose; `None` at the easiest.
pub fn back(item: &Item, exercise: Option<&Exercise>) -> Option<Step> {
    let easier = item.rung.as_ref().and_then(|rung| exercise?.easier(rung));
    if let Some(easier) = easier {
        return Some(Step::Rung(easier.id.clone()));
    }
    let steps = item.dose.kind().rules().back().iter();
    let mut less = steps.map(|(quantity, by)| Step::Change { quantity: *quantity, by: *by });
    less.find(|step| step.apply(item).dose != item.dose && step.apply(item).dose.check().is_ok())
}

/// One step back that first takes back what the patient added to `planned` since the card, the last kind of step first;
/// then as [`back`].
pub fn undo(item: &Item, planned: &Item, exercise: Option<&Exercise>) -> Option<Step> {
    if item.rung != planned.rung {
        return back(item, exercise);
    }
    let steps = item.dose.kind().rules().forward().iter().rev();
    let mut steps = steps.filter(|_| item.dose.kind() == planned.dose.kind());
    let added = steps.find(|step| item.dose.value(step.quantity) > planned.dose.value(step.quantity));
    match added {
        Some(StepForward { quantity, by, .. }) => Some(Step::Change { quantity: *quantity, by: -by }),
        None => back(item, exercise),
    }
}

impl Step {
    /// `item` after the step. A step that does not fit the kind of its dose, or leads below zero, leaves it as it is.
    pub fn apply(&self, item: &Item) -> Item {
        let mut after = item.clone();
        match self {
            Step::Change { quantity, by } => {
                if let Some(value) = item.dose.value(*quantity) {
                    after.dose = item.dose.with(*quantity, value + i64::from(*by));
                }
            }
            Step::Rung(rung) => after.rung = Some(rung.clone()),
        }
        after
    }
}
