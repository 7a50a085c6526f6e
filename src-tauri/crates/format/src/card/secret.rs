//! The secret that a card carries.

use std::fmt;
use zeroize::Zeroize;

/// Thirty-two random bytes that patient and clinic share through the card. Masked in debug output, wiped when dropped.
#[derive(Clone, PartialEq, Eq)]
pub struct PairingSecret([u8; 32]);

impl PairingSecret {
    /// Takes the bytes over.
    pub fn new(bytes: [u8; 32]) -> PairingSecret {
        PairingSecret(bytes)
    }

    /// The bytes themselves: to be written on a card, into a sealed row, or into a key derivation, and nowhere else.
    pub fn expose_the_secret_bytes(&self) -> &[u8; 32] {
        &self.0
    }
}

impl fmt::Debug for PairingSecret {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("PairingSecret(..)")
    }
}

impl Drop for PairingSecret {
    fn drop(&mut self) {
        self.0.zeroize();
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn debug_output_shows_nothing_of_it() {
        assert_eq!(format!("{:?}", PairingSecret::new([0xAB; 32])), "PairingSecret(..)");
    }
}
