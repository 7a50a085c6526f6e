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

/// Home exercise between two visits: plans handed over as cards, summaries brought back sealed.
#[derive(Parser)]
#[command(name = "carryover", version, max_term_width = 100)]
pub struct Args {
    /// Data folder [default: the platform's own]
    #[arg(long, global = true, value_name = "DIR")]
    pub home: Option<PathBuf>,
    /// Do it as if it were that moment, such as 2026-11-25T09:00:00+01:00
    #[arg(long, global = true, value_name = "INSTANT", value_parser = Clock::set_to)]
    pub at: Option<Clock>,
    /// Print one JSON object a line
    #[arg(long, global = true)]
    pub json: bool,
    /// What it is about
    #[command(subcommand)]
    pub area: Area,
}

/// What it is about.
#[derive(Subcommand)]
pub enum Area {
    /// Print valid, commented examples that fit each other
    Example {
        /// Of what
        #[command(subcommand)]
        what: Example,
    },
    /// The exercises
    Catalogue {
        /// What to do
        #[command(subcommand)]
        what: Catalogue,
    },
    /// Check the sums of a recorded balance trial: hold, touch-downs, sway
    Sway(Sway),
    /// Check the sums of a series of one value a day: slope, test for a trend, verdict
    Trend(Trend),
    /// Check the limits of a share: Wilson 95 %
    Proportion(Proportion),
    /// The side that prescribes
    Clinic {
        /// File with the passphrase in its first line; else it is asked for
        #[arg(long, global = true, value_name = "F")]
        passphrase_file: Option<PathBuf>,
        /// What to do
        #[command(subcommand)]
        what: Clinic,
    },
    /// The side that does exercises
    Patient {
        /// The plan, where several are followed: 16 digits and letters, as `accept --json` shows them
        #[arg(long, global = true, value_name = "PLAN", value_parser = plan)]
        plan: Option<PlanId>,
        /// What to do
        #[command(subcommand)]
        what: Patient,
    },
}

/// A recorded trial.
#[derive(clap::Args)]
pub struct Sway {
    /// The samples: CSV with the header t_s,ax,ay,az in seconds and m/s2, gravity included
    #[arg(long, value_name = "FILE.csv")]
    pub trial: PathBuf,
    /// The start tone, in seconds on the file's clock
    #[arg(long, value_name = "S", allow_negative_numbers = true, value_parser = finite)]
    pub on: f64,
    /// The end of the recording or the planned end, in seconds
    #[arg(long, value_name = "S", allow_negative_numbers = true, value_parser = finite)]
    pub off: f64,
    /// A touch of the screen, in seconds; may be given several times
    #[arg(long = "tap", value_name = "S", allow_negative_numbers = true, value_parser = finite)]
    pub taps: Vec<f64>,
    /// The system that recorded it: one of them turns the sign of all axes
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
    /// CSV with the header day,value; one line a day
    #[arg(long, value_name = "FILE.csv")]
    pub series: PathBuf,
    /// The longest value that could be reached
    #[arg(long, value_name = "V", allow_negative_numbers = true, value_parser = finite)]
    pub cap: Option<f64>,
    /// The important difference, in the unit of the values
    #[arg(long, value_name = "V", value_parser = not_negative)]
    pub mdc: Option<f64>,
}

/// A share.
#[derive(clap::Args)]
pub struct Proportion {
    /// So many were done
    #[arg(value_name = "K")]
    pub done: u32,
    /// Of so many
    #[arg(value_name = "N")]
    pub planned: u32,
    /// So many fall on one day, and are alike
    #[arg(long, value_name = "M", value_parser = cluster, requires = "rho")]
    pub per_day: Option<f64>,
    /// How alike: their correlation, 0 to 1
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
    /// A clinic's own table of stance times for `clinic norms`; its figures are invented
    Norms,
}

/// The exercises.
#[derive(Subcommand)]
pub enum Catalogue {
    /// Check the shipped exercises, or all TOML files of a folder
    Check {
        /// The folder
        dir: Option<PathBuf>,
    },
}

/// The side that prescribes.
#[derive(Subcommand)]
pub enum Clinic {
    /// Make the clinic's keys under a passphrase
    Start {
        /// The clinic's name, as patients will see it
        #[arg(long, default_value = "Clinic")]
        name: String,
    },
    /// Add a patient under a code
    Add {
        /// 1 to 12 letters, digits and hyphens
        code: String,
        /// A name, only for this store; never on a card or in a summary
        #[arg(long)]
        name: Option<String>,
    },
    /// Issue a plan card: writes card.png, card.svg, card.txt and card.bin
    Issue {
        /// The patient's code
        code: String,
        /// The plan
        plan: PathBuf,
        /// The folder for the card
        #[arg(long, value_name = "DIR")]
        out: PathBuf,
    },
    /// Receive sealed summaries, as files or as pictures (PNG, JPEG) of their codes, in any order
    Receive {
        /// Files and pictures
        #[arg(required = true)]
        files: Vec<PathBuf>,
    },
    /// Show one patient's review
    Review {
        /// The patient's code
        code: String,
        /// As text or as JSON
        #[arg(long = "as", value_enum, default_value = "text")]
        form: Form,
    },
    /// List the patients
    Patients,
    /// Keep the clinic's own table of stance times for reviews, or show what is kept
    Norms {
        /// The table, as `example norms` prints one; it takes the place of the one before
        file: Option<PathBuf>,
        /// Remove the table
        #[arg(long, conflicts_with = "file")]
        remove: bool,
    },
    /// Print the age identity, with which any age tool opens this clinic's summaries
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

/// The side that does exercises.
#[derive(Subcommand)]
pub enum Patient {
    /// Take a plan card: a picture, a text or a card file
    Accept {
        /// The file
        card: PathBuf,
    },
    /// Show what falls due
    Slots {
        /// First day
        #[arg(long, value_name = "DATE")]
        from: NaiveDate,
        /// So many days
        #[arg(long, value_name = "N", value_parser = clap::value_parser!(u16).range(1..=400))]
        days: u16,
        /// The zone by its name in the tz database, such as Europe/Vienna
        #[arg(long, value_parser = zone)]
        zone: Tz,
    },
    /// Record what was done, one JSON object a line
    Record {
        /// The file
        runs: PathBuf,
    },
    /// Show what to do now
    Now,
    /// Seal a summary for the visit
    Summary {
        /// First day [default: the plan's start]
        #[arg(long, value_name = "DATE")]
        from: Option<NaiveDate>,
        /// Last day
        #[arg(long, value_name = "DATE")]
        until: NaiveDate,
        /// A note, if wanted
        #[arg(long)]
        note: Option<String>,
        /// The file
        #[arg(long, value_name = "FILE.age", required_unless_present = "frames")]
        out: Option<PathBuf>,
        /// A new folder for pictures of it as codes: frame-01.png and on
        #[arg(long, value_name = "DIR")]
        frames: Option<PathBuf>,
    },
    /// Put a mistaken entry right, or list what can be put right
    Correct(Correct),
    #[command(flatten)]
    DeviceCommand(DeviceCommand),
}

/// What to put right, and how.
#[derive(clap::Args)]
pub struct Correct {
    /// The entry's number; without it, the list of what can be put right
    #[arg(long, value_name = "N", requires = "to")]
    pub entry: Option<u32>,
    /// List so many days, today among them
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
    /// It did not happen, or was not meant; an alarm stays, with a note
    #[arg(long)]
    pub remove: bool,
    /// Another score of pain or of an activity, 0 to 10
    #[arg(long, value_name = "S")]
    pub score: Option<u8>,
    /// Another reason for leaving the slot out, such as no-time
    #[arg(long, value_name = "R", value_parser = reason)]
    pub reason: Option<Barrier>,
    /// Whether it had settled by the morning: true or false
    #[arg(long, value_name = "BOOL")]
    pub settled: Option<bool>,
    /// As it was first said
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
    let digits = name.len() == 16 && name.bytes().all(|byte| byte.is_ascii_hexdigit());
    let number = u64::from_str_radix(name, 16).ok().filter(|_| digits);
    number.map(|number| PlanId(number.to_be_bytes())).ok_or("16 digits and letters a to f, as accept --json shows them")
}

fn number(text: &str, fits: impl Fn(f64) -> bool, expected: &'static str) -> Result<f64, &'static str> {
    text.parse().ok().filter(|number: &f64| number.is_finite() && fits(*number)).ok_or(expected)
}

fn finite(text: &str) -> Result<f64, &'static str> {
    number(text, |_| true, "a finite number with a decimal point")
}

fn not_negative(text: &str) -> Result<f64, &'static str> {
    number(text, |number| number >= 0.0, "a number from 0 on")
}

fn cluster(text: &str) -> Result<f64, &'static str> {
    number(text, |number| number >= 1.0, "a number from 1 on")
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
