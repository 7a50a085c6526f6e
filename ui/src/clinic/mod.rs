//! The clinician's side of the window.

mod clinic_window;
mod door;
mod fields;
mod head;
mod issued;
mod keeper;
mod patients;
mod plan;
mod review;
mod room;
mod width;

pub use clinic_window::Clinic;
pub use door::SetUp;
