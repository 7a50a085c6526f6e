//! What the reminder loop shows next.
//!
//! The loop asks at short intervals; only a slot that is open at that moment is announced, so after sleep or a clock change
//! there is never a pile of old ones. The rules stand in [`exercises::remind`].

use super::plans::{self, append};
use super::{reminders, today};
use crate::{ActionResult, DataFolder, Moment, refuse};
use exercises::id::PlanId;
use exercises::log::{Barrier, LogEvent};
use exercises::slots::SlotRef;
use exercises::time::Stamp;
use wire::Failure;
use wire::patient::{SkipRequest, SlotRequest};

/// A reminder to show now.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Reminder {
    /// The plan.
    pub plan: PlanId,
    /// The slot.
    pub slot: SlotRef,
    /// When the slot is due.
    pub due: Stamp,
    /// About how long it takes, in seconds.
    pub takes_s: u32,
    /// How long the slot stays open from now, in milliseconds: a notification is of no use after that.
    pub open_ms: u32,
    /// Whether it comes without a sound.
    pub light: bool,
}

/// What a person chose on a reminder.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Choice {
    /// Open the slot's page.
    Open,
    /// Put it off by ten minutes.
    PutOff,
    /// Leave it out, without saying why.
    Skip,
}

/// The reminder to show at this moment, if any; showing it is logged.
pub fn due(folder: &mut DataFolder, moment: &Moment) -> ActionResult<Option<Reminder>> {
    let settings = reminders::settings(folder)?;
    let followed = plans::all(folder)?;
    let Some(found) = reminders::reminder_context(&followed, &settings, moment).due(moment.now) else { return Ok(None) };
    append(folder, found.plan, moment.now, &LogEvent::Reminded { slot: found.slot })?;
    let open_ms = found.closes.utc_ms - moment.now.utc_ms;
    let open_ms = u32::try_from(open_ms).map_err(refuse::internal)?;
    let exercises::remind::Reminder { plan, slot, due, takes_s, light, .. } = found;
    Ok(Some(Reminder { plan, slot, due, takes_s, open_ms, light }))
}

/// Whether a reminder of that slot that is being shown is still of use.
pub fn still_applies(folder: &DataFolder, moment: &Moment, plan: PlanId, slot: SlotRef) -> ActionResult<bool> {
    let settings = reminders::settings(folder)?;
    let followed = plans::all(folder)?;
    Ok(reminders::reminder_context(&followed, &settings, moment).still_applies(plan, slot, moment.now))
}

/// Does what a person chose on a reminder. Putting off or skipping a slot that was filled meanwhile changes nothing.
pub fn choose(folder: &mut DataFolder, moment: &Moment, reminder: &Reminder, choice: Choice) -> ActionResult<()> {
    let Reminder { plan, slot, .. } = *reminder;
    let done = match choice {
        Choice::Open => {
            folder.open_slot = Some(slot);
            return Ok(());
        }
        Choice::PutOff => today::put_off(folder, moment, &SlotRequest { plan, slot }),
        Choice::Skip => today::skip(folder, moment, &SkipRequest { plan, slot, reason: Barrier::RatherNotSay }),
    };
    match done {
        Ok(_) | Err(Failure::NoSuchSlot) => Ok(()),
        Err(failure) => Err(failure),
    }
}

/// When anything could next be due, in milliseconds since 1970 UTC: the loop need not look before.
pub fn next_due_ms(folder: &DataFolder, moment: &Moment) -> ActionResult<Option<i64>> {
    let settings = reminders::settings(folder)?;
    let followed = plans::all(folder)?;
    Ok(reminders::reminder_context(&followed, &settings, moment).next_possible(moment.now).map(|at| at.utc_ms))
}
