//! What a finding may be.

use super::{Finding, MAX_TRIALS, Measure, Measured};
use crate::plain_text::is_hidden;
use crate::plan::Side;

/// Longest line about a complaint, or about the change, in characters.
pub const MAX_LINE: usize = 120;
/// Longest name of a movement or of another measure, in characters.
pub const MAX_MOVEMENT: usize = 40;
/// Longest unit, in characters.
pub const MAX_UNIT: usize = 12;
/// Longest note or reason, in characters.
pub const MAX_NOTE: usize = 1_000;
/// The most entries of one patient: twenty at each of two hundred visits.
pub const MAX_ENTRIES: usize = 4_000;

/// Why a finding cannot be noted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum VisitFault {
    /// A text is empty, too long, or has characters that are not shown.
    Text {
        /// The most characters.
        most: u16,
    },
    /// A number is out of range, or should be whole.
    Value {
        /// The smallest.
        least: i16,
        /// The largest.
        most: i16,
    },
    /// There is no result, or there are too many.
    Trials,
    /// The side is missing.
    Side,
}

impl Finding {
    /// Whether it can be noted.
    ///
    /// # Errors
    /// The first fault.
    pub fn check(&self) -> Result<(), VisitFault> {
        match self {
            Finding::Complaint(complained) if complained.side == Side::Alternating => Err(VisitFault::Side),
            Finding::Complaint(complained) => text(&complained.line, 0, MAX_LINE),
            Finding::Change(change) if !(-5..=5).contains(&change.score) => Err(VisitFault::Value { least: -5, most: 5 }),
            Finding::Change(change) => text(&change.words, 0, MAX_LINE),
            Finding::Measure(measure) => measure.check(),
            Finding::Screening(_) => Ok(()),
            Finding::Note(note) => text(note, 1, MAX_NOTE),
            Finding::Overridden(overridden) => text(&overridden.reason, 1, MAX_NOTE),
        }
    }
}

impl Measure {
    fn check(&self) -> Result<(), VisitFault> {
        match &self.what {
            Measured::Pain { movement } | Measured::Motion { movement } => text(movement, 1, MAX_MOVEMENT)?,
            Measured::Other { name, unit } => {
                text(name, 1, MAX_MOVEMENT)?;
                text(unit, 0, MAX_UNIT)?;
            }
            Measured::Grip | Measured::ChairRise | Measured::Stance { .. } => {}
        }
        if self.what.needs_side() && self.side.is_none() {
            return Err(VisitFault::Side);
        }
        if !(1..=MAX_TRIALS).contains(&self.tenths.len()) {
            return Err(VisitFault::Trials);
        }
        let range = self.what.range();
        let fits = |tenths: &i32| range.contains(tenths) && (!self.what.is_whole() || tenths % 10 == 0);
        let whole = |tenths: i32| (tenths / 10) as i16;
        let out = VisitFault::Value { least: whole(*range.start()), most: whole(*range.end()) };
        if self.tenths.iter().all(fits) { Ok(()) } else { Err(out) }
    }
}

fn text(text: &str, least: usize, most: usize) -> Result<(), VisitFault> {
    let shown = !text.chars().any(|character| is_hidden(character) || matches!(character, '\n' | '\t') && most < MAX_NOTE);
    let fits = (least..=most).contains(&text.trim().chars().count()) && text.chars().count() <= most;
    if shown && fits { Ok(()) } else { Err(VisitFault::Text { most: most as u16 }) }
}
