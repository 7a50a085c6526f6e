//! The speed of a counted movement.

/// The tempo of one counted movement, in whole seconds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Tempo {
    /// Seconds of the outward part (rising, bending, opening). 1 to 20.
    pub up_s: u8,
    /// Seconds at the end position. 0 to 20.
    pub hold_s: u8,
    /// Seconds of the return part. 1 to 20.
    pub down_s: u8,
}

impl Tempo {
    /// Seconds of one whole movement.
    pub fn seconds(&self) -> u16 {
        u16::from(self.up_s) + u16::from(self.hold_s) + u16::from(self.down_s)
    }
}
