//! Care for some minutes: warmth, cold, a position of rest, a ball. It is no training: no step changes it, and pain is not asked about.

use super::Dose;
use super::rules::{
    DoseField, DoseUnit, KindRules, Lead, PartCourse, PartWork, RunFlags, StepForward, Totals, UsualTimes, WorkForm, even,
    fit,
};
use crate::catalogue::bounds::Quantity;

pub(super) struct CareRules;

impl KindRules for CareRules {
    fn code(&self) -> u8 {
        7
    }

    fn name(&self) -> &'static str {
        "care"
    }

    fn parts_name(&self) -> &'static str {
        "times"
    }

    fn fields(&self) -> &'static [DoseField] {
        const { &[DoseField::minutes(Quantity::CareMinutes, "minutes", "minutes")] }
    }

    fn values(&self, dose: &Dose) -> Vec<i64> {
        let Dose::Care { minutes } = *dose else { return Vec::new() };
        vec![minutes.into()]
    }

    fn dose(&self, values: &[i64]) -> Option<Dose> {
        let [minutes] = *values else { return None };
        Some(Dose::Care { minutes: fit(minutes)? })
    }

    fn parts(&self, _dose: &Dose) -> u8 {
        1
    }

    fn course(&self, dose: &Dose) -> PartCourse {
        let s = if let Dose::Care { minutes } = *dose { u16::from(minutes) * 60 } else { 0 };
        PartCourse { lead: Lead::AtOnce, rest_s: 0, work: PartWork::Timer { s, moves: false } }
    }

    /// Whoever rests with their legs on a chair does not look at a screen.
    fn flags(&self) -> RunFlags {
        RunFlags { goes_on_unseen: true, ..RunFlags::USUAL }
    }

    fn form(&self) -> WorkForm {
        WorkForm::Timed
    }

    fn unit(&self) -> DoseUnit {
        DoseUnit::Minutes
    }

    fn is_exercise(&self) -> bool {
        false
    }

    fn asks_pain(&self) -> bool {
        false
    }

    fn is_stepped(&self) -> bool {
        false
    }

    fn usual_times(&self) -> UsualTimes {
        UsualTimes::Evening
    }

    fn forward(&self) -> &'static [StepForward] {
        &[]
    }

    fn back(&self) -> &'static [(Quantity, i16)] {
        &[(Quantity::CareMinutes, -5)]
    }

    fn dose_of_totals(&self, planned: &Dose, totals: Totals) -> Option<Dose> {
        let Dose::Care { .. } = *planned else { return None };
        Some(Dose::Care { minutes: fit(even(totals.amount, 60_000)?)? })
    }
}
