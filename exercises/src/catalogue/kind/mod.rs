//! The kinds of exercise. Each has a module of its own with its dose, the course of a run, what counts as done, how a step
//! changes the dose, and its names and codes in files.
//!
//! A new kind needs a line in [`Kind`], a variant of [`Dose`] and a module with its [`KindRules`]. All other code asks
//! [`Kind::rules`] and names no kind, except that its texts are in the crate `words`, and that the window has one table from
//! a kind to its screen.

mod balance;
mod beat;
mod breath;
mod care;
mod count;
mod dose;
mod go;
mod hold;
mod limit;
mod movement;
mod pace;
mod prompt;
mod quota;
mod reps;
mod rules;
mod stretch;
mod tempo;

pub use pace::BreathPace;
pub use rules::{
    DoseField, DoseUnit, KindRules, Lead, PartCourse, PartWork, RunFlags, StepForward, Totals, UsualTimes, WorkForm,
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
            /// All kinds, in the order of their codes.
            pub const ALL: &'static [Kind] = &[$(Kind::$kind),+];

            /// The rules of this kind.
            pub fn rules(self) -> &'static dyn KindRules {
                match self {
                    $(Kind::$kind => &$rules,)+
                }
            }
        }
    };
}

kinds! {
    /// Isometric: a position is held for some seconds, several times.
    Hold => hold::HoldRules,
    /// Timed trials, each until the foot touches down or the target is reached.
    Balance => balance::BalanceRules,
    /// Counted movements with a tempo.
    Reps => reps::RepsRules,
    /// A position is eased into and kept without effort for some seconds, several times.
    Stretch => stretch::StretchRules,
    /// Movements at the person's own pace.
    Move => movement::MoveRules,
    /// An activity for some minutes, such as walking.
    Go => go::GoRules,
    /// Breathing at a pace, for some minutes.
    Breath => breath::BreathRules,
    /// Warmth, cold, rest or a ball for some minutes; no exercise.
    Care => care::CareRules,
    /// Something to do at once and without a dose.
    Prompt => prompt::PromptRules,
    /// Timed trials on both feet, each until the person steps, holds on or reaches the cap.
    Limit => limit::LimitRules,
    /// A test: movements are counted in a set time, and their number is the result.
    Count => count::CountRules,
    /// Movements on a beat for some seconds, several times.
    Beat => beat::BeatRules,
    /// Graded activity: minutes that the calendar raises.
    Quota => quota::QuotaRules,
    /// Graded activity: a number of times that the calendar raises.
    QuotaTimes => quota::QuotaTimesRules,
}

/// The dose of one run, for one side if the exercise is done for each side.
///
/// Any values can be put in; a dose that comes from outside must pass [`Dose::check`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Dose {
    /// For [`Kind::Hold`].
    Hold {
        /// Number of holds, 1 to 50.
        repetitions: u8,
        /// Seconds of each hold, 1 to 120.
        hold_s: u16,
        /// Seconds of rest between two holds, 0 to 300.
        rest_s: u16,
    },
    /// For [`Kind::Balance`].
    Balance {
        /// Number of trials, 1 to 10.
        trials: u8,
        /// Seconds at which a trial is complete and ends, 5 to 60.
        target_s: u16,
        /// Seconds of rest between two trials, 0 to 300.
        rest_s: u16,
    },
    /// For [`Kind::Reps`].
    Reps {
        /// Number of sets, 1 to 10.
        sets: u8,
        /// Number of movements in a set, 1 to 50.
        repetitions: u8,
        /// Seconds of rest between two sets, 0 to 300.
        rest_s: u16,
        /// Seconds of each part of a movement.
        tempo: Tempo,
    },
    /// For [`Kind::Stretch`].
    Stretch {
        /// Number of stretches, 1 to 50.
        repetitions: u8,
        /// Seconds of each stretch, without easing into it, 5 to 120.
        stretch_s: u16,
        /// Seconds of rest between two stretches, 0 to 300.
        rest_s: u16,
    },
    /// For [`Kind::Move`].
    Move {
        /// Number of movements, 1 to 50; of an exercise whose sides take turns, to each side.
        repetitions: u8,
    },
    /// For [`Kind::Go`].
    Go {
        /// Minutes, 1 to 180.
        minutes: u8,
        /// The effort aimed at, 0 (none) to 10 (the most possible).
        effort: u8,
    },
    /// For [`Kind::Breath`].
    Breath {
        /// Minutes, 1 to 30; the last breath is completed.
        minutes: u8,
        /// Seconds of each part of a breath.
        pace: BreathPace,
    },
    /// For [`Kind::Care`].
    Care {
        /// Minutes, 1 to 60.
        minutes: u8,
    },
    /// For [`Kind::Prompt`], which has no dose.
    Prompt,
    /// For [`Kind::Limit`].
    Limit {
        /// Number of trials, 1 to 10.
        trials: u8,
        /// Seconds at which a trial is complete and ends, 5 to 60.
        cap_s: u16,
        /// Seconds of rest between two trials, 0 to 300.
        rest_s: u16,
    },
    /// For [`Kind::Count`].
    Count {
        /// Seconds in which movements are counted, 10 to 120.
        seconds: u16,
    },
    /// For [`Kind::Beat`].
    Beat {
        /// Number of repetitions, 1 to 50.
        repetitions: u8,
        /// Seconds of each repetition, 5 to 120.
        seconds: u16,
        /// Beats a minute, 30 to 180.
        per_minute: u8,
        /// Seconds of rest between two repetitions, 0 to 300.
        rest_s: u16,
    },
    /// For [`Kind::Quota`].
    Quota {
        /// Minutes on the day on which the card is issued, 1 to 180; in a run those of its day.
        minutes: u8,
        /// Minutes more after each interval, 0 to 30.
        step: u8,
        /// Days of an interval, 1 to 28.
        every_days: u8,
        /// Minutes beyond which it does not grow, 1 to 180.
        goal: u8,
    },
    /// For [`Kind::QuotaTimes`].
    QuotaTimes {
        /// Number of times on the day on which the card is issued, 1 to 50; in a run those of its day.
        times: u8,
        /// Times more after each interval, 0 to 30.
        step: u8,
        /// Days of an interval, 1 to 28.
        every_days: u8,
        /// The number beyond which it does not grow, 1 to 180, but never more than 50.
        goal: u8,
    },
}

impl Dose {
    /// The kind of exercise that this dose is for.
    pub fn kind(&self) -> Kind {
        match self {
            Dose::Hold { .. } => Kind::Hold,
            Dose::Balance { .. } => Kind::Balance,
            Dose::Reps { .. } => Kind::Reps,
            Dose::Stretch { .. } => Kind::Stretch,
            Dose::Move { .. } => Kind::Move,
            Dose::Go { .. } => Kind::Go,
            Dose::Breath { .. } => Kind::Breath,
            Dose::Care { .. } => Kind::Care,
            Dose::Prompt => Kind::Prompt,
            Dose::Limit { .. } => Kind::Limit,
            Dose::Count { .. } => Kind::Count,
            Dose::Beat { .. } => Kind::Beat,
            Dose::Quota { .. } => Kind::Quota,
            Dose::QuotaTimes { .. } => Kind::QuotaTimes,
        }
    }
}

impl Kind {
    /// The kind with this code in cards and logs; `None` if there is no such kind.
    pub fn of_code(code: u8) -> Option<Kind> {
        Kind::ALL.iter().copied().find(|kind| kind.rules().code() == code)
    }

    /// The form in which the work done is recorded.
    pub fn form(self) -> WorkForm {
        self.rules().form()
    }

    /// Whether it trains balance, so that a fall is possible.
    pub fn is_balance(self) -> bool {
        self.rules().is_balance()
    }

    /// Whether each trial belongs to one leg.
    pub fn is_by_leg(self) -> bool {
        self.rules().is_by_leg()
    }
}

#[cfg(test)]
mod tests;
