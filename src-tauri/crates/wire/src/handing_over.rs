//! Handing reviews over to a server of records on this computer.

use crate::Secret;
use serde::{Deserialize, Serialize};

/// Where reviews are handed over to.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct ServerSetting {
    /// The server's address on this computer; `None` if nothing is handed over, as at the beginning.
    pub address: Option<String>,
    /// Whether a token goes with it. The token itself is never shown.
    pub has_token: bool,
}

/// The setting that replaces the present one.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct SetServerRequest {
    /// The server's address.
    pub address: String,
    /// The token that the server asks for, if it asks for one.
    pub token: Option<Secret>,
}

/// What the server took in of one patient.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct HandedOver {
    /// The patient's code.
    pub code: String,
    /// Resources that it did not have before.
    pub added: u32,
    /// Resources that it had already, and has as they are now.
    pub known: u32,
}

/// Why nothing was handed over, or not known to be.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub enum HandOverFault {
    /// No server is set.
    NotSet,
    /// The address is none of this computer, or none at all.
    AddressElsewhere,
    /// The token has signs that none can have, or is too long.
    TokenUnfit,
    /// Nothing answers there.
    Down,
    /// No whole answer came in time.
    Slow {
        /// The seconds that were waited.
        seconds: u16,
    },
    /// It sends on to another address.
    SentElsewhere,
    /// It does not let this clinic in.
    NotLetIn {
        /// The status of HTTP.
        status: u16,
    },
    /// It refuses what was sent.
    Refused {
        /// Whose review.
        code: String,
        /// The status of HTTP.
        status: u16,
        /// What it says; may be empty.
        said: String,
    },
    /// It failed.
    Failed {
        /// The status of HTTP.
        status: u16,
    },
    /// Its answer is none to what was sent.
    NotUnderstood,
}
