//! The clinic's age identity, shown only after the passphrase was entered again.

use leptos::prelude::*;
use wire::clinic;
use words::Key;

use crate::clinic::fields::Passphrase;
use crate::shared::AppContext;

/// What the identity is for, the passphrase to confirm, and the identity until it is hidden.
#[component]
pub fn ShowIdentity() -> impl IntoView {
    let app = AppContext::current();
    let (passphrase, identity) = (RwSignal::new(String::new()), RwSignal::new(None::<String>));
    let show = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let asked = clinic::Passphrase { passphrase: passphrase.get_untracked().into() };
        app.request::<clinic::ShowIdentity>(asked, move |text| {
            passphrase.set(String::new());
            identity.set(Some(text.expose().to_owned()));
        });
    };
    let inside = move || match identity.get() {
        Some(text) => view! {
            <p class="code secret">{text}</p>
            <button type="button" on:click=move |_| identity.set(None)>{app.text(Key::IdentityHide)}</button>
        }
        .into_any(),
        None => view! {
            <Passphrase label=app.text(Key::ConfirmPassphrase) value=passphrase shown=false/>
            <button type="submit" disabled=move || passphrase.with(String::is_empty) || app.busy.get()>
                {app.text(Key::IdentityShow)}
            </button>
        }
        .into_any(),
    };
    view! {
        <form class="sheet stack" on:submit=show>
            <h2>{app.text(Key::IdentityTitle)}</h2>
            <p class="small soft">{app.text(Key::IdentityWhat)}</p>
            <p class="note">{app.text(Key::IdentityWarning)}</p>
            {inside}
        </form>
    }
}
