//! The questions to the person, asked as rarely as the rules allow. Each number has one meaning:
//!
//! - **This morning**, 0 to 10, for each complaint: at the day's first opening or reminder, at most once a day. It makes the trend of
//!   pain and says whether it has settled (Silbernagel 2007, AJSM 35:897-906: pain must settle by next morning).
//! - **While doing it**, 0 to 10, for each item: after a session, at most once a day; by the hour after the first session in the last
//!   third of the window, or when the window has ended.
//!
//! Named activities are asked about weekly and before the visit.

use crate::history::{History, Mark, Rating};
use crate::id::{ActivityId, ComplaintId, ItemId, PlanId};
use crate::plan::{Item, Plan};
use crate::run::Run;
use crate::score::Score;
use crate::slots::{self, Slot, own_day};
use crate::time::{Offsets, Stamp};
use chrono::NaiveDate;

/// Days between two questions about named activities.
pub const ACTIVITY_DAYS: i64 = 7;

/// What to ask the person now.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Question {
    /// The pain of a complaint this morning, 0 to 10.
    Morning {
        /// The plan.
        plan: PlanId,
        /// The complaint.
        complaint: ComplaintId,
        /// Its name.
        name: String,
        /// The last answer.
        last: Option<Score>,
    },
    /// The pain while doing an item, 0 to 10.
    During {
        /// The plan.
        plan: PlanId,
        /// The item.
        item: ItemId,
        /// The last answer.
        last: Option<Score>,
    },
    /// A named activity, 0 to 10.
    Activity {
        /// The plan.
        plan: PlanId,
        /// The activity.
        activity: ActivityId,
        /// Its name.
        name: String,
        /// The last answer.
        last: Option<Score>,
    },
}

/// Questions at an opening: this morning's pain, the pain while doing what was done by the hour and whose window has ended, and
/// named activities if a week has passed since the last rating (the visit's own counts) or the visit is today or tomorrow.
pub fn on_opening(plan: &Plan, history: &History, now: Stamp, zone: &Offsets, taken: Stamp) -> Vec<Question> {
    let mut questions = morning(plan, history, now);
    let ended = plan.prescription.items.iter().filter(|item| asks_now_that_it_ended(plan, item, history, now, zone, taken));
    questions.extend(ended.map(|item| during(plan, history, item.id)));
    for activity in &plan.prescription.activities {
        let rated = history.rated.iter().filter(|rating| rating.of == activity.id);
        let last = rated.map(|rating| rating.at.date()).max().unwrap_or(plan.header.issued);
        let since = now.date().signed_duration_since(last).num_days();
        let visit_near = plan.prescription.review.signed_duration_since(now.date()).num_days() <= 1 && since >= 2;
        if since >= ACTIVITY_DAYS || visit_near {
            questions.push(Question::Activity {
                plan: plan.header.id,
                activity: activity.id,
                name: activity.name.clone(),
                last: last_score(&history.rated, activity.id),
            });
        }
    }
    questions
}

/// The pain of each complaint this morning, unless it was rated today.
fn morning(plan: &Plan, history: &History, now: Stamp) -> Vec<Question> {
    let today = own_day(now);
    let answered =
        |complaint| history.mornings.iter().rev().any(|rating| rating.of == complaint && own_day(rating.at) == today);
    let open = plan.prescription.complaints.iter().filter(|complaint| !answered(complaint.id));
    open.map(|complaint| Question::Morning {
        plan: plan.header.id,
        complaint: complaint.id,
        name: complaint.name.clone(),
        last: last_score(&history.mornings, complaint.id),
    })
    .collect()
}

fn during(plan: &Plan, history: &History, item: ItemId) -> Question {
    Question::During { plan: plan.header.id, item, last: last_score(&history.during, item) }
}

fn last_score<T: Copy + PartialEq>(ratings: &[Rating<T>], of: T) -> Option<Score> {
    ratings.iter().rev().find(|rating| rating.of == of).map(|rating| rating.score)
}

/// The question after a run that has ended: the pain while doing its item, once a day; by the hour only in the last third of the
/// window.
pub fn after_run(plan: &Plan, history: &History, run: &Run, slots: &[Slot]) -> Option<Question> {
    let item = plan.item(run.item)?;
    if was_rated(history, item.id, run.started) || !run.tried() || !run.dose.kind().rules().asks_pain() {
        return None;
    }
    let of_item: Vec<&Slot> = slots.iter().filter(|slot| slot.slot.item == item.id).collect();
    let by_the_hour = of_item.iter().any(|slot| !slot.at_set_time);
    let place = of_item.iter().position(|slot| Some(slot.slot) == run.slot);
    // An extra run is not asked about by the hour: the window's end asks.
    let early = place.is_none_or(|place| 3 * (place + 1) <= 2 * of_item.len());
    (!by_the_hour || !early).then(|| during(plan, history, item.id))
}

/// Whether an item that is due by the hour was done today, its window has ended, and it was not rated.
fn asks_now_that_it_ended(plan: &Plan, item: &Item, history: &History, now: Stamp, zone: &Offsets, taken: Stamp) -> bool {
    let day = last_window(item, now, zone);
    let slots: Vec<Slot> = day.map(|day| slots::of_item(item, day, zone)).unwrap_or_default();
    let over = |slot: &Slot| slot.closes.is_none_or(|closes| closes.utc_ms <= now.utc_ms);
    let done = |slot: &&Slot| matches!(history.mark(slot, item, now), Mark::Done | Mark::Partly(_));
    let by_the_hour = slots.iter().all(|slot| !slot.at_set_time);
    let first = slots.iter().filter(|slot| slot.due.is_some_and(|due| due.utc_ms >= taken.utc_ms)).find(done);
    let asks = by_the_hour && item.dose.kind().rules().asks_pain();
    let ended = asks && slots.iter().all(over) && now.date() <= plan.prescription.review;
    ended && first.and_then(|slot| slot.due).is_some_and(|due| !was_rated(history, item.id, due))
}

/// The day of the item's last window that began before `now` and belongs to the person's day of `now`.
fn last_window(item: &Item, now: Stamp, zone: &Offsets) -> Option<NaiveDate> {
    let days = [Some(now.date()), now.date().pred_opt()].into_iter().flatten();
    let begins = |day: &NaiveDate| slots::of_item(item, *day, zone).iter().find_map(|slot| slot.due);
    let mut of_today =
        days.filter(|day| begins(day).is_some_and(|due| due.utc_ms <= now.utc_ms && own_day(due) == own_day(now)));
    of_today.next()
}

/// Whether the pain while doing `item` was rated on the person's day of `at` or, for a window over midnight, later.
fn was_rated(history: &History, item: ItemId, at: Stamp) -> bool {
    history.during.iter().rev().any(|rating| rating.of == item && own_day(rating.at) >= own_day(at))
}

#[cfg(test)]
mod tests;
