//! The window's clocks: now, again and again, and each frame.

use std::cell::{Cell, RefCell};
use std::rc::Rc;
use std::time::Duration;

use exercises::guide::Moment;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;

/// This moment on both clocks.
pub fn now() -> Moment {
    Moment { steady_ms: steady_ms() as u64, wall_ms: js_sys::Date::now() as i64 }
}

/// Milliseconds on the clock that only goes forward, with fractions.
pub fn steady_ms() -> f64 {
    window().performance().map_or(0.0, |clock| clock.now())
}

/// Calls `then` every `ms` milliseconds until the owner of this scope goes.
pub fn every(ms: u64, then: impl Fn() + 'static) {
    if let Ok(handle) = set_interval_with_handle(then, Duration::from_millis(ms)) {
        on_cleanup(move || handle.clear());
    }
}

/// Whether the person wants no movement on the screen.
pub fn is_still() -> bool {
    let query = window().match_media("(prefers-reduced-motion: reduce)").ok().flatten();
    query.is_some_and(|query| query.matches())
}

type Frame = Closure<dyn FnMut(f64)>;

/// Calls `then` with the steady clock at each frame until the owner of this scope goes. Nothing is called while the window
/// is out of sight.
pub fn each_frame(then: impl Fn(f64) + 'static) {
    let alive = Rc::new(Cell::new(true));
    let held: Rc<RefCell<Option<Frame>>> = Rc::default();
    let (again, going) = (Rc::clone(&held), Rc::clone(&alive));
    *held.borrow_mut() = Some(Closure::new(move |at: f64| {
        if going.get() {
            then(at);
            request(&again);
        }
    }));
    request(&held);
    let held = StoredValue::new_local(held);
    let alive = StoredValue::new_local(alive);
    on_cleanup(move || {
        alive.try_with_value(|alive| alive.set(false));
        held.try_with_value(|held| held.borrow_mut().take());
    });
}

fn request(frame: &Rc<RefCell<Option<Frame>>>) {
    if let Some(frame) = frame.borrow().as_ref() {
        // Refused only when the window goes.
        let _ = window().request_animation_frame(frame.as_ref().unchecked_ref());
    }
}
