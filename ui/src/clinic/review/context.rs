//! The state that every part of a review reads.

use chrono::NaiveDate;
use exercises::chart::{DayAxis, NAMES_WIDTH};
use exercises::review::Review;
use exercises::time::DayNumber;
use leptos::prelude::*;
use wire::clinic::ReviewPage;
use words::Words;
use words::review::{Names, ReviewQuestion};

/// The page, the texts, and the widths of its two columns.
#[derive(Clone, Copy)]
pub struct ReviewContext {
    page: StoredValue<ReviewPage>,
    /// The texts.
    pub words: Words,
    /// Widths of the left and the right column, in CSS pixels.
    pub columns: Signal<(f64, f64)>,
}

impl ReviewContext {
    /// The context for a page from the shell.
    pub fn new(page: ReviewPage, words: Words, columns: Signal<(f64, f64)>) -> ReviewContext {
        ReviewContext { page: StoredValue::new(page), words, columns }
    }

    /// The context of this page.
    pub fn current() -> ReviewContext {
        expect_context()
    }

    /// Reads the review and its names; `None` before any summary was received.
    pub fn read<T>(self, of: impl FnOnce(&Review, Names<'_>) -> T) -> Option<T> {
        self.page.with_value(|page| page.review.as_ref().map(|review| of(review, Names::of(self.words, page))))
    }

    /// Reads the page.
    pub fn page<T>(self, of: impl FnOnce(&ReviewPage) -> T) -> T {
        self.page.with_value(of)
    }

    /// The heading of an answer.
    pub fn question(self, question: ReviewQuestion) -> &'static str {
        self.words.question(question)
    }

    /// The days of the review, laid out for strings within the left column.
    pub fn strings(self) -> Option<DayAxis> {
        self.days(|start, first, last| DayAxis::for_strings(start, first, last, self.columns.get().0))
    }

    /// The days of the review, laid out for points within the right column; `names` leaves space for names at the lines' ends.
    pub fn points(self, names: bool) -> Option<DayAxis> {
        let room = if names { NAMES_WIDTH } else { 0.0 };
        self.days(|start, first, last| DayAxis::for_points(start, first, last, self.columns.get().1 - room))
    }

    fn days(self, of: impl FnOnce(NaiveDate, DayNumber, DayNumber) -> DayAxis) -> Option<DayAxis> {
        self.read(|review, _| {
            let (first, last) = (review.days.first(), review.days.last());
            let [first, last] = [first, last].map(|day| day.map(|day| day.day).unwrap_or_default());
            of(review.start, first, last)
        })
    }
}
