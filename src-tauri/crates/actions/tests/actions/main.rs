//! Actions that only the window uses: reminders, runs in progress, agreed times, drafts. Tested with real folders, keys and cards;
//! the time is an argument.

mod answering;
mod clinic;
mod correcting;
mod door;
mod drafts;
mod frames;
mod hostile;
mod issuing;
mod numbering;
mod own;
mod people;
mod phone;
mod plan_cache;
mod prescribing;
mod receiving;
mod refitting;
mod reminders;
mod renewing;
mod restored;
mod running;
mod screen;
mod sealed_rows;
mod sets;
mod stepping;
mod taking;
mod wrong_clock;
