//! The plans followed on this device, read from its database.

use super::times_ahead;
use crate::card_catalogue::with_own;
use crate::{ActionResult, DataFolder, Moment, refuse};
use chrono::NaiveDate;
use exercises::catalogue::{Catalogue, Exercise};
use exercises::history::{History, Known};
use exercises::id::{ItemId, LogId, PlanId};
use exercises::log::{Entry, FormerLog, Log, LogEvent};
use exercises::plan::{Item, Plan};
use exercises::suggest::{eased_by, in_use_here};
use exercises::time::Stamp;
use exercises::today::Followed;
use format::card::{Card, PairingSecret};
use std::borrow::Cow;
use std::collections::BTreeMap;
use std::sync::Arc;
use store::table;
use wire::Failure;
use wire::app::Role;
use wire::patient::PlanPage;

/// One plan with everything that the device stores about it.
#[derive(Clone)]
pub struct FollowedPlan {
    /// The clinic's public key for signatures, remembered when the first card was taken.
    pub verify_key: [u8; 32],
    /// The public key that summaries are encrypted to.
    pub recipient: [u8; 32],
    pub(crate) secret: PairingSecret,
    /// All revisions that were taken, by number, as on their cards.
    pub revisions: BTreeMap<u16, Plan>,
    /// The newest revision with the agreed schedules, when it was taken, and the history from the log.
    pub followed: Followed,
    /// The catalogue that ships with the program, with the clinic's own exercises.
    pub catalogue: Catalogue,
    /// The id of this installation's log.
    pub log: LogId,
}

impl FollowedPlan {
    /// The newest revision with the agreed schedules.
    pub fn plan(&self) -> &Plan {
        &self.followed.plan
    }

    /// An item of the newest revision.
    pub(crate) fn item(&self, id: ItemId) -> ActionResult<&Item> {
        self.plan().item(id).ok_or(Failure::NoSuchItem)
    }

    /// An item of the newest revision, with the dose that it asks for on `day`.
    pub(crate) fn item_on(&self, id: ItemId, day: NaiveDate) -> ActionResult<Cow<'_, Item>> {
        self.plan().item_on(id, day).ok_or(Failure::NoSuchItem)
    }

    /// The exercises of its items.
    pub(crate) fn exercises(&self) -> Vec<Exercise> {
        exercises_of(self.plan(), &self.catalogue)
    }
}

/// The exercises that a plan's items name, each once, in the plan's order.
pub(crate) fn exercises_of(plan: &Plan, catalogue: &Catalogue) -> Vec<Exercise> {
    let mut found: Vec<Exercise> = Vec::new();
    for exercise in plan.prescription.items.iter().filter_map(|item| catalogue.get(&item.exercise)) {
        if found.iter().all(|known| known.id != exercise.id) {
            found.push(exercise.clone());
        }
    }
    found
}

/// What was already read. A log only grows, so each entry is decoded once and added to the plans; they are put together anew only when a
/// card is added, or an entry that corrects others.
#[derive(Default)]
pub(crate) struct PlanCache {
    log: Option<Log>,
    cards: Vec<table::card::Card>,
    /// The cards of the plans that were read and checked, each once.
    opened: Vec<OpenedCard>,
    /// The plans that result from entries and cards; `None` if not computed yet.
    plans: Option<Vec<Arc<FollowedPlan>>>,
}

/// A card that was taken, with its contents.
pub(crate) struct OpenedCard {
    pub(crate) row: table::card::Card,
    pub(crate) card: Arc<Card>,
}

impl PlanCache {
    /// Forgets what the plans add up to, because something else than an entry or a card changed them.
    pub(crate) fn forget_plans(&mut self) {
        self.plans = None;
    }

    /// Adds a card that was checked before it was taken.
    pub(crate) fn add_opened(&mut self, card: OpenedCard) {
        self.opened.push(card);
    }

    /// Whether the cache holds this very value, so that the card was read only once.
    #[cfg(test)]
    pub(crate) fn has_opened(&self, card: &Arc<Card>) -> bool {
        self.opened.iter().any(|opened| Arc::ptr_eq(&opened.card, card))
    }

    /// Opens those of `rows` that are not open yet, and removes all others from the cache.
    fn open(&mut self, rows: &[table::card::Card]) -> Option<()> {
        self.opened.retain(|opened| rows.contains(&opened.row));
        for row in rows {
            if self.opened.iter().all(|opened| opened.row != *row) {
                let card = vault::card::verify(format::card::open(&row.bytes).ok()?, None).ok()?;
                self.opened.push(OpenedCard { row: row.clone(), card: Arc::new(card) });
            }
        }
        Some(())
    }

    /// The log as far as it was read; `None` if no plan was requested yet.
    pub(crate) fn log(&self) -> Option<&Log> {
        self.log.as_ref()
    }

    /// The entries that were read.
    pub(crate) fn entries(&self) -> &[Entry] {
        self.log().map_or(&[], |log| &log.entries)
    }
}

/// Whether any card has been taken.
pub fn any(folder: &DataFolder) -> ActionResult<bool> {
    let cards = folder.home.store().read(table::card::newest).map_err(refuse::store(folder.home.dir()))?;
    Ok(!cards.is_empty())
}

/// All plans followed here; the one taken last comes first.
///
/// # Errors
/// [`Failure::HomeDamaged`] if a card or an entry in the database cannot be read.
pub fn all(folder: &DataFolder) -> ActionResult<Vec<Arc<FollowedPlan>>> {
    known(folder, None)
}

/// All plans followed here, as [`all`], read at `moment`: entries with a later time are marked as recorded while the clock was ahead.
///
/// # Errors
/// As for [`all`].
pub fn all_at(folder: &DataFolder, moment: &Moment) -> ActionResult<Vec<Arc<FollowedPlan>>> {
    known(folder, Some(moment.now))
}

fn known(folder: &DataFolder, now: Option<Stamp>) -> ActionResult<Vec<Arc<FollowedPlan>>> {
    folder.require_role(Role::Patient)?;
    let known = folder.plan_cache.borrow().entries().last().map_or(0, |last| last.n);
    let read = folder.home.store().read(|view| {
        let former = table::former_log::all(view)?;
        Ok((table::card::all(view)?, table::entry::after(view, known)?, table::log::id(view)?, former))
    });
    let (cards, entries, log, former) = read.map_err(refuse::store(folder.home.dir()))?;
    let new = !entries.is_empty() || folder.plan_cache.borrow().cards != cards;
    let same = |plans: &&Vec<Arc<FollowedPlan>>| plans.iter().all(|one| one.followed.history.wrong_clock.is_same_at(now));
    if let Some(plans) = folder.plan_cache.borrow().plans.as_ref().filter(|_| !new).filter(same) {
        return Ok(plans.clone());
    }
    let damaged = || Failure::HomeDamaged { home: folder.home.dir().display().to_string() };
    let id = LogId(log.and_then(|id| id.try_into().ok()).ok_or_else(damaged)?);
    let former = former.into_iter().map(|row| Some(FormerLog { id: LogId(row.id.try_into().ok()?), entries: row.entries }));
    let former = former.collect::<Option<Vec<_>>>().ok_or_else(damaged)?;
    let entries = entries.into_iter().map(|row| {
        let plan = PlanId(row.plan.try_into().map_err(|_| damaged())?);
        let event = format::entry::read(&row.payload).map_err(|_| damaged())?;
        Ok(Entry { n: row.n, plan, at: Stamp { utc_ms: row.at_ms, offset_s: row.offset_s }, event })
    });
    let entries = entries.collect::<ActionResult<Vec<Entry>>>()?;
    let mut read = folder.plan_cache.borrow_mut();
    let read = &mut *read;
    let same_cards = read.cards == cards;
    let known = read.plans.take().filter(|_| same_cards).filter(|plans| same(&plans));
    read.open(&cards).ok_or_else(damaged)?;
    let log = read.log.get_or_insert(Log { id, former, entries: Vec::new() });
    let first_new = log.entries.len();
    log.entries.extend(entries);
    if let Some(mut plans) = known
        && extend(folder, &mut plans, &read.opened, (log, first_new), now)?
    {
        read.plans = Some(plans.clone());
        return Ok(plans);
    }
    let mut by_plan: BTreeMap<&[u8], Vec<&OpenedCard>> = BTreeMap::new();
    for card in &read.opened {
        by_plan.entry(&card.row.plan).or_default().push(card);
    }
    let plans =
        by_plan.into_values().map(|cards| followed(folder, cards, log, now).map(Arc::new)).collect::<ActionResult<Vec<_>>>();
    read.cards = cards;
    let mut plans = plans?;
    plans.sort_by_key(|one| std::cmp::Reverse(one.followed.taken));
    read.plans = Some(plans.clone());
    Ok(plans)
}

/// The plan with this id; without an id, the only plan.
pub fn one(folder: &DataFolder, plan: Option<PlanId>) -> ActionResult<Arc<FollowedPlan>> {
    named(all(folder)?, plan)
}

/// The plan with this id, or the only one, for somebody who looks at `moment`: see [`all_at`].
pub fn one_at(folder: &DataFolder, moment: &Moment, plan: Option<PlanId>) -> ActionResult<Arc<FollowedPlan>> {
    named(all_at(folder, moment)?, plan)
}

fn named(mut all: Vec<Arc<FollowedPlan>>, plan: Option<PlanId>) -> ActionResult<Arc<FollowedPlan>> {
    match plan {
        Some(plan) => all.into_iter().find(|one| one.plan().header.id == plan).ok_or(Failure::NoPlan),
        None if all.len() > 1 => Err(Failure::WhichPlan),
        None => all.pop().ok_or(Failure::NoPlan),
    }
}

/// Adds the entries from the place `first_new` on to the plans. Returns `false` if they have to be put together anew.
fn extend(
    folder: &DataFolder,
    plans: &mut [Arc<FollowedPlan>],
    opened: &[OpenedCard],
    (log, first_new): (&Log, usize),
    now: Option<Stamp>,
) -> ActionResult<bool> {
    for one in plans {
        let id = one.plan().header.id;
        let mut new = log.entries[first_new..].iter().filter(|entry| entry.plan == id).peekable();
        if new.peek().is_none() {
            continue;
        }
        let of_plan = opened.iter().filter(|opened| opened.card.plan.header.id == id);
        let Some(newest) = of_plan.max_by_key(|opened| opened.card.plan.header.revision) else { return Ok(false) };
        // Copied only if somebody still looks at it.
        let FollowedPlan { followed, catalogue, .. } = Arc::make_mut(one);
        followed.history.wrong_clock.look_at(now);
        if !new.all(|entry| followed.history.extend(log, entry)) {
            return Ok(false);
        }
        (followed.plan, followed.ahead) = in_force(folder, &newest.card, &followed.history, followed.taken, catalogue)?;
    }
    Ok(true)
}

/// The newest card's plan as it is followed now, and with the times that apply later, if there are any.
fn in_force(
    folder: &DataFolder,
    newest: &Card,
    history: &History,
    taken: Stamp,
    catalogue: &Catalogue,
) -> ActionResult<(Plan, Option<(chrono::NaiveDate, Plan)>)> {
    let agreed = history.taken.last().map(|taken| taken.agreed.clone()).unwrap_or_default();
    let plan = stepped(newest.plan.with_schedules(&agreed), history, taken, catalogue);
    let ahead = times_ahead::of_card(folder, &newest.plan.header)?.map(|(from, agreed)| {
        let card = newest.plan.with_schedules(&agreed).prescription.items;
        (from, plan.with_schedules(&card.into_iter().map(|item| (item.id, item.schedule)).collect::<Vec<_>>()))
    });
    Ok((plan, ahead))
}

fn followed(folder: &DataFolder, mut cards: Vec<&OpenedCard>, log: &Log, now: Option<Stamp>) -> ActionResult<FollowedPlan> {
    let damaged = || Failure::HomeDamaged { home: folder.home.dir().display().to_string() };
    cards.sort_by_key(|one| one.card.plan.header.revision);
    let revisions: BTreeMap<u16, Plan> =
        cards.iter().map(|one| (one.card.plan.header.revision, one.card.plan.clone())).collect();
    let OpenedCard { row, card: newest } = cards.pop().ok_or_else(damaged)?;
    let catalogue = with_own(&folder.catalogue, &newest.own)?;
    let issued = revisions.iter().map(|(revision, plan)| (*revision, plan.header.issued)).collect();
    let mut history = History::fold_known(log, newest.plan.header.id, Known { issued, now });
    history.note_beginnings(&revisions);
    history.note_levels(&revisions);
    // Of a card that was taken while the clock was wrong the log knows better.
    let logged = history.taken.iter().find(|taken| taken.revision == newest.plan.header.revision);
    let logged = logged.filter(|taken| history.wrong_clock.mark(taken.n).is_some()).map(|taken| taken.at);
    let taken = logged.unwrap_or(Stamp { utc_ms: row.taken_ms, offset_s: row.taken_offset_s });
    let (plan, ahead) = in_force(folder, newest, &history, taken, &catalogue)?;
    Ok(FollowedPlan {
        verify_key: newest.verify_key,
        recipient: newest.recipient,
        secret: newest.pairing_secret.clone(),
        revisions,
        followed: Followed { plan, taken, ahead, history },
        catalogue,
        log: log.id,
    })
}

/// The plan with the levels that the person changed to since the card was taken, if the clinician allowed that, and with those that
/// a near fall has made easier until a card says otherwise.
fn stepped(mut plan: Plan, history: &History, taken: Stamp, catalogue: &Catalogue) -> Plan {
    let last = |item| history.last_run(item).filter(|run| run.started.utc_ms >= taken.utc_ms);
    let eased: Vec<usize> = plan.prescription.items.iter().map(|item| history.eased(&plan, item.id)).collect();
    for (item, levels) in plan.prescription.items.iter_mut().zip(eased) {
        *item = match levels {
            0 => in_use_here(item, last(item.id)),
            _ => eased_by(item, levels, catalogue.get(&item.exercise)),
        };
    }
    plan
}

/// Appends an event to the log and returns its number.
pub(crate) fn append(folder: &mut DataFolder, plan: PlanId, at: Stamp, event: &LogEvent) -> ActionResult<u32> {
    let dir = folder.dir();
    let payload = format::entry::write(event);
    let entry = table::entry::NewEntry { plan: &plan.0, at_ms: at.utc_ms, offset_s: at.offset_s, payload: &payload };
    folder.home.store_mut().transaction(|tx| table::entry::append(tx, &entry)).map_err(refuse::store(&dir))
}

/// The Plan pages, one for each plan.
pub fn pages(folder: &DataFolder, moment: &Moment) -> ActionResult<Vec<PlanPage>> {
    let pages = all_at(folder, moment)?.into_iter().map(|one| {
        let paused = one.plan().prescription.items.iter().filter_map(|item| {
            let suspended = one.followed.history.suspended(one.plan(), moment.now);
            let alarm = exercises::suspension::blocking(&suspended, item, one.plan(), &one.catalogue)?;
            Some((item.id, alarm.trouble))
        });
        PlanPage {
            paused: paused.collect(),
            fingerprint: vault::fingerprint(&one.verify_key, &one.recipient),
            exercises: one.exercises(),
            ahead: one.followed.ahead.clone(),
            plan: one.followed.plan.clone(),
        }
    });
    Ok(pages.collect())
}
