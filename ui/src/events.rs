//! Events that the shell sends to the window.

use js_sys::Reflect;
use leptos::task::spawn_local;
use serde::de::DeserializeOwned;
use wasm_bindgen::JsValue;
use wasm_bindgen::closure::Closure;

use crate::invoke;

/// Calls `then` with the payload each time the shell emits `name`, as long as the window exists.
///
/// If the shell does not allow it, the window relies on its own regular checks.
pub fn listen<P: DeserializeOwned + 'static>(name: &'static str, then: impl Fn(P) + 'static) {
    let heard = Closure::<dyn Fn(JsValue)>::new(move |event: JsValue| {
        let payload = Reflect::get(&event, &"payload".into()).unwrap_or(JsValue::NULL);
        if let Ok(payload) = serde_json::from_str(&invoke::text(&payload)) {
            then(payload);
        }
    });
    // Never released: the window listens until it closes.
    let Ok(handler) = invoke::handle(&heard.into_js_value()) else { return };
    let args = serde_json::json!({ "event": name, "target": { "kind": "Any" }, "handler": handler }).to_string();
    spawn_local(async move {
        // It is not an error if listening is not allowed, because the window also checks regularly by itself.
        let _ = invoke::raw("plugin:event|listen", &args).await;
    });
}
