//! What stands above the answers, and their headings.

use super::Sentence;
use crate::Words;
use exercises::plan::Plan;
use exercises::review::Review;
use wire::clinic::ReviewPage;

/// The questions that a review answers, in their order.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ReviewQuestion {
    /// Did anything alarming happen?
    Alarms,
    /// Did they do it: when, how fully, and since when not?
    Done,
    /// Did it hurt?
    Pain,
    /// Is it working: balance?
    Balance,
    /// Is it working: activities?
    Activities,
    /// What got in the way?
    Barriers,
    /// What next?
    Next,
    /// What else the patient says.
    Notes,
}

impl Words {
    /// The heading of a question's answer.
    pub fn question(self, question: ReviewQuestion) -> &'static str {
        self.sentence(match question {
            ReviewQuestion::Alarms => Sentence::QuestionAlarms,
            ReviewQuestion::Done => Sentence::QuestionDone,
            ReviewQuestion::Pain => Sentence::QuestionPain,
            ReviewQuestion::Balance => Sentence::QuestionWorking,
            ReviewQuestion::Activities => Sentence::QuestionActivities,
            ReviewQuestion::Barriers => Sentence::QuestionBarriers,
            ReviewQuestion::Next => Sentence::QuestionNext,
            ReviewQuestion::Notes => Sentence::Notes,
        })
    }

    /// What is said where there is nothing to answer with.
    pub fn unanswered(self, question: ReviewQuestion) -> &'static str {
        self.sentence(match question {
            ReviewQuestion::Alarms => Sentence::NoAlarm,
            ReviewQuestion::Done | ReviewQuestion::Notes => Sentence::NothingAsked,
            ReviewQuestion::Pain => Sentence::NoComplaint,
            ReviewQuestion::Balance => Sentence::NoBalance,
            ReviewQuestion::Activities => Sentence::NoActivity,
            ReviewQuestion::Barriers => Sentence::NoBarrier,
            ReviewQuestion::Next => Sentence::NoPlan,
        })
    }

    /// "28 days since 28 October; 3 exercises; visit today".
    pub fn review_head(self, page: &ReviewPage) -> String {
        let Some(plan) = &page.plan else { return self.sentence(Sentence::NoPlan).to_owned() };
        let days = page.today.signed_duration_since(plan.start).num_days().max(0);
        let since = self.filled(Sentence::Since, &[("n", &days), ("date", &self.date(plan.start))]);
        let exercises = self.filled(Sentence::Exercises, &[("n", &plan.items.len())]);
        format!("{since}; {exercises}; {}", self.visit(plan, page))
    }

    fn visit(self, plan: &Plan, page: &ReviewPage) -> String {
        let what = match plan.review.cmp(&page.today) {
            std::cmp::Ordering::Equal => return self.sentence(Sentence::VisitToday).to_owned(),
            std::cmp::Ordering::Greater => Sentence::VisitOn,
            std::cmp::Ordering::Less => Sentence::VisitWas,
        };
        self.filled(what, &[("date", &self.date(plan.review))])
    }

    /// What the record covers, and what has not come yet; empty where nothing has.
    pub fn review_covers(self, page: &ReviewPage) -> Vec<String> {
        let Some(review) = &page.review else { return vec![self.sentence(Sentence::NoSummary).to_owned()] };
        let mut lines = Vec::new();
        if let Some((from, until)) = review.covered {
            let what = if review.logs > 1 { Sentence::CoveredDevices } else { Sentence::Covered };
            let values = (self.date(from), self.date(until));
            lines.push(self.filled(what, &[("from", &values.0), ("until", &values.1), ("n", &review.logs)]));
        }
        let behind = review.behind.iter().map(|behind| self.filled(Sentence::Behind, &[("date", &self.date(behind.until))]));
        lines.extend(behind);
        lines.extend((review.corrected > 0).then(|| self.filled(Sentence::Corrected, &[("n", &review.corrected)])));
        lines.extend(self.older_card(page.plan.as_ref(), review));
        lines
    }

    fn older_card(self, plan: Option<&Plan>, review: &Review) -> Option<String> {
        let newest = plan?.revision;
        (review.revision < newest)
            .then(|| self.filled(Sentence::Revision, &[("have", &review.revision), ("newest", &newest)]))
    }

    /// "Proposals by rule …".
    pub fn proposals_only(self) -> &'static str {
        self.sentence(Sentence::ProposalsOnly)
    }

    /// "no longer in the plan".
    pub fn no_longer(self) -> &'static str {
        self.sentence(Sentence::NoLonger)
    }
}
