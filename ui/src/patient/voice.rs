//! Speaks the phases of a run, if the web view has a voice.

use js_sys::Reflect;
use leptos::prelude::window;
use wasm_bindgen::JsCast;
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
