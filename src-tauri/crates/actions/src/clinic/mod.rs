//! What the clinician can do.

pub mod devices;
mod digests;
pub mod drafting;
pub mod idle;
mod incoming;
pub mod issuing;
pub(crate) mod known_lines;
pub mod lock;
pub mod norms;
mod numbering;
mod own_catalogue;
pub mod own_drafts;
pub mod own_exercises;
pub(crate) mod own_rows;
pub mod passphrase;
pub mod patients;
pub mod printing;
pub mod receiving;
pub mod records;
pub mod renewing;
pub mod reviewing;
pub(crate) mod rows;
pub mod saved_keys;
mod sealed;
pub mod sets;
pub(crate) mod upkeep;
pub mod visiting;
