//! Where in a run the person stopped, and what was done beyond the slots or without any.

use super::DoseUnit;
use crate::run::{RunEnd, Share};
use crate::summary::RunOn;
use crate::time::DayNumber;
use std::collections::BTreeMap;

/// Runs that ended before everything asked for was done.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Stops {
    /// Stopped by the person.
    pub stopped: u16,
    /// Ended because of a complaint ("Something is wrong").
    pub trouble: u16,
    /// Cut off: the end was not recorded.
    pub cut_off: u16,
    /// The number of runs that ended after each share of whole parts (holds, repetitions, trials); fewest parts first.
    pub after: Vec<(Share, u16)>,
}

/// Runs that belong to no slot.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Extra {
    /// Number of runs.
    pub runs: u32,
    /// Their dose in whole units, rounded down.
    pub done: u32,
    /// The unit of `done`.
    pub unit: DoseUnit,
}

/// Runs of an item that was done whenever the patient needed it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct DoneAsNeeded {
    /// Number of runs.
    pub runs: u32,
    /// The day of the last one; `None` if there was none.
    pub last: Option<DayNumber>,
}

/// Counts the runs of an item that was done whenever the patient needed it.
pub fn done_as_needed(runs: &[&RunOn]) -> DoneAsNeeded {
    DoneAsNeeded { runs: runs.len() as u32, last: runs.iter().map(|run| run.day).max() }
}

/// Counts where the runs of one item stopped.
pub fn stops<'a>(runs: impl IntoIterator<Item = &'a RunOn>) -> Stops {
    let mut stops = Stops::default();
    let mut after: BTreeMap<(u32, u32), u16> = BTreeMap::new();
    for run in runs {
        let of_its_end = match run.end {
            RunEnd::Completed => continue,
            RunEnd::Stopped => &mut stops.stopped,
            RunEnd::Trouble => &mut stops.trouble,
            RunEnd::Going => &mut stops.cut_off,
        };
        *of_its_end = of_its_end.saturating_add(1);
        let ended_there = after.entry((run.parts.of, run.parts.done)).or_default();
        *ended_there = ended_there.saturating_add(1);
    }
    stops.after = after.into_iter().map(|((of, done), runs)| (Share { done, of }, runs)).collect();
    stops
}

/// Adds up `runs`, none of which belongs to a slot.
pub fn extra<'a>(runs: impl IntoIterator<Item = &'a RunOn>, unit: DoseUnit) -> Extra {
    let add = |(runs, done): (u32, u64), run: &RunOn| (runs.saturating_add(1), done + u64::from(run.dose.done));
    let (runs, done) = runs.into_iter().fold((0, 0), add);
    Extra { runs, done: u32::try_from(done / unit.divisor()).unwrap_or(u32::MAX), unit }
}

#[cfg(test)]
mod tests {
    use super::super::samples::run;
    use super::*;

    #[test]
    fn stops_are_counted_by_whole_parts_done() {
        let runs = [
            run(RunEnd::Stopped, 1),
            run(RunEnd::Completed, 3),
            run(RunEnd::Going, 1),
            run(RunEnd::Trouble, 2),
            run(RunEnd::Completed, 2),
        ];
        let found = stops(&runs);
        assert_eq!((found.stopped, found.trouble, found.cut_off), (1, 1, 1));
        assert_eq!(found.after, [(Share { done: 1, of: 3 }, 2), (Share { done: 2, of: 3 }, 1)]);
    }

    #[test]
    fn runs_beyond_what_was_asked_for_add_up_in_whole_units() {
        let runs = [run(RunEnd::Completed, 3), run(RunEnd::Stopped, 1)];
        let found = extra(&runs, DoseUnit::HoldSeconds);
        assert_eq!(found, Extra { runs: 2, done: 41, unit: DoseUnit::HoldSeconds }, "30.5 s and 10.5 s");
        assert_eq!(extra(&[], DoseUnit::Trials), Extra { runs: 0, done: 0, unit: DoseUnit::Trials });
    }
}
