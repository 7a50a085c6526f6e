//! The list of patients, with receiving summaries and adding patients beside it.

use leptos::prelude::*;
use std::collections::BTreeMap;
use wire::app::LockState;
use wire::clinic::{PatientLine, PatientList, PhoneRequest, SetPhone, ShowPatients};
use words::Key;

use super::add::AddPatient;
use super::filters::Filters;
use super::line::Line;
use super::receive::Receive;
use crate::clinic::context::{ClinicContext, Page};
use crate::clinic::fields::Text;
use crate::clinic::lock::LockButton;
use crate::pages::PageLinks;
use crate::shared::backup::Backup;
use crate::shared::copied::DataCopied;
use crate::shared::language::LanguageChoice;
use crate::shared::line::TimeIsSet;
use crate::shared::{AppContext, Fault};

/// Number of patients from which on the list has a search field.
const MANY: usize = 7;

/// All patients; those with alarms come first.
#[component]
pub fn Patients() -> impl IntoView {
    let (app, context) = (AppContext::current(), ClinicContext::current());
    let list = RwSignal::new(None::<PatientList>);
    let look = move || app.query::<ShowPatients>((), move |all| list.set(Some(all)));
    look();
    let find = context.find;
    let today = app.state.with_untracked(|state| state.as_ref().map(|state| state.now.date())).unwrap_or_default();
    let lines = Signal::derive(move || list.with(|list| list.as_ref().map(|list| list.lines.clone())).unwrap_or_default());
    let all = Memo::new(move |_| {
        lines.with(|lines| lines.iter().map(|line| (line.code.clone(), line.clone())).collect::<BTreeMap<_, _>>())
    });
    let any_closed = Memo::new(move |_| {
        list.with(|list| list.as_ref().is_some_and(|list| list.lines.iter().any(|line| line.closed.is_some())))
    });
    let many = Memo::new(move |_| list.with(|list| list.as_ref().is_some_and(|list| list.lines.len() >= MANY)));
    let found = move || {
        let wanted = find.get().trim().to_lowercase();
        let filter = context.filter.get();
        let fits = |line: &PatientLine| {
            let named = format!("{} {}", line.code, line.name.as_deref().unwrap_or("")).to_lowercase();
            filter.has(line, today) && named.contains(&wanted)
        };
        lines.get().into_iter().filter(fits).collect::<Vec<_>>()
    };
    // Without a patient because the records are damaged is not the same as none yet.
    let none = move || list.with(|list| list.as_ref().is_some_and(|list| list.lines.is_empty() && list.notices.is_empty()));
    let notices = move || {
        let all = list.with(|list| list.as_ref().map(|list| list.notices.clone())).unwrap_or_default();
        all.iter().map(|notice| view! { <p class="warning">{app.words().store_notice(notice)}</p> }).collect_view()
    };
    view! {
        <main class="screen patients">
            <header class="head">
                <div class="titles"><h1>{app.text(Key::Patients)}</h1><ClinicName/></div>
                <Show when=move || many.get()>
                    <input type="search" aria-label=app.text(Key::PatientsFind) placeholder=app.text(Key::PatientsFind)
                        prop:value=find on:input:target=move |event| find.set(event.target().value())/>
                </Show>
                <LockButton/>
            </header>
            <TimeIsSet/>
            <DataCopied/>
            <Fault/>
            <div role="status">{notices}</div>
            <div class="two">
                <section aria-label=app.text(Key::Patients)>
                    <Show when=move || many.get() || any_closed.get()><Filters lines today/></Show>
                    <Show when=none><p class="empty">{app.text(Key::PatientsNone)}</p></Show>
                    <ul class="list">
                        <For each=found key=|line| line.code.clone() children=move |first| view! { <Line first all/> }/>
                    </ul>
                </section>
                <aside class="stack-8"><Receive received=look/><AddPatient list/><OwnLink/>
                    <LanguageChoice/><KeysLink/><Backup/></aside>
            </div>
            <PageLinks open=move |page| context.show(Page::Info(page))/>
        </main>
    }
}

/// The clinic's name and fingerprint.
#[component]
fn ClinicName() -> impl IntoView {
    let app = AppContext::current();
    let lock = move || app.state.with(|state| state.as_ref().map(|state| state.lock.clone()));
    let line = move || {
        let Some(LockState::Open { clinic, fingerprint, phone, .. }) = lock() else { return None };
        let what = app.text(Key::SecurityCodeWhat);
        Some(view! {
            <PhoneLine phone/>
            <p class="soft">{clinic}" · "<span title=what>{app.text(Key::SecurityCode)}" "<span class="code">{fingerprint}</span></span></p>
        })
    };
    view! { {line} }
}

/// The clinic's telephone number, and a field to change it. Cards that are issued from then on have the new one.
#[component]
fn PhoneLine(phone: Option<String>) -> impl IntoView {
    let app = AppContext::current();
    let editing = RwSignal::new(false);
    let number = RwSignal::new(phone.clone().unwrap_or_default());
    let save = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let phone = number.with_untracked(|number| number.trim().to_owned());
        app.request::<SetPhone>(PhoneRequest { phone }, move |state| app.state.set(Some(state)));
    };
    let open = if phone.is_some() { Key::ClinicPhoneChange } else { Key::ClinicPhoneAdd };
    move || {
        if editing.get() {
            view! {
                <form class="phone-line" on:submit=save>
                    <Text label=app.text(Key::ClinicPhone) value=number put=move |text| number.set(text)
                        hint=app.text(Key::ClinicPhoneHint).to_owned() most=exercises::plan::MAX_PHONE/>
                    <button type="submit" disabled=app.busy>{app.text(Key::ClinicPhoneSave)}</button>
                </form>
            }
            .into_any()
        } else {
            view! {
                <p class="soft phone-line">{phone.clone()}" "
                    <button type="button" class="quiet" on:click=move |_| editing.set(true)>{app.text(open)}</button></p>
            }
            .into_any()
        }
    }
}

/// Leads to the page about the passphrase and the keys.
#[component]
fn KeysLink() -> impl IntoView {
    let context = ClinicContext::current();
    let open = move |_| context.show(Page::Keys);
    view! { <button type="button" class="quiet" on:click=open>{context.app.text(Key::KeysTitle)}</button> }
}

/// Leads to the exercises that the clinic wrote itself, and to its sets.
#[component]
fn OwnLink() -> impl IntoView {
    let context = ClinicContext::current();
    let open = move |_| context.show(Page::Own(None));
    view! { <button type="button" on:click=open>{context.app.text(Key::OwnTitle)}</button> }
}
