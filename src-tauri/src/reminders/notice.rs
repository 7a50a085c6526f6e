//! One notification at a time, through notify-rust.
//!
//! Showing opens a connection of its own; the thread that waits for an action holds it, since some services close a
//! notification when its connection goes, and others answer only to the connection that asked. It says nothing medical:
//! somebody else may be looking at the screen.

use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::thread;

use actions::patient::due_reminder::{Choice as Chosen, Reminder};
use exercises::id::PlanId;
use exercises::slots::SlotRef;
use notify_rust::{Notification, NotificationHandle, Timeout};
use words::{Key, Words};

/// A service may never tell that a notification was closed; after so many waiting threads a notification goes without
/// actions.
const MAX_WAITING: usize = 16;
const OPEN: &str = "open";
const LATER: &str = "later";
const SKIP: &str = "leave-out";

/// What the person chose on a notification.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Choice {
    /// Open the slot's page.
    Open,
    /// Put it off by ten minutes.
    Later,
    /// Leave it out.
    Skip,
}

impl From<Choice> for Chosen {
    fn from(choice: Choice) -> Chosen {
        match choice {
            Choice::Open => Chosen::Open,
            Choice::Later => Chosen::PutOff,
            Choice::Skip => Chosen::Skip,
        }
    }
}

/// The notification that is shown, if any; the next one takes its place.
#[derive(Default)]
pub struct Notice {
    id: Option<u32>,
    /// What it reminds of, until it is withdrawn.
    of: Option<(PlanId, SlotRef)>,
    waiting: Arc<AtomicUsize>,
    /// Whether the program ends: nothing is shown any more.
    ended: bool,
}

impl Notice {
    /// Shows a reminder in place of the last one; `chose` is called from another thread when the person acts on it.
    pub fn show(&mut self, words: Words, reminder: &Reminder, chose: impl FnOnce(Choice) + Send + 'static) {
        if self.ended {
            return;
        }
        let (title, body) = words.reminder(reminder.due.minute(), reminder.takes_s);
        let mut notification = Notification::new();
        notification
            .appname(words.text(Key::AppName))
            .summary(&title)
            .body(body)
            .action("default", words.text(Key::ReminderOpen))
            .action(OPEN, words.text(Key::ReminderOpen))
            .action(LATER, words.text(Key::ReminderLater))
            .action(SKIP, words.text(Key::ReminderSkip))
            .timeout(Timeout::Milliseconds(reminder.open_ms));
        #[cfg(all(unix, not(target_os = "macos")))]
        loudness(&mut notification, reminder.light);
        if let Some(id) = self.id {
            notification.id(id);
        }
        match notification.show() {
            Ok(handle) => {
                self.id = number(&handle);
                self.of = Some((reminder.plan, reminder.slot));
                self.wait(handle, chose);
            }
            Err(error) => eprintln!("no notification: {error}"),
        }
    }

    /// What the notification that is shown reminds of, as far as is known: the person may have closed it.
    pub fn shown(&self) -> Option<(PlanId, SlotRef)> {
        self.of
    }

    /// Takes it away: what it reminds of is done with.
    pub fn withdraw(&mut self) {
        self.of = None;
        if let Some(Err(error)) = self.id.map(close) {
            eprintln!("a notification stays: {error}");
        }
    }

    /// The program ends: what is shown goes, since nobody would answer its buttons, and nothing more comes.
    pub fn end(&mut self) {
        self.ended = true;
        if self.of.is_some() {
            self.withdraw();
        }
    }

    fn wait(&self, handle: NotificationHandle, chose: impl FnOnce(Choice) + Send + 'static) {
        if self.waiting.load(Ordering::Relaxed) >= MAX_WAITING {
            return;
        }
        let waiting = Arc::clone(&self.waiting);
        waiting.fetch_add(1, Ordering::Relaxed);
        let spawned = thread::Builder::new().name("notification".into()).spawn(move || {
            let mut choice = None;
            handle.wait_for_action(|action| {
                choice = match action {
                    "default" | OPEN => Some(Choice::Open),
                    LATER => Some(Choice::Later),
                    SKIP => Some(Choice::Skip),
                    _ => None,
                };
            });
            waiting.fetch_sub(1, Ordering::Relaxed);
            if let Some(choice) = choice {
                chose(choice);
            }
        });
        if let Err(error) = spawned {
            eprintln!("no thread for a notification's actions: {error}");
        }
    }
}

/// A light one lies there without interrupting; the hint is the specification's own for "no sound".
#[cfg(all(unix, not(target_os = "macos")))]
fn loudness(notification: &mut Notification, light: bool) {
    use notify_rust::{Hint, Urgency};
    notification.urgency(if light { Urgency::Low } else { Urgency::Normal });
    if light {
        notification.hint(Hint::SuppressSound(true));
    }
}

/// The number by which the next notification takes this one's place.
#[cfg(all(unix, not(target_os = "macos")))]
fn number(handle: &NotificationHandle) -> Option<u32> {
    Some(handle.id())
}

/// Closes a notification by its number. Its handle waits for an action on another thread, so the service is asked anew; one that is
/// closed already is no fault.
#[cfg(target_os = "linux")]
fn close(id: u32) -> zbus::Result<()> {
    let service = "org.freedesktop.Notifications";
    let bus = zbus::blocking::Connection::session()?;
    let asked = bus.call_method(Some(service), "/org/freedesktop/Notifications", Some(service), "CloseNotification", &id);
    match asked {
        Ok(_) | Err(zbus::Error::MethodError(..)) => Ok(()),
        Err(error) => Err(error),
    }
}

/// Elsewhere a notification stays until the person closes it.
#[cfg(not(target_os = "linux"))]
fn close(_: u32) -> Result<(), std::convert::Infallible> {
    Ok(())
}

/// Only freedesktop's service gives numbers; elsewhere the next one stands beside it.
#[cfg(not(all(unix, not(target_os = "macos"))))]
fn number(_: &NotificationHandle) -> Option<u32> {
    None
}
