//! Answers, alarms and delays in the form in which they are written, with conversions to and from the domain. The keys never
//! change.

use crate::codes::{Code, circumstance_bits, circumstances_of};
use exercises::alarm::Trouble;
use exercises::id::{ActivityId, AlarmId, ComplaintId, EntryRef, ItemId, LogId};
use exercises::score::Score;
use exercises::summary::{AlarmOn, DuringOn, MorningOn, RatedOn, SettledOn, WeekDelay, WellAgainOn};
use exercises::time::DayNumber;
use minicbor::bytes::ByteArray;
use minicbor::{Decode, Encode};

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

impl PainOut {
    /// Whether it was asked for after a run.
    pub(super) fn is_after_a_run(&self) -> bool {
        self.after.is_some()
    }

    /// A rating of the morning; `None` if the score is above 10.
    pub(super) fn morning(self) -> Option<MorningOn> {
        let PainOut { n, day, complaint, score, .. } = self;
        Some(MorningOn { n, day: DayNumber(day), complaint: ComplaintId(complaint), score: Score::new(score)? })
    }

    /// A rating while doing the item after whose run it was asked for; `None` if the score is above 10.
    pub(super) fn during(self) -> Option<DuringOn> {
        let PainOut { n, day, score, after, .. } = self;
        Some(DuringOn { n, day: DayNumber(day), item: ItemId(after?), score: Score::new(score)? })
    }
}

#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct MorningOut {
    #[n(0)]
    n: u32,
    #[n(1)]
    day: u16,
    #[n(2)]
    complaint: u8,
    #[n(3)]
    score: u8,
}

impl From<&MorningOn> for MorningOut {
    fn from(MorningOn { n, day, complaint, score }: &MorningOn) -> MorningOut {
        MorningOut { n: *n, day: day.0, complaint: complaint.0, score: score.points() }
    }
}

impl MorningOut {
    /// The rating; `None` if the score is above 10.
    pub(super) fn morning(self) -> Option<MorningOn> {
        let MorningOut { n, day, complaint, score } = self;
        Some(MorningOn { n, day: DayNumber(day), complaint: ComplaintId(complaint), score: Score::new(score)? })
    }
}

#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct DuringOut {
    #[n(0)]
    n: u32,
    #[n(1)]
    day: u16,
    #[n(2)]
    item: u8,
    #[n(3)]
    score: u8,
}

impl From<&DuringOn> for DuringOut {
    fn from(DuringOn { n, day, item, score }: &DuringOn) -> DuringOut {
        DuringOut { n: *n, day: day.0, item: item.0, score: score.points() }
    }
}

impl DuringOut {
    /// The rating; `None` if the score is above 10.
    pub(super) fn during(self) -> Option<DuringOn> {
        let DuringOut { n, day, item, score } = self;
        Some(DuringOn { n, day: DayNumber(day), item: ItemId(item), score: Score::new(score)? })
    }
}

#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct WellAgainOut {
    #[n(0)]
    n: u32,
    #[n(1)]
    day: u16,
}

impl From<&WellAgainOn> for WellAgainOut {
    fn from(WellAgainOn { n, day }: &WellAgainOn) -> WellAgainOut {
        WellAgainOut { n: *n, day: day.0 }
    }
}

impl WellAgainOut {
    /// What was said.
    pub(super) fn well_again(self) -> Option<WellAgainOn> {
        Some(WellAgainOn { n: self.n, day: DayNumber(self.day) })
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
        SettledOut { n: *n, day: day.0, complaint: complaint.0, settled: *settled }
    }
}

impl SettledOut {
    pub(super) fn settled(self) -> Option<SettledOn> {
        let SettledOut { n, day, complaint, settled } = self;
        Some(SettledOn { n, day: DayNumber(day), complaint: ComplaintId(complaint), settled })
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
        RatedOut { n: *n, day: day.0, activity: activity.0, score: score.points() }
    }
}

impl RatedOut {
    pub(super) fn rated(self) -> Option<RatedOn> {
        let RatedOut { n, day, activity, score: given } = self;
        Some(RatedOn { n, day: DayNumber(day), activity: ActivityId(activity), score: Score::new(given)? })
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
    /// Not in version 1.
    #[n(4)]
    id: Option<ByteArray<8>>,
    /// What was answered about it, as bits; not in version 1.
    #[n(5)]
    circumstances: Option<u8>,
}

impl From<&AlarmOn> for AlarmOut {
    fn from(AlarmOn { n, id, day, trouble, item, circumstances }: &AlarmOn) -> AlarmOut {
        AlarmOut {
            n: *n,
            day: day.0,
            trouble: Code(*trouble),
            item: item.map(|item| item.0),
            id: Some(ByteArray::from(id.0)),
            circumstances: circumstance_bits(circumstances),
        }
    }
}

impl AlarmOut {
    /// The alarm; in version 1 it is named after its entry in `log`.
    pub(super) fn alarm(self, log: LogId) -> Option<AlarmOn> {
        let AlarmOut { n, day, trouble: Code(trouble), item, id, circumstances } = self;
        Some(AlarmOn {
            n,
            id: id.map_or_else(|| AlarmId::of_entry(EntryRef { log, n }), |id| AlarmId(id.into())),
            day: DayNumber(day),
            trouble,
            item: item.map(ItemId),
            circumstances: circumstances_of(circumstances),
        })
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
