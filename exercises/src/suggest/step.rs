//! One step forward or back: one factor at a time.
//!
//! Rule (our design): forward, a hold gets 5 s more up to 30 s, then a repetition more up to 10, then the next rung; a counted
//! movement gets a repetition more up to 20, then the next rung; a balance trial gets 5 s more up to 60 s, then the next rung
//! (60 s without loss of balance, then the surface: J Foot Ankle Res 2022, 10.1186/s13047-022-00514-x table 2; seen). Where an
//! exercise is due every two hours or more often, one doing stays within two minutes of work. Back, what the
//! patient added since the card goes first, then the rung, then seconds, then repetitions or trials. A rung keeps its dose and a dose its rung, so that one factor changes. A ladder is
//! never left for another: closed eyes are switched on apart, by a clinician.

use super::gate;
use crate::catalogue::{Dose, Exercise, RungId};
use crate::plan::{AgeBand, Item, Pattern};

/// Seconds that a step adds to a hold or a target, or takes away.
pub const STEP_S: u16 = 5;
/// Longest hold that a step leads to, seconds (working range 5 to 30 s; our design).
pub const MAX_HOLD_S: u16 = 30;
/// Most holds that a step leads to (our design).
pub const MAX_HOLDS: u8 = 10;
/// Most repetitions of a set that a step leads to (sets of home exercise lie at 8 to 20).
pub const MAX_REPETITIONS: u8 = 20;
/// Longest target of a balance trial that a step leads to, seconds.
pub const MAX_TARGET_S: u16 = 60;
/// Most work of one doing that is due at least every [`OFTEN_MINUTES`], seconds (our design).
pub const MAX_OFTEN_S: u32 = 120;
/// From this interval down an item counts as due often, minutes.
pub const OFTEN_MINUTES: u16 = 120;

/// What exactly would change.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Step {
    /// Seconds of each hold, more or less.
    HoldSeconds(i16),
    /// Repetitions (holds, or movements of a set), more or less.
    Repetitions(i16),
    /// Seconds of a balance trial's target, more or less.
    TargetSeconds(i16),
    /// Balance trials, more or less.
    Trials(i16),
    /// This rung instead.
    Rung(RungId),
}

/// What keeps the next step from being had.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Hindrance {
    /// There is no harder one.
    AtTheTop,
    /// A softer surface or closed eyes wait for 30 s with eyes open on the firm floor on two days, for each leg.
    GateClosed,
    /// A soft surface with closed eyes, alone, from 65 years on, or with the age unknown.
    SoftAndClosed,
    /// Closed eyes are switched on by a clinician, never by a step.
    EyesApart,
    /// The catalogue does not know the exercise or the rung.
    Unknown,
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
    let more = match item.dose {
        Dose::Hold { repetitions, hold_s, .. } => {
            let longer = hold_s + STEP_S <= MAX_HOLD_S;
            let another = repetitions < MAX_HOLDS;
            let forward = [longer.then_some(Step::HoldSeconds(STEP_S as i16)), another.then_some(Step::Repetitions(1))];
            forward.into_iter().flatten().find(|step| short_enough(&step.apply(item)))
        }
        Dose::Reps { repetitions, .. } => {
            let another = (repetitions < MAX_REPETITIONS).then_some(Step::Repetitions(1));
            another.filter(|step| short_enough(&step.apply(item)))
        }
        Dose::Balance { target_s, .. } => (target_s + STEP_S <= MAX_TARGET_S).then_some(Step::TargetSeconds(STEP_S as i16)),
    };
    match more {
        Some(step) => Ok(step),
        None => harder_rung(item, exercise, conditions),
    }
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
    let less = match item.dose {
        Dose::Hold { .. } => vec![Step::HoldSeconds(-(STEP_S as i16)), Step::Repetitions(-1)],
        Dose::Reps { .. } => vec![Step::Repetitions(-1)],
        Dose::Balance { .. } => vec![Step::TargetSeconds(-(STEP_S as i16)), Step::Trials(-1)],
    };
    less.into_iter().find(|step| step.apply(item).dose != item.dose && step.apply(item).dose.check().is_ok())
}

/// One step back that first takes back what the patient added to `planned` since the card, the last kind of step first;
/// then as [`back`].
pub fn undo(item: &Item, planned: &Item, exercise: Option<&Exercise>) -> Option<Step> {
    if item.rung != planned.rung {
        return back(item, exercise);
    }
    let added = match (item.dose, planned.dose) {
        (Dose::Hold { repetitions, hold_s, .. }, Dose::Hold { repetitions: of, hold_s: of_s, .. }) => {
            let fewer = (repetitions > of).then_some(Step::Repetitions(-1));
            fewer.or((hold_s > of_s).then_some(Step::HoldSeconds(-(STEP_S as i16))))
        }
        (Dose::Reps { repetitions, .. }, Dose::Reps { repetitions: of, .. }) => {
            (repetitions > of).then_some(Step::Repetitions(-1))
        }
        (Dose::Balance { target_s, .. }, Dose::Balance { target_s: of_s, .. }) => {
            (target_s > of_s).then_some(Step::TargetSeconds(-(STEP_S as i16)))
        }
        _ => None,
    };
    added.or_else(|| back(item, exercise))
}

impl Step {
    /// `item` after the step. A step that does not fit the kind of its dose, or leads below zero, leaves it as it is.
    pub fn apply(&self, item: &Item) -> Item {
        let mut after = item.clone();
        match (self, &mut after.dose) {
            (Step::HoldSeconds(more), Dose::Hold { hold_s: of, .. })
            | (Step::TargetSeconds(more), Dose::Balance { target_s: of, .. }) => *of = of.saturating_add_signed(*more),
            (Step::Repetitions(more), Dose::Hold { repetitions: of, .. } | Dose::Reps { repetitions: of, .. })
            | (Step::Trials(more), Dose::Balance { trials: of, .. }) => {
                *of = u8::try_from(i16::from(*of) + more).unwrap_or(*of);
            }
            (Step::Rung(rung), _) => after.rung = Some(rung.clone()),
            _ => {}
        }
        after
    }
}
