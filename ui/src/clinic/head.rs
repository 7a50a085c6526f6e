//! The head of a page: where one is, and the way back.

use leptos::prelude::*;
use words::Key;

use super::room::{Page, Room};
use crate::shared::Fault;
use crate::shared::line::TimeIsSet;

/// "Patients" as the way back, the title, a line below it, and the page's own buttons at the right.
#[component]
pub fn Head(title: String, #[prop(optional, into)] line: String, children: Children) -> impl IntoView {
    let room = Room::here();
    view! {
        <header class="head">
            <div class="titles">
                <button type="button" class="back" on:click=move |_| room.show(Page::Patients)>{room.house.text(Key::Patients)}</button>
                <h1>{title}</h1>
                <p class="soft">{line}</p>
            </div>
            <div class="actions">{children()}</div>
        </header>
        <TimeIsSet/>
        <Fault/>
    }
}
