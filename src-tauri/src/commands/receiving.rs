//! Commands with which the clinic receives summaries.

use super::{Args, CommandResult};
use crate::arriving::{Arriving, Going, Part, nothing_begun};
use crate::door::Door;
use crate::folder_dialog;
use crate::session::Session;
use actions::clinic::receiving as action;
use tauri::{AppHandle, State};
use wire::receiving::{self, Receipt, Received};

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
    let Part { incoming, rest, .. } = super::without_folder(add).await?;
    let receipts = session.with(|folder, moment| action::take_in(folder, moment, incoming))?;
    arriving.go_on(rest.filter(|_| !is_over(&receipts)));
    Ok(receipts)
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
    arriving.name(chosen.as_slice());
    Ok(chosen.is_some())
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
    let (begun, named) = (arriving.going(), arriving.named());
    let read = move || Ok(if args.first { Going::of(&named)? } else { begun.ok_or_else(nothing_begun)? }.next());
    let Part { incoming, rest, done, of, passed_over } = super::without_folder(read).await?;
    let receipts = session.with(|folder, moment| action::take_in(folder, moment, incoming))?;
    let last = rest.is_none() || is_over(&receipts);
    arriving.go_on(rest.filter(|_| !last));
    Ok(Received { receipts, done, of, passed_over, last })
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

fn is_over(receipts: &[Receipt]) -> bool {
    receipts.iter().any(Receipt::ends_receiving)
}
