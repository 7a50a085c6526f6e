//! Commands of the patient's window about reminders and the person's own data.

use super::{Args, CommandResult};
use crate::background;
use crate::saved_files::SavedFiles;
use crate::session::Session;
use actions::patient::{calendar, own_data, reminders, screen_lock};
use tauri::{AppHandle, State};
use wire::device;

/// [`wire::device::ShowReminders`].
#[tauri::command]
pub async fn reminders(
    session: State<'_, Session>,
    _args: Args<device::ShowReminders>,
) -> CommandResult<device::ShowReminders> {
    session.with(|folder, moment| reminders::show(folder, moment))
}

/// [`wire::device::SetReminders`].
#[tauri::command]
pub async fn set_reminders(
    session: State<'_, Session>,
    args: Args<device::SetReminders>,
) -> CommandResult<device::SetReminders> {
    session.outside_sample(|folder, moment| reminders::set(folder, moment, &args))
}

/// [`wire::device::Meeting`].
#[tauri::command]
pub async fn meeting(session: State<'_, Session>, args: Args<device::Meeting>) -> CommandResult<device::Meeting> {
    session.outside_sample(|folder, moment| reminders::meeting(folder, moment, args))
}

/// [`wire::device::ExportOwnData`].
#[tauri::command]
pub async fn export_own_data(
    session: State<'_, Session>,
    saved: State<'_, SavedFiles>,
    _args: Args<device::ExportOwnData>,
) -> CommandResult<device::ExportOwnData> {
    let files = session.outside_sample(|folder, moment| own_data::export(folder, moment, None))?;
    Ok(files.into_iter().map(|file| saved.tell(file.path, session.home())).collect())
}

/// [`wire::device::ShowDeviceNumber`].
#[tauri::command]
pub async fn device_number(
    session: State<'_, Session>,
    _args: Args<device::ShowDeviceNumber>,
) -> CommandResult<device::ShowDeviceNumber> {
    session.outside_sample(|folder, _| own_data::device_number(folder))
}

/// [`wire::device::ExportCalendar`].
#[tauri::command]
pub async fn export_calendar(
    session: State<'_, Session>,
    saved: State<'_, SavedFiles>,
    _args: Args<device::ExportCalendar>,
) -> CommandResult<device::ExportCalendar> {
    let file = session.outside_sample(|folder, moment| calendar::export(folder, moment, None, None))?;
    Ok(saved.tell(file.path, session.home()))
}

/// [`wire::device::SetScreenCode`].
#[tauri::command]
pub async fn set_screen_code(
    session: State<'_, Session>,
    args: Args<device::SetScreenCode>,
) -> CommandResult<device::SetScreenCode> {
    session.outside_sample(|folder, moment| {
        screen_lock::choose(folder, &args)?;
        folder.app_state(moment)
    })
}

/// [`wire::device::LockScreen`].
#[tauri::command]
pub async fn lock_screen(session: State<'_, Session>, _args: Args<device::LockScreen>) -> CommandResult<device::LockScreen> {
    session.even_if_locked(|folder, moment| {
        screen_lock::lock(folder);
        folder.app_state(moment)
    })
}

/// [`wire::device::UnlockScreen`].
#[tauri::command]
pub async fn unlock_screen(
    session: State<'_, Session>,
    args: Args<device::UnlockScreen>,
) -> CommandResult<device::UnlockScreen> {
    session.even_if_locked(|folder, moment| {
        screen_lock::unlock(folder, &args.code)?;
        folder.app_state(moment)
    })
}

/// [`wire::device::EraseEverything`]. The web view of this window is running at that time.
#[tauri::command]
pub async fn erase_everything(
    app: AppHandle,
    session: State<'_, Session>,
    args: Args<device::EraseEverything>,
) -> CommandResult<device::EraseEverything> {
    let state = session.outside_sample(|folder, moment| own_data::erase(folder, moment, args, own_data::WebView::Open))?;
    background::forget(&app);
    Ok(state)
}

/// [`wire::device::ShowBackgroundState`].
#[tauri::command]
pub async fn background_state(
    app: AppHandle,
    _args: Args<device::ShowBackgroundState>,
) -> CommandResult<device::ShowBackgroundState> {
    Ok(background::show(&app))
}

/// [`wire::device::SetAtLogin`].
#[tauri::command]
pub async fn set_at_login(app: AppHandle, args: Args<device::SetAtLogin>) -> CommandResult<device::SetAtLogin> {
    background::at_login(&app, args.on)
}

/// [`wire::device::Leave`].
#[tauri::command]
pub async fn leave(app: AppHandle, args: Args<device::Leave>) -> CommandResult<device::Leave> {
    background::leave(&app, args);
    Ok(())
}
