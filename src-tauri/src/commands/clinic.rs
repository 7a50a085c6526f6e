//! What the clinician's window asks.

use super::{Answer, Args};
use crate::session::Session;
use actions::clinic::{door, drafting, issuing, patients, receiving, reviewing};
use tauri::State;
use wire::clinic;

/// [`wire::clinic::Start`].
#[tauri::command]
pub async fn clinic_start(session: State<'_, Session>, args: Args<clinic::Start>) -> Answer<clinic::Start> {
    session.with(|house, moment| {
        door::start(house, &args.name, args.passphrase)?;
        house.situation(moment)
    })
}

/// [`wire::clinic::Unlock`].
#[tauri::command]
pub async fn clinic_unlock(session: State<'_, Session>, args: Args<clinic::Unlock>) -> Answer<clinic::Unlock> {
    session.with(|house, moment| {
        door::unlock(house, args.passphrase)?;
        house.situation(moment)
    })
}

/// [`wire::clinic::ShowPatients`].
#[tauri::command]
pub async fn patients(session: State<'_, Session>, _args: Args<clinic::ShowPatients>) -> Answer<clinic::ShowPatients> {
    session.with(|house, _| patients::list(house))
}

/// [`wire::clinic::Add`].
#[tauri::command]
pub async fn add_patient(session: State<'_, Session>, args: Args<clinic::Add>) -> Answer<clinic::Add> {
    session.with(|house, _| patients::add(house, &args))
}

/// [`wire::clinic::BeginPlan`].
#[tauri::command]
pub async fn draft(session: State<'_, Session>, args: Args<clinic::BeginPlan>) -> Answer<clinic::BeginPlan> {
    session.with(|house, moment| drafting::draft(house, moment, &args.code))
}

/// [`wire::clinic::CheckPlan`].
#[tauri::command]
pub async fn check_plan(session: State<'_, Session>, args: Args<clinic::CheckPlan>) -> Answer<clinic::CheckPlan> {
    session.with(|house, moment| drafting::problems(house, moment, &args.code, &args.prescription))
}

/// [`wire::clinic::Issue`].
#[tauri::command]
pub async fn issue(session: State<'_, Session>, args: Args<clinic::Issue>) -> Answer<clinic::Issue> {
    session.with(|house, moment| issuing::issue(house, moment, &args, None))
}

/// [`wire::clinic::Receive`].
#[tauri::command]
pub async fn receive(session: State<'_, Session>, args: Args<clinic::Receive>) -> Answer<clinic::Receive> {
    session.with(|house, _| receiving::receive(house, receiving::from_window(&args.files)))
}

/// [`wire::clinic::ShowReview`].
#[tauri::command]
pub async fn review(session: State<'_, Session>, args: Args<clinic::ShowReview>) -> Answer<clinic::ShowReview> {
    session.with(|house, moment| reviewing::page(house, moment, &args.code))
}
