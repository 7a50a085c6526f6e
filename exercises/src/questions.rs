//! The questions to the person, asked as rarely as the rules allow.
//!
//! Pain is asked once a day for each complaint: after the day's last hold and after each balance or repetition run. "Settled by this
//! morning?" is asked at the next day's first opening after any pain; named activities weekly and before the visit.

use crate::catalogue::Catalogue;
use crate::catalogue::kind::AskPain;
use crate::history::History;
use crate::id::{ActivityId, ComplaintId, PlanId, RunId};
use crate::plan::Plan;
use crate::run::Run;
use crate::score::Score;
use crate::time::Stamp;

/// Least pain after which the next morning is asked about (Silbernagel 2007, AJSM 35:897-906: pain must settle by next morning). A
/// step up needs the answer too, and is only proposed after pain of 3 or less; without pain there is nothing to settle.
pub const ASK_MORNING_FROM: Score = Score::at_most_ten(1);
/// Days between two questions about named activities.
pub const ACTIVITY_DAYS: i64 = 7;

/// What to ask the person now.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Question {
    /// Pain of a complaint, 0 to 10.
    Pain {
        /// The plan.
        plan: PlanId,
        /// The complaint.
        complaint: ComplaintId,
        /// Its name.
        name: String,
        /// The run after which it is asked, if any.
        after: Option<RunId>,
    },
    /// "Settled by this morning?"
    Settled {
        /// The plan.
        plan: PlanId,
        /// The complaint.
        complaint: ComplaintId,
        /// Its name.
        name: String,
    },
    /// A named activity, 0 to 10.
    Activity {
        /// The plan.
        plan: PlanId,
        /// The activity.
        activity: ActivityId,
        /// Its name.
        name: String,
    },
}

/// Questions at the day's opening: the morning after, and named activities if a week has passed since the last rating (the visit's
/// own counts) or the visit is today or tomorrow.
pub fn on_opening(plan: &Plan, history: &History, now: Stamp) -> Vec<Question> {
    let mut questions = morning(plan, history, now);
    for activity in &plan.prescription.activities {
        let rated = history.rated.iter().filter(|rating| rating.of == activity.id);
        let last = rated.map(|rating| rating.at.date()).max().unwrap_or(plan.header.issued);
        let since = now.date().signed_duration_since(last).num_days();
        let visit_near = plan.prescription.review.signed_duration_since(now.date()).num_days() <= 1 && since >= 2;
        if since >= ACTIVITY_DAYS || visit_near {
            questions.push(Question::Activity { plan: plan.header.id, activity: activity.id, name: activity.name.clone() });
        }
    }
    questions
}

fn morning(plan: &Plan, history: &History, now: Stamp) -> Vec<Question> {
    let today = now.date();
    let mut questions = Vec::new();
    for complaint in &plan.prescription.complaints {
        let last = history.pain.iter().rev().find(|rating| rating.of == complaint.id && rating.at.date() < today);
        let sore = last.is_some_and(|last| {
            last.score >= ASK_MORNING_FROM && today.signed_duration_since(last.at.date()).num_days() == 1
        });
        let answered = history.settled.iter().any(|s| s.complaint == complaint.id && s.at.date() == today);
        if sore && !answered {
            questions.push(Question::Settled {
                plan: plan.header.id,
                complaint: complaint.id,
                name: complaint.name.clone(),
            });
        }
    }
    questions
}

/// Questions after a run that has ended: the pain of the complaint that its item is assigned to (of all complaints if it is assigned
/// to none), after each run or after the last run of the day, depending on its kind; once a day for each complaint.
pub fn after_run(plan: &Plan, history: &History, catalogue: &Catalogue, run: &Run, last_today: bool) -> Vec<Question> {
    let asks = catalogue.get(&run.exercise).map(|exercise| exercise.kind.rules().asks_pain());
    if asks == Some(AskPain::LastOfTheDay) && !last_today {
        return Vec::new();
    }
    let serves = plan.item(run.item).and_then(|item| item.serves);
    let asked = plan.prescription.complaints.iter().filter(|complaint| serves.is_none_or(|served| served == complaint.id));
    let day = run.started.date();
    let open = asked.filter(|complaint| !history.pain_on(day, complaint.id));
    open.map(|complaint| Question::Pain {
        plan: plan.header.id,
        complaint: complaint.id,
        name: complaint.name.clone(),
        after: Some(run.id),
    })
    .collect()
}
