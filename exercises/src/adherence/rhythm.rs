//! When it is done: by day of the week, and by hour of the day.
//!
//! Rule: the slots of [`super::SlotCounts::kept`], sorted by the weekday of their day and by the wall clock's hour at which
//! they were due. Not fitting into the day's routine is a barrier of its own (Escolar-Reina 2010, BMC Health Serv Res 10:60),
//! and it shows here.

use super::{KofN, SlotOn, count};

/// Slots done of slots asked for, by weekday and hour.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Rhythm {
    /// From Monday to Sunday; `None` where nothing was asked for.
    pub weekdays: [Option<KofN>; 7],
    /// By hour, 0 to 23, ascending; only hours in which something was due.
    pub hours: Vec<(u8, KofN)>,
}

/// Sorts the slots of one item.
pub fn rhythm(slots: &[SlotOn]) -> Rhythm {
    let kept_where = |keep: &dyn Fn(&SlotOn) -> bool| {
        let these: Vec<SlotOn> = slots.iter().filter(|slot| keep(slot)).copied().collect();
        count(&these).kept()
    };
    Rhythm {
        weekdays: std::array::from_fn(|weekday| kept_where(&|slot| usize::from(slot.weekday) == weekday)),
        hours: (0..24).filter_map(|hour| Some((hour, kept_where(&|slot| hour_of(slot) == hour)?))).collect(),
    }
}

fn hour_of(slot: &SlotOn) -> u8 {
    ((slot.minute / 60) % 24) as u8
}
