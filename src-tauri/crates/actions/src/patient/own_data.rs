//! Exports everything that this copy holds about its person, unencrypted; and erases it.

use super::plans::{self, FollowedPlan};
use super::reminders;
use crate::data_folder::settle_in;
use crate::{ActionResult, DataFolder, Moment, Saved, platform, refuse};
use chrono::Duration;
use exercises::id::LogId;
use exercises::summary::{ItemDay, MAX_DAYS, Period, Sealing, reduce};
use format::own_data::{OwnData, PlanData, files};
use std::path::Path;
pub use store::WebView;
use wire::Failure;
use wire::app::{AppState, Role};
use wire::device::EraseRequest;

/// Writes everything into a new folder at `dir`, or into a new one in the folder for saved files.
///
/// # Errors
/// [`Failure::FolderOccupied`] if `dir` is not empty; then nothing is written.
pub fn export(folder: &DataFolder, moment: &Moment, dir: Option<&Path>) -> ActionResult<Vec<Saved>> {
    let followed = plans::all_at(folder, moment)?;
    let first = followed.first().ok_or(Failure::NoPlan)?;
    let reminders = reminders::settings(folder)?;
    let read = folder.plan_cache.borrow();
    let own_data = OwnData {
        program: env!("CARGO_PKG_VERSION"),
        made: moment.now,
        log: first.log,
        lang: folder.locale().lang(),
        plans: followed.iter().map(|one| held(one, moment)).collect(),
        entries: read.entries(),
        reminders: &reminders,
    };
    let files = files(&own_data);
    let dir = dir.map_or_else(|| platform::free_name(folder, moment, "carryover", ""), Path::to_path_buf);
    platform::write_folder(&dir, &files)?;
    let saved =
        |(name, bytes): &(&str, Vec<u8>)| Saved { path: dir.join(name).display().to_string(), bytes: bytes.len() as u64 };
    Ok(files.iter().map(saved).collect())
}

/// The id of this copy's log, by which the clinic tells the devices of one person apart; `None` before a card is taken.
pub fn device_number(folder: &DataFolder) -> ActionResult<Option<LogId>> {
    Ok(plans::all(folder)?.first().map(|one| one.log))
}

fn held<'a>(one: &'a FollowedPlan, moment: &Moment) -> PlanData<'a> {
    PlanData {
        fingerprint: vault::fingerprint(&one.verify_key, &one.recipient),
        revisions: &one.revisions,
        followed: &one.followed,
        catalogue: &one.catalogue,
        days: days(one, moment),
    }
}

/// The outcome of every slot that has closed, computed in the same way as for a summary. A summary has a limit of days, so the
/// computation is repeated as often as necessary.
fn days(one: &FollowedPlan, moment: &Moment) -> Vec<ItemDay> {
    let stretch = Duration::days(i64::from(MAX_DAYS));
    let starts = std::iter::successors(Some(one.plan().header.start), |from| from.checked_add_signed(stretch));
    let starts = starts.take_while(|from| *from <= moment.now.date());
    let summaries = starts.filter_map(|from| {
        let period = Period { from, until: from + stretch - Duration::days(1) };
        let sealing = Sealing { log: one.log, period, now: moment.now, counter: 0, note: None };
        reduce(&one.followed.history, &one.revisions, &one.catalogue, &moment.zone, sealing)
    });
    summaries.flat_map(|summary| summary.days).collect()
}

/// Erases everything of this copy irrevocably; the folder is then like a new one.
///
/// # Errors
/// [`Failure::NotConfirmed`] unless the request is explicitly confirmed. If a failure occurs after erasing has begun, the next start
/// erases the rest.
pub fn erase(folder: &mut DataFolder, moment: &Moment, request: EraseRequest, web_view: WebView) -> ActionResult<AppState> {
    folder.require_role(Role::Patient)?;
    let dir = folder.dir();
    if !request.everything {
        return Err(Failure::NotConfirmed { home: dir.display().to_string() });
    }
    folder.home.erase(web_view).map_err(refuse::store(&dir))?;
    settle_in(&mut folder.home)?;
    folder.role = None;
    folder.open_slot = None;
    folder.backed_up = None;
    folder.plan_cache.take();
    folder.looked_at.take();
    folder.app_state(moment)
}
