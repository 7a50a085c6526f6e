//! What the window does and the terminal does not: reminders, runs as they go, agreed times, drafts. With real folders, keys
//! and cards; the time is an argument.

mod clinic;
mod correcting;
mod drafts;
mod frames;
mod own;
mod people;
mod plan_cache;
mod receiving;
mod reminders;
mod running;
mod stepping;
mod taking;
