//! The line at the top of the review: each answer in a word and a figure.

use super::{Names, upper};
use crate::{Key, Words};
use exercises::adherence::{ItemAdherence, Level};
use exercises::change::{ActivityVerdict, PainVerdict};
use exercises::review::{PainSeries, Review};
use exercises::statistics::Verdict;
use exercises::suggest::Proposal;

/// One answer of the line.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct StripCell {
    /// What it is about.
    pub title: &'static str,
    /// The answer in a word.
    pub word: String,
    /// The figure that it is based on; empty if there is none.
    pub figure: String,
    /// Whether it needs attention.
    pub attention: bool,
}

impl Words {
    /// Done, pain, activities, balance, alarms and proposals. Where several things are answered, the one that most needs attention
    /// is named.
    pub fn review_strip(self, review: &Review, names: Names<'_>) -> Vec<StripCell> {
        vec![
            self.strip_done(review, names),
            self.strip_pain(review, names),
            self.strip_activities(review, names),
            self.strip_balance(review),
            self.strip_alarms(review),
            self.strip_proposals(review),
        ]
    }

    fn cell(self, title: Key, word: Key, figure: String, attention: bool) -> StripCell {
        StripCell { title: self.text(title), word: self.text(word).to_owned(), figure, attention }
    }

    fn strip_done(self, review: &Review, names: Names<'_>) -> StripCell {
        let share = |item: &&ItemAdherence| item.shares.and_then(|shares| shares.thousandths.checked_div(shares.n));
        let owed = |item: &&ItemAdherence| item.in_force && item.shares.is_some() && names.is_exercise(item.item);
        let least = review.adherence.iter().filter(owed).min_by_key(share);
        let Some((item, kept, shares)) = least.and_then(|item| Some((item, item.kept?, item.shares?))) else {
            return self.cell(Key::ReviewStripDone, Key::ReviewNothingDue, String::new(), false);
        };
        // The word and the figure are of the same days.
        let shares = item.last14.map_or(shares, |lately| lately.shares);
        let word = match shares.level() {
            Level::AsAgreed => Key::ReviewAsAgreed,
            Level::Partly => Key::ReviewPartly,
            Level::Little => Key::ReviewLittle,
        };
        let name = names.item(item.item);
        let figure = match item.last14 {
            Some(lately) => self.review_strip_last_14_days(&name, lately.done.k, lately.done.n),
            None => self.review_strip_of(&name, kept.k, kept.n),
        };
        self.cell(Key::ReviewStripDone, word, figure, shares.level() == Level::Little || item.broke_off.is_some())
    }

    fn strip_pain(self, review: &Review, names: Names<'_>) -> StripCell {
        let rank = |verdict: PainVerdict| match verdict {
            PainVerdict::Worse => 0,
            PainVerdict::NoClearChange => 1,
            PainVerdict::Better => 2,
            PainVerdict::NotKnownLately => 3,
            PainVerdict::TooFewRatings => 4,
        };
        let Some(worst) = review.pain.iter().min_by_key(|series| rank(series.change.verdict)) else {
            return self.cell(Key::ReviewStripPain, Key::ReviewNoComplaint, String::new(), false);
        };
        let name = upper(&names.complaint(worst.complaint));
        let figure = match (worst.change.base, worst.change.now) {
            (Some(base), Some(now)) => self.review_strip_change(&name, self.number(base), self.number(now)),
            _ => name,
        };
        let last = worst.higher_last_morning().map(|(_, score)| self.review_strip_last_morning(score));
        let figure = self.commas(&[Some(figure), last].into_iter().flatten().collect::<Vec<_>>());
        let word = match worst.change.verdict {
            PainVerdict::Worse => Key::ReviewWorse,
            PainVerdict::NoClearChange => Key::ReviewNoClearChange,
            PainVerdict::Better => Key::ReviewBetter,
            PainVerdict::NotKnownLately => Key::ReviewNotKnownLately,
            PainVerdict::TooFewRatings => Key::ReviewNotEnoughData,
        };
        let is_high = |one: &PainSeries| !one.flares.is_empty() || one.higher_last_morning().is_some();
        let attention = worst.change.verdict == PainVerdict::Worse || review.pain.iter().any(is_high);
        self.cell(Key::ReviewStripPain, word, figure, attention)
    }

    fn strip_activities(self, review: &Review, names: Names<'_>) -> StripCell {
        let rank = |verdict: ActivityVerdict| match verdict {
            ActivityVerdict::Worse => 0,
            ActivityVerdict::NoClearChange => 1,
            ActivityVerdict::Better => 2,
            ActivityVerdict::TooFewRatings => 3,
        };
        let Some(worst) = review.activities.iter().min_by_key(|series| rank(series.change.verdict)) else {
            return self.cell(Key::ReviewStripActivities, Key::ReviewNoActivity, String::new(), false);
        };
        let name = upper(&names.activity(worst.activity));
        let figure = match (worst.change.base, worst.change.now) {
            (Some(base), Some(now)) => {
                self.review_strip_change(&name, self.number(f64::from(base)), self.number(f64::from(now)))
            }
            _ => name,
        };
        let verdict = worst.change.verdict;
        let word = super::pain::activity_word(verdict);
        self.cell(Key::ReviewStripActivities, word, figure, verdict == ActivityVerdict::Worse)
    }

    fn strip_balance(self, review: &Review) -> StripCell {
        let rank = |verdict: Verdict| match verdict {
            Verdict::Falling => 0,
            Verdict::Rising => 1,
            Verdict::AtTheCap => 2,
            Verdict::NoClearChange => 3,
            _ => 4,
        };
        let Some(series) = review.balance.iter().min_by_key(|series| rank(series.change.verdict)) else {
            return self.cell(Key::ReviewStripBalance, Key::ReviewNoBalance, String::new(), false);
        };
        let said = self.stance(series);
        let leg = upper(&self.leg_or_both(series.leg));
        let figure = series.change.figures.map_or(leg.clone(), |of| {
            let (from, to) = self.ends(series, &of);
            self.review_strip_seconds(&leg, from, to)
        });
        StripCell {
            title: self.text(Key::ReviewStripBalance),
            word: said.word,
            figure,
            attention: series.change.verdict == Verdict::Falling,
        }
    }

    fn strip_alarms(self, review: &Review) -> StripCell {
        let open: Vec<_> = review.alarms.iter().filter(|alarm| !alarm.cleared).collect();
        let (word, figure) = match open.first() {
            Some(first) => (self.review_strip_open_alarms(open.len()), self.trouble_noted(first.trouble).to_owned()),
            None if review.alarms.is_empty() => (self.text(Key::ReviewStripNoAlarm).to_owned(), String::new()),
            None => (self.text(Key::ReviewStripCleared).to_owned(), String::new()),
        };
        StripCell { title: self.text(Key::ReviewStripAlarms), word, figure, attention: !open.is_empty() }
    }

    /// "Talk 1, progress 2", the most urgent in bold.
    fn strip_proposals(self, review: &Review) -> StripCell {
        let rank = |proposal: &Proposal| match proposal {
            Proposal::Talk => 0,
            Proposal::Ease(_) => 1,
            Proposal::Reduce(_) => 2,
            Proposal::Progress(_) => 3,
            Proposal::Keep => 4,
        };
        let count = |place| review.items.iter().filter(move |one| rank(&one.proposal) == place).collect::<Vec<_>>();
        let mut said = (0..5).map(count).filter_map(|all| {
            // A stop is named before what is only to be talked about.
            let stop = all.iter().find(|one| self.proposal(one) == self.text(Key::ReviewStopAndTalk));
            let first = stop.or(all.first())?;
            Some(self.review_strip_count(self.proposal(first), all.len()))
        });
        let word = said.next().unwrap_or_else(|| self.text(Key::ReviewNothingDue).to_owned());
        let figure = self.commas(&said.collect::<Vec<_>>());
        let attention = review.items.iter().any(|one| one.proposal == Proposal::Talk);
        StripCell { title: self.text(Key::ReviewStripNext), word, figure, attention }
    }
}
