//! The optional lock of the window.

mod choose;
mod idle;
mod locked;

pub use choose::ScreenLockChoice;
pub use idle::lock_when_idle;
pub use locked::Locked;
