//! Another code or name for a patient.

use exercises::plan::MAX_NAME;
use leptos::prelude::*;
use wire::cases::{RenamePatient, RenameRequest};
use words::Key;

use crate::clinic::context::{ClinicContext, Page};
use crate::clinic::fields::Text;

/// Code and name, and what another code means for what was handed over.
#[component]
pub fn Names(code: String, name: Option<String>) -> impl IntoView {
    let context = ClinicContext::current();
    let app = context.app;
    let (new_code, new_name) = (RwSignal::new(code.clone()), RwSignal::new(name.clone().unwrap_or_default()));
    let were = StoredValue::new((code, name.unwrap_or_default()));
    let same = move || were.with_value(|(code, name)| new_code.get().trim() == code && new_name.get().trim() == name);
    let save = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let name = Some(new_name.get_untracked()).filter(|name| !name.trim().is_empty());
        let asked =
            RenameRequest { code: were.with_value(|(code, _)| code.clone()), new_code: new_code.get_untracked(), name };
        app.request::<RenamePatient>(asked, move |page| context.show(Page::Case(Box::new(page))));
    };
    view! {
        <form class="sheet stack" on:submit=save>
            <h2>{app.text(Key::CaseNameTitle)}</h2>
            <Text label=app.text(Key::PatientCode) value=new_code put=move |text| new_code.set(text)
                hint=app.text(Key::PatientCodeHint).to_owned()/>
            <Text label=app.text(Key::PatientName) value=new_name put=move |text| new_name.set(text)
                hint=app.text(Key::PatientNameHint).to_owned() most=MAX_NAME/>
            <p class="small soft">{app.text(Key::CaseNameWhat)}</p>
            <button type="submit" disabled=move || same() || app.busy.get()>{app.text(Key::CaseNameSave)}</button>
        </form>
    }
}
