//! Handing the review over to a server of records on this computer.

use leptos::prelude::*;
use wire::Secret;
use wire::clinic::PatientCode;
use wire::handing_over::{HandedOver, ServerSetting, SetServerRequest};
use wire::visiting::{HandOver as Send, RemoveServer, SetServer, ShowServer};
use words::{Key, Words};

use super::context::ReviewContext;
use crate::clinic::fields::{Passphrase, Text};
use crate::shared::AppContext;

/// What became of handing over.
#[derive(Clone, PartialEq)]
enum Course {
    NotYet,
    UnderWay,
    Done(HandedOver),
}

/// The server, or fields to set one; with one, a button that hands the review over, and what became of it.
#[component]
pub fn HandOver(code: String) -> impl IntoView {
    let (app, words) = (AppContext::current(), ReviewContext::current().words);
    let server = RwSignal::new(None::<ServerSetting>);
    app.query::<ShowServer>((), move |set| {
        server.try_set(Some(set));
    });
    let code = StoredValue::new(code);
    view! {
        <h3>{words.text(Key::HandOverTitle)}</h3>
        <p class="small soft">{words.text(Key::HandOverWhat)}</p>
        {move || {
            let set = server.get()?;
            Some(match set.address.clone() {
                None => view! { <SetIt words server/> }.into_any(),
                Some(_) => view! { <HandIt words code=code.get_value() set server/> }.into_any(),
            })
        }}
    }
}

/// Address and token.
#[component]
fn SetIt(words: Words, server: RwSignal<Option<ServerSetting>>) -> impl IntoView {
    let app = AppContext::current();
    let (address, token) = (RwSignal::new(String::new()), RwSignal::new(String::new()));
    let set = move |_| {
        let token = Some(token.get_untracked()).filter(|token| !token.is_empty()).map(Secret::from);
        let request = SetServerRequest { address: address.get_untracked(), token };
        app.request::<SetServer>(request, move |set| server.set(Some(set)));
    };
    view! {
        <Text
            label=words.text(Key::HandOverAddress)
            value=address
            put=move |typed| address.set(typed)
            hint=words.text(Key::HandOverAddressHint).to_owned()
        />
        <Passphrase label=words.text(Key::HandOverToken) value=token shown=false hint=words.text(Key::HandOverTokenHint)/>
        <button type="button" disabled=app.busy on:click=set>{words.text(Key::HandOverSet)}</button>
    }
}

/// The server that is set, and the button.
#[component]
fn HandIt(words: Words, code: String, set: ServerSetting, server: RwSignal<Option<ServerSetting>>) -> impl IntoView {
    let app = AppContext::current();
    let course = RwSignal::new(Course::NotYet);
    let under_way = Signal::derive(move || course.get() == Course::UnderWay);
    let send = move |_| {
        course.set(Course::UnderWay);
        // In the background: a server may take its time, and the window goes on.
        app.query_or_none::<Send>(PatientCode { code: code.clone() }, move |done| {
            course.try_set(done.map_or(Course::NotYet, Course::Done));
        });
    };
    let said = move || match course.get() {
        Course::NotYet => None,
        Course::UnderWay => Some(words.text(Key::HandOverUnderWay).to_owned()),
        Course::Done(done) => Some(words.record_handed_over(&done.code, done.added, done.known)),
    };
    let remove = move |_| app.request::<RemoveServer>((), move |set| server.set(Some(set)));
    view! {
        <p class="small">{words.server_said(&set)}</p>
        <div class="options">
            <button type="button" disabled=move || app.busy.get() || under_way.get() on:click=send>{words.text(Key::HandOverDo)}</button>
            <button type="button" class="quiet" disabled=move || app.busy.get() || under_way.get() on:click=remove>
                {words.text(Key::HandOverRemove)}
            </button>
        </div>
        <p class="small" role="status">{said}</p>
    }
}
