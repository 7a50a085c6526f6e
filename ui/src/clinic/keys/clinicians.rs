//! Who may unlock the store.

use exercises::plan::MAX_NAME;
use leptos::prelude::*;
use wire::clinic::{
    AddClinician, AddClinicianRequest, ClinicianLine, RemoveClinician, RemoveClinicianRequest, ShowClinicians,
};
use words::Key;

use crate::clinic::fields::{Fold, Passphrase, Strength, Text};
use crate::shared::AppContext;

/// The clinicians, a form to add one, and one to remove one.
#[component]
pub fn Clinicians() -> impl IntoView {
    let app = AppContext::current();
    let list = RwSignal::new(Vec::<ClinicianLine>::new());
    let said = RwSignal::new(String::new());
    app.query::<ShowClinicians>((), move |all| list.set(all));
    let several = Memo::new(move |_| list.with(|list| list.len() > 1));
    let lines = move || {
        let you = move |is_you: bool| is_you.then(|| view! { " "<span class="soft">{app.text(Key::ClinicianYou)}</span> });
        let line = move |one: ClinicianLine| view! { <li>{one.name}{you(one.is_you)}</li> };
        list.get().into_iter().map(line).collect_view()
    };
    view! {
        <section class="sheet stack clinicians" aria-label=app.text(Key::Clinicians)>
            <h2>{app.text(Key::Clinicians)}</h2>
            <p class="small soft">{app.text(Key::CliniciansWhat)}</p>
            <Show when=move || several.get()><ul>{move || lines()}</ul></Show>
            <p role="status">{said}</p>
            <Fold title=app.text(Key::ClinicianAdd) inside=Signal::derive(String::new)><AddOne list said/></Fold>
            <Show when=move || several.get()>
                <Fold title=app.text(Key::ClinicianRemove) inside=Signal::derive(String::new)><RemoveOne list said/></Fold>
            </Show>
        </section>
    }
}

#[component]
fn AddOne(list: RwSignal<Vec<ClinicianLine>>, said: RwSignal<String>) -> impl IntoView {
    let app = AppContext::current();
    let [name, own_name, first, confirmed] = [(); 4].map(|()| RwSignal::new(String::new()));
    let shown = RwSignal::new(false);
    let has_no_name = move || list.with(|list| list.iter().any(|one| one.is_you && one.name.is_empty()));
    let filled = move |field: RwSignal<String>| field.with(|text| !text.trim().is_empty());
    let ready = move || [name, first, confirmed].into_iter().all(filled) && (!has_no_name() || filled(own_name));
    let add = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let asked = AddClinicianRequest {
            name: name.get_untracked(),
            own_name: Some(own_name.get_untracked()).filter(|own| !own.trim().is_empty()),
            first: first.get_untracked().into(),
            confirmed: confirmed.get_untracked().into(),
        };
        app.request::<AddClinician>(asked, move |all| {
            said.set(app.words().clinician_added(name.get_untracked().trim()));
            [name, own_name, first, confirmed].into_iter().for_each(|field| field.set(String::new()));
            list.set(all);
        });
    };
    view! {
        <form class="stack" on:submit=add>
            <Text label=app.text(Key::ClinicianName) value=name put=move |text| name.set(text) most=MAX_NAME/>
            <Show when=has_no_name>
                <Text label=app.text(Key::ClinicianOwnName) value=own_name put=move |text| own_name.set(text) most=MAX_NAME/>
            </Show>
            <Passphrase label=app.text(Key::ClinicianFirstPassphrase) value=first shown hint=app.text(Key::ClinicianFirstPassphraseHint)/>
            <Strength passphrase=first/>
            <Passphrase label=app.text(Key::ClinicianConfirm) value=confirmed shown/>
            <button type="submit" disabled=move || !ready() || app.busy.get()>{app.text(Key::ClinicianAddNow)}</button>
        </form>
    }
}

#[component]
fn RemoveOne(list: RwSignal<Vec<ClinicianLine>>, said: RwSignal<String>) -> impl IntoView {
    let app = AppContext::current();
    let (confirmed, shown) = (RwSignal::new(String::new()), RwSignal::new(false));
    let remove = move |name: String| {
        let asked = RemoveClinicianRequest { name: name.clone(), confirmed: confirmed.get_untracked().into() };
        app.request::<RemoveClinician>(asked, move |all| {
            said.set(app.words().clinician_removed(&name));
            confirmed.set(String::new());
            list.set(all);
        });
    };
    let buttons = move || {
        let others = list.get().into_iter().filter(|one| !one.is_you);
        let button = move |one: ClinicianLine| {
            let label = app.words().clinician_remove_of(&one.name);
            let disabled = move || confirmed.with(String::is_empty) || app.busy.get();
            view! { <button type="button" class="alarm" disabled=disabled on:click=move |_| remove(one.name.clone())>{label}</button> }
        };
        others.map(button).collect_view()
    };
    view! {
        <div class="stack">
            <p class="note">{app.text(Key::ClinicianRemoveWhat)}</p>
            <Passphrase label=app.text(Key::ClinicianConfirmRemoval) value=confirmed shown/>
            <div class="options">{buttons}</div>
        </div>
    }
}
