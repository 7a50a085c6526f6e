//! Sentences about reminders.

use crate::{Key, Words};
use exercises::remind::Span;
use exercises::time::Stamp;
use wire::device::Reminders;

impl Words {
    /// Title and body of the notification for a session that is due at a minute of the day and takes about `takes_s` seconds. It
    /// says nothing medical, because somebody else may see the screen.
    pub fn reminder(self, minute: u16, takes_s: u32) -> (String, &'static str) {
        (self.reminder_title(&self.minute(minute), &self.takes_inline(takes_s)), self.text(Key::ReminderBody))
    }

    /// "12:00 to 13:00".
    pub fn quiet_span(self, span: Span) -> String {
        self.no_reminder_hours_span(&self.minute(span.from), &self.minute(span.to))
    }

    /// "In a meeting until 11:30.", "No reminder until 13:00."; `None` if reminders are not suppressed.
    pub fn silence(self, reminders: &Reminders) -> Option<String> {
        let at = |time: Stamp| self.minute_inline(time.minute());
        match (reminders.silent, reminders.meeting_until, reminders.silent_until) {
            (false, ..) => None,
            (true, Some(meeting), Some(silent)) if meeting == silent => Some(self.meeting_until(&at(meeting))),
            // Hours without reminders continue after the end of the meeting.
            (true, Some(meeting), Some(silent)) => {
                Some(self.two_sentences(&self.meeting_until(&at(meeting)), &self.no_reminder_until(&at(silent))))
            }
            (true, _, Some(silent)) => Some(self.no_reminder_until(&at(silent))),
            (true, _, None) => Some(self.text(Key::NoReminderAllDay).to_owned()),
        }
    }

    /// "30 minutes", "2 hours".
    pub fn for_minutes(self, minutes: u16) -> String {
        match minutes {
            hours if hours % 60 == 0 => self.meeting_hours(hours / 60),
            minutes => self.meeting_minutes(minutes),
        }
    }

    /// "Next reminder: Thursday, 26 November, 09:00."
    pub fn next_reminder(self, reminders: &Reminders) -> String {
        match reminders.next {
            Some(next) => self.next_reminder_at(&self.weekday_date_inline(next.date()), &self.minute_inline(next.minute())),
            None => self.text(Key::NoReminder).to_owned(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;

    const EN: Words = Words::new(Locale::En);
    const ES: Words = Words::new(Locale::Es);

    /// The given number of minutes after 14:02 on Wednesday 25 February 2026, at UTC+1.
    fn later(minutes: i64) -> Stamp {
        Stamp { utc_ms: 1_772_024_520_000 + minutes * 60_000, offset_s: 3600 }
    }

    fn reminders(meeting_until: Option<Stamp>, silent_until: Option<Stamp>) -> Reminders {
        Reminders { quiet: Vec::new(), meeting_until, silent: true, silent_until, next: silent_until }
    }

    #[test]
    fn why_reminders_are_suppressed_and_until_when() {
        let said = |meeting, silent| EN.silence(&reminders(meeting, silent)).expect("silent");
        assert_eq!(said(Some(later(60)), Some(later(60))), "In a meeting until 15:02.");
        assert_eq!(said(Some(later(60)), Some(later(90))), "In a meeting until 15:02. No reminder until 15:32.");
        assert_eq!(said(None, Some(later(90))), "No reminder until 15:32.");
        assert_eq!(said(None, None), "Your hours without reminders fill the whole day: no reminder comes.");
        assert_eq!(EN.silence(&Reminders { silent: false, ..reminders(None, None) }), None);
    }

    #[test]
    fn the_next_one_with_its_day() {
        assert_eq!(EN.next_reminder(&reminders(None, Some(later(0)))), "Next reminder: Wednesday 25 February, 14:02.");
        assert_eq!(
            ES.next_reminder(&reminders(None, Some(later(0)))),
            "Próximo recordatorio: el miércoles 25 de febrero a las 14:02."
        );
        assert_eq!(EN.next_reminder(&reminders(None, None)), "No reminder in the next two weeks.");
    }

    #[test]
    fn a_meeting_in_minutes_or_in_whole_hours() {
        let said = exercises::remind::MEETINGS.map(|minutes| EN.for_minutes(minutes));
        assert_eq!(said, ["30 minutes", "1 hour", "2 hours"]);
    }

    #[test]
    fn a_quiet_time_and_a_notification() {
        assert_eq!(EN.quiet_span(Span { from: 1320, to: 420 }), "22:00 to 07:00");
        assert_eq!(EN.reminder(600, 50), ("10:00: about 50 seconds".to_owned(), "Open Carryover when you are ready."));
    }
}
