//! One notification at a time, through notify-rust.
//!
//! Showing a notification opens its own connection. The thread that waits for an action keeps it open, because some services close a
//! notification when its connection is closed, and others answer only to the connection that asked. A notification says nothing
//! medical, because somebody else may be looking at the screen.

use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::thread;

use actions::patient::due_reminder::{Choice as Chosen, MEETING_MINUTES, Reminder};
use exercises::id::PlanId;
use exercises::slots::SlotRef;
use notify_rust::{Notification, NotificationHandle, Timeout};
use words::{Key, Words};

/// Largest number of threads that wait for an action. A service may never report that a notification was closed; once this many
/// threads are waiting, notifications have no actions.
const MAX_WAITING: usize = 16;
const OPEN: &str = "open";
const LATER: &str = "later";
const SKIP: &str = "leave-out";
const MEETING: &str = "meeting";

/// What the person chose on a notification.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Choice {
    /// Open the slot's page.
    Open,
    /// Put it off by ten minutes.
    Later,
    /// Skip it.
    Skip,
    /// No reminder for the time of a meeting.
    Meeting,
}

impl From<Choice> for Chosen {
    fn from(choice: Choice) -> Chosen {
        match choice {
            Choice::Open => Chosen::Open,
            Choice::Later => Chosen::PutOff,
            Choice::Skip => Chosen::Skip,
            Choice::Meeting => Chosen::Meeting,
        }
    }
}

/// The notification on the screen, if any; the next one replaces it.
#[derive(Default)]
pub struct Notice {
    id: Option<u32>,
    /// The slot that it reminds of, until it is withdrawn.
    of: Option<(PlanId, SlotRef)>,
    waiting: Arc<AtomicUsize>,
    /// Whether the program is ending: nothing is shown any more.
    ended: bool,
}

impl Notice {
    /// Shows a reminder in place of the last one. `chose` is called from another thread when the person chooses an action.
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
            // The last one: a service that shows three buttons shows the others.
            .action(MEETING, &words.reminder_meeting(&words.for_minutes(MEETING_MINUTES)))
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

    /// The slot that the notification on the screen reminds of, as far as is known: the person may have closed it.
    pub fn shown(&self) -> Option<(PlanId, SlotRef)> {
        self.of
    }

    /// Removes the notification, because its slot needs no reminder any more.
    pub fn withdraw(&mut self) {
        self.of = None;
        if let Some(Err(error)) = self.id.map(close) {
            eprintln!("a notification stays: {error}");
        }
    }

    /// The program is ending: removes the notification, because nobody would answer its buttons, and shows no more.
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
                    MEETING => Some(Choice::Meeting),
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

/// A silent one does not interrupt; the hint is the specification's own for "no sound".
#[cfg(all(unix, not(target_os = "macos")))]
fn loudness(notification: &mut Notification, light: bool) {
    use notify_rust::{Hint, Urgency};
    notification.urgency(if light { Urgency::Low } else { Urgency::Normal });
    if light {
        notification.hint(Hint::SuppressSound(true));
    }
}

/// The id by which the next notification replaces this one.
#[cfg(all(unix, not(target_os = "macos")))]
fn number(handle: &NotificationHandle) -> Option<u32> {
    Some(handle.id())
}

/// Closes a notification by its id. Its handle is waiting for an action on another thread, so a new call to the service is made; it
/// is not an error if the notification is closed already.
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

/// On other systems a notification stays until the person closes it.
#[cfg(not(target_os = "linux"))]
fn close(_: u32) -> Result<(), std::convert::Infallible> {
    Ok(())
}

/// Only freedesktop's service gives ids; on other systems the next notification is shown beside this one.
#[cfg(not(all(unix, not(target_os = "macos"))))]
fn number(_: &NotificationHandle) -> Option<u32> {
    None
}
