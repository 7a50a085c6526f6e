//! Results of tests by repetitions: one series for each exercise, level and time.

use super::CountSeries;
use super::stance::exercise_of;
use crate::catalogue::{Catalogue, ExerciseId, RungId};
use crate::change::{CountDay, count_change};
use crate::plan::Plan;
use crate::summary::union::United;
use crate::time::DayNumber;
use std::collections::BTreeMap;

/// What stays the same within one series: exercise, level, seconds.
type Conditions = (ExerciseId, Option<RungId>, u16);

/// All series. Tests that were stopped early are left out.
pub(super) fn series(united: &United<'_>, revisions: &BTreeMap<u16, Plan>, catalogue: &Catalogue) -> Vec<CountSeries> {
    let mut all: BTreeMap<Conditions, BTreeMap<DayNumber, u8>> = BTreeMap::new();
    for ((log, _), run) in &united.runs {
        let Some(tally) = run.tally.filter(|tally| tally.whole) else { continue };
        let Some(exercise) = exercise_of(united, revisions, *log, run) else { continue };
        let days = all.entry((exercise, run.rung.clone(), tally.seconds)).or_default();
        let best = days.entry(run.day).or_default();
        *best = tally.count.max(*best);
    }
    let one = |((exercise, rung, seconds), days): (Conditions, BTreeMap<DayNumber, u8>)| {
        let days: Vec<CountDay> = days.into_iter().map(|(day, count)| CountDay { day, count }).collect();
        let error_tenths = catalogue.get(&exercise).and_then(|exercise| exercise.count_error_tenths);
        let best = days.iter().map(|day| day.count).max().unwrap_or_default();
        CountSeries { exercise, rung, seconds, change: count_change(&days, error_tenths), error_tenths, best, days }
    };
    all.into_iter().map(one).collect()
}
