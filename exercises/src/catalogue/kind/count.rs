//! Tests by repetitions in a set time, such as rising from a chair: the number of movements is the result.

use super::Dose;
use super::rules::{
    DoseField, DoseUnit, KindRules, Lead, PartCourse, PartWork, RunFlags, StepForward, Totals, UsualTimes, WorkForm, fit,
};
use crate::catalogue::bounds::Quantity;
use crate::catalogue::sidedness::Sidedness;

pub(super) struct CountRules;

impl KindRules for CountRules {
    fn code(&self) -> u8 {
        10
    }

    fn name(&self) -> &'static str {
        "count"
    }

    fn parts_name(&self) -> &'static str {
        "counts"
    }

    fn fields(&self) -> &'static [DoseField] {
        const { &[DoseField::seconds(Quantity::CountSeconds, "seconds", "seconds")] }
    }

    fn values(&self, dose: &Dose) -> Vec<i64> {
        let Dose::Count { seconds } = *dose else { return Vec::new() };
        vec![seconds.into()]
    }

    fn dose(&self, values: &[i64]) -> Option<Dose> {
        let [seconds] = *values else { return None };
        Some(Dose::Count { seconds: fit(seconds)? })
    }

    fn parts(&self, _dose: &Dose) -> u8 {
        1
    }

    /// A test never begins by itself: the person says when they are ready.
    fn course(&self, dose: &Dose) -> PartCourse {
        let s = if let Dose::Count { seconds } = *dose { seconds } else { 0 };
        PartCourse { lead: Lead::WhenReady, rest_s: 0, work: PartWork::Tally { s } }
    }

    /// A pause would make the result incomparable.
    fn flags(&self) -> RunFlags {
        RunFlags { pausable: false, ..RunFlags::USUAL }
    }

    fn form(&self) -> WorkForm {
        WorkForm::Tallied
    }

    fn sides(&self) -> &'static [Sidedness] {
        &[Sidedness::None]
    }

    /// Times that the whole test was done: the number of movements is a result and says nothing about adherence.
    fn unit(&self) -> DoseUnit {
        DoseUnit::Times
    }

    fn is_test(&self) -> bool {
        true
    }

    fn is_stepped(&self) -> bool {
        false
    }

    fn usual_times(&self) -> UsualTimes {
        UsualTimes::EveryTwoWeeks
    }

    fn forward(&self) -> &'static [StepForward] {
        &[]
    }

    fn back(&self) -> &'static [(Quantity, i16)] {
        &[]
    }

    fn dose_of_totals(&self, planned: &Dose, _totals: Totals) -> Option<Dose> {
        matches!(planned, Dose::Count { .. }).then_some(*planned)
    }
}
