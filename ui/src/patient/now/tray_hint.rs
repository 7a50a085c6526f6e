//! What closing the window does, said once.

use leptos::prelude::*;
use wire::device::ShowBackgroundState;
use words::Key;

use crate::patient::context::PatientContext;
use crate::shared::local_flags;

/// Under this name the page notes that it was said.
const TOLD: &str = "told-tray";

/// Where the program stays in the tray, a line that says so until it is closed for good.
#[component]
pub fn TrayHint() -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let wanted = RwSignal::new(false);
    if !local_flags::is_noted(TOLD) {
        context.app.query::<ShowBackgroundState>((), move |stay| wanted.set(stay.in_tray == Some(true)));
    }
    let close = move |_| {
        local_flags::note(TOLD);
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
