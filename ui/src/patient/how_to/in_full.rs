//! All texts of an exercise.

use exercises::catalogue::Texts;
use exercises::plan::Side;
use exercises::today::TodayItem;
use leptos::prelude::*;
use words::Key;

use super::list::List;
use super::steps::Steps;
use crate::patient::context::PatientContext;
use crate::shared::figure::Figure;

/// All texts of an exercise; `texts` are those at the item's level.
#[component]
pub fn InFull(found: TodayItem, texts: Texts) -> impl IntoView {
    let words = PatientContext::current().app.words();
    let item = &found.item;
    let level = found.exercise.level(item.rung.as_ref());
    let (drawing, needs) = (level.figure(), words.needs(level.equipment()));
    let limit = item.dose.kind().rules().asks_pain().then(|| words.stop_above(item.pain_limit));
    let part = move |title: Key, text: String| view! { <section class="stack-1"><h2>{words.text(title)}</h2><p>{text}</p></section> };
    view! {
        <div class="stack-1">
            <h1>{texts.name.clone()}</h1>
            <p>{words.dose_of(item)}</p>
            {words.rung_of(item, &found.exercise).map(|rung| view! { <p class="soft">{rung}</p> })}
            <p class="soft">{words.at_line_start(&words.due(item))}</p>
            {limit.map(|limit| view! { <p class="soft">{limit}</p> })}
            {(!item.note.is_empty()).then(|| view! { <p class="note">{item.note.clone()}</p> })}
        </div>
        <Figure drawing mirrored=item.side == Side::Left/>
        {part(Key::Purpose, texts.purpose.clone())}
        <Steps texts=texts.clone() needs change=words.change_of(item, &found.exercise) cue=item.note.clone()/>
        {part(Key::ShouldFeel, texts.should_feel.clone())}
        {part(Key::ShouldNotFeel, texts.should_not_feel.clone())}
        <List title=words.text(Key::Mistakes) lines=texts.mistakes.clone()/>
        <List title=words.text(Key::Precautions) lines=texts.cautions.clone()/>
        <List title=words.text(Key::SignsToStop) lines=texts.stop_signs.clone() alarm=true/>
    }
}
