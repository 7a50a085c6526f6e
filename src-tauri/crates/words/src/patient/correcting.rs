//! What can be put right, as sentences.

use crate::review::{Names, upper};
use crate::{Key, Words};
use exercises::correct::{Correctable, Correction, EntryContent};

impl Words {
    /// "Pain, upper back: 4 of 10".
    pub fn said_so(self, said: EntryContent, names: Names<'_>) -> String {
        match said {
            EntryContent::Pain { complaint, score, after } => {
                let key = if after.is_some() { Key::SaidPainAfter } else { Key::SaidPain };
                let (of, item) = (names.complaint(complaint), after.map(|item| names.item(item)).unwrap_or_default());
                self.fill(key, &[("of", &of), ("score", &score), ("item", &item)])
            }
            EntryContent::Settled { complaint, settled } => {
                let key = if settled { Key::SaidSettled } else { Key::SaidNotSettled };
                self.fill(key, &[("of", &upper(&names.complaint(complaint)))])
            }
            EntryContent::Rated { activity, score } => {
                self.fill(Key::SaidRated, &[("of", &names.activity(activity)), ("score", &score)])
            }
            EntryContent::Skipped { slot, reason } => {
                let (item, day) = (upper(&names.item(slot.item)), self.date(slot.day));
                self.fill(Key::SaidLeftOut, &[("item", &item), ("day", &day), ("reason", &self.barrier(reason))])
            }
            EntryContent::DaysOff { from, until, why } => {
                let (from, until) = (self.date(from), self.date(until));
                self.fill(Key::SaidExcused, &[("from", &from), ("until", &until), ("why", &self.day_off_reason(why))])
            }
            EntryContent::Run { item, parts, .. } => {
                let item = upper(&names.item(item));
                self.fill(Key::SaidRun, &[("item", &item), ("done", &parts.done), ("of", &parts.of)])
            }
            EntryContent::Trouble { trouble, item } => {
                let key = if item.is_some() { Key::SaidTroubleDuring } else { Key::SaidTrouble };
                let item = item.map(|item| names.item(item)).unwrap_or_default();
                self.fill(key, &[("what", &self.trouble(trouble)), ("item", &item)])
            }
        }
    }

    /// What counts instead: "Taken out.", "Now: 2 of 10."; nothing where nothing was corrected.
    pub fn corrected(self, line: &Correctable, names: Names<'_>) -> Option<String> {
        line.correction?;
        Some(match (line.said, line.now) {
            (EntryContent::Trouble { .. }, _) => self.text(Key::CorrectAlarmNoted).to_owned(),
            (EntryContent::Run { .. }, None) => self.text(Key::CorrectedNotDone).to_owned(),
            (_, None) => self.text(Key::CorrectedOut).to_owned(),
            (_, Some(now)) => self.fill(Key::CorrectedTo, &[("now", &self.said_instead(now, names))]),
        })
    }

    /// As [`Words::said_so`], without what the entry says anyway.
    fn said_instead(self, now: EntryContent, names: Names<'_>) -> String {
        match now {
            EntryContent::Pain { score, .. } | EntryContent::Rated { score, .. } => self.fill(Key::OfTen, &[("n", &score)]),
            EntryContent::Skipped { reason, .. } => self.barrier(reason).to_owned(),
            other => self.said_so(other, names),
        }
    }

    /// What the button says that takes the entry out.
    pub fn take_out(self, said: EntryContent) -> &'static str {
        self.text(match said {
            EntryContent::Run { .. } => Key::CorrectNotDone,
            EntryContent::Trouble { .. } => Key::CorrectAlarm,
            _ => Key::CorrectTakeOut,
        })
    }
}

/// Whether the entry was said to be a mistake.
pub fn is_out(line: &Correctable) -> bool {
    line.correction == Some(Correction::Never)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Lang;
    use exercises::alarm::Trouble;
    use exercises::id::{ComplaintId, ItemId};
    use exercises::time::Stamp;

    fn line(said: EntryContent, correction: Option<Correction>, now: Option<EntryContent>) -> Correctable {
        Correctable { n: 4, at: Stamp { utc_ms: 0, offset_s: 0 }, said, correction, now }
    }

    #[test]
    fn what_was_said_and_what_counts_now() {
        let words = Words::new(Lang::En);
        let (plan, exercises) = (crate::review::samples::plan(), crate::review::samples::exercises());
        let names = Names::of_plan(words, &plan, &exercises);
        let pain = |score| EntryContent::Pain { complaint: ComplaintId(1), score, after: None };
        let of = names.complaint(ComplaintId(1));
        assert_eq!(words.said_so(pain(8), names), format!("Pain, {of}: 8 of 10"));
        let corrected = |said, correction, now| words.corrected(&line(said, correction, now), names);
        assert_eq!(corrected(pain(8), None, Some(pain(8))), None);
        let now = corrected(pain(8), Some(Correction::Score(2)), Some(pain(2)));
        assert_eq!(now.as_deref(), Some("Now: 2 of 10."));
        let settled = |settled| EntryContent::Settled { complaint: ComplaintId(1), settled };
        let now = corrected(settled(true), Some(Correction::Settled(false)), Some(settled(false)));
        assert_eq!(now, Some(format!("Now: {}: not settled by the morning.", upper(&of))));
        assert_eq!(corrected(pain(8), Some(Correction::Never), None).as_deref(), Some("Taken out."));
        let trouble = EntryContent::Trouble { trouble: Trouble::Fell, item: Some(ItemId(2)) };
        let noted = corrected(trouble, Some(Correction::Never), Some(trouble));
        assert_eq!(noted.as_deref(), Some("Noted as raised by mistake. What it stopped stays stopped."));
    }
}
