//! What happens while the window is closed.

use leptos::prelude::*;
use wire::device::{AtLoginRequest, BackgroundState, SetAtLogin, ShowBackgroundState};
use words::Key;

use crate::patient::context::PatientContext;
use crate::shared::tick::Tick;

/// Whether the program stays in the tray, and starting at login; empty on systems that start and end programs themselves.
#[component]
pub fn WhileClosed() -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let stay = RwSignal::new(None::<BackgroundState>);
    let request = move || context.app.query::<ShowBackgroundState>((), move |answer| stay.set(Some(answer)));
    request();
    let set = move |on| context.app.request::<SetAtLogin>(AtLoginRequest { on }, move |answer| stay.set(Some(answer)));
    let on = Signal::derive(move || stay.with(|stay| stay.and_then(|stay| stay.at_login).unwrap_or(false)));
    let at_login = Memo::new(move |_| stay.with(|stay| stay.is_some_and(|stay| stay.at_login.is_some())));
    let closing = move || {
        let key = if stay.get()?.in_tray? { Key::StayInTray } else { Key::StayEnds };
        Some(view! { <p class="soft">{words.text(key)}</p> })
    };
    view! {
        <Show when=move || at_login.get()>
            <section class="stack while-closed">
                <h2>{words.text(Key::StayTitle)}</h2>
                {closing}
                <Tick label=words.text(Key::StayAtLogin) value=on put=set hint=words.text(Key::StayAtLoginWhat)/>
            </section>
        </Show>
    }
}
