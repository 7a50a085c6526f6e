//! The one window: how it opens, where it may go, what it may ask the system for.

use tauri::webview::{PermissionKind, PermissionResponse, WebviewWindowBuilder};
use tauri::{AppHandle, Url, WebviewUrl};
#[cfg(desktop)]
use tauri::{Manager, WebviewWindow, WindowEvent};

use std::path::Path;

use crate::home;
#[cfg(desktop)]
use crate::tray;

/// The window's label; the capability file names it.
const MAIN: &str = "main";

/// Opens the window, or prepares it unseen.
pub fn open(app: &AppHandle, home: &Path, hidden: bool) -> tauri::Result<()> {
    let window = WebviewWindowBuilder::new(app, MAIN, WebviewUrl::default())
        .data_directory(home::web_view_folder(home))
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
    stay_in_tray(&window);
    #[cfg(mobile)]
    drop(window);
    Ok(())
}

/// Closing it leaves the program in the tray while a plan is followed, where there is a tray. Quitting is there.
#[cfg(desktop)]
fn stay_in_tray(window: &WebviewWindow) {
    let closed = window.clone();
    window.on_window_event(move |event| {
        if let WindowEvent::CloseRequested { api, .. } = event
            && tray::keeps_running(closed.app_handle())
        {
            api.prevent_close();
            // A window that does not hide stays in sight, which is no harm.
            let _ = closed.hide();
        }
    });
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
