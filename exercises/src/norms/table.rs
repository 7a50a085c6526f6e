//! The rows that may be shown: the program's rows that were seen in their source, and those of a clinic.

use super::{
    published,
    row::{Ages, Cap, Conditions, Evidence, NormRow, Published},
};
use std::borrow::Cow;

/// A clinic's own table.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ClinicTable {
    /// The source of its figures; shown with them.
    pub source: String,
    /// Its rows.
    pub rows: Vec<ClinicRow>,
}

/// One row of a clinic's table.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ClinicRow {
    /// The conditions under which the times were measured. A row with an open condition never applies.
    pub conditions: Conditions,
    /// Number of people in the group, if known.
    pub people: Option<u32>,
    /// The figure.
    pub published: Published,
}

/// What is wrong with a clinic's table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum TableFault {
    /// It does not name the source of its figures.
    NoSource,
    /// A figure is not a time: not finite, or negative. Rows count from 0.
    NotATime {
        /// The row.
        row: usize,
    },
    /// A figure is longer than the row's cap.
    AboveCap {
        /// The row.
        row: usize,
    },
    /// The oldest age is below the youngest.
    AgesReversed {
        /// The row.
        row: usize,
    },
}

/// The rows to compare with.
#[derive(Debug, Clone, PartialEq)]
pub struct Norms {
    rows: Vec<NormRow>,
}

impl Norms {
    /// The rows that come with the program.
    pub fn built_in() -> Norms {
        Norms { rows: published::rows() }
    }

    /// Adds a clinic's table, whose rows take precedence.
    ///
    /// # Errors
    /// The first [`TableFault`] found; nothing is added then.
    pub fn with(mut self, table: &ClinicTable) -> Result<Norms, TableFault> {
        if table.source.trim().is_empty() {
            return Err(TableFault::NoSource);
        }
        table.rows.iter().enumerate().try_for_each(|(place, row)| check(place, row))?;
        let entered = |row: &ClinicRow| NormRow {
            source: Cow::Owned(table.source.clone()),
            evidence: Evidence::Seen,
            conditions: row.conditions,
            people: row.people,
            published: row.published,
        };
        self.rows.splice(0..0, table.rows.iter().map(entered));
        Ok(self)
    }

    /// The rows that may be shown: those that were seen in their source.
    pub fn shown(&self) -> impl Iterator<Item = &NormRow> {
        self.rows.iter().filter(|row| row.evidence == Evidence::Seen)
    }

    /// The conditions of rows that may not be shown; their figures are not available outside this module.
    pub(super) fn unchecked(&self) -> impl Iterator<Item = &Conditions> {
        self.rows.iter().filter(|row| row.evidence == Evidence::Recalled).map(|row| &row.conditions)
    }
}

fn check(place: usize, row: &ClinicRow) -> Result<(), TableFault> {
    let is_time = |time: f64| time.is_finite() && time >= 0.0;
    let spread = match row.published {
        Published::Mean { sd_s, .. } => sd_s.unwrap_or(0.0),
        Published::Median { .. } => 0.0,
    };
    let middle = row.published.middle_s();
    if !is_time(middle) || !is_time(spread) {
        return Err(TableFault::NotATime { row: place });
    }
    if matches!(row.conditions.cap, Some(Cap::Seconds(cap)) if middle > f64::from(cap)) {
        return Err(TableFault::AboveCap { row: place });
    }
    match row.conditions.ages {
        Some(Ages { from, to: Some(to) }) if to < from => Err(TableFault::AgesReversed { row: place }),
        _ => Ok(()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn row(mean_s: f64, cap: u16, ages: Ages) -> ClinicRow {
        ClinicRow {
            conditions: Conditions {
                ages: Some(ages),
                eyes: None,
                surface: None,
                feet: None,
                arms: None,
                statistic: None,
                cap: Some(Cap::Seconds(cap)),
            },
            people: None,
            published: Published::Mean { mean_s, sd_s: None },
        }
    }

    fn with(source: &str, one: ClinicRow) -> Result<Norms, TableFault> {
        Norms::built_in().with(&ClinicTable { source: source.to_owned(), rows: vec![one] })
    }

    const GROWN: Ages = Ages { from: 18, to: Some(99) };

    #[test]
    fn an_unchecked_row_is_never_shown() {
        let norms = Norms::built_in();
        assert!(norms.unchecked().count() >= 36, "the recalled tables are there");
        assert!(norms.shown().all(|row| row.evidence == Evidence::Seen));
        assert!(norms.shown().all(|row| !row.source.contains("Springer") && !row.source.contains("1984")));
        assert_eq!(norms.shown().count(), 7);
    }

    #[test]
    fn a_clinics_rows_take_precedence() {
        let norms = with("Own measurements, 40 people", row(20.0, 30, GROWN)).expect("sound");
        let first = norms.shown().next().expect("a row");
        assert_eq!(first.source, "Own measurements, 40 people");
    }

    #[test]
    fn a_faulty_table_is_refused() {
        assert_eq!(with(" ", row(20.0, 30, GROWN)), Err(TableFault::NoSource));
        assert_eq!(with("x", row(f64::NAN, 30, GROWN)), Err(TableFault::NotATime { row: 0 }));
        assert_eq!(with("x", row(-1.0, 30, GROWN)), Err(TableFault::NotATime { row: 0 }));
        assert_eq!(with("x", row(31.0, 30, GROWN)), Err(TableFault::AboveCap { row: 0 }));
        let reversed = Ages { from: 70, to: Some(60) };
        assert_eq!(with("x", row(20.0, 30, reversed)), Err(TableFault::AgesReversed { row: 0 }));
    }
}
