//! Prompts: something to do at once and without a dose, such as a change of position. One press says that it was done.

use super::Dose;
use super::rules::{
    DoseField, DoseUnit, KindRules, Lead, PartCourse, PartWork, RunFlags, StepForward, Totals, UsualTimes, WorkForm,
};
use crate::catalogue::bounds::Quantity;

pub(super) struct PromptRules;

impl KindRules for PromptRules {
    fn code(&self) -> u8 {
        8
    }

    fn name(&self) -> &'static str {
        "prompt"
    }

    fn parts_name(&self) -> &'static str {
        "presses"
    }

    fn fields(&self) -> &'static [DoseField] {
        &[]
    }

    fn values(&self, _dose: &Dose) -> Vec<i64> {
        Vec::new()
    }

    fn dose(&self, values: &[i64]) -> Option<Dose> {
        values.is_empty().then_some(Dose::Prompt)
    }

    fn parts(&self, _dose: &Dose) -> u8 {
        1
    }

    fn course(&self, _dose: &Dose) -> PartCourse {
        PartCourse { lead: Lead::AtOnce, rest_s: 0, work: PartWork::OwnPace { count: 1 } }
    }

    fn flags(&self) -> RunFlags {
        RunFlags { pausable: false, ..RunFlags::USUAL }
    }

    fn form(&self) -> WorkForm {
        WorkForm::Counted
    }

    fn unit(&self) -> DoseUnit {
        DoseUnit::Times
    }

    fn asks_pain(&self) -> bool {
        false
    }

    fn is_stepped(&self) -> bool {
        false
    }

    fn is_one_press(&self) -> bool {
        true
    }

    fn usual_times(&self) -> UsualTimes {
        UsualTimes::ThroughTheDay
    }

    fn forward(&self) -> &'static [StepForward] {
        &[]
    }

    fn back(&self) -> &'static [(Quantity, i16)] {
        &[]
    }

    fn dose_of_totals(&self, _planned: &Dose, _totals: Totals) -> Option<Dose> {
        Some(Dose::Prompt)
    }
}
