//! Finds since when an item is no longer done.
//!
//! Rule (our design): each day on which the item was owed has the mean share of its slots; a day without any record counts as nothing
//! done. Days off and days paused by an alarm are removed. The days are split in two where two constant shares fit
//! best, by the likelihood of a Bernoulli variable with the day as the unit (slots of one day are correlated, so nine slots weigh as
//! one day; shares between 0 and 1 enter as in the quasi-likelihood of Papke & Wooldridge 1996, J Appl Econom 11:619-632; quoted
//! from memory). The item was broken off there if
//! - each part has [`MIN_DAYS`] days or more,
//! - the share falls by [`MIN_DROP`] or more,
//! - the first day of the later part lies below the middle of both shares, so that a good day is not named as the beginning, and
//! - twice the gain in log-likelihood over one constant share is [`MIN_GAIN`] or more: the best of many splits gains more by
//!   chance than one split chosen beforehand, so the usual 3.84 would give too many false alarms.
//!
//! Only one split is looked for, and only a fall; a rise does not count.

use super::days::by_day;
use super::{Shares, SlotOn};
use crate::time::DayNumber;

/// Least number of days in each part.
pub const MIN_DAYS: usize = 5;
/// Least fall of the share of slots done, 0 to 1.
pub const MIN_DROP: f64 = 0.30;
/// Least value of twice the gain in log-likelihood.
pub const MIN_GAIN: f64 = 8.0;

/// Since when the item is no longer done.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct BreakOff {
    /// Number of the first day of the later part.
    pub since: DayNumber,
    /// The shares of the slots owed before that day.
    pub before: Shares,
    /// The same from that day on.
    pub after: Shares,
}

/// Finds since when the item is no longer done; `None` if that is not the case, or if there are too few days to decide.
pub fn broke_off(slots: &[SlotOn]) -> Option<BreakOff> {
    let counted = by_day(slots).into_iter().filter_map(|(day, counts)| Some((day, counts.shares()?)));
    let days: Vec<(DayNumber, Shares)> = counted.collect();
    let shares: Vec<f64> = days.iter().map(|(_, share)| share.share()).collect();
    let cut = best_cut(&shares)?;
    let (before, after) = days.split_at(cut);
    Some(BreakOff { since: after.first()?.0, before: sum(before)?, after: sum(after)? })
}

fn sum(days: &[(DayNumber, Shares)]) -> Option<Shares> {
    let sum = |of: fn(&Shares) -> u32| days.iter().map(|(_, share)| of(share)).fold(0, u32::saturating_add);
    Shares::of(sum(|share| share.thousandths), sum(|share| share.n))
}

/// The index of the first day of the later part.
fn best_cut(shares: &[f64]) -> Option<usize> {
    let last = shares.len().checked_sub(MIN_DAYS)?;
    let total: f64 = shares.iter().sum();
    let whole = log_likelihood(total, shares.len());
    // The sum is carried along because there are as many splits as days.
    let sums_before = shares.iter().scan(0.0, |sum, share| {
        let before = *sum;
        *sum += share;
        Some(before)
    });
    let gains = sums_before.enumerate().take(last + 1).skip(MIN_DAYS).filter_map(|(cut, before)| {
        let (after, days_after) = (total - before, shares.len() - cut);
        let (high, low) = (before / cut as f64, after / days_after as f64);
        // Allows for rounding, so that a fall from 0.8 to 0.5 counts.
        let falls = high - low >= MIN_DROP - 1e-9 && shares[cut] < high.midpoint(low);
        falls.then(|| (cut, 2.0 * (log_likelihood(before, cut) + log_likelihood(after, days_after) - whole)))
    });
    let (cut, gain) = gains.max_by(|one, other| one.1.total_cmp(&other.1))?;
    (gain >= MIN_GAIN).then_some(cut)
}

/// The greatest log-likelihood of `days` shares with this sum under one constant share, which is their mean.
fn log_likelihood(sum: f64, days: usize) -> f64 {
    let p = sum / days as f64;
    let term = |share: f64| if share <= 0.0 { 0.0 } else { share * libm::log(share) };
    days as f64 * (term(p) + term(1.0 - p))
}

#[cfg(test)]
mod tests {
    use super::super::samples::{DAY_OFF, day, share_of_day, unseen};
    use super::*;
    use proptest::prelude::*;

    /// One day per number; each has nine slots, of which this number is done.
    fn days(done: &[usize]) -> Vec<SlotOn> {
        done.iter().enumerate().flat_map(|(day, done)| share_of_day(day as u16, *done, 9)).collect()
    }

    #[test]
    fn the_day_of_breaking_off_is_found() {
        let mut done = vec![9; 12];
        done.extend([1, 0, 0, 0, 0, 0, 0]);
        let found = broke_off(&days(&done)).expect("it broke off");
        assert_eq!(found.since, DayNumber(12));
        assert_eq!(
            (found.before, found.after),
            (Shares { thousandths: 108_000, n: 108 }, Shares { thousandths: 1000, n: 63 })
        );
    }

    #[test]
    fn days_without_a_record_count_as_breaking_off() {
        let mut slots = days(&[8; 10]);
        slots.extend((10..20).flat_map(|day| unseen(share_of_day(day, 0, 9))));
        assert_eq!(broke_off(&slots).map(|found| found.since), Some(DayNumber(10)));
    }

    #[test]
    fn days_off_are_not_a_break() {
        let mut slots = days(&[9; 10]);
        slots.extend((10..20).flat_map(|number| day(number, &[DAY_OFF; 9])));
        assert_eq!(broke_off(&slots), None);
    }

    #[test]
    fn four_days_are_too_short_a_part_and_five_are_enough() {
        let with_end = |end: usize| {
            let mut done = vec![9; 10];
            done.extend(vec![0; end]);
            broke_off(&days(&done))
        };
        assert_eq!(with_end(4), None);
        assert_eq!(with_end(5).map(|found| found.since), Some(DayNumber(10)));
        let mut done = vec![9; 4];
        done.extend(vec![0; 10]);
        assert_ne!(broke_off(&days(&done)).map(|found| found.since), Some(DayNumber(4)));
        assert_eq!(broke_off(&days(&[0; 9])), None);
        assert_eq!(broke_off(&[]), None);
    }

    #[test]
    fn a_small_fall_and_a_rise_do_not_count_as_breaking_off() {
        let mut small = vec![9; 30];
        small.extend(vec![7; 30]);
        assert_eq!(broke_off(&days(&small)), None, "22 points");
        let mut rise = vec![0; 10];
        rise.extend(vec![9; 10]);
        assert_eq!(broke_off(&days(&rise)), None);
    }

    #[test]
    fn a_fall_of_thirty_points_over_many_days_is_enough() {
        let fall = |to: usize| {
            let mut slots: Vec<SlotOn> = (0..40).flat_map(|day| share_of_day(day, 9, 10)).collect();
            slots.extend((40..80).flat_map(|day| share_of_day(day, to, 10)));
            broke_off(&slots).map(|found| found.since)
        };
        assert_eq!(fall(6), Some(DayNumber(40)));
        assert_eq!(fall(7), None, "20 points");
    }

    /// The best of many splits must not find a break in steady days. Each day is done with a probability of seven in ten, from a
    /// generator written out here so that the days are the same in every run.
    #[test]
    fn steady_days_rarely_break_off() {
        let mut state = 20_261_125u64;
        let mut coin = || {
            state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            (state >> 33) % 10 < 7
        };
        let alarms = (0..1000)
            .filter(|_| {
                let slots: Vec<SlotOn> = (0..42).flat_map(|day| share_of_day(day, usize::from(coin()), 1)).collect();
                broke_off(&slots).is_some()
            })
            .count();
        assert!(alarms <= 50, "{alarms} of 1000 steady periods");
    }

    proptest! {
        #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

        #[test]
        fn every_break_found_satisfies_the_rule(done in prop::collection::vec(0usize..=9, 0..60)) {
            if let Some(found) = broke_off(&days(&done)) {
                let cut = usize::from(found.since.0);
                prop_assert!(cut >= MIN_DAYS && done.len() - cut >= MIN_DAYS);
                prop_assert!(found.before.share() - found.after.share() >= MIN_DROP - 1e-9);
                prop_assert_eq!(found.before.n + found.after.n, 9 * done.len() as u32);
            }
        }
    }
}
