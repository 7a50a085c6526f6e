//! Later starts: the passphrase unlocks the store.

use leptos::prelude::*;
use wire::app::{AppState, LockState};
use wire::clinic;
use words::Key;

use crate::clinic::context::ClinicContext;
use crate::clinic::fields::{Passphrase, Text, Tick};
use crate::shared::line::TimeIsSet;
use crate::shared::{AppContext, Fault};

/// The name if there are several clinicians, the passphrase, and a button.
#[component]
pub fn Unlock() -> impl IntoView {
    let (app, context) = (AppContext::current(), ClinicContext::current());
    let (passphrase, shown) = (RwSignal::new(String::new()), RwSignal::new(false));
    let name = RwSignal::new(String::new());
    let locked = |state: &AppState| matches!(state.lock, LockState::Locked { several: true });
    let several = app.state.with_untracked(|state| state.as_ref().is_some_and(locked));
    let open = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let name = Some(name.get_untracked()).filter(|name| !name.trim().is_empty());
        let asked = clinic::UnlockRequest { name, passphrase: passphrase.get_untracked().into() };
        app.request::<clinic::Unlock>(asked, move |state| context.unlocked(state));
    };
    let named = move || !several || name.with(|name| !name.trim().is_empty());
    let ready = move || named() && !passphrase.with(String::is_empty);
    view! {
        <form class="column" on:submit=open>
            <h1>{app.text(Key::ClinicUnlockTitle)}</h1>
            <p>{app.text(Key::ClinicUnlockWhat)}</p>
            <Fault/>
            {several.then(|| view! { <Text label=app.text(Key::ClinicianName) value=name put=move |text| name.set(text)/> })}
            <Passphrase label=app.text(Key::Passphrase) value=passphrase shown/>
            <Tick label=app.text(Key::PassphraseShow) value=shown put=move |on| shown.set(on)/>
            <button type="submit" class="main" disabled=move || !ready() || app.busy.get()>
                {app.text(Key::ClinicUnlock)}
            </button>
            <p class="small soft" role="status">{move || app.busy.get().then(|| app.text(Key::ClinicOpening))}</p>
            <TimeIsSet/>
        </form>
    }
}
