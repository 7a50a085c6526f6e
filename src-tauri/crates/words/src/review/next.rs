//! What next: a proposal and its reasons.

use super::Names;
use crate::date::upper;
use crate::{Key, Words};
use chrono::NaiveDate;
use exercises::catalogue::{Dose, Exercise, Quantity};
use exercises::id::ComplaintId;
use exercises::plan::Item;
use exercises::review::Review;
use exercises::suggest::{Ask, HalfOfDay, Hindrance, Proposal, Reason, Reduction, Step, Suggestion};
use exercises::time::DayNumber;
use std::collections::BTreeMap;

/// Number of mornings that a reason names.
const MORNINGS: usize = 3;

/// A proposal in words.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct StepWords {
    /// "Progress to 15 seconds per hold".
    pub line: String,
    /// "The last session on 2 March and on 3 March met its target in full." The most important reason comes first.
    pub reasons: Vec<String>,
    /// What to ask before following the proposal: "Ask: how much does it hurt while doing it?"
    pub ask: Vec<String>,
}

impl StepWords {
    /// All reasons, then what to ask, as one paragraph.
    pub fn reason(&self) -> String {
        let all: Vec<&str> = self.reasons.iter().chain(&self.ask).map(String::as_str).collect();
        all.join(" ")
    }
}

impl Words {
    /// A proposal in words.
    pub fn suggestion(self, suggestion: &Suggestion, names: Names<'_>, start: NaiveDate) -> StepWords {
        StepWords {
            line: self.proposal_line(suggestion, names),
            reasons: suggestion.reasons.iter().map(|reason| self.reason(reason, start)).collect(),
            ask: suggestion.ask.iter().map(|ask| self.ask(*ask).to_owned()).collect(),
        }
    }

    /// "Now: Cushion; 3 attempts …; every day, at 19:00": an item as the plan in force has it. Where it was done at another level lately,
    /// "At home lately: Folded towel" follows.
    pub fn in_force(self, item: &Item, exercise: Option<&Exercise>, lately: Option<&Suggestion>) -> String {
        let level = |item: &Item| exercise.and_then(|exercise| self.rung_of(item, exercise));
        let parts = [level(item), Some(self.dose_prescribed(item)), Some(self.due(item))];
        let now = self.review_in_force(&self.semicolons(&parts.into_iter().flatten().collect::<Vec<_>>()));
        let other = lately.filter(|lately| lately.rung != item.rung).map(|lately| lately.rung.clone());
        let at_home = other.and_then(|rung| level(&Item { rung, ..item.clone() }));
        match at_home {
            Some(level) => self.as_sentences(&[now, self.review_level_at_home(&level)]),
            None => now,
        }
    }

    /// One sentence for each complaint for which several exercises are proposed to go a step forward: a later flare could be put down to
    /// none of them.
    pub fn steps_at_once(self, review: &Review, names: Names<'_>) -> Vec<String> {
        let mut steps: BTreeMap<ComplaintId, usize> = BTreeMap::new();
        for one in review.items.iter().filter(|one| matches!(one.proposal, Proposal::Progress(_))) {
            if let Some(complaint) = names.find(one.item).and_then(|item| item.serves) {
                *steps.entry(complaint).or_default() += 1;
            }
        }
        let several = steps.into_iter().filter(|(_, steps)| *steps > 1);
        several.map(|(complaint, steps)| self.review_steps_at_once(steps, &upper(&names.complaint(complaint)))).collect()
    }

    /// "Progress to 15 seconds per hold"; the name alone if nothing changes.
    fn proposal_line(self, suggestion: &Suggestion, names: Names<'_>) -> String {
        let name = self.proposal(suggestion);
        match &suggestion.proposal {
            // What the calendar raises stands where it has come to.
            Proposal::Keep if suggestion.dose.value(Quantity::QuotaGoal).is_some() => {
                self.named_text(name, &self.dose(suggestion.dose))
            }
            Proposal::Talk | Proposal::Keep => name.to_owned(),
            Proposal::Progress(step) | Proposal::Ease(step) => {
                self.review_advice_and_step(name, &self.step(step, suggestion, names))
            }
            Proposal::Reduce(Reduction::ShorterDose(step)) => {
                self.review_advice_and_step(self.text(Key::ReviewReduce), &self.step(step, suggestion, names))
            }
            Proposal::Reduce(reduction) => self.review_advice_and_less(name, &self.less(reduction)),
        }
    }

    /// A change that the person may make, as a question ("Go up to 15 seconds per hold?"), and the reason. `start` is the plan's first day.
    pub fn offered_step(self, suggestion: &Suggestion, exercise: &Exercise, start: NaiveDate) -> (String, String) {
        let names = Names::of_exercises(self, std::slice::from_ref(exercise));
        let step = match suggestion.step() {
            Some(Step::Rung { to, dose }) => self.to_level(&names.rung(&exercise.id, to), *dose, suggestion),
            Some(step) => self.step(step, suggestion, names),
            None => String::new(),
        };
        let back = matches!(suggestion.proposal, Proposal::Ease(_));
        let question = if back { self.step_back_to(&step) } else { self.step_up_to(&step) };
        let reason = suggestion.reasons.first().map(|reason| self.reason(reason, start)).unwrap_or_default();
        (question, reason)
    }

    /// "Progress". Where nothing was done there is nothing to stop, only to talk about.
    pub fn proposal(self, suggestion: &Suggestion) -> &'static str {
        let is_undone = suggestion.reasons.iter().any(|reason| matches!(reason, Reason::NothingDone { .. }));
        self.text(match suggestion.proposal {
            Proposal::Talk if is_undone => Key::ReviewTalkFirst,
            Proposal::Talk => Key::ReviewStopAndTalk,
            Proposal::Ease(_) => Key::ReviewEase,
            Proposal::Reduce(_) => Key::ReviewAskLess,
            Proposal::Progress(_) => Key::ReviewProgress,
            Proposal::Keep => Key::ReviewKeep,
        })
    }

    /// What the clinician should ask.
    pub fn ask(self, ask: Ask) -> &'static str {
        self.text(match ask {
            Ask::Pain => Key::ReviewAskPain,
            Ask::Reason => Key::ReviewAskReason,
        })
    }

    /// "to 15 seconds per hold".
    fn step(self, step: &Step, suggestion: &Suggestion, names: Names<'_>) -> String {
        match step {
            Step::Rung { to, dose } => {
                let exercise = names.find(suggestion.item).map(|item| &item.exercise);
                let name = exercise.map_or_else(|| to.to_string(), |exercise| names.rung(exercise, to));
                self.to_level(&name, *dose, suggestion)
            }
            Step::Load { to, dose } => self.review_to_load(&self.dose(*dose), &self.load(*to)),
            Step::Change { quantity, by } => {
                let to = suggestion.dose.value(*quantity).map(|value| value + i64::from(*by));
                let step = to.map(|to| self.dose_step(suggestion.dose.kind(), *quantity, to)).unwrap_or_default();
                let loaded = names.find(suggestion.item).is_some_and(|item| item.load.is_some());
                if loaded { self.commas(&[step, self.text(Key::SameLoad).to_owned()]) } else { step }
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

    /// "only the sessions before noon".
    fn less(self, reduction: &Reduction) -> String {
        match reduction {
            Reduction::Half(HalfOfDay::BeforeNoon) => self.text(Key::ReviewOnlyBeforeNoon).to_owned(),
            Reduction::Half(HalfOfDay::AfterNoon) => self.text(Key::ReviewOnlyAfterNoon).to_owned(),
            Reduction::FewerTimes { from, to } => self.review_fewer_times(usize::from(*to), from),
            Reduction::FewerSlots { from, to } => self.review_fewer_sessions(usize::from(*to), from),
            Reduction::ShorterDose(_) | Reduction::ShortenOrEnd => self.text(Key::ReviewShortenOrEnd).to_owned(),
        }
    }

    /// A reason, in one sentence.
    pub fn reason(self, reason: &Reason, start: NaiveDate) -> String {
        let date = |day: DayNumber| self.date(day.date(start));
        let what = match reason {
            Reason::Alarm { trouble, .. } => return self.review_why_alarm(self.trouble_noted(*trouble)),
            Reason::NothingDone { owed } => return self.review_why_nothing_done(*owed),
            Reason::AboveLimit { score, limit, day } => return self.review_why_above_limit(score, &date(*day), limit),
            Reason::Unsettled { days } => {
                let last: Vec<String> =
                    days.iter().skip(days.len().saturating_sub(MORNINGS)).map(|day| date(*day)).collect();
                let last = self.commas(&last);
                return match days.len() > MORNINGS {
                    true => self.review_why_often_unsettled(days.len(), &last),
                    false => self.review_why_unsettled(&last),
                };
            }
            Reason::TargetMissed { missed, of } => return self.review_why_target_missed(*of, missed),
            Reason::NearFall { day } => return self.review_why_near_fall(&date(*day)),
            Reason::LittleDone { thousandths, owed } => {
                return self.review_why_little_done(*owed, self.number(f64::from(*thousandths) / 1000.0));
            }
            Reason::Given { barrier, times } => return self.review_why_given(*times, self.barrier(*barrier)),
            Reason::TargetMet { days: [first, second] } => return self.review_why_target_met(&date(*first), &date(*second)),
            Reason::LowPain { most, known } => return self.review_why_low_pain(*known, most),
            Reason::ChangedLately { day } => return self.review_why_changed_lately(&date(*day)),
            Reason::FewSessions { days } => return self.review_why_few_sessions(*days),
            Reason::PainTooHighToProgress { score } => return self.review_why_too_painful_for_a_step(score),
            Reason::AlarmLately { trouble, day } => {
                return self.review_why_alarm_lately(self.trouble_noted(*trouble), &date(*day));
            }
            Reason::FlareLately { to } => return self.review_why_flare_lately(&date(*to)),
            Reason::BalanceFalling => Key::ReviewWhyBalanceFalling,
            Reason::NoneGiven => Key::ReviewWhyNoneGiven,
            Reason::PainUnknown { known: 0 } => Key::ReviewWhyPainUnknown,
            Reason::PainUnknown { .. } => Key::ReviewWhyPainKnownOnce,
            Reason::NotMet => Key::ReviewWhyNotMet,
            Reason::PainWorse => Key::ReviewWhyPainWorse,
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
        Hindrance::NotStepped => Key::ReviewWhyNotStepped,
        Hindrance::ByCalendar => Key::ReviewWhyByCalendar,
        Hindrance::GoalReached => Key::ReviewWhyGoalReached,
        Hindrance::AsNeeded => Key::ReviewWhyAsNeeded,
        Hindrance::ToCome => Key::ReviewWhyToCome,
        Hindrance::Over => Key::ReviewWhyOver,
        Hindrance::Unknown => Key::ReviewWhyUnknown,
    }
}
