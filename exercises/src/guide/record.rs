//! What was done so far.

use super::step::{Beat, Part, StepKind};
use crate::catalogue::Dose;
use crate::plan::Leg;
use crate::run::{Balance, HoldRecord, SetRecord, Trial, TrialEnd, Work};
use crate::statistics::median;

/// What was done so far; a part that still goes is not in it.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Record {
    Hold(Vec<HoldRecord>),
    Reps(Vec<Set>),
    Balance(Vec<Trial>),
}

/// A set of repetitions.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Set {
    leg: Option<Leg>,
    number: u8,
    /// Repetitions that went through.
    finished: u8,
    /// By repetition, whether the person marked it as failed.
    failed: Vec<bool>,
}

impl Record {
    pub fn new(dose: Dose) -> Record {
        match dose {
            Dose::Hold { .. } => Record::Hold(Vec::new()),
            Dose::Reps { .. } => Record::Reps(Vec::new()),
            Dose::Balance { .. } => Record::Balance(Vec::new()),
        }
    }

    /// A step has ended after `ms`.
    pub fn finish(&mut self, kind: StepKind, part: Part, ms: u64, trial_end: TrialEnd) {
        let held_ms = u32::try_from(ms).unwrap_or(u32::MAX);
        match (self, kind) {
            (Record::Hold(holds), StepKind::Hold) if ms > 0 => holds.push(HoldRecord { leg: part.leg, held_ms }),
            (Record::Reps(sets), StepKind::Beat(repetition, Beat::Down)) => {
                set(sets, part).finished = repetition.saturating_add(1);
            }
            (Record::Balance(trials), StepKind::Trial) => {
                if let Some(leg) = part.leg {
                    trials.push(Trial { leg, held_ms, end: trial_end });
                }
            }
            _ => {}
        }
    }

    /// Marks or unmarks a repetition, from 0, of `part` as failed.
    pub fn mark(&mut self, part: Part, repetition: u8) {
        if let Record::Reps(sets) = self {
            let failed = &mut set(sets, part).failed;
            let at = usize::from(repetition);
            if failed.len() <= at {
                failed.resize(at + 1, false);
            }
            failed[at] = !failed[at];
        }
    }

    /// Whether a repetition, from 0, of `part` is marked as failed.
    pub fn is_marked(&self, part: Part, repetition: u8) -> bool {
        let Record::Reps(sets) = self else { return false };
        let set = sets.iter().find(|set| set.is(part));
        set.and_then(|set| set.failed.get(usize::from(repetition)).copied()).unwrap_or(false)
    }

    /// What was done, with the hold or trial that still goes on, for so many milliseconds.
    pub fn work(&self, like: &Work, going: Option<(StepKind, Part, u64)>) -> Work {
        let mut all = self.clone();
        if let Some((kind, part, ms)) = going {
            all.finish(kind, part, ms, TrialEnd::CutOff);
        }
        match (all, like) {
            (Record::Hold(holds), _) => Work::Hold(holds),
            (Record::Reps(sets), _) => Work::Reps(sets.iter().map(Set::counted).collect()),
            (Record::Balance(trials), Work::Balance(balance)) => Work::Balance(Balance { trials, ..balance.clone() }),
            (Record::Balance(_), other) => other.clone(),
        }
    }
}

impl Set {
    fn is(&self, part: Part) -> bool {
        self.leg == part.leg && self.number == part.number
    }

    fn counted(&self) -> SetRecord {
        let failed = self.failed.iter().filter(|failed| **failed).count();
        let well = (0..usize::from(self.finished)).filter(|at| !self.failed.get(*at).copied().unwrap_or(false)).count();
        let small = |n: usize| u8::try_from(n).unwrap_or(u8::MAX);
        SetRecord { leg: self.leg, done: small(well), failed: small(failed) }
    }
}

/// The set of `part`, begun if it was not yet.
fn set(sets: &mut Vec<Set>, part: Part) -> &mut Set {
    let at = sets.iter().position(|set| set.is(part)).unwrap_or_else(|| {
        sets.push(Set { leg: part.leg, number: part.number, finished: 0, failed: Vec::new() });
        sets.len() - 1
    });
    &mut sets[at]
}

/// How one leg stood in this run, over the trials that were measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BalanceResult {
    /// The leg stood on.
    pub leg: Leg,
    /// Trials that were measured.
    pub trials: u8,
    /// The best, in milliseconds.
    pub best_ms: u32,
    /// The median, in milliseconds.
    pub median_ms: u32,
    /// Whether the best reached the target: it is then a lower bound.
    pub capped: bool,
}

/// How each leg stood, the left first; legs without a measured trial are left out.
pub fn balance_results(trials: &[Trial]) -> Vec<BalanceResult> {
    [Leg::Left, Leg::Right].into_iter().filter_map(|leg| leg_stood(trials, leg)).collect()
}

fn leg_stood(trials: &[Trial], leg: Leg) -> Option<BalanceResult> {
    let measured: Vec<&Trial> = trials.iter().filter(|t| t.leg == leg && t.end != TrialEnd::CutOff).collect();
    let times: Vec<f64> = measured.iter().map(|trial| trial.held_ms.into()).collect();
    let best = measured.iter().max_by_key(|trial| trial.held_ms)?;
    Some(BalanceResult {
        leg,
        trials: u8::try_from(measured.len()).unwrap_or(u8::MAX),
        best_ms: best.held_ms,
        median_ms: libm::round(median(&times)?) as u32,
        capped: measured.iter().any(|trial| trial.end == TrialEnd::Target),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn trial(leg: Leg, held_ms: u32, end: TrialEnd) -> Trial {
        Trial { leg, held_ms, end }
    }

    #[test]
    fn best_and_middle_by_leg_without_trials_that_were_cut_off() {
        let trials = [
            trial(Leg::Right, 9_000, TrialEnd::Touch),
            trial(Leg::Left, 12_000, TrialEnd::Touch),
            trial(Leg::Left, 25_000, TrialEnd::CutOff),
            trial(Leg::Left, 30_000, TrialEnd::Target),
            trial(Leg::Left, 14_000, TrialEnd::Touch),
        ];
        let found = balance_results(&trials);
        let left = BalanceResult { leg: Leg::Left, trials: 3, best_ms: 30_000, median_ms: 14_000, capped: true };
        let right = BalanceResult { leg: Leg::Right, trials: 1, best_ms: 9_000, median_ms: 9_000, capped: false };
        assert_eq!(found, [left, right]);
    }

    #[test]
    fn a_leg_that_was_only_cut_off_has_no_time_at_all() {
        assert_eq!(balance_results(&[trial(Leg::Left, 8_000, TrialEnd::CutOff)]), []);
    }

    #[test]
    fn a_repetition_marked_twice_is_not_marked() {
        let part = Part { number: 1, of: 1, leg: None, changes_side: false, last: true };
        let mut record = Record::new(Dose::Reps {
            sets: 1,
            repetitions: 3,
            rest_s: 0,
            tempo: crate::catalogue::Tempo { up_s: 1, hold_s: 0, down_s: 1 },
        });
        record.finish(StepKind::Beat(0, Beat::Down), part, 1000, TrialEnd::Touch);
        record.finish(StepKind::Beat(1, Beat::Down), part, 1000, TrialEnd::Touch);
        record.mark(part, 1);
        assert!(record.is_marked(part, 1));
        assert_eq!(record.work(&Work::Reps(vec![]), None), Work::Reps(vec![SetRecord { leg: None, done: 1, failed: 1 }]));
        record.mark(part, 1);
        assert_eq!(record.work(&Work::Reps(vec![]), None), Work::Reps(vec![SetRecord { leg: None, done: 2, failed: 0 }]));
    }
}
