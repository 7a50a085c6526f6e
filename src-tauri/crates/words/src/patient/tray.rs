//! The text about the day in the tray's menu. It says nothing medical, because somebody else may see the screen.

use crate::{Key, Words};
use exercises::time::Stamp;
use exercises::today::{Head, Today};

impl Words {
    /// The day in a few lines: what is done, what is next, and a current meeting.
    pub fn tray(self, today: &Today, meeting_until: Option<Stamp>) -> Vec<String> {
        let at = |time: Stamp| self.minute_inline(time.minute());
        let (done, of) = today.count();
        let count = (of > 0).then(|| self.sessions_done_of(done, of));
        let on = |next: Option<Stamp>| next.map(|next| self.next_on(today.now, next));
        let lines = match &today.head {
            Head::NoPlan => [Some(self.text(Key::AddCardTitle).to_owned()), None],
            Head::Over { .. } => [Some(self.text(Key::PlanEnded).to_owned()), None],
            Head::Stopped(_) => [Some(self.text(Key::TrayStopped).to_owned()), None],
            Head::Due { put_off: Some(until), .. } => [count, Some(self.reminder_at(&at(*until)))],
            Head::Due { due, .. } if due.utc_ms > today.now.utc_ms => [count, Some(self.tray_next(&at(*due)))],
            Head::Due { closes, .. } => [count, Some(self.tray_due(&at(*closes)))],
            Head::Next { due, .. } => [count, Some(self.tray_next(&at(*due)))],
            Head::DoneForToday { next, .. } => [count, on(*next)],
            Head::DayOff { chosen, next } => {
                let off = if *chosen { Key::DayOffToday } else { Key::NoExercisesToday };
                [Some(self.text(off).to_owned()), on(*next)]
            }
        };
        let meeting = meeting_until.map(|until| self.meeting_until(&at(until)));
        lines.into_iter().chain([meeting]).flatten().collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;
    use exercises::history::Mark;
    use exercises::id::{ItemId, PlanId};
    use exercises::slots::SlotRef;
    use exercises::today::TodayKnot;

    /// The given number of minutes after 14:02 on Wednesday 25 February 2026, at UTC+1.
    fn later(minutes: i64) -> Stamp {
        Stamp { utc_ms: 1_772_024_520_000 + minutes * 60_000, offset_s: 3600 }
    }

    fn slot() -> SlotRef {
        SlotRef { day: later(0).date(), item: ItemId(1), number: 0 }
    }

    fn today(head: Head, marks: &[Mark]) -> Today {
        let knot = |mark: &Mark| TodayKnot {
            plan: PlanId([0; 8]),
            slot: slot(),
            minute: 540,
            mark: *mark,
            paused: false,
            put_off: None,
        };
        let string = marks.iter().map(knot).collect();
        Today {
            now: later(0),
            head,
            item: None,
            string,
            items: Vec::new(),
            questions: Vec::new(),
            aftercare: Vec::new(),
            alarms: Vec::new(),
            clinics: Vec::new(),
            try_first: None,
            weeks: Vec::new(),
        }
    }

    #[test]
    fn what_is_done_what_is_next_and_the_meeting() {
        let day = [Mark::Done, Mark::NotDone, Mark::ToCome];
        let next = today(Head::Next { slot: slot(), due: later(58) }, &day);
        let words = Words::new(Locale::En);
        assert_eq!(words.tray(&next, None), ["1 of 3 done.", "Next at 15:00."]);
        assert_eq!(words.tray(&next, Some(later(120))), ["1 of 3 done.", "Next at 15:00.", "In a meeting until 16:02."]);
        let spanish = Words::new(Locale::Es).tray(&next, Some(later(120)));
        assert_eq!(spanish, ["1 de 3 sesiones hechas.", "Siguiente, a las 15:00.", "En una reunión hasta las 16:02."]);
    }

    #[test]
    fn what_is_due_now_soon_or_was_put_off() {
        let words = Words::new(Locale::En);
        let due = |due, put_off| today(Head::Due { slot: slot(), due, closes: later(58), put_off }, &[Mark::Due]);
        assert_eq!(words.tray(&due(later(-2), None), None), ["0 of 1 done.", "Due now, until 15:00."]);
        assert_eq!(words.tray(&due(later(3), None), None), ["0 of 1 done.", "Next at 14:05."]);
        let put_off = words.reminder_at("14:12");
        assert_eq!(words.tray(&due(later(-2), Some(later(10))), None), ["0 of 1 done.".to_owned(), put_off]);
    }

    #[test]
    fn a_day_that_is_over_or_off_names_the_next_and_no_plan_says_so() {
        let words = Words::new(Locale::En);
        let over = today(Head::DoneForToday { done: 1, of: 1, next: Some(later(19 * 60 - 2)) }, &[Mark::Done]);
        assert_eq!(words.tray(&over, None), ["1 of 1 done.", "Next: tomorrow at 09:00."]);
        let off = today(Head::DayOff { chosen: false, next: None }, &[]);
        assert_eq!(words.tray(&off, None), ["No exercises planned today"]);
        assert_eq!(words.tray(&today(Head::NoPlan, &[]), None), ["Add your plan card"]);
    }
}
