//! What next: a proposal and its reason.

use super::adherence::on;
use super::{Names, Sentence};
use crate::{Key, Words};
use chrono::NaiveDate;
use exercises::catalogue::{Dose, Exercise};
use exercises::suggest::{Advice, Hindrance, Reason, Step, Suggestion};

/// A proposal in words.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct StepWords {
    /// "Advance".
    pub advice: String,
    /// "to 15 seconds a hold"; empty where nothing changes.
    pub step: String,
    /// "The target was met in two sessions in a row, with little pain."
    pub reason: String,
}

impl StepWords {
    /// "Advance to 15 seconds a hold".
    pub fn line(&self) -> String {
        if self.step.is_empty() { self.advice.clone() } else { format!("{} {}", self.advice, self.step) }
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

    /// A step that the person may take, as a question ("On to 15 seconds a hold?"), and why.
    pub fn offered_step(self, suggestion: &Suggestion, exercise: &Exercise, today: NaiveDate) -> (String, String) {
        let names = Names::of_exercises(self, std::slice::from_ref(exercise));
        let step = match suggestion.step() {
            Some(Step::Rung(rung)) => self.filled(Sentence::ToRung, &[("rung", &names.rung(&exercise.id, rung))]),
            _ => self.step(suggestion, names),
        };
        let back = matches!(suggestion.advice, Advice::StepBack(_));
        let question = self.fill(if back { Key::StepBackTo } else { Key::StepOn }, &[("step", &step)]);
        (question, self.reason(&suggestion.reason, today))
    }

    /// "Advance".
    pub fn advice(self, advice: &Advice) -> &'static str {
        self.sentence(match advice {
            Advice::Advance(_) => Sentence::Advance,
            Advice::Keep => Sentence::Keep,
            Advice::StepBack(_) => Sentence::StepBack,
            Advice::StopAndTalk => Sentence::StopAndTalk,
        })
    }

    /// "to 15 seconds a hold"; empty where nothing changes.
    pub fn step(self, suggestion: &Suggestion, names: Names<'_>) -> String {
        let Some(step) = suggestion.step() else { return String::new() };
        let by = |value: u16, by: i16| value.saturating_add_signed(by);
        let (what, n) = match (step, suggestion.dose) {
            (Step::Rung(rung), _) => {
                let exercise = names.find(suggestion.item).map(|item| &item.exercise);
                let name = exercise.map_or_else(|| rung.to_string(), |exercise| names.rung(exercise, rung));
                return self.filled(Sentence::ToRung, &[("rung", &name)]);
            }
            (Step::HoldSeconds(more), Dose::Hold { hold_s, .. }) => (Sentence::ToHoldSeconds, by(hold_s, *more)),
            (Step::Repetitions(more), Dose::Hold { repetitions, .. }) => (Sentence::ToHolds, by(repetitions.into(), *more)),
            (Step::Repetitions(more), Dose::Reps { repetitions, .. }) => {
                (Sentence::ToRepetitions, by(repetitions.into(), *more))
            }
            (Step::TargetSeconds(more), Dose::Balance { target_s, .. }) => (Sentence::ToTarget, by(target_s, *more)),
            (Step::Trials(more), Dose::Balance { trials, .. }) => (Sentence::ToTrials, by(trials.into(), *more)),
            _ => return String::new(),
        };
        self.filled(what, &[("n", &n)])
    }

    /// Why, one sentence.
    pub fn reason(self, reason: &Reason, start: NaiveDate) -> String {
        let what = match reason {
            Reason::Alarm { trouble, .. } => {
                let trouble = self.trouble_noted(*trouble).to_lowercase();
                return self.filled(Sentence::WhyAlarm, &[("trouble", &trouble)]);
            }
            Reason::PainTooHigh { score, limit } => {
                return self.filled(Sentence::WhyPainTooHigh, &[("score", score), ("limit", limit)]);
            }
            Reason::PainRising(rise) => {
                let [base, before, last] = [rise.base, rise.week_before, rise.last_week].map(|value| self.number(value));
                return self.filled(Sentence::WhyPainRising, &[("base", &base), ("before", &before), ("last", &last)]);
            }
            Reason::PainBetween { score } => return self.filled(Sentence::WhyPainBetween, &[("score", score)]),
            Reason::TooFewSessions { sessions } => return self.filled(Sentence::WhyTooFewSessions, &[("n", sessions)]),
            Reason::StepThisWeek { stepped } => {
                return self.filled(Sentence::WhyStepThisWeek, &[("date", &self.date(on(start, *stepped)))]);
            }
            Reason::NotSettled => Sentence::WhyNotSettled,
            Reason::MissedTwice => Sentence::WhyMissedTwice,
            Reason::MetTwice => Sentence::WhyMetTwice,
            Reason::MetOnce => Sentence::WhyMetOnce,
            Reason::NotMet => Sentence::WhyNotMet,
            Reason::PainUnanswered => Sentence::WhyPainUnanswered,
            Reason::MorningUnanswered => Sentence::WhyMorningUnanswered,
            Reason::Hindered(hindrance) => hindered(*hindrance),
        };
        self.sentence(what).to_owned()
    }
}

fn hindered(hindrance: Hindrance) -> Sentence {
    match hindrance {
        Hindrance::AtTheTop => Sentence::WhyAtTheTop,
        Hindrance::GateClosed => Sentence::WhyGateClosed,
        Hindrance::SoftAndClosed => Sentence::WhySoftAndClosed,
        Hindrance::EyesApart => Sentence::WhyEyesApart,
        Hindrance::Unknown => Sentence::WhyUnknown,
    }
}
