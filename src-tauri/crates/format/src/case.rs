//! When a patient's case was closed and opened again, as the clinic stores it, encrypted. It never leaves the clinic.
//!
//! ```text
//! version | line break | each closing, a line: day | tab | day of reopening, or - | tab | reason's name | tab | words
//! ```

use crate::names;
use exercises::closing::{Closing, MAX_CLOSINGS, MAX_WORDS};

const VERSION: &str = "1";
const NOT_REOPENED: &str = "-";

/// Writes the closings of a case. Words are one line without tabs.
pub fn write(closings: &[Closing]) -> Vec<u8> {
    let mut text = VERSION.to_owned();
    for Closing { on, reason, words, reopened } in closings {
        let reopened = reopened.map_or_else(|| NOT_REOPENED.to_owned(), |day| day.to_string());
        text.push_str(&format!("\n{on}\t{reopened}\t{}\t{words}", names::name(reason)));
    }
    text.into_bytes()
}

/// Reads what [`write()`] wrote; `None` for anything else.
pub fn read(bytes: &[u8]) -> Option<Vec<Closing>> {
    let mut lines = std::str::from_utf8(bytes).ok()?.split('\n');
    if lines.next()? != VERSION {
        return None;
    }
    let closings: Vec<Closing> = lines.map(closing).collect::<Option<_>>()?;
    (closings.len() <= MAX_CLOSINGS).then_some(closings)
}

fn closing(line: &str) -> Option<Closing> {
    let [on, reopened, reason, words] = line.split('\t').collect::<Vec<_>>().try_into().ok()?;
    let reopened = if reopened == NOT_REOPENED { None } else { Some(reopened.parse().ok()?) };
    let fits = words.chars().count() <= MAX_WORDS;
    fits.then_some(Closing { on: on.parse().ok()?, reason: names::find(reason)?, words: words.to_owned(), reopened })
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::NaiveDate;
    use exercises::closing::CloseReason;

    /// These bytes never change within a version.
    #[test]
    fn closings_are_written_as_they_always_were() {
        let day = |day| NaiveDate::from_ymd_opt(2027, 3, day).expect("a day");
        let closings = vec![
            Closing { on: day(1), reason: CloseReason::StoppedComing, words: String::new(), reopened: Some(day(9)) },
            Closing { on: day(20), reason: CloseReason::Other, words: "moved away".into(), reopened: None },
        ];
        let text = "1\n2027-03-01\t2027-03-09\tstopped-coming\t\n2027-03-20\t-\tother\tmoved away";
        assert_eq!(write(&closings), text.as_bytes());
        assert_eq!(read(text.as_bytes()), Some(closings));
        assert_eq!(read(&write(&[])), Some(Vec::new()));
        for bad in ["", "2", "1\n", "1\n2027-03-01\t-\tother", "1\n2027-03-01\t-\tanother\t", "1\n2027-13-01\t-\tother\t"] {
            assert_eq!(read(bad.as_bytes()), None, "{bad:?}");
        }
        let long = format!("1\n2027-03-01\t-\tother\t{}", "x".repeat(MAX_WORDS + 1));
        assert_eq!(read(long.as_bytes()), None);
    }
}
