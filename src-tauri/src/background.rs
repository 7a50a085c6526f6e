//! Whether the program runs while its window is closed.

use tauri::AppHandle;
#[cfg(desktop)]
use tauri::Manager;
use wire::Failure;
use wire::device::{BackgroundState, Leaving};

#[cfg(desktop)]
use crate::{at_login::AtLogin, tray, window};

/// The present state, as reported by the system.
#[cfg(desktop)]
pub fn show(app: &AppHandle) -> BackgroundState {
    BackgroundState { at_login: Some(app.state::<AtLogin>().is_on()), in_tray: Some(tray::is_visible(app)) }
}

/// A phone's system starts and ends programs by itself.
#[cfg(mobile)]
pub fn show(_app: &AppHandle) -> BackgroundState {
    BackgroundState { at_login: None, in_tray: None }
}

/// Sets whether the program starts at login.
///
/// # Errors
/// The system's error message.
pub fn at_login(app: &AppHandle, on: bool) -> Result<BackgroundState, Failure> {
    #[cfg(desktop)]
    app.state::<AtLogin>().set(on)?;
    #[cfg(mobile)]
    let _ = on;
    Ok(show(app))
}

/// Carries out what the person chose when the window was to be closed.
pub fn leave(app: &AppHandle, leaving: Leaving) {
    #[cfg(desktop)]
    window::leave(app, leaving);
    #[cfg(mobile)]
    let _ = (app, leaving);
}

/// Removes the entry for starting at login, so that after erasing nothing of the program remains outside its folder.
pub fn forget(app: &AppHandle) {
    if show(app).at_login == Some(true)
        && let Err(failure) = at_login(app, false)
    {
        eprintln!("still opens at login: {failure:?}");
    }
    #[cfg(desktop)]
    tray::refresh(app);
}
