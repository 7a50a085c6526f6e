//! A note.

use exercises::visit::Finding;
use leptos::prelude::*;
use words::Key;

use super::context::VisitContext;
use super::note_it::NoteIt;
use crate::clinic::fields::Area;

/// A field of several lines.
#[component]
pub fn Note() -> impl IntoView {
    let context = VisitContext::current();
    let (words, text) = (context.words(), context.forms.note);
    let unready = Memo::new(move |_| text.with(|text| text.trim().is_empty()));
    let note = move || {
        context.note(Finding::Note(text.get_untracked().trim().to_owned()), move || text.set(String::new()));
    };
    view! {
        <section class="sheet stack-2">
            <h2>{words.text(Key::VisitNoteTitle)}</h2>
            <div class="noting last">
                <Area label=words.text(Key::VisitNoteLabel) value=text put=move |typed| text.set(typed) left=|| {}/>
                <NoteIt of=Key::VisitNoteTitle unready note/>
            </div>
        </section>
    }
}
