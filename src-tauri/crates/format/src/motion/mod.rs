//! Trials of a motion sensor as CSV: the header `t_s,ax,ay,az`, then one sample on each line.
//!
//! The time is in seconds on a clock that never goes back. The acceleration, including gravity, is in m/s2 along the device's
//! axes: x to the right of the screen, y to its top, z out of it; a phone that lies flat with the screen up has +9.8 on z. A
//! value may be `nan` or `inf`, because a sensor may have no value; the processing drops such rows and counts them.

use crate::number_csv::{Shape, number};
use exercises::file_fault::FileFault;
use exercises::sway::{Sample, parameters};

/// The first line.
pub const HEADER: &str = "t_s,ax,ay,az";
/// Size of the largest file that is read, in bytes.
pub const MAX_BYTES: usize = 16 * 1024 * 1024;
/// Largest number of samples that are read; the processing takes no more.
pub const MAX_ROWS: usize = parameters::MAX_SAMPLES;

const SHAPE: Shape<4> = Shape { header: HEADER, most_bytes: MAX_BYTES, most_rows: MAX_ROWS };

/// Reads the samples of one trial, in the order of the file. Their order and rate are not checked here; the processing does
/// that and gives a verdict.
///
/// # Errors
/// The first [`FileFault`] of the file.
pub fn read(bytes: &[u8]) -> Result<Vec<Sample>, FileFault> {
    let mut samples = Vec::new();
    SHAPE.each_row(bytes, |row| {
        let [t_s, x, y, z] = row.cells;
        let cell = |column, cell| number(row.line, column, cell);
        let a = [cell("ax", x)?, cell("ay", y)?, cell("az", z)?];
        samples.push(Sample { t_s: cell("t_s", t_s)?, a });
        Ok(())
    })?;
    Ok(samples)
}

#[cfg(test)]
mod tests;
