//! Sway of one leg under one set of conditions, session by session.
//!
//! Rule: the measured trials of a day are a session and are shown as their mean. The last session is compared with the first only if
//! both have at least three trials, by the repeatability within this person's sessions ([`crate::sway::session_change`]). Only the
//! same kind of source as that of the newest trial is used; trials of other kinds are left out.

use crate::saturating::at_most;
use crate::summary::SwayOn;
use crate::sway::{ReportedFigures, SESSION_MIN_TRIALS, SessionChange, SourceKind, session_change};
use crate::time::DayNumber;
use std::collections::BTreeMap;

/// The measured trials of one day.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct SwaySession {
    /// Day number.
    pub day: DayNumber,
    /// Number of trials with figures.
    pub trials: u16,
    /// Sideways (ML), mean of the trials' root mean squares, m/s2; `None` if any trial has no such figure.
    pub rms_ml: Option<f64>,
    /// In the horizontal plane, mean of the trials' root mean squares, m/s2.
    pub rms_planar: f64,
    /// Length of the path per second, mean of the trials, m/s3.
    pub path_per_s: f64,
    /// Number of touch-downs in all trials.
    pub touch_downs: u16,
}

/// All sessions, and whether the last differs from the first.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct SwaySeries {
    /// The kind of source.
    pub kind: SourceKind,
    /// The sessions, oldest first; days without a measured trial are left out.
    pub sessions: Vec<SwaySession>,
    /// Change of the sway in the horizontal plane from the first to the last session with three trials; `None` without two such
    /// sessions.
    pub all_round: Option<SessionChange>,
    /// The same for the path per second.
    pub path: Option<SessionChange>,
    /// Number of trials whose hold still has to be confirmed.
    pub to_confirm: u16,
    /// Number of trials without figures.
    pub not_measured: u16,
}

/// The series from each day's trials; `None` if no sensor was used.
pub fn sway_series(days: &BTreeMap<DayNumber, Vec<&SwayOn>>) -> Option<SwaySeries> {
    let kind = days.values().flatten().last()?.kind;
    let like = |day: &[&SwayOn]| -> Vec<ReportedFigures> {
        day.iter().filter(|one| one.kind == kind).filter_map(|one| one.figures).collect()
    };
    let measured: Vec<(DayNumber, Vec<ReportedFigures>, u16)> = days
        .iter()
        .map(|(day, trials)| {
            (*day, like(trials), trials.iter().map(|one| u16::from(one.touch_downs)).fold(0, u16::saturating_add))
        })
        .filter(|(_, figures, _)| !figures.is_empty())
        .collect();
    let of = |figure: fn(&ReportedFigures) -> u32| -> Vec<Vec<f64>> {
        measured.iter().map(|(_, trials, _)| trials.iter().map(|one| whole(figure(one))).collect()).collect()
    };
    let all = || days.values().flatten();
    Some(SwaySeries {
        kind,
        sessions: measured.iter().map(|(day, trials, touch_downs)| session(*day, trials, *touch_downs)).collect(),
        all_round: first_to_last(&of(|one| one.rms_planar)),
        path: first_to_last(&of(|one| one.path_per_s)),
        to_confirm: at_most(all().filter(|one| one.to_confirm).count()),
        not_measured: at_most(all().filter(|one| one.figures.is_none()).count()),
    })
}

fn session(day: DayNumber, trials: &[ReportedFigures], touch_downs: u16) -> SwaySession {
    let mean = |values: Vec<f64>| values.iter().sum::<f64>() / values.len() as f64;
    let ml: Option<Vec<f64>> = trials.iter().map(|one| one.rms_ml.map(whole)).collect();
    SwaySession {
        day,
        trials: at_most(trials.len()),
        rms_ml: ml.map(mean),
        rms_planar: mean(trials.iter().map(|one| whole(one.rms_planar)).collect()),
        path_per_s: mean(trials.iter().map(|one| whole(one.path_per_s)).collect()),
        touch_downs,
    }
}

/// Compares the first and the last session with enough trials.
fn first_to_last(sessions: &[Vec<f64>]) -> Option<SessionChange> {
    let mut long = sessions.iter().filter(|session| session.len() >= SESSION_MIN_TRIALS);
    let (first, last) = (long.next()?, long.next_back()?);
    let history: Vec<&[f64]> = sessions.iter().map(Vec::as_slice).collect();
    Some(session_change(first, last, &history))
}

/// Converts a logged figure (a whole number of ten-thousandths) to m/s2 or m/s3.
fn whole(tenths: u32) -> f64 {
    f64::from(tenths) / 10_000.0
}

#[cfg(test)]
mod tests {
    use super::*;

    fn trial(planar: u32, kind: SourceKind) -> SwayOn {
        let figures = Some(ReportedFigures { rms_ml: Some(planar / 2), rms_planar: planar, path_per_s: planar * 8 });
        SwayOn { trial: 0, kind, touch_downs: 1, figures, gap: false, to_confirm: false }
    }

    fn series(days: &[(u16, &[SwayOn])]) -> Option<SwaySeries> {
        sway_series(&days.iter().map(|(day, trials)| (DayNumber(*day), trials.iter().collect())).collect())
    }

    #[test]
    fn a_day_is_the_mean_of_its_trials() {
        let day = [trial(1000, SourceKind::Web), trial(2000, SourceKind::Web)];
        let found = series(&[(3, &day)]).expect("a sensor took part");
        let session = found.sessions[0];
        assert_eq!((session.day.0, session.trials, session.touch_downs), (3, 2, 2));
        assert!((session.rms_planar - 0.15).abs() < 1e-12 && (session.path_per_s - 1.2).abs() < 1e-12);
        assert_eq!((session.rms_ml.map(|ml| ml < 0.0751 && ml > 0.0749), found.all_round), (Some(true), None));
    }

    #[test]
    fn a_clear_difference_needs_two_sessions_of_three_trials() {
        let wide = [2000, 2050, 1950].map(|of| trial(of, SourceKind::Web));
        let narrow = [1000, 1050, 950].map(|of| trial(of, SourceKind::Web));
        let found = series(&[(0, &wide), (9, &narrow)]).expect("a sensor took part");
        assert!(matches!(found.all_round, Some(SessionChange::Changed { difference }) if difference < -0.09), "{found:?}");
        assert_eq!(series(&[(0, &wide), (9, &narrow[..2])]).expect("one").all_round, None);
    }

    #[test]
    fn another_kind_of_source_is_left_out() {
        let old = [2000, 2050, 1950].map(|of| trial(of, SourceKind::Web));
        let new = [1000, 1050, 950].map(|of| trial(of, SourceKind::Native));
        let found = series(&[(0, &old), (9, &new)]).expect("a sensor took part");
        assert_eq!((found.kind, found.sessions.len(), found.all_round), (SourceKind::Native, 1, None));
    }

    #[test]
    fn trials_without_figures_are_counted() {
        let blind = SwayOn { figures: None, to_confirm: true, ..trial(1, SourceKind::Web) };
        let found = series(&[(0, &[blind])]).expect("a sensor took part");
        assert_eq!((found.sessions.len(), found.not_measured, found.to_confirm), (0, 1, 1));
        assert_eq!(series(&[]), None);
    }
}
