//! Which patient a plan belongs to. In the database only the encrypted cards say so: one card of each patient is decrypted for it, once
//! while the clinic is unlocked, and what it says is kept in memory.

use super::rows;
use crate::{ActionResult, DataFolder, refuse};
use exercises::id::PlanId;
use std::collections::{BTreeMap, BTreeSet};
use store::table;
use vault::Keys;

/// The patients by plan.
#[derive(Default)]
pub(crate) struct PlanHolders {
    /// The store's state by others for which all of it holds.
    state: Option<u32>,
    of: BTreeMap<PlanId, i64>,
    /// Patients whose first card does not open, so that any plan may be theirs.
    damaged: BTreeSet<i64>,
    /// The row of cards up to which every first card was looked at.
    seen_up_to: i64,
}

impl PlanHolders {
    /// Forgets a patient who is removed.
    pub(super) fn forget(&mut self, patient: i64) {
        self.of.retain(|_, holder| *holder != patient);
        self.damaged.remove(&patient);
    }
}

/// The row of the patient to whom the plan belongs. Only cards that were written since the last call are decrypted.
///
/// # Errors
/// [`wire::Failure::RecordsDamaged`] if nobody has the plan, and a card that cannot be decrypted may belong to it.
pub(super) fn find(folder: &DataFolder, keys: &Keys, plan: PlanId) -> ActionResult<Option<i64>> {
    let state = folder.home.store().state_by_others().map_err(refuse::store(folder.home.dir()))?;
    let mut holders = folder.plan_holders.borrow_mut();
    if holders.state.replace(state) != Some(state) {
        *holders = PlanHolders { state: Some(state), ..PlanHolders::default() };
    }
    if let Some(known) = holders.of.get(&plan) {
        return Ok(Some(*known));
    }
    let seen = holders.seen_up_to;
    for row in rows::read(folder, |view| table::issued::oldest_of_each_above(view, seen))? {
        match claimed_plan(keys, &row) {
            Some(claimed) => drop(holders.of.insert(claimed, row.patient)),
            None => drop(holders.damaged.insert(row.patient)),
        }
        holders.seen_up_to = row.id;
    }
    match (holders.of.get(&plan), holders.damaged.len()) {
        (None, damaged @ 1..) => Err(rows::records_damaged(damaged)),
        (holder, _) => Ok(holder.copied()),
    }
}

/// The plan that a card says it is of. That the row is the clinic's own, its sealing says; its signature is not checked.
fn claimed_plan(keys: &Keys, row: &table::issued::Issued) -> Option<PlanId> {
    Some(format::card::open(&rows::card_bytes(keys, row)?).ok()?.claimed_plan())
}
