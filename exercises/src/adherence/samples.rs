//! Sample slots for the tests.

use super::{DoseUnit, SlotOn};
use crate::history::Mark;
use crate::id::ItemId;
use crate::log::{Barrier, DayOffReason};
use crate::run::{RunEnd, Share};
use crate::summary::RunOn;
use crate::time::DayNumber;

pub const SKIPPED: Mark = Mark::Skipped(Barrier::NoTime);
pub const DAY_OFF: Mark = Mark::DayOff(DayOffReason::Ill);
pub const PARTLY: Mark = Mark::Partly(Share { done: 1, of: 3 });

/// A slot of three holds of ten seconds at nine o'clock; day 0 is a Monday.
pub fn slot(day: u16, number: u8, mark: Mark) -> SlotOn {
    let done = match mark {
        Mark::Done => 30_000,
        Mark::Partly(_) => 10_000,
        _ => 0,
    };
    SlotOn {
        day: DayNumber(day),
        weekday: (day % 7) as u8,
        seen: true,
        item: ItemId(1),
        revision: 1,
        number,
        minute: 9 * 60 + 60 * u16::from(number),
        mark,
        written_in: false,
        dose: Share { done, of: 30_000 },
        over: 0,
        unit: DoseUnit::HoldSeconds,
        timing: crate::summary::RunTiming::InTime,
    }
}

/// The slots of a day, one for each mark.
pub fn day(day: u16, marks: &[Mark]) -> Vec<SlotOn> {
    marks.iter().enumerate().map(|(number, mark)| slot(day, number as u8, *mark)).collect()
}

/// The same slots on a day for which no device has an entry.
pub fn unseen(slots: Vec<SlotOn>) -> Vec<SlotOn> {
    slots.into_iter().map(|slot| SlotOn { seen: false, ..slot }).collect()
}

/// The slots of a day: `done` of `of` are done, the others are not.
pub fn share_of_day(day_number: u16, done: usize, of: usize) -> Vec<SlotOn> {
    let marks: Vec<Mark> = (0..of).map(|number| if number < done { Mark::Done } else { Mark::NotDone }).collect();
    day(day_number, &marks)
}

/// A run of three holds.
pub fn run(end: RunEnd, whole_parts: u32) -> RunOn {
    RunOn {
        run: crate::id::RunId(1),
        day: DayNumber(0),
        item: ItemId(1),
        rung: None,
        slot: None,
        hour: 9,
        live: true,
        timing: crate::summary::RunTiming::InTime,
        end,
        dose: Share { done: whole_parts * 10_000 + 500, of: 30_000 },
        parts: Share { done: whole_parts, of: 3 },
        stance: None,
        tally: None,
    }
}
