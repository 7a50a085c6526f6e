//! The tray icon. Many desktops show none, so nothing depends on it.

use std::panic::{AssertUnwindSafe, catch_unwind};

use tauri::AppHandle;
use tauri::menu::MenuBuilder;
use tauri::tray::TrayIconBuilder;
use words::{Key, Words};

use crate::window;

const OPEN: &str = "open";
const QUIT: &str = "quit";

/// Puts the icon into the tray, or goes on without one.
pub fn show(app: &AppHandle) {
    // On Linux the tray library is loaded when it is first used, and the binding panics when it
    // is not installed.
    let shown = catch_unwind(AssertUnwindSafe(|| build(app)));
    match shown {
        Ok(Ok(())) => {}
        Ok(Err(error)) => eprintln!("no tray icon: {error}"),
        Err(_) => eprintln!("no tray icon: its library is not installed"),
    }
}

fn build(app: &AppHandle) -> tauri::Result<()> {
    let words = Words::new(actions::outside::lang());
    let menu = MenuBuilder::new(app).text(OPEN, words.text(Key::ReminderOpen)).text(QUIT, words.text(Key::Quit)).build()?;
    let mut tray = TrayIconBuilder::new().menu(&menu).on_menu_event(|app, event| match event.id().as_ref() {
        OPEN => window::bring_forward(app),
        QUIT => app.exit(0),
        _ => {}
    });
    if let Some(icon) = app.default_window_icon() {
        tray = tray.icon(icon.clone());
    }
    tray.build(app)?;
    Ok(())
}
