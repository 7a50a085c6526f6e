//! An exercise as the catalogue describes it: what to do, how it is timed, how it gets harder, what to watch for.
//!
//! The text for people inside an exercise is written by whoever wrote the exercise, in every language of [`Lang`].
//! Ranges of every quantity stand in one table, [`bounds::BOUNDS`]; ranges of the joint angles in [`Joint::range`].

pub mod bounds;
mod conditions;
mod exercise;
mod figure;
mod id;
pub mod kind;
mod ladder;
mod pose;
mod sidedness;
mod texts;

pub use bounds::{Bound, OutOfRange, Quantity, Unit};
pub use conditions::{Arms, Eyes, Feet, Surface};
pub use exercise::{Catalogue, Exercise, Region};
pub use figure::{Arrow, Contact, Figure, Furniture, Landmark, View};
pub use id::{ExerciseId, IdFault, LadderId, MAX_ID, RungId};
pub use kind::{Dose, Kind, Tempo};
pub use ladder::{Factor, Ladder, Rung, RungTexts};
pub use pose::{Joint, Pose};
pub use sidedness::Sidedness;
pub use texts::{Lang, Texts};
