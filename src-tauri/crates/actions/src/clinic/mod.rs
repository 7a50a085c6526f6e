//! What the clinician can do.

pub mod devices;
pub mod drafting;
pub mod idle;
mod incoming;
pub mod issuing;
pub mod lock;
pub mod norms;
mod numbering;
pub mod passphrase;
pub mod patients;
pub mod receiving;
pub mod renewing;
pub mod reviewing;
pub(crate) mod rows;
pub mod saved_keys;
mod sealed;
pub(crate) mod upkeep;
