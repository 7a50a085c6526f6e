//! The confirmation before everything is erased.

use leptos::{html, prelude::*};
use wire::device::{EraseEverything, EraseRequest};
use words::Key;

use crate::patient::context::PatientContext;
use crate::shared::restart;

/// Keeping the data comes first and has the focus; erasing needs another press.
#[component]
pub fn Sure(keep: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let first = NodeRef::<html::Button>::new();
    let all = NodeRef::<html::Div>::new();
    Effect::new(move || {
        if let Some(button) = first.get() {
            // If the page was left meanwhile, it cannot take the focus.
            let _ = button.focus();
        }
        // Both answers must be visible, even in a low window.
        if let Some(all) = all.get() {
            all.scroll_into_view_with_bool(false);
        }
    });
    let erase = move |_| context.app.request::<EraseEverything>(EraseRequest { everything: true }, |_| restart::begin());
    view! {
        <div class="sure stack" node_ref=all role="group" aria-labelledby="erase-ask">
            <p id="erase-ask"><strong>{words.text(Key::EraseAsk)}</strong></p>
            <button type="button" node_ref=first data-back="" on:click=move |_| keep()>{words.text(Key::EraseKeep)}</button>
            <button type="button" class="alarm" disabled=context.app.busy on:click=erase>{words.text(Key::EraseSure)}</button>
        </div>
    }
}
