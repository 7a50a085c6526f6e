//! The head of a page: its title, and the way back.

use leptos::prelude::*;
use words::Key;

use super::context::{ClinicContext, Page};
use super::lock::LockButton;
use crate::shared::Fault;
use crate::shared::line::TimeIsSet;

/// "Patients" as the way back, the title, a line below it, the page's own buttons, and the button that locks.
#[component]
pub fn Head(title: String, #[prop(optional, into)] line: String, children: Children) -> impl IntoView {
    let context = ClinicContext::current();
    view! {
        <header class="head">
            <div class="titles">
                <button type="button" class="back" on:click=move |_| context.show(Page::Patients)>{context.app.text(Key::Patients)}</button>
                <h1>{title}</h1>
                <p class="soft">{line}</p>
            </div>
            <div class="actions">{children()}</div>
            <LockButton/>
        </header>
        <TimeIsSet/>
        <Fault/>
    }
}
