//! Permanent identifiers: plans, logs, items, complaints, runs.

use std::fmt;
use std::str::FromStr;

/// A text that is not the name of a plan, a log or an entry.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NotAName;

impl fmt::Display for NotAName {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("not the name of a plan, a log or an entry")
    }
}

impl core::error::Error for NotAName {}

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

        /// Sixteen hexadecimal digits, small or capital.
        impl FromStr for $name {
            type Err = NotAName;

            fn from_str(text: &str) -> Result<Self, NotAName> {
                // The number's own reader would take a sign as well.
                let digits = text.len() == 16 && text.bytes().all(|byte| byte.is_ascii_hexdigit());
                let number = u64::from_str_radix(text, 16).ok().filter(|_| digits);
                number.map(|number| $name(number.to_be_bytes())).ok_or(NotAName)
            }
        }
    };
}

eight_bytes! {
    /// One patient's plan at one clinic, through all its revisions. Random; not derived from the person.
    PlanId
}
eight_bytes! {
    /// One alarm. Random, because numbers of entries are no names: a log that was restored from a backup repeats them.
    AlarmId
}
eight_bytes! {
    /// One installation's log. Random, so that two devices of one patient never claim the same entry.
    LogId
}

impl LogId {
    /// The log of a diary that was kept on paper and entered at the clinic. No device has it: ids of logs are random.
    pub const PAPER: LogId = LogId(*b"on paper");
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

/// An entry of one log, on whichever device.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct EntryRef {
    /// The log that contains it.
    pub log: LogId,
    /// Its number within that log, from 1.
    pub n: u32,
}

impl AlarmId {
    /// The name of an alarm of a log of version 1, in which alarms have no names of their own.
    pub fn of_entry(entry: EntryRef) -> AlarmId {
        let mut bytes = entry.log.0;
        bytes.iter_mut().skip(4).zip(entry.n.to_be_bytes()).for_each(|(byte, n)| *byte ^= n);
        AlarmId(bytes)
    }
}

impl fmt::Display for EntryRef {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}:{}", self.log, self.n)
    }
}

impl FromStr for EntryRef {
    type Err = NotAName;

    fn from_str(text: &str) -> Result<EntryRef, NotAName> {
        let (log, n) = text.split_once(':').ok_or(NotAName)?;
        let digits = n.bytes().all(|byte| byte.is_ascii_digit());
        let n = n.parse().ok().filter(|_| digits).ok_or(NotAName)?;
        Ok(EntryRef { log: log.parse()?, n })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn an_entry_is_written_as_its_log_and_its_number() {
        let entry = EntryRef { log: LogId([0x01, 0x23, 0x45, 0x67, 0x89, 0xAB, 0xCD, 0xEF]), n: 42 };
        assert_eq!(entry.to_string(), "0123456789abcdef:42");
        assert_eq!("0123456789ABCDEF:42".parse(), Ok(entry));
    }

    #[test]
    fn what_is_no_name_is_refused() {
        let logs = [
            "0123456789abcde",
            "0123456789abcdef0",
            "0123456789abcdeg",
            "+123456789abcdef",
            " 123456789abcdef",
            "0x23456789abcdef",
            "",
        ];
        for log in logs {
            assert_eq!(log.parse::<LogId>(), Err(NotAName), "{log:?}");
            assert_eq!(log.parse::<PlanId>(), Err(NotAName), "{log:?}");
            assert_eq!(format!("{log}:42").parse::<EntryRef>(), Err(NotAName), "{log:?}");
        }
        for n in ["", ":", ":+1", ":-1", ": 1", ":1 ", ":1:1", ":x", ":4294967296", "42"] {
            assert_eq!(format!("0123456789abcdef{n}").parse::<EntryRef>(), Err(NotAName), "{n:?}");
        }
    }

    proptest! {
        #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

        #[test]
        fn every_name_leads_back_to_what_it_names(bytes in any::<[u8; 8]>(), n in any::<u32>()) {
            let entry = EntryRef { log: LogId(bytes), n };
            prop_assert_eq!(entry.to_string().parse(), Ok(entry));
            prop_assert_eq!(PlanId(bytes).to_string().parse(), Ok(PlanId(bytes)));
        }

        #[test]
        fn any_text_is_a_name_or_refused(text in "[0-9a-fA-F:+ é]{0,24}") {
            if let Ok(entry) = text.parse::<EntryRef>() {
                prop_assert_eq!(entry.to_string().parse(), Ok(entry));
            }
        }
    }
}
