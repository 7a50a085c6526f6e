//! The exercises that the clinic wrote.

use exercises::catalogue::Exercise;
use leptos::prelude::*;
use wire::prescribing::{EditOwn, ExportOwn, OwnLine, OwnName, RemoveOwn, ShowOwn};
use words::Key;

use super::state::OwnPage;
use crate::clinic::context::{ClinicContext, Page};
use crate::shared::figure::Figure;

/// The finished exercises.
#[component]
pub fn Finished() -> impl IntoView {
    let page = expect_context::<OwnPage>();
    let lines = move || page.all.with(|all| all.as_ref().map(|all| all.lines.clone()).unwrap_or_default());
    view! {
        <ul class="list">
            <For each=lines key=|line| format!("{line:?}") children=|line| view! { <One line/> }/>
        </ul>
    }
}

/// One exercise: figure, name, what it is, and buttons to change it, hand it on and remove it.
#[component]
fn One(line: OwnLine) -> impl IntoView {
    let (context, page) = (ClinicContext::current(), expect_context::<OwnPage>());
    let app = context.app;
    let words = app.words();
    let name = StoredValue::new(words.exercise_name(&line.exercise).to_owned());
    let short = words.exercise_in_short(&line.exercise, true);
    let told = words.own_lines(&line).into_iter().map(|said| view! { <small>{said}</small> }).collect_view();
    let drawing = line.exercise.level(first(&line.exercise).as_ref()).figure();
    let own = StoredValue::new(OwnName { name: line.name.clone() });
    let sure = RwSignal::new(false);
    let change = move |_| {
        app.request::<EditOwn>(own.get_value(), move |edited| context.show(Page::Write(Box::new(edited))));
    };
    let export = move |_| {
        app.request::<ExportOwn>(own.get_value(), move |file| page.say_saved(file));
    };
    let remove = move |_| {
        app.request::<RemoveOwn>(own.get_value(), move |removed| {
            let name = name.get_value();
            let words = app.words();
            page.say(Some(if removed.kept { words.own_removed_kept(&name) } else { words.own_removed(&name) }));
            app.query::<ShowOwn>((), move |all| page.all.set(Some(all)));
        });
    };
    let press = move |key: Key| words.named_text(words.text(key), &name.get_value());
    let offered = line.offered.then(|| {
        view! {
            <button type="button" aria-label=press(Key::OwnChange) on:click=change>{words.text(Key::OwnChange)}</button>
            <button type="button" class="quiet" aria-label=press(Key::OwnSaveFile) on:click=export>{words.text(Key::OwnSaveFile)}</button>
            <button type="button" class="quiet" aria-label=press(Key::OwnRemove) on:click=move |_| sure.set(true)>{words.text(Key::OwnRemove)}</button>
        }
    });
    view! {
        <li class="own-line">
            <Figure drawing pose=Signal::stored(1.0)/>
            <span class="told"><b>{name.get_value()}</b><small>{short}</small>{told}</span>
            <span class="presses">{offered}</span>
            <Show when=move || sure.get()>
                <span class="sure stack-2" role="group">
                    <span>{words.own_remove_sure(&name.get_value())}</span>
                    <span class="presses">
                        <button type="button" on:click=move |_| sure.set(false)>{words.text(Key::Cancel)}</button>
                        <button type="button" class="alarm" disabled=app.busy on:click=remove>{words.text(Key::OwnRemove)}</button>
                    </span>
                </span>
            </Show>
        </li>
    }
}

fn first(exercise: &Exercise) -> Option<exercises::catalogue::RungId> {
    exercise.first_rung().map(|rung| rung.id.clone())
}
