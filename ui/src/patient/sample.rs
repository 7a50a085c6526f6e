//! Looking around in a sample plan: the way in, and the line that marks all of it.

use leptos::prelude::*;
use wire::house::{Around, LookAround, Situation};
use words::Key;

use super::desk::Desk;
use super::places::Place;

/// The way in, below the form for a card.
#[component]
pub fn OfferSample() -> impl IntoView {
    let desk = Desk::here();
    let text = move |key| desk.house.text(key);
    view! {
        <section class="stack-2">
            <p id="sample-what" class="small soft">{text(Key::SampleWhat)}</p>
            <button type="button" aria-describedby="sample-what" disabled=desk.house.busy on:click=move |_| around(desk, true)>
                {text(Key::SampleLook)}
            </button>
        </section>
    }
}

/// Says on every page that it is a sample, with the way out; nothing otherwise.
#[component]
pub fn SampleLine() -> impl IntoView {
    let desk = Desk::here();
    let text = move |key| desk.house.text(key);
    let is_sample = Memo::new(move |_| desk.is_sample());
    view! {
        <Show when=move || is_sample.get()>
            <aside class="sample" aria-label=text(Key::SampleIs)>
                <p>{text(Key::SampleIs)}</p>
                <button type="button" class="quiet" on:click=move |_| around(desk, false)>{text(Key::SampleLeave)}</button>
            </aside>
        </Show>
    }
}

fn around(desk: Desk, begin: bool) {
    desk.house.ask::<LookAround>(Around { begin }, move |situation: Situation| {
        desk.house.situation.set(Some(situation));
        desk.go(Place::Now);
    });
}
