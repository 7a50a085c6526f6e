//! How much an exercise hurts.

use exercises::score::Score;
use exercises::suggest::Ask;
use leptos::prelude::*;
use words::Words;

use super::asked::Asked;

/// How much it hurts while doing it, as the patient says at the visit.
#[component]
pub fn PainAsked(words: Words, given: RwSignal<Option<Score>>) -> impl IntoView {
    let options = Score::all().map(|score| (score.points().to_string(), score.points().to_string()));
    let choose = move |chosen: String| given.set(Score::all().find(|score| score.points().to_string() == chosen));
    view! { <Asked words label=words.ask(Ask::Pain) options=options.collect() choose/> }
}
