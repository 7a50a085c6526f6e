//! Choosing the code of the window, and removing it.

use leptos::prelude::*;
use wire::app::ScreenLock;
use wire::device::{LockScreen, ScreenCodeRequest, SetScreenCode};
use words::Key;

use crate::shared::AppContext;

/// What the lock does and does not do; without a code two fields for one, with a code the buttons that lock and that remove it.
#[component]
pub fn ScreenLockChoice() -> impl IntoView {
    let app = AppContext::current();
    let is_on =
        Memo::new(move |_| app.state.with(|state| state.as_ref().is_some_and(|state| state.screen != ScreenLock::Off)));
    view! {
        <section class="stack">
            <h2>{app.text(Key::ScreenLockTitle)}</h2>
            <p>{app.text(Key::ScreenLockWhat)}</p>
            <p class="small soft">{app.text(Key::ScreenLockLimits)}" "{app.text(Key::ScreenLockForgotten)}</p>
            {move || if is_on.get() { view! { <Remove/> }.into_any() } else { view! { <Begin/> }.into_any() }}
        </section>
    }
}

/// The code twice.
#[component]
fn Begin() -> impl IntoView {
    let app = AppContext::current();
    let [code, again] = [(); 2].map(|()| RwSignal::new(String::new()));
    let differs = move || !again.with(String::is_empty) && code.get() != again.get();
    let ready = move || !again.with(String::is_empty) && !differs();
    let begin = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        if ready() {
            let asked = ScreenCodeRequest { old: None, new: Some(code.get_untracked().into()) };
            app.request::<SetScreenCode>(asked, move |state| app.state.set(Some(state)));
        }
    };
    view! {
        <form class="stack" on:submit=begin>
            <Code label=Key::ScreenLockCode value=code/>
            <p class="small soft">{app.text(Key::ScreenLockCodeHint)}</p>
            <Code label=Key::ScreenLockCodeAgain value=again/>
            <p class="warning" role="status">{move || differs().then(|| app.text(Key::ScreenLockDiffers))}</p>
            <button type="submit" disabled=move || !ready() || app.busy.get()>{app.text(Key::ScreenLockBegin)}</button>
        </form>
    }
}

/// Locks now, or removes the code after it was typed.
#[component]
fn Remove() -> impl IntoView {
    let app = AppContext::current();
    let code = RwSignal::new(String::new());
    let lock = move |_| app.request::<LockScreen>((), move |state| app.state.set(Some(state)));
    let remove = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let asked = ScreenCodeRequest { old: Some(code.get_untracked().into()), new: None };
        app.request::<SetScreenCode>(asked, move |state| app.state.set(Some(state)));
    };
    view! {
        <p><strong>{app.text(Key::ScreenLockOn)}</strong></p>
        <button type="button" disabled=app.busy on:click=lock>{app.text(Key::ScreenLockNow)}</button>
        <form class="stack" on:submit=remove>
            <Code label=Key::ScreenLockPresent value=code/>
            <button type="submit" disabled=move || code.with(String::is_empty) || app.busy.get()>
                {app.text(Key::ScreenLockEnd)}
            </button>
        </form>
    }
}

/// A field whose contents are hidden.
#[component]
fn Code(label: Key, value: RwSignal<String>) -> impl IntoView {
    let app = AppContext::current();
    view! {
        <label>{app.text(label)}
            <input type="password" autocomplete="off" prop:value=value on:input:target=move |event| value.set(event.target().value())/></label>
    }
}
