//! A new patient.

use exercises::plan::MAX_NAME;
use leptos::prelude::*;
use wire::clinic::{self, Add, PatientList};
use words::Key;

use crate::clinic::context::ClinicContext;
use crate::clinic::fields::Text;

/// A code, optionally a name, and a button that leads to the first plan. A code that is too long is refused, never truncated.
#[component]
pub fn AddPatient(list: RwSignal<Option<PatientList>>) -> impl IntoView {
    let context = ClinicContext::current();
    let app = context.app;
    let (code, name) = (RwSignal::new(String::new()), RwSignal::new(String::new()));
    let add = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let wanted = code.get_untracked().trim().to_owned();
        let named = Some(name.get_untracked()).filter(|name| !name.trim().is_empty());
        app.request::<Add>(clinic::AddPatientRequest { code: wanted, name: named }, move |all| {
            code.set(String::new());
            name.set(String::new());
            list.set(Some(all));
        });
    };
    view! {
        <form class="sheet stack" on:submit=add>
            <h2>{app.text(Key::PatientAdd)}</h2>
            <Text label=app.text(Key::PatientCode) value=code put=move |text| code.set(text)
                hint=app.text(Key::PatientCodeHint).to_owned()/>
            <Text label=app.text(Key::PatientName) value=name put=move |text| name.set(text)
                hint=app.text(Key::PatientNameHint).to_owned() most=MAX_NAME/>
            <button type="submit" disabled=move || code.with(|code| code.trim().is_empty()) || app.busy.get()>
                {app.text(Key::PatientAdd)}
            </button>
        </form>
    }
}
