//! Another passphrase.

use leptos::prelude::*;
use wire::clinic::{ChangePassphrase as Change, ChangePassphraseRequest};
use words::Key;

use crate::clinic::fields::{Passphrase, Strength, Tick};
use crate::shared::AppContext;

/// The present passphrase, and twice the new one.
#[component]
pub fn ChangePassphrase() -> impl IntoView {
    let app = AppContext::current();
    let [old, new, again] = [(); 3].map(|()| RwSignal::new(String::new()));
    let (shown, changed) = (RwSignal::new(false), RwSignal::new(false));
    let differs = move || !again.with(String::is_empty) && new.get() != again.get();
    let ready = move || !old.with(String::is_empty) && !again.with(String::is_empty) && !differs();
    let change = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        changed.set(false);
        if ready() {
            let asked = ChangePassphraseRequest { old: old.get_untracked().into(), new: new.get_untracked().into() };
            app.request::<Change>(asked, move |()| {
                [old, new, again].into_iter().for_each(|field| field.set(String::new()));
                changed.set(true);
            });
        }
    };
    let done = move || changed.get().then(|| app.text(Key::PassphraseChanged));
    view! {
        <form class="sheet stack" on:submit=change>
            <h2>{app.text(Key::PassphraseChange)}</h2>
            <Passphrase label=app.text(Key::PassphraseOld) value=old shown/>
            <Passphrase label=app.text(Key::PassphraseNew) value=new shown hint=app.text(Key::PassphraseHint)/>
            <Strength passphrase=new/>
            <Passphrase label=app.text(Key::PassphraseAgain) value=again shown/>
            <p class="warning" role="status">{move || differs().then(|| app.text(Key::PassphraseDiffers))}</p>
            <Tick label=app.text(Key::PassphraseShow) value=shown put=move |on| shown.set(on)/>
            <p class="small soft">{app.text(Key::PassphraseOlderCopies)}</p>
            <button type="submit" disabled=move || !ready() || app.busy.get()>{app.text(Key::PassphraseChange)}</button>
            <p role="status">{done}</p>
        </form>
    }
}
