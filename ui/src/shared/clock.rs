//! The window's clocks, timers and animation frames.

use std::cell::{Cell, RefCell};
use std::rc::Rc;
use std::time::Duration;

use exercises::guide::Moment;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;

/// The present moment on both clocks.
pub fn now() -> Moment {
    Moment { steady_ms: steady_ms() as u64, wall_ms: js_sys::Date::now() as i64 }
}

/// Milliseconds on the steady clock, which only goes forward, with fractions.
pub fn steady_ms() -> f64 {
    window().performance().map_or(0.0, |clock| clock.now())
}

/// Calls `then` every `ms` milliseconds until the owner of this scope is disposed of.
pub fn every(ms: u64, then: impl Fn() + 'static) {
    if let Ok(handle) = set_interval_with_handle(then, Duration::from_millis(ms)) {
        on_cleanup(move || handle.clear());
    }
}

/// Whether the person prefers no movement on the screen.
pub fn is_still() -> bool {
    let query = window().match_media("(prefers-reduced-motion: reduce)").ok().flatten();
    query.is_some_and(|query| query.matches())
}

/// The callback that the browser calls before it paints, with the time in milliseconds.
type Frame = Closure<dyn FnMut(f64)>;

/// What is called at each frame, and the request for the next frame.
#[derive(Default)]
struct Frames {
    call: RefCell<Option<Frame>>,
    asked: Cell<Option<i32>>,
}

/// Calls `then` with the steady clock at each frame until the owner of this scope is disposed of. It is not called while the window
/// is hidden.
pub fn each_frame(then: impl Fn(f64) + 'static) {
    frames_while(move |at| {
        then(at);
        true
    });
}

/// Like [`each_frame`], but only as long as `then` returns true.
pub fn frames_while(then: impl Fn(f64) -> bool + 'static) {
    let frames = Rc::new(Frames::default());
    let again = Rc::clone(&frames);
    *frames.call.borrow_mut() = Some(Closure::new(move |at: f64| {
        again.asked.set(None);
        if then(at) {
            again.request();
        }
    }));
    frames.request();
    let frames = StoredValue::new_local(frames);
    on_cleanup(move || {
        frames.try_with_value(|frames| frames.end());
    });
}

impl Frames {
    /// Requests the next frame, unless the animation has ended.
    fn request(&self) {
        if let Some(call) = self.call.borrow().as_ref() {
            self.asked.set(window().request_animation_frame(call.as_ref().unchecked_ref()).ok());
        }
    }

    /// Cancels the request before the callback is dropped, because a later frame would find nothing to call.
    fn end(&self) {
        if let Some(asked) = self.asked.take() {
            // Fails only when the window is closing.
            let _ = window().cancel_animation_frame(asked);
        }
        self.call.borrow_mut().take();
    }
}
