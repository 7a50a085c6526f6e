//! The contents of a card as CBOR. The keys never change: a new part gets a new key, and an old key is never used again.

use super::items::{self, ActivityOut, AftercareOut, BaselineOut, ClearedAlarmOut, ClearedOut, ComplaintOut, ItemOut};
use super::{
    Card, CardFault, MAX_CONTENTS, MAX_OWN, PairingSecret, VERSION, WITH_FORMER_KEYS, WITHOUT_FORMER_KEYS, dictionary,
    former,
};
use crate::cbor::{Malformed, MapIn, MapOut};
use crate::codes::{Code, Coded};
use crate::packed::{UnpackFault, pack, unpack};
use crate::parts::Date;
use exercises::alarm::ClearedAlarm;
use exercises::id::PlanId;
use exercises::plain_text::shown;
use exercises::plan::{
    Header, MAX_AFTERCARE_LINES, MAX_BASELINES, MAX_CLEARED, MAX_ITEMS, MAX_NAMED, Plan, Prescription, Risk,
};
use std::collections::BTreeSet;

impl From<Malformed> for CardFault {
    fn from(Malformed(field): Malformed) -> CardFault {
        CardFault::Malformed { field }
    }
}

/// Number of bytes before the packed part: plan id, the clinic's key, recipient, pairing secret.
const FIXED: usize = 8 + 32 + 32 + 32;

/// The version in which a card is written: the lowest of which a program understands it.
pub(super) fn version_of(card: &Card) -> u8 {
    match card.former.as_slice() {
        _ if card.plan.prescription.items.iter().any(items::is_of_version_4) => VERSION,
        [] => WITHOUT_FORMER_KEYS,
        _ => WITH_FORMER_KEYS,
    }
}

/// Writes a card's contents.
pub(super) fn write(card: &Card) -> Result<Vec<u8>, CardFault> {
    let Card { plan, verify_key, recipient, pairing_secret, own, former } = card;
    let mut map = MapOut::default();
    write_plan(&mut map, plan, own)?;
    let plain = map.finish();
    if plain.len() > MAX_CONTENTS {
        return Err(CardFault::TooBig { most: MAX_CONTENTS });
    }
    let packed = pack(dictionary::VERSION_1, &plain);
    let secret = pairing_secret.expose_the_secret_bytes();
    Ok([&plan.header.id.0[..], verify_key, recipient, secret, &former::write(version_of(card), former)?, &packed].concat())
}

/// Writes the plan under the keys 0 to 11 and 16 to 18, and own exercises under 13. Key 12 is version 1's list of cleared entries.
fn write_plan(map: &mut MapOut, plan: &Plan, own: &[String]) -> Result<(), Malformed> {
    let Plan {
        header:
            Header {
                id: _, // written before the packed part
                revision,
                clinic,
                phone,
                start,
                issued,
            },
        prescription,
    } = plan;
    map.put(0, "revision", revision)?;
    map.put(1, "clinic", clinic)?;
    map.put(2, "start", &Date(*start))?;
    map.put(3, "issued", &Date(*issued))?;
    write_until_aftercare(map, prescription)?;
    map.put_list(13, "own exercises", own)?;
    write_confirmed_and_cleared(map, prescription)?;
    map.put_some(18, "telephone number", phone.as_ref())
}

/// Writes a prescription under its keys, 4 to 11 and 16 to 17.
pub(crate) fn write_prescription(map: &mut MapOut, prescription: &Prescription) -> Result<(), Malformed> {
    write_until_aftercare(map, prescription)?;
    write_confirmed_and_cleared(map, prescription)
}

/// The keys 4 to 11.
fn write_until_aftercare(map: &mut MapOut, prescription: &Prescription) -> Result<(), Malformed> {
    let Prescription { review, age, absent, items, complaints, activities, baselines, aftercare, .. } = prescription;
    map.put(4, "review", &Date(*review))?;
    map.put_some(5, "age band", age.map(Code).as_ref())?;
    map.put_some(6, "considered", bits(absent).as_ref())?;
    map.put_list(7, "items", &rows::<_, ItemOut>(items))?;
    map.put_list(8, "complaints", &rows::<_, ComplaintOut>(complaints))?;
    map.put_list(9, "activities", &rows::<_, ActivityOut>(activities))?;
    map.put_list(10, "baselines", &rows::<_, BaselineOut>(baselines))?;
    map.put_list(11, "aftercare", &rows::<_, AftercareOut>(aftercare))
}

/// The keys 16 and 17.
fn write_confirmed_and_cleared(map: &mut MapOut, prescription: &Prescription) -> Result<(), Malformed> {
    let Prescription { confirmed, cleared, .. } = prescription;
    map.put_some(16, "confirmed", confirmed.map(Date).as_ref())?;
    map.put_list(17, "cleared alarms", &rows::<_, ClearedAlarmOut>(cleared))
}

fn rows<'a, T, Row: From<&'a T>>(parts: &'a [T]) -> Vec<Row> {
    parts.iter().map(Row::from).collect()
}

/// Reads what [`write()`] wrote for a card of this version, ignoring keys that it does not know.
pub(super) fn read(version: u8, contents: &[u8]) -> Result<Card, CardFault> {
    let (fixed, rest) = contents.split_at_checked(FIXED).ok_or(Malformed("contents"))?;
    let verify_key = part(fixed, 8);
    let (former, packed) =
        if version > WITHOUT_FORMER_KEYS { former::read(version, &verify_key, rest)? } else { (Vec::new(), rest) };
    let plain = unpack(dictionary::VERSION_1, packed, MAX_CONTENTS).map_err(|fault| match fault {
        UnpackFault::TooBig => CardFault::TooBig { most: MAX_CONTENTS },
        UnpackFault::Broken => CardFault::Malformed { field: "packing" },
    })?;
    let map = MapIn::split(&plain, "contents")?;
    Ok(Card {
        plan: read_plan(&map, PlanId(part(fixed, 0)))?,
        verify_key,
        recipient: part(fixed, 40),
        pairing_secret: PairingSecret::new(part(fixed, 72)),
        own: map.list::<String, MAX_OWN>(13, "own exercises")?.iter().map(|text| shown(text).into_owned()).collect(),
        former,
    })
}

/// The `N` bytes of the fixed part that begin at `from`.
fn part<const N: usize>(fixed: &[u8], from: usize) -> [u8; N] {
    fixed[from..from + N].try_into().expect("the fixed part is as long as its parts")
}

/// Reads the plan from the keys 0 to 12 and 16 to 18.
fn read_plan(map: &MapIn<'_>, id: PlanId) -> Result<Plan, Malformed> {
    let mut plan = Plan {
        header: Header {
            id,
            revision: map.need(0, "revision")?,
            clinic: map.need(1, "clinic")?,
            phone: map.some(18, "telephone number")?,
            start: map.need::<Date>(2, "start")?.0,
            issued: map.need::<Date>(3, "issued")?.0,
        },
        prescription: read_prescription(map)?,
    };
    plan.clean_texts();
    Ok(plan)
}

/// Reads what [`write_prescription`] wrote.
pub(crate) fn read_prescription(map: &MapIn<'_>) -> Result<Prescription, Malformed> {
    let items = map.list::<ItemOut, MAX_ITEMS>(7, "items")?;
    let complaints = map.list::<ComplaintOut, MAX_NAMED>(8, "complaints")?;
    let activities = map.list::<ActivityOut, MAX_NAMED>(9, "activities")?;
    let baselines = map.list::<BaselineOut, MAX_BASELINES>(10, "baselines")?;
    let aftercare = map.list::<AftercareOut, MAX_AFTERCARE_LINES>(11, "aftercare")?;
    // Version 1 names the entries of cleared alarms.
    let cleared = map.list::<ClearedOut, MAX_CLEARED>(12, "cleared")?;
    let cleared = cleared.into_iter().map(|row| ClearedAlarm::of_entry(row.entry()));
    let named = map.list::<ClearedAlarmOut, MAX_CLEARED>(17, "cleared alarms")?;
    Ok(Prescription {
        review: map.need::<Date>(4, "review")?.0,
        age: map.some::<Code<_>>(5, "age band")?.map(|Code(age)| age),
        confirmed: map.some::<Date>(16, "confirmed")?.map(|Date(day)| day),
        absent: map.some(6, "considered")?.map_or_else(BTreeSet::new, of_bits),
        items: items.into_iter().map(ItemOut::item).collect::<Option<_>>().ok_or(Malformed("items"))?,
        complaints: complaints
            .into_iter()
            .map(ComplaintOut::complaint)
            .collect::<Option<_>>()
            .ok_or(Malformed("complaints"))?,
        activities: activities
            .into_iter()
            .map(ActivityOut::activity)
            .collect::<Option<_>>()
            .ok_or(Malformed("activities"))?,
        baselines: baselines.into_iter().map(BaselineOut::baseline).collect(),
        aftercare: aftercare.into_iter().map(AftercareOut::aftercare).collect(),
        cleared: cleared.chain(named.into_iter().map(ClearedAlarmOut::alarm)).collect(),
    })
}

/// The ticked risks as bits; `None` if there are none, so that nothing is written.
fn bits(ticked: &BTreeSet<Risk>) -> Option<u32> {
    Some(ticked.iter().fold(0, |bits, risk| bits | 1 << risk.code())).filter(|bits| *bits != 0)
}

/// The risks whose bits are set. Bits of risks that this version does not know are ignored, because its checks do not require
/// them.
fn of_bits(bits: u32) -> BTreeSet<Risk> {
    (0..32).filter(|bit| bits & (1 << bit) != 0).filter_map(Risk::of).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use exercises::score::Score;

    /// The contents of the frozen card: the fixed part, and the rest unpacked.
    fn frozen() -> ([u8; FIXED], Vec<u8>) {
        unpacked(include_bytes!("../../tests/frozen/card-1.bin"))
    }

    fn unpacked(card: &[u8]) -> ([u8; FIXED], Vec<u8>) {
        let contents = super::super::envelope::open(card).expect("a whole card").contents;
        let (fixed, packed) = contents.split_first_chunk().expect("the fixed part");
        (*fixed, unpack(dictionary::VERSION_1, packed, MAX_CONTENTS).expect("packed"))
    }

    fn read_plain(plain: &[u8]) -> Result<Card, CardFault> {
        read(2, &[&frozen().0, pack(dictionary::VERSION_1, plain).as_slice()].concat())
    }

    /// The packing may improve, but the packed contents must never change.
    #[test]
    fn a_card_is_written_as_it_always_was() {
        let (fixed, plain) = unpacked(include_bytes!("../../tests/frozen/card-2.bin"));
        let again = write(&read_plain(&plain).expect("a card")).expect("a card");
        assert_eq!(again[..FIXED], fixed);
        assert_eq!(unpack(dictionary::VERSION_1, &again[FIXED..], MAX_CONTENTS), Ok(plain));
    }

    #[test]
    fn a_key_that_a_later_program_adds_is_ignored() {
        let (_, mut plain) = frozen();
        let known = read_plain(&plain);
        assert_eq!(plain[0], 0xAE, "a map of fourteen");
        plain[0] = 0xAF;
        plain.extend(b"\x18\x63\x82\x01\x61x");
        assert_eq!(read_plain(&plain), known);
    }

    #[test]
    fn a_score_above_ten_is_refused() {
        let (_, plain) = frozen();
        let card = read_plain(&plain).expect("a card");
        let faults: Vec<_> = (0..plain.len())
            .filter_map(|place| {
                let mut changed = plain.clone();
                changed[place] = 10;
                let ten = read_plain(&changed).ok().filter(|changed| *changed != card)?.plan.prescription;
                changed[place] = 11;
                let scores = ten.items.iter().map(|item| Some(item.pain_limit));
                let mut scores = scores
                    .chain(ten.complaints.iter().map(|one| one.pain))
                    .chain(ten.activities.iter().map(|one| one.rating));
                scores.any(|score| score == Some(Score::MOST)).then(|| read_plain(&changed).err())
            })
            .collect();
        let malformed = |field| Some(CardFault::Malformed { field });
        let named = |field: &'static str| faults.contains(&malformed(field));
        assert!(named("items") && named("complaints") && named("activities"), "{faults:?}");
        assert!(faults.iter().all(Option::is_some), "{faults:?}");
    }

    #[test]
    fn contents_cut_or_changed_anywhere_are_never_read_wrongly_without_a_fault() {
        let (_, plain) = frozen();
        let known = read_plain(&plain).expect("a card");
        for at in 0..plain.len() {
            assert!(read_plain(&plain[..at]).is_err(), "cut at {at}");
            let mut changed = plain.clone();
            changed[at] = changed[at].wrapping_add(1);
            assert_ne!(read_plain(&changed), Ok(known.clone()), "byte {at} says nothing");
        }
    }
}
