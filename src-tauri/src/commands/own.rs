//! What the patient's window asks about reminders and about the person's own data.

use super::{Answer, Args};
use crate::session::Session;
use crate::stay;
use actions::patient::{calendar, mine, reminders};
use tauri::{AppHandle, State};
use wire::own;

/// [`wire::own::ShowReminders`].
#[tauri::command]
pub async fn reminders(session: State<'_, Session>, _args: Args<own::ShowReminders>) -> Answer<own::ShowReminders> {
    session.with(|house, moment| reminders::show(house, moment))
}

/// [`wire::own::SetReminders`].
#[tauri::command]
pub async fn set_reminders(session: State<'_, Session>, args: Args<own::SetReminders>) -> Answer<own::SetReminders> {
    session.in_earnest(|house, moment| reminders::set(house, moment, &args))
}

/// [`wire::own::Meeting`].
#[tauri::command]
pub async fn meeting(session: State<'_, Session>, args: Args<own::Meeting>) -> Answer<own::Meeting> {
    session.in_earnest(|house, moment| reminders::meeting(house, moment, args))
}

/// [`wire::own::ExportMine`].
#[tauri::command]
pub async fn export_mine(session: State<'_, Session>, _args: Args<own::ExportMine>) -> Answer<own::ExportMine> {
    session.in_earnest(|house, moment| mine::export(house, moment, None))
}

/// [`wire::own::ExportCalendar`].
#[tauri::command]
pub async fn export_calendar(session: State<'_, Session>, _args: Args<own::ExportCalendar>) -> Answer<own::ExportCalendar> {
    session.in_earnest(|house, moment| calendar::export(house, moment, None, None))
}

/// [`wire::own::EraseEverything`]. This window's web view is running.
#[tauri::command]
pub async fn erase_everything(
    app: AppHandle,
    session: State<'_, Session>,
    args: Args<own::EraseEverything>,
) -> Answer<own::EraseEverything> {
    let situation = session.in_earnest(|house, moment| mine::erase(house, moment, args, mine::WebView::Open))?;
    stay::forget(&app);
    Ok(situation)
}

/// [`wire::own::ShowStay`].
#[tauri::command]
pub async fn stay(app: AppHandle, _args: Args<own::ShowStay>) -> Answer<own::ShowStay> {
    Ok(stay::show(&app))
}

/// [`wire::own::SetAtLogin`].
#[tauri::command]
pub async fn set_at_login(app: AppHandle, args: Args<own::SetAtLogin>) -> Answer<own::SetAtLogin> {
    stay::at_login(&app, args.on)
}

/// [`wire::own::Leave`].
#[tauri::command]
pub async fn leave(app: AppHandle, args: Args<own::Leave>) -> Answer<own::Leave> {
    stay::leave(&app, args);
    Ok(())
}
