//! Breathing at a pace that is shown and sounded, for some minutes.

use super::rules::{
    DoseField, DoseUnit, KindRules, Lead, PartCourse, PartWork, RunFlags, StepForward, Totals, UsualTimes, WorkForm, even,
    fit,
};
use super::{BreathPace, Dose};
use crate::catalogue::bounds::Quantity;

pub(super) struct BreathRules;

impl KindRules for BreathRules {
    fn code(&self) -> u8 {
        6
    }

    fn name(&self) -> &'static str {
        "breath"
    }

    fn parts_name(&self) -> &'static str {
        "sittings"
    }

    fn fields(&self) -> &'static [DoseField] {
        const {
            &[
                DoseField::minutes(Quantity::BreathMinutes, "minutes", "minutes"),
                DoseField::within("pace", Quantity::BreathInSeconds, "in_s"),
                DoseField::within("pace", Quantity::BreathFullSeconds, "full_s"),
                DoseField::within("pace", Quantity::BreathOutSeconds, "out_s"),
                DoseField::within("pace", Quantity::BreathEmptySeconds, "empty_s"),
            ]
        }
    }

    fn values(&self, dose: &Dose) -> Vec<i64> {
        let Dose::Breath { minutes, pace: BreathPace { in_s, full_s, out_s, empty_s } } = *dose else { return Vec::new() };
        [minutes, in_s, full_s, out_s, empty_s].map(i64::from).to_vec()
    }

    fn dose(&self, values: &[i64]) -> Option<Dose> {
        let [minutes, in_s, full_s, out_s, empty_s] = *values else { return None };
        let pace = BreathPace { in_s: fit(in_s)?, full_s: fit(full_s)?, out_s: fit(out_s)?, empty_s: fit(empty_s)? };
        Some(Dose::Breath { minutes: fit(minutes)?, pace })
    }

    fn parts(&self, _dose: &Dose) -> u8 {
        1
    }

    fn course(&self, dose: &Dose) -> PartCourse {
        let (s, pace) = match *dose {
            Dose::Breath { minutes, pace } => (u16::from(minutes) * 60, pace),
            _ => (0, BreathPace { in_s: 1, full_s: 0, out_s: 1, empty_s: 0 }),
        };
        PartCourse { lead: Lead::CountIn, rest_s: 0, work: PartWork::Breaths { s, pace } }
    }

    fn flags(&self) -> RunFlags {
        RunFlags::USUAL
    }

    fn form(&self) -> WorkForm {
        WorkForm::Timed
    }

    fn unit(&self) -> DoseUnit {
        DoseUnit::Minutes
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
        &[(Quantity::BreathMinutes, -1)]
    }

    fn dose_of_totals(&self, planned: &Dose, totals: Totals) -> Option<Dose> {
        let Dose::Breath { pace, .. } = *planned else { return None };
        Some(Dose::Breath { minutes: fit(even(totals.amount, 60_000)?)?, pace })
    }
}
