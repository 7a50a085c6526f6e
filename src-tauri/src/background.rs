//! Whether the program is there while its window is not.

use tauri::AppHandle;
#[cfg(desktop)]
use tauri::Manager;
use wire::Failure;
use wire::device::BackgroundState;

#[cfg(desktop)]
use crate::{at_login::AtLogin, tray};

/// How it is, as the system says.
#[cfg(desktop)]
pub fn show(app: &AppHandle) -> BackgroundState {
    BackgroundState { at_login: Some(app.state::<AtLogin>().is_on()), in_tray: Some(tray::is_visible(app)) }
}

/// A phone's system starts and ends programs by itself.
#[cfg(mobile)]
pub fn show(_app: &AppHandle) -> BackgroundState {
    BackgroundState { at_login: None, in_tray: None }
}

/// Opens at login from now on, or no more.
///
/// # Errors
/// What the system said against it.
pub fn at_login(app: &AppHandle, on: bool) -> Result<BackgroundState, Failure> {
    #[cfg(desktop)]
    app.state::<AtLogin>().set(on)?;
    #[cfg(mobile)]
    let _ = on;
    Ok(show(app))
}

/// Nothing of the program is left outside its folder once that is erased.
pub fn forget(app: &AppHandle) {
    if show(app).at_login == Some(true)
        && let Err(failure) = at_login(app, false)
    {
        eprintln!("still opens at login: {failure:?}");
    }
    #[cfg(desktop)]
    tray::refresh(app);
}
