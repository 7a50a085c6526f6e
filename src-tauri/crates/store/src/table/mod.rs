//! The tables, one file each: its SQL, its row, its reads and its writes.
//!
//! For both roles: [`setting`]. For the patient: [`log`], [`card`], [`entry`]. For the clinic, encrypted: [`keys`], [`patient`],
//! [`clinician`], [`issued`], [`received`], [`norms`], [`draft`], [`device`], [`own_exercise`], [`plan_set`],
//! [`visit`], [`patient_case`], [`digest`], and [`manifest`] over all of these but the keys and the digests.

pub mod card;
pub mod clinician;
pub mod device;
pub mod digest;
pub mod draft;
pub mod entry;
pub mod former_log;
pub mod issued;
pub mod keys;
pub mod log;
pub mod manifest;
pub mod norms;
pub mod origin;
pub mod own_exercise;
pub mod patient;
pub mod patient_case;
pub mod plan_set;
pub mod received;
pub mod setting;
pub mod visit;
