//! The card as text, to be sent in a way that the patient already uses.

use leptos::html::Textarea;
use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen_futures::JsFuture;
use words::Key;

use crate::shared::AppContext;

/// The text, and a button that copies it; if copying is refused, the text is selected instead.
#[component]
pub fn CardText(text: String) -> impl IntoView {
    let app = AppContext::current();
    let field = NodeRef::<Textarea>::new();
    let copied = RwSignal::new(false);
    on_cleanup(move || {
        if copied.try_get_untracked().unwrap_or(false) {
            // A web view may refuse it; the text then stays in the clipboard, as after any other copying.
            let cleared = window().navigator().clipboard().write_text("");
            spawn_local(async move { drop(JsFuture::from(cleared).await) });
        }
    });
    let stored = StoredValue::new(text.clone());
    let copy = move |_| {
        if let Some(field) = field.get() {
            field.select();
        }
        let written = window().navigator().clipboard().write_text(&stored.get_value());
        spawn_local(async move {
            let _ = copied.try_set(JsFuture::from(written).await.is_ok());
        });
    };
    view! {
        <div class="stack">
            <label class="text"><span>{app.text(Key::IssuedText)}</span><textarea readonly rows="4" class="code" node_ref=field prop:value=text></textarea></label>
            <div class="row-start">
                <button type="button" on:click=copy>{app.text(Key::IssuedCopy)}</button>
                <p class="small soft" role="status">{move || copied.get().then(|| app.text(Key::CardCopiedReadable))}</p>
            </div>
        </div>
    }
}
