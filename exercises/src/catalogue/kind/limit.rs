//! Timed stands on both feet, heel to toe or feet together: trials, each until the person steps, holds on or reaches the cap.

use super::Dose;
use super::rules::{
    DoseField, DoseUnit, KindRules, Lead, PartCourse, PartWork, RunFlags, StepForward, Totals, UsualTimes, WorkForm, fit,
};
use crate::catalogue::bounds::Quantity;
use crate::catalogue::sidedness::Sidedness;

/// Seconds by which a step lengthens or shortens the cap.
const STEP_S: i16 = 5;
/// The longest cap that steps lead to, in seconds.
const MAX_CAP_S: i64 = 60;

pub(super) struct LimitRules;

impl KindRules for LimitRules {
    fn code(&self) -> u8 {
        9
    }

    fn name(&self) -> &'static str {
        "limit"
    }

    fn parts_name(&self) -> &'static str {
        "stands"
    }

    fn fields(&self) -> &'static [DoseField] {
        const {
            &[
                DoseField::count(Quantity::Trials, "trials", "trials"),
                DoseField::seconds(Quantity::TargetSeconds, "cap_s", "cap"),
                DoseField::seconds(Quantity::RestSeconds, "rest_s", "rest"),
            ]
        }
    }

    fn values(&self, dose: &Dose) -> Vec<i64> {
        let Dose::Limit { trials, cap_s, rest_s } = *dose else { return Vec::new() };
        vec![trials.into(), cap_s.into(), rest_s.into()]
    }

    fn dose(&self, values: &[i64]) -> Option<Dose> {
        let [trials, cap_s, rest_s] = *values else { return None };
        Some(Dose::Limit { trials: fit(trials)?, cap_s: fit(cap_s)?, rest_s: fit(rest_s)? })
    }

    fn parts(&self, dose: &Dose) -> u8 {
        if let Dose::Limit { trials, .. } = *dose { trials } else { 0 }
    }

    /// A trial never begins by itself: the person says when they are ready.
    fn course(&self, dose: &Dose) -> PartCourse {
        let (s, rest_s) = if let Dose::Limit { cap_s, rest_s, .. } = *dose { (cap_s, rest_s) } else { (0, 0) };
        PartCourse { lead: Lead::WhenReady, rest_s, work: PartWork::Trial { s } }
    }

    /// Someone who stands heel to toe can neither pause nor look for a button.
    fn flags(&self) -> RunFlags {
        RunFlags { pausable: false, ends_out_of_sight: true, whole_screen: true, goes_on_unseen: false }
    }

    fn form(&self) -> WorkForm {
        WorkForm::Trials
    }

    /// Trials and not seconds: how long somebody stands is a result and says nothing about adherence.
    fn unit(&self) -> DoseUnit {
        DoseUnit::Trials
    }

    fn sides(&self) -> &'static [Sidedness] {
        &[Sidedness::None]
    }

    fn is_balance(&self) -> bool {
        true
    }

    fn usual_times(&self) -> UsualTimes {
        UsualTimes::Evening
    }

    fn forward(&self) -> &'static [StepForward] {
        const { &[StepForward { short_if_often: false, ..StepForward::by(Quantity::TargetSeconds, STEP_S, MAX_CAP_S) }] }
    }

    fn back(&self) -> &'static [(Quantity, i16)] {
        &[(Quantity::TargetSeconds, -STEP_S), (Quantity::Trials, -1)]
    }

    fn dose_of_totals(&self, planned: &Dose, Totals { parts, target_s, .. }: Totals) -> Option<Dose> {
        let Dose::Limit { rest_s, .. } = *planned else { return None };
        Some(Dose::Limit { trials: fit(parts?)?, cap_s: target_s?, rest_s })
    }
}
