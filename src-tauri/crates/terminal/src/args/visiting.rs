//! What may be typed about a visit.

use clap::{Args, Subcommand};
use exercises::catalogue::{Eyes, PrescriberFlag, Region, Surface};
use exercises::plan::{BodySide, Side};
use exercises::visit::{Advice, Moment};
use std::collections::BTreeSet;

use super::catalogue::{named, set};

/// Whose visit, and what is corrected.
#[derive(Args)]
pub struct Whose {
    /// The patient's code
    pub code: String,
    /// The number of the finding that this one corrects
    #[arg(long, value_name = "N")]
    pub correct: Option<u32>,
}

/// A patient's visits.
#[derive(Subcommand)]
pub enum VisitCommand {
    /// Show what was found at all visits, the newest first
    Show {
        /// The patient's code
        code: String,
    },
    /// Where it hurts today, and how much
    Complaint {
        #[command(flatten)]
        whose: Whose,
        /// The region, such as low-back
        #[arg(value_parser = named::<Region>)]
        region: Region,
        /// Pain, 0 to 10
        score: u8,
        /// The side: left, right, both or neither
        #[arg(long, default_value = "neither", value_parser = named::<Side>)]
        side: Side,
        /// One line in the patient's words
        #[arg(long, default_value = "", value_name = "TEXT")]
        line: String,
    },
    /// How it is altogether since the last visit
    #[command(allow_negative_numbers = true)]
    Change {
        #[command(flatten)]
        whose: Whose,
        /// From -5 (very much worse) to 5 (very much better)
        score: i8,
        /// In the patient's words
        #[arg(long, default_value = "", value_name = "TEXT")]
        words: String,
    },
    /// Something measured: pain (0 to 10), motion (degrees), grip (kg), chair-rise (in 30 s), stance (s), other
    #[command(allow_negative_numbers = true)]
    Measure {
        #[command(flatten)]
        whose: Whose,
        /// What was measured
        #[arg(value_parser = ["pain", "motion", "grip", "chair-rise", "stance", "other"])]
        what: String,
        /// The results, up to three
        #[arg(required = true, num_args = 1..)]
        values: Vec<f64>,
        /// The movement, or the name of another measure
        #[arg(long = "of", default_value = "", value_name = "TEXT")]
        movement: String,
        /// The unit of another measure
        #[arg(long, default_value = "", value_name = "TEXT")]
        unit: String,
        /// The side: left or right
        #[arg(long, value_parser = named::<BodySide>)]
        side: Option<BodySide>,
        /// When: before or after treatment, or once
        #[arg(long = "when", default_value = "once", value_parser = named::<Moment>)]
        moment: Moment,
        /// On what the person stood
        #[arg(long, default_value = "firm", value_parser = named::<Surface>)]
        surface: Surface,
        /// The eyes: open or closed
        #[arg(long, default_value = "open", value_parser = named::<Eyes>)]
        eyes: Eyes,
    },
    /// What was asked about before anything is prescribed; the conditions hold for the next plans too
    Screening {
        #[command(flatten)]
        whose: Whose,
        /// The conditions that hold, with commas between; "" for none
        #[arg(long, value_name = "FLAGS", value_parser = set::<PrescriberFlag>, required_unless_present = "same")]
        flags: Option<BTreeSet<PrescriberFlag>>,
        /// The patient fell in the last twelve months
        #[arg(long)]
        fell: bool,
        /// Everything is as at the last screening
        #[arg(long, conflicts_with_all = ["flags", "fell"])]
        same: bool,
    },
    /// A note
    Note {
        #[command(flatten)]
        whose: Whose,
        /// The text
        text: String,
    },
    /// Why a proposal of the review is not followed
    Override {
        #[command(flatten)]
        whose: Whose,
        /// The item's number
        item: u8,
        /// What was proposed
        #[arg(value_parser = named::<Advice>)]
        proposed: Advice,
        /// The reason
        reason: String,
    },
    /// Take a finding back
    TakeBack {
        /// The patient's code
        code: String,
        /// Its number
        n: u32,
    },
}
