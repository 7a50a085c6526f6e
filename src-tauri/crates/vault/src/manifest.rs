//! What rows the clinic's store has: their number, and a keyed sum over them, for each patient. A row that was removed, put back as
//! it was earlier or moved to another patient from outside does not fit them any more.
//!
//! The sum of a row is HMAC-SHA-256 over its place and its sealed bytes, under a key that is derived from the data key. The sum of a
//! patient is the XOR of the sums of the rows, so that a write changes it without the other rows being read. Nobody else sees
//! either: the manifest itself is sealed as a row.
//!
//! ```text
//! plain    version | 1 if it was made anew, else 0 | each patient: row, i64 | number of rows, u32 | sum, 32
//! ```
//!
//! It says nothing about a whole store that was put back to an older copy: that is consistent in itself.

use crate::rows::RowPlace;
use crate::{Keys, labels};
use hmac::{Hmac, Mac};
use sha2::Sha256;
use std::collections::{BTreeMap, BTreeSet};
use std::fmt;

const VERSION: u8 = 1;
/// Length of a patient's part, in bytes.
const PART: usize = 8 + 4 + 32;

/// The keyed sum of one row.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct RowSum([u8; 32]);

/// The keyed sum of a row with these sealed bytes. For many rows, [`RowSums`] derives the key once.
pub fn row_sum(keys: &Keys, place: &RowPlace, sealed: &[u8]) -> RowSum {
    RowSums::of(keys).row(place, sealed)
}

/// Makes the keyed sums of many rows: deriving the key takes longer than summing up a short row.
pub struct RowSums(Hmac<Sha256>);

impl RowSums {
    /// The sums under these keys.
    pub fn of(keys: &Keys) -> RowSums {
        RowSums(labels::row_sum(keys))
    }

    /// The keyed sum of a row with these sealed bytes.
    pub fn row(&self, place: &RowPlace, sealed: &[u8]) -> RowSum {
        let mut sum = self.0.clone();
        for part in [place.bound(), sealed] {
            sum.update(&(part.len() as u64).to_be_bytes());
            sum.update(part);
        }
        RowSum(sum.finalize().into_bytes().into())
    }
}

/// The rows of one patient: two are equal only if no row was added, removed or changed in between.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Rows {
    number: u32,
    sum: [u8; 32],
}

/// The rows of all patients, by the patient's row; 0 for what belongs to no patient.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Manifest {
    of: BTreeMap<i64, Rows>,
    /// Whether it was made from the rows that were found, because the one before was gone: then it says nothing about before.
    made_anew: bool,
}

impl Manifest {
    /// This manifest, made from the rows that were found because the one before was gone.
    pub fn made_anew(self) -> Manifest {
        Manifest { made_anew: true, ..self }
    }

    /// Whether it was made from the rows that were found.
    pub fn is_made_anew(&self) -> bool {
        self.made_anew
    }

    /// Counts a row in.
    pub fn add(&mut self, patient: i64, row: RowSum) {
        let rows = self.of.entry(patient).or_default();
        rows.number = rows.number.saturating_add(1);
        rows.toggle(row);
    }

    /// Counts a row out that is removed or replaced.
    pub fn remove(&mut self, patient: i64, row: RowSum) {
        let rows = self.of.entry(patient).or_default();
        rows.number = rows.number.saturating_sub(1);
        rows.toggle(row);
        if *rows == Rows::default() {
            self.of.remove(&patient);
        }
    }

    /// Counts all rows of a patient out.
    pub fn forget(&mut self, patient: i64) {
        self.of.remove(&patient);
    }

    /// The rows of a patient; those of one who has none are equal to no others.
    pub fn rows_of(&self, patient: i64) -> Rows {
        self.of.get(&patient).copied().unwrap_or_default()
    }

    /// Takes a patient's rows for these.
    pub fn set_rows_of(&mut self, patient: i64, rows: Rows) {
        if rows == Rows::default() {
            self.of.remove(&patient);
        } else {
            self.of.insert(patient, rows);
        }
    }

    /// The patients whose rows in `found` are not those of this manifest, with the least number of rows that must have changed.
    pub fn differences(&self, found: &Manifest) -> BTreeMap<i64, u32> {
        let patients: BTreeSet<i64> = self.of.keys().chain(found.of.keys()).copied().collect();
        let differs = patients.into_iter().filter_map(|patient| {
            let (expected, there) = (self.rows_of(patient), found.rows_of(patient));
            (expected != there).then(|| (patient, expected.number.abs_diff(there.number).max(1)))
        });
        differs.collect()
    }

    /// Its bytes, to be sealed.
    pub fn to_bytes(&self) -> Vec<u8> {
        let mut bytes = vec![VERSION, self.made_anew.into()];
        for (patient, Rows { number, sum }) in &self.of {
            bytes.extend(patient.to_be_bytes());
            bytes.extend(number.to_be_bytes());
            bytes.extend(sum);
        }
        bytes
    }

    /// Reads what [`Manifest::to_bytes`] wrote; `None` for anything else.
    pub fn from_bytes(bytes: &[u8]) -> Option<Manifest> {
        let (head, parts) = bytes.split_at_checked(2)?;
        let made_anew = match head {
            [VERSION, 0] => false,
            [VERSION, 1] => true,
            _ => return None,
        };
        let parts = parts.chunks(PART).map(|part| {
            let (patient, rest) = part.split_first_chunk::<8>()?;
            let (number, sum) = rest.split_first_chunk::<4>()?;
            let rows = Rows { number: u32::from_be_bytes(*number), sum: sum.try_into().ok()? };
            Some((i64::from_be_bytes(*patient), rows))
        });
        Some(Manifest { of: parts.collect::<Option<_>>()?, made_anew })
    }
}

impl fmt::Display for Rows {
    /// Number and sum, to be compared with what was written earlier.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}-", self.number)?;
        self.sum.iter().try_for_each(|byte| write!(f, "{byte:02x}"))
    }
}

impl Rows {
    fn toggle(&mut self, row: RowSum) {
        self.sum.iter_mut().zip(row.0).for_each(|(byte, other)| *byte ^= other);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn row(keys: &Keys, id: u8, sealed: &[u8]) -> RowSum {
        row_sum(keys, &RowPlace::new("issued", &[&[id], b"patient"]), sealed)
    }

    #[test]
    fn what_was_removed_replaced_or_moved_differs() {
        let keys = crate::keys::for_now();
        let (one, two, older) = (row(&keys, 1, b"one"), row(&keys, 2, b"two"), row(&keys, 2, b"older"));
        let of = |rows: &[(i64, RowSum)]| {
            let mut manifest = Manifest::default();
            rows.iter().for_each(|(patient, sum)| manifest.add(*patient, *sum));
            manifest
        };
        let kept = of(&[(1, one), (2, two)]);
        let differences = |rows: &[(i64, RowSum)]| kept.differences(&of(rows)).into_iter().collect::<Vec<_>>();
        assert_eq!(differences(&[(2, two), (1, one)]), []);
        assert_eq!(differences(&[(1, one)]), [(2, 1)]);
        assert_eq!(differences(&[(1, one), (2, older)]), [(2, 1)]);
        assert_eq!(differences(&[(1, two), (2, one)]), [(1, 1), (2, 1)]);
        assert_eq!(differences(&[(1, one), (2, two), (2, older), (3, older)]), [(2, 1), (3, 1)]);
    }

    #[test]
    fn counting_out_is_the_opposite_of_counting_in() {
        let keys = crate::keys::for_now();
        let mut manifest = Manifest::default();
        manifest.add(7, row(&keys, 1, b"one"));
        let before = manifest.clone();
        manifest.add(7, row(&keys, 2, b"two"));
        manifest.add(9, row(&keys, 3, b"three"));
        manifest.remove(7, row(&keys, 2, b"two"));
        manifest.forget(9);
        assert_eq!(manifest, before);
        manifest.remove(7, row(&keys, 1, b"one"));
        assert_eq!(manifest, Manifest::default());
    }

    #[test]
    fn the_text_of_a_patients_rows_changes_with_any_of_them() {
        let keys = crate::keys::for_now();
        let mut manifest = Manifest::default();
        let mut seen = BTreeSet::from([manifest.rows_of(7).to_string()]);
        for id in 1..4 {
            manifest.add(7, row(&keys, id, b"one"));
            assert!(seen.insert(manifest.rows_of(7).to_string()), "row {id}");
        }
        let mut other = Manifest::default();
        other.set_rows_of(7, manifest.rows_of(7));
        assert_eq!(other, manifest);
        other.set_rows_of(7, Rows::default());
        assert_eq!(other, Manifest::default());
    }

    #[test]
    fn its_bytes_are_read_again_and_no_others() {
        let keys = crate::keys::for_now();
        let mut manifest = Manifest { made_anew: true, ..Manifest::default() };
        manifest.add(7, row(&keys, 1, b"one"));
        manifest.add(-9, row(&keys, 2, b"two"));
        let bytes = manifest.to_bytes();
        assert_eq!(bytes.len(), 2 + 2 * PART);
        assert_eq!(Manifest::from_bytes(&bytes), Some(manifest));
        for cut in (0..bytes.len()).filter(|cut| *cut < 2 || (cut - 2) % PART != 0) {
            assert_eq!(Manifest::from_bytes(&bytes[..cut]), None, "cut at {cut}");
        }
        assert_eq!(Manifest::from_bytes(&[2, 0]), None);
    }

    #[test]
    fn the_sum_depends_on_keys_place_and_bytes() {
        let keys = crate::keys::for_now();
        assert_eq!(row(&keys, 1, b"one"), row(&keys, 1, b"one"));
        assert_ne!(row(&keys, 1, b"one"), row(&keys, 2, b"one"));
        assert_ne!(row(&keys, 1, b"one"), row(&keys, 1, b"two"));
        assert_ne!(row(&keys, 1, b"one"), row(&crate::keys::for_now(), 1, b"one"));
    }
}
