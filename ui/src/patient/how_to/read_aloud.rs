//! Reads the starting position and the steps aloud, if the web view has a voice.

use leptos::prelude::*;
use words::{Key, Words};

use crate::patient::voice;
use crate::shared::clock;

/// Time between two looks for a voice, in milliseconds: a web view may load its voices late.
const LOOK_MS: u64 = 1_000;

/// A button that reads these lines aloud, or stops reading. Without a voice, a line that says so.
#[component]
pub fn ReadAloud(lines: Vec<String>, words: Words) -> impl IntoView {
    let can_speak = RwSignal::new(voice::can_speak());
    let reading = RwSignal::new(false);
    clock::every(LOOK_MS, move || {
        if can_speak.get_untracked() != voice::can_speak() {
            can_speak.set(voice::can_speak());
        }
    });
    on_cleanup(voice::stop);
    let lines = StoredValue::new(lines);
    let press = move |_| {
        if reading.get_untracked() {
            voice::stop();
            reading.set(false);
        } else {
            reading.set(true);
            voice::speak_all(&lines.get_value(), words.locale, move || {
                reading.try_set(false);
            });
        }
    };
    let label = move || words.text(if reading.get() { Key::StopReading } else { Key::ReadAloud });
    let no_voice = move || view! { <p class="small soft">{words.text(Key::NoVoice)}</p> };
    view! {
        <Show when=move || can_speak.get() fallback=no_voice>
            <button type="button" class="quiet" aria-pressed=move || reading.get().to_string() on:click=press>{label}</button>
        </Show>
    }
}
