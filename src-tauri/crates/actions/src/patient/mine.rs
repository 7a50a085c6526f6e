//! Everything that this copy holds about its person: handed over in plain, and erased.

use super::plans::{self, Carried};
use super::reminders;
use crate::{Answer, House, Moment, outside, refuse};
use chrono::Duration;
use exercises::summary::{ItemDay, MAX_DAYS, Period, Sealing, reduce};
use format::mine::{Held, Mine, files};
use std::path::Path;
pub use store::WebView;
use wire::Failure;
use wire::house::{Role, Situation};
use wire::own::EraseAsk;
use wire::patient::Saved;

/// Writes everything into a new folder at `dir`, or into one of its own in the folder for what is saved.
///
/// # Errors
/// [`Failure::FolderOccupied`] where `dir` holds something; then nothing is written.
pub fn export(house: &House, moment: &Moment, dir: Option<&Path>) -> Answer<Vec<Saved>> {
    let carried = plans::all(house)?;
    let first = carried.first().ok_or(Failure::NoPlan)?;
    let reminders = reminders::settings(house)?;
    let read = house.read.borrow();
    let mine = Mine {
        program: env!("CARGO_PKG_VERSION"),
        made: moment.now,
        log: first.log,
        lang: house.lang(),
        plans: carried.iter().map(|one| held(one, moment)).collect(),
        entries: read.entries(),
        reminders: &reminders,
    };
    let files = files(&mine);
    let dir = dir.map_or_else(|| outside::free_name(house, moment, "carryover", ""), Path::to_path_buf);
    outside::write_folder(&dir, &files)?;
    let saved =
        |(name, bytes): &(&str, Vec<u8>)| Saved { path: dir.join(name).display().to_string(), bytes: bytes.len() as u64 };
    Ok(files.iter().map(saved).collect())
}

fn held<'a>(one: &'a Carried, moment: &Moment) -> Held<'a> {
    Held {
        fingerprint: vault::fingerprint(&one.verify_key, &one.recipient),
        revisions: &one.revisions,
        followed: &one.followed,
        catalogue: &one.catalogue,
        days: days(one, moment),
    }
}

/// How every slot went that has closed, by the same reduction as a summary's. A summary has a limit of days; here it is made
/// as often as it takes.
fn days(one: &Carried, moment: &Moment) -> Vec<ItemDay> {
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

/// Erases everything of this copy, for good; the folder is then as a new one.
///
/// # Errors
/// [`Failure::NotConfirmed`] unless it was asked for in so many words. Once it has begun, a failure leaves the rest to the
/// next start.
pub fn erase(house: &mut House, moment: &Moment, ask: EraseAsk, web_view: WebView) -> Answer<Situation> {
    house.must_be(Role::Patient)?;
    let dir = house.dir();
    if !ask.everything {
        return Err(Failure::NotConfirmed { home: dir.display().to_string() });
    }
    house.home.erase(web_view).map_err(refuse::store(&dir))?;
    house.role = None;
    house.open_slot = None;
    house.read.take();
    house.situation(moment)
}
