//! What both sides of the window ask.

use super::{Answer, Args};
use crate::session::Session;
use crate::window;
use tauri::{AppHandle, State};
use wire::house;

/// [`wire::house::Situate`].
#[tauri::command]
pub async fn situation(session: State<'_, Session>, _args: Args<house::Situate>) -> Answer<house::Situate> {
    session.with(|house, moment| house.situation(moment))
}

/// [`wire::house::ChooseRole`].
#[tauri::command]
pub async fn choose_role(
    app: AppHandle,
    session: State<'_, Session>,
    args: Args<house::ChooseRole>,
) -> Answer<house::ChooseRole> {
    let situation = session.with(|house, moment| {
        house.choose(args.role)?;
        house.situation(moment)
    })?;
    window::fit_to_side(&app);
    Ok(situation)
}

/// [`wire::house::LookAround`].
#[tauri::command]
pub async fn look_around(session: State<'_, Session>, args: Args<house::LookAround>) -> Answer<house::LookAround> {
    session.look_around(args.begin)?;
    session.with(|house, moment| house.situation(moment))
}

/// [`wire::house::ShowCatalogue`].
#[tauri::command]
pub async fn catalogue(session: State<'_, Session>, _args: Args<house::ShowCatalogue>) -> Answer<house::ShowCatalogue> {
    session.with(|house, _| Ok(house.catalogue().exercises.clone()))
}
