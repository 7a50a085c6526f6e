//! One entry: its time, what was entered, and what counts instead; pressing it shows the possible corrections.

use exercises::correct::Correctable;
use leptos::prelude::*;
use words::review::upper;

use super::choices::Choices;
use super::context::{CorrectionContext, name};
use crate::patient::context::PatientContext;

/// One entry as a button. What no longer counts is crossed out, and what counts is shown below.
#[component]
pub fn Line(line: Correctable) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let context = CorrectionContext::current();
    let said = context.named(|names| upper(&words.said_so(line.said, names))).unwrap_or_default();
    let instead = context.named(|names| words.corrected(&line, names)).flatten();
    let said = if line.now == Some(line.said) {
        view! { <span>{said}</span> }.into_any()
    } else {
        view! { <s class="soft">{said}</s> }.into_any()
    };
    let clock = words.wrong_clock_then(&line).map(|clock| view! { <span class="soft">{clock}</span> });
    let is_open = Memo::new(move |_| context.open.get() == Some(line.n));
    let choices = move || is_open.get().then(|| view! { <Choices line/> });
    view! {
        <li>
            <button type="button" id=name(line.n) aria-expanded=move || is_open.get().to_string() on:click=move |_| context.toggle(line.n)>
                <span class="number soft">{words.minute(line.at.minute())}</span>
                <span class="told-so">{said}{clock}{instead.map(|now| view! { <strong>{now}</strong> })}</span>
            </button>
            {choices}
        </li>
    }
}
