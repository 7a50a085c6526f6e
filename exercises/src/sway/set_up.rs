//! The three set-ups of a balance trial. They are never mixed in one series.
//!
//! A trial starts at the start tone, not at a lift-off that nothing measures. While it runs there is no other control
//! on the screen: where a touch ends it, any touch does.

use crate::choice::array;
use crate::run::SetUp;
use strum::VariantArray;

/// Where a worn phone is.
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
    /// Nothing.
    Nothing,
    /// About each event that the sensor proposed.
    Proposals,
    /// Always whether the foot touched, and when: there was no way to say so before.
    Always,
}

impl SetUp {
    /// All three, in the order A, B, C.
    pub const ALL: [SetUp; SetUp::VARIANTS.len()] = array(SetUp::VARIANTS);

    /// Where the phone is worn; `None` where it is not.
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

    /// What is asked afterwards.
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
