//! Commands for both sides of the program.

use super::{Args, CommandResult};
use crate::saved_files::SavedFiles;
use crate::session::Session;
use crate::{file_manager, window};
use actions::{backup, platform};
use tauri::{AppHandle, State};
use wire::Failure;
use wire::app::{self, Backups, Restored, SalvageReport};
use wire::saved::Shown;

/// [`wire::app::ShowAppState`].
#[tauri::command]
pub async fn app_state(session: State<'_, Session>, _args: Args<app::ShowAppState>) -> CommandResult<app::ShowAppState> {
    session.even_if_locked(|folder, moment| folder.app_state(moment))
}

/// [`wire::app::ChooseRole`].
#[tauri::command]
pub async fn choose_role(
    app: AppHandle,
    session: State<'_, Session>,
    args: Args<app::ChooseRole>,
) -> CommandResult<app::ChooseRole> {
    let state = session.with(|folder, moment| {
        folder.choose_role(args.role)?;
        folder.app_state(moment)
    })?;
    window::fit_to_side(&app);
    Ok(state)
}

/// [`wire::app::ShowSample`].
#[tauri::command]
pub async fn show_sample(session: State<'_, Session>, args: Args<app::ShowSample>) -> CommandResult<app::ShowSample> {
    session.show_sample(args.begin)?;
    session.with(|folder, moment| folder.app_state(moment))
}

/// [`wire::app::ChooseLocale`].
#[tauri::command]
pub async fn choose_locale(session: State<'_, Session>, args: Args<app::ChooseLocale>) -> CommandResult<app::ChooseLocale> {
    session.choose_locale(args.tag.as_deref())?;
    session.even_if_locked(|folder, moment| folder.app_state(moment))
}

/// [`wire::app::ShowDataFolder`].
#[tauri::command]
pub async fn data_folder(
    session: State<'_, Session>,
    _args: Args<app::ShowDataFolder>,
) -> CommandResult<app::ShowDataFolder> {
    session.with_own_folder(|folder, _| Ok(folder.dir().display().to_string()))
}

/// [`wire::app::ShowBackups`].
#[tauri::command]
pub async fn backups(
    session: State<'_, Session>,
    saved: State<'_, SavedFiles>,
    _args: Args<app::ShowBackups>,
) -> CommandResult<app::ShowBackups> {
    let Backups { last, fault, readable } = session.outside_sample(|folder, moment| backup::show(folder, moment))?;
    Ok(Backups { last: last.map(|(day, file)| (day, saved.tell(file, session.home()))), fault, readable })
}

/// [`wire::app::SaveBackup`].
#[tauri::command]
pub async fn save_backup(
    session: State<'_, Session>,
    saved: State<'_, SavedFiles>,
    _args: Args<app::SaveBackup>,
) -> CommandResult<app::SaveBackup> {
    let file = session.outside_sample(|folder, moment| backup::save(folder, moment, None))?;
    Ok(saved.tell(file.path, session.home()))
}

/// [`wire::app::ShowBackupDays`].
#[tauri::command]
pub async fn backup_days(
    session: State<'_, Session>,
    _args: Args<app::ShowBackupDays>,
) -> CommandResult<app::ShowBackupDays> {
    backup::days_in(session.home())
}

/// [`wire::app::RestoreBackup`].
#[tauri::command]
pub async fn restore_backup(
    app: AppHandle,
    session: State<'_, Session>,
    saved: State<'_, SavedFiles>,
    args: Args<app::RestoreBackup>,
) -> CommandResult<app::RestoreBackup> {
    let restored = session
        .replace_folder(|home, moment| backup::restore_chosen(home, &args, moment, platform::remembered().as_deref()))?;
    window::fit_to_side(&app);
    Ok(Restored { before: restored.before.map(|file| saved.tell(file, session.home())) })
}

/// [`wire::app::Salvage`].
#[tauri::command]
pub async fn salvage(
    app: AppHandle,
    session: State<'_, Session>,
    saved: State<'_, SavedFiles>,
    _args: Args<app::Salvage>,
) -> CommandResult<app::Salvage> {
    let SalvageReport { kept, tables } =
        session.replace_folder(|home, moment| backup::salvage(home, moment, platform::remembered().as_deref()))?;
    window::fit_to_side(&app);
    Ok(SalvageReport { kept: saved.tell(kept, session.home()), tables })
}

/// [`wire::app::ShowInFolder`].
#[tauri::command]
pub async fn show_in_folder(
    session: State<'_, Session>,
    saved: State<'_, SavedFiles>,
    args: Args<app::ShowInFolder>,
) -> CommandResult<app::ShowInFolder> {
    // Whoever is kept away from the window by its code is shown no files either.
    session.with(|_, _| Ok(()))?;
    let Some(file) = saved.file(args.number) else { return Ok(Shown::Gone) };
    let shown = tauri::async_runtime::spawn_blocking(move || file_manager::show(&file)).await;
    shown.map_err(|error| Failure::Internal { detail: error.to_string() })
}

/// [`wire::app::ShowCatalogue`].
#[tauri::command]
pub async fn catalogue(session: State<'_, Session>, _args: Args<app::ShowCatalogue>) -> CommandResult<app::ShowCatalogue> {
    session.with(|folder, _| Ok(folder.catalogue().exercises.clone()))
}
