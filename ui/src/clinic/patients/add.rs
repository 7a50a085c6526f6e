//! A new patient.

use exercises::plan::MAX_NAME;
use leptos::prelude::*;
use wire::clinic::{self, Add, PatientLine};
use words::Key;

use crate::clinic::fields::Text;
use crate::clinic::room::Room;

/// A code, a name if wanted, and straight on to the first plan. A code that is too long is refused, never cut.
#[component]
pub fn AddPatient(lines: RwSignal<Option<Vec<PatientLine>>>) -> impl IntoView {
    let room = Room::here();
    let house = room.house;
    let (code, name) = (RwSignal::new(String::new()), RwSignal::new(String::new()));
    let add = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let wanted = code.get_untracked().trim().to_owned();
        let named = Some(name.get_untracked()).filter(|name| !name.trim().is_empty());
        house.ask::<Add>(clinic::AddPatient { code: wanted, name: named }, move |all| {
            code.set(String::new());
            name.set(String::new());
            lines.set(Some(all));
        });
    };
    view! {
        <form class="sheet stack" on:submit=add>
            <h2>{house.text(Key::PatientAdd)}</h2>
            <Text label=house.text(Key::PatientCode) value=code put=move |text| code.set(text)
                hint=house.text(Key::PatientCodeHint).to_owned()/>
            <Text label=house.text(Key::PatientName) value=name put=move |text| name.set(text)
                hint=house.text(Key::PatientNameHint).to_owned() most=MAX_NAME/>
            <button type="submit" disabled=move || code.with(|code| code.trim().is_empty()) || house.busy.get()>
                {house.text(Key::PatientAdd)}
            </button>
        </form>
    }
}
