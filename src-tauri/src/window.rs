//! The one window: how it opens, where it may go, what it may ask the system for.

use tauri::webview::{PermissionKind, PermissionResponse, WebviewWindowBuilder};
use tauri::{AppHandle, Url, WebviewUrl};
#[cfg(desktop)]
use tauri::{Emitter, Manager, WebviewWindow, WindowEvent};

use std::path::Path;

#[cfg(desktop)]
use std::sync::atomic::{AtomicBool, Ordering};
#[cfg(desktop)]
use wire::own::Leaving;

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
        .initialization_script(format!("window.systemLanguage = '{}'", actions::outside::lang().code()))
        .on_navigation(is_ours);
    #[cfg(desktop)]
    let window = window
        .title("Carryover")
        .inner_size(460.0, 844.0)
        .min_inner_size(320.0, 320.0)
        .zoom_hotkeys_enabled(true)
        .visible(!hidden);
    #[cfg(mobile)]
    let _ = hidden;
    let window = window.build()?;
    #[cfg(desktop)]
    {
        app.manage(Asked::default());
        keep_reminding(&window);
    }
    #[cfg(mobile)]
    drop(window);
    Ok(())
}

/// Closing it does not end the reminders of a plan that is followed without a word: where there is a tray, the program stays
/// there, and quitting is there; elsewhere the person is asked. Whoever closes it again while being asked means it.
#[cfg(desktop)]
fn keep_reminding(window: &WebviewWindow) {
    let closed = window.clone();
    window.on_window_event(move |event| {
        let WindowEvent::CloseRequested { api, .. } = event else { return };
        let app = closed.app_handle();
        if !tray::is_followed(app) {
            return;
        }
        if tray::is_seen(app) {
            api.prevent_close();
            // A window that does not hide stays in sight, which is no harm.
            let _ = closed.hide();
        } else if !app.state::<Asked>().0.swap(true, Ordering::Relaxed) && app.emit(CLOSING, ()).is_ok() {
            api.prevent_close();
        }
    });
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
