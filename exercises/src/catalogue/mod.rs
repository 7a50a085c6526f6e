//! Exercises as the catalogue describes them: what to do, how they are timed, how they get harder, what to watch for.
//!
//! The texts for people belong to the exercise; its author writes them in every language of [`Lang`]. The ranges of all
//! quantities are in one table, [`bounds::BOUNDS`]; the ranges of the joint angles are in [`Joint::range`].

pub mod bounds;
mod conditions;
mod equipment;
mod exercise;
mod figure;
mod id;
pub mod kind;
mod ladder;
mod level;
mod own_id;
mod pose;
mod posture;
mod prescriber_flag;
mod purpose;
mod sidedness;
mod step_rule;
mod texts;

pub use bounds::{Bound, OutOfRange, Quantity, Unit};
pub use conditions::{Arms, Eyes, Feet, Surface};
pub use equipment::Equipment;
pub use exercise::{Catalogue, Exercise, Region};
pub use figure::{Arrow, Contact, End, Figure, Furniture, Landmark, Link, Tie, View};
pub use id::{ExerciseId, IdFault, LadderId, MAX_ID, RungId};
pub use kind::{Dose, Kind, Tempo};
pub use ladder::{Factor, Ladder, Rung, RungTexts};
pub use level::Level;
pub use own_id::{ClinicMark, MAX_OWN_NAME};
pub use pose::{Joint, Pose};
pub use posture::Posture;
pub use prescriber_flag::PrescriberFlag;
pub use purpose::Purpose;
pub use sidedness::Sidedness;
pub use step_rule::{Basis, Grows, StepRule};
pub use texts::{Lang, Texts};
