//! What may be typed about the exercises.

use clap::{Args, Subcommand};
use exercises::catalogue::{Equipment, Kind, Posture, PrescriberFlag, Purpose, Region};
use format::names::{self, Named};
use std::collections::BTreeSet;
use std::path::PathBuf;

/// The exercises.
#[derive(Subcommand)]
pub enum Catalogue {
    /// Check the exercises of this program, or those in a folder
    Check {
        /// The folder
        dir: Option<PathBuf>,
    },
    /// Find exercises of this program by words and by what they are; the best match first
    Find(Find),
}

/// What is looked for.
#[derive(Args)]
pub struct Find {
    /// Words of the name, the use or what is needed; small spelling mistakes are forgiven
    pub words: Vec<String>,
    /// The part of the body, such as knee
    #[arg(long, value_parser = named::<Region>)]
    pub region: Option<Region>,
    /// What it is done for, such as strength
    #[arg(long, value_parser = named::<Purpose>)]
    pub purpose: Option<Purpose>,
    /// How it is timed, such as hold
    #[arg(long, value_parser = kind)]
    pub kind: Option<Kind>,
    /// The posture, such as lying
    #[arg(long, value_parser = named::<Posture>)]
    pub posture: Option<Posture>,
    /// What is at hand, with commas between: nothing else may be needed. "nothing" for nothing
    #[arg(long, value_name = "THINGS", value_parser = things)]
    pub at_hand: Option<BTreeSet<Equipment>>,
    /// Leave out exercises with one of these flags, with commas between, such as osteoporosis
    #[arg(long, value_name = "FLAGS", value_parser = set::<PrescriberFlag>)]
    pub unflagged: Option<BTreeSet<PrescriberFlag>>,
}

pub fn named<T: Named>(name: &str) -> Result<T, String> {
    names::find(name).ok_or_else(|| names::all::<T>().join(", "))
}

fn kind(name: &str) -> Result<Kind, String> {
    let all = || Kind::ALL.iter().map(|kind| kind.rules().name()).collect::<Vec<_>>().join(", ");
    Kind::ALL.iter().copied().find(|kind| kind.rules().name() == name).ok_or_else(all)
}

/// Values with commas between; none for an empty text.
pub fn set<T: Named + Ord>(list: &str) -> Result<BTreeSet<T>, String> {
    list.split(',').map(str::trim).filter(|name| !name.is_empty()).map(named).collect()
}

fn things(list: &str) -> Result<BTreeSet<Equipment>, String> {
    if list == "nothing" { Ok(BTreeSet::new()) } else { set(list) }
}
