//! What stands on a card, as CBOR. The keys are frozen: a new part takes a new key, an old key is never used again.

use super::items::{ActivityOut, AftercareOut, BaselineOut, ClearedOut, ComplaintOut, ItemOut};
use super::{Card, CardFault, MOST_OWN, PairingSecret};
use crate::cbor::{Malformed, MapIn, MapOut, bytes};
use crate::codes::{Code, Coded};
use crate::parts::Date;
use exercises::id::PlanId;
use exercises::plan::{MAX_ITEMS, MAX_NAMED, Plan, Risk};
use minicbor::bytes::ByteArray;
use std::collections::BTreeSet;

/// Most stance baselines, and most lines of aftercare.
const MOST_LINES: usize = 8;
/// Most alarms that one card clears.
const MOST_CLEARED: usize = 32;

impl From<Malformed> for CardFault {
    fn from(Malformed(field): Malformed) -> CardFault {
        CardFault::Malformed { field }
    }
}

/// Writes a card's contents.
pub(super) fn write(card: &Card) -> Result<Vec<u8>, Malformed> {
    let Card { plan, verify_key, recipient, pairing_secret, own } = card;
    let mut map = MapOut::default();
    write_plan(&mut map, plan)?;
    map.put(14, "clinic's key", &bytes(*verify_key))?;
    map.put(15, "recipient", &bytes(*recipient))?;
    map.put(16, "pairing secret", &bytes(*pairing_secret.expose_the_secret_bytes()))?;
    map.put_list(17, "own exercises", own)?;
    Ok(map.finish())
}

fn write_plan(map: &mut MapOut, plan: &Plan) -> Result<(), Malformed> {
    let Plan {
        id,
        revision,
        clinic,
        start,
        issued,
        review,
        age,
        absent,
        items,
        complaints,
        activities,
        baselines,
        aftercare,
        cleared,
    } = plan;
    map.put(0, "plan", &bytes(id.0))?;
    map.put(1, "revision", revision)?;
    map.put(2, "clinic", clinic)?;
    map.put(3, "start", &Date(*start))?;
    map.put(4, "issued", &Date(*issued))?;
    map.put(5, "review", &Date(*review))?;
    map.put_some(6, "age band", age.map(Code).as_ref())?;
    map.put_some(7, "considered", bits(absent).as_ref())?;
    map.put_list(8, "items", &rows::<_, ItemOut>(items))?;
    map.put_list(9, "complaints", &rows::<_, ComplaintOut>(complaints))?;
    map.put_list(10, "activities", &rows::<_, ActivityOut>(activities))?;
    map.put_list(11, "baselines", &rows::<_, BaselineOut>(baselines))?;
    map.put_list(12, "aftercare", &rows::<_, AftercareOut>(aftercare))?;
    map.put_list(13, "cleared", &rows::<_, ClearedOut>(cleared))
}

fn rows<'a, T, Row: From<&'a T>>(parts: &'a [T]) -> Vec<Row> {
    parts.iter().map(Row::from).collect()
}

/// Reads what [`write`] wrote, passing over keys that it does not know.
pub(super) fn read(plain: &[u8]) -> Result<Card, Malformed> {
    let map = MapIn::split(plain, "contents")?;
    let secret: ByteArray<32> = map.need(16, "pairing secret")?;
    Ok(Card {
        plan: read_plan(&map)?,
        verify_key: map.need::<ByteArray<32>>(14, "clinic's key")?.into(),
        recipient: map.need::<ByteArray<32>>(15, "recipient")?.into(),
        pairing_secret: PairingSecret::new(secret.into()),
        own: map.list::<String, MOST_OWN>(17, "own exercises")?,
    })
}

fn read_plan(map: &MapIn<'_>) -> Result<Plan, Malformed> {
    let items = map.list::<ItemOut, MAX_ITEMS>(8, "items")?;
    let complaints = map.list::<ComplaintOut, MAX_NAMED>(9, "complaints")?;
    let activities = map.list::<ActivityOut, MAX_NAMED>(10, "activities")?;
    let baselines = map.list::<BaselineOut, MOST_LINES>(11, "baselines")?;
    let aftercare = map.list::<AftercareOut, MOST_LINES>(12, "aftercare")?;
    let cleared = map.list::<ClearedOut, MOST_CLEARED>(13, "cleared")?;
    Ok(Plan {
        id: PlanId(map.need::<ByteArray<8>>(0, "plan")?.into()),
        revision: map.need(1, "revision")?,
        clinic: map.need(2, "clinic")?,
        start: map.need::<Date>(3, "start")?.0,
        issued: map.need::<Date>(4, "issued")?.0,
        review: map.need::<Date>(5, "review")?.0,
        age: map.some::<Code<_>>(6, "age band")?.map(|Code(age)| age),
        absent: map.some(7, "considered")?.map_or_else(BTreeSet::new, of_bits),
        items: items.into_iter().map(ItemOut::item).collect::<Option<_>>().ok_or(Malformed("items"))?,
        complaints: complaints.into_iter().map(ComplaintOut::complaint).collect(),
        activities: activities.into_iter().map(ActivityOut::activity).collect(),
        baselines: baselines.into_iter().map(BaselineOut::baseline).collect(),
        aftercare: aftercare.into_iter().map(AftercareOut::aftercare).collect(),
        cleared: cleared.into_iter().map(ClearedOut::entry).collect(),
    })
}

/// The ticked risks as bits; `None` for none, which is left out.
fn bits(ticked: &BTreeSet<Risk>) -> Option<u32> {
    Some(ticked.iter().fold(0, |bits, risk| bits | 1 << risk.code())).filter(|bits| *bits != 0)
}

/// Bits of risks that this version does not know are passed over: what it does not ask for, nobody need have ticked.
fn of_bits(bits: u32) -> BTreeSet<Risk> {
    (0..32).filter(|bit| bits & (1 << bit) != 0).filter_map(Risk::of).collect()
}
