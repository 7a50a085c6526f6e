//! What the window can ask of the shell: one file for each area of the screen, one function for
//! each command, and in each function one call.

mod situation;

use tauri::ipc::Invoke;

/// Every command, in the order of `build.rs`.
pub fn handler() -> impl Fn(Invoke) -> bool + Send + Sync + 'static {
    tauri::generate_handler![situation::situation]
}
