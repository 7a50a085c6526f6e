//! First start: the clinic's name and its passphrase.

use leptos::prelude::*;
use wire::clinic::{self, ClinicName};
use words::Key;

use crate::clinic::fields::{Passphrase, Text, Tick};
use crate::shared::line::TimeIsSet;
use crate::shared::{Fault, House};

/// The clinic's name, the passphrase twice, and the plain word that a lost one cannot be recovered. Nothing is kept before the
/// clinic is set up, so the way back leaves nothing behind.
#[component]
pub fn SetUp(back: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let house = House::here();
    let back = move |_| {
        house.fault.set(None);
        back();
    };
    let (name, passphrase, again) =
        (RwSignal::new(String::new()), RwSignal::new(String::new()), RwSignal::new(String::new()));
    let shown = RwSignal::new(false);
    let differs = move || !again.with(String::is_empty) && passphrase.get() != again.get();
    let ready = move || !name.with(|name| name.trim().is_empty()) && !again.with(String::is_empty) && !differs();
    let start = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        if ready() {
            let asked = ClinicName { name: name.get_untracked(), passphrase: passphrase.get_untracked() };
            house.ask::<clinic::Start>(asked, move |situation| house.situation.set(Some(situation)));
        }
    };
    view! {
        <div class="window clinic set-up"><main class="screen door"><form class="column" on:submit=start>
            <h1>{house.text(Key::ClinicDoorStart)}</h1>
            <p>{house.text(Key::ClinicDoorStartWhat)}</p>
            <Fault/>
            <Text label=house.text(Key::ClinicName) value=name put=move |text| name.set(text)
                hint=house.text(Key::ClinicNameHint).to_owned() most=exercises::plan::MAX_NAME/>
            <Passphrase label=house.text(Key::Passphrase) value=passphrase shown hint=house.text(Key::PassphraseHint)/>
            <Passphrase label=house.text(Key::PassphraseAgain) value=again shown/>
            <p class="warning" role="status">{move || differs().then(|| house.text(Key::PassphraseDiffers))}</p>
            <Tick label=house.text(Key::PassphraseShow) value=shown put=move |on| shown.set(on)/>
            <p class="note">{house.text(Key::PassphraseLost)}</p>
            <button type="submit" class="main" disabled=move || !ready() || house.busy.get()>{house.text(Key::ClinicStart)}</button>
            <p class="small soft" role="status">{move || house.busy.get().then(|| house.text(Key::ClinicOpening))}</p>
            <button type="button" class="quiet" disabled=house.busy on:click=back>{house.text(Key::Back)}</button>
            <TimeIsSet/>
        </form></main></div>
    }
}
