//! What patient and clinician look at together: of each question the one answer that matters most.

use super::{ActivitySeries, CountSeries, PainSeries, Review, ReviewAlarm, StanceSeries};
use crate::adherence::{ItemAdherence, Level, Shares};
use crate::change::{ActivityVerdict, PainVerdict};
use crate::id::ItemId;
use crate::log::Barrier;
use crate::statistics::Verdict;
use crate::time::DayNumber;

/// The answers.
#[derive(Debug, Clone, PartialEq)]
pub struct InShort<'a> {
    /// The alarms that no card has cleared, newest first: they are talked about before anything else.
    pub alarms: Vec<&'a ReviewAlarm>,
    /// Was it done? `None` if nothing was owed.
    pub done: Option<DoneInShort>,
    /// The complaint that most needs attention: one that became worse before one that became better, and that before one that did not
    /// clearly change. `None` if no complaint is followed.
    pub pain: Option<&'a PainSeries>,
    /// What most shows whether it is working. `None` if nothing can be compared yet.
    pub progress: Option<Progress<'a>>,
    /// What got in the way, and how often it was said: pain or being unwell, if either was, and the most frequent of the other reasons.
    pub barriers: Vec<(Barrier, u16)>,
}

/// How much of all exercises together was done: of the last fourteen days where there are as many, else of the whole period.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct DoneInShort {
    /// Whether it is of the last fourteen days.
    pub lately: bool,
    /// Sessions owed.
    pub owed: u32,
    /// Sessions done in full.
    pub in_full: u32,
    /// Sessions done in part.
    pub in_part: u32,
    /// The verdict on the shares, summed.
    pub level: Level,
    /// The first day since when any exercise is done much less; the latest of all exercises.
    pub since: Option<DayNumber>,
}

/// Something that shows whether the plan works.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Progress<'a> {
    /// A named activity.
    Activity(&'a ActivitySeries),
    /// Seconds of balance.
    Stance(&'a StanceSeries),
    /// Repetitions of a test.
    Count(&'a CountSeries),
}

/// The answers of a review. `is_exercise` tells what trains from care and prompts, which count for nothing here.
pub fn in_short<'a>(review: &'a Review, is_exercise: impl Fn(ItemId) -> bool) -> InShort<'a> {
    let items = review.adherence.iter().filter(|item| item.in_force && is_exercise(item.item));
    InShort {
        alarms: review.alarms.iter().filter(|alarm| !alarm.cleared).collect(),
        done: done(items.collect()),
        pain: review.pain.iter().min_by_key(|series| pain_rank(series.change.verdict)),
        progress: progress(review),
        barriers: barriers(&review.barriers),
    }
}

/// Of the reasons in the order of a review.
fn barriers(all: &[(Barrier, u16)]) -> Vec<(Barrier, u16)> {
    let said = || all.iter().copied().filter(|(barrier, _)| *barrier != Barrier::RatherNotSay);
    let (serious, other) = (said().find(|(barrier, _)| barrier.first()), said().find(|(barrier, _)| !barrier.first()));
    serious.into_iter().chain(other).collect()
}

fn done(items: Vec<&ItemAdherence>) -> Option<DoneInShort> {
    let lately = items.iter().any(|item| item.last14.is_some());
    // In full, in part, and the shares of one item. An item that was owed nothing lately adds nothing to the others' last days.
    let counts = |item: &&ItemAdherence| match item.last14 {
        Some(of) => Some((of.in_full, of.done.k - of.in_full, of.shares)),
        None if lately => None,
        None => Some((item.kept?.k, item.slots.partly, item.shares?)),
    };
    let zero = (0_u32, 0_u32, Shares { thousandths: 0, n: 0 });
    let (in_full, in_part, shares) = items.iter().filter_map(counts).fold(zero, |sum, one| {
        let shares =
            Shares { thousandths: sum.2.thousandths.saturating_add(one.2.thousandths), n: sum.2.n.saturating_add(one.2.n) };
        (sum.0.saturating_add(one.0), sum.1.saturating_add(one.1), shares)
    });
    let since = items.iter().filter_map(|item| item.broke_off).map(|broke| broke.since).max();
    (shares.n > 0).then(|| DoneInShort { lately, owed: shares.n, in_full, in_part, level: shares.level(), since })
}

fn pain_rank(verdict: PainVerdict) -> u8 {
    match verdict {
        PainVerdict::Worse => 0,
        PainVerdict::Better => 1,
        PainVerdict::NoClearChange => 2,
        PainVerdict::NotKnownLately => 3,
        PainVerdict::TooFewRatings => 4,
    }
}

/// What became worse before what became better, and an activity of the patient's own before what was measured.
fn progress(review: &Review) -> Option<Progress<'_>> {
    let activities = review.activities.iter().filter_map(|series| {
        let rank = match series.change.verdict {
            ActivityVerdict::Worse => 0,
            ActivityVerdict::Better => 2,
            ActivityVerdict::NoClearChange => 4,
            ActivityVerdict::TooFewRatings => return None,
        };
        Some((rank, Progress::Activity(series)))
    });
    let trend = |verdict| match verdict {
        Verdict::Falling => Some(1),
        Verdict::Rising => Some(3),
        Verdict::AtTheCap => Some(5),
        Verdict::NoClearChange => Some(6),
        Verdict::TooFewData => None,
    };
    let stances = review.balance.iter().filter(|series| series.change.figures.is_some());
    let stances = stances.filter_map(|series| Some((trend(series.change.verdict)?, Progress::Stance(series))));
    let counts = review.counts.iter().filter(|series| series.days.len() > 1);
    let counts = counts.filter_map(|series| Some((trend(series.change?)?, Progress::Count(series))));
    activities.chain(stances).chain(counts).min_by_key(|(rank, _)| *rank).map(|(_, progress)| progress)
}

#[cfg(test)]
mod tests;
