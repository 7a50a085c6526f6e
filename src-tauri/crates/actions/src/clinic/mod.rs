//! What the clinician can do.

pub mod door;
pub mod drafting;
pub mod issuing;
pub mod norms;
pub mod patients;
mod pieces;
pub mod receiving;
pub mod reviewing;
mod rows;
