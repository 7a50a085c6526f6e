//! Ratings of pain in series, with what they say.

use super::{FLARE_POINTS, Flare, PainChange};
use crate::adherence::KofN;
use crate::id::{ComplaintId, ItemId};
use crate::score::Score;
use crate::time::DayNumber;

/// Pain of one complaint.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct PainSeries {
    /// The complaint that was rated.
    pub complaint: ComplaintId,
    /// The ratings at visits, shown beside the series, as (day of issue, score), oldest first.
    pub at_visits: Vec<(DayNumber, Score)>,
    /// One morning's rating for each day, as (day, score), oldest first.
    pub points: Vec<(DayNumber, Score)>,
    /// Whether the pain has changed.
    pub change: PainChange,
    /// Stretches of clearly higher pain in the mornings and while doing the items that serve the complaint, oldest first.
    pub flares: Vec<Flare>,
    /// The days of mornings on which the pain of the day before had not settled.
    pub unsettled: Vec<DayNumber>,
}

impl PainSeries {
    /// The last morning, if it was clearly higher than the median of the last three, which one morning does not move. It is no flare yet,
    /// but whoever reads that the pain is better is to know of it. No source gives a threshold for a single morning: that of a flare is
    /// a proposal of this project, taken here as well.
    pub fn higher_last_morning(&self) -> Option<(DayNumber, Score)> {
        let (now, (day, score)) = (self.change.now?, *self.points.last()?);
        (f64::from(score) >= now + FLARE_POINTS).then_some((day, score))
    }
}

/// Pain while doing one item.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct DuringSeries {
    /// The item.
    pub item: ItemId,
    /// One rating for each day with a session, as (day, score), oldest first: of several the highest.
    pub points: Vec<(DayNumber, Score)>,
    /// Days with a session that were rated, of all days with a session.
    pub known: Option<KofN>,
    /// Number of days with a rating above the limit in force.
    pub above_limit: u16,
}
