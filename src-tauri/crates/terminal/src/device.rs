//! `carryover patient`: reminders and the person's own data.

use crate::Done;
use crate::args::Args;
use crate::out::Out;
use crate::patient::instant;
use actions::patient::{calendar, own_data, reminders, screen_lock};
use actions::{DataFolder, Moment};
use clap::Subcommand;
use exercises::id::PlanId;
use exercises::remind::UpcomingReminder;
use serde_json::{Value, json};
use std::path::{Path, PathBuf};
use wire::app::ScreenLock;
use wire::device::{EraseRequest, MeetingRequest, QuietTimesRequest, Reminders};
use words::{Key, Words};

/// Reminders and the person's own data.
#[derive(Subcommand)]
pub enum DeviceCommand {
    /// Export everything that is saved about you, unencrypted: everything.json and tables
    Export {
        /// A new or empty folder
        #[arg(long, value_name = "DIR")]
        out: PathBuf,
    },
    /// Export the times of the coming sessions for another calendar
    Calendar {
        /// The file
        #[arg(long, value_name = "FILE.ics")]
        out: PathBuf,
    },
    /// Show reminders, or set hours without reminders and a meeting
    Reminders {
        /// Hours without reminders, every day, such as 12:00-13:00; can be given several times; `none` removes all
        #[arg(long, value_name = "FROM-TO")]
        quiet: Vec<String>,
        /// How many minutes without reminders from now, 1 to 720; 0 ends it
        #[arg(long, value_name = "MINUTES")]
        meeting: Option<u16>,
    },
    /// List the reminders to come if nothing is done until then, up to 64
    Ahead {
        /// How many hours ahead
        #[arg(long, value_name = "N", value_parser = clap::value_parser!(u16).range(1..=336))]
        hours: u16,
    },
    /// Show whether the window asks for a code, or remove a forgotten one
    ///
    /// The code keeps people away who pass by. It encrypts nothing, so whoever can use this command can read the record as well.
    ScreenLock {
        /// Remove the code
        #[arg(long)]
        remove: bool,
    },
    /// Permanently erase everything in the data folder
    Erase {
        /// Confirm that everything is to be erased
        #[arg(long)]
        yes: bool,
    },
}

pub fn run(args: &Args, which: Option<PlanId>, what: &DeviceCommand, moment: &Moment, out: &mut Out) -> Done {
    let mut folder = crate::patient::open(args, moment, out)?;
    match what {
        DeviceCommand::Export { out: dir } => export(&folder, dir, moment, out),
        DeviceCommand::Calendar { out: path } => {
            let saved = calendar::export(&folder, moment, which, Some(path))?;
            out.say(|_| format!("{} ({} bytes)", saved.path, saved.bytes), || json!(saved));
            Ok(true)
        }
        DeviceCommand::Reminders { quiet, meeting } => set(&mut folder, quiet, *meeting, moment, out),
        DeviceCommand::Ahead { hours } => {
            for coming in reminders::upcoming(&folder, moment, *hours)? {
                let words = out.words;
                out.say(|_| ahead_text(words, &coming), || ahead_object(words, &coming));
            }
            Ok(true)
        }
        DeviceCommand::ScreenLock { remove } => {
            if *remove {
                screen_lock::remove(&mut folder)?;
            }
            let on = screen_lock::state(&folder)? != ScreenLock::Off;
            let said = if on { Key::ScreenLockOn } else { Key::ScreenLockOff };
            out.say(|words| words.text(said).to_owned(), || json!({ "screen_lock": on }));
            Ok(true)
        }
        DeviceCommand::Erase { yes } => {
            let request = EraseRequest { everything: *yes };
            let left = own_data::erase(&mut folder, moment, request, own_data::WebView::Closed)?;
            out.say(|words| words.text(Key::Erased).to_owned(), || json!({ "erased": folder.dir(), "role": left.role }));
            Ok(true)
        }
    }
}

fn export(folder: &DataFolder, dir: &Path, moment: &Moment, out: &mut Out) -> Done {
    for saved in own_data::export(folder, moment, Some(dir))? {
        out.say(|_| format!("{} ({} bytes)", saved.path, saved.bytes), || json!(saved));
    }
    Ok(true)
}

fn set(folder: &mut DataFolder, quiet: &[String], meeting: Option<u16>, moment: &Moment, out: &mut Out) -> Done {
    let none = matches!(quiet, [only] if only == "none");
    let quiet = match quiet {
        [] => None,
        _ if none => Some(QuietTimesRequest { quiet: Vec::new() }),
        typed => Some(QuietTimesRequest { quiet: reminders::typed(typed)? }),
    };
    let meeting = meeting.map(|minutes| MeetingRequest { minutes: Some(minutes).filter(|minutes| *minutes > 0) });
    let reminders = reminders::change(folder, moment, quiet.as_ref(), meeting)?;
    out.say(|words| reminders_text(words, &reminders), || reminders_object(&reminders));
    Ok(true)
}

fn reminders_text(words: Words, reminders: &Reminders) -> String {
    let spans = reminders.quiet.iter().map(|span| words.quiet_span(*span)).collect::<Vec<_>>();
    let quiet = match spans.as_slice() {
        [] => words.text(Key::NoReminderHoursNone).to_owned(),
        spans => words.commas(spans),
    };
    let mut lines = vec![words.named_text(words.text(Key::NoReminderHoursTitle), &quiet)];
    lines.extend(words.silence(reminders));
    lines.push(words.next_reminder(reminders));
    lines.join("\n")
}

fn reminders_object(reminders: &Reminders) -> Value {
    let quiet = reminders.quiet.iter().map(|span| json!({ "from": span.from, "to": span.to }));
    json!({
        "quiet": quiet.collect::<Vec<Value>>(),
        "meeting_until": reminders.meeting_until.map(instant),
        "silent": reminders.silent,
        "silent_until": reminders.silent_until.map(instant),
        "next": reminders.next.map(instant),
    })
}

fn ahead_text(words: Words, coming: &UpcomingReminder) -> String {
    let (title, body) = words.reminder(coming.reminder.due.minute(), coming.reminder.takes_s);
    format!("{} {title}. {body}", instant(coming.at))
}

fn ahead_object(words: Words, coming: &UpcomingReminder) -> Value {
    let UpcomingReminder { at, reminder } = coming;
    let (title, body) = words.reminder(reminder.due.minute(), reminder.takes_s);
    json!({
        "at": instant(*at),
        "at_ms": at.utc_ms,
        "until": instant(reminder.closes),
        "until_ms": reminder.closes.utc_ms,
        "plan": reminder.plan.to_string(),
        "item": reminder.slot.item,
        "day": reminder.slot.day,
        "number": reminder.slot.number,
        "light": reminder.light,
        "takes_s": reminder.takes_s,
        "title_key": "reminder-title",
        "body_key": "reminder-body",
        "title": title,
        "body": body,
    })
}
