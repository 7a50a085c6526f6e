//! The button that notes what is typed in a section.

use leptos::prelude::*;
use words::Key;

use super::context::VisitContext;

/// A button that is named after its section (`of`) for who cannot see where it stands. While something is missing, `unready`, it cannot be
/// pressed. `label` says what is noted where that is not plain.
#[component]
pub fn NoteIt(
    of: Key,
    #[prop(optional, into)] unready: Signal<bool>,
    #[prop(default = Signal::stored(Key::VisitNoteIt))] label: Signal<Key>,
    note: impl Fn() + 'static,
) -> impl IntoView {
    let context = VisitContext::current();
    let words = context.words();
    view! {
        <button type="button" disabled=move || context.clinic.app.busy.get() || unready.get()
            aria-label=move || words.named_text(words.text(of), words.text(label.get())) on:click=move |_| note()>
            {move || words.text(label.get())}</button>
    }
}
