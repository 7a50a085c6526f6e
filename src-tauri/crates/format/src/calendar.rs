//! Reminders as a calendar file (iCalendar, RFC 5545), for people who want their device's calendar to remind them.
//!
//! There is one weekly event for each time of day, because many calendars show hourly rules wrongly or not at all. Times are
//! floating (section 3.3.5, form 1): they mean the wall clock of wherever the device is, as the slots do; this includes
//! `UNTIL` and `EXDATE`. The caller chooses the events' title; other people may be able to read it. A later export of the
//! same plan has the same identifiers (section 3.8.4.7) and a higher `SEQUENCE`, so that a calendar replaces the old events.

use chrono::NaiveDateTime;
use exercises::plan::Weekdays;
use exercises::remind::Weekly;
use exercises::time::Stamp;

/// Length of the longest line without its end, in bytes (section 3.1).
const MAX_OCTETS: usize = 75;

/// What all events have in common.
#[derive(Debug, Clone, Copy)]
pub struct Head<'a> {
    /// The program's version, for `PRODID`.
    pub version: &'a str,
    /// When the file is written.
    pub made: Stamp,
    /// A number higher than in every earlier export.
    pub sequence: u32,
    /// The title of each event.
    pub title: &'a str,
}

/// Writes the calendar file.
pub fn write(events: &[Weekly], head: Head<'_>) -> String {
    let mut out = Lines::default();
    out.line("BEGIN:VCALENDAR");
    out.line("VERSION:2.0");
    out.line(&format!("PRODID:-//Carryover//Carryover {}//EN", text(head.version)));
    events.iter().for_each(|event| write_event(&mut out, event, head));
    out.line("END:VCALENDAR");
    out.0
}

fn write_event(out: &mut Lines, event: &Weekly, head: Head<'_>) {
    let made = Stamp { offset_s: 0, ..head.made }.local();
    let title = text(head.title);
    out.line("BEGIN:VEVENT");
    out.line(&format!("UID:{}-{:04}@carryover", event.plan, clock(event.minute())));
    out.line(&format!("DTSTAMP:{}Z", local(made)));
    out.line(&format!("SEQUENCE:{}", head.sequence.min(i32::MAX.cast_unsigned())));
    out.line(&format!("DTSTART:{}", local(event.first)));
    out.line(&format!("DURATION:PT{}M", event.takes_s.div_ceil(60).max(1)));
    out.line(&format!("RRULE:FREQ=WEEKLY;UNTIL={};BYDAY={}", local(event.last), week(event.days)));
    if !event.except.is_empty() {
        let except: Vec<String> = event.except.iter().copied().map(local).collect();
        out.line(&format!("EXDATE:{}", except.join(",")));
    }
    out.line(&format!("SUMMARY:{title}"));
    out.line("CLASS:PRIVATE");
    out.line("TRANSP:TRANSPARENT");
    out.line("BEGIN:VALARM");
    out.line("ACTION:DISPLAY");
    out.line("TRIGGER:PT0S");
    out.line(&format!("DESCRIPTION:{title}"));
    out.line("END:VALARM");
    out.line("END:VEVENT");
}

/// The time of day as a number: 9:30 as 930.
fn clock(minute: u16) -> u16 {
    minute / 60 * 100 + minute % 60
}

fn local(at: NaiveDateTime) -> String {
    at.format("%Y%m%dT%H%M%S").to_string()
}

fn week(days: Weekdays) -> String {
    const NAMES: [&str; 7] = ["MO", "TU", "WE", "TH", "FR", "SA", "SU"];
    days.iter().map(|day| NAMES[day.num_days_from_monday() as usize]).collect::<Vec<_>>().join(",")
}

/// Escapes a text value (section 3.3.11). Control characters are left out, because they are not allowed in one.
fn text(plain: &str) -> String {
    let mut out = String::with_capacity(plain.len());
    for character in plain.replace("\r\n", "\n").chars() {
        match character {
            '\\' | ';' | ',' => out.extend(['\\', character]),
            '\n' => out.push_str("\\n"),
            control if control.is_control() => {}
            other => out.push(other),
        }
    }
    out
}

/// Content lines. Each ends with CRLF; a long one is continued on the next line after a space, never within a character.
#[derive(Default)]
struct Lines(String);

impl Lines {
    fn line(&mut self, line: &str) {
        let mut used = 0;
        for character in line.chars() {
            if used + character.len_utf8() > MAX_OCTETS {
                self.0.push_str("\r\n ");
                used = 1;
            }
            used += character.len_utf8();
            self.0.push(character);
        }
        self.0.push_str("\r\n");
    }
}
