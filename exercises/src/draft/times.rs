//! Times of the day as they are typed.

use crate::plan::schedule::DAY_MINUTES;

/// Minutes from midnight of "9", "9:30", "09.30"; `None` where it is no time of the day.
pub fn minute_of(text: &str) -> Option<u16> {
    let text = text.trim();
    let (hour, minute) = text.split_once([':', '.', 'h']).unwrap_or((text, "0"));
    let minute = if minute.is_empty() { "0" } else { minute };
    let number = |text: &str| text.parse::<u16>().ok().filter(|_| text.len() <= 2 && !text.starts_with('+'));
    let (hour, minute) = (number(hour)?, number(minute)?);
    (minute < 60).then_some(hour.checked_mul(60)?.checked_add(minute)?).filter(|minute| *minute < DAY_MINUTES)
}

/// Ascending minutes of a list of times, parted by commas, semicolons or spaces; `None` where any is no time of the day or
/// there is none.
pub fn times_of(text: &str) -> Option<Vec<u16>> {
    let parts = text.split([',', ';', ' ']).filter(|part| !part.trim().is_empty());
    let mut times: Vec<u16> = parts.map(minute_of).collect::<Option<_>>()?;
    times.sort_unstable();
    times.dedup();
    (!times.is_empty()).then_some(times)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn times_are_read_as_people_write_them() {
        assert_eq!(["9", "09:30", "9.05", "17h", "7h30", " 0:00 "].map(minute_of), [540, 570, 545, 1020, 450, 0].map(Some));
    }

    #[test]
    fn what_is_no_time_is_refused() {
        for text in ["", "24:00", "9:60", "nine", "9:5:1", "-1", "+9", "009", "9:001", "99999999"] {
            assert_eq!(minute_of(text), None, "{text}");
        }
    }

    #[test]
    fn a_list_is_sorted_and_each_time_stands_once() {
        assert_eq!(times_of("18:00, 8; 13:00 8:00"), Some(vec![480, 780, 1080]));
        assert_eq!(times_of(" , "), None);
        assert_eq!(times_of("8:00, later"), None);
    }
}
