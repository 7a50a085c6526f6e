//! The first start: the clinic's name, its telephone number and its passphrase.

use leptos::prelude::*;
use wire::clinic::{self, StartClinicRequest};
use words::Key;

use super::saved_keys::{SavedKeys, SavedKeysField};
use crate::clinic::fields::{Passphrase, Strength, Text, Tick};
use crate::shared::line::TimeIsSet;
use crate::shared::{AppContext, Fault};

/// What a clinician has to know before the program is used.
const READ_FIRST: [Key; 2] = [Key::WelcomeClinic, Key::WelcomeClinicReading];

/// Asks for the clinic's name, its number if it has one, and twice for the passphrase, and says plainly that a lost passphrase cannot be
/// recovered. Nothing is stored before the clinic is set up, so the way back leaves nothing behind.
#[component]
pub fn SetUp(back: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let app = AppContext::current();
    let back = move |_| {
        app.fault.set(None);
        back();
    };
    let [name, phone, passphrase, again] = [(); 4].map(|()| RwSignal::new(String::new()));
    let shown = RwSignal::new(false);
    let differs = move || !again.with(String::is_empty) && passphrase.get() != again.get();
    let saved = RwSignal::new(None::<SavedKeys>);
    let typed = move || match saved.with(Option::is_some) {
        true => !passphrase.with(String::is_empty),
        false => !again.with(String::is_empty) && !differs(),
    };
    let ready = move || !name.with(|name| name.trim().is_empty()) && typed();
    let start = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        if ready() {
            let phone = phone.with_untracked(|phone| phone.trim().to_owned());
            let asked = StartClinicRequest {
                name: name.get_untracked(),
                phone: (!phone.is_empty()).then_some(phone),
                passphrase: passphrase.get_untracked().into(),
                saved_keys: saved.with_untracked(|saved| saved.as_ref().map(|saved| saved.bytes.as_str().into())),
            };
            app.request::<clinic::Start>(asked, move |state| app.state.set(Some(state)));
        }
    };
    view! {
        <div class="window clinic set-up"><main class="screen door"><form class="column" on:submit=start>
            <h1>{app.text(Key::ClinicSetupTitle)}</h1>
            <p>{app.text(Key::ClinicSetupWhat)}</p>
            <ul class="lines small">{READ_FIRST.map(|fact| view! { <li>{app.text(fact)}</li> })}</ul>
            <Fault/>
            <Text label=app.text(Key::ClinicName) value=name put=move |text| name.set(text)
                hint=app.text(Key::ClinicNameHint).to_owned() most=exercises::plan::MAX_NAME/>
            <Text label=app.text(Key::ClinicPhone) value=phone put=move |text| phone.set(text)
                hint=app.text(Key::ClinicPhoneHint).to_owned() most=exercises::plan::MAX_PHONE/>
            <SavedKeysField saved/>
            <Passphrase label=app.text(Key::Passphrase) value=passphrase shown hint=app.text(Key::PassphraseHint)/>
            <Show when=move || saved.with(Option::is_none)>
                <Strength passphrase clinic=name/>
                <Passphrase label=app.text(Key::PassphraseAgain) value=again shown/>
                <p class="warning" role="status">{move || differs().then(|| app.text(Key::PassphraseDiffers))}</p>
            </Show>
            <Tick label=app.text(Key::PassphraseShow) value=shown put=move |on| shown.set(on)/>
            <p class="note">{app.text(Key::PassphraseLost)}</p>
            <button type="submit" class="main" disabled=move || !ready() || app.busy.get()>{app.text(Key::ClinicStart)}</button>
            <p class="small soft" role="status">{move || app.busy.get().then(|| app.text(Key::ClinicOpening))}</p>
            <button type="button" class="quiet" disabled=app.busy on:click=back>{app.text(Key::Back)}</button>
            <TimeIsSet/>
        </form></main></div>
    }
}
