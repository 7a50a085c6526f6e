//! Did it hurt, and how did the activities that the patient named change?

use super::{Finding, Names, upper};
use crate::{Key, Number, Words};
use chrono::NaiveDate;
use exercises::change::{ActivitiesTogether, ActivityChange, ActivityVerdict, Flare, PainChange, PainVerdict};
use exercises::id::ComplaintId;
use exercises::review::{DuringSeries, PainSeries, Review};
use exercises::score::Score;
use exercises::time::DayNumber;

/// Number of ratings while doing an item that are listed.
const LAST_RATINGS: usize = 3;

impl Words {
    /// "Better", and "6 to 3 (22 November): 3 points lower, 50%. Minimum change: 2 points and 30%."
    pub fn pain(self, series: &PainSeries, start: NaiveDate) -> Finding {
        let PainChange { verdict, base, now, last_day } = series.change;
        let (Some(base), Some(now), Some(last)) = (base, now, last_day) else { return self.pain_few(series.points.len()) };
        let date = self.date(last.date(start));
        let points = self.number((now - base).abs());
        let percent = if base > 0.0 { 100.0 * (now - base).abs() / base } else { 0.0 };
        let (base, now) = (self.number(base), self.number(now));
        match verdict {
            PainVerdict::Better => {
                let percent = Number::rounded(percent, 0);
                self.finding(Key::ReviewBetter, self.review_pain_better(base, now, &date, points, percent))
            }
            PainVerdict::NoClearChange => {
                self.finding(Key::ReviewNoClearChange, self.review_pain_no_change(base, now, &date))
            }
            PainVerdict::Worse => self.finding(Key::ReviewWorse, self.review_pain_worse(base, now, &date, points)),
            PainVerdict::NotKnownLately => self.finding(Key::ReviewNotKnownLately, self.review_pain_last_rated(&date)),
            PainVerdict::TooFewRatings => self.pain_few(series.points.len()),
        }
    }

    /// What else the ratings of a complaint say: flares, and mornings on which the pain had not settled.
    pub fn pain_details(self, series: &PainSeries, names: Names<'_>, start: NaiveDate) -> Vec<String> {
        let flares = series.flares.iter().map(|flare| self.flare(flare, names.least_limit(series.complaint), start));
        let unsettled = Some(series.unsettled.len()).filter(|days| *days > 0).map(|days| self.review_pain_unsettled(days));
        flares.chain(self.last_morning(series, start)).chain(unsettled).collect()
    }

    /// "The last morning, 28 March, was higher: 9."; `None` if it was not.
    pub(super) fn last_morning(self, series: &PainSeries, start: NaiveDate) -> Option<String> {
        let (day, score) = series.higher_last_morning()?;
        Some(self.review_pain_last_morning(&self.date(day.date(start)), score))
    }

    /// "Clearly higher from 31 October to 9 November: 6 to 8."
    fn flare(self, flare: &Flare, limit: Option<Score>, start: NaiveDate) -> String {
        let [from, until] = [flare.from, flare.to].map(|day| self.date(day.date(start)));
        let height = match flare.least == flare.peak {
            true => flare.peak.to_string(),
            false => self.review_pain_flare_height(flare.least, flare.peak),
        };
        match limit.filter(|limit| flare.peak > *limit) {
            Some(limit) => self.review_pain_flare_over(&from, &until, &height, limit),
            None => self.review_pain_flare(&from, &until, &height),
        }
    }

    /// The flares of all complaints, each with the complaint: they belong beside the alarms.
    pub fn flares(self, review: &Review, names: Names<'_>) -> Vec<String> {
        let all = review.pain.iter().flat_map(|series| series.flares.iter().map(move |flare| (series.complaint, flare)));
        let line = |(complaint, flare): (ComplaintId, &Flare)| {
            let flare = self.flare(flare, names.least_limit(complaint), review.start);
            self.named_text(&upper(&names.complaint(complaint)), &flare)
        };
        all.map(line).collect()
    }

    /// Whether the pain while doing an item is asked about: of breathing, a rest or a reminder, that it was not rated says nothing.
    pub fn is_asked(self, series: &DuringSeries, names: Names<'_>) -> bool {
        !series.points.is_empty() || names.find(series.item).is_none_or(|item| item.dose.kind().rules().asks_pain())
    }

    /// "While doing Sit tall: rated on 4 of 12 days. Newest first: 6 (28 October), 3 (25 October)." and how often above the limit.
    pub fn during(self, series: &DuringSeries, names: Names<'_>, start: NaiveDate) -> String {
        let name = names.item(series.item);
        let Some(known) = series.known.filter(|_| !series.points.is_empty()) else { return self.review_during_none(&name) };
        let last = series.points.iter().rev().take(LAST_RATINGS);
        let last: Vec<String> =
            last.map(|(day, score)| self.review_rating_on_date(score, &self.date(day.date(start)))).collect();
        let line = self.review_during(&name, known.k, known.n, &self.commas(&last));
        match series.above_limit {
            0 => line,
            days => self.two_sentences(&line, &self.review_during_above_limit(days)),
        }
    }

    fn pain_few(self, days: usize) -> Finding {
        let figures = if days == 0 { self.text(Key::ReviewPainNone).to_owned() } else { self.review_pain_few(days) };
        self.finding(Key::ReviewNotEnoughData, figures)
    }

    /// "At the visit: 6 (28 October), 4 (25 November)."
    pub fn at_visits(self, ratings: &[(DayNumber, Score)], start: NaiveDate) -> Option<String> {
        let list: Vec<String> =
            ratings.iter().map(|(day, score)| self.review_rating_on_date(score, &self.date(day.date(start)))).collect();
        (!list.is_empty()).then(|| self.review_at_visits(&self.commas(&list)))
    }

    /// "No clear change", and "4 to 6. Minimum change: 3 points."
    pub fn activity_change(self, change: &ActivityChange) -> Finding {
        let (Some(base), Some(now)) = (change.base, change.now) else {
            return self.finding(Key::ReviewNotEnoughData, self.text(Key::ReviewActivityNotAgain).to_owned());
        };
        self.finding(activity_word(change.verdict), self.review_activity_changed(base, now))
    }

    /// The mean of all activities that were rated at both ends.
    pub fn activities_together(self, all: &ActivitiesTogether) -> Finding {
        let (base, now) = (self.number(all.base), self.number(all.now));
        self.finding(activity_word(all.verdict), self.review_activity_together(all.activities, base, now))
    }
}

pub(super) fn activity_word(verdict: ActivityVerdict) -> Key {
    match verdict {
        ActivityVerdict::Better => Key::ReviewBetter,
        ActivityVerdict::NoClearChange => Key::ReviewNoClearChange,
        ActivityVerdict::Worse => Key::ReviewWorse,
        ActivityVerdict::TooFewRatings => Key::ReviewNotEnoughData,
    }
}
