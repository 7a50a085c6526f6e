//! Who may unlock a clinic's store.

use crate::Secret;
use serde::{Deserialize, Serialize};

/// Who wants to unlock the store.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct UnlockRequest {
    /// The clinician's name; needed only if there are several.
    pub name: Option<String>,
    /// The passphrase.
    pub passphrase: Secret,
}

/// Largest number of clinicians.
pub const MAX_CLINICIANS: usize = 20;

/// A clinician.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct ClinicianLine {
    /// The name; empty for the only one who was never asked for it.
    pub name: String,
    /// Whether it is who is in.
    pub is_you: bool,
}

/// A clinician to be added.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct AddClinicianRequest {
    /// Their name.
    pub name: String,
    /// The name of whoever adds the second clinician; of no account later.
    pub own_name: Option<String>,
    /// Their first passphrase.
    pub first: Secret,
    /// The passphrase of whoever is in, to confirm it.
    pub confirmed: Secret,
}

/// A clinician to be removed.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub struct RemoveClinicianRequest {
    /// Their name.
    pub name: String,
    /// The passphrase of whoever is in, to confirm it.
    pub confirmed: Secret,
}
