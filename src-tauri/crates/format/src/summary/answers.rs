//! Answers, alarms and delays in the form in which they are written, with conversions to and from the domain. The keys never
//! change.

use crate::codes::Code;
use exercises::alarm::Trouble;
use exercises::id::{ActivityId, ComplaintId, ItemId};
use exercises::score::Score;
use exercises::summary::{AlarmOn, PainOn, RatedOn, SettledOn, WeekDelay};
use exercises::time::DayNumber;
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

impl From<&PainOn> for PainOut {
    fn from(PainOn { n, day, complaint, score, after }: &PainOn) -> PainOut {
        PainOut { n: *n, day: day.0, complaint: complaint.0, score: score.points(), after: after.map(|item| item.0) }
    }
}

impl PainOut {
    pub(super) fn pain(self) -> Option<PainOn> {
        let PainOut { n, day, complaint, score: given, after } = self;
        Some(PainOn {
            n,
            day: DayNumber(day),
            complaint: ComplaintId(complaint),
            score: Score::new(given)?,
            after: after.map(ItemId),
        })
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
}

impl From<&AlarmOn> for AlarmOut {
    fn from(AlarmOn { n, day, trouble, item }: &AlarmOn) -> AlarmOut {
        AlarmOut { n: *n, day: day.0, trouble: Code(*trouble), item: item.map(|item| item.0) }
    }
}

impl AlarmOut {
    pub(super) fn alarm(self) -> Option<AlarmOn> {
        let AlarmOut { n, day, trouble: Code(trouble), item } = self;
        Some(AlarmOn { n, day: DayNumber(day), trouble, item: item.map(ItemId) })
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
