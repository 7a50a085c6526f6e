//! What next: a proposal and its reason.

use super::Names;
use crate::{Key, Words};
use chrono::NaiveDate;
use exercises::catalogue::{Dose, Exercise};
use exercises::suggest::{Advice, Hindrance, Reason, Step, Suggestion};

/// A proposal in words.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct StepWords {
    /// "Progress".
    pub advice: String,
    /// "to 15 seconds per hold"; empty if nothing changes.
    pub step: String,
    /// "The target was met in two sessions in a row, with little pain."
    pub reason: String,
}

impl StepWords {
    /// "Progress to 15 seconds per hold".
    pub fn line(&self, words: Words) -> String {
        if self.step.is_empty() { self.advice.clone() } else { words.review_advice_and_step(&self.advice, &self.step) }
    }
}

impl Words {
    /// A proposal in words.
    pub fn suggestion(self, suggestion: &Suggestion, names: Names<'_>, start: NaiveDate) -> StepWords {
        StepWords {
            advice: self.advice(&suggestion.advice).to_owned(),
            step: self.step(suggestion, names),
            reason: self.reason(&suggestion.reason, start),
        }
    }

    /// A change that the person may make, as a question ("Go up to 15 seconds per hold?"), and the reason.
    pub fn offered_step(self, suggestion: &Suggestion, exercise: &Exercise, today: NaiveDate) -> (String, String) {
        let names = Names::of_exercises(self, std::slice::from_ref(exercise));
        let step = match suggestion.step() {
            Some(Step::Rung { to, dose }) => self.to_level(&names.rung(&exercise.id, to), *dose, suggestion),
            _ => self.step(suggestion, names),
        };
        let back = matches!(suggestion.advice, Advice::StepBack(_));
        let question = if back { self.step_back_to(&step) } else { self.step_up_to(&step) };
        (question, self.reason(&suggestion.reason, today))
    }

    /// "Progress".
    pub fn advice(self, advice: &Advice) -> &'static str {
        self.text(match advice {
            Advice::Advance(_) => Key::ReviewProgress,
            Advice::Keep => Key::ReviewKeep,
            Advice::StepBack(_) => Key::ReviewEase,
            Advice::StopAndTalk => Key::ReviewStopAndTalk,
        })
    }

    /// "to 15 seconds per hold"; empty if nothing changes.
    pub fn step(self, suggestion: &Suggestion, names: Names<'_>) -> String {
        let Some(step) = suggestion.step() else { return String::new() };
        match step {
            Step::Rung { to, dose } => {
                let exercise = names.find(suggestion.item).map(|item| &item.exercise);
                let name = exercise.map_or_else(|| to.to_string(), |exercise| names.rung(exercise, to));
                self.to_level(&name, *dose, suggestion)
            }
            Step::Change { quantity, by } => {
                let to = suggestion.dose.value(*quantity).map(|value| value + i64::from(*by));
                to.map(|to| self.dose_step(suggestion.dose.kind(), *quantity, to)).unwrap_or_default()
            }
        }
    }

    /// "to “Back free”", with the dose there if it is another one than now.
    fn to_level(self, name: &str, dose: Dose, suggestion: &Suggestion) -> String {
        if dose == suggestion.dose {
            return self.review_to_level(name);
        }
        self.review_to_level_with_dose(name, &self.dose(dose))
    }

    /// The reason, in one sentence.
    pub fn reason(self, reason: &Reason, start: NaiveDate) -> String {
        let what = match reason {
            Reason::Alarm { trouble, .. } => {
                return self.review_why_alarm(self.trouble_noted(*trouble));
            }
            Reason::PainTooHigh { score, limit } => {
                return self.review_why_pain_too_high(score, limit);
            }
            Reason::PainRising(rise) => {
                let [base, before, last] = [rise.base, rise.week_before, rise.last_week].map(|value| self.number(value));
                return self.review_why_pain_rising(base, before, last);
            }
            Reason::PainBetween { score } => return self.review_why_pain_between(score),
            Reason::TooFewSessions { sessions } => return self.review_why_too_few_sessions(sessions),
            Reason::StepThisWeek { stepped } => {
                return self.review_why_step_this_week(&self.date(stepped.date(start)));
            }
            Reason::NotSettled => Key::ReviewWhyNotSettled,
            Reason::MissedTwice => Key::ReviewWhyMissedTwice,
            Reason::MetTwice => Key::ReviewWhyMetTwice,
            Reason::MetOnce => Key::ReviewWhyMetOnce,
            Reason::NotMet => Key::ReviewWhyNotMet,
            Reason::PainUnanswered => Key::ReviewWhyPainUnanswered,
            Reason::MorningUnanswered => Key::ReviewWhyMorningUnanswered,
            Reason::Hindered(hindrance) => hindered(*hindrance),
        };
        self.text(what).to_owned()
    }
}

fn hindered(hindrance: Hindrance) -> Key {
    match hindrance {
        Hindrance::AtTheTop => Key::ReviewWhyAtTheTop,
        Hindrance::GateClosed => Key::ReviewWhyGateClosed,
        Hindrance::SoftAndClosed => Key::ReviewWhySoftAndClosed,
        Hindrance::EyesApart => Key::ReviewWhyClosedEyesByYou,
        Hindrance::Test => Key::ReviewWhyTest,
        Hindrance::Unknown => Key::ReviewWhyUnknown,
    }
}
