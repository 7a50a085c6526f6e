//! The clinic's sets.

use leptos::prelude::*;
use wire::prescribing::{ExportSet, RemoveSet, SetLine, SetName, ShowSets};
use words::Key;

use super::state::OwnPage;
use crate::shared::AppContext;

/// The sets, with buttons to hand one on and to remove it.
#[component]
pub fn SetList() -> impl IntoView {
    let app = AppContext::current();
    let sets = RwSignal::new(None::<Vec<SetLine>>);
    app.query::<ShowSets>((), move |all| sets.set(Some(all)));
    let none = Memo::new(move |_| sets.with(|sets| sets.as_ref().is_some_and(Vec::is_empty)));
    let lines = move || sets.get().unwrap_or_default();
    view! {
        <section class="stack">
            <h2>{app.text(Key::Sets)}</h2>
            <p class="small soft">{app.text(Key::SetsWhat)}</p>
            <Show when=move || none.get()><p class="empty">{app.text(Key::SetsNone)}</p></Show>
            <ul class="list"><For each=lines key=|line| format!("{line:?}") children=move |line| view! { <One line sets/> }/></ul>
        </section>
    }
}

/// One set: its name, how many exercises it has, and its buttons.
#[component]
fn One(line: SetLine, sets: RwSignal<Option<Vec<SetLine>>>) -> impl IntoView {
    let (app, page) = (AppContext::current(), expect_context::<OwnPage>());
    let words = app.words();
    let name = StoredValue::new(line.name);
    let set = move || SetName { name: name.get_value() };
    let sure = RwSignal::new(false);
    let export = move |_| {
        app.request::<ExportSet>(set(), move |file| page.say_saved(file));
    };
    let remove = move |_| app.request::<RemoveSet>(set(), move |all| sets.set(Some(all)));
    let press = move |key: Key| words.named_text(words.text(key), &name.get_value());
    view! {
        <li class="own-line">
            <span class="told"><b>{name.get_value()}</b><small>{words.sets_exercises(line.prescription.items.len())}</small></span>
            <span class="presses">
                <button type="button" class="quiet" aria-label=press(Key::OwnSaveFile) on:click=export>{words.text(Key::OwnSaveFile)}</button>
                <button type="button" class="quiet" aria-label=press(Key::OwnRemove) on:click=move |_| sure.set(true)>{words.text(Key::OwnRemove)}</button>
            </span>
            <Show when=move || sure.get()>
                <span class="sure stack-2" role="group">
                    <span>{words.set_remove_sure(&name.get_value())}</span>
                    <span class="presses">
                        <button type="button" on:click=move |_| sure.set(false)>{words.text(Key::Cancel)}</button>
                        <button type="button" class="alarm" disabled=app.busy on:click=remove>{words.text(Key::OwnRemove)}</button>
                    </span>
                </span>
            </Show>
        </li>
    }
}
