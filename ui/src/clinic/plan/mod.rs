//! The plan editor: the exercises at the side, the chosen items in the middle, less common things folded below.

mod activities;
mod aftercare;
mod alarms;
mod balance;
mod catalogue;
mod complaints;
mod compose;
mod concerns;
mod dose;
mod editor;
mod facts;
mod issue;
mod item;
mod items;
mod left;
mod limits;
mod load;
mod options;
mod phase;
mod proposal;
mod schedule;
mod sets;
mod stance;
mod visit;

pub use alarms::AlarmsToClear;
pub use compose::Compose;
pub use editor::PlanEditor;
pub use issue::Issue;
pub use options::Options;
