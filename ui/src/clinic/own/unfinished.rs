//! Exercises that are unfinished.

use leptos::prelude::*;
use wire::prescribing::{DiscardOwnDraft, DraftNumber, OwnDraft, OwnEdited};
use words::Key;

use super::state::OwnPage;
use crate::clinic::context::{ClinicContext, Page};

/// What is unfinished, with buttons to go on writing and to delete it.
#[component]
pub fn Unfinished() -> impl IntoView {
    let (context, page) = (ClinicContext::current(), expect_context::<OwnPage>());
    let app = context.app;
    let drafts = move || page.all.with(|all| all.as_ref().map(|all| all.drafts.clone()).unwrap_or_default());
    let any = Memo::new(move |_| !drafts().is_empty());
    let line = move |OwnDraft { draft, exercise }: OwnDraft| {
        let name = exercise.as_ref().map(|exercise| app.words().exercise_name(exercise).trim().to_owned());
        let name = match name {
            Some(name) if name.is_empty() => app.text(Key::OwnNoName).to_owned(),
            Some(name) => name,
            None => app.text(Key::OwnUnreadable).to_owned(),
        };
        let discard = move |_| {
            app.request::<DiscardOwnDraft>(DraftNumber { draft }, move |all| page.all.set(Some(all)));
        };
        let discard_label = app.words().named_text(app.text(Key::OwnDiscard), &name);
        let go_on_label = app.words().named_text(app.text(Key::OwnGoOn), &name);
        let go_on = exercise.map(|exercise| {
            let go_on = move |_| {
                let edited = OwnEdited { exercise: exercise.clone(), draft: Some(draft) };
                context.show(Page::Write(Box::new(edited)));
            };
            view! { <button type="button" aria-label=go_on_label on:click=go_on>{app.text(Key::OwnGoOn)}</button> }
        });
        view! {
            <li class="own-line">
                <b>{name}</b>
                <span class="presses">{go_on}
                    <button type="button" class="quiet" aria-label=discard_label on:click=discard>{app.text(Key::OwnDiscard)}</button></span>
            </li>
        }
    };
    view! {
        <Show when=move || any.get()>
            <h3>{app.text(Key::OwnUnfinished)}</h3>
            <ul class="list"><For each=drafts key=|draft| format!("{draft:?}") children=line/></ul>
        </Show>
    }
}
