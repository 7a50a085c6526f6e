//! Looking at a card, and taking it.

use super::{plans, today};
use crate::{ActionResult, DataFolder, Moment, platform, refuse};
use exercises::catalogue::Catalogue;
use exercises::log::LogEvent;
use exercises::plan::check;
use format::card::Card;
use format::entry;
use std::collections::BTreeMap;
use store::table;
use vault::card::VerifyFault;
use wire::Failure;
use wire::app::Role;
use wire::patient::{CardPreview, CardSource, TakeCardRequest};

struct Seen {
    card: Card,
    bytes: Vec<u8>,
    known_clinic: bool,
    replaces: Option<u16>,
}

/// Reads a card, checks its signature against the clinic that is known, and its plan against this program's catalogue.
///
/// # Errors
/// Every reason for which a card is refused; nothing is changed.
pub fn preview(folder: &DataFolder, source: &CardSource) -> ActionResult<CardPreview> {
    let Seen { card, known_clinic, replaces, .. } = see(folder, source)?;
    let catalogue = plans::with_own(&folder.catalogue, &card.own)?;
    Ok(CardPreview {
        fingerprint: vault::fingerprint(&card.verify_key, &card.recipient),
        exercises: plans::exercises_of(&card.plan, &catalogue),
        plan: card.plan,
        known_clinic,
        replaces,
    })
}

fn see(folder: &DataFolder, source: &CardSource) -> ActionResult<Seen> {
    folder.require_role(Role::Patient)?;
    let bytes = platform::card_bytes(source)?;
    let unverified = format::card::open(&bytes).map_err(refuse::card)?;
    let known = plans::all(folder)?;
    let same_plan = known.iter().find(|one| one.plan().id == unverified.claimed_plan());
    let pinned = same_plan.map(|one| one.verify_key);
    let card = vault::card::verify(unverified, pinned).map_err(refusal)?;
    if let Some(have) = same_plan.map(|one| one.plan().revision).filter(|have| *have >= card.plan.revision) {
        return Err(Failure::CardOld { revision: card.plan.revision, have });
    }
    can_be_followed(&card, &folder.catalogue)?;
    let known_clinic = known.iter().any(|one| one.verify_key == card.verify_key);
    let replaces = same_plan.map(|one| one.plan().revision);
    Ok(Seen { known_clinic, replaces, card, bytes })
}

/// Reads a first card before there is a data folder, or before it has chosen its side: a card that is refused then leaves
/// everything as it was.
pub fn preview_before_role(source: &CardSource) -> ActionResult<()> {
    let unverified = format::card::open(&platform::card_bytes(source)?).map_err(refuse::card)?;
    let card = vault::card::verify(unverified, None).map_err(refusal)?;
    can_be_followed(&card, &DataFolder::shipped_catalogue()?)
}

/// Checks the card's plan against the shipped catalogue and the clinic's own exercises on the card.
fn can_be_followed(card: &Card, shipped: &Catalogue) -> ActionResult<()> {
    let problems = check::problems(&card.plan, &plans::with_own(shipped, &card.own)?);
    if problems.is_empty() { Ok(()) } else { Err(Failure::CardRefused(problems)) }
}

fn refusal(fault: VerifyFault) -> Failure {
    match fault {
        VerifyFault::OtherClinic => Failure::CardOtherClinic,
        _ => Failure::CardDamaged,
    }
}

/// Takes a card: the plan is followed from now on; a later revision replaces it and the history goes on.
pub fn take(folder: &mut DataFolder, moment: &Moment, request: &TakeCardRequest) -> ActionResult<exercises::today::Today> {
    let Seen { card, bytes, .. } = see(folder, &request.source)?;
    let agreed = request
        .agreed
        .iter()
        .filter(|(item, schedule)| card.plan.item(*item).is_some_and(|item| item.schedule != *schedule));
    // The last word about an item counts.
    let agreed: BTreeMap<_, _> = agreed.cloned().collect();
    let agreed: Vec<_> = agreed.into_iter().collect();
    let followed = card.plan.with_schedules(&agreed);
    let catalogue = plans::with_own(&folder.catalogue, &card.own)?;
    let problems = check::problems(&followed, &catalogue);
    if !problems.is_empty() {
        return Err(Failure::CardRefused(problems));
    }
    let row = table::card::Card {
        plan: card.plan.id.0.to_vec(),
        revision: card.plan.revision.into(),
        clinic: card.verify_key.to_vec(),
        taken_ms: moment.now.utc_ms,
        taken_offset_s: moment.now.offset_s,
        bytes,
    };
    let payload = entry::write(&LogEvent::Taken { revision: card.plan.revision, agreed });
    let dir = folder.dir();
    let kept = folder.home.store_mut().transaction(|tx| {
        table::card::insert(tx, &row)?;
        let entry = table::entry::NewEntry {
            plan: &row.plan,
            at_ms: moment.now.utc_ms,
            offset_s: moment.now.offset_s,
            payload: &payload,
        };
        table::entry::append(tx, &entry).map(drop)
    });
    kept.map_err(refuse::store(&dir))?;
    today::page(folder, moment)
}
