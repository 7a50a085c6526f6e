//! Now: what to do, and when the next one is.

mod aftercare;
mod choose;
mod excuse_days;
mod head;
mod leave_out;
mod next_step;
mod now_page;
mod offer;
mod question;
mod silence;
mod still;
mod told_once;

pub use choose::Choose;
pub use excuse_days::ExcuseDays;
pub use head::name;
pub use leave_out::LeaveOut;
pub use now_page::Now;
