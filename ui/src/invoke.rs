//! Calls commands of the shell. The only file that knows how the window reaches it.

use js_sys::{Function, JSON, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use wire::{Command, Failure};

/// Calls a command and waits for its result. Arguments and results are passed as JSON text, so that numbers, options and maps have
/// the same meaning in the window as in the native tests.
///
/// # Errors
/// The command's own failure, or an internal failure if the shell did not understand the call.
pub async fn call<C: Command>(args: &C::Args) -> Result<C::Reply, Failure> {
    let args = serde_json::json!({ "args": args }).to_string();
    match raw(C::NAME, &args).await {
        Ok(reply) => serde_json::from_str(&text(&reply)).map_err(|error| fault(C::NAME, &error.to_string())),
        Err(reason) => Err(failure(C::NAME, &text(&reason))),
    }
}

/// Calls the function that Tauri puts into the window. It is looked up by name, so that a missing function is an error and does not
/// end the program.
///
/// # Errors
/// Whatever the shell throws, or the error that there is no shell.
pub async fn raw(name: &str, args: &str) -> Result<JsValue, JsValue> {
    let internals = internals()?;
    let invoke: Function = Reflect::get(&internals, &"invoke".into())?.dyn_into()?;
    let answer: Promise = invoke.call2(&internals, &name.into(), &JSON::parse(args)?)?.dyn_into()?;
    JsFuture::from(answer).await
}

/// Registers `callback` with the shell and returns its number.
///
/// # Errors
/// The error that there is no shell.
pub fn handle(callback: &JsValue) -> Result<f64, JsValue> {
    let internals = internals()?;
    let transform: Function = Reflect::get(&internals, &"transformCallback".into())?.dyn_into()?;
    let number = transform.call1(&internals, callback)?;
    number.as_f64().ok_or(number)
}

/// Any JavaScript value as JSON text.
pub fn text(value: &JsValue) -> String {
    JSON::stringify(value).map_or_else(|_| String::from("null"), String::from)
}

fn internals() -> Result<JsValue, JsValue> {
    Reflect::get(&js_sys::global(), &"__TAURI_INTERNALS__".into())
}

/// A failed command returns a [`Failure`]; anything else is a fault of the program.
fn failure(name: &str, reason: &str) -> Failure {
    serde_json::from_str(reason).unwrap_or_else(|_| fault(name, reason))
}

fn fault(name: &str, detail: &str) -> Failure {
    Failure::Internal { detail: format!("{name}: {detail}") }
}
