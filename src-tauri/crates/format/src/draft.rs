//! A plan that is being written, as the clinic stores it until its card is issued: CBOR with integer keys. The plan's own
//! keys are those of a card, with the revision and the day of issue that it would have now; they are below 20. A draft never
//! leaves the clinic, where it is stored encrypted.

use crate::card::{read_prescription, write_prescription};
use crate::cbor::{Malformed, MapIn, MapOut};
use crate::parts::Date;
use exercises::draft::{Draft, Kept, TypedField, Unread, UsedNumbers};
use exercises::id::ItemId;
use exercises::plan::BodySide;

/// Largest number of fields with text that cannot be read; more than any page has.
const MAX_UNREAD: usize = 32;

/// The draft cannot be written, or the bytes are not a draft.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("no draft has such a part: {field}")]
pub struct DraftFault {
    /// The part at fault.
    pub field: &'static str,
}

impl From<Malformed> for DraftFault {
    fn from(Malformed(field): Malformed) -> DraftFault {
        DraftFault { field }
    }
}

/// Writes the draft as bytes.
///
/// # Errors
/// If a date is outside 2020 to 2199.
pub fn write(kept: &Kept) -> Result<Vec<u8>, DraftFault> {
    let Kept { draft: Draft { prescription, used, today }, replaces, unread, on } = kept;
    let mut map = MapOut::default();
    map.put(0, "revision", &replaces.unwrap_or(0).saturating_add(1))?;
    map.put(3, "issued", &Date(*today))?;
    write_prescription(&mut map, prescription)?;
    map.put(20, "day", &Date(*on))?;
    map.put(21, "numbers given", &(used.items, used.complaints, used.activities))?;
    let unread: Vec<(u8, u8, &str)> = unread.all().iter().map(|(field, text)| unread_out(*field, text)).collect();
    map.put_list(22, "unread", &unread)?;
    Ok(map.finish())
}

/// Reads what [`write()`] wrote, ignoring keys that it does not know.
///
/// # Errors
/// The part whose value a draft cannot have.
pub fn read(bytes: &[u8]) -> Result<Kept, DraftFault> {
    let map = MapIn::split(bytes, "draft")?;
    let revision: u16 = map.need(0, "revision")?;
    let (items, complaints, activities) = map.need::<(u8, u8, u8)>(21, "numbers given")?;
    let unread = map.list::<(u8, u8, String), MAX_UNREAD>(22, "unread")?;
    let unread: Option<Unread> = unread.into_iter().map(unread_in).collect();
    Ok(Kept {
        draft: Draft {
            prescription: read_prescription(&map)?,
            today: map.need::<Date>(3, "issued")?.0,
            used: UsedNumbers { items, complaints, activities },
        },
        replaces: revision.checked_sub(1).filter(|last| *last > 0),
        unread: unread.ok_or(Malformed("unread"))?,
        on: map.need::<Date>(20, "day")?.0,
    })
}

fn unread_out(field: TypedField, text: &str) -> (u8, u8, &str) {
    match field {
        TypedField::Times(ItemId(item)) => (0, item, text),
        TypedField::Stance(BodySide::Left) => (1, 0, text),
        TypedField::Stance(BodySide::Right) => (1, 1, text),
        TypedField::Visit => (2, 0, text),
    }
}

fn unread_in((kind, of, text): (u8, u8, String)) -> Option<(TypedField, String)> {
    let field = match (kind, of) {
        (0, item) => TypedField::Times(ItemId(item)),
        (1, 0) => TypedField::Stance(BodySide::Left),
        (1, 1) => TypedField::Stance(BodySide::Right),
        (2, 0) => TypedField::Visit,
        _ => return None,
    };
    Some((field, text))
}

#[cfg(test)]
mod tests {
    use super::*;
    use exercises::draft::first;
    use exercises::plan::Plan;

    fn kept() -> Kept {
        let card = crate::card::open(include_bytes!("../tests/frozen/card-1.bin")).expect("a card");
        let Plan { header, prescription } = card.into_card_after_checking_the_signature().plan;
        let legs = [BodySide::Left, BodySide::Right].map(TypedField::Stance);
        let fields = [TypedField::Times(ItemId(2)), legs[0], legs[1], TypedField::Visit];
        let unread = fields.into_iter().map(|field| (field, "8am 7pn".to_owned())).collect();
        let used = UsedNumbers { items: 7, complaints: 2, activities: 0 };
        let draft = Draft { prescription, today: header.issued, used };
        Kept { draft, replaces: Some(header.revision), unread, on: header.issued }
    }

    #[test]
    fn what_is_kept_is_read_again() {
        let day = kept().on;
        let empty = Kept { draft: first(day), replaces: None, unread: Unread::default(), on: day };
        for kept in [kept(), empty] {
            assert_eq!(read(&write(&kept).expect("a draft")), Ok(kept));
        }
    }

    #[test]
    fn a_half_done_plan_is_kept_as_it_is() {
        let mut half = kept();
        half.draft.prescription.items.clear();
        half.draft.prescription.complaints.iter_mut().for_each(|complaint| complaint.name.clear());
        assert_eq!(read(&write(&half).expect("a draft")), Ok(half));
    }

    #[test]
    fn bytes_cut_or_changed_anywhere_are_never_read_wrongly_without_a_fault() {
        let bytes = write(&kept()).expect("a draft");
        for at in 0..bytes.len() {
            assert!(read(&bytes[..at]).is_err(), "cut at {at}");
            let mut changed = bytes.clone();
            changed[at] = changed[at].wrapping_add(1);
            assert_ne!(read(&changed), Ok(kept()), "byte {at} says nothing");
        }
    }
}
