//! A passphrase, and the work that trying one needs.

use age::secrecy::{ExposeSecret, SecretString};
use std::fmt;

/// What a person types to open the clinic's keys. Masked in debug output, wiped when dropped.
#[derive(Clone)]
pub struct Passphrase(SecretString);

impl Passphrase {
    /// Takes ownership of the text, as typed.
    pub fn new(typed: String) -> Passphrase {
        Passphrase(SecretString::from(typed))
    }

    /// Its length in characters, for advice when choosing one.
    pub fn characters(&self) -> usize {
        self.0.expose_secret().chars().count()
    }

    pub(crate) fn for_age(&self) -> SecretString {
        self.0.clone()
    }
}

impl fmt::Debug for Passphrase {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Passphrase(..)")
    }
}

/// The work of trying one passphrase: scrypt (RFC 7914) with N = 2^cost, r = 8, p = 1.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Cost(u8);

impl Cost {
    /// The cost of new files: 64 MiB and a fifth of a second on a small computer.
    pub const WRITTEN: Cost = Cost(16);
    /// The highest cost that is accepted: 256 MiB. A file that demands more is refused before any work is done.
    pub const MAX_READ: Cost = Cost(18);

    /// A cost from 1 (no protection, for tests) up to [`Cost::MAX_READ`].
    pub fn new(log_n: u8) -> Option<Cost> {
        (1..=Cost::MAX_READ.0).contains(&log_n).then_some(Cost(log_n))
    }

    /// The exponent.
    pub fn log_n(self) -> u8 {
        self.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn debug_output_does_not_show_the_passphrase() {
        let shown = format!("{:?}", Passphrase::new("seven grey herons".to_owned()));
        assert_eq!(shown, "Passphrase(..)");
    }

    #[test]
    fn a_cost_out_of_range_cannot_be_made() {
        assert_eq!((Cost::new(0), Cost::new(19)), (None, None));
        assert_eq!(Cost::new(18), Some(Cost::MAX_READ));
    }
}
