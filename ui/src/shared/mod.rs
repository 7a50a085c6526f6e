//! Components and functions that both sides of the program use.

pub mod app_context;
pub mod backup;
pub mod camera;
pub mod chart;
pub mod clock;
pub mod copied;
pub mod fault;
pub mod figure;
pub mod file;
pub mod focus;
pub mod half_knot;
pub mod in_use;
pub mod language;
pub mod line;
pub mod local_flags;
pub mod paint;
mod refused;
mod requests;
pub mod restart;
pub mod restore;
pub mod salvage;
pub mod saved;
mod screen;
pub mod show_file;
pub mod summary_bytes;
pub mod tick;
pub mod top;
pub mod width;

pub use app_context::AppContext;
pub use fault::Fault;
pub use refused::Refused;
pub use screen::screen;
