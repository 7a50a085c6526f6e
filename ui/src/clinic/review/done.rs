//! Was the plan followed: when, how completely, and since when not?

use exercises::adherence::ItemAdherence;
use exercises::chart::{legend_entries, weeks};
use leptos::prelude::*;
use words::Key;
use words::review::ReviewQuestion;

use super::context::ReviewContext;
use super::finding::Finding;
use crate::clinic::fields::Fold;
use crate::shared::chart::{Legend, WeeksChart};

/// Each item with its count and its days' strings side by side; more figures are folded below.
#[component]
pub fn Done() -> impl IntoView {
    let context = ReviewContext::current();
    let (items, care) = context.read(|review, names| names.exercise_and_care(&review.adherence)).unwrap_or_default();
    let delay = context.read(|review, _| context.words.delay(&review.delays, review.start)).flatten();
    let signs = context.read(|review, _| legend_entries(&review.days)).unwrap_or_default();
    let none = (items.is_empty() && care.is_empty())
        .then(|| view! { <p class="soft">{context.words.unanswered(ReviewQuestion::Done)}</p> });
    view! {
        <section class="done">
            <h2>{context.question(ReviewQuestion::Done)}</h2>
            {none}
            {items.into_iter().map(|item| view! { <Item item/> }).collect_view()}
            {(!care.is_empty()).then(|| view! { <p class="soft">{context.words.text(Key::ReviewCare)}</p> })}
            {care.into_iter().map(|item| view! { <Item item/> }).collect_view()}
            <Legend only=signs/>
            <p class="small soft">{delay}</p>
        </section>
    }
}

/// One item.
#[component]
fn Item(item: ItemAdherence) -> impl IntoView {
    let context = ReviewContext::current();
    let words = context.words;
    let name = context.read(|_, names| names.item(item.item)).unwrap_or_default();
    let gone = (!item.in_force).then(|| view! { <small class="soft">" "{words.no_longer()}</small> });
    let start = context.read(|review, _| review.start);
    let broke = start.and_then(|start| words.broke_off(&item, start));
    let details = start.map(|start| words.adherence_details(&item, start)).unwrap_or_default();
    let (id, since) = (item.item, item.broke_off.map(|broke| broke.since));
    let strings = move || {
        let (axis, label) = (context.strings()?, context.read(|_, names| words.chart_days(&names.item(id)))?);
        let chart = context.read(|review, _| weeks(&review.days, id, &axis, since)).flatten()?;
        Some(view! { <WeeksChart chart label changes=context.changes_on(&axis)/> })
    };
    let list = details.into_iter().map(|line| view! { <li>{line}</li> }).collect_view();
    view! {
        <article>
            <h3>{name}{gone}</h3>
            <Finding said=words.adherence(&item, start.unwrap_or_default())/>
            {words.half_days(&item).map(|halves| view! { <p class="soft">{halves}</p> })}
            {broke.map(|broke| view! { <p class="broke">{broke}</p> })}
            {strings}
            <Fold title=words.text(Key::ReviewFigures) inside=Signal::stored(String::new())><ul class="small lines">{list}</ul></Fold>
        </article>
    }
}
