//! A text of several lines.

use leptos::html;
use leptos::prelude::*;

/// A labelled field of several lines, as high as its text, with a hint below it, or, as long as there is one, a `fault` in its place.
/// `put` is called with what is typed, `left` when the field is left.
#[component]
pub fn Area(
    label: &'static str,
    #[prop(into)] value: Signal<String>,
    put: impl Fn(String) + 'static,
    left: impl Fn() + 'static,
    #[prop(optional, into)] fault: Signal<Option<String>>,
    #[prop(optional, into)] hint: String,
    #[prop(default = 2)] rows: u8,
) -> impl IntoView {
    let wrong = Memo::new(move |_| fault.with(Option::is_some));
    let value = Memo::new(move |_| value.get());
    let field = NodeRef::<html::Textarea>::new();
    Effect::new(move || {
        value.track();
        if let Some(field) = field.get() {
            grow(&field);
        }
    });
    view! {
        <label class="text">
            <span>{label}</span>
            <textarea
                node_ref=field
                rows=rows.to_string()
                autocomplete="off"
                aria-invalid=move || wrong.get().then_some("true")
                prop:value=value
                on:input:target=move |event| put(event.target().value())
                on:blur=move |_| left()
            ></textarea>
            <small class:warning=move || wrong.get()>{move || fault.get().unwrap_or_else(|| hint.clone())}</small>
        </label>
    }
}

/// Makes a field as high as its text; one that is not shown stays as high as its rows.
fn grow(field: &web_sys::HtmlTextAreaElement) {
    let style = web_sys::HtmlElement::style(field);
    // Neither can fail: both are known properties with valid values.
    let _ = style.set_property("height", "auto");
    let (inside, border) = (field.scroll_height(), field.offset_height() - field.client_height());
    if inside > 0 {
        let _ = style.set_property("height", &format!("{}px", inside + border));
    }
}
