//! Compares a published figure with a person's own, or gives the reasons why not.
//!
//! Rule (our design): a row applies if age, eyes, surface, feet, arms, statistic and cap are all stated by the source, all known of
//! the person, and the same. The two figures are shown side by side with the row's source; nothing is computed from them.

use super::{
    row::{Ages, Cap, Condition, Conditions, NormRow, Published, Statistic},
    table::Norms,
};
use crate::catalogue::{Arms, Eyes, Feet, Surface};
use crate::plan::AgeBand;

/// A person's own figure and the conditions under which it was measured.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Measured {
    /// The figure, seconds.
    pub seconds: f64,
    /// The age group; `None` if it is not known.
    pub age: Option<AgeBand>,
    /// Eyes open or closed.
    pub eyes: Eyes,
    /// The surface that the person stood on.
    pub surface: Surface,
    /// What the person wore on the feet; `None` if it is not known.
    pub feet: Option<Feet>,
    /// Where the arms were; `None` if it is not known.
    pub arms: Option<Arms>,
    /// How the figure was computed from several trials.
    pub statistic: Statistic,
    /// The longest possible trial.
    pub cap: Cap,
}

/// A caution that must be shown with a published figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Caveat {
    /// A mean of skewed times: usually more than half of a healthy group lie below it.
    SkewLiftsTheMean,
    /// The published figure lies within a tenth of the cap: longer times were not measured.
    PublishedNearCap,
    /// The person's own figure is at the cap: it may be longer.
    OwnAtCap,
}

/// Two figures for comparison.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct NormComparison {
    /// The person's own figure, seconds.
    pub own_s: f64,
    /// The row that applies.
    pub row: NormRow,
    /// The cautions that must be shown with it.
    pub caveats: Vec<Caveat>,
}

/// A reason why there is no comparison.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum WhyNot {
    /// The person's own figure is not a time.
    NotATime,
    /// The stance is not on one leg.
    OtherStand,
    /// There are no norms for soft surfaces.
    SoftSurface,
    /// A published row would apply, but its figures were not checked against the paper.
    OnlyUnchecked,
    /// There is no row to compare with.
    NoRow,
    /// This condition of the person's figure is not known.
    NotKnown(Condition),
    /// The source does not state this condition.
    NotStated(Condition),
    /// This condition is different.
    Differs(Condition),
}

/// The comparison, or why there is none.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Comparison {
    /// A row applies.
    Beside(Box<NormComparison>),
    /// No row applies. The reasons are those of the closest row.
    Not(Vec<WhyNot>),
}

/// Compares a person's own figure with the first row that applies.
pub fn compare_with_norms(own: &Measured, norms: &Norms) -> Comparison {
    if !(own.seconds.is_finite() && own.seconds >= 0.0) {
        return Comparison::Not(vec![WhyNot::NotATime]);
    }
    if let Some(row) = norms.shown().find(|row| obstacles(own, &row.conditions).is_empty()) {
        let beside = NormComparison { own_s: own.seconds, row: row.clone(), caveats: caveats(own, row) };
        return Comparison::Beside(Box::new(beside));
    }
    Comparison::Not(why_not(own, norms))
}

fn why_not(own: &Measured, norms: &Norms) -> Vec<WhyNot> {
    if own.surface != Surface::Firm {
        return vec![WhyNot::SoftSurface];
    }
    if norms.unchecked().any(|conditions| obstacles(own, conditions).is_empty()) {
        return vec![WhyNot::OnlyUnchecked];
    }
    let nearest = norms.shown().map(|row| obstacles(own, &row.conditions)).min_by_key(|found| {
        // A row for other ages or eyes counts as less close than any other difference.
        let about_whom = [Condition::Age, Condition::Eyes].map(WhyNot::Differs);
        (found.iter().filter(|one| about_whom.contains(one)).count(), found.len())
    });
    nearest.unwrap_or_else(|| vec![WhyNot::NoRow])
}

/// Every condition that prevents a row from applying.
fn obstacles(own: &Measured, row: &Conditions) -> Vec<WhyNot> {
    let own_ages = own.age.map(Ages::from);
    let all = [
        obstacle(Condition::Age, own_ages, row.ages, |own, row| row.contain(*own)),
        obstacle(Condition::Eyes, Some(own.eyes), row.eyes, Eyes::eq),
        obstacle(Condition::Surface, Some(own.surface), row.surface, Surface::eq),
        obstacle(Condition::Feet, own.feet, row.feet, Feet::eq),
        obstacle(Condition::Arms, own.arms, row.arms, Arms::eq),
        obstacle(Condition::Statistic, Some(own.statistic), row.statistic, Statistic::eq),
        obstacle(Condition::Cap, Some(own.cap), row.cap, Cap::eq),
    ];
    all.into_iter().flatten().collect()
}

fn obstacle<T>(condition: Condition, own: Option<T>, row: Option<T>, same: impl Fn(&T, &T) -> bool) -> Option<WhyNot> {
    match (own, row) {
        (_, None) => Some(WhyNot::NotStated(condition)),
        (None, Some(_)) => Some(WhyNot::NotKnown(condition)),
        (Some(own), Some(row)) => (!same(&own, &row)).then_some(WhyNot::Differs(condition)),
    }
}

fn caveats(own: &Measured, row: &NormRow) -> Vec<Caveat> {
    let cap = match own.cap {
        Cap::Seconds(cap) => Some(f64::from(cap)),
        Cap::None => None,
    };
    let all = [
        (matches!(row.published, Published::Mean { .. }), Caveat::SkewLiftsTheMean),
        (cap.is_some_and(|cap| row.published.middle_s() >= 0.9 * cap), Caveat::PublishedNearCap),
        (cap.is_some_and(|cap| own.seconds >= cap), Caveat::OwnAtCap),
    ];
    all.into_iter().filter(|(applies, _)| *applies).map(|(_, caveat)| caveat).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::norms::{ClinicRow, ClinicTable};

    fn own() -> Measured {
        Measured {
            seconds: 18.0,
            age: Some(AgeBand::From60),
            eyes: Eyes::Open,
            surface: Surface::Firm,
            feet: Some(Feet::Bare),
            arms: Some(Arms::Crossed),
            statistic: Statistic::BestOf(3),
            cap: Cap::Seconds(30),
        }
    }

    fn clinic(mean_s: f64) -> Norms {
        let conditions = Conditions {
            ages: Some(Ages { from: 60, to: Some(69) }),
            eyes: Some(Eyes::Open),
            surface: Some(Surface::Firm),
            feet: Some(Feet::Bare),
            arms: Some(Arms::Crossed),
            statistic: Some(Statistic::BestOf(3)),
            cap: Some(Cap::Seconds(30)),
        };
        let published = Published::Mean { mean_s, sd_s: None };
        let rows = vec![ClinicRow { conditions, people: Some(40), published }];
        Norms::built_in().with(&ClinicTable { source: "Own list".to_owned(), rows }).expect("sound")
    }

    #[track_caller]
    fn check(own: &Measured, norms: &Norms, want: &[WhyNot]) {
        assert_eq!(compare_with_norms(own, norms), Comparison::Not(want.to_vec()));
    }

    #[test]
    fn a_clinics_row_that_applies_is_compared() {
        let Comparison::Beside(got) = compare_with_norms(&own(), &clinic(21.0)) else { panic!("it applies") };
        assert_eq!((got.own_s, got.row.published.middle_s()), (18.0, 21.0));
        assert_eq!(got.caveats, vec![Caveat::SkewLiftsTheMean]);
        let at_cap = Measured { seconds: 30.0, ..own() };
        let Comparison::Beside(got) = compare_with_norms(&at_cap, &clinic(29.0)) else { panic!("it applies") };
        assert_eq!(got.caveats, vec![Caveat::SkewLiftsTheMean, Caveat::PublishedNearCap, Caveat::OwnAtCap]);
    }

    #[test]
    fn every_single_difference_excludes_a_row() {
        let norms = clinic(21.0);
        for (other, condition) in [
            (Measured { feet: Some(Feet::Covered), ..own() }, Condition::Feet),
            (Measured { arms: Some(Arms::OnHips), ..own() }, Condition::Arms),
            (Measured { statistic: Statistic::MeanOf(3), ..own() }, Condition::Statistic),
            (Measured { statistic: Statistic::BestOf(2), ..own() }, Condition::Statistic),
            (Measured { cap: Cap::Seconds(60), ..own() }, Condition::Cap),
            (Measured { cap: Cap::None, ..own() }, Condition::Cap),
        ] {
            check(&other, &norms, &[WhyNot::Differs(condition)]);
        }
        check(&Measured { feet: None, ..own() }, &norms, &[WhyNot::NotKnown(Condition::Feet)]);
        check(&Measured { age: None, ..own() }, &norms, &[WhyNot::NotKnown(Condition::Age)]);
        check(&Measured { age: Some(AgeBand::From18), ..own() }, &norms, &[WhyNot::Differs(Condition::Age)]);
    }

    #[test]
    fn soft_surfaces_have_no_norms() {
        for surface in [Surface::FoldedTowel, Surface::Cushion, Surface::Foam] {
            check(&Measured { surface, ..own() }, &clinic(21.0), &[WhyNot::SoftSurface]);
        }
    }

    #[test]
    fn an_unchecked_row_that_would_apply_gives_neither_figure_nor_source() {
        let as_recalled = Measured { cap: Cap::Seconds(45), ..own() };
        check(&as_recalled, &Norms::built_in(), &[WhyNot::OnlyUnchecked]);
        for eyes in [Eyes::Open, Eyes::Closed] {
            for statistic in [Statistic::BestOf(3), Statistic::MeanOf(3)] {
                for age in AgeBand::ALL {
                    let one = Measured { eyes, statistic, age: Some(age), ..as_recalled };
                    assert!(matches!(compare_with_norms(&one, &Norms::built_in()), Comparison::Not(_)));
                }
            }
        }
    }

    #[test]
    fn a_condition_that_a_source_does_not_state_excludes_its_row() {
        let Comparison::Not(reasons) = compare_with_norms(&own(), &Norms::built_in()) else {
            panic!("no seen row states everything")
        };
        assert!(reasons.iter().all(|reason| matches!(reason, WhyNot::NotStated(_))), "{reasons:?}");
        assert!(reasons.contains(&WhyNot::NotStated(Condition::Arms)));
    }

    #[test]
    fn invalid_times_are_not_compared() {
        for seconds in [f64::NAN, f64::INFINITY, -1.0] {
            check(&Measured { seconds, ..own() }, &clinic(21.0), &[WhyNot::NotATime]);
        }
    }
}
