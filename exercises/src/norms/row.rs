//! One row of a table of norms.

use crate::catalogue::{Arms, Eyes, Feet, Surface};
use crate::plan::AgeBand;
use std::borrow::Cow;

/// Whether a figure was seen in its source. Decides whether anybody may see it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Evidence {
    /// Seen in the paper, its abstract or a table of it; or entered by a clinic from its own source.
    Seen,
    /// Recalled and not checked against the paper: never shown.
    Recalled,
}

/// Whole years, both ends included.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Ages {
    /// Youngest.
    pub from: u8,
    /// Oldest; `None` where the band has no upper end.
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

/// How one figure was made of several trials.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Statistic {
    /// The longest of so many.
    BestOf(u8),
    /// The mean of so many.
    MeanOf(u8),
    /// The median of so many.
    MedianOf(u8),
}

/// When a trial was ended at the latest.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Cap {
    /// After so many seconds.
    Seconds(u16),
    /// Never.
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

/// How times were taken; `None` where it is not stated, or not known.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Conditions {
    /// Whose times.
    pub ages: Option<Ages>,
    /// Eyes open or closed.
    pub eyes: Option<Eyes>,
    /// What was stood on.
    pub surface: Option<Surface>,
    /// What was on the feet.
    pub feet: Option<Feet>,
    /// Where the arms were.
    pub arms: Option<Arms>,
    /// How one figure was made.
    pub statistic: Option<Statistic>,
    /// When a trial was ended at the latest.
    pub cap: Option<Cap>,
}

/// The figure of a group, seconds.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Published {
    /// A mean and, where given, its standard deviation.
    Mean {
        /// Seconds.
        mean_s: f64,
        /// Seconds; about as large as the mean where times are skewed.
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
    /// Where it is from: authors, year, journal.
    pub source: Cow<'static, str>,
    /// Whether that was seen.
    pub evidence: Evidence,
    /// How the times were taken.
    pub conditions: Conditions,
    /// People in the group, where given.
    pub people: Option<u32>,
    /// The figure.
    pub published: Published,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_band_lies_in_a_range_or_it_does_not() {
        let sixties = Ages { from: 60, to: Some(69) };
        assert!(sixties.contain(AgeBand::From60.into()) && sixties.contain(AgeBand::From65.into()));
        assert!(!sixties.contain(AgeBand::From70.into()) && !sixties.contain(AgeBand::From80.into()));
        assert!(Ages { from: 80, to: None }.contain(AgeBand::From80.into()));
        assert!(!Ages { from: 80, to: Some(99) }.contain(AgeBand::From80.into()));
    }

    #[test]
    fn bands_follow_each_other_without_a_hole() {
        for pair in AgeBand::ALL.windows(2) {
            let (below, above) = (Ages::from(pair[0]), Ages::from(pair[1]));
            assert_eq!(below.to.map(|to| to + 1), Some(above.from));
        }
    }
}
