//! Actions that only the window uses: reminders, runs in progress, agreed times, drafts. Tested with real folders, keys and cards;
//! the time is an argument.

mod answering;
mod clinic;
mod correcting;
mod drafts;
mod frames;
mod own;
mod people;
mod phone;
mod plan_cache;
mod receiving;
mod refitting;
mod reminders;
mod running;
mod stepping;
mod taking;
