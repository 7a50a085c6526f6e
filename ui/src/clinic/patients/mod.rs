//! All patients of the clinic.

mod add;
mod filters;
mod line;
mod patients_page;
mod receive;
mod remove;
mod told;

pub use patients_page::Patients;
pub use receive::Receive;
pub use remove::RemovePatient;
