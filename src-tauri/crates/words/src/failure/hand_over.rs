//! Why nothing was handed over to a server of records.

use crate::{Key, Words};
use wire::handing_over::HandOverFault;

impl Words {
    /// What is wrong, and what to do.
    pub(super) fn hand_over_fault(self, fault: &HandOverFault) -> (String, Key) {
        let text = |key| self.text(key).to_owned();
        match fault {
            HandOverFault::NotSet => (text(Key::FailureServerNotSet), Key::FailureServerNotSetAdvice),
            HandOverFault::AddressElsewhere => (text(Key::FailureServerElsewhere), Key::FailureServerElsewhereAdvice),
            HandOverFault::TokenUnfit => (text(Key::FailureServerToken), Key::FailureServerTokenAdvice),
            HandOverFault::Down => (text(Key::FailureServerDown), Key::FailureServerDownAdvice),
            HandOverFault::Slow { seconds } => (self.failure_server_slow(*seconds), Key::FailureServerSlowAdvice),
            HandOverFault::SentElsewhere => (text(Key::FailureServerSendsOn), Key::FailureServerSendsOnAdvice),
            HandOverFault::NotLetIn { status } => {
                (self.failure_server_not_let_in(*status), Key::FailureServerNotLetInAdvice)
            }
            HandOverFault::Refused { code, status, said } if said.is_empty() => {
                (self.failure_server_refused(code, *status), Key::FailureServerRefusedAdvice)
            }
            HandOverFault::Refused { code, status, said } => {
                (self.failure_server_refused_saying(code, *status, said), Key::FailureServerRefusedAdvice)
            }
            HandOverFault::Failed { status } => (self.failure_server_failed(*status), Key::FailureServerFailedAdvice),
            HandOverFault::NotUnderstood => (text(Key::FailureServerNotUnderstood), Key::FailureServerNotUnderstoodAdvice),
        }
    }
}
