//! The sealed summary for the visit.

use super::plans::{self, Carried};
use crate::{Answer, House, Moment, outside, refuse};
use exercises::log::What;
use exercises::summary::{MAX_NOTE, Period, Sealing, Summary, reduce};
use std::path::Path;
use store::table;
use wire::Failure;
use wire::patient::{Saved, SealAsk};

/// Exactly what a summary of that period would hand over; nothing is sealed.
pub fn preview(house: &House, moment: &Moment, ask: &SealAsk) -> Answer<Summary> {
    let one = plans::one(house, Some(ask.plan))?;
    summary(&one, moment, ask, one.followed.history.counter + 1)
}

/// Seals a summary and writes it to `path`, or into the folder for what is saved.
///
/// The counter is taken and logged in one step before the file is written: a number is never used for two summaries, and a
/// disk that fills up in that very moment only leaves a number unused. A path that cannot be written is told before.
pub fn seal(house: &mut House, moment: &Moment, ask: &SealAsk, path: Option<&Path>) -> Answer<Saved> {
    let one = plans::one(house, Some(ask.plan))?;
    summary(&one, moment, ask, 1)?;
    let path = path.map_or_else(|| outside::free_name(house, moment, "summary", ".age"), Path::to_path_buf);
    outside::could_write(&path)?;
    let counter = next_counter(house, moment, &one)?;
    let summary = summary(&one, moment, ask, counter)?;
    let sealed = vault::summary::seal(&summary, &one.secret, &one.recipient).map_err(refuse::internal)?;
    outside::write(&path, &sealed)?;
    Ok(Saved { path: path.display().to_string(), bytes: sealed.len() as u64 })
}

fn next_counter(house: &mut House, moment: &Moment, one: &Carried) -> Answer<u32> {
    let dir = house.dir();
    let plan = one.plan().id;
    let taken = house.home.store_mut().transaction(|tx| {
        let counter = table::log::next_export(tx)?;
        let payload = format::entry::write(&What::Sealed { counter });
        let entry = table::entry::NewEntry {
            plan: &plan.0,
            at_ms: moment.now.utc_ms,
            offset_s: moment.now.offset_s,
            payload: &payload,
        };
        table::entry::append(tx, &entry)?;
        Ok(counter)
    });
    taken.map_err(refuse::store(&dir))
}

fn summary(one: &Carried, moment: &Moment, ask: &SealAsk, counter: u32) -> Answer<Summary> {
    let note = ask.note.as_deref().map(str::trim).filter(|note| !note.is_empty());
    if note.is_some_and(|note| note.chars().count() > MAX_NOTE) {
        return Err(Failure::TextUnfit { most: MAX_NOTE as u16 });
    }
    let period = Period { from: ask.from.unwrap_or(one.plan().start), until: ask.until };
    let sealing = Sealing { log: one.log, period, now: moment.now, counter, note: note.map(str::to_owned) };
    let reduced = reduce(&one.followed.history, &one.revisions, &one.catalogue, &moment.zone, sealing);
    reduced.ok_or(Failure::EmptyPeriod)
}
