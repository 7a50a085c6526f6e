//! A line of text that has to be interpreted: times, seconds.

use leptos::prelude::*;
use web_sys::HtmlInputElement;

/// A labelled line. `value` is its content. `commit` gets what was typed only when the field is left or Enter is pressed, because a
/// text that is half typed means something else than the whole. The field then shows how the text was understood. As long as there
/// is a `fault`, it is shown below the field in place of the hint.
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
        // Set directly: if "8" was understood as the 08:00 that was there before, `value` has not changed and would not update the
        // field.
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
