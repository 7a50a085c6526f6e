//! Keeps the screen awake during a run, if the system offers a lock for that.

use std::cell::RefCell;

use js_sys::{Function, Promise, Reflect};
use leptos::prelude::window;
use leptos::task::spawn_local;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

thread_local! {
    static LOCK: RefCell<Option<JsValue>> = const { RefCell::new(None) };
}

/// Requests the lock; must be called by a press, as web views demand. If it is refused or not available, the screen may go dark, and
/// the sounds still guide the person.
pub fn keep() {
    let Ok(asked) = request() else { return };
    spawn_local(async move {
        if let Ok(lock) = JsFuture::from(asked).await {
            LOCK.set(Some(lock));
        }
    });
}

/// Releases the lock.
pub fn let_go() {
    if let Some(lock) = LOCK.take() {
        let release = Reflect::get(&lock, &"release".into()).and_then(|release| release.dyn_into::<Function>());
        let released = release.and_then(|release| release.call0(&lock)).and_then(|promise| promise.dyn_into::<Promise>());
        if let Ok(released) = released {
            spawn_local(async move {
                // A lock that is already gone need not be released.
                let _ = JsFuture::from(released).await;
            });
        }
    }
}

fn request() -> Result<Promise, JsValue> {
    let locks = Reflect::get(&window().navigator(), &"wakeLock".into())?;
    let request: Function = Reflect::get(&locks, &"request".into())?.dyn_into()?;
    request.call1(&locks, &"screen".into())?.dyn_into()
}
