//! Schedules agreed to for a later day, as they lie in the settings until then.

use crate::{ActionResult, DataFolder, platform, refuse};
use chrono::NaiveDate;
use exercises::id::{ItemId, PlanId};
use exercises::log::LogEvent;
use exercises::plan::{Header, Schedule};
use format::entry;
use store::table::setting;

const TIMES_AHEAD: &str = "times-ahead";

/// Items with the schedules agreed to, where they differ from the card's.
pub(super) type Agreed = Vec<(ItemId, Schedule)>;

/// Schedules agreed to for a later day.
pub(super) struct Ahead {
    /// The plan.
    pub plan: PlanId,
    /// The first day on which they apply.
    pub from: NaiveDate,
    /// The card's revision.
    pub revision: u16,
    /// The schedules.
    pub agreed: Agreed,
}

/// The schedules agreed to for a later day while this card is in force, and that day.
pub(super) fn of_card(folder: &DataFolder, header: &Header) -> ActionResult<Option<(NaiveDate, Agreed)>> {
    let found = all(folder)?.into_iter().find(|one| (one.plan, one.revision) == (header.id, header.revision));
    Ok(found.map(|one| (one.from, one.agreed)))
}

/// All that is agreed for a later day. A line that cannot be read is left out: then the times stay as they are.
pub(super) fn all(folder: &DataFolder) -> ActionResult<Vec<Ahead>> {
    Ok(folder.setting(TIMES_AHEAD)?.unwrap_or_default().lines().filter_map(read).collect())
}

fn read(line: &str) -> Option<Ahead> {
    let mut words = line.split(' ');
    let (plan, from, taken) = (words.next()?.parse().ok()?, words.next()?.parse().ok()?, words.next()?);
    match entry::read(&platform::from_base64(taken).ok()?).ok()? {
        LogEvent::Taken { revision, agreed } => Some(Ahead { plan, from, revision, agreed }),
        _ => None,
    }
}

/// Replaces all that is agreed for a later day.
pub(super) fn keep(folder: &mut DataFolder, all: &[Ahead]) -> ActionResult<()> {
    let line = |one: &Ahead| {
        let taken = entry::write(&LogEvent::Taken { revision: one.revision, agreed: one.agreed.clone() });
        format!("{} {} {}\n", one.plan, one.from, platform::to_base64(&taken))
    };
    let text: String = all.iter().map(line).collect();
    let dir = folder.dir();
    let kept = folder.home.store_mut().transaction(|tx| setting::put(tx, TIMES_AHEAD, &text));
    kept.map_err(refuse::store(&dir))?;
    folder.plan_cache.borrow_mut().forget_plans();
    Ok(())
}
