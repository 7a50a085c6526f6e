//! The steps of an exercise.

use exercises::catalogue::Texts;
use leptos::prelude::*;
use words::{Key, Words};

use super::read_aloud::ReadAloud;
use crate::shared::AppContext;

/// What is needed, the starting position, and the steps in order, with a button to have them read aloud; `cue` is the clinician's own
/// word for it, which is read last. `words` are those of the window if they are not given.
#[component]
pub fn Steps(
    texts: Texts,
    needs: Option<String>,
    change: Option<String>,
    cue: String,
    #[prop(optional, into)] words: Option<Words>,
) -> impl IntoView {
    let words = words.unwrap_or_else(|| AppContext::current().words());
    let told = [vec![texts.set_up.clone()], change.iter().cloned().collect(), texts.steps.clone(), vec![cue]].concat();
    let lines: Vec<String> = told.into_iter().filter(|line| !line.is_empty()).collect();
    let steps = texts.steps.into_iter().map(|step| view! { <li>{step}</li> }).collect_view();
    view! {
        <section class="stack-2">
            <h2>{words.text(Key::HowToDoIt)}</h2>
            {needs.map(|needs| view! { <p class="soft">{needs}</p> })}
            <p>{texts.set_up}</p>
            {change.map(|change| view! { <p><strong>{change}</strong></p> })}
            <ol class="steps">{steps}</ol>
            <ReadAloud lines words/>
        </section>
    }
}
