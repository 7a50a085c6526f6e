//! A text file that is loaded when somebody wants to read it.

use leptos::prelude::*;
use leptos::task::spawn_local;
use leptos::web_sys::Response;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use wire::Failure;

use crate::shared::AppContext;

/// A title that unfolds the text of `file`, shown unchanged. A title that `is_name` is the same in all languages.
#[component]
pub fn OnDemand(file: &'static str, title: &'static str, #[prop(optional)] is_name: bool) -> impl IntoView {
    let app = AppContext::current();
    let text = RwSignal::new(None::<String>);
    let wanted = RwSignal::new(false);
    let open = move |_| {
        // The text is loaded once; afterwards the section is only folded and unfolded.
        if wanted.get_untracked() {
            return;
        }
        wanted.set(true);
        spawn_local(async move {
            match fetched(file).await {
                Ok(read) => text.set(Some(read)),
                Err(error) => {
                    app.fault.set(Some(Failure::Internal { detail: format!("{file}: {error:?}") }));
                    wanted.set(false);
                }
            }
        });
    };
    view! {
        <details class="on-demand" on:toggle=open>
            <summary translate=is_name.then_some("no")>{title}</summary>
            <pre class="small" translate="no" tabindex="0">{text}</pre>
        </details>
    }
}

async fn fetched(file: &str) -> Result<String, JsValue> {
    let response: Response = JsFuture::from(window().fetch_with_str(file)).await?.dyn_into()?;
    if !response.ok() {
        return Err(response.status().into());
    }
    let text = JsFuture::from(response.text()?).await?;
    Ok(text.as_string().unwrap_or_default())
}
