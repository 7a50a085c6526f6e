//! Tells the shell while somebody uses the window, and locks it with the keyboard.

use leptos::ev;
use leptos::prelude::*;
use leptos::task::spawn_local;
use wire::clinic::InUse;

use super::clock;
use crate::invoke;

/// The shell is told at most once in this many milliseconds.
const TELL_MS: f64 = 1000.0;

/// Until the owner of this scope is disposed of: tells the shell when somebody types, points or scrolls, as long as `tells` says so, and
/// calls `lock` with Ctrl+L. The result tells the shell at any other moment.
pub fn watch(tells: impl Fn() -> bool + Copy + 'static, lock: impl Fn() + 'static) -> impl Fn() + Copy + 'static {
    let told = StoredValue::new(f64::NEG_INFINITY);
    let used = move || {
        let now = clock::steady_ms();
        if now - told.get_value() >= TELL_MS && untrack(tells) {
            told.set_value(now);
            // If the shell does not get it, the window only locks earlier.
            spawn_local(async { drop(invoke::call::<InUse>(&()).await) });
        }
    };
    let typed = window_event_listener(ev::keydown, move |event| {
        used();
        if event.ctrl_key() && !event.alt_key() && event.key().eq_ignore_ascii_case("l") {
            event.prevent_default();
            lock();
        }
    });
    let moved = window_event_listener(ev::pointermove, move |_| used());
    let pressed = window_event_listener(ev::pointerdown, move |_| used());
    let scrolled = window_event_listener(ev::wheel, move |_| used());
    on_cleanup(move || {
        typed.remove();
        moved.remove();
        pressed.remove();
        scrolled.remove();
    });
    used
}
