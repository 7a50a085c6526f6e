//! Runs the analyses on a file, so that they can be checked against another implementation.

use crate::{ActionResult, platform};
use exercises::statistics::{self, TheilSen, Trend, TrendContext, Verdict};
use exercises::sway::{self, Marks, Os, Printed, Sample, Source};
use format::{motion, series};
use std::path::Path;
use wire::Failure;

/// Reads a recorded trial, with its samples in the sign convention of "sway/1" whichever system recorded them.
pub fn trial(file: &Path, os: Os) -> ActionResult<Vec<Sample>> {
    let bytes = platform::read(file, motion::MAX_BYTES as u64)?;
    let samples = motion::read(&bytes).map_err(platform::not_understood(&file.display().to_string()))?;
    Ok(samples.into_iter().map(|sample| Sample { a: os.to_specific_force(sample.a), ..sample }).collect())
}

/// The printed form of a recorded trial: figures, or the reasons why there are none.
pub fn sway(file: &Path, marks: &Marks, os: Os) -> ActionResult<Printed> {
    let samples = trial(file, os)?;
    let source = Source { os, sign_flipped: os.opposite_sign(), ..Source::file() };
    Ok(sway::printed(&sway::analyse(&samples, marks, &source)))
}

/// The statistics of a series of one value a day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SeriesStatistics {
    /// Number of days with a value.
    pub n: usize,
    /// The line; `None` with fewer than two days, or if the values are at the cap, which hides the slope.
    pub line: Option<TheilSen>,
    /// The test for a trend.
    pub test: statistics::MannKendall,
    /// The verdict and the figures it is based on.
    pub trend: Trend,
}

/// Confidence level of the slope's limits.
const CONFIDENCE: f64 = 0.95;

/// The statistics of a series from a file. `cap` and `difference` are in the unit of the values.
pub fn trend(file: &Path, cap: Option<f64>, difference: Option<f64>) -> ActionResult<SeriesStatistics> {
    let bytes = platform::read(file, series::MAX_BYTES as u64)?;
    let series = series::read(&bytes).map_err(platform::not_understood(&file.display().to_string()))?;
    // The reader already refuses every series that the statistics cannot use.
    let unfit = |fault| Failure::Internal { detail: format!("{fault:?}") };
    let context = TrendContext { cap, given_difference: difference, stance: None };
    let trend = statistics::trend(&series, &context).map_err(unfit)?;
    let line = statistics::theil_sen(&series, CONFIDENCE).map_err(unfit)?;
    let line = line.filter(|_| trend.verdict != Verdict::AtTheCap);
    Ok(SeriesStatistics { n: series.len(), line, test: statistics::mann_kendall(&series).map_err(unfit)?, trend })
}
