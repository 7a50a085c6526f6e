//! Balance exercises: timed trials on one leg, each until the foot touches down or the target is reached.

use super::Dose;
use super::rules::{
    DoseField, DoseUnit, KindRules, Lead, PartCourse, PartWork, RunFlags, StepForward, Totals, UsualTimes, WorkForm, fit,
};
use crate::catalogue::bounds::Quantity;
use crate::catalogue::sidedness::Sidedness;

/// Seconds by which a step lengthens or shortens the target.
const STEP_S: i16 = 5;
/// The longest target that steps lead to, in seconds.
const MAX_TARGET_S: i64 = 60;

pub(super) struct BalanceRules;

impl KindRules for BalanceRules {
    fn code(&self) -> u8 {
        1
    }

    fn name(&self) -> &'static str {
        "balance"
    }

    fn parts_name(&self) -> &'static str {
        "trials"
    }

    fn fields(&self) -> &'static [DoseField] {
        const {
            &[
                DoseField::count(Quantity::Trials, "trials", "trials"),
                DoseField::seconds(Quantity::TargetSeconds, "target_s", "target"),
                DoseField::seconds(Quantity::RestSeconds, "rest_s", "rest"),
            ]
        }
    }

    fn values(&self, dose: &Dose) -> Vec<i64> {
        let Dose::Balance { trials, target_s, rest_s } = *dose else { return Vec::new() };
        vec![trials.into(), target_s.into(), rest_s.into()]
    }

    fn dose(&self, values: &[i64]) -> Option<Dose> {
        let [trials, target_s, rest_s] = *values else { return None };
        Some(Dose::Balance { trials: fit(trials)?, target_s: fit(target_s)?, rest_s: fit(rest_s)? })
    }

    fn parts(&self, dose: &Dose) -> u8 {
        if let Dose::Balance { trials, .. } = *dose { trials } else { 0 }
    }

    /// A trial never begins by itself: the person says when they are ready.
    fn course(&self, dose: &Dose) -> PartCourse {
        let (s, rest_s) = if let Dose::Balance { target_s, rest_s, .. } = *dose { (target_s, rest_s) } else { (0, 0) };
        PartCourse { lead: Lead::WhenReady, rest_s, work: PartWork::Trial { s } }
    }

    /// Someone standing on one leg can neither pause nor look for a button.
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
        &[Sidedness::EachSide, Sidedness::Alternating]
    }

    fn is_balance(&self) -> bool {
        true
    }

    fn is_by_leg(&self) -> bool {
        true
    }

    fn usual_times(&self) -> UsualTimes {
        UsualTimes::Evening
    }

    fn forward(&self) -> &'static [StepForward] {
        const { &[StepForward { short_if_often: false, ..StepForward::by(Quantity::TargetSeconds, STEP_S, MAX_TARGET_S) }] }
    }

    fn back(&self) -> &'static [(Quantity, i16)] {
        &[(Quantity::TargetSeconds, -STEP_S), (Quantity::Trials, -1)]
    }

    fn dose_of_totals(&self, planned: &Dose, Totals { parts, target_s, .. }: Totals) -> Option<Dose> {
        let Dose::Balance { rest_s, .. } = *planned else { return None };
        Some(Dose::Balance { trials: fit(parts?)?, target_s: target_s?, rest_s })
    }
}
