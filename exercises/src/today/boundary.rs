//! When the page changes by itself.

use super::{Head, Today};
use crate::time::Stamp;

impl Today {
    /// Milliseconds from the page's own moment until its content changes because time passes: the clock shows the next minute, a
    /// slot opens or closes, or a reminder that was put off comes back. At least one second.
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
        let next_minute = now - now.rem_euclid(60_000) + 60_000;
        let ahead = head.into_iter().flatten().chain([next_minute]).filter(|at| *at > now).min();
        let left = ahead.map_or(1000, |at| at - now);
        u64::try_from(left).unwrap_or(1000).max(1000)
    }

    /// Whether it has the same content as `other`; its moment is shown to the minute.
    pub fn says_the_same(&self, other: &Today) -> bool {
        let Today { now, head, item, string, items, questions, aftercare, alarms, clinics, try_first, weeks } = other;
        let minute = |stamp: &Stamp| (stamp.utc_ms.div_euclid(60_000), stamp.offset_s);
        minute(&self.now) == minute(now)
            && (&self.head, &self.item, &self.string, &self.items) == (head, item, string, items)
            && (&self.questions, &self.aftercare, &self.alarms, &self.clinics) == (questions, aftercare, alarms, clinics)
            && (&self.try_first, &self.weeks) == (try_first, weeks)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::id::ItemId;
    use crate::slots::SlotRef;
    use crate::today::{PauseEnd, TodayAlarm};
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
            clinics: Vec::new(),
            try_first: None,
            weeks: Vec::new(),
        }
    }

    fn slot() -> SlotRef {
        SlotRef { day: NaiveDate::from_ymd_opt(2026, 2, 25).expect("a date"), item: ItemId(1), number: 0 }
    }

    fn seconds_later(seconds: i64) -> Stamp {
        NOW.plus_ms(seconds * 1000)
    }

    #[test]
    fn an_open_slot_closes_or_its_reminder_comes_back() {
        let due =
            |closes, put_off| today(Head::Due { slot: slot(), due: seconds_later(-90), closes, put_off }).changes_in_ms();
        assert_eq!(due(seconds_later(3600), None), 60_000, "the clock shows the next minute");
        assert_eq!(due(seconds_later(50), None), 50_000);
        assert_eq!(due(seconds_later(50), Some(seconds_later(20))), 20_000);
    }

    #[test]
    fn a_coming_slot_can_be_begun_ten_minutes_before() {
        let next = |seconds| today(Head::Next { slot: slot(), due: seconds_later(seconds) }).changes_in_ms();
        assert_eq!((next(630), next(599), next(30)), (30_000, 60_000, 30_000));
    }

    #[test]
    fn the_clock_shows_the_next_minute() {
        let at = |ms: i64| Today { now: NOW.plus_ms(ms), ..today(Head::NoPlan) }.changes_in_ms();
        assert_eq!((at(0), at(1), at(58_000), at(59_900)), (60_000, 59_999, 2_000, 1_000));
    }

    #[test]
    fn within_a_minute_the_content_is_the_same_unless_something_happened() {
        let at = |seconds: i64, head| Today { now: NOW.plus_ms(seconds * 1000), ..today(head) };
        assert!(at(0, Head::NoPlan).says_the_same(&at(59, Head::NoPlan)));
        assert!(!at(0, Head::NoPlan).says_the_same(&at(60, Head::NoPlan)));
        assert!(!at(0, Head::NoPlan).says_the_same(&at(1, Head::DayOff { chosen: false, next: None })));
        let elsewhere = Stamp { offset_s: 0, ..NOW };
        assert!(!at(0, Head::NoPlan).says_the_same(&Today { now: elsewhere, ..today(Head::NoPlan) }));
        let raised = TodayAlarm {
            plan: crate::id::PlanId([0; 8]),
            trouble: crate::alarm::Trouble::Fell,
            item: None,
            at: NOW,
            wrong_clock: false,
            circumstances: Default::default(),
            suspends: None,
            ends: PauseEnd::Card,
        };
        let alarm = Today { alarms: vec![raised], ..today(Head::NoPlan) };
        assert!(!at(0, Head::NoPlan).says_the_same(&alarm));
    }
}
