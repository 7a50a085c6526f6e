//! The tables, one file each: its SQL, its row, its reads and its writes.
//!
//! For both roles: [`setting`]. For the patient: [`log`], [`card`], [`entry`]. For the clinic, encrypted: [`keys`], [`patient`],
//! [`issued`], [`received`], [`norms`], [`draft`].

pub mod card;
pub mod draft;
pub mod entry;
pub mod issued;
pub mod keys;
pub mod log;
pub mod norms;
pub mod patient;
pub mod received;
pub mod setting;
