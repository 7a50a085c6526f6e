//! Later starts: the passphrase unlocks the store.

use leptos::prelude::*;
use wire::clinic;
use words::Key;

use crate::clinic::context::ClinicContext;
use crate::clinic::fields::{Passphrase, Tick};
use crate::shared::line::TimeIsSet;
use crate::shared::{AppContext, Fault};

/// The passphrase, and a button.
#[component]
pub fn Unlock() -> impl IntoView {
    let (app, context) = (AppContext::current(), ClinicContext::current());
    let (passphrase, shown) = (RwSignal::new(String::new()), RwSignal::new(false));
    let open = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let asked = clinic::Passphrase { passphrase: passphrase.get_untracked().into() };
        app.request::<clinic::Unlock>(asked, move |state| context.unlocked(state));
    };
    view! {
        <form class="column" on:submit=open>
            <h1>{app.text(Key::ClinicUnlockTitle)}</h1>
            <p>{app.text(Key::ClinicUnlockWhat)}</p>
            <Fault/>
            <Passphrase label=app.text(Key::Passphrase) value=passphrase shown/>
            <Tick label=app.text(Key::PassphraseShow) value=shown put=move |on| shown.set(on)/>
            <button type="submit" class="main" disabled=move || passphrase.with(String::is_empty) || app.busy.get()>
                {app.text(Key::ClinicUnlock)}
            </button>
            <p class="small soft" role="status">{move || app.busy.get().then(|| app.text(Key::ClinicOpening))}</p>
            <TimeIsSet/>
        </form>
    }
}
