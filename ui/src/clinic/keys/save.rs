//! Saves the clinic's keys outside the data folder.

use leptos::prelude::*;
use wire::clinic::{ExportKeys, ExportKeysRequest};
use words::Key;

use crate::clinic::fields::{Passphrase, Strength, Tick};
use crate::shared::AppContext;
use crate::shared::saved::SavedFiles;

/// The clinic's passphrase to confirm, and twice the passphrase for the saved keys; then what was saved.
#[component]
pub fn SaveKeys() -> impl IntoView {
    let app = AppContext::current();
    let [own, new, again] = [(); 3].map(|()| RwSignal::new(String::new()));
    let (shown, files) = (RwSignal::new(false), RwSignal::new(Vec::new()));
    let differs = move || !again.with(String::is_empty) && new.get() != again.get();
    let ready = move || !own.with(String::is_empty) && !again.with(String::is_empty) && !differs();
    let save = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        files.set(Vec::new());
        if ready() {
            let asked = ExportKeysRequest { passphrase: own.get_untracked().into(), new: new.get_untracked().into() };
            app.request::<ExportKeys>(asked, move |saved| {
                [own, new, again].into_iter().for_each(|field| field.set(String::new()));
                files.set(saved);
            });
        }
    };
    let saved = move || {
        (!files.with(Vec::is_empty)).then(|| {
            view! { <p><strong>{app.text(Key::SavedKeysSaved)}</strong>" "{app.text(Key::SavedKeysKeep)}</p> }
        })
    };
    view! {
        <form class="sheet stack" on:submit=save>
            <h2>{app.text(Key::SavedKeysTitle)}</h2>
            <p class="small soft">{app.text(Key::SavedKeysWhat)}</p>
            <Passphrase label=app.text(Key::SavedKeysPassphrase) value=new shown hint=app.text(Key::SavedKeysPassphraseHint)/>
            <Strength passphrase=new/>
            <Passphrase label=app.text(Key::PassphraseAgain) value=again shown/>
            <p class="warning" role="status">{move || differs().then(|| app.text(Key::PassphraseDiffers))}</p>
            <Passphrase label=app.text(Key::ConfirmPassphrase) value=own shown/>
            <Tick label=app.text(Key::PassphraseShow) value=shown put=move |on| shown.set(on)/>
            <button type="submit" disabled=move || !ready() || app.busy.get()>{app.text(Key::SavedKeysSave)}</button>
            <div role="status">{saved}</div>
            <SavedFiles files/>
        </form>
    }
}
