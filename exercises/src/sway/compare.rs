//! Decides whether two sessions on one leg differ.
//!
//! What is shown is the mean of at least 3 measured trials of a leg and session. A change is reported only if |mean2 - mean1| > 2.77
//! s_w sqrt((1/n1 + 1/n2)/2), with s_w the pooled standard deviation within that person's sessions, from at least 6 trials (2.77 =
//! 1.96 sqrt 2: the repeatability of Bland & Altman 1996, BMJ 312:1654, for means of n). Otherwise there is no clear change. Trials
//! are compared only if they share the kind of source, set-up, settle time and version. No norms and no statement about risk are
//! derived.

use super::{
    lanes::mean,
    parameters::{SETTLE_S, VERSION},
    source::{Source, SourceKind},
};
use crate::run::SetUp;

/// Least number of measured trials for a session's mean.
pub const SESSION_MIN_TRIALS: usize = 3;
/// Least number of trials for the spread within sessions.
pub const SPREAD_MIN_TRIALS: usize = 6;
/// 1.96 sqrt 2, as published.
const REPEATABILITY: f64 = 2.77;

/// The properties that two trials must share to be compared.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Comparable {
    /// The kind of source.
    pub kind: SourceKind,
    /// The set-up, which includes where the phone is worn.
    pub set_up: SetUp,
    /// Time left out after the start tone, s.
    pub settle_s: f64,
    /// The version of the processing.
    pub version: &'static str,
}

impl Comparable {
    /// The properties of trials from `source` that are processed by this version.
    pub fn of(source: &Source) -> Comparable {
        Comparable { kind: source.kind, set_up: source.set_up, settle_s: SETTLE_S, version: VERSION }
    }
}

/// The result of comparing the means of two sessions.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum SessionChange {
    /// A session has fewer than [`SESSION_MIN_TRIALS`] measured trials.
    TooFewTrials,
    /// The difference may be chance, or there are fewer than [`SPREAD_MIN_TRIALS`] trials to judge it by.
    NoClearChange {
        /// Mean of the later session minus mean of the earlier session, in the unit of the figure.
        difference: f64,
    },
    /// The difference is larger than chance explains.
    Changed {
        /// Mean of the later session minus mean of the earlier session, in the unit of the figure.
        difference: f64,
    },
}

/// The pooled standard deviation within sessions; `None` with fewer than [`SPREAD_MIN_TRIALS`] trials, or if no session has two.
pub fn within_sd(sessions: &[&[f64]]) -> Option<f64> {
    let trials: usize = sessions.iter().map(|session| session.len()).sum();
    let free: usize = sessions.iter().map(|session| session.len().saturating_sub(1)).sum();
    if trials < SPREAD_MIN_TRIALS || free == 0 {
        return None;
    }
    let squares: f64 = sessions.iter().map(|session| squares_about_mean(session)).sum();
    Some(libm::sqrt(squares / free as f64)).filter(|sd| sd.is_finite())
}

/// Compares a figure between two sessions of one leg. `history` holds all sessions of that leg that count for the spread, including
/// these two.
pub fn session_change(earlier: &[f64], later: &[f64], history: &[&[f64]]) -> SessionChange {
    if earlier.len() < SESSION_MIN_TRIALS || later.len() < SESSION_MIN_TRIALS {
        return SessionChange::TooFewTrials;
    }
    let difference = mean(later) - mean(earlier);
    let share = 1.0 / earlier.len() as f64 + 1.0 / later.len() as f64;
    let beyond = |sd: f64| difference.abs() > REPEATABILITY * sd * libm::sqrt(share / 2.0);
    if within_sd(history).is_some_and(beyond) {
        SessionChange::Changed { difference }
    } else {
        SessionChange::NoClearChange { difference }
    }
}

fn squares_about_mean(session: &[f64]) -> f64 {
    let middle = mean(session);
    session.iter().map(|value| (value - middle) * (value - middle)).sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    const FIRST: [f64; 3] = [0.20, 0.22, 0.24];

    #[test]
    fn spread_is_pooled_over_sessions() {
        let sd = within_sd(&[&FIRST, &[0.10, 0.12, 0.14]]).expect("six trials");
        assert!((sd - 0.02).abs() < 1e-12);
        assert_eq!(within_sd(&[&FIRST, &[0.1, 0.2]]), None);
        assert_eq!(within_sd(&[&[0.1][..]; 6]), None);
    }

    #[test]
    fn a_difference_beyond_the_repeatability_is_a_change() {
        // 2.77 * 0.02 * sqrt((1/3 + 1/3)/2) = 0.03199.
        let by = |shift: f64| {
            let later = FIRST.map(|value| value - shift);
            session_change(&FIRST, &later, &[&FIRST, &later])
        };
        assert!(matches!(by(0.0321), SessionChange::Changed { difference } if difference < 0.0));
        assert!(matches!(by(0.0319), SessionChange::NoClearChange { .. }));
    }

    #[test]
    fn two_trials_are_too_few() {
        assert_eq!(session_change(&FIRST, &[0.1, 0.1], &[&FIRST]), SessionChange::TooFewTrials);
    }

    #[test]
    fn an_unknown_spread_is_no_clear_change() {
        let later = [0.9, 0.9, 0.9];
        let got = session_change(&FIRST, &later, &[&FIRST]);
        assert!(matches!(got, SessionChange::NoClearChange { .. }));
    }

    #[test]
    fn other_sources_and_set_ups_are_not_comparable() {
        let file = Source::file();
        let web = Source { kind: SourceKind::Web, ..file };
        let pouch = Source { set_up: SetUp::InPocket, ..file };
        assert_eq!(Comparable::of(&file), Comparable::of(&file));
        assert_ne!(Comparable::of(&file), Comparable::of(&web));
        assert_ne!(Comparable::of(&file), Comparable::of(&pouch));
    }
}
