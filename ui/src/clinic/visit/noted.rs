//! What was noted: today first, then the visits before.

use exercises::visit::{Found, Visit};
use leptos::prelude::*;
use words::Key;

use super::context::VisitContext;
use crate::clinic::fields::Fold;

/// Today's findings, each of which can be corrected or taken back, and the earlier visits folded below.
#[component]
pub fn Noted() -> impl IntoView {
    let context = VisitContext::current();
    let words = context.words();
    let of_day = move |today: bool| {
        context.page.with(|page| {
            page.visits.iter().filter(|visit| (visit.day == page.today) == today).cloned().collect::<Vec<Visit>>()
        })
    };
    let today = move || {
        let all = of_day(true);
        match all.is_empty() {
            true => view! { <p class="soft">{words.text(Key::VisitNothing)}</p> }.into_any(),
            false => all.into_iter().map(|visit| view! { <Findings visit/> }).collect_view().into_any(),
        }
    };
    let earlier = move || {
        let all = of_day(false);
        let fold = |(place, visit): (usize, Visit)| {
            let date = words.date(visit.day);
            view! {
                <Fold title=date inside=Signal::stored(words.findings(visit.found.len())) open=place == 0><Findings visit/></Fold>
            }
        };
        (!all.is_empty()).then(|| {
            view! {
                <h2>{words.text(Key::VisitEarlier)}</h2>
                {all.into_iter().enumerate().map(fold).collect_view()}
            }
        })
    };
    let unreadable = move || {
        context.page.with(|page| {
            (page.unreadable > 0).then(|| view! { <p class="warning">{words.visit_unreadable(page.unreadable)}</p> })
        })
    };
    view! {
        <section class="noted stack-2" aria-live="polite">
            <h2>{words.text(Key::VisitToday)}</h2>
            {today}
            {earlier}
            {unreadable}
        </section>
    }
}

#[component]
fn Findings(visit: Visit) -> impl IntoView {
    let context = VisitContext::current();
    let words = context.words();
    let row = |found: &Found| {
        let line = context.page.with_untracked(|page| words.found(page, &visit, found));
        let (n, one) = (found.n, StoredValue::new(found.clone()));
        let correcting = Memo::new(move |_| context.correcting.get() == Some(n));
        view! {
            <li class:correcting=correcting>
                <p>{line.clone()}</p>
                <div class="presses">
                    <button type="button" class="quiet" aria-label=words.named_text(words.text(Key::VisitCorrect), &line)
                        on:click=move |_| context.correct(&one.get_value())>{words.text(Key::VisitCorrect)}</button>
                    <button type="button" class="quiet" aria-label=words.named_text(words.text(Key::VisitTakeBack), &line)
                        disabled=context.clinic.app.busy on:click=move |_| context.take_back(n)>{words.text(Key::VisitTakeBack)}</button>
                </div>
            </li>
        }
    };
    let rows = visit.found.iter().map(row).collect_view();
    let by = words.noted_by(&visit).map(|by| view! { <p class="small soft">{by}</p> });
    view! { {by}<ul class="findings">{rows}</ul> }
}
