//! A time of day in whole minutes: read from what a person types, and always shown in the same form.

use crate::time::DAY_MINUTES;
use std::fmt;
use std::str::FromStr;

/// A time of day, 00:00 to 23:59, shown as `08:00`. Every time of day that the program reads from text is read here.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct MinuteOfDay(u16);

/// The text is not a time of day, or could mean more than one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NotATime;

impl MinuteOfDay {
    /// The time `minutes` after midnight, 0 to 1439; `None` for a larger number.
    pub fn new(minutes: u16) -> Option<MinuteOfDay> {
        (minutes < DAY_MINUTES).then_some(MinuteOfDay(minutes))
    }

    /// The time that a clock shows `minutes` after midnight; 1440 minutes and more run on into the next days.
    pub fn on_the_clock(minutes: u16) -> MinuteOfDay {
        MinuteOfDay(minutes % DAY_MINUTES)
    }

    /// Minutes after midnight, 0 to 1439.
    pub fn minutes(self) -> u16 {
        self.0
    }

    fn of(hour: u16, minute: u16) -> Result<MinuteOfDay, NotATime> {
        if hour < 24 && minute < 60 { Ok(MinuteOfDay(hour * 60 + minute)) } else { Err(NotATime) }
    }
}

impl fmt::Display for MinuteOfDay {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:02}:{:02}", self.0 / 60, self.0 % 60)
    }
}

/// Reads "8", "08:00", "8.30", "0800", "8h", "7h30", "19:00 h", "8am", "7:15 p.m."; white space may be anywhere except within
/// a number. Three digits without a separator are refused, because "130" could mean 1:30 or 13:0.
impl FromStr for MinuteOfDay {
    type Err = NotATime;

    fn from_str(text: &str) -> Result<MinuteOfDay, NotATime> {
        let text = text.trim().to_lowercase();
        let letters_from = text.find(|c: char| c.is_ascii_alphabetic() && c != 'h').unwrap_or(text.len());
        let (clock, half) = text.split_at(letters_from);
        let half: String = half.chars().filter(|c| *c != '.' && !c.is_whitespace()).collect();
        let (hour, minute) = hour_and_minute(clock.trim())?;
        match half.as_str() {
            "" => MinuteOfDay::of(hour, minute),
            "am" | "pm" if (1..=12).contains(&hour) => {
                MinuteOfDay::of(hour % 12 + if half == "pm" { 12 } else { 0 }, minute)
            }
            _ => Err(NotATime),
        }
    }
}

fn hour_and_minute(clock: &str) -> Result<(u16, u16), NotATime> {
    if let Some(whole) = clock.strip_suffix('h').map(str::trim_end) {
        // Without this check "7h30h" would be read as half past seven.
        return if whole.contains('h') { Err(NotATime) } else { hour_and_minute(whole) };
    }
    if let Some((hour, minute)) = clock.split_once([':', '.', 'h']) {
        return Ok((number(hour.trim_end(), 1..=2)?, number(minute.trim_start(), 2..=2)?));
    }
    match clock.len() {
        4 if clock.is_ascii() => Ok((number(&clock[..2], 2..=2)?, number(&clock[2..], 2..=2)?)),
        _ => Ok((number(clock, 1..=2)?, 0)),
    }
}

/// Reads a number that has as many digits as `digits` allows and no other characters.
fn number(text: &str, digits: std::ops::RangeInclusive<usize>) -> Result<u16, NotATime> {
    let plain = digits.contains(&text.len()) && text.bytes().all(|byte| byte.is_ascii_digit());
    text.parse().ok().filter(|_| plain).ok_or(NotATime)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Option<String> {
        text.parse::<MinuteOfDay>().ok().map(|time| time.to_string())
    }

    #[test]
    fn every_usual_spelling_is_read() {
        for (typed, shown) in [
            ("8", "08:00"),
            ("08", "08:00"),
            ("8:00", "08:00"),
            ("08:00", "08:00"),
            ("0800", "08:00"),
            ("1900", "19:00"),
            ("0005", "00:05"),
            ("19.00", "19:00"),
            ("9.05", "09:05"),
            ("19h", "19:00"),
            ("7h30", "07:30"),
            ("19:00 h", "19:00"),
            ("19:00h", "19:00"),
            ("1900 h", "19:00"),
            ("9 h", "09:00"),
            ("8am", "08:00"),
            ("7 pm", "19:00"),
            ("7PM", "19:00"),
            ("7:15 p.m.", "19:15"),
            ("7.15 p. m.", "19:15"),
            ("0730 pm", "19:30"),
            ("12am", "00:00"),
            ("12:30 am", "00:30"),
            ("12 pm", "12:00"),
            (" 0:00 ", "00:00"),
            ("23:59", "23:59"),
        ] {
            assert_eq!(read(typed).as_deref(), Some(shown), "{typed:?}");
        }
    }

    #[test]
    fn texts_that_are_no_time_or_could_be_two_are_refused() {
        for typed in [
            "",
            " ",
            "h",
            "am",
            "24",
            "24:00",
            "2400",
            "25:00",
            "9:60",
            "0860",
            "nine",
            "9:5",
            "9:5:1",
            "9:",
            ":30",
            "-1",
            "+9",
            "9:+5",
            "009",
            "130",
            "08000",
            "9:001",
            "99999999",
            "8 30",
            "8,30",
            "0 am",
            "0:30 pm",
            "13pm",
            "8 a",
            "8 px",
            "8 am pm",
            "7h30h",
            "7hh",
            "8:00-9:00",
            "٨",
            "８:00",
            "8:0０",
            "abcd",
            "ñañ",
            "8:00 tomorrow",
        ] {
            assert_eq!(read(typed), None, "{typed:?}");
        }
    }

    #[test]
    fn what_is_shown_is_read_again() {
        for minutes in 0..DAY_MINUTES {
            let time = MinuteOfDay::new(minutes).expect("within a day");
            assert_eq!(time.to_string().parse(), Ok(time));
            assert_eq!(time.minutes(), minutes);
        }
        assert_eq!(MinuteOfDay::new(DAY_MINUTES), None);
        assert_eq!(MinuteOfDay::on_the_clock(DAY_MINUTES + 61).to_string(), "01:01");
    }
}
