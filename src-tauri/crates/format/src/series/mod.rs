//! A series of daily values as CSV: the header `day,value`, then one day on each line, in ascending order.
//!
//! A day is a whole number, counted from any start, or a date such as `2026-03-01` (RFC 3339, full-date); a file must not mix
//! the two. A value is a finite number in the series' own unit.

use crate::fields::quoted;
use crate::number_csv::{Shape, number};
use chrono::{Datelike, NaiveDate};
use exercises::file_fault::{CsvFault, FaultKind, FileFault};
use exercises::statistics::{DayValue, MAX_DAYS};

/// The first line.
pub const HEADER: &str = "day,value";
/// Size of the largest file that is read, in bytes.
pub const MAX_BYTES: usize = 256 * 1024;
/// Largest number of days that are read; the analysis takes no more.
pub const MAX_ROWS: usize = MAX_DAYS;

const SHAPE: Shape<2> = Shape { header: HEADER, most_bytes: MAX_BYTES, most_rows: MAX_ROWS };

#[derive(Clone, Copy, PartialEq)]
enum Kind {
    Number,
    Date,
}

/// Reads a series. Days written as dates are counted from the first day of the year 1.
///
/// # Errors
/// The first [`FileFault`] of the file.
pub fn read(bytes: &[u8]) -> Result<Vec<DayValue>, FileFault> {
    let mut series: Vec<DayValue> = Vec::new();
    let mut kind_of_file = None;
    SHAPE.each_row(bytes, |row| {
        let ([day, value], line) = (row.cells, row.line);
        let wrong = |kind| FileFault::at(line, kind);
        let column = || "day".to_owned();
        let (kind, day) =
            self::day(day).ok_or_else(|| wrong(FaultKind::Csv(CsvFault::Day { column: column(), found: quoted(day) })))?;
        if *kind_of_file.get_or_insert(kind) != kind {
            return Err(wrong(FaultKind::Csv(CsvFault::MixedDays { column: column() })));
        }
        if series.last().is_some_and(|last| last.day >= day) {
            return Err(wrong(FaultKind::Csv(CsvFault::DayOrder { column: column() })));
        }
        let value = number(line, "value", value)?;
        if !value.is_finite() {
            return Err(wrong(FaultKind::Csv(CsvFault::Finite { column: "value".to_owned() })));
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
    // Four, two and two digits; the library would accept other spellings, which are not a full-date.
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
