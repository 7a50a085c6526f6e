//! Did they do it: when, how fully, and since when not?

use exercises::adherence::ItemAdherence;
use exercises::chart::{signs, weeks};
use leptos::prelude::*;
use words::Key;
use words::review::Question;

use super::desk::Desk;
use super::finding::Finding;
use crate::clinic::fields::Fold;
use crate::shared::chart::{Legend, WeeksChart};

/// Each item with its count, its days' strings side by side, and more figures folded below.
#[component]
pub fn Done() -> impl IntoView {
    let desk = Desk::here();
    let items = desk.read(|review, _| review.adherence.clone()).unwrap_or_default();
    let delay = desk.read(|review, _| desk.words.delay(&review.delays, review.start)).flatten();
    let signs = desk.read(|review, _| signs(&review.days)).unwrap_or_default();
    let none = items.is_empty().then(|| view! { <p class="soft">{desk.words.unanswered(Question::Done)}</p> });
    view! {
        <section class="done">
            <h2>{desk.question(Question::Done)}</h2>
            {none}
            {items.into_iter().map(|item| view! { <Item item/> }).collect_view()}
            <Legend only=signs/>
            <p class="small soft">{delay}</p>
        </section>
    }
}

/// One item.
#[component]
fn Item(item: ItemAdherence) -> impl IntoView {
    let desk = Desk::here();
    let words = desk.words;
    let name = desk.read(|_, names| names.item(item.item)).unwrap_or_default();
    let gone = (!item.in_force).then(|| view! { <small class="soft">" "{words.no_longer()}</small> });
    let start = desk.read(|review, _| review.start);
    let broke = start.and_then(|start| words.broke_off(&item, start));
    let details = start.map(|start| words.adherence_details(&item, start)).unwrap_or_default();
    let (id, since) = (item.item, item.broke_off.map(|broke| broke.since));
    let strings = move || {
        let (axis, label) =
            (desk.strings()?, desk.read(|_, names| words.fill(Key::ChartDays, &[("name", &names.item(id))]))?);
        let chart = desk.read(|review, _| weeks(&review.days, id, &axis, since)).flatten()?;
        Some(view! { <WeeksChart chart label/> })
    };
    let list = details.into_iter().map(|line| view! { <li>{line}</li> }).collect_view();
    view! {
        <article>
            <h3>{name}{gone}</h3>
            <Finding said=words.adherence(&item)/>
            {words.half_days(&item).map(|halves| view! { <p class="soft">{halves}</p> })}
            {broke.map(|broke| view! { <p class="broke">{broke}</p> })}
            {strings}
            <Fold title=words.text(Key::ReviewFigures) inside=Signal::stored(String::new())><ul class="small lines">{list}</ul></Fold>
        </article>
    }
}
