//! Commands of the clinician's window.

use super::{Args, CommandResult};
use crate::session::Session;
use crate::window;
use actions::clinic::{drafting, issuing, lock, patients, receiving, reviewing};
use tauri::{AppHandle, State};
use wire::clinic;

/// [`wire::clinic::Start`].
#[tauri::command]
pub async fn clinic_start(
    app: AppHandle,
    session: State<'_, Session>,
    args: Args<clinic::Start>,
) -> CommandResult<clinic::Start> {
    let state = session.with(|folder, moment| {
        lock::start(folder, &args.name, args.phone.as_deref(), args.passphrase)?;
        folder.app_state(moment)
    })?;
    window::fit_to_side(&app);
    Ok(state)
}

/// [`wire::clinic::SetPhone`].
#[tauri::command]
pub async fn clinic_phone(session: State<'_, Session>, args: Args<clinic::SetPhone>) -> CommandResult<clinic::SetPhone> {
    session.with(|folder, moment| {
        lock::set_phone(folder, &args.phone)?;
        folder.app_state(moment)
    })
}

/// [`wire::clinic::Unlock`].
#[tauri::command]
pub async fn clinic_unlock(session: State<'_, Session>, args: Args<clinic::Unlock>) -> CommandResult<clinic::Unlock> {
    session.with(|folder, moment| {
        lock::unlock(folder, args.passphrase)?;
        folder.app_state(moment)
    })
}

/// [`wire::clinic::ShowPatients`].
#[tauri::command]
pub async fn patients(
    session: State<'_, Session>,
    _args: Args<clinic::ShowPatients>,
) -> CommandResult<clinic::ShowPatients> {
    session.with(|folder, _| patients::list(folder))
}

/// [`wire::clinic::Add`].
#[tauri::command]
pub async fn add_patient(session: State<'_, Session>, args: Args<clinic::Add>) -> CommandResult<clinic::Add> {
    session.with(|folder, _| patients::add(folder, &args))
}

/// [`wire::clinic::BeginPlan`].
#[tauri::command]
pub async fn draft(session: State<'_, Session>, args: Args<clinic::BeginPlan>) -> CommandResult<clinic::BeginPlan> {
    session.with(|folder, moment| drafting::draft(folder, moment, &args.code))
}

/// [`wire::clinic::KeepDraft`].
#[tauri::command]
pub async fn keep_draft(session: State<'_, Session>, args: Args<clinic::KeepDraft>) -> CommandResult<clinic::KeepDraft> {
    session.with(|folder, moment| drafting::keep(folder, moment, args))
}

/// [`wire::clinic::DiscardDraft`].
#[tauri::command]
pub async fn discard_draft(
    session: State<'_, Session>,
    args: Args<clinic::DiscardDraft>,
) -> CommandResult<clinic::DiscardDraft> {
    session.with(|folder, moment| drafting::discard(folder, moment, &args.code))
}

/// [`wire::clinic::CheckPlan`].
#[tauri::command]
pub async fn check_plan(session: State<'_, Session>, args: Args<clinic::CheckPlan>) -> CommandResult<clinic::CheckPlan> {
    session.with(|folder, moment| drafting::problems(folder, moment, &args.code, &args.prescription))
}

/// [`wire::clinic::Issue`].
#[tauri::command]
pub async fn issue(session: State<'_, Session>, args: Args<clinic::Issue>) -> CommandResult<clinic::Issue> {
    session.with(|folder, moment| issuing::issue(folder, moment, &args, None))
}

/// [`wire::clinic::Receive`].
#[tauri::command]
pub async fn receive(session: State<'_, Session>, args: Args<clinic::Receive>) -> CommandResult<clinic::Receive> {
    session.with(|folder, _| receiving::receive(folder, receiving::from_window(&args.files)))
}

/// [`wire::clinic::ShowReview`].
#[tauri::command]
pub async fn review(session: State<'_, Session>, args: Args<clinic::ShowReview>) -> CommandResult<clinic::ShowReview> {
    session.with(|folder, moment| reviewing::page(folder, moment, &args.code))
}
