//! What may be typed by those who do exercises.

use crate::device::DeviceCommand;
use actions::zone::Tz;
use chrono::NaiveDate;
use clap::Subcommand;
use exercises::log::{Barrier, Correction};
use exercises::score::Score;
use std::path::PathBuf;
use wire::Failure;

/// For those who do exercises.
#[derive(Subcommand)]
pub enum Patient {
    /// Add a plan card: a picture, a text or a card file. Of a card that is shown as several codes, all pictures
    Accept {
        /// The file, or all pictures
        #[arg(required = true)]
        card: Vec<PathBuf>,
        /// Add it although a card of a clinic of this name was signed with another key
        #[arg(long)]
        yes: bool,
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
    /// The requested correction, if any.
    ///
    /// # Errors
    /// [`Failure::OutOfRange`] for a score above 10.
    pub fn correction(&self) -> Result<Option<Correction>, Failure> {
        let remove = self.remove.then_some(Correction::Never);
        let restore = self.restore.then_some(Correction::Stands);
        let out_of_range =
            |_| Failure::OutOfRange { least: Score::LEAST.points().into(), most: Score::MOST.points().into() };
        let score = self.score.map(Score::try_from).transpose().map_err(out_of_range)?;
        let value = score.map(Correction::Score).or(self.reason.map(Correction::Reason));
        Ok(remove.or(restore).or(value).or(self.settled.map(Correction::Settled)))
    }
}

fn reason(name: &str) -> Result<Barrier, String> {
    format::runs_file::reason(name).map_err(|all| format!("one of {}", all.join(", ")))
}

fn zone(name: &str) -> Result<Tz, &'static str> {
    actions::zone::named(name).ok_or("a zone by its name in the tz database, such as Europe/Vienna")
}
