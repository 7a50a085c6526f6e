//! Makes the demo: an invented clinic with seven patients under codes and six weeks of history.
//!
//! People behave randomly, with a fixed seed. Everything they do uses the same functions as in reality: cards are issued and taken,
//! runs begun and logged, summaries sealed and received.
//!
//! It prints two moments in RFC 3339, separated by a space: the first visit, and the moment for the windows on the day of the next
//! visit.
#![forbid(unsafe_code)]

mod calendar;
mod day;
mod people;
mod scenario;

use clap::Parser;
use std::path::PathBuf;
use std::process::ExitCode;

/// Makes the demo's data folders.
#[derive(Parser)]
struct Args {
    /// The folder for all data folders; must not hold any yet
    out: PathBuf,
    /// The day of the next visit, up to which the history goes [default: the last working day, today if it is one]
    #[arg(long)]
    until: Option<chrono::NaiveDate>,
    /// The zone in which everybody lives [default: this machine's]
    #[arg(long)]
    zone: Option<chrono_tz::Tz>,
    /// Chance starts from here
    #[arg(long, default_value_t = 20)]
    seed: u64,
}

fn main() -> ExitCode {
    let args = Args::parse();
    let place = args.zone.unwrap_or_else(actions::zone::local);
    let today = || actions::Clock::system().moment().now.date();
    let until = args.until.unwrap_or_else(|| calendar::last_working_day(today()));
    match scenario::make(&args.out, until, place, args.seed) {
        Ok(()) => {
            println!("{}", calendar::moments(scenario::first_day(until), until, place).join(" "));
            ExitCode::SUCCESS
        }
        Err(failure) => {
            let refusal = words::Words::new(words::Locale::En).failure(&failure);
            eprintln!("{} {}", refusal.fault, refusal.advice);
            ExitCode::FAILURE
        }
    }
}
