//! Closing a patient's case, and opening it again.

use crate::choice;
use chrono::NaiveDate;
use strum::VariantArray;

/// Longest reason in the clinician's own words, in characters.
pub const MAX_WORDS: usize = 200;
/// Largest number of closings of one case.
pub const MAX_CLOSINGS: usize = 50;

/// Why a case is closed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum CloseReason {
    /// The treatment is finished.
    Finished,
    /// The patient was sent on to somebody else.
    SentOn,
    /// The patient stopped coming.
    StoppedComing,
    /// Something else, which is said in words.
    Other,
}

impl CloseReason {
    /// All of them, in the order of the enum.
    pub const ALL: [CloseReason; Self::VARIANTS.len()] = choice::array(Self::VARIANTS);
}

/// One closing of a case.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Closing {
    /// The day on which it was closed.
    pub on: NaiveDate,
    /// Why.
    pub reason: CloseReason,
    /// More about it, at most [`MAX_WORDS`] characters on one line; empty for nothing.
    pub words: String,
    /// The day on which the case was opened again; `None` while it is closed.
    pub reopened: Option<NaiveDate>,
    /// The name of the clinician who closed it, where it is known.
    pub by: Option<String>,
}

/// The closing that is in force, of all closings of a case in their order; `None` if the case is open.
pub fn in_force(closings: &[Closing]) -> Option<&Closing> {
    closings.last().filter(|closing| closing.reopened.is_none())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_the_last_closing_can_be_in_force() {
        let day = NaiveDate::from_ymd_opt(2027, 3, 1).expect("a day");
        let closing =
            |reopened| Closing { on: day, reason: CloseReason::Finished, words: String::new(), reopened, by: None };
        let (open, closed) = (closing(Some(day)), closing(None));
        assert_eq!(in_force(&[]), None);
        assert_eq!(in_force(&[closed.clone(), open.clone()]), None);
        assert_eq!(in_force(&[open, closed.clone()]), Some(&closed));
    }
}
