//! What the patient will see, at the size of a phone.

use exercises::catalogue::Sidedness;
use exercises::id::ItemId;
use exercises::plan::{Days, Item, Pattern, Schedule, Side};
use leptos::prelude::*;
use words::{Key, Locale};

use super::writer::Writer;
use crate::patient::InFull;

/// The page with the instructions as the patient's device shows it, in light or dark, in the language that is being written.
#[component]
pub fn Preview() -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let dark = RwSignal::new(false);
    let item = Memo::new(move |_| {
        writer.exercise.with(|exercise| {
            let level = writer.level.get().or_else(|| exercise.first_rung().map(|rung| rung.id.clone()));
            let shown = exercise.level(level.as_ref());
            let schedule = Schedule { days: Days::ALL, pattern: Pattern::At { times: vec![18 * 60] } };
            let side = match shown.side() {
                Sidedness::None => Side::Neither,
                Sidedness::EachSide => Side::Both,
                Sidedness::Alternating => Side::Alternating,
            };
            Item { rung: level.clone(), side, ..Item::new(ItemId(1), exercise.id.clone(), shown.dose(), schedule) }
        })
    });
    let shown_words = Signal::derive(move || {
        let lang = writer.lang.get();
        let locale = Locale::closest(lang.code()).filter(|_| lang != words.lang());
        locale.map_or(words, |locale| words.in_locale(locale))
    });
    let tab = move |key: Key, is_dark: bool| {
        view! {
            <button type="button" aria-pressed=move || (dark.get() == is_dark).to_string() on:click=move |_| dark.set(is_dark)>{words.text(key)}</button>
        }
    };
    view! {
        <aside class="preview" aria-label=words.text(Key::DrawPreview)>
            <div class="row">
                <h2>{words.text(Key::DrawPreview)}</h2>
                <div class="options">{tab(Key::DrawLight, false)}{tab(Key::DrawDark, true)}</div>
            </div>
            <div class="phone" class:in-dark=dark class:in-light=move || !dark.get() tabindex="0" role="group" aria-label=words.text(Key::DrawPreview)>
                <div class="column stack-5"><InFull item exercise=writer.exercise words=shown_words/></div>
            </div>
        </aside>
    }
}
