//! The only window: how it opens, which pages it may show, which permissions it may ask for.

use tauri::webview::{NewWindowResponse, PermissionKind, PermissionResponse, WebviewWindowBuilder};
use tauri::{AppHandle, Url, WebviewUrl};
#[cfg(desktop)]
use tauri::{CloseRequestApi, DragDropEvent, Emitter, LogicalSize, Manager, Monitor, WebviewWindow, WindowEvent, Wry};

use std::path::Path;
#[cfg(desktop)]
use std::sync::atomic::{AtomicBool, Ordering};

#[cfg(desktop)]
use actions::window_place::{self, Screen, WindowPlace};
#[cfg(desktop)]
use wire::device::Leaving;
#[cfg(desktop)]
use wire::receiving::{FILES, FilesEvent};

#[cfg(desktop)]
use crate::arriving::Arriving;
#[cfg(desktop)]
use crate::session::Session;
#[cfg(desktop)]
use crate::tray;
#[cfg(target_os = "linux")]
use crate::web_process;

/// The window's label, which the capability file uses.
const MAIN: &str = "main";

/// The event that informs the window of an attempt to close it.
#[cfg(desktop)]
const CLOSING: &str = "closing";

/// Whether the person is being asked about closing and the reminders.
#[cfg(desktop)]
#[derive(Default)]
struct Asked(AtomicBool);

/// Opens the window, or creates it hidden. The web view's data are stored in `kept`.
pub fn open(app: &AppHandle, kept: &Path, hidden: bool) -> tauri::Result<()> {
    let window = WebviewWindowBuilder::new(app, MAIN, WebviewUrl::default())
        .data_directory(kept.to_path_buf())
        .initialization_script(system_script())
        .on_navigation(is_ours)
        .on_new_window(|_, _| NewWindowResponse::Deny)
        // What a person saves is written by a command.
        .on_download(|_, _| false);
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
        on_event(&window);
        #[cfg(target_os = "linux")]
        web_process::watch(&window, format!("{}://{}", ORIGIN.0, ORIGIN.1));
    }
    #[cfg(mobile)]
    drop(window);
    Ok(())
}

/// Whether folders are chosen in the dialogue of `folder_dialog`. Elsewhere the page chooses them as it chooses files.
const CHOOSES_FOLDERS: bool = cfg!(target_os = "linux");

/// Notes in the page what it has to know of the system. If the data folder cannot be opened, the language of the error has no other source.
fn system_script() -> String {
    let (language, folders) = (actions::platform::locale().tag(), CHOOSES_FOLDERS);
    format!("window.systemLanguage = '{language}'; window.systemChoosesFolders = {folders}")
}

/// The place as the window was left, otherwise the usual size for its side; adapted to the present screens.
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

/// Enlarges the window for the pages of the side that was just chosen, unless the person has already changed its size.
#[cfg(desktop)]
pub fn fit_to_side(app: &AppHandle) {
    let Some(window) = app.get_webview_window(MAIN) else { return };
    let (before, place) = (WindowPlace::usual(None).onto(&screens(app)), opens_at(app));
    let is_as_opened = place_of(&window).is_some_and(|now| now.size == before.size && !now.maximized);
    if is_as_opened {
        // The window manager may keep another size, which does no harm.
        let _ = window.set_size(LogicalSize::new(place.size.0, place.size.1));
    }
}

/// A phone's window is as large as its screen.
#[cfg(mobile)]
pub fn fit_to_side(_app: &AppHandle) {}

/// The window's present place; `None` if the system does not report it.
#[cfg(desktop)]
fn place_of(window: &WebviewWindow) -> Option<WindowPlace> {
    let scale = window.scale_factor().ok()?;
    let size = window.inner_size().ok()?.to_logical::<u32>(scale);
    let at = window.outer_position().ok().map(|at| at.to_logical::<i32>(scale).into());
    Some(WindowPlace { size: size.into(), at, maximized: window.is_maximized().unwrap_or(false) })
}

/// Whether the window was moved or resized since its place was stored.
#[cfg(desktop)]
#[derive(Default)]
pub struct Moved(AtomicBool);

/// Stores the window's place if it was moved or resized. Called every few seconds, because the end of a session does not close
/// windows.
#[cfg(desktop)]
pub fn refresh(app: &AppHandle) {
    if app.try_state::<Moved>().is_some_and(|moved| moved.0.swap(false, Ordering::Relaxed)) {
        keep_place(app);
    }
}

/// Stores the window's place. If that fails, the window only opens in its usual size at the next start.
#[cfg(desktop)]
pub fn keep_place(app: &AppHandle) {
    let Some(place) = app.get_webview_window(MAIN).as_ref().and_then(place_of) else { return };
    let kept = app.state::<Session>().with_own_folder(|folder, _| {
        // A maximised window keeps the size from before, because the full screen is not a size to return to.
        let before = folder.window_place().filter(|_| place.maximized);
        folder.keep_window_place(before.map_or(place, |before| WindowPlace { maximized: true, ..before }))
    });
    if let Err(failure) = kept {
        eprintln!("the window's place is not kept: {failure:?}");
    }
}

/// Handles what happens to the window: it is moved or resized, it is to be closed, or files are dragged over it.
#[cfg(desktop)]
fn on_event(window: &WebviewWindow) {
    let closed = window.clone();
    window.on_window_event(move |event| match event {
        WindowEvent::Resized(_) | WindowEvent::Moved(_) => {
            if let Some(moved) = closed.try_state::<Moved>() {
                moved.0.store(true, Ordering::Relaxed);
            }
        }
        WindowEvent::CloseRequested { api, .. } => close(&closed, api),
        WindowEvent::DragDrop(dragged) => files_over(closed.app_handle(), dragged),
        _ => {}
    });
}

/// Notes the files that are dropped on the window, and tells the page of it. A page that receives nothing at that moment does not answer, and
/// nothing is read.
#[cfg(desktop)]
fn files_over(app: &AppHandle, dragged: &DragDropEvent) {
    let event = match dragged {
        DragDropEvent::Enter { .. } => FilesEvent::Over,
        // Something else than files was dropped, such as a text.
        DragDropEvent::Drop { paths, .. } if paths.is_empty() => FilesEvent::Away,
        DragDropEvent::Drop { paths, .. } => FilesEvent::Dropped { number: app.state::<Arriving>().name(paths) },
        DragDropEvent::Leave => FilesEvent::Away,
        _ => return,
    };
    // A page that does not hear it goes on as before.
    let _ = app.emit(FILES, event);
}

/// The system's own window, for dialogues that belong to it.
#[cfg(target_os = "linux")]
pub fn native(app: &AppHandle) -> Option<gtk::ApplicationWindow> {
    app.get_webview_window(MAIN)?.gtk_window().ok()
}

/// Handles an attempt to close the window. Closing must not silently end the reminders of a plan that is followed: with a tray the
/// program stays there and can be quit there; without one the person is asked. Closing the window again while being asked ends the
/// program.
#[cfg(desktop)]
fn close(window: &WebviewWindow, api: &CloseRequestApi) {
    let app = window.app_handle();
    keep_place(app);
    if !tray::is_followed(app) {
        return;
    }
    if tray::is_visible(app) {
        api.prevent_close();
        // A window that cannot be hidden stays visible, which does no harm.
        let _ = window.hide();
    } else if !app.state::<Asked>().0.swap(true, Ordering::Relaxed) && app.emit(CLOSING, ()).is_ok() {
        api.prevent_close();
    }
}

/// Carries out what the person chose when the window was to be closed.
#[cfg(desktop)]
pub fn leave(app: &AppHandle, leaving: Leaving) {
    app.state::<Asked>().0.store(false, Ordering::Relaxed);
    match leaving {
        Leaving::Background => {
            if let Some(window) = app.get_webview_window(MAIN) {
                // A window that cannot be minimised stays visible, which does no harm.
                let _ = window.minimize();
            }
        }
        Leaving::End => app.exit(0),
        Leaving::GoOn => {}
    }
}

/// Brings the window to the front.
#[cfg(desktop)]
pub fn bring_forward(app: &AppHandle) {
    if let Some(window) = app.get_webview_window(MAIN) {
        // A window manager may refuse any of these; then nothing else can be done.
        let _ = window.show();
        let _ = window.unminimize();
        let _ = window.set_focus();
    }
}

/// Scheme and host of the program's own pages; where the web view knows no schemes of a program's own, a host that is never looked up.
const ORIGIN: (&str, &str) = match cfg!(any(windows, target_os = "android")) {
    true => ("http", "tauri.localhost"),
    false => ("tauri", "localhost"),
};

/// Whether the address is one of the program's own pages; the window never leaves them. Another port is another origin, which any
/// program on the same computer may serve.
fn is_ours(url: &Url) -> bool {
    let no_person = url.username().is_empty() && url.password().is_none();
    (url.scheme(), url.host_str()) == (ORIGIN.0, Some(ORIGIN.1)) && url.port().is_none() && no_person
}

/// Only the camera is permitted, for reading plan cards.
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
        let (scheme, host) = ORIGIN;
        for ours in ["", "/", "/plan", "/?day=3#top"] {
            let ours = format!("{scheme}://{host}{ours}");
            assert!(is_ours(&ours.parse().unwrap()), "{ours}");
        }
        for other in [
            format!("{scheme}://{host}:8080/"),
            format!("{scheme}://{host}.example.org/"),
            format!("{scheme}://somebody@{host}/"),
            format!("{scheme}://:word@{host}/"),
            format!("ftp://{host}/"),
            format!("https://{host}/"),
            "http://tauri.localhost:1420/".into(),
            "https://example.org/".into(),
            "file:///etc/passwd".into(),
            "about:blank".into(),
            "data:text/html,x".into(),
        ] {
            assert!(!is_ours(&other.parse().unwrap()), "{other}");
        }
    }
}
