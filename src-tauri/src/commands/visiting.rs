//! Commands for what is found at a visit.

use super::{Args, CommandResult};
use crate::session::Session;
use actions::clinic::{paper_diary, printing, records, visiting};
use tauri::State;
use wire::visiting::{EnterDiary, NoteFinding, Print, SaveRecord, ShowDiary, ShowVisit};

/// [`ShowVisit`].
#[tauri::command]
pub async fn visit(session: State<'_, Session>, args: Args<ShowVisit>) -> CommandResult<ShowVisit> {
    session.with(|folder, moment| visiting::page(folder, moment, &args.code))
}

/// [`NoteFinding`].
#[tauri::command]
pub async fn note_finding(session: State<'_, Session>, args: Args<NoteFinding>) -> CommandResult<NoteFinding> {
    session.with(|folder, moment| visiting::note(folder, moment, &args))
}

/// [`Print`].
#[tauri::command]
pub async fn print(session: State<'_, Session>, args: Args<Print>) -> CommandResult<Print> {
    session.with(|folder, moment| printing::save(folder, moment, &args, None))
}

/// [`ShowDiary`].
#[tauri::command]
pub async fn diary(session: State<'_, Session>, args: Args<ShowDiary>) -> CommandResult<ShowDiary> {
    session.with(|folder, moment| paper_diary::page(folder, moment, &args.code))
}

/// [`EnterDiary`].
#[tauri::command]
pub async fn enter_diary(session: State<'_, Session>, args: Args<EnterDiary>) -> CommandResult<EnterDiary> {
    session.with(|folder, moment| paper_diary::enter(folder, moment, &args))
}

/// [`SaveRecord`].
#[tauri::command]
pub async fn save_record(session: State<'_, Session>, args: Args<SaveRecord>) -> CommandResult<SaveRecord> {
    session.with(|folder, moment| records::save_from_window(folder, moment, &args))
}
