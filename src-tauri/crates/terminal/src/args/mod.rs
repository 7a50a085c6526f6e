//! What may be typed.

mod analysis;
mod catalogue;
mod clinic;
mod patient;
mod prescribing;
mod visiting;

pub use analysis::{Proportion, Sway, System, Trend};
pub use catalogue::{Catalogue, Find};
pub use clinic::{Clinic, Form};
pub use patient::{Correct, Patient};
pub use prescribing::{OwnExercise, PlanSet};
pub use visiting::{VisitCommand, Whose};

use actions::{ActionResult, Clock};
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
    /// Save a backup of the data folder: one file with everything in it
    ///
    /// A patient's backup can be read by anyone who has the file; a clinic's is encrypted, and opens with the passphrase of the day on which
    /// it was made.
    Backup {
        /// The file [default: a new one in the folder for saved files]
        #[arg(long, value_name = "FILE")]
        to: Option<PathBuf>,
    },
    /// Restore a backup, also to move to a new device
    ///
    /// What was in the data folder is kept beside it under another name. To move to a new device, save a backup on the old one, copy the file to
    /// the new one, restore it there, and no longer use the old one. The clinic sees both as one device, and nothing counts twice.
    Restore {
        /// The backup
        file: PathBuf,
    },
    /// Save what can be read of a damaged data folder; the damaged file is kept
    Salvage,
    /// For those who prescribe exercises
    Clinic {
        /// File that only you can read, or pipe, with the passphrase in its first line; - for the standard input [default: ask for it]
        #[arg(long, global = true, value_name = "F")]
        passphrase_file: Option<PathBuf>,
        /// Who of several clinicians you are; each has a passphrase of their own
        #[arg(long, value_name = "NAME")]
        clinician: Option<String>,
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
    /// A diary that a patient kept on paper, for `clinic diary`
    Diary {
        /// The first day
        #[arg(long, value_name = "DATE")]
        start: NaiveDate,
    },
    /// An exercise of a clinic's own for `clinic exercise add`
    Exercise,
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
    ///
    /// # Errors
    /// [`wire::Failure::HomeUnnamed`] if none is named here and the system names none.
    pub fn home(&self) -> ActionResult<PathBuf> {
        self.home.clone().map_or_else(actions::platform::default_home, Ok)
    }
}
