//! Is it working: seconds on one leg.

use super::adherence::on;
use super::{Finding, Names, Sentence, upper};
use crate::Words;
use chrono::NaiveDate;
use exercises::catalogue::{Eyes, Surface};
use exercises::change::SideToSide;
use exercises::chart::StanceGroup;
use exercises::plan::{Leg, StanceBaseline};
use exercises::review::StanceSeries;
use exercises::run::SetUp;
use exercises::statistics::{DifferenceBasis, SymmetryVerdict, Trend, TrendFigures, Verdict, WhyTooFew};
use std::fmt::Display;

impl Words {
    /// "phone on the support".
    pub fn set_up(self, set_up: SetUp) -> &'static str {
        self.sentence(match set_up {
            SetUp::OnSupport => Sentence::OnSupport,
            SetUp::AtBreastbone => Sentence::AtBreastbone,
            SetUp::InPocket => Sentence::InPocket,
        })
    }

    /// "Stand on one leg: firm floor, eyes open; phone on the support; up to 30 s".
    pub fn stance_conditions(self, group: &StanceGroup, names: Names<'_>) -> String {
        let up_to = self.filled(Sentence::UpTo, &[("s", &group.target_s)]);
        let (name, set_up) = (names.exercise(&group.exercise), self.set_up(group.set_up));
        format!("{name}: {}, {}; {set_up}; {up_to}", self.surface(group.surface), self.eyes(group.eyes))
    }

    /// "Rising", and "12 to 22 s over 16 days; more than the 4.1 s that count (own day-to-day spread)."
    pub fn stance(self, series: &StanceSeries) -> Finding {
        let Trend { verdict, days, at_cap, too_few, figures } = series.change;
        match (verdict, figures) {
            (Verdict::Rising, Some(figures)) => self.stance_moved(Sentence::Rising, Sentence::StanceMoved, series, &figures),
            (Verdict::Falling, Some(figures)) => {
                self.stance_moved(Sentence::Falling, Sentence::StanceMoved, series, &figures)
            }
            (Verdict::NoClearChange, Some(figures)) => {
                // As much as counts, and still unclear: to name the amount would contradict the word.
                let enough = figures.change.abs() >= figures.important.difference;
                let why = if enough { Sentence::StanceWavers } else { Sentence::StanceUnclear };
                self.stance_moved(Sentence::NoClearChange, why, series, &figures)
            }
            (Verdict::AtTheCap, _) => {
                let values: [(&str, &dyn Display); 3] = [("capped", &at_cap), ("n", &days), ("s", &series.target_s)];
                self.finding(Sentence::AtTheCap, Sentence::StanceCapped, &values)
            }
            _ if too_few == Some(WhyTooFew::ImportantDifference) => {
                self.finding(Sentence::TooFewData, Sentence::StanceNoYardstick, &[("n", &days)])
            }
            _ => self.finding(Sentence::TooFewData, Sentence::StanceFewDays, &[("n", &days)]),
        }
    }

    fn stance_moved(self, word: Sentence, figures: Sentence, series: &StanceSeries, of: &TrendFigures) -> Finding {
        let ends = series.days.first().zip(series.days.last());
        // The straight line may lead beyond what can be measured.
        let at = |day: u16| self.number(of.line.at(i32::from(day)).clamp(0.0, f64::from(series.target_s)));
        let (from, to) = ends.map(|(first, last)| (at(first.day), at(last.day))).unwrap_or_default();
        let basis = self.sentence(match of.important.basis {
            DifferenceBasis::Given => Sentence::FromGiven,
            DifferenceBasis::OwnSpread { .. } => Sentence::FromOwnSpread,
            DifferenceBasis::OlderAdults { .. } => Sentence::FromOlderAdults,
        });
        let (days, least) = (series.days.len(), self.number(of.important.difference));
        let values: [(&str, &dyn Display); 5] =
            [("from", &from), ("to", &to), ("n", &days), ("least", &least), ("basis", &basis)];
        self.finding(word, figures, &values)
    }

    /// "Left 12.4 s, right 18.6 s: 66 % of the right."
    pub fn side_to_side(self, sides: &SideToSide) -> String {
        let other = match sides.involved {
            Leg::Left => Leg::Right,
            Leg::Right => Leg::Left,
        };
        let (what, percent) = match sides.symmetry.verdict {
            SymmetryVerdict::Percent(percent) => (Sentence::SidesPercent, percent),
            SymmetryVerdict::AtMost(percent) => (Sentence::SidesAtMost, percent),
            SymmetryVerdict::AtLeast(percent) => (Sentence::SidesAtLeast, percent),
            SymmetryVerdict::NotInformative => (Sentence::SidesCapped, 0.0),
            SymmetryVerdict::NotComputed | SymmetryVerdict::NoTime => (Sentence::SidesNotComputed, 0.0),
        };
        let values: [(&str, &dyn Display); 5] = [
            ("involved", &upper(self.leg_short(sides.involved))),
            ("other", &self.leg_short(other)),
            ("a", &self.number(sides.involved_s)),
            ("b", &self.number(sides.other_s)),
            ("percent", &percent.round()),
        ];
        let said = self.filled(what, &values);
        let within = sides.symmetry.within_error == Some(true);
        if within { format!("{said} {}", self.sentence(Sentence::WithinError)) } else { said }
    }

    /// "28 October, firm floor, eyes open: left 12.4 s, right 31 s or more", a line for each visit and condition.
    pub fn visit_stances(self, baselines: &[(u16, StanceBaseline)], start: NaiveDate) -> Vec<String> {
        let mut lines: Vec<((u16, Surface, Eyes), Vec<String>)> = Vec::new();
        for (day, baseline) in baselines {
            let what = if baseline.capped { Sentence::VisitStanceCapped } else { Sentence::VisitStance };
            let seconds = self.number(f64::from(baseline.tenths) / 10.0);
            let one = self.filled(what, &[("leg", &self.leg_short(baseline.leg)), ("s", &seconds)]);
            let place = (*day, baseline.surface, baseline.eyes);
            match lines.iter_mut().find(|(other, _)| *other == place) {
                Some((_, list)) => list.push(one),
                None => lines.push((place, vec![one])),
            }
        }
        let line = |((day, surface, eyes), list): ((u16, Surface, Eyes), Vec<String>)| {
            let date = self.date(on(start, day));
            format!("{date}, {}, {}: {}.", self.surface(surface), self.eyes(eyes), list.join(", "))
        };
        lines.into_iter().map(line).collect()
    }
}
