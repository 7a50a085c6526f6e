//! The encrypted rows of the clinic's own exercises: each finished revision, and each unfinished exercise.

use super::{lock, rows, sealed, threads};
use crate::{ActionResult, DataFolder};
use exercises::catalogue::{Exercise, ExerciseId};
use format::own_exercise::{self, OwnRow, OwnState};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;
use store::table::own_exercise::Row;
use store::{StoreError, Tx, table};

/// A row that opens.
pub(crate) struct Own {
    pub(super) row: Row,
    pub(super) state: OwnState,
    /// As it was stored.
    pub(super) text: String,
    /// A finished exercise, with the id that it has everywhere but in its file.
    pub(super) exercise: Option<Exercise>,
}

impl Own {
    /// A finished revision.
    fn finished(&self) -> Option<&Exercise> {
        self.exercise.as_ref().filter(|_| self.state != OwnState::Draft)
    }

    /// Whether this is a revision of the exercise.
    pub(super) fn is_of(&self, id: &ExerciseId) -> bool {
        self.finished().is_some_and(|exercise| exercise.id == *id)
    }

    pub(super) fn revision(&self) -> u16 {
        self.exercise.as_ref().map_or(0, |exercise| exercise.revision)
    }
}

/// All rows that open, each read once while the folder is open. One that does not is left out: that rows were changed from outside is
/// said when the store is unlocked.
pub(super) fn all(folder: &DataFolder) -> ActionResult<Vec<Arc<Own>>> {
    let keys = lock::unlocked_keys(folder)?;
    let there = rows::read(folder, table::own_exercise::all)?;
    let mut known = folder.own_rows.borrow_mut();
    let before = std::mem::take(&mut *known);
    let mut new = Vec::new();
    for row in there {
        match before.get(&row.id).filter(|own| own.row == row) {
            Some(same) => drop(known.insert(row.id, same.clone())),
            None => new.push(row),
        }
    }
    let opened = threads::each(new.into_iter(), |row| open(keys, row).map(Arc::new));
    known.extend(opened.into_iter().flatten().map(|own| (own.row.id, own)));
    Ok(known.values().cloned().collect())
}

fn open(keys: &vault::Keys, row: Row) -> Option<Own> {
    let plain = vault::rows::open(keys, &sealed::own_place(row.id), &row.sealed).ok()?;
    let OwnRow { state, text } = own_exercise::read(&plain).ok()?;
    let exercise = match state {
        OwnState::Draft => None,
        OwnState::Offered | OwnState::Removed => {
            // Its name was checked when it was saved; meanwhile the program may ship an exercise of that name.
            let exercise = format::catalogue::read_on_card(&text).ok()?;
            let id = ExerciseId::own(keys.mark(), exercise.id.as_str()).ok()?;
            Some(Exercise { id, ..exercise })
        }
    };
    Some(Own { row, state, text, exercise })
}

/// The finished exercises, each with its revisions in ascending order.
pub(super) fn finished(all: &[Arc<Own>]) -> BTreeMap<ExerciseId, Vec<Arc<Own>>> {
    let mut by_id: BTreeMap<ExerciseId, Vec<Arc<Own>>> = BTreeMap::new();
    for own in all {
        if let Some(exercise) = own.finished() {
            by_id.entry(exercise.id.clone()).or_default().push(own.clone());
        }
    }
    by_id.values_mut().for_each(|revisions| revisions.sort_by_key(|own| own.revision()));
    by_id
}

/// The revisions of own exercises that cards have; `None` if it is not known of every card.
pub(super) fn on_cards(folder: &DataFolder) -> ActionResult<Option<BTreeSet<(ExerciseId, u16)>>> {
    let all = rows::patients(folder)?;
    if all.damaged > 0 {
        return Ok(None);
    }
    let mut on_cards = BTreeSet::new();
    for patient in all.patients {
        let Ok(patient) = patient else { return Ok(None) };
        for card in patient.cards.values() {
            let own = card.plan.prescription.items.iter().filter(|item| item.exercise.is_own());
            on_cards.extend(own.map(|item| (item.exercise.clone(), item.content)));
        }
    }
    Ok(Some(on_cards))
}

/// Seals a new row.
pub(super) fn insert(tx: &Tx<'_>, sealer: &mut sealed::Sealer<'_>, plain: &[u8]) -> Result<i64, StoreError> {
    table::own_exercise::insert(tx, |id| Ok(sealer.seal(sealed::NOBODY, &sealed::own_place(id), plain)))
}

/// Seals a row anew.
pub(super) fn replace(tx: &Tx<'_>, sealer: &mut sealed::Sealer<'_>, before: &Row, plain: &[u8]) -> Result<(), StoreError> {
    let place = sealed::own_place(before.id);
    let sealed = sealer.replace(sealed::NOBODY, &place, Some(&before.sealed), plain);
    table::own_exercise::update(tx, before.id, &sealed)
}

/// Removes a row.
pub(super) fn remove(tx: &Tx<'_>, sealer: &mut sealed::Sealer<'_>, row: &Row) -> Result<(), StoreError> {
    sealer.removed(sealed::NOBODY, &sealed::own_place(row.id), Some(&row.sealed));
    table::own_exercise::remove(tx, row.id)
}
