//! The first week beside this week, for the person who exercises. No score and no verdict: the same three things that the review
//! follows, each with the median of its week.

use super::{Review, StanceSeries};
use crate::id::{ActivityId, ComplaintId};
use crate::score::Score;
use crate::time::DayNumber;

/// Number of days of a week.
const WEEK: u16 = 7;

/// Something that was measured or rated in both weeks.
#[derive(Debug, Clone, PartialEq)]
pub struct ThenAndNow<'a> {
    /// What it is.
    pub what: Compared<'a>,
    /// The median of the first week in which there is a value.
    pub then: f64,
    /// The median of the last seven days.
    pub now: f64,
}

/// What is compared.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Compared<'a> {
    /// Seconds of balance.
    Stance(&'a StanceSeries),
    /// A named activity, 0 to 10.
    Activity(ActivityId),
    /// The pain of a complaint in the morning, 0 to 10.
    Morning(ComplaintId),
}

/// What can be compared, in the order in which it is shown. Empty until the weeks do not overlap.
pub fn then_and_now(review: &Review) -> Vec<ThenAndNow<'_>> {
    let until = review.until;
    let stances = review.balance.iter().filter_map(|series| {
        let values: Vec<(DayNumber, f64)> = series.days.iter().map(|day| (day.day, day.median_s)).collect();
        compared(Compared::Stance(series), &values, until)
    });
    let activities = review.activities.iter().filter_map(|series| {
        let all = [series.at_visits.as_slice(), &series.points].concat();
        compared(Compared::Activity(series.activity), &scores(&all), until)
    });
    let mornings = review
        .pain
        .iter()
        .filter_map(|series| compared(Compared::Morning(series.complaint), &scores(&series.points), until));
    stances.chain(activities).chain(mornings).collect()
}

fn scores(all: &[(DayNumber, Score)]) -> Vec<(DayNumber, f64)> {
    let mut values: Vec<(DayNumber, f64)> = all.iter().map(|(day, score)| (*day, f64::from(*score))).collect();
    values.sort_by_key(|(day, _)| *day);
    values
}

fn compared<'a>(what: Compared<'a>, values: &[(DayNumber, f64)], until: DayNumber) -> Option<ThenAndNow<'a>> {
    let first = values.first()?.0;
    let from = until.minus(WEEK - 1)?;
    if from.days_since(first) < WEEK {
        return None;
    }
    let median_of = |within: &dyn Fn(DayNumber) -> bool| {
        let week: Vec<f64> = values.iter().filter(|(day, _)| within(*day)).map(|(_, value)| *value).collect();
        crate::statistics::median(&week)
    };
    let then = median_of(&|day| day.days_since(first) < WEEK)?;
    let now = median_of(&|day| day >= from && day <= until)?;
    Some(ThenAndNow { what, then, now })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::BodySide;
    use crate::review::build;
    use crate::review::samples::{ANKLE, BACK, BALANCE, PHONE, catalogue, morning, plan, revisions, run, stance, summary};
    use crate::summary::{RatedOn, Summary};

    fn values(from: u16, of: &[f64]) -> Vec<(DayNumber, f64)> {
        of.iter().enumerate().map(|(place, value)| (DayNumber(from + place as u16), *value)).collect()
    }

    fn told(values: &[(DayNumber, f64)], until: u16) -> Option<(f64, f64)> {
        compared(Compared::Activity(ActivityId(1)), values, DayNumber(until)).map(|one| (one.then, one.now))
    }

    #[test]
    fn the_first_week_with_a_value_beside_the_last_seven_days() {
        let all = [values(3, &[2.0, 4.0, 3.0]), values(20, &[6.0, 8.0])].concat();
        assert_eq!(told(&all, 25), Some((3.0, 7.0)));
    }

    #[test]
    fn weeks_that_overlap_or_are_empty_are_not_compared() {
        assert_eq!(told(&values(0, &[2.0; 13]), 12), None, "the seventh day is in both");
        assert_eq!(told(&values(0, &[2.0; 14]), 13), Some((2.0, 2.0)));
        assert_eq!(told(&values(0, &[2.0; 7]), 30), None, "nothing this week");
        assert_eq!(told(&[], 30), None);
    }

    /// Three weeks: the seconds and the activity rise and the pain of the back falls after the first one; of the ankle there is one
    /// morning only.
    fn three_weeks() -> Summary {
        let mut all = summary(PHONE, 1, 0, 20);
        let later = |day: u16| day >= 7;
        all.runs = (0..=20)
            .map(|day| {
                let (left, right) = if later(day) { (20_000, 26_000) } else { (10_000, 12_000) };
                let stance = Some(stance(&[left; 3], &[right; 3]));
                crate::summary::RunOn { stance, ..run(u32::from(day) + 1, day, BALANCE, Some(0)) }
            })
            .collect();
        all.mornings =
            (0..=20).map(|day| morning(u32::from(day) + 100, day, BACK, if later(day) { 3 } else { 6 })).collect();
        all.mornings.push(morning(200, 20, ANKLE, 2));
        let rated =
            |n, day, score| RatedOn { n, day: DayNumber(day), activity: ActivityId(1), score: Score::at_most_ten(score) };
        all.rated = vec![rated(300, 14, 7), rated(301, 18, 8)];
        all
    }

    #[test]
    fn of_a_review_the_legs_the_activity_and_the_mornings_in_this_order() {
        let review = build(&revisions([plan()]), &catalogue(), &[three_weeks()]).expect("a plan and a summary");
        let rows = then_and_now(&review);
        let legs: Vec<Option<BodySide>> = rows
            .iter()
            .map_while(|row| match row.what {
                Compared::Stance(series) => Some(series.leg),
                _ => None,
            })
            .collect();
        assert_eq!(legs, [Some(BodySide::Left), Some(BodySide::Right)]);
        let after_legs: Vec<Compared<'_>> = rows.iter().skip(2).map(|row| row.what).collect();
        assert_eq!(after_legs, [Compared::Activity(ActivityId(1)), Compared::Morning(BACK)], "one morning is not compared");
        let values: Vec<(f64, f64)> = rows.iter().map(|row| (row.then, row.now)).collect();
        assert_eq!(
            values,
            [(10.0, 20.0), (12.0, 26.0), (4.0, 7.5), (6.0, 3.0)],
            "the visit's own rating is the activity's first"
        );
    }

    #[test]
    fn of_a_review_of_less_than_two_weeks_nothing_is_compared() {
        let of = |until: u16| {
            let mut all = three_weeks();
            all.until = DayNumber(until);
            all.seen.retain(|day| day.0 <= until);
            all.runs.retain(|run| run.day.0 <= until);
            all.mornings.retain(|one| one.day.0 <= until);
            all.rated.clear();
            let review = build(&revisions([plan()]), &catalogue(), &[all]).expect("a plan and a summary");
            then_and_now(&review).len()
        };
        assert_eq!((of(12), of(13)), (0, 3));
    }
}
