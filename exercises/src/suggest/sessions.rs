//! What happened in an item's sessions at the rung and dose in use. All runs of one day are one session.
//!
//! Our design. Runs of an item on one day are taken together, because the rules ask for two sessions on different days.
//! - Met: every run that was completed met its target on every repetition or trial, timed while it was done, and 80 % or more
//!   of the day's slots were done.
//! - Missed: at least half of the completed runs fell short of the target. In a balance exercise a touch-down before the
//!   target is normal practice, so the target is missed only if a leg's best time of the day was under five seconds.
//! - Short: neither met nor missed. A run that was stopped or cut off says nothing about the target.
//!
//! Pain is the highest rating after the item that day. If there is none, it is the highest rating after another item, of the
//! complaint that the item is for, because pain of a complaint is asked about only once a day. A rating that was not asked
//! for after a run says nothing about pain during the exercise. The morning after is the first answer on a later day, up to
//! the day of the next session.

use crate::adherence::{AS_AGREED_PERCENT, SlotCounts, SlotOn, by_day};
use crate::catalogue::kind::WorkForm;
use crate::id::ComplaintId;
use crate::plan::check::MIN_STANCE_TENTHS;
use crate::plan::{BodySide, Item};
use crate::run::{RunEnd, Trial, TrialEnd};
use crate::score::Score;
use crate::summary::{PainOn, RunOn, SettledOn, StanceOn};
use crate::time::DayNumber;
use std::collections::BTreeMap;

/// Whether a session met its target.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Reached {
    /// The target was met on every repetition or trial.
    Met,
    /// Neither met nor missed.
    Short,
    /// The target was missed.
    Missed,
}

/// All runs of an item on one day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Session {
    /// The day of the session.
    pub day: DayNumber,
    /// Whether the target was met.
    pub reached: Reached,
    /// The highest pain rated after the exercise, 0 to 10; `None` if it was not answered.
    pub pain: Option<Score>,
    /// Whether the pain had settled by the next morning; `None` if it was not answered.
    pub morning: Option<bool>,
}

/// The answers that belong to an item's sessions.
#[derive(Debug, Clone, Copy)]
pub(super) struct SessionAnswers<'a> {
    pub pain: &'a [PainOn],
    pub settled: &'a [SettledOn],
}

/// The sessions of `item`, oldest first, from its `runs` at the rung and dose in use and its `slots`.
pub(super) fn sessions<'a>(
    item: &Item,
    runs: &[&RunOn],
    slots: impl IntoIterator<Item = &'a SlotOn>,
    said: SessionAnswers<'_>,
) -> Vec<Session> {
    let mut days: BTreeMap<DayNumber, Vec<&RunOn>> = BTreeMap::new();
    for run in runs {
        days.entry(run.day).or_default().push(run);
    }
    let counted = by_day(slots);
    let of_day = |day: &DayNumber| {
        let place = counted.binary_search_by_key(day, |(of, _)| *of);
        place.map_or_else(|_| SlotCounts::default(), |place| counted[place].1)
    };
    let next_days = days.keys().skip(1).copied().chain([DayNumber(u16::MAX)]);
    days.iter()
        .zip(next_days)
        .map(|((day, runs), next)| Session {
            day: *day,
            reached: reached(item, runs, of_day(day)),
            pain: pain(item, *day, said.pain),
            morning: morning(item.serves, *day, next, said.settled),
        })
        .collect()
}

fn reached(item: &Item, runs: &[&RunOn], slots: SlotCounts) -> Reached {
    let gone_through: Vec<&&RunOn> = runs.iter().filter(|run| run.live && run.end == RunEnd::Completed).collect();
    let met = gone_through.iter().filter(|run| met_target(run)).count();
    if missed(item, &gone_through, met) {
        return Reached::Missed;
    }
    let enough_slots = slots.kept_timed().is_none_or(|share| share.reaches(AS_AGREED_PERCENT));
    let all = !gone_through.is_empty() && met == gone_through.len();
    if all && enough_slots { Reached::Met } else { Reached::Short }
}

fn met_target(run: &RunOn) -> bool {
    let to_the_target = |stance: &StanceOn| {
        let mut real = stance.trials.iter().filter(|trial| trial.end != TrialEnd::CutOff);
        real.all(|trial| trial.end == TrialEnd::Target)
    };
    run.parts.full() && run.stance.as_ref().is_none_or(to_the_target)
}

fn missed(item: &Item, gone_through: &[&&RunOn], met: usize) -> bool {
    if item.dose.kind().form() != WorkForm::Trials {
        return !gone_through.is_empty() && 2 * (gone_through.len() - met) >= gone_through.len();
    }
    let trials = || gone_through.iter().filter_map(|run| run.stance.as_ref()).flat_map(|stance| &stance.trials);
    let best = |leg: BodySide| {
        let real = trials().filter(|trial: &&Trial| trial.leg == leg && trial.end != TrialEnd::CutOff);
        real.map(|trial| trial.held_ms).max()
    };
    let floor = u32::from(MIN_STANCE_TENTHS) * 100;
    item.side.in_turn().iter().flatten().any(|leg| best(*leg).is_some_and(|best| best < floor))
}

fn pain(item: &Item, day: DayNumber, said: &[PainOn]) -> Option<Score> {
    let today = || said.iter().filter(|rating| rating.day == day);
    let after_it = today().filter(|rating| rating.after == Some(item.id)).map(|rating| rating.score).max();
    let of_the_complaint = |rating: &&PainOn| item.serves.is_none_or(|served| rating.complaint == served);
    let after_another = || today().filter(|rating| rating.after.is_some()).filter(of_the_complaint);
    after_it.or_else(|| after_another().map(|rating| rating.score).max())
}

fn morning(serves: Option<ComplaintId>, day: DayNumber, next: DayNumber, said: &[SettledOn]) -> Option<bool> {
    let about_it = said.iter().filter(|answer| serves.is_none_or(|served| answer.complaint == served));
    let answers: Vec<&SettledOn> = about_it.filter(|answer| answer.day > day && answer.day <= next).collect();
    let first = answers.iter().map(|answer| answer.day).min()?;
    Some(answers.iter().filter(|answer| answer.day == first).all(|answer| answer.settled))
}
