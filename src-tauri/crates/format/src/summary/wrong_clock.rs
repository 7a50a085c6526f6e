//! What was recorded while the device's clock was wrong, in the form in which it is written. The keys never change.

use super::answers::{DuringOut, MorningOut, RatedOut};
use super::contents::{MAX_ANSWERS, MAX_RUNS};
use super::runs::RunOut;
use crate::cbor::AtMost;
use exercises::summary::ByWrongClock;
use minicbor::{Decode, Encode};

#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct WrongClockOut {
    #[n(0)]
    runs: AtMost<RunOut, MAX_RUNS>,
    #[n(1)]
    mornings: AtMost<MorningOut, MAX_ANSWERS>,
    #[n(2)]
    during: AtMost<DuringOut, MAX_ANSWERS>,
    #[n(3)]
    rated: AtMost<RatedOut, MAX_ANSWERS>,
    #[n(4)]
    alarms: AtMost<u32, MAX_ANSWERS>,
}

/// The last of `all`, at most `most`.
fn newest<T>(all: &[T], most: usize) -> &[T] {
    &all[all.len().saturating_sub(most)..]
}

impl WrongClockOut {
    /// `None` if nothing was recorded then.
    pub(super) fn of(wrong: &ByWrongClock) -> Option<WrongClockOut> {
        let ByWrongClock { runs, mornings, during, rated, alarms, ahead_days: _ } = wrong;
        (!wrong.is_empty()).then(|| WrongClockOut {
            runs: AtMost(RunOut::list(newest(runs, MAX_RUNS))),
            mornings: AtMost(newest(mornings, MAX_ANSWERS).iter().map(MorningOut::from).collect()),
            during: AtMost(newest(during, MAX_ANSWERS).iter().map(DuringOut::from).collect()),
            rated: AtMost(newest(rated, MAX_ANSWERS).iter().map(RatedOut::from).collect()),
            alarms: AtMost(alarms.iter().copied().take(MAX_ANSWERS).collect()),
        })
    }

    /// What was written; `None` if a row is not valid.
    pub(super) fn wrong_clock(self) -> Option<ByWrongClock> {
        let WrongClockOut {
            runs: AtMost(runs),
            mornings: AtMost(mornings),
            during: AtMost(during),
            rated: AtMost(rated),
            alarms: AtMost(alarms),
        } = self;
        Some(ByWrongClock {
            runs: RunOut::runs(runs)?,
            mornings: mornings.into_iter().map(MorningOut::morning).collect::<Option<_>>()?,
            during: during.into_iter().map(DuringOut::during).collect::<Option<_>>()?,
            rated: rated.into_iter().map(RatedOut::rated).collect::<Option<_>>()?,
            alarms: alarms.into_iter().collect(),
            ahead_days: 0,
        })
    }
}
