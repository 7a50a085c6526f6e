//! A correction, as written in a log entry.

use crate::codes::Code;
use crate::parts::Date;
use exercises::log::Correction;
use exercises::log::{Barrier, DayOffReason};
use exercises::score::Score;
use minicbor::{Decode, Encode};

#[derive(Encode, Decode)]
#[cbor(flat)]
pub(super) enum CorrectionOut {
    #[n(0)]
    Stands,
    #[n(1)]
    Never,
    #[n(2)]
    Score(#[n(0)] u8),
    #[n(3)]
    Settled(#[n(0)] bool),
    #[n(4)]
    Reason(#[n(0)] Code<Barrier>),
    #[n(5)]
    DaysOff(#[n(0)] Date, #[n(1)] Date, #[n(2)] Code<DayOffReason>),
}

impl From<Correction> for CorrectionOut {
    fn from(to: Correction) -> CorrectionOut {
        match to {
            Correction::Stands => CorrectionOut::Stands,
            Correction::Never => CorrectionOut::Never,
            Correction::Score(score) => CorrectionOut::Score(score.points()),
            Correction::Settled(settled) => CorrectionOut::Settled(settled),
            Correction::Reason(reason) => CorrectionOut::Reason(Code(reason)),
            Correction::DaysOff { from, until, why } => CorrectionOut::DaysOff(Date(from), Date(until), Code(why)),
        }
    }
}

impl CorrectionOut {
    /// The correction; `None` if its score is above 10.
    pub(super) fn correction(self) -> Option<Correction> {
        Some(match self {
            CorrectionOut::Stands => Correction::Stands,
            CorrectionOut::Never => Correction::Never,
            CorrectionOut::Score(score) => Correction::Score(Score::new(score)?),
            CorrectionOut::Settled(settled) => Correction::Settled(settled),
            CorrectionOut::Reason(Code(reason)) => Correction::Reason(reason),
            CorrectionOut::DaysOff(Date(from), Date(until), Code(why)) => Correction::DaysOff { from, until, why },
        })
    }
}
