//! Records what was done so far in a run.

use super::step::{Beat, Part, StepKind};
use crate::catalogue::kind::WorkForm;
use crate::plan::BodySide;
use crate::run::{Balance, HoldRecord, SetRecord, Tally, Trial, TrialEnd, Work};
use crate::statistics::median;

/// What was done so far, without the part in progress.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Record {
    Timed(Vec<Piece>),
    Counted(Vec<Set>),
    Trials(Vec<Trial>),
    Tallied(Tally),
}

/// The time done in one step of a timed part, in milliseconds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Piece {
    part: Part,
    kind: StepKind,
    ms: u32,
}

/// A set of repetitions.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Set {
    side: Option<BodySide>,
    number: u8,
    /// Repetitions that were completed.
    finished: u8,
    /// For each repetition, whether the person marked it as failed.
    failed: Vec<bool>,
}

impl Record {
    pub fn new(form: WorkForm) -> Record {
        match form {
            WorkForm::Timed => Record::Timed(Vec::new()),
            WorkForm::Counted => Record::Counted(Vec::new()),
            WorkForm::Trials => Record::Trials(Vec::new()),
            WorkForm::Tallied => Record::Tallied(Tally::default()),
        }
    }

    /// Whether an unfinished step of this kind counts as far as it got.
    pub fn counts_unfinished(&self, kind: StepKind) -> bool {
        match self {
            Record::Timed(_) => kind.is_work(),
            Record::Counted(_) => false,
            Record::Trials(_) => kind == StepKind::Trial,
            Record::Tallied(_) => kind == StepKind::Tally,
        }
    }

    /// Records that a step has ended after `ms` milliseconds.
    pub fn finish(&mut self, kind: StepKind, part: Part, ms: u64, trial_end: TrialEnd) {
        let held_ms = u32::try_from(ms).unwrap_or(u32::MAX);
        match (self, kind) {
            (Record::Timed(pieces), kind) if kind.is_work() && ms > 0 => {
                // A movement that a pause interrupted starts over, and must count only once.
                pieces.retain(|piece| (piece.part, piece.kind) != (part, kind));
                pieces.push(Piece { part, kind, ms: held_ms });
            }
            (Record::Counted(sets), StepKind::Beat(repetition, Beat::Down)) => {
                set(sets, part).finished = repetition.saturating_add(1);
            }
            (Record::Trials(trials), StepKind::Trial) => {
                trials.push(Trial { leg: part.side, held_ms, end: trial_end });
            }
            (Record::Tallied(tally), StepKind::Tally) => tally.held_ms = held_ms,
            _ => {}
        }
    }

    /// Counts one movement of a test, while its time runs.
    pub fn tap(&mut self) {
        if let Record::Tallied(tally) = self {
            tally.count = Some(tally.count.unwrap_or_default().saturating_add(1));
        }
    }

    /// The number of movements of a test, as the person says it.
    pub fn say(&mut self, number: u8) {
        if let Record::Tallied(tally) = self {
            tally.count = Some(number);
        }
    }

    /// The number of movements of a test so far; `None` if it is no test, or nothing was counted.
    pub fn tally(&self) -> Option<u8> {
        if let Record::Tallied(tally) = self { tally.count } else { None }
    }

    /// Counts one movement of `part` at the person's own pace, up to `most`.
    pub fn count(&mut self, part: Part, most: u8) {
        if let Record::Counted(sets) = self {
            let set = set(sets, part);
            set.finished = set.finished.saturating_add(1).min(most);
        }
    }

    /// Number of movements of `part` that were completed.
    pub fn counted(&self, part: Part) -> u8 {
        let Record::Counted(sets) = self else { return 0 };
        sets.iter().find(|set| set.is(part)).map_or(0, |set| set.finished)
    }

    /// Shortens a part that is longer than `most_ms` milliseconds.
    pub fn shorten(&mut self, most_ms: u32) {
        if let Record::Timed(pieces) = self {
            pieces.iter_mut().for_each(|piece| piece.ms = piece.ms.min(most_ms));
        }
    }

    /// Marks the repetition (counted from 0) of `part` as failed, or removes the mark.
    pub fn mark(&mut self, part: Part, repetition: u8) {
        if let Record::Counted(sets) = self {
            let failed = &mut set(sets, part).failed;
            let at = usize::from(repetition);
            if failed.len() <= at {
                failed.resize(at + 1, false);
            }
            failed[at] = !failed[at];
        }
    }

    /// Whether the repetition (counted from 0) of `part` is marked as failed.
    pub fn is_marked(&self, part: Part, repetition: u8) -> bool {
        let Record::Counted(sets) = self else { return false };
        let set = sets.iter().find(|set| set.is(part));
        set.and_then(|set| set.failed.get(usize::from(repetition)).copied()).unwrap_or(false)
    }

    /// What was done so far. `going` is the step in progress, its part, and how long it has lasted in milliseconds; it counts as
    /// cut off here.
    pub fn work(&self, like: &Work, going: Option<(StepKind, Part, u64)>) -> Work {
        let mut all = self.clone();
        if let Some((kind, part, ms)) = going {
            all.finish(kind, part, ms, TrialEnd::CutOff);
        }
        match (all, like) {
            (Record::Timed(pieces), _) => {
                Work::Timed(pieces.chunk_by(|one, next| one.part == next.part).map(held).collect())
            }
            (Record::Counted(sets), _) => Work::Counted(sets.iter().map(Set::counted).collect()),
            (Record::Trials(trials), Work::Balance(balance)) => Work::Balance(Balance { trials, ..balance.clone() }),
            (Record::Trials(_), other) => other.clone(),
            (Record::Tallied(tally), _) => Work::Tally(tally),
        }
    }
}

impl Set {
    fn is(&self, part: Part) -> bool {
        self.side == part.side && self.number == part.number
    }

    fn counted(&self) -> SetRecord {
        let failed = self.failed.iter().filter(|failed| **failed).count();
        let well = (0..usize::from(self.finished)).filter(|at| !self.failed.get(*at).copied().unwrap_or(false)).count();
        let small = |n: usize| u8::try_from(n).unwrap_or(u8::MAX);
        SetRecord { side: self.side, done: small(well), failed: small(failed) }
    }
}

/// The record of one timed part, made of these pieces.
fn held(pieces: &[Piece]) -> HoldRecord {
    let held_ms = pieces.iter().fold(0, |sum: u32, piece| sum.saturating_add(piece.ms));
    HoldRecord { side: pieces[0].part.side, held_ms }
}

/// The set of `part`, which is added if it does not exist yet.
fn set(sets: &mut Vec<Set>, part: Part) -> &mut Set {
    let at = sets.iter().position(|set| set.is(part)).unwrap_or_else(|| {
        sets.push(Set { side: part.side, number: part.number, finished: 0, failed: Vec::new() });
        sets.len() - 1
    });
    &mut sets[at]
}

/// One leg's results in this run, over the trials that were measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BalanceResult {
    /// The leg stood on; `None` on both feet.
    pub leg: Option<BodySide>,
    /// Number of trials that were measured.
    pub trials: u8,
    /// Longest time, in milliseconds.
    pub best_ms: u32,
    /// Median time, in milliseconds.
    pub median_ms: u32,
    /// Whether the longest time reached the target: it is then a lower bound.
    pub capped: bool,
}

/// The results on both feet and of each leg, the left one first. What has no measured trial is left out.
pub fn balance_results(trials: &[Trial]) -> Vec<BalanceResult> {
    [None, Some(BodySide::Left), Some(BodySide::Right)].into_iter().filter_map(|leg| leg_stood(trials, leg)).collect()
}

fn leg_stood(trials: &[Trial], leg: Option<BodySide>) -> Option<BalanceResult> {
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

    fn trial(leg: BodySide, held_ms: u32, end: TrialEnd) -> Trial {
        Trial { leg: Some(leg), held_ms, end }
    }

    #[test]
    fn best_and_median_by_leg_leave_out_trials_that_were_cut_off() {
        let trials = [
            trial(BodySide::Right, 9_000, TrialEnd::Touch),
            trial(BodySide::Left, 12_000, TrialEnd::Touch),
            trial(BodySide::Left, 25_000, TrialEnd::CutOff),
            trial(BodySide::Left, 30_000, TrialEnd::Target),
            trial(BodySide::Left, 14_000, TrialEnd::Touch),
        ];
        let found = balance_results(&trials);
        let left = BalanceResult { leg: Some(BodySide::Left), trials: 3, best_ms: 30_000, median_ms: 14_000, capped: true };
        let right = BalanceResult { leg: Some(BodySide::Right), trials: 1, best_ms: 9_000, median_ms: 9_000, capped: false };
        assert_eq!(found, [left, right]);
    }

    #[test]
    fn a_leg_that_was_only_cut_off_has_no_time_at_all() {
        assert_eq!(balance_results(&[trial(BodySide::Left, 8_000, TrialEnd::CutOff)]), []);
    }

    #[test]
    fn a_repetition_marked_twice_is_not_marked() {
        let part = Part { number: 1, of: 1, side: None, changes_side: false, last: true };
        let mut record = Record::new(WorkForm::Counted);
        record.finish(StepKind::Beat(0, Beat::Down), part, 1000, TrialEnd::Touch);
        record.finish(StepKind::Beat(1, Beat::Down), part, 1000, TrialEnd::Touch);
        record.mark(part, 1);
        assert!(record.is_marked(part, 1));
        assert_eq!(
            record.work(&Work::Counted(vec![]), None),
            Work::Counted(vec![SetRecord { side: None, done: 1, failed: 1 }])
        );
        record.mark(part, 1);
        assert_eq!(
            record.work(&Work::Counted(vec![]), None),
            Work::Counted(vec![SetRecord { side: None, done: 2, failed: 0 }])
        );
    }

    #[test]
    fn the_movements_of_a_timed_part_add_up_and_a_restarted_one_counts_once() {
        let part = Part { number: 1, of: 1, side: None, changes_side: false, last: true };
        let mut record = Record::new(WorkForm::Timed);
        record.finish(StepKind::Beat(0, Beat::Up), part, 2000, TrialEnd::Touch);
        record.finish(StepKind::Beat(0, Beat::Up), part, 2000, TrialEnd::Touch);
        record.finish(StepKind::Beat(0, Beat::Down), part, 3000, TrialEnd::Touch);
        let going = Some((StepKind::Beat(1, Beat::Up), part, 500));
        assert_eq!(record.work(&Work::Timed(vec![]), going), Work::Timed(vec![HoldRecord { side: None, held_ms: 5500 }]));
    }
}
