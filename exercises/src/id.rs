//! Permanent identifiers: plans, logs, items, complaints, runs.

use std::fmt;

macro_rules! eight_bytes {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        #[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
        pub struct $name(pub [u8; 8]);

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                self.0.iter().try_for_each(|byte| write!(f, "{byte:02x}"))
            }
        }
    };
}

eight_bytes! {
    /// One patient's plan at one clinic, through all its revisions. Random; not derived from the person.
    PlanId
}
eight_bytes! {
    /// One installation's log. Random, so that two devices of one patient never claim the same entry.
    LogId
}

macro_rules! small_number {
    ($(#[$doc:meta])* $name:ident($inner:ty)) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        #[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
        pub struct $name(pub $inner);

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                write!(f, "{}", self.0)
            }
        }
    };
}

small_number! {
    /// An item of a plan. It keeps its number through revisions, so that its history continues.
    ItemId(u8)
}
small_number! {
    /// A complaint that items are assigned to.
    ComplaintId(u8)
}
small_number! {
    /// An activity that the patient named.
    ActivityId(u8)
}
small_number! {
    /// A run, counted from 1 within one log.
    RunId(u32)
}

/// An entry of one log, on whichever device. Alarms are cleared by this identifier.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct EntryRef {
    /// The log that contains it.
    pub log: LogId,
    /// Its number within that log, from 1.
    pub n: u32,
}
