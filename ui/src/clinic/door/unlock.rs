//! Later starts: the passphrase opens the store.

use leptos::prelude::*;
use wire::clinic;
use words::Key;

use crate::clinic::fields::{Passphrase, Tick};
use crate::shared::line::TimeIsSet;
use crate::shared::{Fault, House};

/// The passphrase, and a button.
#[component]
pub fn Unlock() -> impl IntoView {
    let house = House::here();
    let (passphrase, shown) = (RwSignal::new(String::new()), RwSignal::new(false));
    let open = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let asked = clinic::Passphrase { passphrase: passphrase.get_untracked() };
        house.ask::<clinic::Unlock>(asked, move |situation| house.situation.set(Some(situation)));
    };
    view! {
        <form class="column" on:submit=open>
            <h1>{house.text(Key::ClinicDoorOpen)}</h1>
            <p>{house.text(Key::ClinicDoorOpenWhat)}</p>
            <Fault/>
            <Passphrase label=house.text(Key::Passphrase) value=passphrase shown/>
            <Tick label=house.text(Key::PassphraseShow) value=shown put=move |on| shown.set(on)/>
            <button type="submit" class="main" disabled=move || passphrase.with(String::is_empty) || house.busy.get()>
                {house.text(Key::ClinicOpen)}
            </button>
            <p class="small soft" role="status">{move || house.busy.get().then(|| house.text(Key::ClinicOpening))}</p>
            <TimeIsSet/>
        </form>
    }
}
