//! What may be typed.

mod analysis;
mod clinic;
mod patient;

pub use analysis::{Proportion, Sway, System, Trend};
pub use clinic::{Clinic, Form};
pub use patient::{Correct, Patient};

use actions::Clock;
use chrono::NaiveDate;
use clap::{Parser, Subcommand};
use exercises::id::PlanId;
use std::path::PathBuf;

/// Home exercise between two visits: plans are handed over as cards, encrypted summaries come back.
#[derive(Parser)]
#[command(name = "carryover", version, max_term_width = 100)]
pub struct Args {
    /// Data folder [default: the usual one of this system]
    #[arg(long, global = true, value_name = "DIR")]
    pub home: Option<PathBuf>,
    /// Act as if it were this date and time, such as 2026-11-25T09:00:00+01:00
    #[arg(long, global = true, value_name = "INSTANT", value_parser = Clock::set_to)]
    pub at: Option<Clock>,
    /// Print one JSON object per line
    #[arg(long, global = true)]
    pub json: bool,
    /// The area
    #[command(subcommand)]
    pub area: Area,
}

/// The areas of commands.
#[derive(Subcommand)]
pub enum Area {
    /// Print example files with comments; they fit together
    Example {
        /// The kind of file
        #[command(subcommand)]
        what: Example,
    },
    /// The exercises
    Catalogue {
        /// What to do
        #[command(subcommand)]
        what: Catalogue,
    },
    /// Calculate the figures of a recorded balance attempt: hold, touch-downs, sway
    Sway(Sway),
    /// Calculate the trend of a series with one value per day: slope, test, verdict
    Trend(Trend),
    /// Calculate the limits of a proportion: Wilson, 95 %
    Proportion(Proportion),
    /// For those who prescribe exercises
    Clinic {
        /// File with the passphrase in its first line [default: ask for it]
        #[arg(long, global = true, value_name = "F")]
        passphrase_file: Option<PathBuf>,
        /// What to do
        #[command(subcommand)]
        what: Clinic,
    },
    /// For those who do exercises
    Patient {
        /// The plan, if there are several: 16 digits and letters, as `accept --json` shows them
        #[arg(long, global = true, value_name = "PLAN", value_parser = plan)]
        plan: Option<PlanId>,
        /// What to do
        #[command(subcommand)]
        what: Patient,
    },
}

/// Examples.
#[derive(Subcommand)]
pub enum Example {
    /// A plan for `clinic issue`
    Plan,
    /// What a patient with that plan might do, for `patient record`
    Runs {
        /// The first day
        #[arg(long, value_name = "DATE")]
        start: NaiveDate,
    },
    /// A clinic's own table of published times for `clinic norms`; its figures are invented
    Norms,
}

/// The exercises.
#[derive(Subcommand)]
pub enum Catalogue {
    /// Check the exercises of this program, or those in a folder
    Check {
        /// The folder
        dir: Option<PathBuf>,
    },
}

fn plan(name: &str) -> Result<PlanId, &'static str> {
    name.parse().map_err(|_| "16 digits and letters a to f, as accept --json shows them")
}

impl Args {
    /// The clock: the system's, or one set with `--at`.
    pub fn clock(&self) -> Clock {
        self.at.clone().unwrap_or_else(Clock::system)
    }

    /// The data folder.
    pub fn home(&self) -> PathBuf {
        self.home.clone().unwrap_or_else(actions::platform::default_home)
    }
}
