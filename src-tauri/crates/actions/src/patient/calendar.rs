//! The slots to come for another calendar.

use super::plans;
use crate::{Answer, House, Moment, outside};
use exercises::id::PlanId;
use exercises::remind::{Of, weekly};
use format::calendar::{self, Head};
use std::path::Path;
use wire::Failure;
use wire::patient::Saved;
use words::Key;

/// Writes the slots to come of all plans, or of one, to `path`, or into the folder for what is saved.
///
/// # Errors
/// [`Failure::NothingAhead`] where there is nothing to write.
pub fn export(house: &House, moment: &Moment, plan: Option<PlanId>, path: Option<&Path>) -> Answer<Saved> {
    let carried = match plan {
        Some(plan) => vec![plans::one(house, Some(plan))?],
        None => plans::all(house)?,
    };
    if carried.is_empty() {
        return Err(Failure::NoPlan);
    }
    let of = carried.iter().map(|one| Of { followed: &one.followed, catalogue: &one.catalogue });
    let events: Vec<_> = of.flat_map(|of| weekly(of, moment.now, &moment.zone)).collect();
    if events.is_empty() {
        return Err(Failure::NothingAhead);
    }
    let head = Head {
        version: env!("CARGO_PKG_VERSION"),
        made: moment.now,
        // Whatever changes the events, a card or excused days, is an entry of the log.
        sequence: house.read.borrow().entries().last().map_or(0, |last| last.n),
        title: outside::words(house.lang()).text(Key::ReminderTitle),
    };
    let bytes = calendar::write(&events, head).into_bytes();
    let path = path.map_or_else(|| outside::free_name(house, moment, "calendar", ".ics"), Path::to_path_buf);
    outside::write(&path, &bytes)?;
    Ok(Saved { path: path.display().to_string(), bytes: bytes.len() as u64 })
}
