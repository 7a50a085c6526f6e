//! Locks when nobody uses the window, and after the computer has slept. The rule is `actions::clinic::idle`.

use std::sync::{Mutex, MutexGuard, PoisonError};

use actions::clinic::idle::{self, Clocks, IdleWatch};
use actions::clock;
use tauri::{AppHandle, Emitter, Manager};
use wire::app::Role;

use crate::arriving::Arriving;
use crate::session::Session;

/// The event that informs the clinic's window that the store was locked.
const LOCKED: &str = "locked";
/// The event that informs the patient's window that nobody uses it.
const IDLE: &str = "idle";

/// When the window was last used.
pub struct Door(Mutex<IdleWatch>);

impl Door {
    /// A window that is used at this moment.
    pub fn new() -> Door {
        Door(Mutex::new(IdleWatch::new(now())))
    }

    /// Somebody uses the window.
    pub fn used(&self) {
        self.watch().used(now());
    }

    fn watch(&self) -> MutexGuard<'_, IdleWatch> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

/// The system's own clock, also where the program was started with another time: what matters is how much time passes.
fn now() -> Clocks {
    Clocks { wall_ms: actions::Clock::system().now_ms(), awake_ms: clock::awake_ms() }
}

/// Locks the clinic's store if its time is over, and tells the window so; a patient's window is told and locks itself. Called every few seconds.
pub fn refresh(app: &AppHandle) {
    let door = app.state::<Door>();
    let session = app.state::<Session>();
    let event = session.with_own_folder(|folder, _| {
        let mut watch = door.watch();
        Ok(match folder.role() {
            Some(Role::Patient) => idle::is_screen_idle(folder, &mut watch, now())?.then_some(IDLE),
            _ => idle::lock_if_over(folder, &mut watch, now())?.then(|| {
                app.state::<Arriving>().go_on(None);
                LOCKED
            }),
        })
    });
    if let Ok(Some(event)) = event {
        // A clinic's window that does not hear it shows nothing new either: every command is refused from now on.
        let _ = app.emit(event, ());
    }
}
