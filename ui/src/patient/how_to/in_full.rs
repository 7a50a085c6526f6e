//! All texts of an exercise.

use exercises::catalogue::Exercise;
use exercises::plan::{Item, Side};
use leptos::prelude::*;
use words::{Key, Words};

use super::list::List;
use super::steps::Steps;
use crate::shared::figure::Figure;

/// All texts of an exercise at the level of an item, with its figure; in the language of `words`, or in the one that there is. It
/// follows each change, which moves the figure again only if the figure has changed.
#[component]
pub fn InFull(
    #[prop(into)] item: Signal<Item>,
    #[prop(into)] exercise: Signal<Exercise>,
    #[prop(into)] words: Signal<Words>,
) -> impl IntoView {
    let drawing =
        Memo::new(move |_| exercise.with(|exercise| item.with(|item| exercise.level(item.rung.as_ref()).figure())));
    let mirrored = Memo::new(move |_| item.with(|item| item.side == Side::Left));
    let held = Memo::new(move |_| item.with(|item| item.dose.is_kept()));
    view! {
        {move || exercise.with(|exercise| item.with(|item| head(words.get(), item, exercise)))}
        {move || view! { <Figure drawing=drawing.get() mirrored=mirrored.get() held=held.get()/> }}
        {move || exercise.with(|exercise| item.with(|item| told(words.get(), item, exercise)))}
    }
}

/// Name, dose, level, times, limit, and the clinician's note.
fn head(words: Words, item: &Item, exercise: &Exercise) -> impl IntoView + use<> {
    let name = exercise.text(words.lang()).map(|texts| texts.name.clone()).unwrap_or_default();
    let limit = item.dose.kind().rules().asks_pain().then(|| words.stop_above(item.pain_limit));
    view! {
        <div class="stack-1">
            {(!name.trim().is_empty()).then(|| view! { <h1>{name}</h1> })}
            <p>{words.dose_of(item)}</p>
            {words.rung_of(item, exercise).map(|rung| view! { <p class="soft">{rung}</p> })}
            <p class="soft">{words.at_line_start(&words.due(item))}</p>
            {limit.map(|limit| view! { <p class="soft">{limit}</p> })}
            {(!item.note.is_empty()).then(|| view! { <p class="note">{item.note.clone()}</p> })}
        </div>
    }
}

/// Everything below the figure.
fn told(words: Words, item: &Item, exercise: &Exercise) -> Option<impl IntoView + use<>> {
    let level = exercise.level(item.rung.as_ref());
    let texts = level.texts(words.lang())?;
    let part = move |title: Key, text: String| view! { <section class="stack-1"><h2>{words.text(title)}</h2><p>{text}</p></section> };
    let change = words.change_of(item, exercise);
    Some(view! {
        {part(Key::Purpose, texts.purpose.clone())}
        <Steps texts=texts.clone() needs=words.needs(level.equipment()) change cue=item.note.clone() words/>
        {part(Key::ShouldFeel, texts.should_feel.clone())}
        {part(Key::ShouldNotFeel, texts.should_not_feel.clone())}
        <List title=words.text(Key::Mistakes) lines=texts.mistakes.clone()/>
        <List title=words.text(Key::Precautions) lines=texts.cautions.clone()/>
        <List title=words.text(Key::SignsToStop) lines=texts.stop_signs.clone() alarm=true/>
    })
}
