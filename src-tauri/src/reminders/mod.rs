//! The reminder loop: asks which reminder is due, and shows it through the desktop's notification service.
//!
//! It runs on its own thread, whether the window is shown or not. Only a slot that is open at that moment is reminded of, so old
//! reminders do not pile up after sleep or a clock change.

mod notice;

use std::sync::{Mutex, MutexGuard, PoisonError};
use std::thread;
use std::time::Duration;

use actions::patient::due_reminder::{self, Reminder};
use tauri::{AppHandle, Emitter, Manager};
use words::Words;

use crate::session::Session;
use crate::{door, tray, window};
use notice::{Choice, Notice};

/// Longest time between two checks, because a card may have been taken or the clock set.
const LONGEST_SLEEP: Duration = Duration::from_secs(5);
/// Shortest time between two checks.
const SHORTEST_SLEEP: Duration = Duration::from_millis(200);
/// The event that informs the window of a change of the day.
pub const TODAY_CHANGED: &str = "today_changed";

/// The notification on the screen. The loop shows it; the end of the program removes it.
#[derive(Default)]
struct Shown(Mutex<Notice>);

/// Starts the loop.
pub fn start(app: AppHandle) {
    app.manage(Shown::default());
    let spawned = thread::Builder::new().name("reminders".into()).spawn(move || {
        loop {
            thread::sleep(check(&app));
        }
    });
    if let Err(error) = spawned {
        eprintln!("no reminders: {error}");
    }
}

/// Removes the notification when the program ends, because nobody would answer its buttons.
pub fn end(app: &AppHandle) {
    if app.try_state::<Shown>().is_some() {
        on_screen(app).end();
    }
}

/// The lock must be held only briefly: at the end the main thread waits for it, and the loop waits for the main thread.
fn on_screen(app: &AppHandle) -> MutexGuard<'_, Notice> {
    app.state::<Shown>().inner().0.lock().unwrap_or_else(PoisonError::into_inner)
}

/// Checks once, shows a reminder that is due, and returns how long to sleep.
fn check(app: &AppHandle) -> Duration {
    let session = app.state::<Session>();
    let shown = on_screen(app).shown();
    let looked = session.with_own_folder(|folder, moment| {
        let still_applies =
            shown.map_or(Ok(true), |(plan, slot)| due_reminder::still_applies(folder, moment, plan, slot))?;
        let due = due_reminder::due(folder, moment)?;
        let next = due_reminder::next_due_ms(folder, moment)?;
        let wait = next.map(|next| next - moment.now.utc_ms).and_then(|ms| u64::try_from(ms).ok());
        Ok((due, wait, still_applies, actions::platform::words(folder.locale())))
    });
    tray::refresh(app);
    window::refresh(app);
    door::refresh(app);
    // No plan yet, or the clinic's side: there is nothing to remind of.
    let Ok((due, wait, still_applies, words)) = looked else { return LONGEST_SLEEP };
    if !still_applies {
        on_screen(app).withdraw();
    }
    if let Some(reminder) = due {
        show(app, reminder, words);
    }
    wait.map_or(LONGEST_SLEEP, Duration::from_millis).clamp(SHORTEST_SLEEP, LONGEST_SLEEP)
}

fn show(app: &AppHandle, reminder: Reminder, words: Words) {
    let chosen = app.clone();
    let for_slot = reminder.clone();
    on_screen(app).show(words, &reminder, move |choice| chose(&chosen, &for_slot, choice));
    // The window may not be listening yet; it asks by itself every few seconds.
    let _ = app.emit(TODAY_CHANGED, ());
}

fn chose(app: &AppHandle, reminder: &Reminder, choice: Choice) {
    let done = app
        .state::<Session>()
        .with_own_folder(|folder, moment| due_reminder::choose(folder, moment, reminder, choice.into()));
    if let Err(failure) = done {
        eprintln!("a reminder's action: {failure:?}");
    }
    if choice == Choice::Open {
        let shown = app.clone();
        // Windows can only be shown from the main thread.
        let _ = app.run_on_main_thread(move || window::bring_forward(&shown));
    }
    let _ = app.emit(TODAY_CHANGED, ());
}
