//! What the clinician can do.

pub mod door;
pub mod drafting;
pub mod issuing;
pub mod patients;
pub mod receiving;
pub mod reviewing;
mod rows;
