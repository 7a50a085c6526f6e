//! Parts that card and summary share, as they travel, each with its way to the domain and back.

use crate::cbor::AtMost;
use chrono::{Days as Ahead, NaiveDate};
use exercises::catalogue::{Dose, Tempo};
use exercises::plan::schedule::DAY_MINUTES;
use exercises::plan::{Days, Pattern, Schedule};
use minicbor::{Decode, Decoder, Encode, Encoder, decode, encode};

/// Most due times of one day, with room over what a plan may ask for.
const MAX_TIMES: usize = 24;

/// A date, as days since 2020-01-01: two bytes reach to 2199, and nothing outside can be written or read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Date(pub NaiveDate);

/// Day 0.
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

/// When an item is due.
#[derive(Encode, Decode)]
#[cbor(flat)]
pub(crate) enum ScheduleOut {
    #[n(0)]
    Every(#[n(0)] u8, #[n(1)] u16, #[n(2)] u16, #[n(3)] u16),
    #[n(1)]
    At(#[n(0)] u8, #[n(1)] AtMost<u16, MAX_TIMES>),
}

impl From<&Schedule> for ScheduleOut {
    fn from(Schedule { days: Days(days), pattern }: &Schedule) -> ScheduleOut {
        match pattern {
            Pattern::Every { minutes, from, to } => ScheduleOut::Every(*days, *minutes, *from, *to),
            Pattern::At { times } => ScheduleOut::At(*days, AtMost(times.clone())),
        }
    }
}

impl ScheduleOut {
    /// The schedule, if its minutes are minutes of a day and its interval is not zero.
    pub(crate) fn schedule(self) -> Option<Schedule> {
        let within = |minute: u16| minute < DAY_MINUTES;
        match self {
            ScheduleOut::Every(days, minutes, from, to) => {
                let fits = days < 128 && minutes > 0 && within(minutes) && within(from) && within(to);
                fits.then_some(Schedule { days: Days(days), pattern: Pattern::Every { minutes, from, to } })
            }
            ScheduleOut::At(days, AtMost(times)) => {
                let fits = days < 128 && times.iter().all(|time| within(*time));
                fits.then_some(Schedule { days: Days(days), pattern: Pattern::At { times } })
            }
        }
    }
}

/// How much at a time.
#[derive(Encode, Decode)]
#[cbor(flat)]
pub(crate) enum DoseOut {
    #[n(0)]
    Hold(#[n(0)] u8, #[n(1)] u16, #[n(2)] u16),
    #[n(1)]
    Balance(#[n(0)] u8, #[n(1)] u16, #[n(2)] u16),
    #[n(2)]
    Reps(#[n(0)] u8, #[n(1)] u8, #[n(2)] u16, #[n(3)] u8, #[n(4)] u8, #[n(5)] u8),
}

impl From<Dose> for DoseOut {
    fn from(dose: Dose) -> DoseOut {
        match dose {
            Dose::Hold { repetitions, hold_s, rest_s } => DoseOut::Hold(repetitions, hold_s, rest_s),
            Dose::Balance { trials, target_s, rest_s } => DoseOut::Balance(trials, target_s, rest_s),
            Dose::Reps { sets, repetitions, rest_s, tempo: Tempo { up_s, hold_s, down_s } } => {
                DoseOut::Reps(sets, repetitions, rest_s, up_s, hold_s, down_s)
            }
        }
    }
}

impl From<DoseOut> for Dose {
    fn from(dose: DoseOut) -> Dose {
        match dose {
            DoseOut::Hold(repetitions, hold_s, rest_s) => Dose::Hold { repetitions, hold_s, rest_s },
            DoseOut::Balance(trials, target_s, rest_s) => Dose::Balance { trials, target_s, rest_s },
            DoseOut::Reps(sets, repetitions, rest_s, up_s, hold_s, down_s) => {
                Dose::Reps { sets, repetitions, rest_s, tempo: Tempo { up_s, hold_s, down_s } }
            }
        }
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
        ] {
            assert!(wrong.schedule().is_none(), "{why}");
        }
    }
}
