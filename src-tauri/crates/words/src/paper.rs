//! What stands on paper and is made of several values.

use crate::{Key, Words};
use exercises::catalogue::Dose;
use exercises::catalogue::Quantity::{
    Repetitions, RestSeconds, Sets, TempoDownSeconds, TempoHoldSeconds, TempoUpSeconds, Trials,
};
use exercises::guide::Beat;

impl Words {
    /// A line as a sentence: with a full stop, unless it has an end already.
    pub fn sentence(self, line: &str) -> String {
        let ended = line.trim_end().ends_with(['.', '!', '?', '…', '”', '»']);
        if ended || line.is_empty() { line.to_owned() } else { self.as_sentence(line) }
    }

    /// Lines as sentences, one after the other.
    pub fn as_sentences<T: AsRef<str>>(self, lines: &[T]) -> String {
        self.sentences(&lines.iter().map(|line| self.sentence(line.as_ref())).collect::<Vec<_>>())
    }

    /// "Rest 45 seconds in between. Each repetition: Up 2 s, Hold 1 s, Down 3 s."; `None` for a dose that says neither. On a screen the
    /// program counts both; on paper somebody has to be told.
    pub fn rest_and_tempo(self, dose: Dose, moves_up: bool) -> Option<String> {
        let parts = [Sets, Trials, Repetitions].into_iter().find_map(|quantity| dose.value(quantity)).unwrap_or(1);
        let rest = dose.value(RestSeconds).filter(|rest| *rest > 0 && parts > 1).map(|rest| self.paper_rest(rest));
        let beats = [(TempoUpSeconds, Beat::Up), (TempoHoldSeconds, Beat::Keep), (TempoDownSeconds, Beat::Down)];
        let beats = beats.into_iter().filter_map(|(quantity, beat)| {
            let seconds = dose.value(quantity).filter(|seconds| *seconds > 0)?;
            Some(self.paper_beat(self.beat(moves_up, beat), seconds))
        });
        let beats: Vec<String> = beats.collect();
        let tempo = (!beats.is_empty()).then(|| self.paper_tempo(&self.commas(&beats)));
        let said: Vec<String> = rest.into_iter().chain(tempo).collect();
        (!said.is_empty()).then(|| self.sentences(&said))
    }

    /// The amount of a dose that the calendar raises, for a column of amounts; `None` for every other dose.
    pub fn amount_of_day(self, dose: Dose) -> Option<DayAmount> {
        let number = |n: u8| self.shown(self.number(f64::from(n)));
        match dose {
            Dose::Quota { minutes, .. } => Some(DayAmount {
                number: number(minutes),
                whole: self.diary_minutes(minutes),
                unit: self.text(Key::DiaryAmountMinutes),
            }),
            Dose::QuotaTimes { times, .. } => {
                Some(DayAmount { number: number(times), whole: number(times), unit: self.text(Key::DiaryAmountTimes) })
            }
            _ => None,
        }
    }
}

/// An amount that is planned for one day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DayAmount {
    /// "26".
    pub number: String,
    /// "26 min" where there is room; "12" for a number of times.
    pub whole: String,
    /// "in minutes", at the head of the column.
    pub unit: &'static str,
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;
    use exercises::catalogue::Tempo;

    #[test]
    fn a_line_gets_one_full_stop() {
        let words = Words::new(Locale::En);
        assert_eq!(words.as_sentences(&["Rising", "12 to 22 s.", "Why?"]), "Rising. 12 to 22 s. Why?");
    }

    #[test]
    fn rest_is_said_only_between_parts_and_a_tempo_without_what_takes_no_time() {
        let words = Words::new(Locale::En);
        let reps =
            |sets, hold_s| Dose::Reps { sets, repetitions: 8, rest_s: 45, tempo: Tempo { up_s: 2, hold_s, down_s: 3 } };
        let said = |dose| words.rest_and_tempo(dose, true);
        assert_eq!(
            said(reps(2, 1)).as_deref(),
            Some("Rest 45 seconds in between. Each repetition: Up\u{a0}2\u{a0}s, Hold\u{a0}1\u{a0}s, Down\u{a0}3\u{a0}s.")
        );
        assert_eq!(said(reps(1, 0)).as_deref(), Some("Each repetition: Up\u{a0}2\u{a0}s, Down\u{a0}3\u{a0}s."));
        assert_eq!(said(Dose::Hold { repetitions: 1, hold_s: 10, rest_s: 5 }), None);
        assert_eq!(
            said(Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 5 }).as_deref(),
            Some("Rest 5 seconds in between.")
        );
        assert_eq!(said(Dose::Care { minutes: 10 }), None);
    }
}
