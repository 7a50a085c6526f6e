//! Pain that rises from week to week.
//!
//! Rule (our design, after "pain and stiffness must not rise week to week": Silbernagel 2007, Am J Sports Med 35:897-906;
//! seen on a secondary page): the medians of the last seven days and of the seven days before both lie 2 points or more over
//! the base, the median of the first three days' ratings since the card in force was taken or the last step was made. Each
//! week needs three ratings, and the base lies before both.

use crate::statistics::median;

/// Points over the base.
pub const RISE_POINTS: f64 = 2.0;
/// Ratings that each week needs, and the base.
pub const WEEK_RATINGS: usize = 3;
const WEEK: u16 = 7;

/// Medians of pain that rose.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Rise {
    /// Of the first three days, 0 to 10.
    pub base: f64,
    /// Of the week before the last.
    pub week_before: f64,
    /// Of the last seven days.
    pub last_week: f64,
}

/// Whether pain rose, from `(day, score)`, one a day, oldest first, as seen on `today`.
pub fn rise(points: &[(u16, u8)], today: u16) -> Option<Rise> {
    let two_weeks = today.checked_sub(2 * WEEK)?;
    let middle = |from: u16, until: u16| {
        let within = points.iter().filter(|(day, _)| *day > from && *day <= until);
        let scores: Vec<f64> = within.map(|(_, score)| f64::from(*score)).collect();
        median(&scores).filter(|_| scores.len() >= WEEK_RATINGS)
    };
    let first = points.get(..WEEK_RATINGS).filter(|first| first.iter().all(|(day, _)| *day <= two_weeks))?;
    let base = median(&first.iter().map(|(_, score)| f64::from(*score)).collect::<Vec<_>>())?;
    let (week_before, last_week) = (middle(two_weeks, today - WEEK)?, middle(today - WEEK, today)?);
    let rose = week_before - base >= RISE_POINTS && last_week - base >= RISE_POINTS;
    rose.then_some(Rise { base, week_before, last_week })
}
