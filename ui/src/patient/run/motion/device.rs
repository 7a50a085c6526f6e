//! The device's own motion sensor, as provided by the web view (W3C Device Orientation and Motion).

use exercises::sway::{Os, Sample};
use js_sys::{Function, Promise, Reflect};
use leptos::prelude::window;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

/// The name of the sensor's interface in the web view.
const INTERFACE: &str = "DeviceMotionEvent";

/// Whether the web view has this interface. It may still provide no readings: a computer without a sensor has it too.
pub fn is_there() -> bool {
    Reflect::has(&window(), &INTERFACE.into()).unwrap_or(false)
}

/// Asks for permission on systems that require it; must be called by a press.
pub fn ask_leave() -> impl Future<Output = bool> {
    // The call itself must happen within the press; only its result is awaited.
    let asked = request_permission();
    async move {
        match asked {
            Some(answer) => {
                JsFuture::from(answer).await.is_ok_and(|answer| answer.as_string().as_deref() == Some("granted"))
            }
            None => true,
        }
    }
}

fn request_permission() -> Option<Promise> {
    let interface = Reflect::get(&window(), &INTERFACE.into()).ok()?;
    let request: Function = Reflect::get(&interface, &"requestPermission".into()).ok()?.dyn_into().ok()?;
    request.call0(&interface).ok()?.dyn_into().ok()
}

/// The operating system, as far as the web view reveals it. One system has the opposite sign on all axes.
pub fn os() -> Os {
    let agent = window().navigator().user_agent().unwrap_or_default();
    let touch = Reflect::get(&window().navigator(), &"maxTouchPoints".into()).ok().and_then(|points| points.as_f64());
    // A tablet of that system identifies itself as a computer, but that maker's computers have no touch screen.
    let tablet = agent.contains("Macintosh") && touch.unwrap_or(0.0) > 1.0;
    match agent {
        _ if tablet || agent.contains("iPhone") || agent.contains("iPad") => Os::Ios,
        _ if agent.contains("Android") => Os::Android,
        _ => Os::Other,
    }
}

/// Receives every reading until it is dropped. Times are those of the readings, in seconds.
pub struct MotionListener {
    heard: Closure<dyn FnMut(JsValue)>,
}

impl MotionListener {
    /// Begins to listen.
    pub fn open(mut on_sample: impl FnMut(Sample) + 'static) -> MotionListener {
        let os = os();
        let heard = Closure::<dyn FnMut(JsValue)>::new(move |event: JsValue| {
            if let Some(sample) = read(&event) {
                on_sample(Sample { a: os.to_specific_force(sample.a), ..sample });
            }
        });
        // A window that accepts no listener has no sensor: no reading will arrive, which is noticed later.
        let _ = window().add_event_listener_with_callback("devicemotion", heard.as_ref().unchecked_ref());
        MotionListener { heard }
    }
}

impl Drop for MotionListener {
    fn drop(&mut self) {
        let _ = window().remove_event_listener_with_callback("devicemotion", self.heard.as_ref().unchecked_ref());
    }
}

/// A reading; any part of it may be missing.
fn read(event: &JsValue) -> Option<Sample> {
    let get = |of: &JsValue, name: &str| Reflect::get(of, &name.into()).ok();
    let number = |of: &JsValue, name: &str| get(of, name).and_then(|value| value.as_f64());
    let force = get(event, "accelerationIncludingGravity").filter(|force| !force.is_null() && !force.is_undefined())?;
    let a = [number(&force, "x")?, number(&force, "y")?, number(&force, "z")?];
    Some(Sample { t_s: number(event, "timeStamp")? / 1000.0, a })
}
