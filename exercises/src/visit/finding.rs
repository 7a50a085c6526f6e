//! One finding, and the entry that it is in.

use super::Measure;
use crate::catalogue::{PrescriberFlag, Region};
use crate::choice::array;
use crate::id::ItemId;
use crate::plan::Side;
use crate::score::Score;
use crate::suggest::Proposal;
use crate::time::Stamp;
use chrono::NaiveDate;
use std::collections::BTreeSet;
use strum::VariantArray;

/// An entry of a patient's visits.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct VisitEntry {
    /// Its number, which rises with every entry.
    pub n: u32,
    /// When it was written.
    pub at: Stamp,
    /// The day of the visit.
    pub day: NaiveDate,
    /// The number of the entry that it corrects.
    pub replaces: Option<u32>,
    /// What was found; `None` where an entry is taken back.
    pub finding: Option<Finding>,
    /// The name of the clinician who wrote it, where it is known.
    pub by: Option<String>,
}

/// What was found at a visit.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Finding {
    /// Where it hurts today.
    Complaint(Complained),
    /// How it is altogether, compared with the last visit.
    Change(OverallChange),
    /// Something measured.
    Measure(Measure),
    /// What was asked about before anything is prescribed.
    Screening(Screening),
    /// A note of the clinician's.
    Note(String),
    /// Why a proposal was not followed.
    Overridden(Overridden),
}

/// Where it hurts today.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Complained {
    /// The region of the body.
    pub region: Region,
    /// The side of the body.
    pub side: Side,
    /// One line in the patient's words; may be empty.
    pub line: String,
    /// Pain, 0 to 10.
    pub score: Score,
}

/// How it is altogether, compared with the last visit.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct OverallChange {
    /// From -5 (very much worse) to +5 (very much better); 0 is no change.
    pub score: i8,
    /// In the patient's words; may be empty.
    pub words: String,
}

/// What was asked about before anything is prescribed.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Screening {
    /// The conditions that hold; of all others it was asked, and they do not.
    pub flags: BTreeSet<PrescriberFlag>,
    /// Whether the patient fell in the last twelve months.
    pub fell: bool,
}

/// Why a proposal was not followed.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Overridden {
    /// The item.
    pub item: ItemId,
    /// What was proposed.
    pub proposed: Advice,
    /// The clinician's reason.
    pub reason: String,
}

/// What the rules propose, without its details.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Advice {
    /// To talk about it.
    Talk,
    /// To make it easier.
    Ease,
    /// To ask less.
    Reduce,
    /// To make it harder.
    Progress,
    /// To keep it.
    Keep,
}

impl Advice {
    /// All of them, in the order of the enum.
    pub const ALL: [Advice; Advice::VARIANTS.len()] = array(Advice::VARIANTS);

    /// That of a proposal.
    pub fn of(proposal: &Proposal) -> Advice {
        match proposal {
            Proposal::Talk => Advice::Talk,
            Proposal::Ease(_) => Advice::Ease,
            Proposal::Reduce(_) => Advice::Reduce,
            Proposal::Progress(_) => Advice::Progress,
            Proposal::Keep => Advice::Keep,
        }
    }
}
