//! Locks the window when nobody uses it.

use leptos::prelude::*;
use wire::app::ScreenLock;
use wire::device::LockScreen;

use crate::events;
use crate::patient::context::PatientContext;
use crate::shared::{clock, in_use};

/// How often an exercise in progress counts as use, in milliseconds.
const RUNNING_MS: u64 = 1000;

/// Locks the window, if it has a code, when the shell says that nobody uses it, and with Ctrl+L. An exercise in progress counts as use, and
/// is never interrupted.
pub fn lock_when_idle(context: PatientContext) {
    let has_code =
        move || context.app.state.with(|state| state.as_ref().is_some_and(|state| state.screen == ScreenLock::Open));
    let lock = move || {
        if untrack(has_code) && !untrack(|| context.running()) {
            context.app.request::<LockScreen>((), move |state| context.app.state.set(Some(state)));
        }
    };
    events::listen("idle", move |_: serde_json::Value| lock());
    let used = in_use::watch(has_code, lock);
    clock::every(RUNNING_MS, move || {
        if untrack(|| context.running()) {
            used();
        }
    });
}
