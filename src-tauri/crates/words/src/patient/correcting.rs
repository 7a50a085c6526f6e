//! Entries that can be corrected, as sentences.

use crate::date::upper;
use crate::review::Names;
use crate::{Key, Words};
use exercises::correct::{Correctable, EntryContent};
use exercises::log::Correction;
use exercises::misdated::WrongClock;
use exercises::questions::Question;
use exercises::score::Score;

impl Words {
    /// An answer that was given, with what was asked: "Pain this morning, upper back: 4 of 10". `item` is the exercise that was asked about.
    pub fn answered(self, question: &Question, item: &str, score: Score) -> String {
        match question {
            Question::Morning { name, .. } => self.said_morning(name, score),
            Question::During { .. } => self.said_during(item, score),
            Question::Activity { name, .. } => self.said_rated(name, score),
        }
    }

    /// "Pain, upper back: 4 of 10".
    pub fn said_so(self, said: EntryContent, names: Names<'_>) -> String {
        match said {
            EntryContent::Morning { complaint, score } => self.said_morning(&names.complaint(complaint), score),
            EntryContent::During { item, score } => self.said_during(&names.item(item), score),
            EntryContent::Pain { complaint, score, after } => {
                let of = names.complaint(complaint);
                match after {
                    Some(item) => self.said_pain_after(&of, &names.item(item), score),
                    None => self.said_pain(&of, score),
                }
            }
            EntryContent::Settled { complaint, settled } => {
                let of = upper(&names.complaint(complaint));
                if settled { self.said_settled(&of) } else { self.said_not_settled(&of) }
            }
            EntryContent::Rated { activity, score } => self.said_rated(&names.activity(activity), score),
            EntryContent::Skipped { slot, reason } => {
                let (item, day) = (upper(&names.item(slot.item)), self.date(slot.day));
                self.said_skipped(&item, &day, self.barrier(reason))
            }
            EntryContent::DaysOff { from, until, why } => {
                let (from, until) = (self.date(from), self.date(until));
                self.said_days_off(&from, &until, self.day_off_reason(why))
            }
            EntryContent::Run { item, parts, .. } => {
                let item = upper(&names.item(item));
                // "0 of 1 done" would read as if nothing had been done.
                if parts.done == 0 {
                    self.said_run_none_complete(&item, parts.of)
                } else {
                    self.said_run(&item, parts.done, parts.of)
                }
            }
            EntryContent::Trouble { trouble, item } => match item {
                Some(item) => self.said_trouble_during(&names.item(item), self.trouble(trouble)),
                None => self.said_trouble(self.trouble(trouble)),
            },
        }
    }

    /// What counts instead: "Deleted.", "Now: 2 of 10."; `None` if nothing was corrected.
    pub fn corrected(self, line: &Correctable, names: Names<'_>) -> Option<String> {
        line.correction?;
        Some(match (line.said, line.now) {
            (EntryContent::Trouble { .. }, _) => self.text(Key::CorrectAlarmNoted).to_owned(),
            (EntryContent::Run { .. }, None) => self.text(Key::CorrectedNotDone).to_owned(),
            (_, None) => self.text(Key::CorrectedDeleted).to_owned(),
            (_, Some(now)) => self.corrected_to(&self.said_instead(now, names)),
        })
    }

    /// "The clock of this device was ahead then."; `None` if nothing speaks against the entry's time.
    pub fn wrong_clock_then(self, line: &Correctable) -> Option<&'static str> {
        line.wrong_clock.map(|wrong| {
            self.text(match wrong {
                WrongClock::Ahead => Key::EntryClockAhead,
                WrongClock::Behind => Key::EntryClockBehind,
            })
        })
    }

    /// Like [`Words::said_so`], but without the parts that the entry itself already shows.
    fn said_instead(self, now: EntryContent, names: Names<'_>) -> String {
        match now {
            EntryContent::Morning { score, .. }
            | EntryContent::During { score, .. }
            | EntryContent::Pain { score, .. }
            | EntryContent::Rated { score, .. } => self.of_ten(score),
            EntryContent::Skipped { reason, .. } => self.barrier(reason).to_owned(),
            other => self.said_so(other, names),
        }
    }

    /// The label of the button that deletes the entry.
    pub fn take_out(self, said: EntryContent) -> &'static str {
        self.text(match said {
            EntryContent::Run { .. } => Key::CorrectNotDone,
            EntryContent::Trouble { .. } => Key::CorrectAlarm,
            _ => Key::CorrectDelete,
        })
    }
}

/// Whether the entry was marked as a mistake.
pub fn is_out(line: &Correctable) -> bool {
    line.correction == Some(Correction::Never)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;
    use exercises::alarm::Trouble;
    use exercises::id::{ComplaintId, ItemId};
    use exercises::score::Score;
    use exercises::time::Stamp;

    fn line(said: EntryContent, correction: Option<Correction>, now: Option<EntryContent>) -> Correctable {
        Correctable { n: 4, at: Stamp { utc_ms: 0, offset_s: 0 }, wrong_clock: None, said, correction, now }
    }

    #[test]
    fn original_and_corrected_values_are_shown() {
        let words = Words::new(Locale::En);
        let (plan, exercises) = (crate::review::samples::plan(), crate::review::samples::exercises());
        let names = Names::of_prescription(words, &plan.prescription, &exercises);
        let score = Score::at_most_ten;
        let pain = |points| EntryContent::Pain { complaint: ComplaintId(1), score: score(points), after: None };
        let of = names.complaint(ComplaintId(1));
        assert_eq!(words.said_so(pain(8), names), format!("Pain, {of}: 8 of 10"));
        let corrected = |said, correction, now| words.corrected(&line(said, correction, now), names);
        assert_eq!(corrected(pain(8), None, Some(pain(8))), None);
        let now = corrected(pain(8), Some(Correction::Score(score(2))), Some(pain(2)));
        assert_eq!(now.as_deref(), Some("Now: 2 of 10."));
        let settled = |settled| EntryContent::Settled { complaint: ComplaintId(1), settled };
        let now = corrected(settled(true), Some(Correction::Settled(false)), Some(settled(false)));
        assert_eq!(now, Some(format!("Now: {}: not settled by the morning.", upper(&of))));
        assert_eq!(corrected(pain(8), Some(Correction::Never), None).as_deref(), Some("Deleted."));
        let trouble = EntryContent::Trouble { trouble: Trouble::Fell, item: Some(ItemId(2)) };
        let noted = corrected(trouble, Some(Correction::Never), Some(trouble));
        assert_eq!(noted.as_deref(), Some("Noted as a mistake. Anything paused stays paused."));
    }
    #[test]
    fn the_exercise_and_what_was_wrong_stand_in_their_places() {
        let (plan, exercises) = (crate::review::samples::plan(), crate::review::samples::exercises());
        for (locale, said) in [
            (Locale::En, "Something was wrong during Stand on one leg: I nearly fell"),
            (Locale::Es, "Un problema durante De pie sobre una pierna: Estuve a punto de caerme"),
        ] {
            let words = Words::new(locale);
            let names = Names::of_prescription(words, &plan.prescription, &exercises);
            let trouble = EntryContent::Trouble { trouble: Trouble::NearlyFell, item: Some(ItemId(2)) };
            assert_eq!(words.said_so(trouble, names), said);
        }
    }
}
