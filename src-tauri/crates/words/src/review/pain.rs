//! Did it hurt, and what of the activities that the patient named?

use super::adherence::on;
use super::{Finding, Sentence};
use crate::Words;
use chrono::NaiveDate;
use exercises::change::{ActivitiesTogether, ActivityChange, ActivityVerdict, PainChange, PainVerdict};
use exercises::review::PainSeries;

impl Words {
    /// "Better", and "6 to 3: 3 points less, 50 %. A change counts from 2 points and 30 % on."
    pub fn pain(self, series: &PainSeries) -> Finding {
        let PainChange { verdict, base, now } = series.change;
        let (Some(base), Some(now)) = (base, now) else { return self.pain_few(series.points.len()) };
        let (word, figures) = match verdict {
            PainVerdict::Better => (Sentence::Better, Sentence::PainBetter),
            PainVerdict::NoClearChange => (Sentence::NoClearChange, Sentence::PainNoChange),
            PainVerdict::Worse => (Sentence::Worse, Sentence::PainWorse),
            PainVerdict::BaselineTooLow => (Sentence::NoCall, Sentence::PainLowBase),
            PainVerdict::TooFewRatings => return self.pain_few(series.points.len()),
        };
        let points = self.number((now - base).abs());
        let percent = if base > 0.0 { (100.0 * (now - base).abs() / base).floor() } else { 0.0 };
        let (base, now) = (self.number(base), self.number(now));
        self.finding(word, figures, &[("base", &base), ("now", &now), ("points", &points), ("percent", &percent)])
    }

    fn pain_few(self, days: usize) -> Finding {
        let figures = if days == 0 { Sentence::PainNone } else { Sentence::PainFew };
        self.finding(Sentence::TooFewData, figures, &[("n", &days)])
    }

    /// "At the visit: 6 (28 October), 4 (25 November)."
    pub fn at_visits(self, ratings: &[(u16, u8)], start: NaiveDate) -> Option<String> {
        let list: Vec<String> =
            ratings.iter().map(|(day, score)| format!("{score} ({})", self.date(on(start, *day)))).collect();
        (!list.is_empty()).then(|| self.filled(Sentence::AtVisits, &[("list", &list.join(", "))]))
    }

    /// "No clear change", and "4 to 6. A change counts from 3 points on."
    pub fn activity_change(self, change: &ActivityChange) -> Finding {
        let (Some(base), Some(now)) = (change.base, change.now) else {
            return self.finding(Sentence::TooFewData, Sentence::ActivityNotAgain, &[]);
        };
        self.finding(activity_word(change.verdict), Sentence::ActivityChanged, &[("base", &base), ("now", &now)])
    }

    /// The mean of all activities that were rated at both ends.
    pub fn activities_together(self, all: &ActivitiesTogether) -> Finding {
        let (base, now) = (self.number(all.base), self.number(all.now));
        let values: [(&str, &dyn std::fmt::Display); 3] = [("n", &all.activities), ("base", &base), ("now", &now)];
        self.finding(activity_word(all.verdict), Sentence::ActivityTogether, &values)
    }
}

fn activity_word(verdict: ActivityVerdict) -> Sentence {
    match verdict {
        ActivityVerdict::Better => Sentence::Better,
        ActivityVerdict::NoClearChange => Sentence::NoClearChange,
        ActivityVerdict::Worse => Sentence::Worse,
        ActivityVerdict::TooFewRatings => Sentence::TooFewData,
    }
}
