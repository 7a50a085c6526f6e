//! Random ids and secrets, from the operating system.

use exercises::id::{AlarmId, LogId, PlanId};
use format::card::PairingSecret;
use format::frames::Transfer;
use rand::RngCore;
use rand::rngs::OsRng;
use zeroize::Zeroizing;

/// `N` random bytes from the operating system, wiped when dropped.
pub(crate) fn bytes<const N: usize>() -> Zeroizing<[u8; N]> {
    let mut bytes = Zeroizing::new([0; N]);
    OsRng.fill_bytes(bytes.as_mut_slice());
    bytes
}

/// An id for a new plan, not derived from the person.
pub fn plan_id() -> PlanId {
    PlanId(*bytes())
}

/// An id for a new installation's log.
pub fn log_id() -> LogId {
    LogId(*bytes())
}

/// An id for a database, by which it is told from a copy.
pub fn store_id() -> [u8; 16] {
    *bytes()
}

/// A name for a new alarm.
pub fn alarm_id() -> AlarmId {
    AlarmId(*bytes())
}

/// A secret for a card that no clinic issued, such as that of a sample. Those of a clinic are derived: [`crate::card::pairing_secret`].
pub fn pairing_secret() -> PairingSecret {
    PairingSecret::new(*bytes())
}

/// An id for one sealing that is sent as frames.
pub fn transfer() -> Transfer {
    Transfer(*bytes())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_two_random_ids_are_alike() {
        assert_ne!(plan_id(), plan_id());
        assert_ne!(log_id(), log_id());
        assert_ne!(alarm_id(), alarm_id());
        assert_ne!(transfer(), transfer());
        assert_ne!(pairing_secret(), pairing_secret());
    }
}
