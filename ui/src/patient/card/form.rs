//! Choosing a card: a picture, a file, or its text; then its preview.

use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;
use wire::patient::{CardPreview, CardSource, ReadCard};
use words::Key;

use super::camera::CardCamera;
use super::preview::Preview;
use crate::patient::context::PatientContext;
use crate::shared::{file, screen};

/// Reads a card and shows its preview before it is taken. `title` is the heading of the form, `children` is shown below it.
#[component]
pub fn CardForm(title: Key, children: ChildrenFn) -> impl IntoView {
    let context = PatientContext::current();
    let text = move |key| context.app.text(key);
    let typed = RwSignal::new(String::new());
    let read = RwSignal::new(None::<CardPreview>);
    let look = move |source: CardSource| context.app.request::<ReadCard>(source, move |preview| read.set(Some(preview)));
    let from_file = move |event: leptos::ev::Event| {
        let field: HtmlInputElement = event.target().expect("an event of a field").unchecked_into();
        let Some(file) = file::chosen(&field).into_iter().next() else { return };
        // Allows the same file to be chosen again after an error.
        spawn_local(async move {
            match file::base64(&file).await {
                Ok(bytes) => look(CardSource::File(bytes)),
                Err(failure) => context.app.fault.set(Some(failure)),
            }
            field.set_value("");
        });
    };
    let from_text = move |_| look(CardSource::Text(typed.get_untracked().trim().to_owned()));
    let empty = move || typed.with(|typed| typed.trim().is_empty());
    let form = move || {
        view! {
            <p>{text(Key::AddCardWhat)}</p>
            <CardCamera found=move |preview| read.set(Some(preview))/>
            <label class="file">{text(Key::CardFile)}<input type="file" accept="image/*,.txt,.card,text/plain" on:change=from_file/></label>
            <p class="small soft">{text(Key::CardFileWhat)}</p>
            <label>{text(Key::CardText)}<textarea rows="4" spellcheck="false" autocapitalize="off" autocomplete="off" prop:value=typed
                on:input=move |event| typed.set(event_target_value(&event))></textarea></label>
            <button type="button" disabled=move || empty() || context.app.busy.get() on:click=from_text>{text(Key::OpenCard)}</button>
        }
    };
    move || match read.get() {
        None => {
            let children = children.clone();
            screen(move || view! { <h1>{text(title)}</h1><div class="stack">{form()}</div>{children()} })
        }
        Some(preview) => screen(move || view! { <Preview preview back=move || read.set(None)/> }),
    }
}
