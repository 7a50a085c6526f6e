//! Movements at one's own pace: counted by the person, without a tempo.

use super::Dose;
use super::rules::{
    DoseField, DoseUnit, KindRules, Lead, PartCourse, PartWork, RunFlags, StepForward, Totals, UsualTimes, WorkForm, fit,
};
use crate::catalogue::bounds::Quantity;

/// The largest number of movements that steps lead to (sets of home exercise have 8 to 20).
const MAX_REPETITIONS: i64 = 20;

pub(super) struct MoveRules;

impl KindRules for MoveRules {
    fn code(&self) -> u8 {
        4
    }

    fn name(&self) -> &'static str {
        "move"
    }

    fn parts_name(&self) -> &'static str {
        "movements"
    }

    fn fields(&self) -> &'static [DoseField] {
        const { &[DoseField::count(Quantity::Repetitions, "repetitions", "repetitions")] }
    }

    fn values(&self, dose: &Dose) -> Vec<i64> {
        let Dose::Move { repetitions } = *dose else { return Vec::new() };
        vec![repetitions.into()]
    }

    fn dose(&self, values: &[i64]) -> Option<Dose> {
        let [repetitions] = *values else { return None };
        Some(Dose::Move { repetitions: fit(repetitions)? })
    }

    fn parts(&self, _dose: &Dose) -> u8 {
        1
    }

    fn course(&self, dose: &Dose) -> PartCourse {
        let count = if let Dose::Move { repetitions } = *dose { repetitions } else { 0 };
        PartCourse { lead: Lead::CountIn, rest_s: 0, work: PartWork::OwnPace { count } }
    }

    /// Only the person knows when a movement is over, so there is no time that could be paused.
    fn flags(&self) -> RunFlags {
        RunFlags { pausable: false, ..RunFlags::USUAL }
    }

    fn form(&self) -> WorkForm {
        WorkForm::Counted
    }

    fn unit(&self) -> DoseUnit {
        DoseUnit::Repetitions
    }

    fn usual_times(&self) -> UsualTimes {
        UsualTimes::ThroughTheDay
    }

    fn forward(&self) -> &'static [StepForward] {
        const { &[StepForward::by(Quantity::Repetitions, 1, MAX_REPETITIONS)] }
    }

    fn back(&self) -> &'static [(Quantity, i16)] {
        &[(Quantity::Repetitions, -1)]
    }

    fn dose_of_totals(&self, planned: &Dose, totals: Totals) -> Option<Dose> {
        let Dose::Move { .. } = *planned else { return None };
        Some(Dose::Move { repetitions: fit(totals.amount?)? })
    }
}
