//! The bytes of a summary, part by part.

use super::{SummaryFault, contents};
use crate::cbor::{Malformed, MapIn};
use exercises::summary::{Summary, SummaryPart};

/// The bytes of each part that the summary has, before they are packed: its value as CBOR, in the order in which they are written. The key
/// before each value and the number of pairs at the beginning are left out.
///
/// # Errors
/// [`SummaryFault::Malformed`] for a summary that [`super::write`] would refuse.
pub fn parts(summary: &Summary) -> Result<Vec<(SummaryPart, Vec<u8>)>, SummaryFault> {
    let plain = contents::write(summary)?;
    let map = MapIn::split(&plain, "contents")?;
    let part = |(key, bytes): (u64, &[u8])| Some((part(key)?, bytes.to_vec()));
    map.pairs().map(part).collect::<Option<_>>().ok_or(Malformed("contents").into())
}

/// The part that is written under this key. Key 9 is of version 1, which is only read.
fn part(key: u64) -> Option<SummaryPart> {
    Some(match key {
        0 => SummaryPart::Plan,
        1 => SummaryPart::Log,
        2 => SummaryPart::Counter,
        3 => SummaryPart::From,
        4 => SummaryPart::Until,
        5 => SummaryPart::Taken,
        6 => SummaryPart::Seen,
        7 => SummaryPart::Days,
        8 => SummaryPart::Runs,
        10 => SummaryPart::Settled,
        11 => SummaryPart::Rated,
        12 => SummaryPart::Alarms,
        13 => SummaryPart::Delays,
        14 => SummaryPart::Note,
        15 => SummaryPart::Corrections,
        16 => SummaryPart::Mornings,
        17 => SummaryPart::During,
        18 => SummaryPart::WellAgain,
        19 => SummaryPart::Former,
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::summary::{Letter, read};

    /// The frozen letter has every part of its version but the former logs.
    #[test]
    fn every_byte_of_the_contents_belongs_to_a_part() {
        let letter = Letter::parse(include_bytes!("../../tests/frozen/summary-2.letter")).expect("a letter");
        let mut summary = read(&letter.body).expect("a summary");
        for note in [None, Some("Stairs are easier".to_owned())] {
            summary.note = note;
            let parts = parts(&summary).expect("a summary");
            let plain = contents::write(&summary).expect("a summary");
            // The number of pairs takes a byte up to 23 of them, and so does each key.
            let values: usize = parts.iter().map(|(_, bytes)| bytes.len() + 1).sum();
            assert_eq!(values + 1, plain.len());
            assert!(parts.iter().all(|(_, bytes)| plain.windows(bytes.len()).any(|window| window == bytes)));
            assert_eq!(parts.iter().any(|(part, _)| *part == SummaryPart::Note), summary.note.is_some());
        }
    }
}
