//! Speaks the phases of a run and reads instructions aloud, if the web view has a voice.

use js_sys::Reflect;
use leptos::prelude::window;
use wasm_bindgen::{JsCast, JsValue, closure::Closure};
use web_sys::{SpeechSynthesis, SpeechSynthesisUtterance};
use words::Locale;

/// Whether there is a voice. A web view may load its voices late, so it is asked each time.
pub fn can_speak() -> bool {
    synthesis().is_some_and(|synthesis| synthesis.get_voices().length() > 0)
}

/// Says `text` and stops what is being said, because late words would be wrong.
pub fn speak(text: &str, locale: Locale) {
    let Some(synthesis) = synthesis() else { return };
    synthesis.cancel();
    if let Ok(utterance) = SpeechSynthesisUtterance::new_with_text(text) {
        utterance.set_lang(locale.tag());
        synthesis.speak(&utterance);
    }
}

/// Reads `lines` one after the other in place of what is being said; `over` is called after the last one, unless it is stopped.
pub fn speak_all(lines: &[String], locale: Locale, over: impl FnOnce() + 'static) {
    let Some(synthesis) = synthesis() else { return };
    synthesis.cancel();
    let mut over = Some(over);
    for (place, line) in lines.iter().enumerate() {
        let Ok(utterance) = SpeechSynthesisUtterance::new_with_text(line) else { continue };
        utterance.set_lang(locale.tag());
        if place + 1 == lines.len() {
            let ended = over.take().map(Closure::once_into_js);
            utterance.set_onend(ended.as_ref().and_then(JsValue::dyn_ref));
        }
        synthesis.speak(&utterance);
    }
}

/// Stops speaking.
pub fn stop() {
    if let Some(synthesis) = synthesis() {
        synthesis.cancel();
    }
}

fn synthesis() -> Option<SpeechSynthesis> {
    let found = Reflect::get(&window(), &"speechSynthesis".into()).ok()?;
    found.dyn_into().ok()
}
