//! Texts in what is written for medical records.

use crate::date::upper;
use crate::{Key, Words};
use exercises::plan::Item;
use wire::handing_over::ServerSetting;

impl Words {
    /// To which server reviews are handed over.
    pub fn server_said(self, set: &ServerSetting) -> String {
        match &set.address {
            None => self.text(Key::ServerNone).to_owned(),
            Some(address) if set.has_token => self.server_with_token(address),
            Some(address) => self.server_without_token(address),
        }
    }

    /// What the patient is to do, in whole sentences: dose, side, load, when, and the clinician's note.
    pub fn instruction(self, item: &Item) -> String {
        let done = self.record_instruction(&upper(&self.dose_of(item)), &upper(&self.due(item)));
        let note = Some(item.note.as_str()).filter(|note| !note.is_empty()).map(upper);
        self.sentences(&[done].into_iter().chain(note).collect::<Vec<_>>())
    }
}

#[cfg(test)]
mod tests {
    use crate::{Locale, Words};
    use exercises::catalogue::{Dose, ExerciseId};
    use exercises::id::ItemId;
    use exercises::plan::{Days, Item, Pattern, Schedule, Side};

    #[test]
    fn an_instruction_says_dose_side_times_and_note() {
        let schedule = Schedule { days: Days::WORKDAYS, pattern: Pattern::Every { minutes: 60, from: 540, to: 1020 } };
        let dose = Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 5 };
        let item = Item {
            side: Side::Left,
            note: "elbow at the ribs".to_owned(),
            ..Item::new(ItemId(1), ExerciseId::new("sit-tall").expect("an id"), dose, schedule)
        };
        assert_eq!(
            Words::new(Locale::En).instruction(&item),
            "3 holds of 10 seconds, left side. Monday to Friday, every hour from 09:00 to 17:00. Elbow at the ribs"
        );
        let plain = Item { note: String::new(), schedule: Schedule::AS_NEEDED, ..item };
        assert!(Words::new(Locale::Es).instruction(&plain).ends_with(". Cuando haga falta."));
    }
}
