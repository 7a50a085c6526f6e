//! Stretches: a position is eased into and then kept without effort for some seconds, several times.

use super::Dose;
use super::rules::{
    DoseField, DoseUnit, KindRules, Lead, PartCourse, PartWork, StepForward, Totals, UsualTimes, WorkForm, even, fit,
};
use crate::catalogue::bounds::Quantity;

/// Seconds by which a step lengthens or shortens a stretch.
const STEP_S: i16 = 5;
/// The longest stretch that steps lead to, in seconds (usual range 15 to 30 s, recalled).
const MAX_STRETCH_S: i64 = 30;
/// The largest number of stretches that steps lead to (our design).
const MAX_STRETCHES: i64 = 5;
/// The most seconds of one run on one side (our design).
const MOST_S: u32 = 300;

pub(super) struct StretchRules;

impl KindRules for StretchRules {
    fn code(&self) -> u8 {
        3
    }

    fn name(&self) -> &'static str {
        "stretch"
    }

    fn parts_name(&self) -> &'static str {
        "stretches"
    }

    fn fields(&self) -> &'static [DoseField] {
        const {
            &[
                DoseField::count(Quantity::Repetitions, "repetitions", "repetitions"),
                DoseField::seconds(Quantity::StretchSeconds, "stretch_s", "seconds"),
                DoseField::seconds(Quantity::RestSeconds, "rest_s", "rest"),
            ]
        }
    }

    fn values(&self, dose: &Dose) -> Vec<i64> {
        let Dose::Stretch { repetitions, stretch_s, rest_s } = *dose else { return Vec::new() };
        vec![repetitions.into(), stretch_s.into(), rest_s.into()]
    }

    fn dose(&self, values: &[i64]) -> Option<Dose> {
        let [repetitions, stretch_s, rest_s] = *values else { return None };
        Some(Dose::Stretch { repetitions: fit(repetitions)?, stretch_s: fit(stretch_s)?, rest_s: fit(rest_s)? })
    }

    fn parts(&self, dose: &Dose) -> u8 {
        if let Dose::Stretch { repetitions, .. } = *dose { repetitions } else { 0 }
    }

    fn course(&self, dose: &Dose) -> PartCourse {
        let (s, rest_s) = if let Dose::Stretch { stretch_s, rest_s, .. } = *dose { (stretch_s, rest_s) } else { (0, 0) };
        PartCourse { lead: Lead::CountIn, rest_s, work: PartWork::Stretch { s } }
    }

    fn form(&self) -> WorkForm {
        WorkForm::Timed
    }

    fn unit(&self) -> DoseUnit {
        DoseUnit::StretchSeconds
    }

    fn most_work_s(&self) -> Option<u32> {
        Some(MOST_S)
    }

    fn usual_times(&self) -> UsualTimes {
        UsualTimes::Evening
    }

    fn forward(&self) -> &'static [StepForward] {
        const {
            &[
                StepForward::by(Quantity::StretchSeconds, STEP_S, MAX_STRETCH_S),
                StepForward::by(Quantity::Repetitions, 1, MAX_STRETCHES),
            ]
        }
    }

    fn back(&self) -> &'static [(Quantity, i16)] {
        &[(Quantity::StretchSeconds, -STEP_S), (Quantity::Repetitions, -1)]
    }

    fn dose_of_totals(&self, planned: &Dose, Totals { parts, amount, .. }: Totals) -> Option<Dose> {
        let Dose::Stretch { rest_s, .. } = *planned else { return None };
        let stretch_s = even(amount, parts?.checked_mul(1000)?)?;
        Some(Dose::Stretch { repetitions: fit(parts?)?, stretch_s: fit(stretch_s)?, rest_s })
    }
}
