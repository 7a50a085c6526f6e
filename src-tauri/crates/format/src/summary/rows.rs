//! The rows of a summary's lists as they travel, each with its way to the domain and back. Keys are frozen.
//!
//! What a day, an hour or a score can be is checked here, row by row; that a row lies within the period, by the reader.

use crate::cbor::AtMost;
use crate::codes::Code;
use crate::parts::ScheduleOut;
use exercises::alarm::Trouble;
use exercises::catalogue::RungId;
use exercises::history::Mark;
use exercises::id::{ActivityId, ComplaintId, ItemId, RunId};
use exercises::log::{Barrier, Excuse};
use exercises::plan::MAX_ITEMS;
use exercises::run::{RunEnd, Share};
use exercises::summary::{AlarmOn, ItemDay, PainOn, RatedOn, RunOn, SettledOn, TakenOn, WeekDelay};
use minicbor::{Decode, Encode};

use super::stance::StanceOut;

/// Most slots that one item has on one day: a quarter of an hour apart around the clock, both ends counted.
const MOST_SLOTS: usize = 97;
/// The highest score of pain or of an activity.
const MOST_SCORE: u8 = 10;

fn is_false(value: &bool) -> bool {
    !value
}

fn score(score: u8) -> Option<u8> {
    (score <= MOST_SCORE).then_some(score)
}

#[derive(Encode, Decode)]
pub(super) struct ShareOut(#[n(0)] u32, #[n(1)] u32);

impl From<Share> for ShareOut {
    fn from(Share { done, of }: Share) -> ShareOut {
        ShareOut(done, of)
    }
}

impl ShareOut {
    fn share(self) -> Option<Share> {
        let ShareOut(done, of) = self;
        (done <= of).then_some(Share { done, of })
    }
}

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
        TakenOut { day: *day, revision: *revision, agreed: AtMost(agreed) }
    }
}

impl TakenOut {
    pub(super) fn taken(self) -> Option<TakenOn> {
        let TakenOut { day, revision, agreed: AtMost(agreed) } = self;
        let agreed = agreed.into_iter().map(|AgreedOut(item, schedule)| Some((ItemId(item), schedule.schedule()?)));
        Some(TakenOn { day, revision, agreed: agreed.collect::<Option<_>>()? })
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
    LeftOut(#[n(0)] Code<Barrier>),
    #[n(3)]
    Excused(#[n(0)] Code<Excuse>),
    #[n(4)]
    HeldBack,
    #[n(5)]
    PassedBy,
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
            Mark::LeftOut(reason) => MarkOut::LeftOut(Code(reason)),
            Mark::Excused(why) => MarkOut::Excused(Code(why)),
            Mark::HeldBack => MarkOut::HeldBack,
            Mark::PassedBy => MarkOut::PassedBy,
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
            MarkOut::Partly(done, of) => Mark::Partly(ShareOut(done, of).share()?),
            MarkOut::LeftOut(Code(reason)) => Mark::LeftOut(reason),
            MarkOut::Excused(Code(why)) => Mark::Excused(why),
            MarkOut::HeldBack => Mark::HeldBack,
            MarkOut::PassedBy => Mark::PassedBy,
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
    slots: AtMost<SlotOut, MOST_SLOTS>,
}

impl From<&ItemDay> for ItemDayOut {
    fn from(ItemDay { day, item, revision, slots }: &ItemDay) -> ItemDayOut {
        let slots = slots.iter().map(|(number, mark)| SlotOut(*number, MarkOut::from(*mark))).collect();
        ItemDayOut { day: *day, item: item.0, revision: *revision, slots: AtMost(slots) }
    }
}

impl ItemDayOut {
    pub(super) fn item_day(self) -> Option<ItemDay> {
        let ItemDayOut { day, item, revision, slots: AtMost(slots) } = self;
        let ascending = slots.windows(2).all(|pair| pair[0].0 < pair[1].0);
        let slots = slots.into_iter().map(|SlotOut(number, mark)| Some((number, mark.mark()?)));
        let slots = slots.collect::<Option<_>>().filter(|_| ascending)?;
        Some(ItemDay { day, item: ItemId(item), revision, slots })
    }
}

#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct RunOut {
    #[n(0)]
    run: u32,
    #[n(1)]
    day: u16,
    #[n(2)]
    item: u8,
    #[n(3)]
    rung: Option<String>,
    #[n(4)]
    slot: Option<u8>,
    #[n(5)]
    hour: u8,
    #[n(6)]
    #[cbor(skip_if = "is_false")]
    live: bool,
    #[n(7)]
    end: Code<RunEnd>,
    #[n(8)]
    dose: ShareOut,
    #[n(9)]
    parts: ShareOut,
    #[n(10)]
    stance: Option<StanceOut>,
}

impl From<&RunOn> for RunOut {
    fn from(run: &RunOn) -> RunOut {
        let RunOn { run, day, item, rung, slot, hour, live, end, dose, parts, stance } = run;
        RunOut {
            run: run.0,
            day: *day,
            item: item.0,
            rung: rung.as_ref().map(RungId::to_string),
            slot: *slot,
            hour: *hour,
            live: *live,
            end: Code(*end),
            dose: ShareOut::from(*dose),
            parts: ShareOut::from(*parts),
            stance: stance.as_ref().map(StanceOut::from),
        }
    }
}

impl RunOut {
    pub(super) fn run(self) -> Option<RunOn> {
        let RunOut { run, day, item, rung, slot, hour, live, end: Code(end), dose, parts, stance } = self;
        Some(RunOn {
            run: RunId(run),
            day,
            item: ItemId(item),
            rung: rung.map(RungId::new).transpose().ok()?,
            slot,
            hour: (hour < 24).then_some(hour)?,
            live,
            end,
            dose: dose.share()?,
            parts: parts.share()?,
            stance: stance.map(StanceOut::stance),
        })
    }
}

#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct PainOut {
    #[n(0)]
    n: u32,
    #[n(1)]
    day: u16,
    #[n(2)]
    complaint: u8,
    #[n(3)]
    score: u8,
    #[n(4)]
    after: Option<u8>,
}

impl From<&PainOn> for PainOut {
    fn from(PainOn { n, day, complaint, score, after }: &PainOn) -> PainOut {
        PainOut { n: *n, day: *day, complaint: complaint.0, score: *score, after: after.map(|item| item.0) }
    }
}

impl PainOut {
    pub(super) fn pain(self) -> Option<PainOn> {
        let PainOut { n, day, complaint, score: given, after } = self;
        Some(PainOn { n, day, complaint: ComplaintId(complaint), score: score(given)?, after: after.map(ItemId) })
    }
}

#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct SettledOut {
    #[n(0)]
    n: u32,
    #[n(1)]
    day: u16,
    #[n(2)]
    complaint: u8,
    #[n(3)]
    settled: bool,
}

impl From<&SettledOn> for SettledOut {
    fn from(SettledOn { n, day, complaint, settled }: &SettledOn) -> SettledOut {
        SettledOut { n: *n, day: *day, complaint: complaint.0, settled: *settled }
    }
}

impl SettledOut {
    pub(super) fn settled(self) -> Option<SettledOn> {
        let SettledOut { n, day, complaint, settled } = self;
        Some(SettledOn { n, day, complaint: ComplaintId(complaint), settled })
    }
}

#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct RatedOut {
    #[n(0)]
    n: u32,
    #[n(1)]
    day: u16,
    #[n(2)]
    activity: u8,
    #[n(3)]
    score: u8,
}

impl From<&RatedOn> for RatedOut {
    fn from(RatedOn { n, day, activity, score }: &RatedOn) -> RatedOut {
        RatedOut { n: *n, day: *day, activity: activity.0, score: *score }
    }
}

impl RatedOut {
    pub(super) fn rated(self) -> Option<RatedOn> {
        let RatedOut { n, day, activity, score: given } = self;
        Some(RatedOn { n, day, activity: ActivityId(activity), score: score(given)? })
    }
}

#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct AlarmOut {
    #[n(0)]
    n: u32,
    #[n(1)]
    day: u16,
    #[n(2)]
    trouble: Code<Trouble>,
    #[n(3)]
    item: Option<u8>,
}

impl From<&AlarmOn> for AlarmOut {
    fn from(AlarmOn { n, day, trouble, item }: &AlarmOn) -> AlarmOut {
        AlarmOut { n: *n, day: *day, trouble: Code(*trouble), item: item.map(|item| item.0) }
    }
}

impl AlarmOut {
    pub(super) fn alarm(self) -> Option<AlarmOn> {
        let AlarmOut { n, day, trouble: Code(trouble), item } = self;
        Some(AlarmOn { n, day, trouble, item: item.map(ItemId) })
    }
}

#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct DelayOut {
    #[n(0)]
    week: u16,
    #[n(1)]
    runs: u16,
    #[n(2)]
    lower_s: u16,
    #[n(3)]
    median_s: u16,
    #[n(4)]
    upper_s: u16,
}

impl From<&WeekDelay> for DelayOut {
    fn from(WeekDelay { week, runs, lower_s, median_s, upper_s }: &WeekDelay) -> DelayOut {
        DelayOut { week: *week, runs: *runs, lower_s: *lower_s, median_s: *median_s, upper_s: *upper_s }
    }
}

impl DelayOut {
    pub(super) fn delay(self) -> Option<WeekDelay> {
        let DelayOut { week, runs, lower_s, median_s, upper_s } = self;
        (lower_s <= median_s && median_s <= upper_s).then_some(WeekDelay { week, runs, lower_s, median_s, upper_s })
    }
}
