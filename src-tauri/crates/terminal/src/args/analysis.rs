//! What may be typed to calculate figures.

use clap::ValueEnum;
use std::path::PathBuf;

/// A recorded attempt.
#[derive(clap::Args)]
pub struct Sway {
    /// The recording: CSV with the header t_s,ax,ay,az in seconds and m/s2, gravity included
    #[arg(long, value_name = "FILE.csv")]
    pub trial: PathBuf,
    /// The start tone, in seconds on the file's clock
    #[arg(long, value_name = "S", allow_negative_numbers = true, value_parser = finite)]
    pub on: f64,
    /// The end of the recording or the planned end, in seconds
    #[arg(long, value_name = "S", allow_negative_numbers = true, value_parser = finite)]
    pub off: f64,
    /// A touch of the screen, in seconds; can be given several times
    #[arg(long = "tap", value_name = "S", allow_negative_numbers = true, value_parser = finite)]
    pub taps: Vec<f64>,
    /// The system that recorded it; iOS gives all axes with the opposite sign
    #[arg(long, value_enum, default_value = "other")]
    pub os: System,
}

/// An operating system.
#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum System {
    /// Android
    Android,
    /// iOS or iPadOS
    Ios,
    /// Any other
    Other,
}

/// A series.
#[derive(clap::Args)]
pub struct Trend {
    /// CSV with the header day,value; one line per day
    #[arg(long, value_name = "FILE.csv")]
    pub series: PathBuf,
    /// The highest value that could be reached
    #[arg(long, value_name = "V", allow_negative_numbers = true, value_parser = finite)]
    pub cap: Option<f64>,
    /// The smallest important difference, in the unit of the values
    #[arg(long, value_name = "V", value_parser = not_negative)]
    pub mdc: Option<f64>,
}

/// A proportion.
#[derive(clap::Args)]
pub struct Proportion {
    /// How many were done
    #[arg(value_name = "K")]
    pub done: u32,
    /// How many were planned
    #[arg(value_name = "N")]
    pub planned: u32,
    /// How many are on one day, and therefore similar
    #[arg(long, value_name = "M", value_parser = cluster, requires = "rho")]
    pub per_day: Option<f64>,
    /// How similar those of one day are: their correlation, 0 to 1
    #[arg(long, value_name = "R", value_parser = correlation, requires = "per_day")]
    pub rho: Option<f64>,
}

fn number(text: &str, fits: impl Fn(f64) -> bool, expected: &'static str) -> Result<f64, &'static str> {
    text.parse().ok().filter(|number: &f64| number.is_finite() && fits(*number)).ok_or(expected)
}

fn finite(text: &str) -> Result<f64, &'static str> {
    number(text, |_| true, "a finite number with a decimal point")
}

fn not_negative(text: &str) -> Result<f64, &'static str> {
    number(text, |number| number >= 0.0, "a number, 0 or more")
}

fn cluster(text: &str) -> Result<f64, &'static str> {
    number(text, |number| number >= 1.0, "a number, 1 or more")
}

fn correlation(text: &str) -> Result<f64, &'static str> {
    number(text, |number| (0.0..=1.0).contains(&number), "a number from 0 to 1")
}
