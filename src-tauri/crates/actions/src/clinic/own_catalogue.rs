//! The exercises that a clinic's plans can name: those that ship with the program, and its own.

use super::lock;
use super::own_rows;
use super::rows::Patient;
use crate::card_catalogue::{own_of, put};
use crate::patient::plans;
use crate::{ActionResult, DataFolder};
use exercises::catalogue::{Catalogue, Exercise, ExerciseId};
use exercises::plan::{Plan, Prescription};
use format::catalogue::write;
use format::own_exercise::OwnState;

/// The catalogue from which a patient's next plan is made: the exercises that ship with the program, the clinic's own that are offered,
/// each in its newest revision, and those on the patient's newest card.
pub(crate) fn catalogue(folder: &DataFolder, patient: &Patient) -> ActionResult<Catalogue> {
    let on_card = patient.newest().map(|card| own_of(&card.own).unwrap_or_default()).unwrap_or_default();
    with_offered(folder, on_card)
}

/// The exercises that ship with the program, and the clinic's own that are offered.
pub(crate) fn offered(folder: &DataFolder) -> ActionResult<Catalogue> {
    with_offered(folder, Vec::new())
}

fn with_offered(folder: &DataFolder, more: Vec<Exercise>) -> ActionResult<Catalogue> {
    let all = own_rows::all(folder)?;
    let newest = own_rows::finished(&all).into_values().filter_map(|revisions| revisions.last().cloned());
    let offered = newest.filter(|own| own.state == OwnState::Offered).filter_map(|own| own.exercise.clone());
    let mut catalogue = folder.catalogue.clone();
    more.into_iter().chain(offered).for_each(|exercise| put(&mut catalogue, exercise));
    Ok(catalogue)
}

/// Gives own exercises that are named as their author calls them their ids. What the program ships is meant first.
pub(crate) fn name_fully(folder: &DataFolder, catalogue: &Catalogue, prescription: &mut Prescription) -> ActionResult<()> {
    let mark = lock::unlocked_keys(folder)?.mark();
    for item in prescription.items.iter_mut().filter(|item| catalogue.get(&item.exercise).is_none()) {
        let own = ExerciseId::own(mark, item.exercise.as_str()).ok().filter(|own| catalogue.get(own).is_some());
        item.exercise = own.unwrap_or_else(|| item.exercise.clone());
    }
    Ok(())
}

/// The own exercises of a plan, as they go onto its card.
pub(crate) fn for_card(plan: &Plan, catalogue: &Catalogue) -> Vec<String> {
    let used = plans::exercises_of(plan, catalogue).into_iter().filter(|exercise| exercise.id.is_own());
    used.map(|exercise| write(&exercise)).collect()
}
