//! Composing a plan: the exercises at the side, what is chosen in the middle, the rarer things folded below.

mod activities;
mod aftercare;
mod alarms;
mod balance;
mod catalogue;
mod complaints;
mod compose;
mod dose;
mod editor;
mod issue;
mod item;
mod items;
mod limits;
mod proposal;
mod schedule;
mod stance;
mod visit;

pub use compose::Compose;
