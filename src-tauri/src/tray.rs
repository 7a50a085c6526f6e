//! The tray icon and its menu, which summarises the day. Many desktops have no tray, so nothing depends on it.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::{Mutex, PoisonError};

use actions::patient::reminders;
use actions::patient::tray_summary::{self, TraySummary};
use exercises::remind::MEETINGS;
use tauri::menu::{Menu, MenuBuilder, MenuItemBuilder};
use tauri::tray::{TrayIcon, TrayIconBuilder};
use tauri::{AppHandle, Emitter, Manager, Wry};
use wire::device::MeetingRequest;
use words::Key;

use crate::reminders::TODAY_CHANGED;
use crate::session::Session;
use crate::window;

const OPEN: &str = "open";
const MEETING: &str = "meeting";
const MEETING_OVER: &str = "meeting-over";
const QUIT: &str = "quit";

/// The tray icon, and what its menu shows.
struct Tray {
    icon: TrayIcon,
    said: Mutex<TraySummary>,
}

/// Puts the icon into the tray, or continues without one.
pub fn show(app: &AppHandle) {
    // On Linux the tray library is loaded when it is first used, and the binding panics if it is not installed.
    let shown = catch_unwind(AssertUnwindSafe(|| build(app)));
    match shown {
        Ok(Ok(tray)) => drop(app.manage(tray)),
        Ok(Err(error)) => eprintln!("no tray icon: {error}"),
        Err(_) => eprintln!("no tray icon: its library is not installed"),
    }
}

/// Updates the menu's summary of the day.
pub fn refresh(app: &AppHandle) {
    let Some(tray) = app.try_state::<Tray>() else { return };
    let Ok(summary) = summary(app) else { return };
    let said = || tray.said.lock().unwrap_or_else(PoisonError::into_inner);
    if *said() == summary {
        return;
    }
    // Menus are created on the main thread, which may itself wait for this lock, so it is not held meanwhile.
    match menu(app, &summary).and_then(|menu| tray.icon.set_menu(Some(menu))) {
        Ok(()) => *said() = summary,
        Err(error) => eprintln!("the tray's menu stays as it was: {error}"),
    }
}

/// Whether there is a tray in which the person can see the icon.
pub fn is_visible(app: &AppHandle) -> bool {
    app.try_state::<Tray>().is_some() && has_host()
}

/// Whether a plan is followed, so that reminders may come.
pub fn is_followed(app: &AppHandle) -> bool {
    summary(app).is_ok_and(|summary| summary.followed)
}

/// On Linux an icon is only visible if a panel watches for icons; such a panel owns this name on the session bus.
#[cfg(target_os = "linux")]
fn has_host() -> bool {
    let asked = zbus::blocking::Connection::session().and_then(|bus| {
        let names = zbus::blocking::fdo::DBusProxy::new(&bus)?;
        Ok(names.name_has_owner("org.kde.StatusNotifierWatcher".try_into()?)?)
    });
    asked.unwrap_or(false)
}

#[cfg(not(target_os = "linux"))]
fn has_host() -> bool {
    true
}

fn summary(app: &AppHandle) -> Result<TraySummary, wire::Failure> {
    app.state::<Session>().with_own_folder(|folder, moment| tray_summary::show(folder, moment))
}

fn build(app: &AppHandle) -> tauri::Result<Tray> {
    let summary = summary(app).unwrap_or_else(|_| TraySummary::nothing(actions::platform::locale()));
    let menu = menu(app, &summary)?;
    let mut tray = TrayIconBuilder::new().menu(&menu).on_menu_event(|app, event| chose(app, event.id().as_ref()));
    if let Some(icon) = app.default_window_icon() {
        tray = tray.icon(icon.clone());
    }
    Ok(Tray { icon: tray.build(app)?, said: Mutex::new(summary) })
}

/// The menu: the day's lines, which cannot be chosen, followed by the commands.
fn menu(app: &AppHandle, summary: &TraySummary) -> tauri::Result<Menu<Wry>> {
    let words = summary.words;
    let mut menu = MenuBuilder::new(app);
    for line in &summary.lines {
        menu = menu.item(&MenuItemBuilder::new(line).enabled(false).build(app)?);
    }
    if !summary.lines.is_empty() {
        menu = menu.separator();
    }
    menu = menu.text(OPEN, words.text(Key::ReminderOpen));
    menu = match summary.meeting {
        Some(true) => menu.text(MEETING_OVER, words.text(Key::MeetingEnd)),
        Some(false) => menu.text(MEETING, words.tray_meeting(LONGEST / 60)),
        None => menu,
    };
    menu.separator().text(QUIT, words.text(Key::Quit)).build()
}

/// The meeting that the menu offers, in minutes.
const LONGEST: u16 = MEETINGS[MEETINGS.len() - 1];

fn chose(app: &AppHandle, item: &str) {
    match item {
        OPEN => window::bring_forward(app),
        MEETING => meeting(app, Some(LONGEST)),
        MEETING_OVER => meeting(app, None),
        QUIT => {
            window::keep_place(app);
            app.exit(0);
        }
        _ => {}
    }
}

fn meeting(app: &AppHandle, minutes: Option<u16>) {
    let asked = app
        .state::<Session>()
        .with_own_folder(|folder, moment| reminders::meeting(folder, moment, MeetingRequest { minutes }));
    if let Err(failure) = asked {
        eprintln!("a meeting from the tray: {failure:?}");
    }
    refresh(app);
    // The window may not be listening yet; it asks by itself every few seconds.
    let _ = app.emit(TODAY_CHANGED, ());
}
