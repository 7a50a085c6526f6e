//! Compares the last day of a series of stance times with the norms.
//!
//! Eyes, surface and target are taken from the trials themselves, the age from the plan, and feet and arms from what the
//! exercise's version prescribes. The arms are as prescribed only if the phone is in a pocket: with the phone over the
//! support or at the breastbone one hand is in use. The best of the day's measured trials is compared, or their median if the
//! norms only have a row for the median; the result says which of the two it is.

use crate::catalogue::Arms;
use crate::catalogue::{Catalogue, Exercise, Rung};
use crate::change::{Conditions, StanceDay};
use crate::norms::{Cap, Comparison, Measured, Norms, Statistic, WhyNot, compare_with_norms};
use crate::plan::AgeBand;
use crate::run::SetUp;
use crate::time::DayNumber;

/// The result of a series' last day, and the norms that it is compared with.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct AgainstNorms {
    /// The last day of the series.
    pub day: DayNumber,
    /// The result of that day and the conditions under which it was measured.
    pub own: Measured,
    /// The norms that apply, or the reasons why none do.
    pub comparison: Comparison,
}

/// The norms, and what is known about the person and the exercises.
#[derive(Clone, Copy)]
pub(super) struct NormContext<'a> {
    pub norms: &'a Norms,
    pub catalogue: &'a Catalogue,
    pub age: Option<AgeBand>,
}

impl NormContext<'_> {
    /// Compares the last day of a series, on which trials ended after `target_s` seconds, with the norms.
    pub fn against(&self, conditions: &Conditions, target_s: u16, last: &StanceDay) -> AgainstNorms {
        let exercise = self.catalogue.get(&conditions.exercise);
        let rung = exercise.and_then(|exercise| rung(exercise, conditions));
        // No norm has more than 255 trials a day, so a larger count need not be exact.
        let trials = u8::try_from(last.trials).unwrap_or(u8::MAX);
        let own = |seconds, statistic| Measured {
            seconds,
            age: self.age,
            eyes: conditions.eyes,
            surface: conditions.surface,
            feet: rung.and_then(|rung| rung.feet),
            arms: arms(conditions.set_up, rung),
            statistic,
            cap: Cap::Seconds(target_s),
        };
        let best = own(last.best_s, Statistic::BestOf(trials));
        let median = own(last.median_s, Statistic::MedianOf(trials));
        let (own, comparison) = if exercise.is_some_and(|exercise| exercise.one_leg) {
            let all = [best, median].map(|own| (own, compare_with_norms(&own, self.norms)));
            let applies = all.iter().find(|(_, comparison)| matches!(comparison, Comparison::Beside(_)));
            applies.unwrap_or(&all[0]).clone()
        } else {
            (best, Comparison::Not(vec![WhyNot::OtherStand]))
        };
        AgainstNorms { day: last.day, own, comparison }
    }
}

/// The version that was done; the first one if the run does not name a version.
fn rung<'a>(exercise: &'a Exercise, conditions: &Conditions) -> Option<&'a Rung> {
    match &conditions.rung {
        Some(id) => exercise.rung(id),
        None => exercise.first_rung(),
    }
}

fn arms(set_up: SetUp, rung: Option<&Rung>) -> Option<Arms> {
    match set_up {
        SetUp::OnSupport | SetUp::AtBreastbone => Some(Arms::HandInUse),
        SetUp::InPocket => rung.and_then(|rung| rung.arms),
    }
}

/// A result without norms, for tests that do not depend on it.
#[cfg(test)]
pub(crate) fn not_compared() -> AgainstNorms {
    let own = Measured {
        seconds: 0.0,
        age: None,
        eyes: crate::catalogue::Eyes::Open,
        surface: crate::catalogue::Surface::Firm,
        feet: None,
        arms: None,
        statistic: Statistic::BestOf(1),
        cap: Cap::None,
    };
    AgainstNorms { day: DayNumber(0), own, comparison: Comparison::Not(vec![WhyNot::NoRow]) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::Feet;
    use crate::catalogue::{ExerciseId, Eyes, Surface};
    use crate::norms::{Ages, ClinicRow, ClinicTable, Condition, Conditions as Row, Published};
    use crate::plan::BodySide;
    use crate::review::samples;

    fn catalogue() -> Catalogue {
        let mut catalogue = samples::catalogue();
        let rung = &mut catalogue.exercises[1].ladders[0].rungs[0];
        (rung.feet, rung.arms) = (Some(Feet::Bare), Some(Arms::Crossed));
        catalogue
    }

    fn norms(statistic: Statistic) -> Norms {
        let conditions = Row {
            ages: Some(Ages { from: 40, to: Some(59) }),
            eyes: Some(Eyes::Open),
            surface: Some(Surface::Firm),
            feet: Some(Feet::Bare),
            arms: Some(Arms::Crossed),
            statistic: Some(statistic),
            cap: Some(Cap::Seconds(30)),
        };
        let rows = vec![ClinicRow { conditions, people: None, published: Published::Median { median_s: 24.0 } }];
        Norms::built_in().with(&ClinicTable { source: "Invented".into(), rows }).expect("sound")
    }

    fn conditions(set_up: SetUp) -> Conditions {
        Conditions {
            exercise: ExerciseId::new("one-leg").expect("an id"),
            rung: Some(samples::rung("firm")),
            surface: Surface::Firm,
            eyes: Eyes::Open,
            set_up,
            leg: Some(BodySide::Left),
        }
    }

    const DAY: StanceDay = StanceDay { day: DayNumber(9), trials: 3, best_s: 20.0, median_s: 14.0, capped: false };

    fn against(norms: &Norms, catalogue: &Catalogue, conditions: &Conditions, day: &StanceDay) -> AgainstNorms {
        NormContext { norms, catalogue, age: Some(AgeBand::From40) }.against(conditions, 30, day)
    }

    #[test]
    fn the_best_is_taken_and_the_median_where_only_that_has_a_row() {
        for (statistic, seconds) in [(Statistic::BestOf(3), 20.0), (Statistic::MedianOf(3), 14.0)] {
            let got = against(&norms(statistic), &catalogue(), &conditions(SetUp::InPocket), &DAY);
            assert_eq!((got.day.0, got.own.seconds, got.own.statistic), (9, seconds, statistic));
            let Comparison::Beside(beside) = got.comparison else { panic!("it applies: {:?}", got.comparison) };
            assert_eq!((beside.own_s, beside.row.published.middle_s()), (seconds, 24.0));
        }
    }

    #[track_caller]
    fn not(got: AgainstNorms, want: WhyNot) {
        assert_eq!(got.comparison, Comparison::Not(vec![want]));
    }

    #[test]
    fn a_hand_that_is_in_use_is_no_arm_of_a_table() {
        let (norms, catalogue) = (norms(Statistic::BestOf(3)), catalogue());
        for set_up in [SetUp::OnSupport, SetUp::AtBreastbone] {
            let got = against(&norms, &catalogue, &conditions(set_up), &DAY);
            assert_eq!(got.own.arms, Some(Arms::HandInUse));
            not(got, WhyNot::Differs(Condition::Arms));
        }
    }

    #[test]
    fn what_the_exercise_leaves_open_is_not_known() {
        let norms = norms(Statistic::BestOf(3));
        let pocket = conditions(SetUp::InPocket);
        let mut open = catalogue();
        open.exercises[1].ladders[0].rungs[0].arms = None;
        not(against(&norms, &open, &pocket, &DAY), WhyNot::NotKnown(Condition::Arms));
        let mut open = catalogue();
        open.exercises[1].ladders[0].rungs[0].feet = None;
        not(against(&norms, &open, &pocket, &DAY), WhyNot::NotKnown(Condition::Feet));
        let first = Conditions { rung: None, ..pocket };
        let got = against(&norms, &catalogue(), &first, &DAY);
        assert!(matches!(got.comparison, Comparison::Beside(_)), "no version is named: the first is meant");
    }

    #[test]
    fn the_number_of_trials_must_be_the_one_of_the_table() {
        let norms = norms(Statistic::BestOf(3));
        let pocket = conditions(SetUp::InPocket);
        let six = StanceDay { trials: 6, ..DAY };
        not(against(&norms, &catalogue(), &pocket, &six), WhyNot::Differs(Condition::Statistic));
        let mut two_feet = catalogue();
        two_feet.exercises[1].one_leg = false;
        not(against(&norms, &two_feet, &pocket, &DAY), WhyNot::OtherStand);
    }
}
