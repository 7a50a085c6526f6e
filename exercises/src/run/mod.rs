//! One run of an item: what was held, counted or balanced so far.
//!
//! A run is logged as snapshots while it is in progress; the last snapshot counts. A run that was cut off by a crash or a closed lid
//! keeps its last snapshot.

use crate::catalogue::kind::WorkForm;
use crate::catalogue::{Dose, ExerciseId, Eyes, Kind, RungId, Surface};
use crate::id::{ItemId, RunId};
use crate::plan::BodySide;
use crate::slots::SlotRef;
use crate::time::Stamp;
use strum::VariantArray;

/// One run of an item.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Run {
    /// Its number within the log, from 1.
    pub id: RunId,
    /// The plan's item.
    pub item: ItemId,
    /// The exercise at that time.
    pub exercise: ExerciseId,
    /// The level at that time.
    pub rung: Option<RungId>,
    /// The dose that was asked for, per side.
    pub dose: Dose,
    /// The slot that it fills; `None` for an extra run.
    pub slot: Option<SlotRef>,
    /// When the person pressed Start.
    pub started: Stamp,
    /// Whether it was timed by the program; `false` for "I already did it".
    pub live: bool,
    /// How it ended, or that it is still in progress.
    pub end: RunEnd,
    /// Total time of all pauses, in milliseconds.
    pub paused_ms: u32,
    /// When the device slept or the program was interrupted, in milliseconds after the start.
    pub interruptions: Vec<u32>,
    /// What was done so far.
    pub work: Work,
}

/// How a run ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum RunEnd {
    /// It is in progress, or its end was not recorded: then it counts as cut off.
    Going,
    /// Everything asked for was done.
    Completed,
    /// The person stopped it.
    Stopped,
    /// A complaint ended it ("Something is wrong").
    Trouble,
}

/// What was done, in one of the forms that the kinds of exercise use.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Work {
    /// Timed parts, in order: holds.
    Timed(Vec<HoldRecord>),
    /// Counted parts, in order: sets of repetitions.
    Counted(Vec<SetRecord>),
    /// Balance trials, in order, with their conditions.
    Balance(Balance),
    /// The number of movements in a set time.
    Tally(Tally),
}

/// The result of a test by repetitions in a set time.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Tally {
    /// Time done in milliseconds, at most the time set.
    pub held_ms: u32,
    /// The number of movements; `None` if the person has not said it.
    pub count: Option<u8>,
}

/// One timed part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct HoldRecord {
    /// The side, if the exercise has sides.
    pub side: Option<BodySide>,
    /// Time held in milliseconds, at most the target.
    pub held_ms: u32,
}

/// One set of repetitions.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct SetRecord {
    /// The side, if the exercise has sides.
    pub side: Option<BodySide>,
    /// Number of repetitions done.
    pub done: u8,
    /// Number of repetitions that the person marked as failed.
    pub failed: u8,
}

/// All trials of one balance run.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Balance {
    /// Where the phone was.
    pub set_up: SetUp,
    /// The surface that the person stood on.
    pub surface: Surface,
    /// Eyes open or closed.
    pub eyes: Eyes,
    /// The trials, in order.
    pub trials: Vec<Trial>,
}

/// Where the phone is during a balance trial. Trials with different set-ups are never mixed in one series.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum SetUp {
    /// A: it lies on the support, with a hand over it; a touch ends the trial.
    OnSupport,
    /// B: held at the breastbone, screen facing away; a touch ends the trial, and the sensor proposes touch-downs.
    AtBreastbone,
    /// C: in a pocket at the waist; the sensor proposes touch-downs, and the person is asked afterwards.
    InPocket,
}

/// One balance attempt: from the start tone to the touch-down or the target.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Trial {
    /// The leg that the person stood on; `None` on both feet.
    pub leg: Option<BodySide>,
    /// Time from the start tone to the end, in milliseconds.
    pub held_ms: u32,
    /// What ended it.
    pub end: TrialEnd,
}

/// What ended a trial.
#[derive(Debug, Clone, Copy, PartialEq, Eq, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum TrialEnd {
    /// The person touched the screen when the foot came down.
    Touch,
    /// The target was reached: the time is a lower bound.
    Target,
    /// The program was hidden or interrupted: the time is not a measurement.
    CutOff,
}

/// The amount done out of the amount asked for. Units are milliseconds of timed parts, repetitions, or trials.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Share {
    /// Amount done, capped at `of`.
    pub done: u32,
    /// Amount asked for.
    pub of: u32,
}

impl Share {
    /// Whether everything was done (and something was asked for).
    pub fn full(self) -> bool {
        self.of > 0 && self.done >= self.of
    }
}

impl Run {
    /// The share of the dose that was done. A timed part counts up to its target, a failed repetition does not count, and a balance
    /// trial counts whatever its time, because its time is a result and not a dose; a test counts if it was done to its end. More on one side does not make up for less on
    /// the other.
    pub fn share(&self, sides: u32) -> Share {
        let part = self.dose.part_amount();
        let each = u32::from(self.dose.parts()) * part;
        match &self.work {
            _ if !self.fits() => Share { done: 0, of: 0 },
            Work::Timed(parts) => by_side(parts.iter().map(|held| (held.side, held.held_ms.min(part))), sides, each),
            Work::Counted(sets) => by_side(sets.iter().map(|set| (set.side, u32::from(set.done).min(part))), sides, each),
            Work::Balance(balance) => {
                let real = balance.trials.iter().filter(|trial| trial.end != TrialEnd::CutOff);
                by_side(real.map(|trial| (trial.leg, 1)), sides, each)
            }
            Work::Tally(tally) => by_side(std::iter::once((None, u32::from(self.is_whole(tally)))), sides, each),
        }
    }

    /// Whether the test was done to its end and its result is known. What was stopped early is no result.
    fn is_whole(&self, tally: &Tally) -> bool {
        tally.held_ms >= self.dose.part_ms() && tally.count.is_some()
    }

    /// The result of a test and whether it was done to its end; `None` for any other run, or if nobody said the number.
    pub fn result(&self) -> Option<(u8, bool)> {
        let Work::Tally(tally) = &self.work else { return None };
        Some((tally.count?, self.is_whole(tally)))
    }

    /// Complete parts done of parts asked for: timed parts held to the end, repetitions, trials.
    pub fn parts(&self, sides: u32) -> Share {
        match &self.work {
            Work::Timed(parts) if self.fits() => {
                let full = parts.iter().filter(|held| held.held_ms >= self.dose.part_amount());
                by_side(full.map(|held| (held.side, 1)), sides, u32::from(self.dose.parts()))
            }
            _ => self.share(sides),
        }
    }

    /// Whether anything was tried at all, even if no part was completed.
    pub fn tried(&self) -> bool {
        match &self.work {
            Work::Timed(parts) => parts.iter().any(|held| held.held_ms > 0),
            Work::Counted(sets) => sets.iter().any(|set| set.done > 0 || set.failed > 0),
            Work::Balance(balance) => balance.trials.iter().any(|trial| trial.end != TrialEnd::CutOff),
            Work::Tally(tally) => tally.held_ms > 0,
        }
    }

    /// Whether the work has the form that the dose's kind needs. A log may contain any combination.
    pub fn fits(&self) -> bool {
        self.work.form() == self.dose.kind().form()
    }
}

impl Work {
    /// The empty work of a run of `kind`; `conditions` are the surface and the eyes, which are stored with trials.
    pub fn begun(kind: Kind, conditions: (Surface, Eyes)) -> Work {
        match kind.form() {
            WorkForm::Timed => Work::Timed(Vec::new()),
            WorkForm::Counted => Work::Counted(Vec::new()),
            WorkForm::Tallied => Work::Tally(Tally::default()),
            WorkForm::Trials => {
                let (surface, eyes) = conditions;
                Work::Balance(Balance { set_up: SetUp::OnSupport, surface, eyes, trials: Vec::new() })
            }
        }
    }

    /// All of `dose` on each of `sides`, for somebody who reports that it was done; `None` for trials and tests, which have a result.
    pub fn in_full(dose: Dose, sides: &[Option<BodySide>]) -> Option<Work> {
        let all = sides.iter().flat_map(|side| std::iter::repeat_n(*side, dose.parts().into()));
        let amount = dose.part_amount();
        match dose.kind().form() {
            WorkForm::Timed => Some(Work::Timed(all.map(|side| HoldRecord { side, held_ms: amount }).collect())),
            WorkForm::Counted => {
                let done = u8::try_from(amount).unwrap_or(u8::MAX);
                Some(Work::Counted(all.map(|side| SetRecord { side, done, failed: 0 }).collect()))
            }
            WorkForm::Trials | WorkForm::Tallied => None,
        }
    }

    /// The form of the work.
    pub fn form(&self) -> WorkForm {
        match self {
            Work::Timed(_) => WorkForm::Timed,
            Work::Counted(_) => WorkForm::Counted,
            Work::Balance(_) => WorkForm::Trials,
            Work::Tally(_) => WorkForm::Tallied,
        }
    }

    /// The number of parts so far, complete or not.
    pub fn count(&self) -> usize {
        match self {
            Work::Timed(parts) => parts.len(),
            Work::Counted(sets) => sets.len(),
            Work::Balance(balance) => balance.trials.len(),
            Work::Tally(tally) => usize::from(tally.held_ms > 0),
        }
    }

    /// The balance trials, if the work consists of them.
    pub fn balance(&self) -> Option<&Balance> {
        if let Work::Balance(balance) = self { Some(balance) } else { None }
    }
}

/// Adds up what was done on each side, each capped at `each`.
fn by_side(done: impl Iterator<Item = (Option<BodySide>, u32)>, sides: u32, each: u32) -> Share {
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
