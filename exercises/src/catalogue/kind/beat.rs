//! Movements on a beat, such as turning the head while the gaze stays on a mark.

use super::Dose;
use super::rules::{
    DoseField, DoseUnit, KindRules, Lead, PartCourse, PartWork, StepForward, Totals, UsualTimes, WorkForm, even, fit,
};
use crate::catalogue::bounds::Quantity;

/// Beats a minute that a step adds or takes away (our design).
const STEP_BEATS: i16 = 10;
/// The quickest beat that steps lead to, in beats a minute (our design).
const MAX_BEATS: i64 = 120;
/// Seconds that a step adds or takes away (our design).
const STEP_S: i16 = 5;
/// The longest repetition that steps lead to, in seconds (our design).
const MAX_S: i64 = 60;

pub(super) struct BeatRules;

impl KindRules for BeatRules {
    fn code(&self) -> u8 {
        11
    }

    fn name(&self) -> &'static str {
        "beat"
    }

    fn parts_name(&self) -> &'static str {
        "rounds"
    }

    fn fields(&self) -> &'static [DoseField] {
        const {
            &[
                DoseField::count(Quantity::Repetitions, "repetitions", "repetitions"),
                DoseField::seconds(Quantity::BeatSeconds, "seconds", "seconds"),
                DoseField { by_fives: true, ..DoseField::count(Quantity::BeatsPerMinute, "per_minute", "per_minute") },
                DoseField::seconds(Quantity::RestSeconds, "rest_s", "rest"),
            ]
        }
    }

    fn values(&self, dose: &Dose) -> Vec<i64> {
        let Dose::Beat { repetitions, seconds, per_minute, rest_s } = *dose else { return Vec::new() };
        vec![repetitions.into(), seconds.into(), per_minute.into(), rest_s.into()]
    }

    fn dose(&self, values: &[i64]) -> Option<Dose> {
        let [repetitions, seconds, per_minute, rest_s] = *values else { return None };
        let (repetitions, seconds) = (fit(repetitions)?, fit(seconds)?);
        Some(Dose::Beat { repetitions, seconds, per_minute: fit(per_minute)?, rest_s: fit(rest_s)? })
    }

    fn parts(&self, dose: &Dose) -> u8 {
        if let Dose::Beat { repetitions, .. } = *dose { repetitions } else { 0 }
    }

    fn course(&self, dose: &Dose) -> PartCourse {
        let (s, per_minute, rest_s) = match *dose {
            Dose::Beat { seconds, per_minute, rest_s, .. } => (seconds, per_minute, rest_s),
            _ => (0, 60, 0),
        };
        PartCourse { lead: Lead::CountIn, rest_s, work: PartWork::OnBeat { s, per_minute } }
    }

    fn form(&self) -> WorkForm {
        WorkForm::Timed
    }

    fn unit(&self) -> DoseUnit {
        DoseUnit::BeatSeconds
    }

    fn asks_dizziness(&self) -> bool {
        true
    }

    fn usual_times(&self) -> UsualTimes {
        UsualTimes::ThroughTheDay
    }

    fn forward(&self) -> &'static [StepForward] {
        const {
            &[
                StepForward::by(Quantity::BeatsPerMinute, STEP_BEATS, MAX_BEATS),
                StepForward::by(Quantity::BeatSeconds, STEP_S, MAX_S),
            ]
        }
    }

    fn back(&self) -> &'static [(Quantity, i16)] {
        &[(Quantity::BeatsPerMinute, -STEP_BEATS), (Quantity::BeatSeconds, -STEP_S), (Quantity::Repetitions, -1)]
    }

    fn dose_of_totals(&self, planned: &Dose, Totals { parts, amount, .. }: Totals) -> Option<Dose> {
        let Dose::Beat { per_minute, rest_s, .. } = *planned else { return None };
        let seconds = even(amount, parts?.checked_mul(1000)?)?;
        Some(Dose::Beat { repetitions: fit(parts?)?, seconds: fit(seconds)?, per_minute, rest_s })
    }
}
