//! The rung and dose in use: those of the plan, or those that the patient has stepped to since.
//!
//! A summary gives a run's rung and its prescribed totals; the dose is worked out from these, the item and the exercise.

use super::step::dose_on;
use crate::catalogue::kind::Totals;
use crate::catalogue::{Dose, Exercise};
use crate::plan::Item;
use crate::run::Run;
use crate::summary::RunOn;

/// `item` with the rung and dose of `last`, its last run since the card in force was taken. Unchanged if the item may not
/// step, or if the run does not fit it.
pub fn in_use(item: &Item, exercise: Option<&Exercise>, last: Option<&RunOn>) -> Item {
    let mut used = item.clone();
    let may_step = item.may_step && item.dose.kind().rules().is_stepped();
    let Some(run) = last.filter(|run| may_step && run.item == item.id) else { return used };
    let other = run.rung.as_ref().filter(|_| run.rung != item.rung);
    let stepped_to = exercise.zip(other).and_then(|(exercise, rung)| Some((exercise, exercise.rung(rung)?)));
    let planned = stepped_to.map_or(item.dose, |(exercise, rung)| dose_on(rung, exercise, item.dose));
    if let Some(dose) = dose_of(&Item { dose: planned, ..item.clone() }, run) {
        used.dose = dose;
        used.rung.clone_from(&run.rung);
    }
    used
}

/// `item` with the rung and dose of `last`, its last run on this device since the card in force was taken. Unchanged if the
/// item may not step, or if the run is of another kind.
pub fn in_use_here(item: &Item, last: Option<&Run>) -> Item {
    let mut used = item.clone();
    let may_step = item.may_step && item.dose.kind().rules().is_stepped();
    let fits = |run: &&Run| may_step && run.item == item.id && run.dose.kind() == item.dose.kind();
    if let Some(run) = last.filter(fits) {
        used.dose = run.dose;
        used.rung.clone_from(&run.rung);
    }
    used
}

/// `item` after near falls: `levels` levels easier, at most down to the easiest, without a step forward of the person's own
/// until a card says otherwise.
pub fn eased_by(item: &Item, levels: usize, exercise: Option<&Exercise>) -> Item {
    let mut eased = Item { may_step: false, ..item.clone() };
    for _ in 0..levels {
        let easier = eased.rung.as_ref().and_then(|rung| exercise?.easier(rung));
        let Some(easier) = easier.map(|rung| rung.id.clone()) else { break };
        eased.rung = Some(easier);
    }
    eased
}

/// Whether `run` was prescribed at the rung and dose of `item`. Amounts that the calendar raises differ from run to run and are the same dose.
pub(crate) fn same(item: &Item, run: &RunOn) -> bool {
    let grows = item.dose.after_days(i64::from(u16::MAX)) != item.dose;
    run.rung == item.rung && (grows || dose_of(item, run) == Some(item.dose))
}

fn dose_of(item: &Item, run: &RunOn) -> Option<Dose> {
    let sides = item.side.in_turn().len() as u32;
    let one_side = |of: u32| of.is_multiple_of(sides).then(|| of / sides);
    let totals = Totals {
        parts: one_side(run.parts.of),
        amount: one_side(run.dose.of),
        target_s: run.stance.as_ref().map(|stance| stance.target_s),
    };
    let dose = item.dose.kind().rules().dose_of_totals(&item.dose, totals)?;
    dose.check().is_ok().then_some(dose)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::Tempo;
    use crate::plan::Side;
    use crate::review::samples::{BALANCE, BALANCE_DOSE, REPS, REPS_DOSE, catalogue, item, run, rung};

    fn trials_after(parts: u32) -> Dose {
        let mut told = run(1, 3, BALANCE, Some(0));
        told.parts.of = parts;
        in_use(&item(BALANCE_DOSE, Side::Both), None, Some(&told)).dose
    }

    #[test]
    fn a_run_that_does_not_come_out_even_on_both_sides_leaves_the_plans_dose() {
        assert_eq!(trials_after(8), Dose::Balance { trials: 4, target_s: 30, rest_s: 30 });
        assert_eq!(trials_after(9), BALANCE_DOSE);
    }

    #[test]
    fn on_another_level_its_own_sets_and_tempo_are_taken() {
        let mut catalogue = catalogue();
        let tempo = Tempo { up_s: 3, hold_s: 1, down_s: 5 };
        let own = Dose::Reps { sets: 1, repetitions: 5, rest_s: 60, tempo };
        catalogue.exercises[2].ladders[0].rungs[1].dose = Some(own);
        let planned = item(REPS_DOSE, Side::Neither);
        let mut told = run(1, 3, REPS, Some(0));
        told.rung = Some(rung("low"));
        (told.dose.of, told.parts.of) = (5, 5);
        let used = in_use(&planned, catalogue.get(&planned.exercise), Some(&told));
        assert_eq!((used.rung, used.dose), (Some(rung("low")), own));
    }

    #[test]
    fn a_run_without_parts_leaves_the_plans_dose() {
        assert_eq!(trials_after(0), BALANCE_DOSE);
    }
}
