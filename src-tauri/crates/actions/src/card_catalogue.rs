//! The exercises that a card can name: those that ship with the program, and the clinic's own, which are on it whole.

use crate::ActionResult;
use exercises::catalogue::{Catalogue, Exercise};
use wire::Failure;

/// A card's own exercises.
///
/// # Errors
/// [`Failure::CardOwnUnfit`] if this program cannot read one of them, or one has an id that is not that of an own exercise.
pub(crate) fn own_of(own: &[String]) -> ActionResult<Vec<Exercise>> {
    let read = |text: &String| format::catalogue::read_on_card(text).ok().filter(|exercise| exercise.id.is_own());
    own.iter().map(read).collect::<Option<_>>().ok_or(Failure::CardOwnUnfit)
}

/// The catalogue that ships with the program, with a card's own exercises. Their ids are not those of shipped ones.
///
/// # Errors
/// As for [`own_of`].
pub(crate) fn with_own(shipped: &Catalogue, own: &[String]) -> ActionResult<Catalogue> {
    let mut catalogue = shipped.clone();
    own_of(own)?.into_iter().for_each(|exercise| put(&mut catalogue, exercise));
    Ok(catalogue)
}

/// Puts an own exercise into the catalogue, in the place of another revision of it.
pub(crate) fn put(catalogue: &mut Catalogue, exercise: Exercise) {
    catalogue.exercises.retain(|known| known.id != exercise.id);
    catalogue.exercises.push(exercise);
}
