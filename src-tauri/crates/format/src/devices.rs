//! The devices that a patient's summaries came from, as the clinic stores them, encrypted. They never leave the clinic.
//!
//! ```text
//! version | each device: log, 8 | day of its first summary, days since 1970, i32, or i32::MIN if not known | 1 if left out, else 0
//! ```

use chrono::{Datelike, NaiveDate};
use exercises::id::LogId;

const VERSION: u8 = 1;
/// Length of a device's part, in bytes.
const PART: usize = 8 + 4 + 1;
/// The day is not known.
const NOT_KNOWN: i32 = i32::MIN;
/// 1 January 1970, counted as chrono does.
const EPOCH: i32 = 719_163;

/// One device.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Device {
    /// Its log.
    pub log: LogId,
    /// The day on which its first summary was received; `None` for one that was received before this was noted.
    pub first_seen: Option<NaiveDate>,
    /// Whether the clinic leaves it out of the review.
    pub left_out: bool,
}

/// Writes the devices as bytes.
pub fn write(devices: &[Device]) -> Vec<u8> {
    let mut bytes = vec![VERSION];
    for Device { log, first_seen, left_out } in devices {
        bytes.extend(log.0);
        bytes.extend(first_seen.map_or(NOT_KNOWN, |day| day.num_days_from_ce() - EPOCH).to_be_bytes());
        bytes.push((*left_out).into());
    }
    bytes
}

/// Reads what [`write()`] wrote; `None` for anything else.
pub fn read(bytes: &[u8]) -> Option<Vec<Device>> {
    let parts = bytes.strip_prefix(&[VERSION])?.chunks(PART);
    let device = |part: &[u8]| {
        let (log, rest) = part.split_first_chunk::<8>()?;
        let (day, left_out) = rest.split_first_chunk::<4>()?;
        let first_seen = match i32::from_be_bytes(*day) {
            NOT_KNOWN => None,
            day => Some(NaiveDate::from_num_days_from_ce_opt(day.checked_add(EPOCH)?)?),
        };
        let left_out = match left_out {
            [0] => false,
            [1] => true,
            _ => return None,
        };
        Some(Device { log: LogId(*log), first_seen, left_out })
    };
    parts.map(device).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn devices() -> Vec<Device> {
        let first_seen = NaiveDate::from_ymd_opt(2026, 11, 25);
        vec![
            Device { log: LogId([1; 8]), first_seen, left_out: false },
            Device { log: LogId([2; 8]), first_seen: None, left_out: true },
        ]
    }

    /// These bytes never change within a version.
    #[test]
    fn devices_are_written_as_they_always_were() {
        let mut bytes = vec![1];
        bytes.extend(*b"\x01\x01\x01\x01\x01\x01\x01\x01\x00\x00\x51\x2e\x00");
        bytes.extend(*b"\x02\x02\x02\x02\x02\x02\x02\x02\x80\x00\x00\x00\x01");
        assert_eq!(write(&devices()), bytes);
        assert_eq!(read(&bytes), Some(devices()));
        assert_eq!(read(&write(&[])), Some(Vec::new()));
    }

    #[test]
    fn what_is_cut_or_of_another_version_is_not_read() {
        let bytes = write(&devices());
        for length in (0..bytes.len()).filter(|length| *length == 0 || (length - 1) % PART != 0) {
            assert_eq!(read(&bytes[..length]), None, "cut at {length}");
        }
        assert_eq!(read(&[2]), None);
        let mut wrong = bytes;
        wrong[13] = 2;
        assert_eq!(read(&wrong), None);
    }
}
