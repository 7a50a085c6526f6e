//! The clinician's side of the window.

mod case;
mod clinic_window;
mod context;
mod diary;
mod fields;
mod filter;
mod head;
mod issued;
mod keeper;
mod keys;
mod lock;
mod own;
mod patients;
mod plan;
mod receiving;
mod review;
mod together;
mod visit;
mod width;

pub use clinic_window::Clinic;
pub use lock::SetUp;
