//! Which alarms a card clears: by id, and by sign and day as well where the card was made from a review.

use super::Trouble;
use crate::id::{AlarmId, EntryRef};
use crate::time::DayNumber;

/// An alarm that a card clears: the clinician has talked about it with the patient. Sign and day, where the card has them, are compared as
/// well as the name, so that a card never clears an alarm that the clinician has not seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct ClearedAlarm {
    /// The alarm.
    pub id: AlarmId,
    /// What was wrong, and the day of the plan on which it was raised; `None` on cards of version 1, which only name the entry, and where
    /// a plan file, which only names the alarm, names one that the clinic has not received.
    pub seen: Option<(Trouble, DayNumber)>,
}

impl ClearedAlarm {
    /// The clearing of an alarm that a card of version 1 names by its entry.
    pub fn of_entry(entry: EntryRef) -> ClearedAlarm {
        ClearedAlarm { id: AlarmId::of_entry(entry), seen: None }
    }

    /// Whether it clears the alarm of this name, sign and day. Without a sign and day of its own the name alone counts.
    pub fn clears(&self, id: AlarmId, trouble: Trouble, day: DayNumber) -> bool {
        self.id == id && self.seen.is_none_or(|seen| seen == (trouble, day))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::id::LogId;

    #[test]
    fn a_card_clears_an_alarm_by_name_sign_and_day() {
        let id = AlarmId([3; 8]);
        let seen = ClearedAlarm { id, seen: Some((Trouble::Nerve, DayNumber(4))) };
        assert!(seen.clears(id, Trouble::Nerve, DayNumber(4)));
        assert!(!seen.clears(AlarmId([4; 8]), Trouble::Nerve, DayNumber(4)));
        assert!(!seen.clears(id, Trouble::Fell, DayNumber(4)) && !seen.clears(id, Trouble::Nerve, DayNumber(5)));
        let entry = EntryRef { log: LogId([1; 8]), n: 70_000 };
        let of_version_1 = ClearedAlarm::of_entry(entry);
        assert!(of_version_1.clears(AlarmId::of_entry(entry), Trouble::Fell, DayNumber(9)));
        for other in [EntryRef { log: LogId([1; 8]), n: 70_001 }, EntryRef { log: LogId([9; 8]), n: 70_000 }] {
            assert!(!of_version_1.clears(AlarmId::of_entry(other), Trouble::Fell, DayNumber(9)), "{other:?}");
        }
    }
}
