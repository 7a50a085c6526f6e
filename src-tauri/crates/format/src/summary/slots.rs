//! Cards taken and slots in the form in which they are written, with conversions to and from the domain. The keys never
//! change.

use super::runs::share;
use crate::cbor::AtMost;
use crate::codes::Code;
use crate::parts::ScheduleOut;
use exercises::history::Mark;
use exercises::id::ItemId;
use exercises::log::{Barrier, DayOffReason};
use exercises::plan::MAX_ITEMS;
use exercises::run::Share;
use exercises::summary::{ItemDay, TakenOn};
use exercises::time::DayNumber;
use minicbor::{Decode, Encode};

/// Largest number of slots of one item on one day: every quarter of an hour for 24 hours, both ends included.
const MAX_SLOTS: usize = 97;

#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct TakenOut {
    #[n(0)]
    day: u16,
    #[n(1)]
    revision: u16,
    #[n(2)]
    agreed: AtMost<AgreedOut, MAX_ITEMS>,
}

#[derive(Encode, Decode)]
struct AgreedOut(#[n(0)] u8, #[n(1)] ScheduleOut);

impl From<&TakenOn> for TakenOut {
    fn from(TakenOn { day, revision, agreed }: &TakenOn) -> TakenOut {
        let agreed = agreed.iter().map(|(item, schedule)| AgreedOut(item.0, schedule.into())).collect();
        TakenOut { day: day.0, revision: *revision, agreed: AtMost(agreed) }
    }
}

impl TakenOut {
    pub(super) fn taken(self) -> Option<TakenOn> {
        let TakenOut { day, revision, agreed: AtMost(agreed) } = self;
        let agreed = agreed.into_iter().map(|AgreedOut(item, schedule)| Some((ItemId(item), schedule.schedule()?)));
        Some(TakenOn { day: DayNumber(day), revision, agreed: agreed.collect::<Option<_>>()? })
    }
}

#[derive(Encode, Decode)]
#[cbor(flat)]
enum MarkOut {
    #[n(0)]
    Done,
    #[n(1)]
    Partly(#[n(0)] u32, #[n(1)] u32),
    #[n(2)]
    Skipped(#[n(0)] Code<Barrier>),
    #[n(3)]
    DayOff(#[n(0)] Code<DayOffReason>),
    #[n(4)]
    Paused,
    #[n(5)]
    NotDone,
    #[n(6)]
    Due,
    #[n(7)]
    ToCome,
    #[n(8)]
    NoSuchHour,
}

impl From<Mark> for MarkOut {
    fn from(mark: Mark) -> MarkOut {
        match mark {
            Mark::Done => MarkOut::Done,
            Mark::Partly(Share { done, of }) => MarkOut::Partly(done, of),
            Mark::Skipped(reason) => MarkOut::Skipped(Code(reason)),
            Mark::DayOff(why) => MarkOut::DayOff(Code(why)),
            Mark::Paused => MarkOut::Paused,
            Mark::NotDone => MarkOut::NotDone,
            Mark::Due => MarkOut::Due,
            Mark::ToCome => MarkOut::ToCome,
            Mark::NoSuchHour => MarkOut::NoSuchHour,
        }
    }
}

impl MarkOut {
    fn mark(self) -> Option<Mark> {
        Some(match self {
            MarkOut::Done => Mark::Done,
            MarkOut::Partly(done, of) => Mark::Partly(share(done, of)?),
            MarkOut::Skipped(Code(reason)) => Mark::Skipped(reason),
            MarkOut::DayOff(Code(why)) => Mark::DayOff(why),
            MarkOut::Paused => Mark::Paused,
            MarkOut::NotDone => Mark::NotDone,
            MarkOut::Due => Mark::Due,
            MarkOut::ToCome => Mark::ToCome,
            MarkOut::NoSuchHour => Mark::NoSuchHour,
        })
    }
}

#[derive(Encode, Decode)]
struct SlotOut(#[n(0)] u8, #[n(1)] MarkOut);

#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct ItemDayOut {
    #[n(0)]
    day: u16,
    #[n(1)]
    item: u8,
    #[n(2)]
    revision: u16,
    #[n(3)]
    slots: AtMost<SlotOut, MAX_SLOTS>,
}

impl From<&ItemDay> for ItemDayOut {
    fn from(ItemDay { day, item, revision, slots }: &ItemDay) -> ItemDayOut {
        let slots = slots.iter().map(|(number, mark)| SlotOut(*number, MarkOut::from(*mark))).collect();
        ItemDayOut { day: day.0, item: item.0, revision: *revision, slots: AtMost(slots) }
    }
}

impl ItemDayOut {
    pub(super) fn item_day(self) -> Option<ItemDay> {
        let ItemDayOut { day, item, revision, slots: AtMost(slots) } = self;
        let ascending = slots.windows(2).all(|pair| pair[0].0 < pair[1].0);
        let slots = slots.into_iter().map(|SlotOut(number, mark)| Some((number, mark.mark()?)));
        let slots = slots.collect::<Option<_>>().filter(|_| ascending)?;
        Some(ItemDay { day: DayNumber(day), item: ItemId(item), revision, slots })
    }
}
