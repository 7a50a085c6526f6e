//! What may be typed by those who prescribe exercises.

use clap::{Subcommand, ValueEnum};
use std::path::PathBuf;

/// For those who prescribe exercises.
#[derive(Subcommand)]
pub enum Clinic {
    /// Set up the clinic: create its keys, protected by a passphrase
    Start {
        /// The clinic's name, as patients will see it
        #[arg(long, default_value = "Clinic")]
        name: String,
        /// The clinic's telephone number, which its cards carry
        #[arg(long, value_name = "NUMBER")]
        phone: Option<String>,
    },
    /// Set the telephone number that the next cards carry, or show it
    Phone {
        /// The number; "" removes it
        number: Option<String>,
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
