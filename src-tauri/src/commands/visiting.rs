//! Commands for what is found at a visit.

use super::{Args, CommandResult, without_folder};
use crate::saved_files::SavedFiles;
use crate::session::Session;
use actions::clinic::handing_over::{self, Patience};
use actions::clinic::{paper_diary, printing, records, visiting};
use actions::platform;
use tauri::State;
use wire::visiting::{
    EnterDiary, HandOver, NoteFinding, Print, RemoveServer, SaveRecord, SetServer, ShowDiary, ShowServer, ShowVisit,
};

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
pub async fn print(session: State<'_, Session>, saved: State<'_, SavedFiles>, args: Args<Print>) -> CommandResult<Print> {
    let file = session.with(|folder, moment| printing::save(folder, moment, &args, None))?;
    Ok(saved.tell(file.path, session.home()))
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
pub async fn save_record(
    session: State<'_, Session>,
    saved: State<'_, SavedFiles>,
    args: Args<SaveRecord>,
) -> CommandResult<SaveRecord> {
    let file = session.with(|folder, moment| records::save_from_window(folder, moment, &args))?;
    Ok(saved.tell(file.path, session.home()))
}

/// [`ShowServer`].
#[tauri::command]
pub async fn server(session: State<'_, Session>, _args: Args<ShowServer>) -> CommandResult<ShowServer> {
    session.with(|folder, _| handing_over::setting(folder))
}

/// [`SetServer`].
#[tauri::command]
pub async fn set_server(session: State<'_, Session>, args: Args<SetServer>) -> CommandResult<SetServer> {
    session.with(|folder, _| handing_over::set(folder, &args))
}

/// [`RemoveServer`].
#[tauri::command]
pub async fn remove_server(session: State<'_, Session>, _args: Args<RemoveServer>) -> CommandResult<RemoveServer> {
    session.with(|folder, _| handing_over::remove(folder))
}

/// [`HandOver`]. The folder is not locked while the server takes its time.
#[tauri::command]
pub async fn hand_over(session: State<'_, Session>, args: Args<HandOver>) -> CommandResult<HandOver> {
    let parcel = session.with(|folder, moment| {
        let words = platform::words(folder.locale());
        handing_over::parcel(folder, moment, words, &args.code, false)
    })?;
    without_folder(move || parcel.send(Patience::default())).await
}
