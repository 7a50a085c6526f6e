//! Corrections in the form in which they are written. The keys never change.

use crate::cbor::AtMost;
use exercises::id::RunId;
use exercises::summary::Corrections;
use minicbor::{Decode, Encode};

/// Largest number of corrections of one kind. If there are more, only the newest are sent; the values in the summary are
/// corrected in any case.
const MAX: usize = 4096;

#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct CorrectionsOut {
    #[n(0)]
    runs: AtMost<u32, MAX>,
    #[n(1)]
    gone: AtMost<u32, MAX>,
    #[n(2)]
    changed: AtMost<u32, MAX>,
    #[n(3)]
    days: u16,
    #[n(4)]
    alarms: AtMost<u32, MAX>,
}

/// The newest ones, ascending.
fn newest(all: impl DoubleEndedIterator<Item = u32>) -> AtMost<u32, MAX> {
    let mut kept: Vec<u32> = all.rev().take(MAX).collect();
    kept.reverse();
    AtMost(kept)
}

impl CorrectionsOut {
    /// `None` if nothing was corrected.
    pub(super) fn of(corrections: &Corrections) -> Option<CorrectionsOut> {
        let Corrections { runs, gone, changed, days, alarms } = corrections;
        (corrections.count() > 0).then(|| CorrectionsOut {
            runs: newest(runs.iter().map(|run| run.0)),
            gone: newest(gone.iter().copied()),
            changed: newest(changed.iter().copied()),
            days: *days,
            alarms: newest(alarms.iter().copied()),
        })
    }

    pub(super) fn corrections(self) -> Corrections {
        let CorrectionsOut {
            runs: AtMost(runs),
            gone: AtMost(gone),
            changed: AtMost(changed),
            days,
            alarms: AtMost(alarms),
        } = self;
        Corrections {
            runs: runs.into_iter().map(RunId).collect(),
            gone: gone.into_iter().collect(),
            changed: changed.into_iter().collect(),
            days,
            alarms: alarms.into_iter().collect(),
        }
    }
}
