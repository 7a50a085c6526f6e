//! What the exercise lacks, and the button that saves it.

use leptos::prelude::*;
use wire::prescribing::{OwnEdited, SaveOwn};
use words::Key;

use super::writer::Writer;
use crate::clinic::context::Page;

/// The line at the bottom of the page.
#[component]
pub fn Save() -> impl IntoView {
    let writer = Writer::current();
    let context = writer.context;
    let words = writer.words();
    let lines = Memo::new(move |_| writer.exercise.with(|exercise| writer.lacks.with(|lacks| words.lacks(exercise, lacks))));
    let missing = Memo::new(move |_| lines.with(|lines| !lines.is_empty()));
    let list = move || lines.get().into_iter().map(|line| view! { <li>{line}</li> }).collect_view();
    let save = move |_| {
        if missing.get_untracked() {
            return;
        }
        // The newest state is kept first: saving then removes what is kept.
        context.keeper.when_kept(move || {
            let exercise = writer.exercise.get_untracked();
            let name = words.exercise_name(&exercise).trim().to_owned();
            let edited = OwnEdited { exercise, draft: writer.unfinished.get_value().get() };
            context.app.request::<SaveOwn>(edited, move |_| context.show(Page::Own(Some(words.own_saved(&name)))));
        });
    };
    let busy = context.app.busy;
    view! {
        <footer class="issue">
            <div role="status">
                <Show when=move || missing.get() fallback=move || view! { <p class="small">{words.text(Key::WriteReady)}</p> }>
                    <p class="small"><b>{words.text(Key::WriteMissing)}</b></p>
                    <ul class="small missing" tabindex="0" aria-label=words.text(Key::WriteMissing)>{list}</ul>
                </Show>
                <p class="small soft load">{words.text(Key::WriteKept)}</p>
            </div>
            <button type="button" class="main" disabled=move || missing.get() || busy.get() on:click=save>{words.text(Key::WriteSave)}</button>
        </footer>
    }
}
