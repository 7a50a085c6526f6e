//! Renews the clinic's keys.

use leptos::prelude::*;
use wire::app::LockState;
use wire::clinic;
use words::Key;

use crate::clinic::fields::{Passphrase, Tick};
use crate::shared::AppContext;

/// What renewing the keys does and what it does not, the passphrase and a tick to confirm; then the new security code.
#[component]
pub fn RenewKeys() -> impl IntoView {
    let app = AppContext::current();
    let passphrase = RwSignal::new(String::new());
    let (understood, renewed) = (RwSignal::new(false), RwSignal::new(false));
    let ready = move || !passphrase.with(String::is_empty) && understood.get();
    let renew = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        renewed.set(false);
        if ready() {
            let asked = clinic::Passphrase { passphrase: passphrase.get_untracked().into() };
            app.request::<clinic::RenewKeys>(asked, move |state| {
                passphrase.set(String::new());
                understood.set(false);
                app.state.set(Some(state));
                renewed.set(true);
            });
        }
    };
    let code = move || {
        app.state.with(|state| match state.as_ref().map(|state| &state.lock) {
            Some(LockState::Open { fingerprint, .. }) => app.words().renew_keys_code(fingerprint),
            _ => String::new(),
        })
    };
    let done = move || {
        renewed.get().then(|| {
            view! {
                <p><strong>{app.text(Key::RenewKeysDone)}</strong>" "{app.text(Key::RenewKeysSave)}</p>
                <p class="number">{code()}</p>
            }
        })
    };
    view! {
        <form class="sheet stack" on:submit=renew>
            <h2>{app.text(Key::RenewKeysTitle)}</h2>
            <p class="small soft">{app.text(Key::RenewKeysWhat)}</p>
            <p class="note">{app.text(Key::RenewKeysNot)}</p>
            <p class="small soft">{app.text(Key::RenewKeysClinicians)}</p>
            <Passphrase label=app.text(Key::RenewKeysPassphrase) value=passphrase shown=false/>
            <Tick label=app.text(Key::RenewKeysUnderstood) value=understood put=move |on| understood.set(on)/>
            <button type="submit" disabled=move || !ready() || app.busy.get()>{app.text(Key::RenewKeysRenew)}</button>
            <div role="status">{done}</div>
        </form>
    }
}
