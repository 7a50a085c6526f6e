//! Stance times: one series for each set of conditions, and the comparison of the two legs.

use super::norms::NormContext;
use super::{Sides, StanceSeries};
use crate::catalogue::{Catalogue, ExerciseId};
use crate::change::{Conditions, OneLeg, StanceDay, compare_legs, seconds, stance_change, stance_day, sway_series};
use crate::id::{ItemId, LogId};
use crate::norms::Norms;
use crate::plan::{BodySide, Plan, Side};
use crate::summary::union::United;
use crate::summary::{RunOn, SwayOn};
use crate::time::DayNumber;
use std::collections::BTreeMap;

/// What one day of a series consists of.
#[derive(Default)]
struct Day<'a> {
    /// Every measured time, in seconds.
    times: Vec<f64>,
    /// The day's target, in seconds; of several the highest.
    target_s: u16,
    /// What the motion sensor measured.
    sway: Vec<&'a SwayOn>,
}

/// All series, one for each set of conditions.
pub(super) fn series(
    united: &United<'_>,
    revisions: &BTreeMap<u16, Plan>,
    catalogue: &Catalogue,
    norms: &Norms,
) -> Vec<StanceSeries> {
    let known = NormContext { norms, catalogue, age: revisions.values().rev().find_map(|plan| plan.prescription.age) };
    trials(united, revisions, catalogue)
        .into_iter()
        .filter_map(|(conditions, days)| one(&conditions, &days, known))
        .collect()
}

/// All trials, by conditions and day.
fn trials<'a>(
    united: &'a United<'a>,
    revisions: &BTreeMap<u16, Plan>,
    catalogue: &Catalogue,
) -> BTreeMap<Conditions, BTreeMap<DayNumber, Day<'a>>> {
    let mut all: BTreeMap<Conditions, BTreeMap<DayNumber, Day>> = BTreeMap::new();
    for ((log, _), run) in &united.runs {
        let Some(stance) = &run.stance else { continue };
        let Some(exercise) = exercise_of(united, revisions, *log, run) else { continue };
        // On both feet the leg says which foot is in front: there is no side to compare.
        let has_sides = catalogue.get(&exercise).is_none_or(|exercise| exercise.one_leg);
        for (place, trial) in stance.trials.iter().enumerate() {
            let sensed = stance.sway.iter().find(|one| usize::from(one.trial) == place);
            let time = seconds(trial, stance.target_s);
            if time.is_none() && sensed.is_none() {
                continue;
            }
            let conditions = Conditions {
                exercise: exercise.clone(),
                rung: run.rung.clone(),
                surface: stance.surface,
                eyes: stance.eyes,
                set_up: stance.set_up,
                leg: trial.leg.filter(|_| has_sides),
            };
            let day = all.entry(conditions).or_default().entry(run.day).or_default();
            day.target_s = day.target_s.max(stance.target_s);
            day.times.extend(time);
            day.sway.extend(sensed);
        }
    }
    all
}

/// The exercise of a run. A summary gives only the item; the card in force on that device says which exercise it is.
pub(super) fn exercise_of(
    united: &United<'_>,
    revisions: &BTreeMap<u16, Plan>,
    log: LogId,
    run: &RunOn,
) -> Option<ExerciseId> {
    let of = |plan: &Plan, item: ItemId| plan.item(item).map(|item| item.exercise.clone());
    let in_force = united.logs.get(&log).and_then(|of_log| revisions.get(&of_log.in_force(run.day)?.revision));
    let newest = || revisions.values().rev().find_map(|plan| of(plan, run.item));
    in_force.and_then(|plan| of(plan, run.item)).or_else(newest)
}

fn one(conditions: &Conditions, all: &BTreeMap<DayNumber, Day>, known: NormContext<'_>) -> Option<StanceSeries> {
    let target_s = all.values().map(|of| of.target_s).max()?;
    let days: Vec<StanceDay> = all.iter().filter_map(|(day, of)| stance_day(*day, &of.times, of.target_s)).collect();
    let sway = all.iter().filter(|(_, of)| !of.sway.is_empty()).map(|(day, of)| (*day, of.sway.clone())).collect();
    let norms = known.against(conditions, all.values().next_back()?.target_s, days.last()?);
    Some(StanceSeries {
        exercise: conditions.exercise.clone(),
        rung: conditions.rung.clone(),
        leg: conditions.leg,
        surface: conditions.surface,
        eyes: conditions.eyes,
        set_up: conditions.set_up,
        target_s,
        change: stance_change(conditions, &days, target_s, known.age),
        sway: sway_series(&sway),
        days,
        norms,
    })
}

/// The involved leg compared with the other, for each set of conditions under which both were tested, if the exercise is for
/// a complaint that has a side.
pub(super) fn sides(all: &[StanceSeries], newest: &Plan) -> Vec<Sides> {
    let pairs = all.iter().filter_map(|series| {
        let involved = involved(newest, &series.exercise).filter(|leg| Some(*leg) == series.leg)?;
        let conditions = series.conditions();
        let other_leg = Conditions { leg: Some(other(involved)), ..conditions.clone() };
        let other = all.iter().find(|other| other.conditions() == other_leg)?;
        let of = |series: &'_ StanceSeries| -> (Vec<StanceDay>, _) { (series.days.clone(), series.change) };
        let ((days, change), (other_days, other_change)) = (of(series), of(other));
        let leg = OneLeg { days: &days, change: &change };
        let other = OneLeg { days: &other_days, change: &other_change };
        let sides = compare_legs(involved, leg, other, series.target_s)?;
        Some(Sides { conditions, sides })
    });
    pairs.collect()
}

fn other(leg: BodySide) -> BodySide {
    match leg {
        BodySide::Left => BodySide::Right,
        BodySide::Right => BodySide::Left,
    }
}

/// The side of the complaint that `exercise` is prescribed for; `None` if it has no single side.
fn involved(plan: &Plan, exercise: &ExerciseId) -> Option<BodySide> {
    let mut served = plan.prescription.items.iter().filter(|item| item.exercise == *exercise).filter_map(|item| item.serves);
    let side =
        |complaint| plan.prescription.complaints.iter().find(|other| other.id == complaint).map(|complaint| complaint.side);
    served.find_map(|complaint| match side(complaint)? {
        Side::Left => Some(BodySide::Left),
        Side::Right => Some(BodySide::Right),
        Side::Both | Side::Alternating | Side::Neither => None,
    })
}
