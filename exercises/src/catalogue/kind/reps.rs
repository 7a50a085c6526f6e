//! Repetitions: movements counted in sets, with a tempo.

use super::rules::{
    DoseField, DoseUnit, KindRules, Lead, PartCourse, PartWork, StepForward, Totals, UsualTimes, WorkForm, even, fit,
};
use super::{Dose, Tempo};
use crate::catalogue::bounds::Quantity;

/// The largest number of repetitions in a set that steps lead to (sets of home exercise have 8 to 20).
const MAX_REPETITIONS: i64 = 20;

pub(super) struct RepsRules;

impl KindRules for RepsRules {
    fn code(&self) -> u8 {
        2
    }

    fn name(&self) -> &'static str {
        "reps"
    }

    fn parts_name(&self) -> &'static str {
        "sets"
    }

    fn fields(&self) -> &'static [DoseField] {
        const {
            &[
                DoseField::count(Quantity::Sets, "sets", "sets"),
                DoseField::count(Quantity::Repetitions, "repetitions", "repetitions"),
                DoseField::seconds(Quantity::RestSeconds, "rest_s", "rest"),
                DoseField::within("tempo", Quantity::TempoUpSeconds, "up_s"),
                DoseField::within("tempo", Quantity::TempoHoldSeconds, "hold_s"),
                DoseField::within("tempo", Quantity::TempoDownSeconds, "down_s"),
            ]
        }
    }

    fn values(&self, dose: &Dose) -> Vec<i64> {
        let Dose::Reps { sets, repetitions, rest_s, tempo: Tempo { up_s, hold_s, down_s } } = *dose else {
            return Vec::new();
        };
        vec![sets.into(), repetitions.into(), rest_s.into(), up_s.into(), hold_s.into(), down_s.into()]
    }

    fn dose(&self, values: &[i64]) -> Option<Dose> {
        let [sets, repetitions, rest_s, up_s, hold_s, down_s] = *values else { return None };
        let tempo = Tempo { up_s: fit(up_s)?, hold_s: fit(hold_s)?, down_s: fit(down_s)? };
        Some(Dose::Reps { sets: fit(sets)?, repetitions: fit(repetitions)?, rest_s: fit(rest_s)?, tempo })
    }

    fn parts(&self, dose: &Dose) -> u8 {
        if let Dose::Reps { sets, .. } = *dose { sets } else { 0 }
    }

    fn course(&self, dose: &Dose) -> PartCourse {
        let (count, rest_s, tempo) = match *dose {
            Dose::Reps { repetitions, rest_s, tempo, .. } => (repetitions, rest_s, tempo),
            _ => (0, 0, Tempo { up_s: 0, hold_s: 0, down_s: 0 }),
        };
        PartCourse { lead: Lead::CountIn, rest_s, work: PartWork::Movements { count, tempo } }
    }

    fn form(&self) -> WorkForm {
        WorkForm::Counted
    }

    fn unit(&self) -> DoseUnit {
        DoseUnit::Repetitions
    }

    fn usual_times(&self) -> UsualTimes {
        UsualTimes::Evening
    }

    fn forward(&self) -> &'static [StepForward] {
        const { &[StepForward::by(Quantity::Repetitions, 1, MAX_REPETITIONS)] }
    }

    fn back(&self) -> &'static [(Quantity, i16)] {
        &[(Quantity::Repetitions, -1)]
    }

    fn dose_of_totals(&self, planned: &Dose, totals: Totals) -> Option<Dose> {
        let Dose::Reps { sets, rest_s, tempo, .. } = *planned else { return None };
        Some(Dose::Reps { sets, repetitions: fit(even(totals.amount, sets.into())?)?, rest_s, tempo })
    }
}
