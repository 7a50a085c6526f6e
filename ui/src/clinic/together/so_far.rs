//! What was done, and what came of it.

use leptos::prelude::*;
use wire::clinic::ReviewPage;
use words::Key;
use words::review::Names;

use crate::clinic::context::ClinicContext;

/// What has to be talked about first, the sentences, and what got in the way.
#[component]
pub fn SoFar(page: StoredValue<ReviewPage>) -> impl IntoView {
    let words = ClinicContext::current().app.words();
    let said = page.with_value(|page| {
        let review = page.review.as_ref()?;
        Some(words.together(review, Names::of(words, page)))
    });
    let paragraphs = |lines: Vec<String>, class: &'static str| {
        lines.into_iter().map(|line| view! { <p class=class>{line}</p> }).collect_view()
    };
    let inside = said.map(|said| {
        let barriers = (!said.barriers.is_empty()).then(|| {
            let lines = paragraphs(said.barriers, "said");
            view! {
                <div class="stack-2">
                    <h3>{words.text(Key::TogetherBarriers)}</h3>
                    {lines}
                    <p class="soft">{words.text(Key::TogetherWouldHelp)}</p>
                </div>
            }
        });
        view! {
            {paragraphs(said.alarms, "said warning")}
            {paragraphs(said.sentences, "said")}
            {barriers}
        }
    });
    view! {
        <section class="stack so-far" aria-labelledby="together-so-far">
            <h2 id="together-so-far">{words.text(Key::TogetherSoFar)}</h2>
            {inside}
        </section>
    }
}
