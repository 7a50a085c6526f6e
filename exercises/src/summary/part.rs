//! The parts of a summary as they are written, for whoever wants to see each of its bytes.

use strum::VariantArray;

/// A part of a summary, in the order in which they are written. [`super::Summary`] says what each contains.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum SummaryPart {
    /// The plan's id.
    Plan,
    /// The log's id.
    Log,
    /// The summary's number.
    Counter,
    /// The first day.
    From,
    /// The last day.
    Until,
    /// The cards that were taken.
    Taken,
    /// The days on which the program was opened.
    Seen,
    /// How each slot went.
    Days,
    /// The runs.
    Runs,
    /// Whether a complaint had settled by the next morning.
    Settled,
    /// The ratings of activities.
    Rated,
    /// The alarms.
    Alarms,
    /// The delays after reminders, by week.
    Delays,
    /// The note.
    Note,
    /// What was corrected.
    Corrections,
    /// The ratings of pain in the morning.
    Mornings,
    /// The ratings of pain while doing an item.
    During,
    /// When the person said that they are well again.
    WellAgain,
    /// The ids that the log had before.
    Former,
}
