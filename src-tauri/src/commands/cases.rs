//! Commands for a patient's case.

use super::{Args, CommandResult};
use crate::saved_files::SavedFiles;
use crate::session::Session;
use actions::clinic::{cases, issuing, reporting};
use tauri::State;
use wire::cases::{CloseCase, RenamePatient, ReopenCase, SaveLetter, ShowCase, ShowIssued};

/// [`ShowCase`].
#[tauri::command]
pub async fn patient_case(session: State<'_, Session>, args: Args<ShowCase>) -> CommandResult<ShowCase> {
    session.with(|folder, moment| cases::page(folder, moment, &args.code))
}

/// [`CloseCase`].
#[tauri::command]
pub async fn close_case(session: State<'_, Session>, args: Args<CloseCase>) -> CommandResult<CloseCase> {
    session.with(|folder, moment| cases::close(folder, moment, &args))
}

/// [`ReopenCase`].
#[tauri::command]
pub async fn reopen_case(session: State<'_, Session>, args: Args<ReopenCase>) -> CommandResult<ReopenCase> {
    session.with(|folder, moment| cases::reopen(folder, moment, &args.code))
}

/// [`SaveLetter`].
#[tauri::command]
pub async fn save_letter(
    session: State<'_, Session>,
    saved: State<'_, SavedFiles>,
    args: Args<SaveLetter>,
) -> CommandResult<SaveLetter> {
    let what = (args.code.as_str(), args.lines.as_slice(), args.letter);
    let file = session.with(|folder, moment| reporting::save_letter(folder, moment, what, None))?;
    Ok(saved.tell(file.path, session.home()))
}

/// [`RenamePatient`].
#[tauri::command]
pub async fn rename_patient(session: State<'_, Session>, args: Args<RenamePatient>) -> CommandResult<RenamePatient> {
    session.with(|folder, moment| cases::rename(folder, moment, &args))
}

/// [`ShowIssued`].
#[tauri::command]
pub async fn show_issued(
    session: State<'_, Session>,
    saved: State<'_, SavedFiles>,
    args: Args<ShowIssued>,
) -> CommandResult<ShowIssued> {
    let card = session.with(|folder, moment| issuing::save_again(folder, moment, &args.code, Some(args.revision), None))?;
    Ok(card.with_files(|file| saved.tell(file, session.home())))
}
