//! Parts that cards and summaries have in common, in the form in which they are written, with conversions to and from the
//! domain.

use crate::cbor::AtMost;
use chrono::{Days as Ahead, NaiveDate};
use exercises::catalogue::{Dose, Kind};
use exercises::plan::{Days, Pattern, Schedule, Weekdays};
use exercises::time::DAY_MINUTES;
use minicbor::{Decode, Decoder, Encode, Encoder, decode, encode};

/// Largest number of due times on one day, more than a plan can prescribe.
const MAX_TIMES: usize = 24;

/// A date, written as days since 2020-01-01. Two bytes reach until 2199; other dates cannot be written or read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Date(pub NaiveDate);

/// The date that is written as day 0.
fn epoch() -> NaiveDate {
    NaiveDate::from_ymd_opt(2020, 1, 1).expect("a date of the calendar")
}

impl<C> Encode<C> for Date {
    fn encode<W: encode::Write>(&self, out: &mut Encoder<W>, _: &mut C) -> Result<(), encode::Error<W::Error>> {
        let days = u16::try_from(self.0.signed_duration_since(epoch()).num_days());
        out.u16(days.map_err(|_| encode::Error::message("a date outside 2020 to 2199"))?)?.ok()
    }
}

impl<'b, C> Decode<'b, C> for Date {
    fn decode(input: &mut Decoder<'b>, _: &mut C) -> Result<Self, decode::Error> {
        let days = u64::from(input.u16()?);
        epoch().checked_add_days(Ahead::new(days)).map(Date).ok_or_else(|| decode::Error::message("no such date"))
    }
}

/// When an item is due. The first two have days of the week as bits, which is all that cards before version 4 have.
#[derive(Encode, Decode)]
#[cbor(flat)]
pub(crate) enum ScheduleOut {
    #[n(0)]
    Every(#[n(0)] u8, #[n(1)] u16, #[n(2)] u16, #[n(3)] u16),
    #[n(1)]
    At(#[n(0)] u8, #[n(1)] AtMost<u16, MAX_TIMES>),
    #[n(2)]
    EveryOn(#[n(0)] CountedDays, #[n(1)] u16, #[n(2)] u16, #[n(3)] u16),
    #[n(3)]
    AtOn(#[n(0)] CountedDays, #[n(1)] AtMost<u16, MAX_TIMES>),
    #[n(4)]
    AsNeeded,
}

/// Days that are counted from one of them, and how many.
#[derive(Clone, Copy, Encode, Decode)]
#[cbor(flat)]
pub(crate) enum CountedDays {
    #[n(0)]
    EveryNth(#[n(0)] u8, #[n(1)] Date),
    #[n(1)]
    TimesAWeek(#[n(0)] u8, #[n(1)] Date),
}

impl From<CountedDays> for Days {
    fn from(days: CountedDays) -> Days {
        match days {
            CountedDays::EveryNth(n, Date(from)) => Days::EveryNth { n, from },
            CountedDays::TimesAWeek(n, Date(from)) => Days::TimesAWeek { n, from },
        }
    }
}

/// The bits of days of the week, or days that are counted.
fn days_out(days: Days) -> Result<u8, CountedDays> {
    match days {
        Days::On(days) => Ok(days.bits()),
        Days::EveryNth { n, from } => Err(CountedDays::EveryNth(n, Date(from))),
        Days::TimesAWeek { n, from } => Err(CountedDays::TimesAWeek(n, Date(from))),
    }
}

/// Whether only cards from version 4 on can have this schedule.
pub(crate) fn is_of_version_4(schedule: &Schedule) -> bool {
    schedule.is_as_needed() || days_out(schedule.days).is_err()
}

impl From<&Schedule> for ScheduleOut {
    fn from(Schedule { days, pattern }: &Schedule) -> ScheduleOut {
        match (pattern, days_out(*days)) {
            (Pattern::Every { minutes, from, to }, Ok(days)) => ScheduleOut::Every(days, *minutes, *from, *to),
            (Pattern::Every { minutes, from, to }, Err(days)) => ScheduleOut::EveryOn(days, *minutes, *from, *to),
            (Pattern::At { times }, Ok(days)) => ScheduleOut::At(days, AtMost(times.clone())),
            (Pattern::At { times }, Err(days)) => ScheduleOut::AtOn(days, AtMost(times.clone())),
            (Pattern::AsNeeded, _) => ScheduleOut::AsNeeded,
        }
    }
}

impl ScheduleOut {
    /// The schedule; `None` if its minutes are not minutes of a day or its interval is 0.
    pub(crate) fn schedule(self) -> Option<Schedule> {
        let within = |minute: u16| minute < DAY_MINUTES;
        let every = |days: Days, minutes: u16, from: u16, to: u16| {
            let fits = minutes > 0 && within(minutes) && within(from) && within(to);
            fits.then_some(Schedule { days, pattern: Pattern::Every { minutes, from, to } })
        };
        let at = |days: Days, times: Vec<u16>| {
            times.iter().all(|time| within(*time)).then_some(Schedule { days, pattern: Pattern::At { times } })
        };
        match self {
            ScheduleOut::Every(days, minutes, from, to) => every(Weekdays::from_bits(days)?.into(), minutes, from, to),
            ScheduleOut::At(days, AtMost(times)) => at(Weekdays::from_bits(days)?.into(), times),
            ScheduleOut::EveryOn(days, minutes, from, to) => every(days.into(), minutes, from, to),
            ScheduleOut::AtOn(days, AtMost(times)) => at(days.into(), times),
            ScheduleOut::AsNeeded => Some(Schedule::AS_NEEDED),
        }
    }
}

/// A dose: the code of its kind, then the values of its fields. Fields that this version does not know are ignored.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct DoseOut(pub Dose);

impl<C> Encode<C> for DoseOut {
    fn encode<W: encode::Write>(&self, out: &mut Encoder<W>, _: &mut C) -> Result<(), encode::Error<W::Error>> {
        let values = self.0.values();
        out.array(1 + values.len() as u64)?.u8(self.0.kind().rules().code())?;
        values.iter().try_for_each(|value| out.i64(*value).map(drop))
    }
}

impl<'b, C> Decode<'b, C> for DoseOut {
    fn decode(input: &mut Decoder<'b>, _: &mut C) -> Result<Self, decode::Error> {
        let count =
            input.array()?.filter(|count| *count > 0).ok_or_else(|| decode::Error::message("a dose without a kind"))?;
        let kind = Kind::of_code(input.u8()?).ok_or_else(|| decode::Error::message("an unknown kind of dose"))?;
        let known = kind.rules().fields().len() as u64;
        let values = (1..count.min(known + 1)).map(|_| input.i64()).collect::<Result<Vec<i64>, _>>()?;
        (known + 1..count).try_for_each(|_| input.skip())?;
        Dose::from_values(kind, &values)
            .map(DoseOut)
            .ok_or_else(|| decode::Error::message("a dose that no field has room for"))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn date(year: i32, month: u32, day: u32) -> NaiveDate {
        NaiveDate::from_ymd_opt(year, month, day).expect("a date")
    }

    #[test]
    fn dates_are_counted_from_2020() {
        assert_eq!(minicbor::to_vec(Date(date(2020, 1, 1))).expect("fits"), [0]);
        assert_eq!(minicbor::to_vec(Date(date(2026, 11, 25))).expect("fits"), [0x19, 0x09, 0xD8], "2520 days");
        assert_eq!(minicbor::decode::<Date>(&[0x19, 0xFF, 0xFF]).expect("fits"), Date(date(2199, 6, 6)));
    }

    #[test]
    fn dates_outside_are_not_written() {
        for day in [date(2019, 12, 31), date(2199, 6, 7), NaiveDate::MIN, NaiveDate::MAX] {
            assert!(minicbor::to_vec(Date(day)).is_err(), "{day}");
        }
    }

    #[test]
    fn a_schedule_with_impossible_minutes_is_refused() {
        assert!(ScheduleOut::Every(127, 60, 540, 1020).schedule().is_some());
        for (wrong, why) in [
            (ScheduleOut::Every(128, 60, 540, 1020), "an eighth day"),
            (ScheduleOut::Every(31, 0, 540, 1020), "no interval"),
            (ScheduleOut::Every(31, 60, 540, 1440), "a minute after the day"),
            (ScheduleOut::At(31, AtMost(vec![1440])), "a time after the day"),
            (ScheduleOut::AtOn(CountedDays::EveryNth(2, Date(epoch())), AtMost(vec![1440])), "a time after the day"),
            (ScheduleOut::EveryOn(CountedDays::TimesAWeek(3, Date(epoch())), 0, 540, 1020), "no interval"),
        ] {
            assert!(wrong.schedule().is_none(), "{why}");
        }
    }

    /// The smallest dose of a kind.
    fn least(kind: Kind) -> Dose {
        let values: Vec<i64> = kind.rules().fields().iter().map(|field| field.quantity.bound().min).collect();
        Dose::from_values(kind, &values).expect("the smallest values fit")
    }

    #[test]
    fn a_dose_of_every_kind_comes_back_and_a_field_of_a_later_version_is_ignored() {
        for dose in Kind::ALL.iter().map(|kind| least(*kind)) {
            let mut bytes = minicbor::to_vec(DoseOut(dose)).expect("a vector takes every byte");
            assert_eq!(minicbor::decode::<DoseOut>(&bytes).expect("as written").0, dose);
            assert_eq!((bytes[0], bytes[1]), (0x81 + dose.fields().len() as u8, dose.kind().rules().code()));
            bytes[0] += 1;
            bytes.push(7);
            assert_eq!(minicbor::decode::<DoseOut>(&bytes).expect("one field more").0, dose);
        }
    }

    #[test]
    fn a_dose_of_no_kind_or_with_a_value_missing_or_too_large_is_refused() {
        for (wrong, why) in [
            (&[0x80][..], "nothing"),
            (&[0x84, 0x17, 3, 10, 10], "a kind that nobody knows"),
            (&[0x83, 0, 3, 10], "a value too few"),
            (&[0x84, 0, 0x19, 1, 0, 10, 10], "256 repetitions"),
            (&[0x84, 0, 3, 0x20, 10], "a negative time"),
        ] {
            assert!(minicbor::decode::<DoseOut>(wrong).is_err(), "{why}");
        }
        assert!(minicbor::decode::<DoseOut>(&[0x84, 0, 3, 10, 10]).is_ok());
    }
}
