//! A set of a clinic: what it prescribes often, under a name of its own. As its store keeps it, encrypted: CBOR with integer keys, in which
//! the items are a plan file. What is handed over is the plan file alone.

use crate::cbor::{Malformed, MapIn, MapOut};
use crate::plan_file;
use chrono::NaiveDate;
use exercises::plain_text::is_hidden;
use exercises::plan::{Item, Prescription, Schedule};

/// Largest number of characters in a set's name.
pub const MAX_NAME: usize = exercises::plan::MAX_NAME;

/// A set.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PlanSet {
    /// What the clinic calls it.
    pub name: String,
    /// A plan file with its items.
    pub plan: String,
}

/// The bytes are not a set, or it has a part that no set has.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("no set has such a part: {field}")]
pub struct PlanSetFault {
    /// The part at fault.
    pub field: &'static str,
}

impl From<Malformed> for PlanSetFault {
    fn from(Malformed(field): Malformed) -> PlanSetFault {
        PlanSetFault { field }
    }
}

/// Whether a set can have this name: 1 to [`MAX_NAME`] characters, all of which are seen, and no space around them.
pub fn is_name(name: &str) -> bool {
    let seen = name.chars().all(|character| !character.is_control() && !is_hidden(character));
    seen && name.trim() == name && (1..=MAX_NAME).contains(&name.chars().count())
}

/// The day on which the plan of a set begins: sets have no dates, and their days lie as far from it as in the plan that they came from.
pub fn start() -> NaiveDate {
    NaiveDate::from_ymd_opt(2020, 1, 1).expect("a date of the calendar")
}

/// What of a prescription of `today` belongs into a set: its items without those that are over, for no complaint, because that is the
/// patient's.
pub fn of_prescription(prescription: &Prescription, today: NaiveDate) -> Prescription {
    let earlier = start().signed_duration_since(today).num_days();
    let items = prescription.items.iter().filter_map(|item| {
        let phase = item.phase.left_on(today)?.later(earlier);
        let schedule =
            Schedule { days: item.schedule.days.counted_from(phase.first.unwrap_or(start())), ..item.schedule.clone() };
        Some(Item { serves: None, content: 0, phase, schedule, ..item.clone() })
    });
    Prescription {
        review: prescription.review,
        age: None,
        absent: Default::default(),
        confirmed: None,
        items: items.collect(),
        complaints: Vec::new(),
        activities: Vec::new(),
        baselines: Vec::new(),
        aftercare: Vec::new(),
        cleared: Vec::new(),
    }
}

/// Writes a set.
///
/// # Errors
/// If its name is none, or its plan is larger than a plan file may be.
pub fn write(set: &PlanSet) -> Result<Vec<u8>, PlanSetFault> {
    let PlanSet { name, plan } = set;
    let mut map = MapOut::default();
    map.put(0, "name", &checked(name, is_name(name), "name")?)?;
    map.put(1, "plan", &checked(plan, fits(plan), "plan")?)?;
    Ok(map.finish())
}

/// Reads what [`write()`] wrote, ignoring keys that it does not know.
///
/// # Errors
/// The part whose value a set cannot have.
pub fn read(bytes: &[u8]) -> Result<PlanSet, PlanSetFault> {
    let map = MapIn::split(bytes, "set")?;
    let (name, plan): (&str, &str) = (map.need(0, "name")?, map.need(1, "plan")?);
    Ok(PlanSet {
        name: checked(name, is_name(name), "name")?.to_owned(),
        plan: checked(plan, fits(plan), "plan")?.to_owned(),
    })
}

fn fits(plan: &str) -> bool {
    plan.len() as u64 <= plan_file::MAX_BYTES
}

fn checked<'t>(text: &'t str, good: bool, field: &'static str) -> Result<&'t str, Malformed> {
    good.then_some(text).ok_or(Malformed(field))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn set(name: &str) -> PlanSet {
        PlanSet { name: name.into(), plan: "x".into() }
    }

    #[test]
    fn a_set_comes_back_and_is_written_as_it_always_was() {
        let bytes = write(&set("desk")).expect("a set");
        assert_eq!(bytes, b"\xA2\x00\x64desk\x01\x61x");
        assert_eq!(read(&bytes), Ok(set("desk")));
        for at in 0..bytes.len() {
            assert!(read(&bytes[..at]).is_err(), "cut at {at}");
        }
    }

    #[test]
    fn a_name_is_seen_in_full_and_not_too_long() {
        assert!(is_name("Cuello, 1.ª semana") && is_name(&"ñ".repeat(MAX_NAME)));
        for bad in ["", " desk", "desk ", "two\nlines", "\u{202e}desk", "d\u{61c}esk", &"n".repeat(MAX_NAME + 1)] {
            assert!(!is_name(bad), "{bad:?}");
            assert_eq!(write(&set(bad)), Err(PlanSetFault { field: "name" }));
        }
        assert_eq!(read(b"\xA2\x00\x64d\x1bsk\x01\x61x"), Err(PlanSetFault { field: "name" }));
    }
}
