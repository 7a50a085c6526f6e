//! Exports the coming slots for another calendar.

use super::plans;
use crate::{ActionResult, DataFolder, Moment, Saved, platform};
use exercises::id::PlanId;
use exercises::remind::{PlanInForce, weekly};
use format::calendar::{self, Head};
use std::path::Path;
use wire::Failure;
use words::Key;

/// Writes the coming slots of all plans, or of one, to `path`, or into the folder for saved files.
///
/// # Errors
/// [`Failure::NothingAhead`] if there are no slots to write.
pub fn export(folder: &DataFolder, moment: &Moment, plan: Option<PlanId>, path: Option<&Path>) -> ActionResult<Saved> {
    let followed = match plan {
        Some(plan) => vec![plans::one_at(folder, moment, Some(plan))?],
        None => plans::all_at(folder, moment)?,
    };
    if followed.is_empty() {
        return Err(Failure::NoPlan);
    }
    let of = followed.iter().map(|one| PlanInForce { followed: &one.followed, catalogue: &one.catalogue });
    let events: Vec<_> = of.flat_map(|of| weekly(of, moment.now, &moment.zone)).collect();
    if events.is_empty() {
        return Err(Failure::NothingAhead);
    }
    let head = Head {
        version: env!("CARGO_PKG_VERSION"),
        made: moment.now,
        // Everything that changes the events, such as a card or days off, is an entry of the log.
        sequence: folder.plan_cache.borrow().entries().last().map_or(0, |last| last.n),
        title: platform::words(folder.locale()).text(Key::CalendarEventTitle),
    };
    let bytes = calendar::write(&events, head).into_bytes();
    let path = path.map_or_else(|| platform::free_name(folder, moment, "calendar", ".ics"), Path::to_path_buf);
    platform::write(&path, &bytes)?;
    Ok(Saved { path: path.display().to_string(), bytes: bytes.len() as u64 })
}
