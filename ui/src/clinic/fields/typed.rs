//! A line of text that has to be read: times, seconds.

use leptos::prelude::*;
use web_sys::HtmlInputElement;

/// A labelled line. `value` is what stands in it; `commit` gets what is typed when the field is left or Enter is pressed, and
/// not before: a text that is half typed means something else than the whole. What `value` makes of it is then shown back.
/// While `fault` says something, it stands below in the place of the hint.
#[component]
pub fn Typed(
    label: &'static str,
    #[prop(into)] value: Signal<String>,
    commit: impl Fn(String) + Copy + 'static,
    #[prop(into)] fault: Signal<Option<String>>,
    #[prop(optional, into)] hint: Signal<String>,
    #[prop(optional)] decimal: bool,
) -> impl IntoView {
    let take = move |field: HtmlInputElement| {
        commit(field.value());
        // Set by hand: where "8" was read as the 08:00 that stood there before, `value` has not changed.
        field.set_value(&value.get_untracked());
    };
    let wrong = Memo::new(move |_| fault.with(Option::is_some));
    view! {
        <label class="text">
            <span>{label}</span>
            <input
                type="text"
                autocomplete="off"
                inputmode=decimal.then_some("decimal")
                aria-invalid=move || wrong.get().then_some("true")
                prop:value=value
                on:change:target=move |event| take(event.target())
                on:keydown:target=move |event| {
                    if event.key() == "Enter" {
                        take(event.target());
                    }
                }
            />
            <small class:warning=move || wrong.get()>{move || fault.get().unwrap_or_else(|| hint.get())}</small>
        </label>
    }
}
