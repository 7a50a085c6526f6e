//! Commands of the patient's window.

use super::{Args, CommandResult};
use crate::saved_files::SavedFiles;
use crate::session::{Replays, Session};
use actions::patient::{answering, correcting, plans, record, refitting, running, sealing, taking, today};
use tauri::State;
use wire::patient::{self, CardSource, TakeCardRequest};

/// [`wire::patient::ReadCard`].
#[tauri::command]
pub async fn read_card(session: State<'_, Session>, args: Args<patient::ReadCard>) -> CommandResult<patient::ReadCard> {
    look_at(&session, args).await
}

async fn look_at(session: &Session, source: CardSource) -> CommandResult<patient::ReadCard> {
    let source = super::without_folder(|| taking::find(source)).await?;
    session.outside_sample(|folder, _| taking::preview(folder, &source))
}

/// [`wire::patient::TakeCard`].
#[tauri::command]
pub async fn take_card(session: State<'_, Session>, args: Args<patient::TakeCard>) -> CommandResult<patient::TakeCard> {
    let source = super::without_folder(|| taking::find(args.source)).await?;
    let request = TakeCardRequest { source, agreed: args.agreed };
    session.outside_sample(|folder, moment| taking::take(folder, moment, &request))
}

/// [`wire::patient::ShowToday`].
#[tauri::command]
pub async fn today(session: State<'_, Session>, _args: Args<patient::ShowToday>) -> CommandResult<patient::ShowToday> {
    session.with(|folder, moment| today::page(folder, moment))
}

/// [`wire::patient::ShowPlan`].
#[tauri::command]
pub async fn plan(session: State<'_, Session>, _args: Args<patient::ShowPlan>) -> CommandResult<patient::ShowPlan> {
    session.with(|folder, moment| plans::pages(folder, moment))
}

/// [`wire::patient::Refit`].
#[tauri::command]
pub async fn refit(session: State<'_, Session>, args: Args<patient::Refit>) -> CommandResult<patient::Refit> {
    session.outside_sample(|folder, moment| refitting::refit(folder, moment, &args))
}

/// [`wire::patient::Begin`].
#[tauri::command]
pub async fn begin(session: State<'_, Session>, args: Args<patient::Begin>) -> CommandResult<patient::Begin> {
    session.with(|folder, moment| running::begin(folder, moment, &args))
}

/// [`wire::patient::Checkpoint`].
#[tauri::command]
pub async fn checkpoint(session: State<'_, Session>, args: Args<patient::Checkpoint>) -> CommandResult<patient::Checkpoint> {
    session.with(|folder, moment| running::checkpoint(folder, moment, &args))
}

/// [`wire::patient::SaveSensed`].
#[tauri::command]
pub async fn save_sensed(
    session: State<'_, Session>,
    args: Args<patient::SaveSensed>,
) -> CommandResult<patient::SaveSensed> {
    session.with(|folder, moment| running::save_sensed(folder, moment, &args))
}

/// [`wire::patient::Replay`].
#[tauri::command]
pub async fn replay(replays: State<'_, Replays>, _args: Args<patient::Replay>) -> CommandResult<patient::Replay> {
    Ok(replays.0.clone())
}

/// [`wire::patient::PutOff`].
#[tauri::command]
pub async fn put_off(session: State<'_, Session>, args: Args<patient::PutOff>) -> CommandResult<patient::PutOff> {
    session.with(|folder, moment| today::put_off(folder, moment, &args))
}

/// [`wire::patient::SkipSlot`].
#[tauri::command]
pub async fn skip_slot(session: State<'_, Session>, args: Args<patient::SkipSlot>) -> CommandResult<patient::SkipSlot> {
    session.with(|folder, moment| today::skip(folder, moment, &args))
}

/// [`wire::patient::DidIt`].
#[tauri::command]
pub async fn did_it(session: State<'_, Session>, args: Args<patient::DidIt>) -> CommandResult<patient::DidIt> {
    session.with(|folder, moment| today::did_it(folder, moment, &args))
}

/// [`wire::patient::TakeDaysOff`].
#[tauri::command]
pub async fn take_days_off(
    session: State<'_, Session>,
    args: Args<patient::TakeDaysOff>,
) -> CommandResult<patient::TakeDaysOff> {
    session.with(|folder, moment| answering::take_days_off(folder, moment, &args))
}

/// [`wire::patient::GiveAnswer`].
#[tauri::command]
pub async fn answer(session: State<'_, Session>, args: Args<patient::GiveAnswer>) -> CommandResult<patient::GiveAnswer> {
    session.with(|folder, moment| answering::answer(folder, moment, &args))
}

/// [`wire::patient::TakeAnswerBack`].
#[tauri::command]
pub async fn take_answer_back(
    session: State<'_, Session>,
    args: Args<patient::TakeAnswerBack>,
) -> CommandResult<patient::TakeAnswerBack> {
    session.with(|folder, moment| answering::take_back(folder, moment, &args))
}

/// [`wire::patient::SayWellAgain`].
#[tauri::command]
pub async fn well_again(
    session: State<'_, Session>,
    args: Args<patient::SayWellAgain>,
) -> CommandResult<patient::SayWellAgain> {
    session.with(|folder, moment| answering::well_again(folder, moment, args.plan))
}

/// [`wire::patient::RaiseTrouble`].
#[tauri::command]
pub async fn trouble(
    session: State<'_, Session>,
    args: Args<patient::RaiseTrouble>,
) -> CommandResult<patient::RaiseTrouble> {
    session.with(|folder, moment| answering::trouble(folder, moment, &args))
}

/// [`wire::patient::ShowRecord`].
#[tauri::command]
pub async fn record(session: State<'_, Session>, _args: Args<patient::ShowRecord>) -> CommandResult<patient::ShowRecord> {
    session.with(|folder, moment| record::pages(folder, moment))
}

/// [`wire::patient::PreviewSummary`].
#[tauri::command]
pub async fn preview_summary(
    session: State<'_, Session>,
    args: Args<patient::PreviewSummary>,
) -> CommandResult<patient::PreviewSummary> {
    session.outside_sample(|folder, moment| sealing::preview(folder, moment, &args))
}

/// [`wire::patient::ShowSummaryBytes`].
#[tauri::command]
pub async fn summary_bytes(
    session: State<'_, Session>,
    args: Args<patient::ShowSummaryBytes>,
) -> CommandResult<patient::ShowSummaryBytes> {
    session.outside_sample(|folder, moment| sealing::bytes(folder, moment, &args))
}

/// [`wire::patient::SealSummary`].
#[tauri::command]
pub async fn seal_summary(
    session: State<'_, Session>,
    saved: State<'_, SavedFiles>,
    args: Args<patient::SealSummary>,
) -> CommandResult<patient::SealSummary> {
    let file = session.outside_sample(|folder, moment| sealing::seal(folder, moment, &args, None))?;
    Ok(saved.tell(file.path, session.home()))
}

/// [`wire::patient::ShowFrames`].
#[tauri::command]
pub async fn show_frames(
    session: State<'_, Session>,
    args: Args<patient::ShowFrames>,
) -> CommandResult<patient::ShowFrames> {
    session.outside_sample(|folder, moment| sealing::frames(folder, moment, &args))
}

/// [`wire::patient::ShowCorrectable`].
#[tauri::command]
pub async fn correctable(
    session: State<'_, Session>,
    args: Args<patient::ShowCorrectable>,
) -> CommandResult<patient::ShowCorrectable> {
    session.with(|folder, moment| correcting::page(folder, moment, &args))
}

/// [`wire::patient::Correct`].
#[tauri::command]
pub async fn correct(session: State<'_, Session>, args: Args<patient::Correct>) -> CommandResult<patient::Correct> {
    session.with(|folder, moment| correcting::correct(folder, moment, &args))
}

#[cfg(test)]
mod tests {
    use super::*;
    use actions::{Clock, platform};
    use std::sync::{Arc, mpsc};
    use std::time::Duration;
    use wire::Failure;

    /// A white pixel.
    const PICTURE: &[u8] = &[
        0x89, b'P', b'N', b'G', 13, 10, 26, 10, 0, 0, 0, 13, b'I', b'H', b'D', b'R', 0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0,
        0x3A, 0x7E, 0x9B, 0x55, 0, 0, 0, 10, b'I', b'D', b'A', b'T', 0x78, 0x9C, 0x63, 0xF8, 0x0F, 0, 1, 1, 1, 0, 0xB1,
        0x38, 0xF6, 0x14, 0, 0, 0, 0, b'I', b'E', b'N', b'D', 0xAE, 0x42, 0x60, 0x82,
    ];

    #[test]
    fn a_picture_is_decoded_while_another_command_has_the_folder() {
        let home = tempfile::tempdir().expect("a temporary folder");
        let session = Arc::new(Session::open(home.path(), Clock::system()));
        let (answer, answered) = mpsc::channel();
        let other = session.clone();
        let refused = session.with_own_folder(move |_, _| {
            std::thread::spawn(move || {
                let source = CardSource::File(platform::to_base64(PICTURE));
                let _ = answer.send(tauri::async_runtime::block_on(look_at(&other, source)));
            });
            Ok(answered.recv_timeout(Duration::from_secs(60)).expect("an answer before the folder is free"))
        });
        assert_eq!(refused, Ok(Err(Failure::NoCode)));
    }
}
