//! Reminders on a phone: its system shows them, since no program runs there by the hour. It is told ahead, and told anew
//! whenever what is to come has changed.
//!
//! The program looks while it runs; what a person does in it is therefore heeded, and what it cannot see, it cannot know: a
//! phone's reminder neither takes the place of the one before nor goes when its slot closes.

use std::thread;
use std::time::Duration;

use actions::patient::reminders;
use actions::platform;
use exercises::remind::UpcomingReminder;
use tauri::{AppHandle, Manager};
use tauri_plugin_notification::{NotificationExt, PermissionState, Schedule};
use time::OffsetDateTime;
use wire::Failure;
use words::{Key, Words};

use crate::session::Session;

/// How often the program looks, while it runs.
const LOOK: Duration = Duration::from_secs(5);
/// Hours of reminders that are scheduled ahead: a week. The system keeps as many reminders as [`exercises::remind::MAX_AHEAD`].
const HOURS: u16 = 7 * 24;

/// Starts looking.
pub fn start(app: AppHandle) {
    let spawned = thread::Builder::new().name("reminders".into()).spawn(move || {
        // What an earlier start told is not known.
        let mut told = None;
        loop {
            if let Some((upcoming, words)) = to_come(&app).filter(|(upcoming, _)| told.as_ref() != Some(upcoming)) {
                match schedule(&app, &upcoming, words) {
                    Ok(()) => told = Some(upcoming),
                    Err(error) => eprintln!("the system was not told of reminders: {error}"),
                }
            }
            thread::sleep(LOOK);
        }
    });
    if let Err(error) = spawned {
        eprintln!("no reminders: {error}");
    }
}

/// What is to come, without what is due already: that was told before. An empty list where no plan is followed; nothing where
/// it cannot be known, so that what was told stays.
fn to_come(app: &AppHandle) -> Option<(Vec<UpcomingReminder>, Words)> {
    let looked = app.state::<Session>().with_own_folder(|folder, moment| {
        let all = reminders::upcoming(folder, moment, HOURS)?;
        let upcoming = all.into_iter().filter(|one| one.at.utc_ms > moment.now.utc_ms);
        Ok((upcoming.collect(), platform::words(folder.locale())))
    });
    match looked {
        Ok(known) => Some(known),
        Err(Failure::NoRole | Failure::OtherRole) => Some((Vec::new(), platform::words(platform::locale()))),
        Err(_) => None,
    }
}

/// The system shows these, and no others of before. It asks the person the first time.
fn schedule(app: &AppHandle, upcoming: &[UpcomingReminder], words: Words) -> tauri_plugin_notification::Result<()> {
    let system = app.notification();
    system.cancel_all()?;
    if upcoming.is_empty() {
        return Ok(());
    }
    if system.permission_state()? != PermissionState::Granted && system.request_permission()? != PermissionState::Granted {
        // The person said no; their phone's settings can say otherwise.
        return Ok(());
    }
    for (id, one) in (1..).zip(upcoming) {
        let Ok(date) = OffsetDateTime::from_unix_timestamp(one.at.utc_ms.div_euclid(1000)) else { continue };
        let (title, body) = words.reminder(one.reminder.due.minute(), one.reminder.takes_s);
        let notification = system.builder().id(id).title(title).body(body).group(words.text(Key::AppName));
        let at = Schedule::At { date, repeating: false, allow_while_idle: true };
        let notification = if one.reminder.light { notification.silent() } else { notification };
        notification.schedule(at).show()?;
    }
    Ok(())
}
