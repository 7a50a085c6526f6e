//! A set of days of the week.

use chrono::Weekday;

/// The days of the week in order.
const WEEK: [Weekday; 7] =
    [Weekday::Mon, Weekday::Tue, Weekday::Wed, Weekday::Thu, Weekday::Fri, Weekday::Sat, Weekday::Sun];

/// A set of days of the week.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize), serde(try_from = "u8", into = "u8"))]
pub struct Weekdays(u8);

impl Weekdays {
    /// No day.
    pub const NONE: Weekdays = Weekdays(0);
    /// Monday alone.
    pub const MONDAY: Weekdays = Weekdays(0b000_0001);
    /// Monday to Friday.
    pub const WORKDAYS: Weekdays = Weekdays(0b001_1111);
    /// Every day.
    pub const ALL: Weekdays = Weekdays(0b111_1111);

    /// The set whose bits are set, in the form used in files: bit 0 is Monday, bit 6 is Sunday. `None` if bit 7 is set.
    pub const fn from_bits(bits: u8) -> Option<Weekdays> {
        if bits <= Weekdays::ALL.0 { Some(Weekdays(bits)) } else { None }
    }

    /// The set in the form that [`Weekdays::from_bits`] reads.
    pub const fn bits(self) -> u8 {
        self.0
    }

    /// Whether `day` is in the set.
    pub fn contains(self, day: Weekday) -> bool {
        self.0 & bit(day) != 0
    }

    /// Whether the set has no day.
    pub fn is_empty(self) -> bool {
        self.0 == 0
    }

    /// The same set with `day` removed if it was in it, or added if it was not.
    pub fn toggled(self, day: Weekday) -> Weekdays {
        Weekdays(self.0 ^ bit(day))
    }

    /// The days in the set, from Monday on.
    pub fn iter(self) -> impl Iterator<Item = Weekday> {
        WEEK.into_iter().filter(move |day| self.contains(*day))
    }
}

fn bit(day: Weekday) -> u8 {
    1 << day.num_days_from_monday()
}

impl FromIterator<Weekday> for Weekdays {
    fn from_iter<T: IntoIterator<Item = Weekday>>(days: T) -> Weekdays {
        Weekdays(days.into_iter().fold(0, |set, day| set | bit(day)))
    }
}

impl TryFrom<u8> for Weekdays {
    type Error = &'static str;

    fn try_from(bits: u8) -> Result<Weekdays, &'static str> {
        Weekdays::from_bits(bits).ok_or("a week has seven days")
    }
}

impl From<Weekdays> for u8 {
    fn from(days: Weekdays) -> u8 {
        days.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_set_is_its_days_and_its_bits() {
        for bits in 0..128 {
            let days = Weekdays::from_bits(bits).expect("seven bits");
            assert_eq!((days.iter().collect::<Weekdays>(), days.bits()), (days, bits));
            assert_eq!(days.iter().count(), bits.count_ones() as usize);
            assert_eq!(days.is_empty(), bits == 0);
        }
        assert_eq!(Weekdays::from_bits(128), None);
        assert_eq!(Weekdays::WORKDAYS.iter().last(), Some(Weekday::Fri));
    }

    #[test]
    fn a_day_goes_in_and_out() {
        let without = Weekdays::WORKDAYS.toggled(Weekday::Wed);
        assert!(!without.contains(Weekday::Wed) && without.contains(Weekday::Tue) && !without.contains(Weekday::Sat));
        assert_eq!(without.toggled(Weekday::Wed), Weekdays::WORKDAYS);
    }
}
