//! Is it working: seconds on one leg.

use super::adherence::on;
use super::{Finding, Names, Sentence, upper};
use crate::Words;
use chrono::NaiveDate;
use exercises::catalogue::{Eyes, Surface};
use exercises::change::SideToSide;
use exercises::chart::StanceGroup;
use exercises::plan::{BodySide, StanceBaseline};
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
            BodySide::Left => BodySide::Right,
            BodySide::Right => BodySide::Left,
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

    /// "28 October, firm floor, eyes open: left 12.4 s, right 31 s or more", a line for each visit and condition. Of several
    /// times of one leg the last is the visit's own: "left 31.5 s (earlier: left 33 s)".
    pub fn visit_stances(self, baselines: &[(u16, StanceBaseline)], start: NaiveDate) -> Vec<String> {
        type Conditions = (u16, Surface, Eyes);
        type Times = Vec<(BodySide, Vec<String>)>;
        let mut lines: Vec<(Conditions, Times)> = Vec::new();
        for (day, baseline) in baselines {
            let what = if baseline.capped { Sentence::VisitStanceCapped } else { Sentence::VisitStance };
            let seconds = self.number(f64::from(baseline.tenths) / 10.0);
            let one = self.filled(what, &[("leg", &self.leg_short(baseline.leg)), ("s", &seconds)]);
            let legs = in_place(&mut lines, (*day, baseline.surface, baseline.eyes));
            in_place(legs, baseline.leg).push(one);
        }
        let leg = |(_, mut times): (BodySide, Vec<String>)| {
            let last = times.pop().unwrap_or_default();
            if times.is_empty() {
                return last;
            }
            self.filled(Sentence::VisitStanceEarlier, &[("last", &last), ("before", &times.join(", "))])
        };
        let line = |((day, surface, eyes), legs): (Conditions, Times)| {
            let date = self.date(on(start, day));
            let legs: Vec<String> = legs.into_iter().map(leg).collect();
            format!("{date}, {}, {}: {}.", self.surface(surface), self.eyes(eyes), legs.join(", "))
        };
        lines.into_iter().map(line).collect()
    }
}

/// What stands under `name` in a list, which keeps the order in which names came.
fn in_place<K: PartialEq, T: Default>(list: &mut Vec<(K, T)>, name: K) -> &mut T {
    let place = match list.iter().position(|(other, _)| *other == name) {
        Some(place) => place,
        None => {
            list.push((name, T::default()));
            list.len() - 1
        }
    };
    &mut list[place].1
}

#[cfg(test)]
mod tests {
    use super::*;
    use exercises::catalogue::Lang;

    #[test]
    fn two_times_of_one_leg_are_told_apart() {
        let of = |leg, tenths| StanceBaseline {
            taken: None,
            leg,
            surface: Surface::Firm,
            eyes: Eyes::Open,
            tenths,
            capped: false,
        };
        let times = [(0, of(BodySide::Left, 330)), (0, of(BodySide::Right, 280)), (0, of(BodySide::Left, 315))];
        let start = NaiveDate::from_ymd_opt(2026, 10, 26).expect("a date");
        assert_eq!(
            Words::new(Lang::En).visit_stances(&times, start),
            ["26 October, firm floor, eyes open: left 31.5 s (earlier: left 33 s), right 28 s."]
        );
    }
}
