//! Is the plan working: results of tests by repetitions.

use super::{Finding, Names};
use crate::{Key, Words};
use chrono::NaiveDate;
use exercises::review::CountSeries;
use exercises::statistics::Verdict;

impl Words {
    /// "Rise from a chair, 30 seconds: repetitions in 30 s".
    pub fn count_conditions(self, series: &CountSeries, names: Names<'_>) -> String {
        self.review_count_conditions(&names.exercise(&series.exercise), series.seconds)
    }

    /// "Rising", and "first 10, last 13, best 13; the error of testing oneself is 2.5."
    pub fn count_change(self, series: &CountSeries) -> Finding {
        let [first, last] = [series.days.first(), series.days.last()].map(|day| day.map_or(0, |day| day.count));
        let figures = self.review_count_figures(first, last, series.best);
        let word = match series.change {
            Some(Verdict::Rising) => Key::ReviewRising,
            Some(Verdict::Falling) => Key::ReviewFalling,
            Some(Verdict::NoClearChange | Verdict::AtTheCap) => Key::ReviewCountWithinError,
            Some(Verdict::TooFewData) => Key::ReviewNotEnoughData,
            None => Key::ReviewCountErrorUnknown,
        };
        let error = series.error_tenths.map(|tenths| self.review_count_error(self.number(f64::from(tenths) / 10.0)));
        self.finding(word, error.map_or(figures.clone(), |error| self.two_sentences(&figures, &error)))
    }

    /// "28 October: 10, 11 November: 13", as many as fit a line or two.
    pub fn count_days(self, series: &CountSeries, start: NaiveDate) -> String {
        let last = &series.days[series.days.len().saturating_sub(SHOWN_DAYS)..];
        let days: Vec<String> =
            last.iter().map(|one| self.review_count_on(&self.date(one.day.date(start)), one.count)).collect();
        self.commas(&days)
    }
}

/// Largest number of days that are listed, the last ones.
const SHOWN_DAYS: usize = 8;
