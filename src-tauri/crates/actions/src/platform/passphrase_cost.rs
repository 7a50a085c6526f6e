//! The cost of trying a passphrase.

use vault::Cost;

/// The cost of new key files. A debug build takes another one for tests, which open keys thousands of times, from the exponent in
/// `CARRYOVER_SCRYPT_LOG_N`; a release build never does.
pub(crate) fn passphrase_cost() -> Cost {
    let asked = std::env::var("CARRYOVER_SCRYPT_LOG_N").ok().filter(|_| cfg!(debug_assertions));
    asked.and_then(|log_n| log_n.parse().ok()).and_then(Cost::new).unwrap_or(Cost::USUAL)
}
