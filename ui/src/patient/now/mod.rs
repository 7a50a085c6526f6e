//! Now: what to do, and when the next session is.

mod aftercare;
mod as_needed;
mod choose;
mod days_off;
mod head;
mod meeting;
mod message;
mod new_today;
mod next_step;
mod now_page;
mod offer;
mod question;
mod silence;
mod skip;
mod tray_hint;
mod try_first;
mod visit_soon;
mod weeks;

pub use choose::Choose;
pub use days_off::TakeDaysOff;
pub use now_page::Now;
pub use skip::SkipSlot;
