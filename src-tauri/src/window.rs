//! The one window: how it opens, where it may go, what it may ask the system for.

use tauri::webview::{PermissionKind, PermissionResponse, WebviewWindowBuilder};
use tauri::{AppHandle, Url, WebviewUrl};
#[cfg(desktop)]
use tauri::{CloseRequestApi, Emitter, LogicalSize, Manager, Monitor, WebviewWindow, WindowEvent, Wry};

use std::path::Path;
#[cfg(desktop)]
use std::sync::atomic::{AtomicBool, Ordering};

#[cfg(desktop)]
use actions::window_place::{self, Screen, WindowPlace};
#[cfg(desktop)]
use wire::device::Leaving;

#[cfg(desktop)]
use crate::session::Session;
#[cfg(desktop)]
use crate::tray;

/// The window's label; the capability file names it.
const MAIN: &str = "main";

/// Tells the window that it was to be closed.
#[cfg(desktop)]
const CLOSING: &str = "closing";

/// Whether the person is being asked what becomes of the reminders.
#[cfg(desktop)]
#[derive(Default)]
struct Asked(AtomicBool);

/// Opens the window, or prepares it unseen. What the web view keeps goes into `kept`.
pub fn open(app: &AppHandle, kept: &Path, hidden: bool) -> tauri::Result<()> {
    let window = WebviewWindowBuilder::new(app, MAIN, WebviewUrl::default())
        .data_directory(kept.to_path_buf())
        // Where the data folder cannot be opened, nothing else says which language that is said in.
        .initialization_script(format!("window.systemLanguage = '{}'", actions::platform::locale().tag()))
        .on_navigation(is_ours);
    #[cfg(desktop)]
    let window = {
        let (least_width, least_height) = window_place::MIN;
        placed(window.title("Carryover"), opens_at(app))
            .min_inner_size(least_width.into(), least_height.into())
            .zoom_hotkeys_enabled(true)
            .visible(!hidden)
    };
    #[cfg(mobile)]
    let _ = hidden;
    let window = window.build()?;
    #[cfg(desktop)]
    {
        app.manage(Asked::default());
        on_close(&window);
    }
    #[cfg(mobile)]
    drop(window);
    Ok(())
}

/// As it was left, else as large as its side needs; on the screens that there are.
#[cfg(desktop)]
fn opens_at(app: &AppHandle) -> WindowPlace {
    let left = app
        .state::<Session>()
        .with_own_folder(|folder, _| Ok(folder.window_place().unwrap_or(WindowPlace::usual(folder.role()))));
    left.unwrap_or(WindowPlace::usual(None)).onto(&screens(app))
}

#[cfg(desktop)]
fn placed<'a>(
    window: WebviewWindowBuilder<'a, Wry, AppHandle>,
    place: WindowPlace,
) -> WebviewWindowBuilder<'a, Wry, AppHandle> {
    let window = window.inner_size(place.size.0.into(), place.size.1.into()).maximized(place.maximized);
    match place.at {
        Some((x, y)) => window.position(x.into(), y.into()),
        None => window,
    }
}

#[cfg(desktop)]
fn screens(app: &AppHandle) -> Vec<Screen> {
    let screen = |monitor: &Monitor| {
        let scale = monitor.scale_factor();
        Screen {
            at: monitor.position().to_logical::<i32>(scale).into(),
            size: monitor.size().to_logical::<u32>(scale).into(),
        }
    };
    app.available_monitors().unwrap_or_default().iter().map(screen).collect()
}

/// Makes room for the pages of the side that was just chosen, unless the person has sized the window already.
#[cfg(desktop)]
pub fn fit_to_side(app: &AppHandle) {
    let Some(window) = app.get_webview_window(MAIN) else { return };
    let (before, place) = (WindowPlace::usual(None).onto(&screens(app)), opens_at(app));
    let is_as_opened = place_of(&window).is_some_and(|now| now.size == before.size && !now.maximized);
    if is_as_opened {
        // A window manager that knows better keeps its size, which is no harm.
        let _ = window.set_size(LogicalSize::new(place.size.0, place.size.1));
    }
}

/// A phone's window is as large as its screen.
#[cfg(mobile)]
pub fn fit_to_side(_app: &AppHandle) {}

/// How the window stands now; `None` where the system does not tell.
#[cfg(desktop)]
fn place_of(window: &WebviewWindow) -> Option<WindowPlace> {
    let scale = window.scale_factor().ok()?;
    let size = window.inner_size().ok()?.to_logical::<u32>(scale);
    let at = window.outer_position().ok().map(|at| at.to_logical::<i32>(scale).into());
    Some(WindowPlace { size: size.into(), at, maximized: window.is_maximized().unwrap_or(false) })
}

/// Whether the window was moved or sized since its place was noted.
#[cfg(desktop)]
#[derive(Default)]
pub struct Moved(AtomicBool);

/// Notes how the window stands, where it was moved or sized since. Asked every few seconds: a session that ends closes no
/// window.
#[cfg(desktop)]
pub fn refresh(app: &AppHandle) {
    if app.try_state::<Moved>().is_some_and(|moved| moved.0.swap(false, Ordering::Relaxed)) {
        keep_place(app);
    }
}

/// Notes how the window stands. What cannot be noted costs a window in its usual size at the next start.
#[cfg(desktop)]
pub fn keep_place(app: &AppHandle) {
    let Some(place) = app.get_webview_window(MAIN).as_ref().and_then(place_of) else { return };
    let kept = app.state::<Session>().with_own_folder(|folder, _| {
        // Filling the screen is no size to go back to.
        let before = folder.window_place().filter(|_| place.maximized);
        folder.keep_window_place(before.map_or(place, |before| WindowPlace { maximized: true, ..before }))
    });
    if let Err(failure) = kept {
        eprintln!("the window's place is not kept: {failure:?}");
    }
}

/// Closing it does not end the reminders of a plan that is followed without a word: where there is a tray, the program stays
/// there, and quitting is there; elsewhere the person is asked. Whoever closes it again while being asked means it.
#[cfg(desktop)]
fn on_close(window: &WebviewWindow) {
    let closed = window.clone();
    window.on_window_event(move |event| match event {
        WindowEvent::Resized(_) | WindowEvent::Moved(_) => {
            if let Some(moved) = closed.try_state::<Moved>() {
                moved.0.store(true, Ordering::Relaxed);
            }
        }
        WindowEvent::CloseRequested { api, .. } => close(&closed, api),
        _ => {}
    });
}

#[cfg(desktop)]
fn close(window: &WebviewWindow, api: &CloseRequestApi) {
    let app = window.app_handle();
    keep_place(app);
    if !tray::is_followed(app) {
        return;
    }
    if tray::is_visible(app) {
        api.prevent_close();
        // A window that does not hide stays in sight, which is no harm.
        let _ = window.hide();
    } else if !app.state::<Asked>().0.swap(true, Ordering::Relaxed) && app.emit(CLOSING, ()).is_ok() {
        api.prevent_close();
    }
}

/// What the person chose when the window was to be closed.
#[cfg(desktop)]
pub fn leave(app: &AppHandle, leaving: Leaving) {
    app.state::<Asked>().0.store(false, Ordering::Relaxed);
    match leaving {
        Leaving::Background => {
            if let Some(window) = app.get_webview_window(MAIN) {
                // A window that does not minimise stays in sight, which is no harm.
                let _ = window.minimize();
            }
        }
        Leaving::End => app.exit(0),
        Leaving::GoOn => {}
    }
}

/// Shows the window above the others.
#[cfg(desktop)]
pub fn bring_forward(app: &AppHandle) {
    if let Some(window) = app.get_webview_window(MAIN) {
        // A window manager may refuse any of these; there is nothing better to do then.
        let _ = window.show();
        let _ = window.unminimize();
        let _ = window.set_focus();
    }
}

/// The window never leaves the program's own pages.
fn is_ours(url: &Url) -> bool {
    url.scheme() == "tauri" || url.host_str() == Some("tauri.localhost")
}

/// The camera reads plan cards; nothing else of the machine is asked for.
pub fn permit(kind: PermissionKind) -> PermissionResponse {
    match kind {
        PermissionKind::Camera => PermissionResponse::Allow,
        _ => PermissionResponse::Deny,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_the_programs_own_pages_are_opened() {
        for ours in ["tauri://localhost/", "http://tauri.localhost/plan", "https://tauri.localhost/"] {
            assert!(is_ours(&ours.parse().unwrap()), "{ours}");
        }
        for other in ["https://example.org/", "file:///etc/passwd", "about:blank"] {
            assert!(!is_ours(&other.parse().unwrap()), "{other}");
        }
    }
}
