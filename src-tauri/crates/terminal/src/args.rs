//! What may be typed.

use crate::device::DeviceCommand;
use actions::Clock;
use actions::zone::Tz;
use chrono::NaiveDate;
use clap::{Parser, Subcommand, ValueEnum};
use exercises::id::PlanId;
use exercises::log::Barrier;
use exercises::log::Correction;
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

/// For those who prescribe exercises.
#[derive(Subcommand)]
pub enum Clinic {
    /// Set up the clinic: create its keys, protected by a passphrase
    Start {
        /// The clinic's name, as patients will see it
        #[arg(long, default_value = "Clinic")]
        name: String,
    },
    /// Add a patient under a code
    Add {
        /// 1 to 12 letters, digits and hyphens
        code: String,
        /// The patient's name; stays in this data folder, never on a card or in a summary
        #[arg(long)]
        name: Option<String>,
    },
    /// Issue a plan card: writes card.png, card.svg, card.txt and card.bin
    Issue {
        /// The patient's code
        code: String,
        /// The plan file, as `example plan` prints one
        plan: PathBuf,
        /// Folder for the card
        #[arg(long, value_name = "DIR")]
        out: PathBuf,
    },
    /// Receive encrypted summaries: files, or pictures (PNG, JPEG) of their codes, in any order
    Receive {
        /// The files and pictures
        #[arg(required = true)]
        files: Vec<PathBuf>,
    },
    /// Show the review of a patient
    Review {
        /// The patient's code
        code: String,
        /// As text or as JSON
        #[arg(long = "as", value_enum, default_value = "text")]
        form: Form,
    },
    /// List the patients
    Patients,
    /// Save the clinic's own table of published times for reviews, or show the saved one
    Norms {
        /// The table, as `example norms` prints one; it replaces the saved one
        file: Option<PathBuf>,
        /// Remove the saved table
        #[arg(long, conflicts_with = "file")]
        remove: bool,
    },
    /// Print the clinic's secret key (an age identity), with which any age tool can open its summaries
    Identity,
}

/// Text or JSON.
#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Form {
    /// For people
    Text,
    /// For programs
    Json,
}

/// For those who do exercises.
#[derive(Subcommand)]
pub enum Patient {
    /// Add a plan card: a picture, a text or a card file
    Accept {
        /// The file
        card: PathBuf,
    },
    /// List the sessions that are due
    Slots {
        /// First day
        #[arg(long, value_name = "DATE")]
        from: NaiveDate,
        /// How many days
        #[arg(long, value_name = "N", value_parser = clap::value_parser!(u16).range(1..=400))]
        days: u16,
        /// Time zone by its name in the tz database, such as Europe/Vienna
        #[arg(long, value_parser = zone)]
        zone: Tz,
    },
    /// Record what was done
    Record {
        /// The file, one JSON object per line, as `example runs` prints one
        runs: PathBuf,
    },
    /// Show what to do now
    Now,
    /// Save an encrypted summary for the visit
    Summary {
        /// First day [default: the plan's start]
        #[arg(long, value_name = "DATE")]
        from: Option<NaiveDate>,
        /// Last day
        #[arg(long, value_name = "DATE")]
        until: NaiveDate,
        /// A note for the clinic
        #[arg(long)]
        note: Option<String>,
        /// File for the summary
        #[arg(long, value_name = "FILE.age", required_unless_present = "frames")]
        out: Option<PathBuf>,
        /// New folder for pictures of the summary as codes: frame-01.png and so on
        #[arg(long, value_name = "DIR")]
        frames: Option<PathBuf>,
    },
    /// Correct an entry, or list the entries that can be corrected
    Correct(Correct),
    #[command(flatten)]
    DeviceCommand(DeviceCommand),
}

/// The entry to correct, and how.
#[derive(clap::Args)]
pub struct Correct {
    /// The number of the entry; without it, list the entries that can be corrected
    #[arg(long, value_name = "N", requires = "to")]
    pub entry: Option<u32>,
    /// How many days to list, up to today
    #[arg(long, value_name = "N", default_value = "7", value_parser = clap::value_parser!(u16).range(1..=400))]
    pub days: u16,
    /// How
    #[command(flatten)]
    pub to: To,
}

/// What an entry should have been.
#[derive(clap::Args)]
#[group(id = "to", multiple = false, requires = "entry")]
pub struct To {
    /// Delete it: it did not happen, or was a mistake; an alarm stays, with a note
    #[arg(long)]
    pub remove: bool,
    /// Another rating of pain or of an activity, 0 to 10
    #[arg(long, value_name = "S")]
    pub score: Option<u8>,
    /// Another reason for skipping the session, such as no-time
    #[arg(long, value_name = "R", value_parser = reason)]
    pub reason: Option<Barrier>,
    /// Whether the pain had settled by the morning: true or false
    #[arg(long, value_name = "BOOL")]
    pub settled: Option<bool>,
    /// Undo the corrections: as it was first recorded
    #[arg(long)]
    pub restore: bool,
}

impl To {
    /// What was asked for, if anything.
    pub fn correction(&self) -> Option<Correction> {
        let remove = self.remove.then_some(Correction::Never);
        let restore = self.restore.then_some(Correction::Stands);
        let value = self.score.map(Correction::Score).or(self.reason.map(Correction::Reason));
        remove.or(restore).or(value).or(self.settled.map(Correction::Settled))
    }
}

fn reason(name: &str) -> Result<Barrier, String> {
    format::runs_file::reason(name).map_err(|all| format!("one of {}", all.join(", ")))
}

fn zone(name: &str) -> Result<Tz, &'static str> {
    actions::zone::named(name).ok_or("a zone by its name in the tz database, such as Europe/Vienna")
}

fn plan(name: &str) -> Result<PlanId, &'static str> {
    name.parse().map_err(|_| "16 digits and letters a to f, as accept --json shows them")
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
