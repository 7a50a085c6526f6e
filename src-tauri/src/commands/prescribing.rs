//! Commands for what a clinic prescribes from.

use super::{Args, CommandResult};
use crate::saved_files::SavedFiles;
use crate::session::Session;
use actions::clinic::{own_drafts, own_exercises, sets};
use tauri::State;
use wire::prescribing;

/// [`wire::prescribing::ShowOwn`].
#[tauri::command]
pub async fn own_exercises(
    session: State<'_, Session>,
    _args: Args<prescribing::ShowOwn>,
) -> CommandResult<prescribing::ShowOwn> {
    session.with(|folder, _| own_exercises::list(folder))
}

/// [`wire::prescribing::EditOwn`].
#[tauri::command]
pub async fn edit_own_exercise(
    session: State<'_, Session>,
    args: Args<prescribing::EditOwn>,
) -> CommandResult<prescribing::EditOwn> {
    session.with(|folder, _| own_exercises::edit(folder, &args.name))
}

/// [`wire::prescribing::SaveOwn`].
#[tauri::command]
pub async fn save_own_exercise(
    session: State<'_, Session>,
    args: Args<prescribing::SaveOwn>,
) -> CommandResult<prescribing::SaveOwn> {
    session.with(|folder, _| own_exercises::save_edited(folder, &args))
}

/// [`wire::prescribing::ImportOwn`].
#[tauri::command]
pub async fn import_own_exercises(
    session: State<'_, Session>,
    args: Args<prescribing::ImportOwn>,
) -> CommandResult<prescribing::ImportOwn> {
    session.with(|folder, _| own_exercises::import(folder, &args))
}

/// [`wire::prescribing::ExportOwn`].
#[tauri::command]
pub async fn export_own_exercise(
    session: State<'_, Session>,
    saved: State<'_, SavedFiles>,
    args: Args<prescribing::ExportOwn>,
) -> CommandResult<prescribing::ExportOwn> {
    let file = session.with(|folder, moment| own_exercises::export(folder, moment, &args.name))?;
    Ok(saved.tell(file.path, session.home()))
}

/// [`wire::prescribing::RemoveOwn`].
#[tauri::command]
pub async fn remove_own_exercise(
    session: State<'_, Session>,
    args: Args<prescribing::RemoveOwn>,
) -> CommandResult<prescribing::RemoveOwn> {
    session.with(|folder, _| own_exercises::remove(folder, &args.name))
}

/// [`wire::prescribing::KeepOwnDraft`].
#[tauri::command]
pub async fn keep_own_draft(
    session: State<'_, Session>,
    args: Args<prescribing::KeepOwnDraft>,
) -> CommandResult<prescribing::KeepOwnDraft> {
    session.with(|folder, _| own_drafts::keep(folder, args))
}

/// [`wire::prescribing::DiscardOwnDraft`].
#[tauri::command]
pub async fn discard_own_draft(
    session: State<'_, Session>,
    args: Args<prescribing::DiscardOwnDraft>,
) -> CommandResult<prescribing::DiscardOwnDraft> {
    session.with(|folder, _| own_drafts::discard(folder, &args))
}

/// [`wire::prescribing::ShowSets`].
#[tauri::command]
pub async fn sets(session: State<'_, Session>, _args: Args<prescribing::ShowSets>) -> CommandResult<prescribing::ShowSets> {
    session.with(|folder, _| sets::list(folder))
}

/// [`wire::prescribing::SaveSet`].
#[tauri::command]
pub async fn save_set(session: State<'_, Session>, args: Args<prescribing::SaveSet>) -> CommandResult<prescribing::SaveSet> {
    session.with(|folder, moment| sets::save(folder, moment, &args))
}

/// [`wire::prescribing::ImportSet`].
#[tauri::command]
pub async fn import_set(
    session: State<'_, Session>,
    args: Args<prescribing::ImportSet>,
) -> CommandResult<prescribing::ImportSet> {
    session.with(|folder, moment| sets::import(folder, moment, &args))
}

/// [`wire::prescribing::ExportSet`].
#[tauri::command]
pub async fn export_set(
    session: State<'_, Session>,
    saved: State<'_, SavedFiles>,
    args: Args<prescribing::ExportSet>,
) -> CommandResult<prescribing::ExportSet> {
    let file = session.with(|folder, moment| sets::export(folder, moment, &args.name, None))?;
    Ok(saved.tell(file.path, session.home()))
}

/// [`wire::prescribing::RemoveSet`].
#[tauri::command]
pub async fn remove_set(
    session: State<'_, Session>,
    args: Args<prescribing::RemoveSet>,
) -> CommandResult<prescribing::RemoveSet> {
    session.with(|folder, _| sets::remove(folder, &args.name))
}

/// [`wire::prescribing::UseSet`].
#[tauri::command]
pub async fn use_set(session: State<'_, Session>, args: Args<prescribing::UseSet>) -> CommandResult<prescribing::UseSet> {
    session.with(|folder, moment| sets::put_into_plan(folder, moment, &args))
}
