//! The ids that a log had before, in the form in which they are written. The keys never change.

use exercises::id::LogId;
use exercises::summary::FormerPart;
use exercises::time::DayNumber;
use minicbor::bytes::ByteArray;
use minicbor::{Decode, Encode};

#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct FormerOut {
    #[n(0)]
    log: ByteArray<8>,
    #[n(1)]
    entries: u32,
    #[n(2)]
    runs: u32,
    #[n(3)]
    until: u16,
}

impl From<&FormerPart> for FormerOut {
    fn from(part: &FormerPart) -> FormerOut {
        FormerOut { log: part.log.0.into(), entries: part.entries, runs: part.runs, until: part.until.0 }
    }
}

impl FormerOut {
    pub(super) fn part(self) -> Option<FormerPart> {
        let FormerOut { log, entries, runs, until } = self;
        Some(FormerPart { log: LogId(log.into()), entries, runs, until: DayNumber(until) })
    }
}
