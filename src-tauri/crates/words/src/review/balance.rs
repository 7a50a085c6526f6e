//! Is the plan working: seconds on one leg.

use super::{Finding, Names, upper};
use crate::{Key, Number, Words};
use chrono::NaiveDate;
use exercises::catalogue::{Eyes, Surface};
use exercises::change::SideToSide;
use exercises::chart::StanceGroup;
use exercises::plan::{BodySide, StanceBaseline};
use exercises::review::{StanceDay, StanceSeries};
use exercises::run::SetUp;
use exercises::statistics::{DifferenceBasis, SymmetryVerdict, Trend, TrendFigures, Verdict, WhyTooFew};
use exercises::time::DayNumber;

impl Words {
    /// "phone on the support".
    pub fn set_up(self, set_up: SetUp) -> &'static str {
        self.text(match set_up {
            SetUp::OnSupport => Key::ReviewOnSupport,
            SetUp::AtBreastbone => Key::ReviewAtBreastbone,
            SetUp::InPocket => Key::ReviewInPocket,
        })
    }

    /// "Stand on one leg: firm floor, eyes open; phone on the support; up to 30 s".
    pub fn stance_conditions(self, group: &StanceGroup, names: Names<'_>) -> String {
        let up_to = self.review_up_to(group.target_s);
        let (surface, eyes) = (self.surface(group.surface), self.eyes(group.eyes));
        self.review_stance_conditions(&names.exercise(&group.exercise), surface, eyes, self.set_up(group.set_up), &up_to)
    }

    /// "Rising", and "12 to 22 s over 16 days; exceeds the minimum change of 24.1 s" with its basis.
    pub fn stance(self, series: &StanceSeries) -> Finding {
        let (word, figures) = self.stance_change(series);
        self.finding(word, figures)
    }

    /// "Left: rising, 12 to 22 s …"
    pub fn stance_of_leg(self, series: &StanceSeries) -> String {
        let (word, figures) = self.stance_change(series);
        self.review_finding_of_leg(&self.leg_or_both(series.leg), self.text(inline(word)), &figures)
    }

    fn stance_change(self, series: &StanceSeries) -> (Key, String) {
        let Trend { verdict, days, at_cap, too_few, figures } = series.change;
        match (verdict, figures) {
            (Verdict::Rising, Some(figures)) => self.stance_moved(Key::ReviewRising, series, &figures),
            (Verdict::Falling, Some(figures)) => self.stance_moved(Key::ReviewFalling, series, &figures),
            (Verdict::NoClearChange, Some(figures)) => self.stance_unclear(series, &figures),
            (Verdict::AtTheCap, _) => (Key::ReviewAtMaximum, self.review_stance_at_maximum(days, at_cap, series.target_s)),
            _ if too_few == Some(WhyTooFew::ImportantDifference) => {
                (Key::ReviewNotEnoughData, self.review_stance_no_own_variation(days))
            }
            _ => (Key::ReviewNotEnoughData, self.review_stance_few_days(days)),
        }
    }

    fn stance_moved(self, word: Key, series: &StanceSeries, of: &TrendFigures) -> (Key, String) {
        let ((from, to), least, days) = (self.ends(series, of), self.number(of.important.difference), series.days.len());
        let figures = match self.basis(of) {
            Some(basis) => self.review_stance_moved(from, to, days, least, basis),
            None => self.review_stance_beyond_own(from, to, days, least),
        };
        (word, figures)
    }

    fn stance_unclear(self, series: &StanceSeries, of: &TrendFigures) -> (Key, String) {
        let ((from, to), least, days) = (self.ends(series, of), self.number(of.important.difference), series.days.len());
        // The change is large enough but not certain: naming the minimum change would contradict the verdict.
        let figures = if of.change.abs() >= of.important.difference {
            self.review_stance_too_variable(from, to, days)
        } else {
            match self.basis(of) {
                Some(basis) => self.review_stance_below_minimum(from, to, days, least, basis),
                None => self.review_stance_within_own(from, to, days, least),
            }
        };
        (Key::ReviewNoClearChange, figures)
    }

    /// The values at the start and end of the line, which may lie beyond what can be measured.
    pub(super) fn ends(self, series: &StanceSeries, of: &TrendFigures) -> (Number, Number) {
        let at = |value: Option<&StanceDay>| {
            let seconds = value.map_or(0.0, |value| of.line.at(i32::from(value.day)));
            self.number(seconds.clamp(0.0, f64::from(series.target_s)))
        };
        (at(series.days.first()), at(series.days.last()))
    }

    /// Where the minimum change is from; `None` if it is the patient's own variation, which has sentences of its own.
    fn basis(self, of: &TrendFigures) -> Option<&'static str> {
        match of.important.basis {
            DifferenceBasis::OwnSpread { .. } => None,
            DifferenceBasis::Given => Some(self.text(Key::ReviewFromGiven)),
            DifferenceBasis::OlderAdults { .. } => Some(self.text(Key::ReviewFromOlderAdults)),
        }
    }

    /// "Left 12.4 s, right 18.6 s: 66% of the right."
    pub fn side_to_side(self, sides: &SideToSide) -> String {
        let other = match sides.involved {
            BodySide::Left => BodySide::Right,
            BodySide::Right => BodySide::Left,
        };
        let (involved, other) = (upper(self.leg_short(sides.involved)), self.leg_short(other));
        let (a, b) = (self.number(sides.involved_s), self.number(sides.other_s));
        let whole = |percent| Number::rounded(percent, 0);
        let line = match sides.symmetry.verdict {
            SymmetryVerdict::Percent(percent) => self.review_sides_percent(&involved, a, other, b, whole(percent)),
            SymmetryVerdict::AtMost(percent) => self.review_sides_at_most(&involved, a, other, b, whole(percent)),
            SymmetryVerdict::AtLeast(percent) => self.review_sides_at_least(&involved, a, other, b, whole(percent)),
            SymmetryVerdict::NotInformative => self.text(Key::ReviewSidesAtMaximum).to_owned(),
            SymmetryVerdict::NotComputed | SymmetryVerdict::NoTime => self.review_sides_not_computed(&involved, a, other, b),
        };
        match sides.symmetry.within_error {
            Some(true) => self.two_sentences(&line, self.text(Key::ReviewWithinError)),
            _ => line,
        }
    }

    /// "28 October, firm floor, eyes open: left 12.4 s, right 31 s or more", one line per visit and condition. If one leg has
    /// several times, the last one is the visit's own: "left 31.5 s (earlier: left 33 s)".
    pub fn visit_stances(self, baselines: &[(DayNumber, StanceBaseline)], start: NaiveDate) -> Vec<String> {
        type Conditions = (DayNumber, Surface, Eyes);
        type Times = Vec<(BodySide, Vec<String>)>;
        let mut lines: Vec<(Conditions, Times)> = Vec::new();
        for (day, baseline) in baselines {
            let (leg, seconds) = (self.leg_short(baseline.leg), self.number(f64::from(baseline.tenths) / 10.0));
            let one = match baseline.capped {
                true => self.review_visit_stance_capped(leg, seconds),
                false => self.review_visit_stance(leg, seconds),
            };
            let legs = in_place(&mut lines, (*day, baseline.surface, baseline.eyes));
            in_place(legs, baseline.leg).push(one);
        }
        let leg = |(_, mut times): (BodySide, Vec<String>)| {
            let last = times.pop().unwrap_or_default();
            if times.is_empty() {
                return last;
            }
            self.review_visit_stance_earlier(&last, &self.commas(&times))
        };
        let line = |((day, surface, eyes), legs): (Conditions, Times)| {
            let date = self.date(day.date(start));
            let legs: Vec<String> = legs.into_iter().map(leg).collect();
            self.review_visit_stance_line(&date, self.surface(surface), self.eyes(eyes), &self.commas(&legs))
        };
        lines.into_iter().map(line).collect()
    }
}

/// The form of a verdict within a line.
fn inline(word: Key) -> Key {
    match word {
        Key::ReviewRising => Key::ReviewRisingInline,
        Key::ReviewFalling => Key::ReviewFallingInline,
        Key::ReviewNoClearChange => Key::ReviewNoClearChangeInline,
        Key::ReviewAtMaximum => Key::ReviewAtMaximumInline,
        Key::ReviewNotEnoughData => Key::ReviewNotEnoughDataInline,
        other => other,
    }
}

/// The list's entry for `name`, which is added at the end if it does not exist. Entries keep the order in which names came.
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
    use crate::Locale;

    #[test]
    fn two_times_of_one_leg_are_distinguished() {
        let of = |leg, tenths| StanceBaseline {
            taken: None,
            leg,
            surface: Surface::Firm,
            eyes: Eyes::Open,
            tenths,
            capped: false,
        };
        let times = [
            (DayNumber(0), of(BodySide::Left, 330)),
            (DayNumber(0), of(BodySide::Right, 280)),
            (DayNumber(0), of(BodySide::Left, 315)),
        ];
        let start = NaiveDate::from_ymd_opt(2026, 10, 26).expect("a date");
        assert_eq!(
            Words::new(Locale::En).visit_stances(&times, start),
            ["26 October, firm floor, eyes open: left 31.5 s (earlier: left 33 s), right 28 s."]
        );
    }
}
