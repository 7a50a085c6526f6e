//! Asks the shell. The only file that knows how the window reaches it.

use js_sys::{Function, JSON, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use wire::{Command, Failure};

/// Asks the shell and waits for its answer. Both ways go through JSON text, so that numbers, options
/// and maps mean in the window what they mean in the native tests.
///
/// # Errors
/// The command's own failure, or a fault when the shell did not understand the question.
pub async fn call<C: Command>(args: &C::Args) -> Result<C::Reply, Failure> {
    let args = serde_json::json!({ "args": args }).to_string();
    match raw(C::NAME, &args).await {
        Ok(reply) => serde_json::from_str(&text(&reply)).map_err(|error| fault(C::NAME, &error.to_string())),
        Err(reason) => Err(failure(C::NAME, &text(&reason))),
    }
}

/// Calls the function that Tauri puts into the window. Looked up by name: a missing one is an error
/// here and not a trap.
///
/// # Errors
/// Whatever the shell, or the lack of one, throws.
pub async fn raw(name: &str, args: &str) -> Result<JsValue, JsValue> {
    let internals = internals()?;
    let invoke: Function = Reflect::get(&internals, &"invoke".into())?.dyn_into()?;
    let answer: Promise = invoke.call2(&internals, &name.into(), &JSON::parse(args)?)?.dyn_into()?;
    JsFuture::from(answer).await
}

/// Gives the shell a number under which it can call `callback`.
///
/// # Errors
/// Whatever the lack of a shell throws.
pub fn handle(callback: &JsValue) -> Result<f64, JsValue> {
    let internals = internals()?;
    let transform: Function = Reflect::get(&internals, &"transformCallback".into())?.dyn_into()?;
    let number = transform.call1(&internals, callback)?;
    number.as_f64().ok_or(number)
}

/// Any value of the window as JSON text.
pub fn text(value: &JsValue) -> String {
    JSON::stringify(value).map_or_else(|_| String::from("null"), String::from)
}

fn internals() -> Result<JsValue, JsValue> {
    Reflect::get(&js_sys::global(), &"__TAURI_INTERNALS__".into())
}

/// A command that failed says so as a [`Failure`]; anything else is a fault of the program.
fn failure(name: &str, reason: &str) -> Failure {
    serde_json::from_str(reason).unwrap_or_else(|_| fault(name, reason))
}

fn fault(name: &str, detail: &str) -> Failure {
    Failure::Internal { detail: format!("{name}: {detail}") }
}
