//! An entry of a patient's visits as the clinic's store keeps it, encrypted: CBOR with integer keys. It never leaves the clinic in this form.
//!
//! Keys: 0 the moment in ms since 1970 UTC, 1 the offset in seconds, 2 the day in days since 1970, 3 the entry that it corrects, 4 the kind of
//! finding, 20 the name of the clinician who wrote it; an entry without a kind takes another back. From 10 on stand the parts of the finding.

use crate::cbor::{Malformed, MapIn, MapOut};
use crate::names::{Named, all, find, name};
use chrono::NaiveDate;
use exercises::catalogue::{Eyes, PrescriberFlag, Region, Surface};
use exercises::id::ItemId;
use exercises::plain_text::shown;
use exercises::plan::{BodySide, Side};
use exercises::score::Score;
use exercises::time::Stamp;
use exercises::visit::{
    Advice, Complained, Finding, MAX_TRIALS, Measure, Measured, Moment, OverallChange, Overridden, Screening, VisitEntry,
};
use std::collections::BTreeSet;

/// The bytes are no entry of a visit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("no entry of a visit has such a part: {field}")]
pub struct VisitEntryFault {
    /// The part at fault.
    pub field: &'static str,
}

impl From<Malformed> for VisitEntryFault {
    fn from(Malformed(field): Malformed) -> VisitEntryFault {
        VisitEntryFault { field }
    }
}

/// Writes an entry, without its number.
///
/// # Errors
/// If a finding is none that can be noted.
pub fn write(entry: &VisitEntry) -> Result<Vec<u8>, VisitEntryFault> {
    let mut map = MapOut::default();
    map.put(0, "moment", &entry.at.utc_ms)?;
    map.put(1, "offset", &entry.at.offset_s)?;
    map.put(2, "day", &entry.day.to_epoch_days())?;
    map.put_some(3, "replaces", entry.replaces.as_ref())?;
    if let Some(finding) = &entry.finding {
        finding.check().map_err(|_| Malformed("finding"))?;
        put(&mut map, finding)?;
    }
    map.put_some(20, "by", entry.by.as_ref())?;
    Ok(map.finish())
}

fn put(map: &mut MapOut, finding: &Finding) -> Result<(), Malformed> {
    match finding {
        Finding::Complaint(Complained { region, side, line, score }) => {
            map.put(4, "kind", &0u8)?;
            map.put(10, "region", &name(region))?;
            map.put(11, "side", &name(side))?;
            map.put(12, "line", line)?;
            map.put(13, "score", &u8::from(*score))
        }
        Finding::Change(OverallChange { score, words }) => {
            map.put(4, "kind", &1u8)?;
            map.put(10, "score", score)?;
            map.put(11, "words", words)
        }
        Finding::Measure(measure) => {
            map.put(4, "kind", &2u8)?;
            put_measure(map, measure)
        }
        Finding::Screening(Screening { flags, fell }) => {
            map.put(4, "kind", &3u8)?;
            map.put_list(10, "flags", &flags.iter().map(name).collect::<Vec<_>>())?;
            map.put(11, "fell", fell)
        }
        Finding::Note(note) => {
            map.put(4, "kind", &4u8)?;
            map.put(10, "note", note)
        }
        Finding::Overridden(Overridden { item, proposed, reason }) => {
            map.put(4, "kind", &5u8)?;
            map.put(10, "item", &item.0)?;
            map.put(11, "proposed", &name(proposed))?;
            map.put(12, "reason", reason)
        }
    }
}

fn put_measure(map: &mut MapOut, measure: &Measure) -> Result<(), Malformed> {
    let (what, first, second) = match &measure.what {
        Measured::Pain { movement } => (0u8, Some(movement.as_str()), None),
        Measured::Motion { movement } => (1, Some(movement.as_str()), None),
        Measured::Grip => (2, None, None),
        Measured::ChairRise => (3, None, None),
        Measured::Stance { surface, eyes } => (4, Some(name(surface)), Some(name(eyes))),
        Measured::Other { name, unit } => (5, Some(name.as_str()), Some(unit.as_str())),
    };
    map.put(10, "what", &what)?;
    map.put_some(11, "what in particular", first.as_ref())?;
    map.put_some(12, "unit or eyes", second.as_ref())?;
    map.put(13, "moment of the visit", &name(&measure.moment))?;
    map.put_some(14, "side", measure.side.map(|side| name(&side)).as_ref())?;
    map.put_list(15, "results", &measure.tenths)
}

/// Reads what [`write()`] wrote; `n` is the entry's number. Keys that are not known are ignored.
///
/// # Errors
/// The part whose value an entry cannot have.
pub fn read(n: u32, bytes: &[u8]) -> Result<VisitEntry, VisitEntryFault> {
    let map = MapIn::split(bytes, "entry of a visit")?;
    let at = Stamp { utc_ms: map.need(0, "moment")?, offset_s: map.need(1, "offset")? };
    let day = NaiveDate::from_epoch_days(map.need(2, "day")?).ok_or(Malformed("day"))?;
    let finding = map.some::<u8>(4, "kind")?.map(|kind| finding(kind, &map)).transpose()?;
    if finding.as_ref().is_some_and(|finding| finding.check().is_err()) {
        return Err(Malformed("finding").into());
    }
    let by = map.some::<&str>(20, "by")?.map(|name| shown(name).into_owned());
    Ok(VisitEntry { n, at, day, replaces: map.some(3, "replaces")?, finding, by })
}

fn finding(kind: u8, map: &MapIn<'_>) -> Result<Finding, Malformed> {
    let text = |key, field| map.need::<&str>(key, field).map(|text| shown(text).into_owned());
    Ok(match kind {
        0 => Finding::Complaint(Complained {
            region: choice::<Region>(map, 10, "region")?,
            side: choice::<Side>(map, 11, "side")?,
            line: text(12, "line")?,
            score: Score::new(map.need(13, "score")?).ok_or(Malformed("score"))?,
        }),
        1 => Finding::Change(OverallChange { score: map.need(10, "score")?, words: text(11, "words")? }),
        2 => Finding::Measure(Measure {
            what: measured(map)?,
            moment: choice::<Moment>(map, 13, "moment of the visit")?,
            side: some_choice::<BodySide>(map, 14, "side")?,
            tenths: map.list::<i32, MAX_TRIALS>(15, "results")?,
        }),
        3 => Finding::Screening(Screening { flags: flags(map)?, fell: map.need(11, "fell")? }),
        4 => Finding::Note(text(10, "note")?),
        5 => Finding::Overridden(Overridden {
            item: ItemId(map.need(10, "item")?),
            proposed: choice::<Advice>(map, 11, "proposed")?,
            reason: text(12, "reason")?,
        }),
        _ => return Err(Malformed("kind")),
    })
}

fn measured(map: &MapIn<'_>) -> Result<Measured, Malformed> {
    let text = |key, field| map.need::<&str>(key, field).map(|text| shown(text).into_owned());
    Ok(match map.need::<u8>(10, "what")? {
        0 => Measured::Pain { movement: text(11, "movement")? },
        1 => Measured::Motion { movement: text(11, "movement")? },
        2 => Measured::Grip,
        3 => Measured::ChairRise,
        4 => Measured::Stance { surface: choice::<Surface>(map, 11, "surface")?, eyes: choice::<Eyes>(map, 12, "eyes")? },
        5 => Measured::Other { name: text(11, "name")?, unit: text(12, "unit")? },
        _ => return Err(Malformed("what")),
    })
}

/// A later version may know more conditions; one that this one does not know is passed over.
fn flags(map: &MapIn<'_>) -> Result<BTreeSet<PrescriberFlag>, Malformed> {
    const MOST: usize = 64;
    Ok(map.list::<&str, MOST>(10, "flags")?.into_iter().filter_map(find).collect())
}

fn choice<T: Named>(map: &MapIn<'_>, key: u8, field: &'static str) -> Result<T, Malformed> {
    some_choice(map, key, field)?.ok_or(Malformed(field))
}

fn some_choice<T: Named>(map: &MapIn<'_>, key: u8, field: &'static str) -> Result<Option<T>, Malformed> {
    debug_assert!(!all::<T>().is_empty(), "{field}");
    map.some::<&str>(key, field)?.map(|text| find(text).ok_or(Malformed(field))).transpose()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn entry(finding: Option<Finding>, replaces: Option<u32>) -> VisitEntry {
        let at = Stamp { utc_ms: 1_803_000_000_000, offset_s: 3_600 };
        VisitEntry { n: 7, at, day: NaiveDate::from_ymd_opt(2027, 2, 19).expect("a date"), replaces, finding, by: None }
    }

    fn measure(what: Measured, side: Option<BodySide>, tenths: &[i32]) -> Finding {
        Finding::Measure(Measure { what, moment: Moment::After, side, tenths: tenths.to_vec() })
    }

    fn one_of_each() -> Vec<Finding> {
        let score = Score::new(6).expect("a score");
        let left = Some(BodySide::Left);
        vec![
            Finding::Complaint(Complained {
                region: Region::LowBack,
                side: Side::Both,
                line: "after driving".into(),
                score,
            }),
            Finding::Change(OverallChange { score: -3, words: String::new() }),
            measure(Measured::Pain { movement: "bending".into() }, None, &[40]),
            measure(Measured::Motion { movement: "turning".into() }, left, &[-55]),
            measure(Measured::Grip, left, &[312, 320]),
            measure(Measured::ChairRise, None, &[140]),
            measure(Measured::Stance { surface: Surface::Firm, eyes: Eyes::Closed }, left, &[80, 600, 91]),
            measure(Measured::Other { name: "step".into(), unit: "cm".into() }, None, &[325]),
            Finding::Screening(Screening { flags: PrescriberFlag::ALL.into(), fell: true }),
            Finding::Screening(Screening { flags: BTreeSet::new(), fell: false }),
            Finding::Note("two\nlines".into()),
            Finding::Overridden(Overridden { item: ItemId(3), proposed: Advice::Reduce, reason: "he wants it".into() }),
        ]
    }

    #[test]
    fn every_entry_is_read_as_it_was_written() {
        for finding in one_of_each() {
            let written = entry(Some(finding), Some(3));
            assert_eq!(read(7, &write(&written).expect("it can be noted")), Ok(written));
        }
        let named = VisitEntry { by: Some("Rowan Hale".into()), ..entry(Some(Finding::Note("x".into())), None) };
        assert_eq!(read(7, &write(&named).expect("it can be noted")), Ok(named));
        let taken_back = entry(None, Some(5));
        assert_eq!(read(7, &write(&taken_back).expect("nothing in it")), Ok(taken_back));
    }

    #[test]
    fn the_bytes_stay_as_they_are() {
        let bytes = write(&entry(Some(Finding::Note("x".into())), None)).expect("it can be noted");
        let hex: String = bytes.iter().map(|byte| format!("{byte:02x}")).collect();
        assert_eq!(hex, "a5001b000001a3cb2cae0001190e100219518404040a6178");
    }

    #[test]
    fn damaged_entries_name_what_is_wrong_and_none_panics() {
        for finding in one_of_each() {
            let bytes = write(&entry(Some(finding), None)).expect("it can be noted");
            for end in 0..bytes.len() {
                assert!(read(7, &bytes[..end]).is_err());
            }
            for place in 0..bytes.len() {
                let mut changed = bytes.clone();
                changed[place] ^= 0x15;
                let _ = read(7, &changed);
            }
        }
    }
}
