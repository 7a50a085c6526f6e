//! Commands with which the clinic receives summaries.

use super::{Args, CommandResult};
use crate::arriving::{Arriving, Going, nothing_begun};
use crate::door::Door;
use crate::folder_dialog;
use crate::session::Session;
use actions::clinic::receiving as action;
use tauri::{AppHandle, State};
use wire::receiving;

/// [`wire::receiving::Receive`].
#[tauri::command]
pub async fn receive(
    session: State<'_, Session>,
    door: State<'_, Door>,
    arriving: State<'_, Arriving>,
    args: Args<receiving::Receive>,
) -> CommandResult<receiving::Receive> {
    door.used();
    let begun = arriving.going();
    let going = if args.first { Going::default() } else { begun.ok_or_else(nothing_begun)? };
    let add = move || Ok(going.add(action::from_window(args.files), args.last));
    let mut going = super::without_folder(add).await?;
    session.with(|folder, moment| {
        let received = going.take_in(folder, moment)?;
        arriving.go_on((!received.last).then_some(going));
        Ok(received)
    })
}

/// [`wire::receiving::ChooseFolder`].
#[tauri::command]
pub async fn choose_folder(
    app: AppHandle,
    session: State<'_, Session>,
    door: State<'_, Door>,
    arriving: State<'_, Arriving>,
    _args: Args<receiving::ChooseFolder>,
) -> CommandResult<receiving::ChooseFolder> {
    door.used();
    let locale = session.with(|folder, _| Ok(folder.locale()))?;
    let chosen = folder_dialog::choose(&app, actions::platform::words(locale)).await;
    // Somebody who looks for a folder for a long time has not gone away.
    door.used();
    Ok(chosen.map(|folder| arriving.name(&[folder])))
}

/// [`wire::receiving::ReceiveNamed`].
#[tauri::command]
pub async fn receive_named(
    session: State<'_, Session>,
    door: State<'_, Door>,
    arriving: State<'_, Arriving>,
    args: Args<receiving::ReceiveNamed>,
) -> CommandResult<receiving::ReceiveNamed> {
    door.used();
    let next = arriving.next(args.begin)?;
    let mut going = super::without_folder(move || Ok(next()?.read_on())).await?;
    session.with(|folder, moment| {
        let received = going.take_in(folder, moment)?;
        // While the folder is held: who locks the clinic next finds what was decrypted, and drops it.
        arriving.go_on((!received.last).then_some(going));
        Ok(received)
    })
}

/// [`wire::receiving::StopReceiving`].
#[tauri::command]
pub async fn stop_receiving(
    arriving: State<'_, Arriving>,
    _args: Args<receiving::StopReceiving>,
) -> CommandResult<receiving::StopReceiving> {
    arriving.go_on(None);
    Ok(())
}
