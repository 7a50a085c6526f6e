//! Holds: a position is held for some seconds, several times.

use super::Dose;
use super::rules::{
    DoseField, DoseUnit, KindRules, Lead, PartCourse, PartWork, StepForward, Totals, UsualTimes, WorkForm, even, fit,
};
use crate::catalogue::bounds::Quantity;

/// Seconds by which a step lengthens or shortens a hold.
const STEP_S: i16 = 5;
/// The longest hold that steps lead to, in seconds (working range 5 to 30 s; our design).
const MAX_HOLD_S: i64 = 30;
/// The largest number of holds that steps lead to (our design).
const MAX_HOLDS: i64 = 10;

pub(super) struct HoldRules;

impl KindRules for HoldRules {
    fn code(&self) -> u8 {
        0
    }

    fn name(&self) -> &'static str {
        "hold"
    }

    fn parts_name(&self) -> &'static str {
        "holds"
    }

    fn fields(&self) -> &'static [DoseField] {
        const {
            &[
                DoseField::count(Quantity::Repetitions, "repetitions", "repetitions"),
                DoseField::seconds(Quantity::HoldSeconds, "hold_s", "seconds"),
                DoseField::seconds(Quantity::RestSeconds, "rest_s", "rest"),
            ]
        }
    }

    fn values(&self, dose: &Dose) -> Vec<i64> {
        let Dose::Hold { repetitions, hold_s, rest_s } = *dose else { return Vec::new() };
        vec![repetitions.into(), hold_s.into(), rest_s.into()]
    }

    fn dose(&self, values: &[i64]) -> Option<Dose> {
        let [repetitions, hold_s, rest_s] = *values else { return None };
        Some(Dose::Hold { repetitions: fit(repetitions)?, hold_s: fit(hold_s)?, rest_s: fit(rest_s)? })
    }

    fn parts(&self, dose: &Dose) -> u8 {
        if let Dose::Hold { repetitions, .. } = *dose { repetitions } else { 0 }
    }

    fn course(&self, dose: &Dose) -> PartCourse {
        let (s, rest_s) = if let Dose::Hold { hold_s, rest_s, .. } = *dose { (hold_s, rest_s) } else { (0, 0) };
        PartCourse { lead: Lead::CountIn, rest_s, work: PartWork::Hold { s } }
    }

    fn form(&self) -> WorkForm {
        WorkForm::Timed
    }

    fn unit(&self) -> DoseUnit {
        DoseUnit::HoldSeconds
    }

    fn usual_times(&self) -> UsualTimes {
        UsualTimes::ThroughTheDay
    }

    fn forward(&self) -> &'static [StepForward] {
        const {
            &[
                StepForward::by(Quantity::HoldSeconds, STEP_S, MAX_HOLD_S),
                StepForward::by(Quantity::Repetitions, 1, MAX_HOLDS),
            ]
        }
    }

    fn back(&self) -> &'static [(Quantity, i16)] {
        &[(Quantity::HoldSeconds, -STEP_S), (Quantity::Repetitions, -1)]
    }

    fn dose_of_totals(&self, planned: &Dose, Totals { parts, amount, .. }: Totals) -> Option<Dose> {
        let Dose::Hold { rest_s, .. } = *planned else { return None };
        let hold_s = even(amount, parts?.checked_mul(1000)?)?;
        Some(Dose::Hold { repetitions: fit(parts?)?, hold_s: fit(hold_s)?, rest_s })
    }
}
