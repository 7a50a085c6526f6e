//! How an exercise is made harder, step by step, as its author states it.

use super::kind::{Kind, StepForward};
use strum::VariantArray;

/// One way in which an exercise is made harder.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct StepRule {
    /// What grows.
    pub grows: Grows,
    /// What the rule is based on.
    pub basis: Basis,
}

/// What a step makes harder.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Grows {
    /// One quantity of the dose.
    Dose(StepForward),
    /// The next level of the same ladder, with the dose back at that level's own.
    Level,
}

/// What a dose or a step rule is based on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Basis {
    /// What is usual in the trade; no trial is known.
    Convention,
    /// The usual time of a stretch, 15 to 30 s.
    StretchTime,
    /// The working range of holds of this program, 5 to 30 s with little effort (our design).
    WorkingRange,
    /// Holds of at most 10 s, repeated.
    ShortHolds,
    /// 8 to 12 repetitions on 2 to 3 days a week.
    EightToTwelve,
    /// Work of the deep neck muscles with little load, up to 10 holds of 10 s.
    NeckLowLoad,
    /// Standing up to 60 s before the surface is changed.
    StanceTime,
    /// Long holds for tendons.
    TendonHolds,
    /// Graded activity that starts from a share of what can be done now.
    GradedActivity,
}

impl Basis {
    /// The publication in which the figures were read; `None` for a convention, for our own design, and for figures that were
    /// recalled and not read, which are never shown with a source.
    pub fn source(self) -> Option<&'static str> {
        match self {
            Basis::StanceTime => Some("J Foot Ankle Res 2022, 10.1186/s13047-022-00514-x"),
            Basis::GradedActivity => Some("BMC Public Health 7:254"),
            Basis::Convention
            | Basis::StretchTime
            | Basis::WorkingRange
            | Basis::ShortHolds
            | Basis::EightToTwelve
            | Basis::NeckLowLoad
            | Basis::TendonHolds => None,
        }
    }
}

/// The rules of a kind for exercises that state none: its doses first, then the next level.
pub(super) fn of_kind(kind: Kind) -> Vec<Grows> {
    kind.rules().forward().iter().copied().map(Grows::Dose).chain([Grows::Level]).collect()
}
