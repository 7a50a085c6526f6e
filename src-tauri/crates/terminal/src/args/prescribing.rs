//! What may be typed about own exercises and sets.

use clap::Subcommand;
use std::path::PathBuf;

/// The clinic's own exercises.
#[derive(Subcommand)]
pub enum OwnExercise {
    /// Add exercises, or new revisions of them: all of these files or, if one has a fault, none
    Add {
        /// Exercise files, as `example exercise` prints one
        #[arg(required = true)]
        files: Vec<PathBuf>,
    },
    /// List them, with their revisions and the patients whose plans have them
    List,
    /// Show one
    Show {
        /// Its id, or what its file calls it
        id: String,
    },
    /// Save one as a file, for another clinic or to change it
    Export {
        /// Its id, or what its file calls it
        id: String,
        /// The file
        #[arg(long, value_name = "FILE")]
        out: PathBuf,
    },
    /// Remove one. If a card has it, it is kept for reviews and no longer offered
    Remove {
        /// Its id, or what its file calls it
        id: String,
    },
    /// Say what is wrong with a file, and add nothing
    Check {
        /// The exercise file
        file: PathBuf,
    },
}

/// Sets.
#[derive(Subcommand)]
pub enum PlanSet {
    /// Save the items of a plan file as a set; one of the same name is replaced
    Save {
        /// What to call it
        name: String,
        /// The plan file, as `example plan` prints one
        #[arg(long, value_name = "PLANFILE")]
        from: PathBuf,
    },
    /// List them
    List,
    /// Save one as a plan file
    Export {
        /// What it is called
        name: String,
        /// The file
        #[arg(long, value_name = "FILE")]
        out: PathBuf,
    },
    /// Remove one
    Remove {
        /// What it is called
        name: String,
    },
}
