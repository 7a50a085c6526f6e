//! Reads lists of times of day as they are typed.

use crate::time::MinuteOfDay;

/// The times of a list as minutes from midnight, ascending. Times are separated by commas, semicolons or spaces, each in any form
/// that [`MinuteOfDay`] reads; a repeated time counts once. `None` if any part is not a time of day or the list is empty.
pub fn times_of(text: &str) -> Option<Vec<u16>> {
    let mut words: Vec<String> = Vec::new();
    for part in text.split([',', ';']) {
        let mut is_first = true;
        for word in part.split_whitespace() {
            // "7 pm" and "19:00 h" are one time: a word that begins with a letter belongs to the number before it.
            match words.last_mut().filter(|_| !is_first && word.starts_with(char::is_alphabetic)) {
                Some(time) => time.push_str(word),
                None => words.push(word.to_owned()),
            }
            is_first = false;
        }
    }
    let mut times: Vec<u16> =
        words.iter().map(|word| word.parse().map(MinuteOfDay::minutes)).collect::<Result<_, _>>().ok()?;
    times.sort_unstable();
    times.dedup();
    (!times.is_empty()).then_some(times)
}

/// "08:00, 13:00": minutes from midnight as a text that [`times_of`] can read.
pub fn times_text(times: &[u16]) -> String {
    times.iter().map(|time| MinuteOfDay::on_the_clock(*time).to_string()).collect::<Vec<_>>().join(", ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_list_is_read_whole_and_shown_sorted() {
        for (typed, shown) in [
            ("18:00, 8; 13:00 8:00", "08:00, 13:00, 18:00"),
            ("0800, 1900", "08:00, 19:00"),
            ("8am, 7pm", "08:00, 19:00"),
            ("8 am 7 pm", "08:00, 19:00"),
            ("8 a. m., 7 p. m.", "08:00, 19:00"),
            ("8h 13h 18h30", "08:00, 13:00, 18:30"),
            ("8:00 h, 19:00 h,", "08:00, 19:00"),
            (" 19.00 ", "19:00"),
        ] {
            assert_eq!(times_of(typed).map(|times| times_text(&times)).as_deref(), Some(shown), "{typed:?}");
        }
    }

    #[test]
    fn one_part_that_is_not_a_time_invalidates_the_whole_list() {
        for typed in ["", " , ", "8:00, later", "25:00", "8:00, 19:0", "pm", "8, pm", "8 and 9", "900"] {
            assert_eq!(times_of(typed), None, "{typed:?}");
        }
    }
}
