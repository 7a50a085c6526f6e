//! One row of a table of norms.

use crate::catalogue::{Arms, Eyes, Feet, Surface};
use crate::plan::AgeBand;
use std::borrow::Cow;

/// Whether a figure was seen in its source. Only such figures are shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Evidence {
    /// Seen in the paper, its abstract or a table of it; or entered by a clinic from its own source.
    Seen,
    /// Quoted from memory and not checked against the paper: never shown.
    Recalled,
}

/// A range of ages in whole years, both ends included.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Ages {
    /// Youngest age.
    pub from: u8,
    /// Oldest age; `None` if there is no upper limit.
    pub to: Option<u8>,
}

impl Ages {
    /// Whether every age of `other` lies in this range.
    pub fn contain(&self, other: Ages) -> bool {
        let upper = match (self.to, other.to) {
            (None, _) => true,
            (Some(mine), Some(others)) => others <= mine,
            (Some(_), None) => false,
        };
        self.from <= other.from && upper
    }
}

impl From<AgeBand> for Ages {
    fn from(band: AgeBand) -> Ages {
        let (from, to) = band.ages();
        Ages { from, to }
    }
}

/// How one figure was computed from several trials.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Statistic {
    /// The longest of this many trials.
    BestOf(u8),
    /// The mean of this many trials.
    MeanOf(u8),
    /// The median of this many trials.
    MedianOf(u8),
}

/// The longest possible trial.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Cap {
    /// A trial ends after this many seconds.
    Seconds(u16),
    /// A trial has no time limit.
    None,
}

/// The conditions that have to be the same.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Condition {
    /// Age.
    Age,
    /// Eyes.
    Eyes,
    /// Surface.
    Surface,
    /// Feet.
    Feet,
    /// Arms.
    Arms,
    /// Statistic.
    Statistic,
    /// Cap.
    Cap,
}

/// The conditions under which times were measured; each is `None` if it is not stated or not known.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Conditions {
    /// The ages of the people.
    pub ages: Option<Ages>,
    /// Eyes open or closed.
    pub eyes: Option<Eyes>,
    /// The surface that they stood on.
    pub surface: Option<Surface>,
    /// What they wore on the feet.
    pub feet: Option<Feet>,
    /// Where the arms were.
    pub arms: Option<Arms>,
    /// How one figure was computed from several trials.
    pub statistic: Option<Statistic>,
    /// The longest possible trial.
    pub cap: Option<Cap>,
}

/// The figure of a group, seconds.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Published {
    /// A mean and, if given, its standard deviation.
    Mean {
        /// Seconds.
        mean_s: f64,
        /// Seconds; about as large as the mean if times are skewed.
        sd_s: Option<f64>,
    },
    /// A median.
    Median {
        /// Seconds.
        median_s: f64,
    },
}

impl Published {
    /// The mean or the median, seconds.
    pub fn middle_s(&self) -> f64 {
        match self {
            Published::Mean { mean_s, .. } => *mean_s,
            Published::Median { median_s } => *median_s,
        }
    }
}

/// One row.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct NormRow {
    /// Its source: authors, year, journal.
    pub source: Cow<'static, str>,
    /// Whether the figures were seen in the source.
    pub evidence: Evidence,
    /// The conditions under which the times were measured.
    pub conditions: Conditions,
    /// Number of people in the group, if given.
    pub people: Option<u32>,
    /// The figure.
    pub published: Published,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_age_group_is_within_a_range_or_not() {
        let sixties = Ages { from: 60, to: Some(69) };
        assert!(sixties.contain(AgeBand::From60.into()) && sixties.contain(AgeBand::From65.into()));
        assert!(!sixties.contain(AgeBand::From70.into()) && !sixties.contain(AgeBand::From80.into()));
        assert!(Ages { from: 80, to: None }.contain(AgeBand::From80.into()));
        assert!(!Ages { from: 80, to: Some(99) }.contain(AgeBand::From80.into()));
    }

    #[test]
    fn age_groups_follow_each_other_without_a_gap() {
        for pair in AgeBand::ALL.windows(2) {
            let (below, above) = (Ages::from(pair[0]), Ages::from(pair[1]));
            assert_eq!(below.to.map(|to| to + 1), Some(above.from));
        }
    }
}
