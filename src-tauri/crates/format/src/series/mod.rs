//! A series of one value a day as CSV: the header `day,value`, then one day a line, each later than the one before.
//!
//! A day is a whole number, counted from anywhere, or a date such as `2026-03-01` (RFC 3339, full-date); one file has one
//! kind. A value is a finite number in the series' own unit.

use crate::number_csv::{Shape, number, quoted};
use chrono::{Datelike, NaiveDate};
use exercises::statistics::{DayValue, MAX_DAYS};

pub use crate::number_csv::CsvFault;

/// The first line.
pub const HEADER: &str = "day,value";
/// Longest file that is read, in bytes.
pub const MAX_BYTES: usize = 256 * 1024;
/// Most days that are read: as many as are judged.
pub const MAX_ROWS: usize = MAX_DAYS;

const SHAPE: Shape<2> = Shape { header: HEADER, most_bytes: MAX_BYTES, most_rows: MAX_ROWS };

/// Why a series cannot be read. Lines count from 1, the header being the first.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum SeriesCsvFault {
    /// It is no table of two columns of numbers.
    #[error(transparent)]
    Csv(#[from] CsvFault),
    /// A day is neither a whole number nor a date.
    #[error("line {line}, column day: expected a whole number or a date such as 2026-03-01, found {found:?}")]
    NotADay {
        /// The line.
        line: usize,
        /// What is there instead, shortened.
        found: String,
    },
    /// Numbers and dates in one file.
    #[error("line {line}, column day: numbers and dates are mixed")]
    MixedDays {
        /// The line.
        line: usize,
    },
    /// A day that is not later than the one before: out of order, or a second value of one day.
    #[error("line {line}, column day: expected a later day than in the line before; one value a day")]
    NotLater {
        /// The line.
        line: usize,
    },
    /// A value that is infinite or not a number.
    #[error("line {line}, column value: expected a finite number")]
    NotFinite {
        /// The line.
        line: usize,
    },
}

#[derive(Clone, Copy, PartialEq)]
enum Kind {
    Number,
    Date,
}

/// Reads a series. Days written as dates are counted from the first day of the year 1.
///
/// # Errors
/// The first [`SeriesCsvFault`] of the file.
pub fn read(bytes: &[u8]) -> Result<Vec<DayValue>, SeriesCsvFault> {
    let mut series: Vec<DayValue> = Vec::new();
    let mut kind_of_file = None;
    SHAPE.each_row(bytes, |row| {
        let ([day, value], line) = (row.cells, row.line);
        let (kind, day) = self::day(day).ok_or_else(|| SeriesCsvFault::NotADay { line, found: quoted(day) })?;
        if *kind_of_file.get_or_insert(kind) != kind {
            return Err(SeriesCsvFault::MixedDays { line });
        }
        if series.last().is_some_and(|last| last.day >= day) {
            return Err(SeriesCsvFault::NotLater { line });
        }
        let value = number(line, "value", value)?;
        if !value.is_finite() {
            return Err(SeriesCsvFault::NotFinite { line });
        }
        series.push(DayValue { day, value });
        Ok(())
    })?;
    Ok(series)
}

fn day(cell: &str) -> Option<(Kind, i32)> {
    if let Ok(number) = cell.parse() {
        return Some((Kind::Number, number));
    }
    // Four, two and two digits: other spellings that a library would take are not a full-date.
    let full = cell.len() == 10
        && cell.bytes().enumerate().all(|(place, byte)| match place {
            4 | 7 => byte == b'-',
            _ => byte.is_ascii_digit(),
        });
    let date = full.then(|| NaiveDate::parse_from_str(cell, "%Y-%m-%d").ok())??;
    Some((Kind::Date, date.num_days_from_ce()))
}

#[cfg(test)]
mod tests;
