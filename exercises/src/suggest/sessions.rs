//! What happened in an item's sessions: one a day, at the rung and dose in use.
//!
//! Rule (our design): all doings of an item on one day are one session, for the rules ask for two sessions on different days.
//! - Met: every run that was gone through met its target on every repetition or trial, timed while it was done, and 80 % or
//!   more of the day's slots were done.
//! - Missed: at least half of the runs gone through fell short of the target. A balance target is a cap and a touch-down is
//!   practice, so there it is missed only where a leg's best of the day stayed under five seconds.
//! - Short: neither. A run that was stopped or cut off says nothing about the target.
//!
//! Pain is the highest rating after the item that day; where none was given after it, the highest rating after another item of
//! the complaint that it serves, for that is asked about once a day. A rating that followed no run says nothing about pain
//! during. The morning after is the first answer on a later day, up to the next session.

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

/// How far a session got.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Reached {
    /// The target, on every repetition.
    Met,
    /// Neither met nor missed.
    Short,
    /// The target was missed.
    Missed,
}

/// One day's doings of an item.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Session {
    /// The day.
    pub day: DayNumber,
    /// How far it got.
    pub reached: Reached,
    /// Pain during or after, 0 to 10; `None`: not answered.
    pub pain: Option<Score>,
    /// Whether it had settled by the next morning; `None`: not answered.
    pub morning: Option<bool>,
}

/// What was said that belongs to an item's sessions.
#[derive(Debug, Clone, Copy)]
pub(super) struct SessionAnswers<'a> {
    pub pain: &'a [PainOn],
    pub settled: &'a [SettledOn],
}

/// The sessions of `item` from its `runs` (at the rung and dose in use) and its `slots`, oldest first.
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
