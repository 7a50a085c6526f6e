//! One step forward or back, changing one factor at a time.
//!
//! Our design. Forward, the exercise's own step rules are gone through in order, and the first that still has room is the
//! step. An exercise without rules has those of its kind, and then the next rung: a hold gets 5 s more up to 30 s, then one
//! repetition more up to 10; a counted movement gets one repetition more up to 20; a balance trial gets 5 s more up to 60 s
//! (60 s without loss of balance, then the surface: J Foot Ankle Res 2022, 10.1186/s13047-022-00514-x table 2; seen). If an
//! exercise is due every two hours or more often, one run stays within two minutes of work. Back, what the patient added
//! since the card is undone first, then comes the easier rung, then what the kind prescribes.
//!
//! An item with a weight or a band gets the next heavier one once its dose has grown, and before the next rung; the dose falls back to what is
//! usual. Only a clinician takes that step, because the patient may not have the heavier one. Back, it gets the next lighter one first.
//!
//! A step makes one factor harder. On a harder rung the dose falls back to what is usual there, and never rises. A step never
//! leads to another ladder: closed eyes are prescribed separately, by a clinician. A test is always done in the same way, so
//! no step changes it.

use super::gate::{self, Hindrance};
use crate::catalogue::kind::StepForward;
use crate::catalogue::{Dose, Exercise, Grows, Quantity, Rung, RungId};
use crate::plan::{AgeBand, Item, Load, Pattern};

/// The longest work of one run of an item that is due at least every [`OFTEN_MINUTES`], in seconds (our design).
pub const MAX_OFTEN_S: u32 = 120;
/// An item counts as due often if it is due at this interval or a shorter one, in minutes.
pub const OFTEN_MINUTES: u16 = 120;

/// The change that a step makes.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Step {
    /// Increases or decreases one quantity of the dose.
    Change {
        /// The quantity that changes.
        quantity: Quantity,
        /// The amount added to it; negative for a decrease.
        by: i16,
    },
    /// Replaces the rung.
    Rung {
        /// The rung after the step.
        to: RungId,
        /// The dose after the step.
        dose: Dose,
    },
    /// Replaces the load.
    Load {
        /// The load after the step.
        to: Load,
        /// The dose after the step.
        dose: Dose,
    },
}

/// What a step forward depends on, apart from the item.
#[derive(Debug, Clone, Copy)]
pub struct StepConditions<'a> {
    /// The item's exercise; `None` if the catalogue does not have it.
    pub exercise: Option<&'a Exercise>,
    /// The patient's age band.
    pub age: Option<AgeBand>,
    /// Whether the stance times needed for softer surfaces and closed eyes have been reached, see [`super::gate_open`].
    pub gate_open: bool,
}

/// The next step forward from `item`'s rung and dose.
///
/// # Errors
/// The [`Hindrance`] that prevents the next step.
pub fn next(item: &Item, conditions: StepConditions<'_>) -> Result<Step, Hindrance> {
    let exercise = conditions.exercise.ok_or(Hindrance::Unknown)?;
    if exercise.test {
        return Err(Hindrance::Test);
    }
    // A rung that is not allowed yet does not hinder what comes after it.
    let mut hindrance = Hindrance::AtTheTop;
    for grows in exercise.grows() {
        match grows {
            Grows::Dose(step) => {
                if let Some(change) = change(item, &step) {
                    return Ok(change);
                }
            }
            Grows::Level => match heavier(item, exercise).map_or_else(|| harder_rung(item, exercise, conditions), Ok) {
                Ok(step) => return Ok(step),
                Err(found) => hindrance = found,
            },
        }
    }
    heavier(item, exercise).ok_or(hindrance)
}

/// The next heavier load, with no more work than is usual at the level.
fn heavier(item: &Item, exercise: &Exercise) -> Option<Step> {
    let to = item.load?.heavier()?;
    let rung = item.rung.as_ref().and_then(|id| exercise.rung(id));
    let dose = rung.map_or(item.dose, |rung| dose_on(rung, exercise, item.dose));
    Some(Step::Load { to, dose })
}

/// The change of the dose that a step makes, if it stays within the limit of its quantity, and an item that is due often stays
/// short enough.
fn change(item: &Item, step: &StepForward) -> Option<Step> {
    let value = item.dose.value(step.quantity)?;
    let by = step.amount(value);
    let change = Step::Change { quantity: step.quantity, by };
    let within = value + i64::from(by) <= step.most;
    (within && (!step.short_if_often || short_enough(&change.apply(item)))).then_some(change)
}

fn harder_rung(item: &Item, exercise: &Exercise, conditions: StepConditions<'_>) -> Result<Step, Hindrance> {
    let Some(id) = &item.rung else { return Err(Hindrance::AtTheTop) };
    let now = exercise.rung(id).ok_or(Hindrance::Unknown)?;
    let harder = exercise.harder(id).ok_or(Hindrance::AtTheTop)?;
    gate::allows(now, harder, conditions.age, conditions.gate_open)?;
    Ok(Step::Rung { to: harder.id.clone(), dose: dose_on(harder, exercise, item.dose) })
}

/// The dose after a step to `rung` from the dose `now`: no more work than is usual there and than now, and no less rest. Rest
/// and tempo stay as they are now, unless the rung has a dose of its own.
pub(super) fn dose_on(rung: &Rung, exercise: &Exercise, now: Dose) -> Dose {
    let usual = exercise.level(Some(&rung.id)).dose();
    let start = if rung.dose.is_some() && usual.kind() == now.kind() { usual } else { now };
    usual.quantities().into_iter().fold(start, |dose, (quantity, usual)| match (quantity, now.value(quantity)) {
        (Quantity::RestSeconds, Some(now)) => dose.with(quantity, now.max(dose.value(quantity).unwrap_or(now))),
        (Quantity::TempoUpSeconds | Quantity::TempoHoldSeconds | Quantity::TempoDownSeconds, _) => dose,
        (_, Some(now)) => dose.with(quantity, now.min(usual)),
        (_, None) => dose,
    })
}

/// Whether an item that is due often has at most [`MAX_OFTEN_S`] of work in one run.
fn short_enough(item: &Item) -> bool {
    let often = matches!(item.schedule.pattern, Pattern::Every { minutes, .. } if minutes <= OFTEN_MINUTES);
    !often || item.dose.work_s() * item.side.in_turn().len() as u32 <= MAX_OFTEN_S
}

/// The next step back from `item`'s rung and dose; `None` if this is already the easiest.
pub fn back(item: &Item, exercise: Option<&Exercise>) -> Option<Step> {
    if exercise.is_some_and(|exercise| exercise.test) {
        return None;
    }
    if let Some(to) = item.load.and_then(Load::lighter) {
        return Some(Step::Load { to, dose: item.dose });
    }
    let easier = item.rung.as_ref().and_then(|rung| exercise?.easier(rung));
    if let Some(easier) = easier {
        return Some(Step::Rung { to: easier.id.clone(), dose: item.dose });
    }
    let steps = item.dose.kind().rules().back().iter();
    let mut less = steps.map(|(quantity, by)| Step::Change { quantity: *quantity, by: *by });
    less.find(|step| step.apply(item).dose != item.dose && step.apply(item).dose.check().is_ok())
}

/// One step back. First it undoes what the patient added to the dose of `planned` since the card, beginning with the last
/// kind of step; if nothing was added, or the rung is another one, it is the same as [`back`].
pub fn undo(item: &Item, planned: &Item, exercise: Option<&Exercise>) -> Option<Step> {
    if item.rung != planned.rung {
        return back(item, exercise);
    }
    let added = |step: &StepForward| {
        item.dose.kind() == planned.dose.kind() && item.dose.value(step.quantity) > planned.dose.value(step.quantity)
    };
    match dose_steps(item, exercise).into_iter().rev().find(added) {
        Some(step) => {
            // What steps in percent added is taken back by the same steps from the value before.
            let value = planned.dose.value(step.quantity)?;
            Some(Step::Change { quantity: step.quantity, by: -step.amount(value) })
        }
        None => back(item, exercise),
    }
}

/// How steps forward change the dose, in order: as the exercise says, or as is usual for the kind.
fn dose_steps(item: &Item, exercise: Option<&Exercise>) -> Vec<StepForward> {
    let Some(exercise) = exercise else { return item.dose.kind().rules().forward().to_vec() };
    let of_dose = |grows| if let Grows::Dose(step) = grows { Some(step) } else { None };
    exercise.grows().into_iter().filter_map(of_dose).collect()
}

impl Step {
    /// `item` after the step; unchanged if the step does not fit the kind of its dose, or leads below zero.
    pub fn apply(&self, item: &Item) -> Item {
        let mut after = item.clone();
        match self {
            Step::Change { quantity, by } => {
                if let Some(value) = item.dose.value(*quantity) {
                    after.dose = item.dose.with(*quantity, value + i64::from(*by));
                }
            }
            Step::Load { to, dose } => {
                after.load = Some(*to);
                after.dose = *dose;
            }
            Step::Rung { to, dose } => {
                after.rung = Some(to.clone());
                after.dose = *dose;
            }
        }
        after
    }
}

#[cfg(test)]
mod tests;
