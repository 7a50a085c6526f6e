//! What stands above the answers, and their headings.

use super::Say;
use crate::Words;
use exercises::plan::Plan;
use exercises::review::Review;
use wire::clinic::ReviewPage;

/// The questions that a review answers, in their order.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Question {
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
    pub fn question(self, question: Question) -> &'static str {
        self.say(match question {
            Question::Alarms => Say::QuestionAlarms,
            Question::Done => Say::QuestionDone,
            Question::Pain => Say::QuestionPain,
            Question::Balance => Say::QuestionWorking,
            Question::Activities => Say::QuestionActivities,
            Question::Barriers => Say::QuestionBarriers,
            Question::Next => Say::QuestionNext,
            Question::Notes => Say::Notes,
        })
    }

    /// What is said where there is nothing to answer with.
    pub fn unanswered(self, question: Question) -> &'static str {
        self.say(match question {
            Question::Alarms => Say::NoAlarm,
            Question::Done | Question::Notes => Say::NothingAsked,
            Question::Pain => Say::NoComplaint,
            Question::Balance => Say::NoBalance,
            Question::Activities => Say::NoActivity,
            Question::Barriers => Say::NoBarrier,
            Question::Next => Say::NoPlan,
        })
    }

    /// "28 days since 28 October; 3 exercises; visit today".
    pub fn review_head(self, page: &ReviewPage) -> String {
        let Some(plan) = &page.plan else { return self.say(Say::NoPlan).to_owned() };
        let days = page.today.signed_duration_since(plan.header.start).num_days().max(0);
        let since = self.said(Say::Since, &[("n", &days), ("date", &self.date(plan.header.start))]);
        let exercises = self.said(Say::Exercises, &[("n", &plan.prescription.items.len())]);
        format!("{since}; {exercises}; {}", self.visit(plan, page))
    }

    fn visit(self, plan: &Plan, page: &ReviewPage) -> String {
        let what = match plan.prescription.review.cmp(&page.today) {
            std::cmp::Ordering::Equal => return self.say(Say::VisitToday).to_owned(),
            std::cmp::Ordering::Greater => Say::VisitOn,
            std::cmp::Ordering::Less => Say::VisitWas,
        };
        self.said(what, &[("date", &self.date(plan.prescription.review))])
    }

    /// What the record covers, and what has not come yet; empty where nothing has.
    pub fn review_covers(self, page: &ReviewPage) -> Vec<String> {
        let Some(review) = &page.review else { return vec![self.say(Say::NoSummary).to_owned()] };
        let mut lines = Vec::new();
        if let Some((from, until)) = review.covered {
            let what = if review.logs > 1 { Say::CoveredDevices } else { Say::Covered };
            let values = (self.date(from), self.date(until));
            lines.push(self.said(what, &[("from", &values.0), ("until", &values.1), ("n", &review.logs)]));
        }
        let behind = review.behind.iter().map(|behind| self.said(Say::Behind, &[("date", &self.date(behind.until))]));
        lines.extend(behind);
        lines.extend((review.corrected > 0).then(|| self.said(Say::Corrected, &[("n", &review.corrected)])));
        lines.extend(self.older_card(page.plan.as_ref(), review));
        lines
    }

    fn older_card(self, plan: Option<&Plan>, review: &Review) -> Option<String> {
        let newest = plan?.header.revision;
        (review.revision < newest).then(|| self.said(Say::Revision, &[("have", &review.revision), ("newest", &newest)]))
    }

    /// "Proposals by rule …".
    pub fn proposals_only(self) -> &'static str {
        self.say(Say::ProposalsOnly)
    }

    /// "no longer in the plan".
    pub fn no_longer(self) -> &'static str {
        self.say(Say::NoLonger)
    }
}
