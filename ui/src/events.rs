//! What the shell calls out to the window by itself.

use js_sys::Reflect;
use leptos::task::spawn_local;
use serde::de::DeserializeOwned;
use wasm_bindgen::JsValue;
use wasm_bindgen::closure::Closure;

use crate::invoke;

/// Calls `then` with the payload each time the shell emits `name`, as long as the window lives.
///
/// A shell that does not allow it leaves the window to its own looks at the clock.
pub fn listen<P: DeserializeOwned + 'static>(name: &'static str, then: impl Fn(P) + 'static) {
    let heard = Closure::<dyn Fn(JsValue)>::new(move |event: JsValue| {
        let payload = Reflect::get(&event, &"payload".into()).unwrap_or(JsValue::NULL);
        if let Ok(payload) = serde_json::from_str(&invoke::text(&payload)) {
            then(payload);
        }
    });
    // Kept for good: the window listens until it closes.
    let Ok(handler) = invoke::handle(&heard.into_js_value()) else { return };
    let args = serde_json::json!({ "event": name, "target": { "kind": "Any" }, "handler": handler }).to_string();
    spawn_local(async move {
        // Not allowed is no fault: the window looks at the clock by itself.
        let _ = invoke::raw("plugin:event|listen", &args).await;
    });
}
