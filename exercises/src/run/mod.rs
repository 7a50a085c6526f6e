//! One actual doing of an item: what was held, counted or balanced, as far as it got.
//!
//! A run is logged as snapshots while it goes; the last snapshot counts. One that a crash or a closed lid cut off stays as
//! far as it got.

use crate::catalogue::{Dose, ExerciseId, Eyes, RungId, Surface};
use crate::id::{ItemId, RunId};
use crate::plan::Leg;
use crate::slots::SlotRef;
use crate::time::Stamp;

/// One actual doing of an item.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Run {
    /// Counted from 1 within the log.
    pub id: RunId,
    /// The plan's item.
    pub item: ItemId,
    /// The exercise, as it was then.
    pub exercise: ExerciseId,
    /// The rung, as it was then.
    pub rung: Option<RungId>,
    /// The dose that was asked for, for each side.
    pub dose: Dose,
    /// The slot it fills; `None` for an extra run.
    pub slot: Option<SlotRef>,
    /// When the person pressed Begin.
    pub started: Stamp,
    /// Whether it was timed while it was done; `false` for "I already did it".
    pub live: bool,
    /// How it ended, or that it still goes.
    pub end: RunEnd,
    /// Milliseconds on pause, all pauses together.
    pub paused_ms: u32,
    /// Times at which the device slept or the program was cut off, in milliseconds after the start.
    pub interruptions: Vec<u32>,
    /// What was done so far.
    pub work: Work,
}

/// How a run ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum RunEnd {
    /// It still goes, or nobody saw its end: then it counts as cut off.
    Going,
    /// Everything asked for was gone through.
    Completed,
    /// The person stopped it.
    Stopped,
    /// "Something is wrong" ended it.
    Trouble,
}

/// What was done, by kind.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Work {
    /// Isometric holds, in order.
    Hold(Vec<HoldRecord>),
    /// Counted repetitions, a set each.
    Reps(Vec<SetRecord>),
    /// Balance trials, in order.
    Balance(Balance),
}

/// One hold.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct HoldRecord {
    /// The side, where there are sides.
    pub leg: Option<Leg>,
    /// Milliseconds held, at most the target.
    pub held_ms: u32,
}

/// One set of repetitions.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct SetRecord {
    /// The side, where there are sides.
    pub leg: Option<Leg>,
    /// Repetitions that went well.
    pub done: u8,
    /// Repetitions that the person marked as failed.
    pub failed: u8,
}

/// All trials of one balance run.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Balance {
    /// Where the phone was.
    pub set_up: SetUp,
    /// What was stood on.
    pub surface: Surface,
    /// Eyes open or closed.
    pub eyes: Eyes,
    /// Trials in order.
    pub trials: Vec<Trial>,
}

/// Where the phone is during a balance trial. Never mixed in one series.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum SetUp {
    /// A: it lies on the support, a hand resting over it; a touch ends the trial.
    OnSupport,
    /// B: held to the breastbone, screen away; a touch ends the trial, the sensor proposes.
    AtBreastbone,
    /// C: in a waist pocket; the sensor proposes, the person is asked afterwards.
    InPocket,
}

/// One balance attempt: from the start tone to the touch-down or the target.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Trial {
    /// The leg stood on.
    pub leg: Leg,
    /// Milliseconds from the start tone to the end.
    pub held_ms: u32,
    /// What ended it.
    pub end: TrialEnd,
}

/// What ended a trial.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum TrialEnd {
    /// The person touched the screen when the foot came down.
    Touch,
    /// The target was reached: the time is a lower bound.
    Target,
    /// The program went out of sight or was cut off: the time is no measurement.
    CutOff,
}

/// A part of a whole: what was done of what was asked for. Units are holds' milliseconds, repetitions, or trials.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Share {
    /// Done, capped at `of`.
    pub done: u32,
    /// Asked for.
    pub of: u32,
}

impl Share {
    /// Whether everything was done (and something was asked for).
    pub fn full(self) -> bool {
        self.of > 0 && self.done >= self.of
    }
}

impl Run {
    /// What was done of the dose. A hold's seconds count up to its target, a repetition that failed does not count, a
    /// balance trial counts whatever its time, since its time is a result and not a dose. More on one side does not make up
    /// for less on the other.
    pub fn share(&self, sides: u32) -> Share {
        match (&self.work, self.dose) {
            (Work::Hold(holds), Dose::Hold { repetitions, hold_s, .. }) => {
                let target = u32::from(hold_s) * 1000;
                let held = holds.iter().map(|held| (held.leg, held.held_ms.min(target)));
                by_side(held, sides, u32::from(repetitions) * target)
            }
            (Work::Reps(sets), Dose::Reps { sets: asked, repetitions, .. }) => {
                let each = u32::from(repetitions);
                let done = sets.iter().map(|set| (set.leg, u32::from(set.done).min(each)));
                by_side(done, sides, u32::from(asked) * each)
            }
            (Work::Balance(balance), Dose::Balance { trials, .. }) => {
                let real = balance.trials.iter().filter(|trial| trial.end != TrialEnd::CutOff);
                by_side(real.map(|trial| (Some(trial.leg), 1)), sides, u32::from(trials))
            }
            _ => Share { done: 0, of: 0 },
        }
    }

    /// Whole parts done of whole parts asked for: holds kept to the end, repetitions, trials.
    pub fn parts(&self, sides: u32) -> Share {
        match (&self.work, self.dose) {
            (Work::Hold(holds), Dose::Hold { repetitions, hold_s, .. }) => {
                let full = holds.iter().filter(|held| held.held_ms >= u32::from(hold_s) * 1000);
                by_side(full.map(|held| (held.leg, 1)), sides, u32::from(repetitions))
            }
            _ => self.share(sides),
        }
    }

    /// Whether anything was tried at all, even if no part of it came to its end.
    pub fn tried(&self) -> bool {
        match &self.work {
            Work::Hold(holds) => holds.iter().any(|held| held.held_ms > 0),
            Work::Reps(sets) => sets.iter().any(|set| set.done > 0 || set.failed > 0),
            Work::Balance(balance) => balance.trials.iter().any(|trial| trial.end != TrialEnd::CutOff),
        }
    }
}

/// Adds up what was done on each side, each capped at `each`.
fn by_side(done: impl Iterator<Item = (Option<Leg>, u32)>, sides: u32, each: u32) -> Share {
    let mut of_side = [0; 3];
    for (leg, amount) in done {
        of_side[leg.map_or(0, |leg| 1 + leg as usize)] += amount;
    }
    let of = sides * each;
    let sum: u32 = of_side.iter().map(|done| each.min(*done)).sum();
    Share { done: sum.min(of), of }
}

#[cfg(test)]
mod tests;
