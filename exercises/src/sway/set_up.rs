//! The three set-ups of a balance trial. Trials of different set-ups are never mixed in one series.
//!
//! A trial starts at the start tone, because the moment when the foot lifts is not measured. While a trial runs there is no other
//! control on the screen: if a touch ends it, a touch anywhere does.

use crate::choice::array;
use crate::run::SetUp;
use strum::VariantArray;

/// Where the phone is worn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum Placement {
    /// At the breastbone.
    Sternum,
    /// At the waist.
    Waist,
}

/// What is asked after a trial.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum AskAfter {
    /// No question.
    Nothing,
    /// A question about each event that the sensor proposed.
    Proposals,
    /// Always whether the foot touched, and when, because the patient could not report it during the trial.
    Always,
}

impl SetUp {
    /// All three, in the order A, B, C.
    pub const ALL: [SetUp; SetUp::VARIANTS.len()] = array(SetUp::VARIANTS);

    /// Where the phone is worn; `None` if it is not worn.
    pub fn placement(self) -> Option<Placement> {
        match self {
            SetUp::OnSupport => None,
            SetUp::AtBreastbone => Some(Placement::Sternum),
            SetUp::InPocket => Some(Placement::Waist),
        }
    }

    /// Whether a touch anywhere ends the trial.
    pub fn touch_ends(self) -> bool {
        !matches!(self, SetUp::InPocket)
    }

    /// Whether the sensor may propose a touch-down.
    pub fn sensor_proposes(self) -> bool {
        self.placement().is_some()
    }

    /// The question after the trial.
    pub fn ask_after(self) -> AskAfter {
        match self {
            SetUp::OnSupport => AskAfter::Nothing,
            SetUp::AtBreastbone => AskAfter::Proposals,
            SetUp::InPocket => AskAfter::Always,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn who_ends_a_trial_and_what_is_asked() {
        let row = |setup: SetUp| (setup.placement(), setup.touch_ends(), setup.sensor_proposes(), setup.ask_after());
        assert_eq!(
            SetUp::ALL.map(row),
            [
                (None, true, false, AskAfter::Nothing),
                (Some(Placement::Sternum), true, true, AskAfter::Proposals),
                (Some(Placement::Waist), false, true, AskAfter::Always),
            ]
        );
    }
}
