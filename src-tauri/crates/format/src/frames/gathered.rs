//! The frames of one sealing, as they come.

use super::{Frame, FrameFault, Transfer};
use std::collections::BTreeMap;

/// What has come of one sealing.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Gathered {
    transfer: Transfer,
    of: u8,
    parts: BTreeMap<u8, Vec<u8>>,
}

impl Gathered {
    /// Begins with one frame, whichever it is.
    pub fn begin(frame: Frame) -> Gathered {
        let Frame { transfer, place, of, part } = frame;
        Gathered { transfer, of, parts: BTreeMap::from([(place, part)]) }
    }

    /// Takes another frame in; one that came before changes nothing.
    ///
    /// # Errors
    /// [`FrameFault::NotAFrame`] for a frame of another sealing, [`FrameFault::Damaged`] for one that says otherwise than
    /// those that came before. Then nothing has changed.
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

    /// So many have come.
    pub fn have(&self) -> u8 {
        u8::try_from(self.parts.len()).expect("no more than the frames of one sealing")
    }

    /// So many there are.
    pub fn of(&self) -> u8 {
        self.of
    }

    /// Which ones have not come, ascending.
    pub fn missing(&self) -> Vec<u8> {
        (1..=self.of).filter(|place| !self.parts.contains_key(place)).collect()
    }

    /// What was cut, once all have come.
    pub fn whole(&self) -> Option<Vec<u8>> {
        self.missing().is_empty().then(|| self.parts.values().flatten().copied().collect())
    }
}
