//! The state that every part of a review reads.

use chrono::NaiveDate;
use exercises::chart::{DayAxis, NAMES_WIDTH};
use exercises::id::ItemId;
use exercises::review::Review;
use exercises::score::Score;
use exercises::suggest::Suggestion;
use exercises::time::DayNumber;
use leptos::prelude::*;
use wire::clinic::ReviewPage;
use words::Words;
use words::review::{Names, ReviewQuestion};

use super::next_plan::NextPlan;

/// The page, the texts, and the widths of its two columns.
#[derive(Clone, Copy)]
pub struct ReviewContext {
    page: StoredValue<ReviewPage>,
    /// The texts.
    pub words: Words,
    /// Widths of the left and the right column, in CSS pixels.
    pub columns: Signal<(f64, f64)>,
    /// The draft of the next plan.
    pub next: NextPlan,
}

impl ReviewContext {
    /// The context for a page from the shell.
    pub fn new(page: ReviewPage, words: Words, columns: Signal<(f64, f64)>, next: NextPlan) -> ReviewContext {
        ReviewContext { page: StoredValue::new(page), words, columns, next }
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

    /// Dose, level and times of an item in the plan in force; `None` if it is no longer in it.
    pub fn in_force(self, id: ItemId) -> Option<String> {
        self.page(|page| {
            let item = page.plan.as_ref()?.item(id)?;
            let exercise = page.exercises.iter().find(|exercise| exercise.id == item.exercise);
            let lately = page.review.iter().flat_map(|review| &review.items).find(|one| one.item == id);
            Some(self.words.in_force(item, exercise, lately))
        })
    }

    /// What a suggestion becomes once it is known how much the item hurts while it is done.
    pub fn with_pain(self, suggestion: &Suggestion, score: Score) -> Option<Suggestion> {
        self.page(|page| {
            let plan = page.plan.as_ref()?;
            let item = plan.item(suggestion.item)?;
            let exercise = page.exercises.iter().find(|exercise| exercise.id == item.exercise);
            let today = DayNumber::nearest(page.today, plan.header.start);
            Some(suggestion.with_pain(score, item, exercise, today))
        })
    }

    /// The days on which the plan changed, oldest first.
    pub fn changes(self) -> Vec<NaiveDate> {
        self.page(|page| {
            let all = page.earlier.iter().rev().chain(&page.plan);
            let mut days: Vec<NaiveDate> = all.skip(1).map(|plan| plan.header.issued).collect();
            days.dedup();
            days
        })
    }

    /// Where the plan changed on an axis.
    pub fn changes_on(self, axis: &DayAxis) -> Vec<f64> {
        let days = self.changes().into_iter().map(|day| DayNumber::nearest(day, axis.start));
        days.filter(|day| (axis.first..=axis.last).contains(day)).map(|day| axis.x(day) - axis.step * 0.5).collect()
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
