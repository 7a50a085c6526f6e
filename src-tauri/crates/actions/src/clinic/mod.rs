//! What the clinician can do.

pub mod drafting;
mod incoming;
pub mod issuing;
pub mod lock;
pub mod norms;
pub mod patients;
pub mod receiving;
pub mod reviewing;
pub(crate) mod rows;
