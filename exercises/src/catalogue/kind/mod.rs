//! The kinds of exercise, one module a kind: its dose, its run, what counts as done, how a step changes it, and its names and
//! codes in files.
//!
//! A new kind is a line in [`Kind`], a variant of [`Dose`] and a module with its [`KindRules`]. Everything else asks
//! [`Kind::rules`] and knows no kind by name; texts ask `words`, and the window has one table from a kind to its screen.

mod balance;
mod dose;
mod hold;
mod reps;
mod rules;
mod tempo;

pub use rules::{
    AskPain, DoseField, DoseUnit, KindRules, Lead, PartCourse, PartWork, RunFlags, StepForward, Totals, UsualTimes, WorkForm,
};
pub use tempo::Tempo;

macro_rules! kinds {
    ($($(#[doc = $doc:literal])+ $kind:ident => $rules:path,)+) => {
        /// How an exercise is timed.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        #[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
        pub enum Kind {
            $($(#[doc = $doc])+ $kind,)+
        }

        impl Kind {
            /// All of them, in the order of their codes.
            pub const ALL: &'static [Kind] = &[$(Kind::$kind),+];

            /// Everything that depends on the kind.
            pub fn rules(self) -> &'static dyn KindRules {
                match self {
                    $(Kind::$kind => &$rules,)+
                }
            }
        }
    };
}

kinds! {
    /// Isometric: a position is held for seconds, several times.
    Hold => hold::HoldRules,
    /// Timed trials until a touch-down or the target.
    Balance => balance::BalanceRules,
    /// Movements counted, with a tempo.
    Reps => reps::RepsRules,
}

/// The dose of one doing, for one side where the exercise has sides.
///
/// Construct it freely and call [`Dose::check`] where it comes from outside.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Dose {
    /// For [`Kind::Hold`].
    Hold {
        /// How many holds. 1 to 50.
        repetitions: u8,
        /// Seconds of each hold. 1 to 120.
        hold_s: u16,
        /// Seconds between two holds. 0 to 300.
        rest_s: u16,
    },
    /// For [`Kind::Balance`].
    Balance {
        /// How many trials. 1 to 10.
        trials: u8,
        /// Seconds at which a trial is full and ends. 5 to 60.
        target_s: u16,
        /// Seconds between two trials. 0 to 300.
        rest_s: u16,
    },
    /// For [`Kind::Reps`].
    Reps {
        /// How many sets. 1 to 10.
        sets: u8,
        /// Movements in a set. 1 to 50.
        repetitions: u8,
        /// Seconds between two sets. 0 to 300.
        rest_s: u16,
        /// Seconds of each part of a movement.
        tempo: Tempo,
    },
}

impl Dose {
    /// The kind of exercise that this dose is for.
    pub fn kind(&self) -> Kind {
        match self {
            Dose::Hold { .. } => Kind::Hold,
            Dose::Balance { .. } => Kind::Balance,
            Dose::Reps { .. } => Kind::Reps,
        }
    }
}

impl Kind {
    /// The kind of a code in cards and logs.
    pub fn of_code(code: u8) -> Option<Kind> {
        Kind::ALL.iter().copied().find(|kind| kind.rules().code() == code)
    }

    /// The form in which it is recorded what was done.
    pub fn form(self) -> WorkForm {
        self.rules().form()
    }

    /// Whether it is practised standing on one leg, so that a fall is possible.
    pub fn is_balance(self) -> bool {
        self.rules().is_balance()
    }
}

#[cfg(test)]
mod tests;
