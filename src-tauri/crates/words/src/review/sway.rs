//! Is it working: sway, where the phone was on the body.

use super::Sentence;
use crate::Words;
use exercises::change::{SwaySeries, SwaySession};
use exercises::sway::{ReportedFigures, SessionChange};

impl Words {
    /// The last measured day, whether it differs from the first, and what is uncertain; a line each.
    pub fn sway_series(self, series: &SwaySeries) -> Vec<String> {
        let last = series.sessions.last().map(|last| {
            let sway = self.sway(&shown(last));
            self.filled(Sentence::SwayLast, &[("n", &last.trials), ("sway", &sway)])
        });
        let changed = last.as_ref().map(|_| match series.all_round {
            Some(SessionChange::Changed { difference }) => {
                let by = format!("{}{}", if difference > 0.0 { "+" } else { "−" }, self.number(difference.abs() * 100.0));
                self.filled(Sentence::SwayChanged, &[("by", &by)])
            }
            Some(SessionChange::NoClearChange { .. }) => self.sentence(Sentence::SwayUnclear).to_owned(),
            Some(SessionChange::TooFewTrials) | None => self.sentence(Sentence::SwayFew).to_owned(),
        });
        let counted = |n: u16, say| (n > 0).then(|| self.filled(say, &[("n", &n)]));
        let open = counted(series.to_confirm, Sentence::SwayToConfirm);
        [last, changed, open, counted(series.not_measured, Sentence::SwayNotMeasured)].into_iter().flatten().collect()
    }
}

/// A session's means as the patient's screen counts figures.
fn shown(session: &SwaySession) -> ReportedFigures {
    let tenths = |figure: f64| (figure * 10_000.0).round() as u32;
    ReportedFigures {
        rms_ml: session.rms_ml.map(tenths),
        rms_planar: tenths(session.rms_planar),
        path_per_s: tenths(session.path_per_s),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Lang;
    use exercises::sway::SourceKind;

    #[test]
    fn the_last_day_the_difference_and_what_is_open() {
        let day = SwaySession { day: 9, trials: 3, rms_ml: None, rms_planar: 0.12, path_per_s: 1.0, touch_downs: 0 };
        let series = SwaySeries {
            kind: SourceKind::Web,
            sessions: vec![SwaySession { day: 0, rms_planar: 0.2, ..day }, day],
            all_round: Some(SessionChange::Changed { difference: -0.08 }),
            path: None,
            to_confirm: 1,
            not_measured: 0,
        };
        let said = Words::new(Lang::En).sway_series(&series);
        let last = "Sway, last measured day (3 trials): all round 12\u{a0}cm/s², path a second 100\u{a0}cm/s³.";
        assert_eq!((said.len(), said[0].as_str()), (3, last));
        assert!(said[1].starts_with("All round −8 cm/s²") && said[2].starts_with("1 time is still"), "{said:?}");
    }
}
