//! What is said of a data folder that is a copy, or was put back to an earlier state.

use crate::{Key, Words};
use wire::app::{Copied, Role};

impl Words {
    /// What it means for the person on this side.
    pub fn data_copied(self, role: Role, copied: Copied) -> &'static str {
        self.text(match (role, copied) {
            (Role::Patient, Copied::Moved) => Key::DataMovedPatient,
            (Role::Patient, Copied::PutBack) => Key::DataPutBackPatient,
            (Role::Clinic, Copied::Moved) => Key::DataMovedClinic,
            (Role::Clinic, Copied::PutBack) => Key::DataPutBackClinic,
        })
    }
}
