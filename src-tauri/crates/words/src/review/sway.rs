//! Is the plan working: sway, if the patient wore the phone.

use crate::{Key, Words};
use exercises::change::{SwaySeries, SwaySession};
use exercises::sway::{ReportedFigures, SessionChange};

impl Words {
    /// The last measured day, whether it differs from the first, and what is uncertain; one line each.
    pub fn sway_series(self, series: &SwaySeries) -> Vec<String> {
        let last = series.sessions.last().map(|last| {
            let sway = self.sway(&shown(last));
            self.review_sway_last(last.trials, &sway)
        });
        let changed = last.as_ref().map(|_| match series.all_round {
            Some(SessionChange::Changed { difference }) => {
                let by = self.shown(self.number(difference * 100.0));
                self.review_sway_changed(&if difference > 0.0 { format!("+{by}") } else { by })
            }
            Some(SessionChange::NoClearChange { .. }) => self.text(Key::ReviewSwayUnclear).to_owned(),
            Some(SessionChange::TooFewTrials) | None => self.text(Key::ReviewSwayFew).to_owned(),
        });
        let open = (series.to_confirm > 0).then(|| self.review_sway_not_certain(series.to_confirm));
        let without = (series.not_measured > 0).then(|| self.review_sway_not_measured(series.not_measured));
        [last, changed, open, without].into_iter().flatten().collect()
    }
}

/// A session's means in the units of the patient's screen.
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
    use crate::Locale;
    use exercises::sway::SourceKind;
    use exercises::time::DayNumber;

    #[test]
    fn the_last_day_the_difference_and_open_questions_are_shown() {
        let day =
            SwaySession { day: DayNumber(9), trials: 3, rms_ml: None, rms_planar: 0.12, path_per_s: 1.0, touch_downs: 0 };
        let series = SwaySeries {
            kind: SourceKind::Web,
            sessions: vec![SwaySession { day: DayNumber(0), rms_planar: 0.2, ..day }, day],
            all_round: Some(SessionChange::Changed { difference: -0.08 }),
            path: None,
            to_confirm: 1,
            not_measured: 0,
        };
        let said = Words::new(Locale::En).sway_series(&series);
        let last = "Sway, last measured day (3 attempts): all directions 12\u{a0}cm/s², path per second 100\u{a0}cm/s³.";
        assert_eq!((said.len(), said[0].as_str()), (3, last));
        assert!(said[1].starts_with("All directions -8 cm/s²") && said[2].starts_with("1 time is not certain"), "{said:?}");
    }
}
