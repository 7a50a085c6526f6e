//! The secret on a card.

use std::fmt;
use zeroize::Zeroize;

/// Thirty-two random bytes that the patient and the clinic share through the card. Not shown in debug output, and erased from
/// memory when dropped.
#[derive(Clone, PartialEq, Eq)]
pub struct PairingSecret([u8; 32]);

impl PairingSecret {
    /// Makes a secret of these bytes.
    pub fn new(bytes: [u8; 32]) -> PairingSecret {
        PairingSecret(bytes)
    }

    /// The bytes of the secret. They may only be written on a card, stored encrypted, or used to derive a key.
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
