//! When the page says something else by itself.

use super::{Head, Today};
use crate::time::Stamp;

impl Today {
    /// Milliseconds from its own moment until it would say something else by the passing of time: a slot opens or closes, a
    /// reminder that was put off comes back, or the day ends. At least one second.
    pub fn changes_in_ms(&self) -> u64 {
        let now = self.now.utc_ms;
        let head = match &self.head {
            Head::Due { due, closes, put_off, .. } => {
                vec![Some(due.utc_ms), Some(closes.utc_ms), put_off.map(|until| until.utc_ms)]
            }
            Head::Next { due, .. } => vec![Some(due.utc_ms - crate::slots::EARLY_MINUTES * 60_000), Some(due.utc_ms)],
            Head::DoneForToday { next, .. } | Head::DayOff { next, .. } => vec![next.map(|next| next.utc_ms)],
            Head::NoPlan | Head::Over { .. } | Head::Stopped(_) => Vec::new(),
        };
        let minutes_left = i64::from(crate::plan::schedule::DAY_MINUTES - self.now.minute());
        let midnight = now - now.rem_euclid(60_000) + minutes_left * 60_000;
        let ahead = head.into_iter().flatten().chain([midnight]).filter(|at| *at > now).min();
        let left = ahead.map_or(1000, |at| at - now);
        u64::try_from(left).unwrap_or(1000).max(1000)
    }

    /// Whether it says the same as `other`: its moment is said to the minute.
    pub fn says_the_same(&self, other: &Today) -> bool {
        let Today { now, head, item, string, items, questions, aftercare, alarms } = other;
        let minute = |stamp: &Stamp| (stamp.utc_ms.div_euclid(60_000), stamp.offset_s);
        minute(&self.now) == minute(now)
            && (&self.head, &self.item, &self.string, &self.items) == (head, item, string, items)
            && (&self.questions, &self.aftercare, &self.alarms) == (questions, aftercare, alarms)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::id::ItemId;
    use crate::slots::SlotRef;
    use chrono::NaiveDate;

    /// 14:02:00 at UTC+1.
    const NOW: Stamp = Stamp { utc_ms: 1_772_024_520_000, offset_s: 3600 };

    fn today(head: Head) -> Today {
        Today {
            now: NOW,
            head,
            item: None,
            string: Vec::new(),
            items: Vec::new(),
            questions: Vec::new(),
            aftercare: Vec::new(),
            alarms: Vec::new(),
        }
    }

    fn slot() -> SlotRef {
        SlotRef { day: NaiveDate::from_ymd_opt(2026, 2, 25).expect("a date"), item: ItemId(1), number: 0 }
    }

    fn later(minutes: i64) -> Stamp {
        NOW.plus_ms(minutes * 60_000)
    }

    #[test]
    fn an_open_slot_closes_or_its_reminder_comes_back() {
        let due = |put_off| today(Head::Due { slot: slot(), due: later(-2), closes: later(58), put_off });
        assert_eq!(due(None).changes_in_ms(), 58 * 60_000);
        assert_eq!(due(Some(later(10))).changes_in_ms(), 10 * 60_000);
    }

    #[test]
    fn a_slot_to_come_can_be_begun_ten_minutes_before() {
        assert_eq!(today(Head::Next { slot: slot(), due: later(58) }).changes_in_ms(), 48 * 60_000);
        assert_eq!(today(Head::Next { slot: slot(), due: later(5) }).changes_in_ms(), 5 * 60_000);
    }

    #[test]
    fn within_a_minute_it_says_the_same_unless_something_happened() {
        let at = |seconds: i64, head| Today { now: NOW.plus_ms(seconds * 1000), ..today(head) };
        assert!(at(0, Head::NoPlan).says_the_same(&at(59, Head::NoPlan)));
        assert!(!at(0, Head::NoPlan).says_the_same(&at(60, Head::NoPlan)));
        assert!(!at(0, Head::NoPlan).says_the_same(&at(1, Head::DayOff { excused: false, next: None })));
        let elsewhere = Stamp { offset_s: 0, ..NOW };
        assert!(!at(0, Head::NoPlan).says_the_same(&Today { now: elsewhere, ..today(Head::NoPlan) }));
        let alarm = Today { alarms: vec![crate::alarm::Trouble::ALL[0]], ..today(Head::NoPlan) };
        assert!(!at(0, Head::NoPlan).says_the_same(&alarm));
    }

    #[test]
    fn a_day_ends_at_midnight_of_its_own_wall_clock() {
        let midnight = (24 * 60 - (14 * 60 + 2)) * 60_000;
        assert_eq!(today(Head::NoPlan).changes_in_ms(), midnight);
        assert_eq!(today(Head::DayOff { excused: false, next: Some(later(3000)) }).changes_in_ms(), midnight);
    }
}
