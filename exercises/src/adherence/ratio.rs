//! A number out of a total. A fully logged period is a count, so it is shown as k of n, and never as 0 % of nothing.

/// Least share that counts as done as agreed, percent (80 to 99 % of the recommended dose is the commonest "satisfactory" range:
/// Bailey 2020, Br J Sports Med 54:326-331, 10.1136/bjsports-2017-098742; seen).
pub const AS_AGREED_PERCENT: u32 = 80;
/// Least share that counts as partly done, percent (our choice; no publication gives one).
pub const PARTLY_PERCENT: u32 = 50;

/// `k` of `n`, with `k <= n` and `n >= 1`; for a total of 0 there is no `KofN`.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct KofN {
    /// The number done.
    pub k: u32,
    /// The number asked for.
    pub n: u32,
}

/// The level of a share.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Level {
    /// [`AS_AGREED_PERCENT`] or more.
    AsAgreed,
    /// [`PARTLY_PERCENT`] or more.
    Partly,
    /// Less than [`PARTLY_PERCENT`].
    Little,
}

/// The shares of `n` slots, summed: what was done in part counts by its share.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Shares {
    /// The sum, in thousandths of a slot; at most `1000 * n`.
    pub thousandths: u32,
    /// The number of slots owed, at least 1.
    pub n: u32,
}

impl Shares {
    /// `thousandths` of `n` slots; `None` if `n` is 0.
    pub fn of(thousandths: u32, n: u32) -> Option<Shares> {
        (n > 0).then_some(Shares { thousandths: thousandths.min(n.saturating_mul(1000)), n })
    }

    /// The level of the mean share.
    pub fn level(self) -> Level {
        self.of_whole().level()
    }

    /// The sum out of what was owed, both in thousandths of a slot.
    pub fn of_whole(self) -> KofN {
        let n = self.n.max(1).saturating_mul(1000);
        KofN { k: self.thousandths.min(n), n }
    }

    /// The mean share, 0 to 1.
    pub fn share(self) -> f64 {
        f64::from(self.thousandths) / (1000.0 * f64::from(self.n.max(1)))
    }

    /// The sum as a number of whole slots, rounded.
    pub fn slots(self) -> u32 {
        self.thousandths.saturating_add(500) / 1000
    }

    /// Whether the mean share is `percent` or less, without rounding.
    pub fn is_at_most(self, percent: u32) -> bool {
        u64::from(self.thousandths) <= u64::from(self.n) * 10 * u64::from(percent)
    }
}

impl KofN {
    /// `k` of `n`, with `k` capped at `n`; `None` if `n` is 0.
    pub fn of(k: u32, n: u32) -> Option<KofN> {
        (n > 0).then_some(KofN { k: k.min(n), n })
    }

    /// The share in percent, 0 to 100, for a place without space for both numbers.
    pub fn percent(self) -> f64 {
        100.0 * self.share()
    }

    /// The share, 0 to 1.
    pub fn share(self) -> f64 {
        f64::from(self.k) / f64::from(self.n.max(1))
    }

    /// Whether the share reaches `percent`, without rounding.
    pub fn reaches(self, percent: u32) -> bool {
        u64::from(self.k) * 100 >= u64::from(self.n) * u64::from(percent)
    }

    /// The level of the share.
    pub fn level(self) -> Level {
        if self.reaches(AS_AGREED_PERCENT) {
            Level::AsAgreed
        } else if self.reaches(PARTLY_PERCENT) {
            Level::Partly
        } else {
            Level::Little
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn without_anything_asked_for_there_is_no_share() {
        assert_eq!(KofN::of(0, 0), None);
        assert_eq!(KofN::of(3, 0), None);
    }

    #[test]
    fn doing_more_does_not_exceed_the_total() {
        assert_eq!(KofN::of(12, 9), Some(KofN { k: 9, n: 9 }));
    }

    #[test]
    fn eighty_and_fifty_percent_reach_their_levels_and_one_less_does_not() {
        let level = |k, n| KofN::of(k, n).map(KofN::level);
        assert_eq!(level(8, 10), Some(Level::AsAgreed));
        assert_eq!(level(799, 1000), Some(Level::Partly), "79.9 % is not rounded up");
        assert_eq!(level(5, 10), Some(Level::Partly));
        assert_eq!(level(499, 1000), Some(Level::Little));
        assert_eq!(level(0, 1), Some(Level::Little));
    }

    #[test]
    fn percent_is_the_share() {
        assert_eq!(KofN::of(3, 4).map(KofN::percent), Some(75.0));
    }
}
