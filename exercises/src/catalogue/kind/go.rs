//! Activity for some minutes, such as walking: the screen may be off meanwhile.

use super::Dose;
use super::rules::{
    DoseField, DoseUnit, KindRules, Lead, PartCourse, PartWork, RunFlags, StepForward, Totals, UsualTimes, WorkForm, even,
    fit,
};
use crate::catalogue::bounds::Quantity;

/// Percent by which a step makes the activity longer (graded activity; our design).
const STEP_PERCENT: u8 = 10;
/// Minutes by which a step back makes it shorter.
const STEP_BACK_MIN: i16 = 5;
/// The longest activity that steps lead to, in minutes (our design).
const MAX_MINUTES: i64 = 60;

pub(super) struct GoRules;

impl KindRules for GoRules {
    fn code(&self) -> u8 {
        5
    }

    fn name(&self) -> &'static str {
        "go"
    }

    fn parts_name(&self) -> &'static str {
        "outings"
    }

    fn fields(&self) -> &'static [DoseField] {
        const {
            &[
                DoseField::minutes(Quantity::ActivityMinutes, "minutes", "minutes"),
                DoseField::count(Quantity::Effort, "effort", "effort"),
            ]
        }
    }

    fn values(&self, dose: &Dose) -> Vec<i64> {
        let Dose::Go { minutes, effort } = *dose else { return Vec::new() };
        vec![minutes.into(), effort.into()]
    }

    fn dose(&self, values: &[i64]) -> Option<Dose> {
        let [minutes, effort] = *values else { return None };
        Some(Dose::Go { minutes: fit(minutes)?, effort: fit(effort)? })
    }

    fn parts(&self, _dose: &Dose) -> u8 {
        1
    }

    fn course(&self, dose: &Dose) -> PartCourse {
        let s = if let Dose::Go { minutes, .. } = *dose { u16::from(minutes) * 60 } else { 0 };
        PartCourse { lead: Lead::AtOnce, rest_s: 0, work: PartWork::Timer { s, moves: true } }
    }

    /// Somebody who walks has the phone in a pocket, and the device sleeps.
    fn flags(&self) -> RunFlags {
        RunFlags { goes_on_unseen: true, ..RunFlags::USUAL }
    }

    fn form(&self) -> WorkForm {
        WorkForm::Timed
    }

    fn unit(&self) -> DoseUnit {
        DoseUnit::Minutes
    }

    fn usual_times(&self) -> UsualTimes {
        UsualTimes::Evening
    }

    fn forward(&self) -> &'static [StepForward] {
        const {
            &[StepForward {
                percent: STEP_PERCENT,
                short_if_often: false,
                ..StepForward::by(Quantity::ActivityMinutes, 1, MAX_MINUTES)
            }]
        }
    }

    fn back(&self) -> &'static [(Quantity, i16)] {
        &[(Quantity::ActivityMinutes, -STEP_BACK_MIN)]
    }

    fn dose_of_totals(&self, planned: &Dose, totals: Totals) -> Option<Dose> {
        let Dose::Go { effort, .. } = *planned else { return None };
        Some(Dose::Go { minutes: fit(even(totals.amount, 60_000)?)?, effort })
    }
}
