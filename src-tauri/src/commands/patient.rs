//! What the patient's window asks.

use super::{Answer, Args};
use crate::session::{Replays, Session};
use actions::patient::{answering, correcting, plans, recording, running, sealing, taking, today};
use tauri::State;
use wire::patient;

/// [`wire::patient::ReadCard`].
#[tauri::command]
pub async fn read_card(session: State<'_, Session>, args: Args<patient::ReadCard>) -> Answer<patient::ReadCard> {
    session.in_earnest(|house, _| taking::look(house, &args))
}

/// [`wire::patient::TakeCard`].
#[tauri::command]
pub async fn take_card(session: State<'_, Session>, args: Args<patient::TakeCard>) -> Answer<patient::TakeCard> {
    session.in_earnest(|house, moment| taking::take(house, moment, &args))
}

/// [`wire::patient::ShowToday`].
#[tauri::command]
pub async fn today(session: State<'_, Session>, _args: Args<patient::ShowToday>) -> Answer<patient::ShowToday> {
    session.with(|house, moment| today::page(house, moment))
}

/// [`wire::patient::ShowPlan`].
#[tauri::command]
pub async fn plan(session: State<'_, Session>, _args: Args<patient::ShowPlan>) -> Answer<patient::ShowPlan> {
    session.with(|house, _| plans::pages(house))
}

/// [`wire::patient::Begin`].
#[tauri::command]
pub async fn begin(session: State<'_, Session>, args: Args<patient::Begin>) -> Answer<patient::Begin> {
    session.with(|house, moment| running::begin(house, moment, &args))
}

/// [`wire::patient::Checkpoint`].
#[tauri::command]
pub async fn checkpoint(session: State<'_, Session>, args: Args<patient::Checkpoint>) -> Answer<patient::Checkpoint> {
    session.with(|house, moment| running::checkpoint(house, moment, &args))
}

/// [`wire::patient::KeepSensed`].
#[tauri::command]
pub async fn keep_sensed(session: State<'_, Session>, args: Args<patient::KeepSensed>) -> Answer<patient::KeepSensed> {
    session.with(|house, moment| running::keep_sensed(house, moment, &args))
}

/// [`wire::patient::Replay`].
#[tauri::command]
pub async fn replay(replays: State<'_, Replays>, _args: Args<patient::Replay>) -> Answer<patient::Replay> {
    Ok(replays.0.clone())
}

/// [`wire::patient::PutOff`].
#[tauri::command]
pub async fn put_off(session: State<'_, Session>, args: Args<patient::PutOff>) -> Answer<patient::PutOff> {
    session.with(|house, moment| today::put_off(house, moment, &args))
}

/// [`wire::patient::LeaveOut`].
#[tauri::command]
pub async fn leave_out(session: State<'_, Session>, args: Args<patient::LeaveOut>) -> Answer<patient::LeaveOut> {
    session.with(|house, moment| today::leave_out(house, moment, &args))
}

/// [`wire::patient::DidIt`].
#[tauri::command]
pub async fn did_it(session: State<'_, Session>, args: Args<patient::DidIt>) -> Answer<patient::DidIt> {
    session.with(|house, moment| today::did_it(house, moment, &args))
}

/// [`wire::patient::Excuse`].
#[tauri::command]
pub async fn excuse(session: State<'_, Session>, args: Args<patient::Excuse>) -> Answer<patient::Excuse> {
    session.with(|house, moment| today::excuse(house, moment, &args))
}

/// [`wire::patient::GiveAnswer`].
#[tauri::command]
pub async fn answer(session: State<'_, Session>, args: Args<patient::GiveAnswer>) -> Answer<patient::GiveAnswer> {
    session.with(|house, moment| answering::answer(house, moment, &args))
}

/// [`wire::patient::RaiseTrouble`].
#[tauri::command]
pub async fn trouble(session: State<'_, Session>, args: Args<patient::RaiseTrouble>) -> Answer<patient::RaiseTrouble> {
    session.with(|house, moment| answering::trouble(house, moment, &args))
}

/// [`wire::patient::ShowRecord`].
#[tauri::command]
pub async fn record(session: State<'_, Session>, _args: Args<patient::ShowRecord>) -> Answer<patient::ShowRecord> {
    session.with(|house, moment| recording::pages(house, moment))
}

/// [`wire::patient::PreviewSummary`].
#[tauri::command]
pub async fn preview_summary(
    session: State<'_, Session>,
    args: Args<patient::PreviewSummary>,
) -> Answer<patient::PreviewSummary> {
    session.in_earnest(|house, moment| sealing::preview(house, moment, &args))
}

/// [`wire::patient::SealSummary`].
#[tauri::command]
pub async fn seal_summary(session: State<'_, Session>, args: Args<patient::SealSummary>) -> Answer<patient::SealSummary> {
    session.in_earnest(|house, moment| sealing::seal(house, moment, &args, None))
}

/// [`wire::patient::ShowFrames`].
#[tauri::command]
pub async fn show_frames(session: State<'_, Session>, args: Args<patient::ShowFrames>) -> Answer<patient::ShowFrames> {
    session.in_earnest(|house, moment| sealing::frames(house, moment, &args))
}

/// [`wire::patient::ShowCorrectable`].
#[tauri::command]
pub async fn correctable(
    session: State<'_, Session>,
    args: Args<patient::ShowCorrectable>,
) -> Answer<patient::ShowCorrectable> {
    session.with(|house, moment| correcting::page(house, moment, &args))
}

/// [`wire::patient::Correct`].
#[tauri::command]
pub async fn correct(session: State<'_, Session>, args: Args<patient::Correct>) -> Answer<patient::Correct> {
    session.with(|house, moment| correcting::correct(house, moment, &args))
}
