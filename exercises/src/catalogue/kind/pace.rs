//! The pace of breathing.

/// Seconds of each part of a breath.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct BreathPace {
    /// Breathing in, 2 to 10 s.
    pub in_s: u8,
    /// Staying after it, 0 to 10 s.
    pub full_s: u8,
    /// Breathing out, 2 to 12 s.
    pub out_s: u8,
    /// Staying after it, 0 to 10 s.
    pub empty_s: u8,
}

impl BreathPace {
    /// Seconds of one whole breath.
    pub fn seconds(self) -> u16 {
        [self.in_s, self.full_s, self.out_s, self.empty_s].into_iter().map(u16::from).sum()
    }
}
