//! The next reminder that the reminder loop shows.
//!
//! The loop asks at short intervals. Only a slot that is open at that moment is reminded of, so old reminders never pile up after
//! sleep or a clock change. The rules are in [`exercises::remind`].

use super::plans::{self, append};
use super::{reminders, today};
use crate::{ActionResult, DataFolder, Moment, refuse};
use exercises::id::PlanId;
use exercises::log::{Barrier, LogEvent};
use exercises::slots::SlotRef;
use exercises::time::Stamp;
use wire::Failure;
use wire::device::MeetingRequest;
use wire::patient::{SkipRequest, SlotRequest};

/// Length of the meeting that can be begun on a reminder, in minutes.
pub const MEETING_MINUTES: u16 = 60;

/// A reminder to show now.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Reminder {
    /// The plan.
    pub plan: PlanId,
    /// The slot.
    pub slot: SlotRef,
    /// When the slot is due.
    pub due: Stamp,
    /// Approximate duration of the exercise, in seconds.
    pub takes_s: u32,
    /// Time until the slot closes, in milliseconds: after that a notification is useless.
    pub open_ms: u32,
    /// Whether it comes without a sound.
    pub light: bool,
}

/// What the person chose on a reminder.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Choice {
    /// Open the slot's page.
    Open,
    /// Put it off by ten minutes.
    PutOff,
    /// Skip it, without giving a reason.
    Skip,
    /// No reminder for the next [`MEETING_MINUTES`].
    Meeting,
}

/// The reminder to show at this moment, if any. Logs that it is shown.
pub fn due(folder: &mut DataFolder, moment: &Moment) -> ActionResult<Option<Reminder>> {
    let settings = reminders::settings(folder)?;
    let followed = plans::all_at(folder, moment)?;
    let Some(found) = reminders::reminder_context(&followed, &settings, moment).due(moment.now) else { return Ok(None) };
    append(folder, found.plan, moment.now, &LogEvent::Reminded { slot: found.slot })?;
    let open_ms = found.closes.utc_ms - moment.now.utc_ms;
    let open_ms = u32::try_from(open_ms).map_err(refuse::internal)?;
    let exercises::remind::Reminder { plan, slot, due, takes_s, light, .. } = found;
    Ok(Some(Reminder { plan, slot, due, takes_s, open_ms, light }))
}

/// Whether a reminder of this slot that is on the screen is still useful.
pub fn still_applies(folder: &DataFolder, moment: &Moment, plan: PlanId, slot: SlotRef) -> ActionResult<bool> {
    let settings = reminders::settings(folder)?;
    let followed = plans::all_at(folder, moment)?;
    Ok(reminders::reminder_context(&followed, &settings, moment).still_applies(plan, slot, moment.now))
}

/// Carries out what the person chose on a reminder. Putting off or skipping a slot that was done in the meantime changes nothing.
pub fn choose(folder: &mut DataFolder, moment: &Moment, reminder: &Reminder, choice: Choice) -> ActionResult<()> {
    let Reminder { plan, slot, .. } = *reminder;
    let done = match choice {
        Choice::Open => {
            folder.open_slot = Some(slot);
            return Ok(());
        }
        Choice::PutOff => today::put_off(folder, moment, &SlotRequest { plan, slot }),
        Choice::Skip => today::skip(folder, moment, &SkipRequest { plan, slot, reason: Barrier::RatherNotSay }),
        Choice::Meeting => {
            return reminders::meeting(folder, moment, MeetingRequest { minutes: Some(MEETING_MINUTES) }).map(drop);
        }
    };
    match done {
        Ok(_) | Err(Failure::NoSuchSlot) => Ok(()),
        Err(failure) => Err(failure),
    }
}

/// The next moment at which a reminder may be due, in milliseconds since 1970 UTC; the loop need not ask before.
pub fn next_due_ms(folder: &DataFolder, moment: &Moment) -> ActionResult<Option<i64>> {
    let settings = reminders::settings(folder)?;
    let followed = plans::all_at(folder, moment)?;
    Ok(reminders::reminder_context(&followed, &settings, moment).next_possible(moment.now).map(|at| at.utc_ms))
}
