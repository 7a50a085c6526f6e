//! The page about the person's own data.

use leptos::prelude::*;
use words::Key;

use super::erase::Erase;
use super::save::Save;
use crate::patient::desk::Desk;
use crate::patient::places::Place;
use crate::shared::Fault;

/// Save all of it; erase everything.
#[component]
pub fn Mine() -> impl IntoView {
    let desk = Desk::here();
    let text = move |key| desk.house.text(key);
    view! {
        <main class="screen">
            <div class="column stack-8">
                <h1>{text(Key::MineTitle)}</h1>
                <Fault/>
                <Save/>
                <Erase/>
                <button type="button" class="quiet" on:click=move |_| desk.go(Place::Record)>{text(Key::Back)}</button>
            </div>
        </main>
    }
}
