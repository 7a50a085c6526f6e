//! The exercises of which a copy can be the start of a new one.

use exercises::authoring::copy_of;
use exercises::catalogue::Exercise;
use exercises::find::Index;
use leptos::prelude::*;
use wire::app::ShowCatalogue;
use wire::prescribing::OwnEdited;
use words::Key;
use words::finding::first_level;

use super::state::OwnPage;
use crate::clinic::context::{ClinicContext, Page};
use crate::shared::figure::Figure;

/// Number of exercises that are drawn.
const DRAWN: usize = 12;

/// A field to look for an exercise, and those that were found; a press begins a copy of one.
#[component]
pub fn Copies() -> impl IntoView {
    let (context, page) = (ClinicContext::current(), expect_context::<OwnPage>());
    let app = context.app;
    let words = app.words();
    let all = RwSignal::new(Vec::<Exercise>::new());
    app.query::<ShowCatalogue>((), move |shipped| {
        let own = page.all.with_untracked(|own| own.as_ref().map(|own| own.lines.clone()).unwrap_or_default());
        all.set(own.into_iter().map(|line| line.exercise).chain(shipped).collect());
    });
    let typed = RwSignal::new(String::new());
    let index = Memo::new(move |_| {
        all.with(|all| StoredValue::new(Index::new(all, words.lang(), |one| words.finding_labels(one), &[])))
    });
    let found = move || {
        let places = typed.with(|typed| index.get().with_value(|index| index.find(typed, |_| true)));
        all.with(|all| places.iter().filter_map(|place| all.get(*place).cloned()).take(DRAWN).collect::<Vec<_>>())
    };
    let entry = move |exercise: Exercise| {
        let name = words.exercise_name(&exercise).to_owned();
        let (label, line) = (words.own_copy_this(&name), words.exercise_in_short(&exercise, true));
        let drawing = first_level(&exercise).figure();
        let begin = move |_| {
            let edited = OwnEdited { exercise: copy_of(&exercise), draft: None };
            context.show(Page::Write(Box::new(edited)));
        };
        view! {
            <button type="button" class="entry" aria-label=label on:click=begin>
                <Figure drawing pose=Signal::stored(1.0)/>
                <span><b>{name}</b><small>{line}</small></span>
            </button>
        }
    };
    view! {
        <section class="sheet stack copies" aria-label=words.text(Key::OwnCopyOf)>
            <input type="search" aria-label=words.text(Key::OwnCopyFind) placeholder=words.text(Key::OwnCopyFind)
                autocomplete="off" spellcheck="false" prop:value=typed on:input:target=move |event| typed.set(event.target().value())/>
            <div class="entries"><For each=found key=|exercise| exercise.id.to_string() children=entry/></div>
        </section>
    }
}
