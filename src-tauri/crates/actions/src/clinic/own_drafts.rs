//! Unfinished exercises of the clinic's own: kept as far as they were written, until they are saved or deleted.

use super::own_exercises::{self, settle};
use super::own_rows::{self, Own};
use super::sealed;
use crate::{ActionResult, DataFolder};
use exercises::file_fault::{FaultKind, FileFault};
use format::catalogue::{read_unfinished, write};
use format::own_exercise::{self, MAX_DRAFT, OwnRow, OwnState};
use std::sync::Arc;
use wire::Failure;
use wire::prescribing::{DraftNumber, MAX_DRAFTS, OwnDraft, OwnDraftRequest, OwnExercises};

/// The unfinished ones, in the order in which they were begun.
pub(super) fn of(all: &[Arc<Own>]) -> Vec<OwnDraft> {
    let drafts = all.iter().filter(|own| own.state == OwnState::Draft);
    drafts.map(|own| OwnDraft { draft: own.row.id, exercise: read_unfinished(&own.text).ok() }).collect()
}

/// Keeps an unfinished exercise, in place of its earlier state if it has a number. One whose number is no longer there was saved or
/// deleted meanwhile, and is kept as a new one.
///
/// # Errors
/// [`Failure::NotUnderstood`] if it is too large; [`Failure::TooManyOwn`].
pub fn keep(folder: &mut DataFolder, request: OwnDraftRequest) -> ActionResult<DraftNumber> {
    let OwnDraftRequest { draft, exercise } = request;
    let text = write(&exercise);
    let (bytes, most) = (text.len() as u64, MAX_DRAFT as u64);
    let plain = own_exercise::write(&OwnRow { state: OwnState::Draft, text }).map_err(|_| Failure::NotUnderstood {
        file: own_exercises::EDITED.to_owned(),
        fault: FileFault::at(0, FaultKind::TooLarge { bytes, most }),
    })?;
    let all = own_rows::all(folder)?;
    let drafts: Vec<&Arc<Own>> = all.iter().filter(|own| own.state == OwnState::Draft).collect();
    let before = drafts.iter().find(|own| Some(own.row.id) == draft).copied();
    if before.is_none() && drafts.len() >= MAX_DRAFTS {
        return Err(Failure::TooManyOwn { most: MAX_DRAFTS as u16 });
    }
    let number = sealed::change(folder, |tx, sealer| match before {
        Some(own) => own_rows::replace(tx, sealer, &own.row, &plain).map(|()| own.row.id),
        None => own_rows::insert(tx, sealer, &plain),
    })?;
    Ok(DraftNumber { draft: number })
}

/// Deletes an unfinished exercise, if it is there.
///
/// # Errors
/// A failure to use the store.
pub fn discard(folder: &mut DataFolder, number: &DraftNumber) -> ActionResult<OwnExercises> {
    let all = own_rows::all(folder)?;
    let mut drafts = all.iter().filter(|own| own.state == OwnState::Draft && own.row.id == number.draft);
    sealed::change(folder, |tx, sealer| drafts.try_for_each(|own| own_rows::remove(tx, sealer, &own.row)))?;
    settle(folder)?;
    own_exercises::list(folder)
}
