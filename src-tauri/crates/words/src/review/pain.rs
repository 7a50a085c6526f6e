//! Did it hurt, and how did the activities that the patient named change?

use super::Finding;
use crate::{Key, Number, Words};
use chrono::NaiveDate;
use exercises::change::{ActivitiesTogether, ActivityChange, ActivityVerdict, PainChange, PainVerdict};
use exercises::review::PainSeries;
use exercises::score::Score;
use exercises::time::DayNumber;

impl Words {
    /// "Better", and "6 to 3: 3 points lower, 50%. Minimum change: 2 points and 30%."
    pub fn pain(self, series: &PainSeries) -> Finding {
        let PainChange { verdict, base, now } = series.change;
        let (Some(base), Some(now)) = (base, now) else { return self.pain_few(series.points.len()) };
        let points = self.number((now - base).abs());
        let percent = if base > 0.0 { (100.0 * (now - base).abs() / base).floor() } else { 0.0 };
        let (base, now) = (self.number(base), self.number(now));
        match verdict {
            PainVerdict::Better => {
                self.finding(Key::ReviewBetter, self.review_pain_better(base, now, points, Number::rounded(percent, 0)))
            }
            PainVerdict::NoClearChange => self.finding(Key::ReviewNoClearChange, self.review_pain_no_change(base, now)),
            PainVerdict::Worse => self.finding(Key::ReviewWorse, self.review_pain_worse(base, now, points)),
            PainVerdict::BaselineTooLow => self.finding(Key::ReviewNotInterpretable, self.review_pain_low_base(base, now)),
            PainVerdict::TooFewRatings => self.pain_few(series.points.len()),
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

fn activity_word(verdict: ActivityVerdict) -> Key {
    match verdict {
        ActivityVerdict::Better => Key::ReviewBetter,
        ActivityVerdict::NoClearChange => Key::ReviewNoClearChange,
        ActivityVerdict::Worse => Key::ReviewWorse,
        ActivityVerdict::TooFewRatings => Key::ReviewNotEnoughData,
    }
}
