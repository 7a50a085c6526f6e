//! Closing a case, and opening it again.

use exercises::closing::{CloseReason, Closing, MAX_WORDS, in_force};
use leptos::prelude::*;
use wire::cases::{CloseCase, CloseRequest, ReopenCase};
use wire::clinic::PatientCode;
use words::Key;

use crate::clinic::context::{ClinicContext, Page};
use crate::clinic::fields::{Choice, Text};

/// How it stands and stood; then why it is to be closed, or a button to open it again.
#[component]
pub fn CloseOrReopen(code: String, closings: Vec<Closing>) -> impl IntoView {
    let words = ClinicContext::current().app.words();
    let closed = in_force(&closings).is_some();
    let lines = closings.iter().map(|closing| view! { <li>{words.closing(closing)}</li> }).collect_view();
    view! {
        <section class="sheet stack" aria-label=words.text(Key::CaseTitle)>
            {(!closed).then(|| view! { <p>{words.text(Key::CaseIsOpen)}</p> })}
            {(!closings.is_empty()).then(|| view! { <ul class="closings">{lines}</ul> })}
            {if closed { view! { <Reopen code/> }.into_any() } else { view! { <Close code/> }.into_any() }}
        </section>
    }
}

#[component]
fn Reopen(code: String) -> impl IntoView {
    let context = ClinicContext::current();
    let app = context.app;
    let reopen = move |_| {
        app.request::<ReopenCase>(PatientCode { code: code.clone() }, move |page| context.show(Page::Case(Box::new(page))));
    };
    view! { <button type="button" disabled=app.busy on:click=reopen>{app.text(Key::CaseReopen)}</button> }
}

#[component]
fn Close(code: String) -> impl IntoView {
    let context = ClinicContext::current();
    let app = context.app;
    let words = app.words();
    let (reason, said) = (RwSignal::new(CloseReason::Finished), RwSignal::new(String::new()));
    let needs_words = Memo::new(move |_| reason.get() == CloseReason::Other);
    let close = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let asked = CloseRequest { code: code.clone(), reason: reason.get_untracked(), words: said.get_untracked() };
        app.request::<CloseCase>(asked, move |page| context.show(Page::Case(Box::new(page))));
    };
    let options = CloseReason::ALL.iter().enumerate();
    let options = options.map(|(place, one)| (place.to_string(), words.close_reason(*one).to_owned())).collect();
    let chosen = move || CloseReason::ALL.iter().position(|one| *one == reason.get()).unwrap_or_default().to_string();
    let choose = move |place: String| {
        let one = place.parse::<usize>().ok().and_then(|place| CloseReason::ALL.get(place).copied());
        one.into_iter().for_each(|one| reason.set(one));
    };
    let label = move || app.text(if needs_words.get() { Key::CaseCloseWordsNeeded } else { Key::CaseCloseWords });
    view! {
        <form class="stack" on:submit=close>
            <p class="small soft">{words.text(Key::CaseCloseWhat)}</p>
            <Choice label=words.text(Key::CaseCloseWhy) options value=Signal::derive(chosen) choose/>
            {move || view! { <Text label=label() value=said put=move |text| said.set(text) most=MAX_WORDS/> }}
            <button type="submit" disabled=move || app.busy.get() || needs_words.get() && said.with(|said| said.trim().is_empty())>
                {words.text(Key::CaseClose)}
            </button>
        </form>
    }
}
