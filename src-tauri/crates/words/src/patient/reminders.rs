//! Sentences about reminders.

use crate::{Key, Words};
use exercises::remind::Span;
use wire::device::Reminders;

impl Words {
    /// What a notification says: title and body. Nothing medical: somebody else may see the screen.
    pub fn reminder(self, takes_s: u32) -> (&'static str, String) {
        (self.text(Key::ReminderTitle), self.fill(Key::ReminderBody, &[("takes", &self.takes(takes_s))]))
    }

    /// "12:00 to 13:00".
    pub fn quiet_span(self, span: Span) -> String {
        self.fill(Key::QuietSpan, &[("from", &self.minute(span.from)), ("to", &self.minute(span.to))])
    }

    /// "In a meeting until 11:30.", "No reminder until 13:00."; nothing where a reminder may come.
    pub fn silence(self, reminders: &Reminders) -> Option<String> {
        let until = |key, minute| self.fill(key, &[("time", &self.minute(minute))]);
        match (reminders.silent, reminders.meeting_until, reminders.silent_until) {
            (false, ..) => None,
            (true, Some(meeting), Some(silent)) if meeting == silent => Some(until(Key::MeetingUntil, meeting.minute())),
            // A quiet time goes on when the meeting is over.
            (true, Some(meeting), Some(silent)) => {
                let both = [until(Key::MeetingUntil, meeting.minute()), until(Key::SilentUntil, silent.minute())];
                Some(both.join(" "))
            }
            (true, _, Some(silent)) => Some(until(Key::SilentUntil, silent.minute())),
            (true, _, None) => Some(self.text(Key::SilentAlways).to_owned()),
        }
    }

    /// "30 minutes", "2 hours".
    pub fn for_minutes(self, minutes: u16) -> String {
        match minutes {
            hours if hours % 60 == 0 => self.fill(Key::MeetingHours, &[("n", &(hours / 60))]),
            minutes => self.fill(Key::MeetingMinutes, &[("n", &minutes)]),
        }
    }

    /// "Next reminder: Thursday, 26 November, 09:00."
    pub fn next_reminder(self, reminders: &Reminders) -> String {
        match reminders.next {
            Some(next) => {
                let day = self.weekday_date(next.date());
                let day = if self.lang == crate::Lang::Es { day.to_lowercase() } else { day };
                self.fill(Key::NextReminder, &[("day", &day), ("time", &self.minute(next.minute()))])
            }
            None => self.text(Key::NoReminder).to_owned(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Lang;
    use exercises::time::Stamp;

    const EN: Words = Words::new(Lang::En);
    const ES: Words = Words::new(Lang::Es);

    /// So many minutes after 14:02 on Wednesday 25 February 2026, at UTC+1.
    fn later(minutes: i64) -> Stamp {
        Stamp { utc_ms: 1_772_024_520_000 + minutes * 60_000, offset_s: 3600 }
    }

    fn reminders(meeting_until: Option<Stamp>, silent_until: Option<Stamp>) -> Reminders {
        Reminders { quiet: Vec::new(), meeting_until, silent: true, silent_until, next: silent_until }
    }

    #[test]
    fn why_it_is_silent_and_until_when() {
        let said = |meeting, silent| EN.silence(&reminders(meeting, silent)).expect("silent");
        assert_eq!(said(Some(later(60)), Some(later(60))), "In a meeting until 15:02.");
        assert_eq!(said(Some(later(60)), Some(later(90))), "In a meeting until 15:02. No reminder until 15:32.");
        assert_eq!(said(None, Some(later(90))), "No reminder until 15:32.");
        assert_eq!(said(None, None), "Quiet times fill the whole day: no reminder comes.");
        assert_eq!(EN.silence(&Reminders { silent: false, ..reminders(None, None) }), None);
    }

    #[test]
    fn the_next_one_with_its_day() {
        assert_eq!(EN.next_reminder(&reminders(None, Some(later(0)))), "Next reminder: Wednesday, 25 February, 14:02.");
        assert_eq!(ES.next_reminder(&reminders(None, Some(later(0)))), "Próximo aviso: miércoles, 25 de febrero, 14:02.");
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
        assert_eq!(EN.reminder(50), ("Time for a short break", "About 50 seconds.".to_owned()));
    }
}
