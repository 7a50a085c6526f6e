//! The page with the clinic's own exercises and its sets.

use exercises::authoring::blank;
use leptos::prelude::*;
use wire::prescribing::{OwnEdited, ShowOwn};
use words::Key;

use super::copies::Copies;
use super::finished::Finished;
use super::import::Import;
use super::set_list::SetList;
use super::state::OwnPage;
use super::unfinished::Unfinished;
use crate::clinic::context::{ClinicContext, Page};
use crate::clinic::head::Head;
use crate::shared::saved::SavedFiles;

/// The exercises that the clinic wrote, what is unfinished, and the sets. `said` is what was done just before.
#[component]
pub fn Own(said: Option<String>) -> impl IntoView {
    let context = ClinicContext::current();
    let app = context.app;
    let page = OwnPage { all: RwSignal::new(None), said: RwSignal::new(said), saved: RwSignal::new(Vec::new()) };
    provide_context(page);
    app.query::<ShowOwn>((), move |all| page.all.set(Some(all)));
    let copying = RwSignal::new(false);
    let begin = move |_| {
        let exercise = blank(app.words().lang());
        context.show(Page::Write(Box::new(OwnEdited { exercise, draft: None })));
    };
    let none = Memo::new(move |_| page.all.with(|all| all.as_ref().is_some_and(|all| all.lines.is_empty())));
    view! {
        <main class="screen own">
            <Head title=app.text(Key::OwnTitle).to_owned()>""</Head>
            <p class="done-line" role="status">{page.said}</p>
            <SavedFiles files=page.saved/>
            <div class="two">
                <section class="stack">
                    <h2>{app.text(Key::OwnExercises)}</h2>
                    <p class="small soft">{app.text(Key::OwnWhat)}</p>
                    <div class="presses">
                        <button type="button" aria-expanded=move || copying.get().to_string()
                            on:click=move |_| copying.update(|on| *on = !*on)>{app.text(Key::OwnNewCopy)}</button>
                        <button type="button" on:click=begin>{app.text(Key::OwnNewBlank)}</button>
                        <Import/>
                    </div>
                    <Show when=move || copying.get()><Copies/></Show>
                    <Unfinished/>
                    <Show when=move || none.get()><p class="empty">{app.text(Key::OwnNone)}</p></Show>
                    <Finished/>
                </section>
                <SetList/>
            </div>
        </main>
    }
}
