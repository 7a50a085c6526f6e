//! The hint at what happens when the window is closed, shown once.

use leptos::prelude::*;
use wire::device::ShowBackgroundState;
use words::Key;

use crate::patient::context::PatientContext;
use crate::shared::local_flags;

/// The name of the flag that records that the hint was shown.
const TOLD: &str = "told-tray";

/// If the program stays in the tray, a line that says so until the person closes it for good.
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
