//! Problems that prevent a plan from being issued or taken.

use crate::{Key, Words};
use exercises::plan::Risk;
use exercises::plan::check::{Problem, TextPlace};

impl Words {
    /// Why a plan cannot be issued or taken, in one sentence.
    pub fn problem(self, problem: &Problem) -> String {
        match problem {
            Problem::NoItem => self.text(Key::ProblemNoItem).to_owned(),
            Problem::TooMany => self.text(Key::ProblemTooMany).to_owned(),
            Problem::Text { what: TextPlace::Clinic, most } => self.problem_text_clinic(most),
            Problem::Text { what: TextPlace::Phone, most } => self.problem_text_phone(most),
            Problem::Text { what: TextPlace::Complaint, most } => self.problem_text_complaint(most),
            Problem::Text { what: TextPlace::Activity, most } => self.problem_text_activity(most),
            Problem::Text { what: TextPlace::Note, most } => self.problem_text_note(most),
            Problem::Text { what: TextPlace::Aftercare, most } => self.problem_text_aftercare(most),
            Problem::SameNumber => self.text(Key::ProblemSameNumber).to_owned(),
            Problem::ReviewDate => self.text(Key::ProblemReviewDate).to_owned(),
            Problem::UnknownExercise(_, id) => self.problem_unknown_exercise(id),
            Problem::OtherContent(_, id) => self.problem_other_content(id),
            Problem::UnknownRung(item, rung) if rung.is_empty() => self.problem_level_missing(item.0),
            Problem::UnknownRung(_, rung) => self.problem_unknown_level(rung),
            Problem::Dose(item) => self.problem_dose_of(item.0),
            Problem::TooMuchWork(item, seconds) => self.problem_too_much_work_of(item.0, seconds / 60),
            Problem::Side(item) => self.problem_side_of(item.0),
            Problem::Schedule(item) => self.problem_schedule_of(item.0),
            Problem::OnceADay(item) => self.problem_once_a_day_of(item.0),
            Problem::Load(item) => self.problem_load_of(item.0),
            Problem::Phase(item) => self.problem_phase_of(item.0),
            Problem::Overlap(item, other) => self.problem_overlap_of(item.0, other.0),
            Problem::Serves(item) => self.problem_complaint_gone_of(item.0),
            Problem::AgeMissing => self.text(Key::ProblemAgeMissing).to_owned(),
            Problem::NotTicked(risks) => {
                let risks: Vec<&str> = risks.iter().map(|risk| self.risk(*risk)).collect();
                self.problem_not_ticked(&self.semicolons(&risks))
            }
            Problem::NotConfirmed(day) => self.problem_not_confirmed(&self.date(*day)),
            Problem::NoStanceBaseline(item) => self.problem_no_stance_baseline(item.0),
            Problem::StanceTooShort(item) => self.problem_stance_too_short(item.0),
            Problem::GateClosed(item) => self.problem_gate_closed(item.0),
            Problem::SoftAndClosed(item) => self.problem_soft_and_closed(item.0),
        }
    }

    /// One line of the list of risks that the clinician ticks.
    pub fn risk(self, risk: Risk) -> &'static str {
        self.text(match risk {
            Risk::HighFallRisk => Key::RiskHighFallRisk,
            Risk::VertigoOrFainting => Key::RiskVertigoOrFainting,
            Risk::NumbFeet => Key::RiskNumbFeet,
            Risk::NeurologicalUnsteadiness => Key::RiskNeurologicalUnsteadiness,
            Risk::PartialWeightBearing => Key::RiskPartialWeightBearing,
            Risk::FreshInjury => Key::RiskFreshInjury,
            Risk::SevereOsteoporosis => Key::RiskSevereOsteoporosis,
            Risk::SedativesOrAlcohol => Key::RiskSedativesOrAlcohol,
            Risk::SevereVisualLoss => Key::RiskSevereVisualLoss,
            Risk::CognitiveImpairment => Key::RiskCognitiveImpairment,
            Risk::LatePregnancy => Key::RiskLatePregnancy,
        })
    }

    /// Several problems, one sentence each.
    pub(super) fn problems(self, problems: &[Problem]) -> String {
        self.sentences(&problems.iter().map(|problem| self.problem(problem)).collect::<Vec<_>>())
    }
}
