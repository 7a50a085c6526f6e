//! Previews a card, and takes it.

use super::card_parts::{self, Found};
use super::plans::{self, OpenedCard};
use super::today;
use crate::card_catalogue::with_own;
use crate::{ActionResult, DataFolder, Moment, platform, refuse};
use exercises::catalogue::{Catalogue, Exercise, ExerciseId};
use exercises::id::ItemId;
use exercises::log::LogEvent;
use exercises::plan::check::{self, Problem};
use exercises::plan::{Plan, Schedule};
use exercises::today::Today;
use format::card::Card;
use format::{entry, frames};
use std::collections::BTreeMap;
use std::sync::Arc;
use store::table;
use vault::card::VerifyFault;
use wire::Failure;
use wire::app::Role;
use wire::patient::{CardPreview, CardSource, TakeCardRequest};

/// A card that was read completely and has a valid signature. Reading it again would give the same result.
pub struct CheckedCard {
    card: Arc<Card>,
    bytes: Vec<u8>,
    /// The catalogue that ships with the program, with the exercises on the card.
    catalogue: Catalogue,
    /// The problems that prevent its plan from being followed with this catalogue.
    problems: Vec<Problem>,
}

/// The card that the person is previewing, and where it came from.
pub(crate) struct LookedAt {
    source: CardSource,
    card: Arc<CheckedCard>,
}

/// What a card would change in this folder.
struct Change {
    known_clinic: bool,
    /// Whether the clinic has renewed its keys since the last card of this plan.
    renewed: bool,
    /// Whether a plan is followed here whose card names the same clinic but was signed with other keys.
    other_keys: bool,
    replaces: Option<u16>,
    /// Own exercises of which the plan in force has a later revision.
    older: Vec<ExerciseId>,
}

/// Reads a card in any of its forms: text, a picture of the code, a card file, or all pictures of a card that is shown as several codes.
/// Checks its signature, and checks its plan against the `shipped` catalogue and the clinic's own exercises on the card.
///
/// # Errors
/// A failure that says what the bytes are instead of a card; [`Failure::CardDamaged`] if the signature is not valid;
/// [`Failure::CardPart`] if codes are missing.
pub fn check<F: AsRef<[u8]>>(files: &[F], shipped: &Catalogue) -> ActionResult<CheckedCard> {
    let mut read = None;
    let mut card = Err(Failure::CardForeign);
    for file in files {
        card = card_parts::whole(card_parts::in_file(file.as_ref())?, &mut read);
        if card.is_ok() {
            break;
        }
    }
    check_card(card?, shipped)
}

fn check_card(bytes: Vec<u8>, shipped: &Catalogue) -> ActionResult<CheckedCard> {
    let unverified = format::card::open(&bytes).map_err(refuse::card)?;
    let card = vault::card::verify(unverified, None).map_err(refusal)?;
    let catalogue = with_own(shipped, &card.own)?;
    let problems = check::problems(&card.plan, &catalogue);
    Ok(CheckedCard { card: Arc::new(card), bytes, catalogue, problems })
}

fn refusal(fault: VerifyFault) -> Failure {
    match fault {
        VerifyFault::OtherClinic => Failure::CardOtherClinic,
        VerifyFault::NotSigned | VerifyFault::UnfitRecipient => Failure::CardDamaged,
    }
}

impl CheckedCard {
    /// # Errors
    /// [`Failure::CardRefused`] with every problem that prevents its plan from being followed.
    pub fn can_be_followed(&self) -> ActionResult<()> {
        if self.problems.is_empty() { Ok(()) } else { Err(Failure::CardRefused(self.problems.clone())) }
    }

    /// What taking it would change in a folder. A known plan is continued only by a card signed with the same key as its last card, or with
    /// one that this key has signed.
    fn change(&self, folder: &DataFolder) -> ActionResult<Change> {
        folder.require_role(Role::Patient)?;
        let known = plans::all(folder)?;
        let same_plan = known.iter().find(|one| one.plan().header.id == self.card.plan.header.id);
        if same_plan.is_some_and(|one| !self.card.continues(&one.verify_key)) {
            return Err(Failure::CardOtherClinic);
        }
        let replaces = same_plan.map(|one| one.plan().header.revision);
        let revision = self.card.plan.header.revision;
        if let Some(have) = replaces.filter(|have| *have >= revision) {
            return Err(Failure::CardOld { revision, have });
        }
        self.can_be_followed()?;
        let known_clinic = known.iter().any(|one| self.card.continues(&one.verify_key));
        let renewed = same_plan.is_some_and(|one| one.verify_key != self.card.verify_key);
        let name = |plan: &Plan| plan.header.clinic.trim().to_lowercase();
        let same_name = known.iter().any(|one| name(one.plan()) == name(&self.card.plan));
        let older = same_plan.map(|one| self.older_than(&one.catalogue)).unwrap_or_default();
        Ok(Change { known_clinic, renewed, other_keys: same_name && !known_clinic, replaces, older })
    }

    /// The own exercises of its items that are of a later revision in this catalogue. The newest card of a plan is followed as it is: it is
    /// signed, and a clinic's store that was put back knows no better.
    fn older_than(&self, followed: &Catalogue) -> Vec<ExerciseId> {
        let on_card = plans::exercises_of(&self.card.plan, &self.catalogue).into_iter().filter(|own| own.id.is_own());
        let is_older = |own: &Exercise| followed.get(&own.id).is_some_and(|known| known.revision > own.revision);
        on_card.filter(is_older).map(|own| own.id).collect()
    }

    /// What the person sees before taking it.
    ///
    /// # Errors
    /// Any reason why it cannot be taken here; nothing is changed.
    pub fn preview(&self, folder: &DataFolder) -> ActionResult<CardPreview> {
        let Change { known_clinic, renewed, other_keys, replaces, older } = self.change(folder)?;
        Ok(CardPreview {
            fingerprint: vault::fingerprint(&self.card.verify_key, &self.card.recipient),
            exercises: plans::exercises_of(&self.card.plan, &self.catalogue),
            plan: self.card.plan.clone(),
            known_clinic,
            renewed,
            other_keys,
            replaces,
            older,
            source: self.source(),
        })
    }

    /// The card as the window sends it back: a picture may be a thousand times as large as the card that is on it.
    fn source(&self) -> CardSource {
        CardSource::Text(format::card::to_text(&self.bytes))
    }
    /// Takes the card with the `agreed` times: the plan is followed from now on. A later revision replaces an earlier one, and the
    /// history continues.
    ///
    /// # Errors
    /// As for [`CheckedCard::preview`]; [`Failure::CardRefused`] if the times are not allowed.
    pub fn take(&self, folder: &mut DataFolder, moment: &Moment, agreed: &[(ItemId, Schedule)]) -> ActionResult<Today> {
        self.change(folder)?;
        let plan = &self.card.plan;
        let other = |(item, times): &&(ItemId, Schedule)| plan.item(*item).is_some_and(|item| item.schedule != *times);
        // If an item is in the list twice, its last entry counts.
        let agreed: BTreeMap<_, _> = agreed.iter().filter(other).cloned().collect();
        let agreed: Vec<_> = agreed.into_iter().collect();
        let problems = check::problems(&plan.with_schedules(&agreed), &self.catalogue);
        if !problems.is_empty() {
            return Err(Failure::CardRefused(problems));
        }
        self.keep(folder, moment, agreed)?;
        today::page(folder, moment)
    }

    fn keep(&self, folder: &mut DataFolder, moment: &Moment, agreed: Vec<(ItemId, Schedule)>) -> ActionResult<()> {
        let header = &self.card.plan.header;
        let mut row = table::card::Card {
            plan: header.id.0.to_vec(),
            revision: header.revision.into(),
            clinic: self.card.verify_key.to_vec(),
            taken_ms: moment.now.utc_ms,
            taken_offset_s: moment.now.offset_s,
            bytes: self.bytes.clone(),
        };
        let payload = entry::write(&LogEvent::Taken { revision: header.revision, agreed });
        let dir = folder.dir();
        let kept = folder.home.store_mut().transaction(|tx| {
            // The key of the plan's first card stays with the plan; the one that is pinned is that of the newest card.
            let earlier = table::card::all(tx)?.into_iter().find(|card| card.plan == row.plan);
            row.clinic = earlier.map_or_else(|| row.clinic.clone(), |card| card.clinic);
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
        folder.plan_cache.borrow_mut().add_opened(OpenedCard { row, card: self.card.clone() });
        Ok(())
    }
}

/// The card that the window sends, without the picture or file in which it came. Needs no data folder: decoding a picture takes its
/// time, in which other actions need the folder.
///
/// # Errors
/// A failure that says what the bytes are instead of a card.
pub fn find(source: CardSource) -> ActionResult<CardSource> {
    let CardSource::File(base64) = source else { return Ok(source) };
    let bytes = match card_parts::in_file(&platform::from_base64(&base64)?)? {
        Found::Card(bytes) => bytes,
        Found::Parts(parts) => return Ok(CardSource::Text(frames::card_texts(&parts).join("\n"))),
    };
    // What is no card may be far larger than one, and is refused here for what it is.
    format::card::open(&bytes).map_err(refuse::card)?;
    Ok(CardSource::Text(format::card::to_text(&bytes)))
}

/// Reads and checks a card that the window sends, and returns its preview.
///
/// # Errors
/// Any reason for which a card is refused; nothing is changed.
pub fn preview(folder: &DataFolder, source: &CardSource) -> ActionResult<CardPreview> {
    folder.require_role(Role::Patient)?;
    let card = looked_at(folder, source)?;
    let preview = card.preview(folder)?;
    *folder.looked_at.borrow_mut() = Some(LookedAt { source: preview.source.clone(), card });
    Ok(preview)
}

/// Takes a card that the window sends. If it is the one that was previewed, it is not read again.
///
/// # Errors
/// As for [`CheckedCard::take`].
pub fn take(folder: &mut DataFolder, moment: &Moment, request: &TakeCardRequest) -> ActionResult<Today> {
    folder.require_role(Role::Patient)?;
    let today = looked_at(folder, &request.source)?.take(folder, moment, &request.agreed)?;
    folder.looked_at.take();
    Ok(today)
}

/// The card from this source, if the person previewed it; it was checked then.
fn looked_at(folder: &DataFolder, source: &CardSource) -> ActionResult<Arc<CheckedCard>> {
    if let Some(looked_at) = folder.looked_at.borrow().as_ref().filter(|looked_at| looked_at.source == *source) {
        return Ok(looked_at.card.clone());
    }
    let found = match source {
        CardSource::Text(text) => card_parts::in_text(text)?,
        CardSource::File(base64) => card_parts::in_file(&platform::from_base64(base64)?)?,
    };
    let bytes = card_parts::whole(found, &mut folder.card_parts.borrow_mut())?;
    folder.card_parts.take();
    check_card(bytes, &folder.catalogue).map(Arc::new)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::patient::sample;
    use crate::{clock, zone};
    use words::Locale;

    /// A patient's folder that is still empty, and the bytes of a card.
    fn new_folder(dir: &std::path::Path, moment: &Moment) -> (DataFolder, Vec<u8>) {
        let sample = sample::open(&dir.join("sample"), moment, Locale::En).expect("a new folder");
        let mut cards = sample.home.store().read(table::card::all).expect("readable");
        let mut folder = DataFolder::open(&dir.join("own"), true).expect("a new folder");
        folder.choose_role(Role::Patient).expect("free to choose");
        (folder, cards.swap_remove(0).bytes)
    }

    fn moment() -> Moment {
        clock::at(1_795_600_000_000, zone::named("Europe/Vienna").expect("a zone"))
    }

    #[test]
    fn a_picture_is_sent_and_read_once_from_looking_to_following() {
        let dir = tempfile::tempdir().expect("a temporary folder");
        let (mut folder, card) = new_folder(dir.path(), &moment());
        let picture = pictures::qr::Code::of(&format::card::to_text(&card)).expect("fits on a code").png(4);
        let shown = preview(&folder, &CardSource::File(platform::to_base64(&picture))).expect("a good card");
        assert_eq!(shown.source, CardSource::Text(format::card::to_text(&card)), "the card, without its picture");
        let first = looked_at(&folder, &shown.source).expect("a good card");
        take(&mut folder, &moment(), &TakeCardRequest { source: shown.source, agreed: Vec::new() }).expect("a good card");
        assert!(folder.plan_cache.borrow().has_opened(&first.card), "followed as it was checked");
    }

    #[test]
    fn a_card_is_read_and_checked_once_from_preview_to_taking() {
        let dir = tempfile::tempdir().expect("a temporary folder");
        let moment = moment();
        let (mut folder, card) = new_folder(dir.path(), &moment);
        let source = preview(&folder, &CardSource::Text(format::card::to_text(&card))).expect("a good card").source;
        let first = looked_at(&folder, &source).expect("a good card");
        assert!(Arc::ptr_eq(&first, &looked_at(&folder, &source).expect("the same")), "not read again");
        let other = looked_at(&folder, &CardSource::Text("CARRYOVER".into()));
        assert!(other.is_err(), "of another source nothing is taken for granted");
        take(&mut folder, &moment, &TakeCardRequest { source, agreed: Vec::new() }).expect("a valid card");
        assert!(folder.looked_at.borrow().is_none(), "done with");
        assert!(folder.plan_cache.borrow().has_opened(&first.card), "followed as it was checked");
        plans::append(&mut folder, first.card.plan.header.id, moment.now, &LogEvent::Opened).expect("written");
        plans::all(&folder).expect("computed again");
        assert!(folder.plan_cache.borrow().has_opened(&first.card), "an entry is no reason to read a card again");
    }
}
