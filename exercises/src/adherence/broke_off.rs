//! Since when it broke off.
//!
//! Rule (our design): each day on which the item was asked for has the share of its slots that were done, days without any
//! record counting as nothing done; excused days and days held back by an alarm are taken out. The days are cut in two where
//! two constant shares fit best, by the likelihood of a Bernoulli variable with the day as the unit (slots of one day are
//! correlated, so nine slots weigh as one day; shares between 0 and 1 enter as in the quasi-likelihood of Papke & Wooldridge
//! 1996, J Appl Econom 11:619-632; recalled). It broke off there if
//! - each part has [`LEAST_DAYS`] days or more,
//! - the share falls by [`LEAST_DROP`] or more, and
//! - twice the gain in log-likelihood over one constant share is [`LEAST_GAIN`] or more: the best of many cuts gains more by
//!   chance than one cut chosen beforehand, so the usual 3.84 would cry wolf.
//!
//! Only one cut is looked for, and only a fall; a rise is no breaking off.

use super::days::by_day;
use super::{KofN, SlotOn};

/// Days that each part needs.
pub const LEAST_DAYS: usize = 5;
/// Fall of the share of slots done, 0 to 1.
pub const LEAST_DROP: f64 = 0.30;
/// Twice the gain in log-likelihood.
pub const LEAST_GAIN: f64 = 8.0;

/// Since when it broke off.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct BreakOff {
    /// The first day of the later part.
    pub since: u16,
    /// Slots done of slots asked for before it, unrecorded days counted as not done.
    pub before: KofN,
    /// The same from it on.
    pub after: KofN,
}

/// Finds since when it broke off; `None` if it did not, or too few days tell.
pub fn broke_off(slots: &[SlotOn]) -> Option<BreakOff> {
    let counted = by_day(slots).into_iter().filter_map(|(day, counts)| Some((day, counts.kept_with_unrecorded()?)));
    let days: Vec<(u16, KofN)> = counted.collect();
    let shares: Vec<f64> = days.iter().map(|(_, share)| share.share()).collect();
    let cut = best_cut(&shares)?;
    let (before, after) = days.split_at(cut);
    Some(BreakOff { since: after.first()?.0, before: sum(before)?, after: sum(after)? })
}

fn sum(days: &[(u16, KofN)]) -> Option<KofN> {
    KofN::of(days.iter().map(|(_, share)| share.k).sum(), days.iter().map(|(_, share)| share.n).sum())
}

/// Where the later part begins.
fn best_cut(shares: &[f64]) -> Option<usize> {
    let last = shares.len().checked_sub(LEAST_DAYS)?;
    let whole = log_likelihood(shares);
    let falls = (LEAST_DAYS..=last).filter(|cut| {
        let (before, after) = shares.split_at(*cut);
        // Shares are small fractions; a hair's breadth of rounding does not keep 0.8 to 0.5 out.
        mean(before) - mean(after) >= LEAST_DROP - 1e-9
    });
    let gains = falls.map(|cut| {
        let (before, after) = shares.split_at(cut);
        (cut, 2.0 * (log_likelihood(before) + log_likelihood(after) - whole))
    });
    let (cut, gain) = gains.max_by(|one, other| one.1.total_cmp(&other.1))?;
    (gain >= LEAST_GAIN).then_some(cut)
}

fn mean(shares: &[f64]) -> f64 {
    shares.iter().sum::<f64>() / shares.len() as f64
}

/// The greatest log-likelihood of `shares` under one constant share, its own mean.
fn log_likelihood(shares: &[f64]) -> f64 {
    let p = mean(shares);
    let term = |share: f64| if share <= 0.0 { 0.0 } else { share * libm::log(share) };
    shares.len() as f64 * (term(p) + term(1.0 - p))
}
