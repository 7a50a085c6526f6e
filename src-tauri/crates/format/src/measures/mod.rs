//! What a review measured, one value after the other, as records and tables of others take it: no single sessions, but weeks of an
//! item, and days of what is measured.
//!
//! What was recorded while a clock was wrong is left out, but for alarms; so are the patient's notes, and the figures of the motion sensor,
//! which no record system knows what to make of. What was found at visits has codes of its own: the conditions differ from those at home.

mod balance;
mod code;
mod doing;
mod ratings;
mod visits;

use chrono::{Days, NaiveDate};
use exercises::catalogue::{ExerciseId, Region, RungId};
use exercises::id::{ActivityId, ComplaintId, ItemId};
use exercises::plan::{BodySide, Item, Plan, Side};
use exercises::review::Review;
use exercises::time::DayNumber;

pub(crate) use code::Choice;
pub use code::Code;
pub(crate) use visits::at_visits;

/// A number as it was measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Amount {
    /// A count.
    Whole(u32),
    /// Tenths.
    Tenths(i32),
}

/// The unit of an [`Amount`].
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Unit {
    /// None: a count.
    One,
    Percent,
    Days,
    Seconds,
    /// A rating: 0 to 10, or -5 to 5 for a change.
    Score,
    Degrees,
    Kilograms,
    /// As a clinician wrote it; may be empty.
    Other(String),
}

/// What was measured.
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Value {
    /// An amount in a unit.
    Amount(Amount, Unit),
    /// At least so much: the measuring was ended before.
    AtLeast(Amount, Unit),
    /// One out of a list.
    One(Choice),
    /// Yes or no.
    Yes(bool),
    /// What somebody wrote.
    Text(String),
    /// Nothing can be said, because nothing was planned.
    NonePlanned,
    /// The parts say it all.
    Parts,
}

/// A part of what was measured.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Part {
    pub code: PartCode,
    pub value: Value,
}

/// What a part is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum PartCode {
    Of(Code),
    Chosen(Choice),
}

/// What a measure is about.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum About {
    Plan,
    /// The item, or the exercise of the measure.
    Exercise,
    Complaint(ComplaintId),
    Activity(ActivityId),
    /// A place of the body.
    Place(Region, Side),
    /// A movement, or a measure of the clinician's own, by its name.
    Called(String),
}

/// Whether a measured value is final, corrected, or was entered by mistake.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum State {
    Final,
    /// The week that it is about is not over yet, so that a later review will say more of it.
    GoesOn,
    /// It was changed after it had been noted.
    Corrected,
    /// It was entered by mistake; it is sent without its value.
    TakenBack,
}

/// One thing that was measured.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Measure {
    pub code: Code,
    pub about: About,
    /// The item of the newest card that has it.
    pub item: Option<ItemId>,
    pub exercise: Option<ExerciseId>,
    pub level: Option<RungId>,
    pub side: Option<BodySide>,
    /// The days over which it was measured; `None` if they are not known.
    pub days: Option<(NaiveDate, NaiveDate)>,
    pub value: Value,
    pub parts: Vec<Part>,
    /// Under which condition: eyes open or closed.
    pub method: Option<Choice>,
    pub state: State,
    /// Whether it was found at a visit, by the clinic.
    pub at_visit: bool,
    /// What tells it from others of the same code, item and first day.
    pub which: String,
}

/// A review with the plans that it is about.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Reviewed<'a> {
    pub review: &'a Review,
    pub plan: &'a Plan,
    /// Earlier revisions, newest first.
    pub earlier: &'a [Plan],
}

/// All that was measured, in the order of the review's questions.
pub(crate) fn all(of: Reviewed<'_>) -> Vec<Measure> {
    let mut all = ratings::alarms(of);
    all.extend(doing::weeks(of));
    all.extend(doing::gaps(of));
    all.extend(doing::as_needed(of));
    all.extend(ratings::mornings(of));
    all.extend(ratings::during(of));
    all.extend(balance::stance(of));
    all.extend(balance::counts(of));
    all.extend(ratings::activities(of));
    all.extend(doing::reasons(of));
    all
}

impl Measure {
    fn new(code: Code, about: About, value: Value) -> Measure {
        Measure {
            code,
            about,
            item: None,
            exercise: None,
            level: None,
            side: None,
            days: None,
            value,
            parts: Vec::new(),
            method: None,
            state: State::Final,
            at_visit: false,
            which: String::new(),
        }
    }

    fn on(self, day: NaiveDate) -> Measure {
        self.over(day, day)
    }

    /// Over the week that begins on this Monday, as far as the review covers it.
    fn in_week(self, of: &Reviewed<'_>, monday: NaiveDate) -> Measure {
        let sunday = monday.checked_add_days(Days::new(6)).unwrap_or(monday);
        let last = of.date(of.review.until);
        // A week of which the review covers less or more is the same week.
        let state = if last < sunday { State::GoesOn } else { State::Final };
        let measure = Measure { which: monday.to_string(), state, ..self };
        measure.over(monday.max(of.review.start), sunday.min(last).max(monday))
    }

    fn over(self, from: NaiveDate, to: NaiveDate) -> Measure {
        Measure { days: Some((from, to)), ..self }
    }
}

impl Part {
    fn count(code: Code, count: impl Into<u32>) -> Part {
        Part { code: PartCode::Of(code), value: Value::Amount(Amount::Whole(count.into()), Unit::One) }
    }

    fn new(code: Code, value: Value) -> Part {
        Part { code: PartCode::Of(code), value }
    }
}

impl Value {
    fn whole(amount: impl Into<u32>, unit: Unit) -> Value {
        Value::Amount(Amount::Whole(amount.into()), unit)
    }
}

impl<'a> Reviewed<'a> {
    fn date(&self, day: DayNumber) -> NaiveDate {
        day.date(self.review.start)
    }

    /// The item as in the newest revision that has it.
    pub fn find(&self, id: ItemId) -> Option<&'a Item> {
        [self.plan].into_iter().chain(self.earlier).find_map(|plan| plan.item(id))
    }

    /// A measure of an item.
    fn of_item(&self, code: Code, id: ItemId, value: Value) -> Measure {
        let item = self.find(id);
        let exercise = item.map(|item| item.exercise.clone());
        let side = item.and_then(|item| match item.side.in_turn() {
            [only] => *only,
            _ => None,
        });
        let level = item.and_then(|item| item.rung.clone());
        Measure { item: Some(id), exercise, level, side, ..Measure::new(code, About::Exercise, value) }
    }

    /// The item that a series belongs to: with its exercise and level, else with its exercise.
    fn item_with(&self, exercise: &ExerciseId, level: Option<&RungId>, side: Option<BodySide>) -> Option<ItemId> {
        let fits = |item: &&Item| {
            let on_side = side.is_none() || item.side.in_turn().contains(&side);
            item.exercise == *exercise && on_side
        };
        let of = |plan: &'a Plan| {
            let same = || plan.prescription.items.iter().filter(fits);
            same().find(|item| item.rung.as_ref() == level).or_else(|| same().next()).map(|item| item.id)
        };
        [self.plan].into_iter().chain(self.earlier).find_map(of)
    }
}
