//! What happens while the window is closed.

use leptos::prelude::*;
use wire::own::{AtLogin, SetAtLogin, ShowStay, Stay};
use words::Key;

use crate::patient::desk::Desk;
use crate::shared::tick::Tick;

/// Whether the program stays in the tray, and opening at login; nothing where the system starts and ends programs itself.
#[component]
pub fn WhileClosed() -> impl IntoView {
    let desk = Desk::here();
    let words = desk.house.words();
    let stay = RwSignal::new(None::<Stay>);
    let ask = move || desk.house.tell::<ShowStay>((), move |answer| stay.set(Some(answer)));
    ask();
    let set = move |on| desk.house.ask::<SetAtLogin>(AtLogin { on }, move |answer| stay.set(Some(answer)));
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
