//! What closing the window does, said once.

use leptos::prelude::*;
use wire::own::ShowStay;
use words::Key;

use crate::patient::desk::Desk;
use crate::shared::kept;

/// Under this name the page notes that it was said.
const TOLD: &str = "told-tray";

/// Where the program stays in the tray, a line that says so until it is closed for good.
#[component]
pub fn ToldOnce() -> impl IntoView {
    let desk = Desk::here();
    let words = desk.house.words();
    let wanted = RwSignal::new(false);
    if !kept::is_noted(TOLD) {
        desk.house.tell::<ShowStay>((), move |stay| wanted.set(stay.in_tray == Some(true)));
    }
    let close = move |_| {
        kept::note(TOLD);
        wanted.set(false);
    };
    view! {
        <Show when=move || wanted.get()>
            <div class="sheet stack-2 small">
                <p>{words.text(Key::StayInTray)}</p>
                <button type="button" class="quiet" on:click=close>{words.text(Key::Close)}</button>
            </div>
        </Show>
    }
}
