//! Collects the frames of one summary as they are read.

use super::{Frame, FrameFault, Transfer};
use std::collections::BTreeMap;

/// The frames of one summary that have been read so far.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Gathered {
    transfer: Transfer,
    of: u8,
    parts: BTreeMap<u8, Vec<u8>>,
}

impl Gathered {
    /// Starts with any one of the frames.
    pub fn begin(frame: Frame) -> Gathered {
        let Frame { transfer, place, of, part } = frame;
        Gathered { transfer, of, parts: BTreeMap::from([(place, part)]) }
    }

    /// Adds another frame; one that was read before changes nothing.
    ///
    /// # Errors
    /// [`FrameFault::NotAFrame`] for a frame of another summary, [`FrameFault::Damaged`] for one that contradicts those read
    /// before. Nothing is changed in either case.
    pub fn take(&mut self, frame: Frame) -> Result<(), FrameFault> {
        if frame.transfer != self.transfer {
            return Err(FrameFault::NotAFrame);
        }
        let known = self.parts.get(&frame.place);
        if frame.of != self.of || known.is_some_and(|known| *known != frame.part) {
            return Err(FrameFault::Damaged);
        }
        self.parts.insert(frame.place, frame.part);
        Ok(())
    }

    /// Number of different frames read so far.
    pub fn have(&self) -> u8 {
        u8::try_from(self.parts.len()).expect("no more than the frames of one sealing")
    }

    /// Number of frames that the summary has.
    pub fn of(&self) -> u8 {
        self.of
    }

    /// The frames that are still missing, by place, ascending.
    pub fn missing(&self) -> Vec<u8> {
        (1..=self.of).filter(|place| !self.parts.contains_key(place)).collect()
    }

    /// The whole encrypted summary, once all frames have been read.
    pub fn whole(&self) -> Option<Vec<u8>> {
        self.missing().is_empty().then(|| self.parts.values().flatten().copied().collect())
    }
}
