//! Reminders on a phone. The system shows them, because no program runs there all the time. They are scheduled ahead, and scheduled
//! again whenever the coming reminders have changed.
//!
//! The program checks only while it runs, so it takes into account what the person does in it, but nothing else: a phone's reminder
//! neither replaces the previous one nor disappears when its slot closes.

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

use crate::door;
use crate::session::Session;

/// How often the program checks while it runs.
const LOOK: Duration = Duration::from_secs(5);
/// How far ahead reminders are scheduled, in hours: a week. The system keeps at most [`exercises::remind::MAX_AHEAD`] reminders.
const HOURS: u16 = 7 * 24;

/// Starts checking.
pub fn start(app: AppHandle) {
    let spawned = thread::Builder::new().name("reminders".into()).spawn(move || {
        // It is not known what an earlier start of the program scheduled.
        let mut told = None;
        loop {
            if let Some((upcoming, words)) = to_come(&app).filter(|(upcoming, _)| told.as_ref() != Some(upcoming)) {
                match schedule(&app, &upcoming, words) {
                    Ok(()) => told = Some(upcoming),
                    Err(error) => eprintln!("the system was not told of reminders: {error}"),
                }
            }
            door::refresh(&app);
            thread::sleep(LOOK);
        }
    });
    if let Err(error) = spawned {
        eprintln!("no reminders: {error}");
    }
}

/// The coming reminders, without those that are due already, which were scheduled before. An empty list if no plan is followed;
/// `None` if it cannot be determined, so that what was scheduled stays.
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

/// Schedules these reminders and cancels all earlier ones. The first time, the system asks the person for permission.
fn schedule(app: &AppHandle, upcoming: &[UpcomingReminder], words: Words) -> tauri_plugin_notification::Result<()> {
    let system = app.notification();
    system.cancel_all()?;
    if upcoming.is_empty() {
        return Ok(());
    }
    if system.permission_state()? != PermissionState::Granted && system.request_permission()? != PermissionState::Granted {
        // The person refused; they can change this in the phone's settings.
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
