//! A number within a sentence; pressing it shows buttons to make it smaller and larger in place.

use leptos::ev::KeyboardEvent;
use leptos::html;
use leptos::prelude::*;

use crate::shared::AppContext;

/// A number that opens when it is pressed, with a button to lower it before it and one to raise it after it; Escape closes it. The
/// arrow keys change it at any time. `label` names the number, `step(true)` raises it and `step(false)` lowers it. Of the numbers
/// that share `open`, only one is open at a time.
#[component]
pub fn PressNumber(
    label: &'static str,
    #[prop(into)] shown: Signal<String>,
    step: impl Fn(bool) + Copy + Send + 'static,
    open: RwSignal<Option<&'static str>>,
) -> impl IntoView {
    let words = AppContext::current().words();
    let (less, more) = (words.step_less(label), words.step_more(label));
    let is_open = Memo::new(move |_| open.get() == Some(label));
    let number = NodeRef::<html::Button>::new();
    let close = move || {
        // The number remains on the page, so it gets the focus.
        if let Some(number) = number.get_untracked() {
            let _ = number.focus();
        }
        open.set(None);
    };
    let keys = move |event: KeyboardEvent| match event.key().as_str() {
        "ArrowUp" => {
            event.prevent_default();
            step(true);
        }
        "ArrowDown" => {
            event.prevent_default();
            step(false);
        }
        "Escape" if is_open.get_untracked() => close(),
        _ => {}
    };
    let side = move |name: String, sign: &'static str, up| {
        view! { <button type="button" class="step" aria-label=name on:click=move |_| step(up)>{sign}</button> }
    };
    view! {
        <span class="press-number" class:open=is_open on:keydown=keys>
            {move || is_open.get().then(|| side(less.clone(), "−", false))}
            <button type="button" class="number" node_ref=number aria-expanded=move || is_open.get().to_string()
                aria-label=move || words.named_text(label, &shown.get())
                on:click=move |_| open.set((!is_open.get_untracked()).then_some(label))>{shown}</button>
            {move || is_open.get().then(|| side(more.clone(), "+", true))}
            <span class="heard" role="status">{move || is_open.get().then(|| shown.get())}</span>
        </span>
    }
}
