//! Flares: stretches of clearly higher pain, also those that have passed again.
//!
//! Rule (a proposal of ours): [`FLARE_DAYS`] or more ratings in a row that are each at least [`FLARE_POINTS`] above the median of the
//! seven before the first of them. Mornings and ratings while doing an item are looked at apart; stretches that overlap are one flare.

use super::before;
use crate::score::Score;
use crate::time::DayNumber;

/// Least number of ratings in a row.
pub const FLARE_DAYS: usize = 3;
/// Points above the median before.
pub const FLARE_POINTS: f64 = 2.0;
/// Least number of ratings before a flare, without which it cannot be called higher than before.
const BEFORE: usize = 3;

/// A stretch of clearly higher pain.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Flare {
    /// The first day.
    pub from: DayNumber,
    /// The last day.
    pub to: DayNumber,
    /// The lowest rating in it, 0 to 10.
    pub least: Score,
    /// The highest rating in it, 0 to 10.
    pub peak: Score,
}

/// The flares in series of ratings, one a day, oldest first: the mornings of a complaint, and the ratings while doing each item that
/// serves it. Oldest first.
pub fn flares(series: &[&[(DayNumber, Score)]]) -> Vec<Flare> {
    let mut all: Vec<Flare> = series.iter().flat_map(|ratings| in_one(ratings)).collect();
    all.sort_by_key(|flare| flare.from);
    let mut united: Vec<Flare> = Vec::new();
    for flare in all {
        match united.last_mut().filter(|last| flare.from <= last.to) {
            Some(last) => {
                last.to = last.to.max(flare.to);
                last.least = last.least.min(flare.least);
                last.peak = last.peak.max(flare.peak);
            }
            None => united.push(flare),
        }
    }
    united
}

fn in_one(ratings: &[(DayNumber, Score)]) -> Vec<Flare> {
    let mut found = Vec::new();
    let mut place = BEFORE;
    while place < ratings.len() {
        let Some(usual) = before(ratings, place) else { break };
        let high = ratings[place..].iter().take_while(|(_, score)| f64::from(*score) >= usual + FLARE_POINTS).count();
        if high >= FLARE_DAYS {
            let stretch = &ratings[place..place + high];
            let scores = || stretch.iter().map(|(_, score)| *score);
            found.push(Flare {
                from: stretch[0].0,
                to: stretch[high - 1].0,
                least: scores().min().unwrap_or(Score::LEAST),
                peak: scores().max().unwrap_or(Score::LEAST),
            });
        }
        place += high.max(1);
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::score::on_days;

    fn days(scores: &[u8]) -> Vec<(DayNumber, Score)> {
        on_days(&(0..).zip(scores.iter().copied()).collect::<Vec<_>>())
    }

    fn found(scores: &[u8]) -> Vec<(u16, u16, u8)> {
        flares(&[&days(scores)]).iter().map(|flare| (flare.from.0, flare.to.0, flare.peak.points())).collect()
    }

    #[test]
    fn three_ratings_in_a_row_two_points_above_the_week_before_are_a_flare() {
        assert_eq!(found(&[4, 4, 4, 4, 4, 4, 4, 6, 7, 6, 4]), [(7, 9, 7)]);
        assert_eq!(found(&[4, 4, 4, 4, 4, 4, 4, 6, 7, 4, 6]), [], "two in a row");
        assert_eq!(found(&[4, 4, 4, 4, 4, 4, 4, 5, 5, 5]), [], "one point");
        assert_eq!(found(&[4, 4, 7, 7, 7]), [], "too few before to know what is usual");
    }

    #[test]
    fn a_flare_is_found_although_the_end_equals_the_beginning() {
        let scores = [vec![4; 10], vec![7; 9], vec![3; 5]].concat();
        assert_eq!(found(&scores), [(10, 18, 7)]);
    }

    #[test]
    fn a_plateau_is_one_flare_that_goes_on() {
        assert_eq!(found(&[0, 0, 0, 0, 0, 6, 6, 6, 6, 6, 6]), [(5, 10, 6)]);
    }

    #[test]
    fn stretches_that_overlap_are_one_flare() {
        let mornings = days(&[vec![4; 10], vec![7; 5], vec![4; 5]].concat());
        let during = days(&[vec![2; 12], vec![8; 4], vec![2; 4]].concat());
        let both = flares(&[&mornings, &during]);
        assert_eq!(both.len(), 1);
        assert_eq!((both[0].from.0, both[0].to.0, both[0].least.points(), both[0].peak.points()), (10, 15, 7, 8));
    }
}
