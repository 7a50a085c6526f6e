//! Commands of the clinician's window.

use super::{Args, CommandResult};
use crate::arriving::Arriving;
use crate::door::Door;
use crate::saved_files::SavedFiles;
use crate::session::Session;
use crate::window;
use actions::clinic::{
    clinicians, devices, drafting, idle, issuing, lock, passphrase, patients, renewing, reviewing, saved_keys,
};
use tauri::{AppHandle, State};
use wire::clinic;

/// [`wire::clinic::Start`].
#[tauri::command]
pub async fn clinic_start(
    app: AppHandle,
    session: State<'_, Session>,
    door: State<'_, Door>,
    args: Args<clinic::Start>,
) -> CommandResult<clinic::Start> {
    let state = session.with(|folder, moment| {
        lock::start_from_window(folder, args)?;
        folder.app_state(moment)
    })?;
    door.used();
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
pub async fn clinic_unlock(
    session: State<'_, Session>,
    door: State<'_, Door>,
    args: Args<clinic::Unlock>,
) -> CommandResult<clinic::Unlock> {
    door.used();
    session.with(|folder, moment| {
        lock::unlock_as(folder, args.name.as_deref(), args.passphrase)?;
        folder.app_state(moment)
    })
}

/// [`wire::clinic::ShowClinicians`].
#[tauri::command]
pub async fn clinicians(
    session: State<'_, Session>,
    _args: Args<clinic::ShowClinicians>,
) -> CommandResult<clinic::ShowClinicians> {
    session.with(|folder, _| clinicians::list(folder))
}

/// [`wire::clinic::AddClinician`].
#[tauri::command]
pub async fn add_clinician(
    session: State<'_, Session>,
    args: Args<clinic::AddClinician>,
) -> CommandResult<clinic::AddClinician> {
    session.with(|folder, _| clinicians::add(folder, &args))
}

/// [`wire::clinic::RemoveClinician`].
#[tauri::command]
pub async fn remove_clinician(
    session: State<'_, Session>,
    args: Args<clinic::RemoveClinician>,
) -> CommandResult<clinic::RemoveClinician> {
    session.with(|folder, _| clinicians::remove(folder, &args))
}

/// [`wire::clinic::Lock`].
#[tauri::command]
pub async fn clinic_lock(
    session: State<'_, Session>,
    arriving: State<'_, Arriving>,
    _args: Args<clinic::Lock>,
) -> CommandResult<clinic::Lock> {
    session.with(|folder, moment| {
        lock::lock(folder);
        arriving.go_on(None);
        folder.app_state(moment)
    })
}

/// [`wire::clinic::InUse`].
#[tauri::command]
pub async fn clinic_in_use(door: State<'_, Door>, _args: Args<clinic::InUse>) -> CommandResult<clinic::InUse> {
    door.used();
    Ok(())
}

/// [`wire::clinic::SetIdle`].
#[tauri::command]
pub async fn clinic_idle(session: State<'_, Session>, args: Args<clinic::SetIdle>) -> CommandResult<clinic::SetIdle> {
    session.with(|folder, moment| {
        idle::choose(folder, args.minutes)?;
        folder.app_state(moment)
    })
}

/// [`wire::clinic::ShowStrength`].
#[tauri::command]
pub async fn passphrase_strength(
    session: State<'_, Session>,
    args: Args<clinic::ShowStrength>,
) -> CommandResult<clinic::ShowStrength> {
    session.with(|folder, _| passphrase::strength_here(folder, &args.passphrase, args.clinic.as_deref()))
}

/// [`wire::clinic::ChangePassphrase`].
#[tauri::command]
pub async fn change_passphrase(
    session: State<'_, Session>,
    args: Args<clinic::ChangePassphrase>,
) -> CommandResult<clinic::ChangePassphrase> {
    session.with(|folder, _| passphrase::change(folder, &args.old, &args.new))
}

/// [`wire::clinic::ShowIdentity`].
#[tauri::command]
pub async fn clinic_identity(
    session: State<'_, Session>,
    args: Args<clinic::ShowIdentity>,
) -> CommandResult<clinic::ShowIdentity> {
    session.with(|folder, _| saved_keys::confirmed_identity(folder, &args.passphrase))
}

/// [`wire::clinic::ExportKeys`].
#[tauri::command]
pub async fn export_keys(
    session: State<'_, Session>,
    saved: State<'_, SavedFiles>,
    args: Args<clinic::ExportKeys>,
) -> CommandResult<clinic::ExportKeys> {
    let files = session.with(|folder, moment| saved_keys::export(folder, moment, &args.passphrase, &args.new))?;
    Ok(files.into_iter().map(|file| saved.tell(file.path, session.home())).collect())
}

/// [`wire::clinic::RenewKeys`].
#[tauri::command]
pub async fn renew_keys(session: State<'_, Session>, args: Args<clinic::RenewKeys>) -> CommandResult<clinic::RenewKeys> {
    session.with(|folder, moment| {
        renewing::renew(folder, moment, &args.passphrase)?;
        folder.app_state(moment)
    })
}

/// [`wire::clinic::ShowPatients`].
#[tauri::command]
pub async fn patients(
    session: State<'_, Session>,
    _args: Args<clinic::ShowPatients>,
) -> CommandResult<clinic::ShowPatients> {
    session.with(patients::show)
}

/// [`wire::clinic::Add`].
#[tauri::command]
pub async fn add_patient(session: State<'_, Session>, args: Args<clinic::Add>) -> CommandResult<clinic::Add> {
    session.with(|folder, moment| patients::add(folder, moment, &args))
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
    session.with(|folder, moment| drafting::check(folder, moment, &args.code, &args.prescription))
}

/// [`wire::clinic::Issue`].
#[tauri::command]
pub async fn issue(
    session: State<'_, Session>,
    saved: State<'_, SavedFiles>,
    args: Args<clinic::Issue>,
) -> CommandResult<clinic::Issue> {
    let card = session.with(|folder, moment| issuing::issue(folder, moment, &args, None))?;
    Ok(card.with_files(|file| saved.tell(file, session.home())))
}

/// [`wire::clinic::ShowCard`].
#[tauri::command]
pub async fn show_card(
    session: State<'_, Session>,
    saved: State<'_, SavedFiles>,
    args: Args<clinic::ShowCard>,
) -> CommandResult<clinic::ShowCard> {
    let card = session.with(|folder, moment| issuing::save_again(folder, moment, &args.code, None, None))?;
    Ok(card.with_files(|file| saved.tell(file, session.home())))
}

/// [`wire::clinic::SaveOtherForms`].
#[tauri::command]
pub async fn save_card_forms(
    session: State<'_, Session>,
    saved: State<'_, SavedFiles>,
    _args: Args<clinic::SaveOtherForms>,
) -> CommandResult<clinic::SaveOtherForms> {
    let files = session.with(|folder, _| issuing::save_other_forms(folder))?;
    Ok(files.into_iter().map(|file| saved.tell(file, session.home())).collect())
}

/// [`wire::clinic::RemoveCardFiles`].
#[tauri::command]
pub async fn remove_card_files(
    session: State<'_, Session>,
    _args: Args<clinic::RemoveCardFiles>,
) -> CommandResult<clinic::RemoveCardFiles> {
    session.with(|folder, _| issuing::remove_files(folder))
}

/// [`wire::clinic::Remove`].
#[tauri::command]
pub async fn remove_patient(session: State<'_, Session>, args: Args<clinic::Remove>) -> CommandResult<clinic::Remove> {
    session.with(|folder, moment| patients::remove_from_window(folder, moment, &args))
}

/// [`wire::clinic::LeaveOutDevice`].
#[tauri::command]
pub async fn leave_out_device(
    session: State<'_, Session>,
    args: Args<clinic::LeaveOutDevice>,
) -> CommandResult<clinic::LeaveOutDevice> {
    session.with(|folder, moment| {
        devices::leave_out(folder, &args.code, args.device, args.left_out)?;
        reviewing::page(folder, moment, &args.code)
    })
}

/// [`wire::clinic::ShowReview`].
#[tauri::command]
pub async fn review(session: State<'_, Session>, args: Args<clinic::ShowReview>) -> CommandResult<clinic::ShowReview> {
    session.with(|folder, moment| reviewing::page(folder, moment, &args.code))
}
