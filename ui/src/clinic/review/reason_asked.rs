//! Why an exercise is not done.

use exercises::log::Barrier;
use exercises::suggest::Ask;
use leptos::prelude::*;
use words::Words;

use super::asked::Asked;

/// Why it is not done.
#[component]
pub fn ReasonAsked(words: Words, given: RwSignal<Option<Barrier>>) -> impl IntoView {
    let options = Barrier::ALL.into_iter().filter(|barrier| *barrier != Barrier::RatherNotSay);
    let options = options.map(|barrier| (format!("{barrier:?}"), words.barrier(barrier).to_owned()));
    let choose = move |chosen: String| {
        given.set(Barrier::ALL.into_iter().find(|barrier| format!("{barrier:?}") == chosen));
    };
    view! { <Asked words label=words.ask(Ask::Reason) options=options.collect() choose/> }
}
