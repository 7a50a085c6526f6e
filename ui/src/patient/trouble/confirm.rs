//! What raising an alarm will do, before it is done.

use exercises::alarm::{Circumstance, Trouble};
use exercises::today::PauseEnd;
use leptos::prelude::*;
use std::collections::BTreeSet;
use words::Key;

use crate::patient::context::PatientContext;
use crate::patient::page::Raised;
use crate::shared::Fault;

/// What will be paused, and what else the clinic has to know. `record` gets what was raised, with the answers.
#[component]
pub fn Confirm(
    raised: Raised,
    record: impl Fn(Raised) + Copy + Send + 'static,
    back: impl Fn() + Copy + Send + 'static,
) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let (trouble, item) = (raised.trouble, raised.item);
    let chosen = RwSignal::new(BTreeSet::new());
    let suspends = context.today.with_untracked(|today| {
        let plan = raised.plan?;
        today.as_ref()?.would_suspend(plan, trouble, raised.item)
    });
    let lasting = move || chosen.with(|chosen: &BTreeSet<Circumstance>| chosen.contains(&Circumstance::SweatsOrWeightLoss));
    let paused = move || {
        let ends = if trouble == Trouble::Unwell && !lasting() { PauseEnd::WhenWell } else { PauseEnd::Card };
        words.would_pause(trouble, item, suspends, ends)
    };
    let asked = Circumstance::asked_after(trouble);
    let answers = asked.iter().map(|one| view! { <Answer of=*one chosen/> }).collect_view();
    let answers = (!asked.is_empty()).then(|| {
        view! {
            <fieldset class="stack-2"><legend>{words.text(Key::ChooseWhatApplies)}</legend>{answers}</fieldset>
        }
    });
    let raise = move |_| record(Raised { circumstances: chosen.get_untracked(), ..raised.clone() });
    view! {
        <main class="screen">
            <div class="column stack-5">
                <div class="stack-1"><p class="soft">{words.trouble(trouble)}</p><h1>{words.text(Key::BeforeRecorded)}</h1></div>
                <p class="soft">{words.text(Key::UrgentAnyway)}</p>
                {answers}
                <p>{paused}</p>
                <Fault/>
                <div class="page-foot">
                    <div class="row">
                        <button type="button" data-back="" on:click=move |_| back()>{words.text(Key::Back)}</button>
                        <button type="button" class="main" disabled=context.app.busy on:click=raise>{words.text(Key::RecordIt)}</button>
                    </div>
                </div>
            </div>
        </main>
    }
}

#[component]
fn Answer(of: Circumstance, chosen: RwSignal<BTreeSet<Circumstance>>) -> impl IntoView {
    let label = PatientContext::current().app.words().circumstance(of);
    let toggle = move |_| {
        chosen.update(|chosen| {
            if !chosen.remove(&of) {
                chosen.insert(of);
            }
        });
    };
    let checked = move || chosen.with(|chosen| chosen.contains(&of));
    view! { <label class="tick"><input type="checkbox" prop:checked=checked on:change=toggle/><span>{label}</span></label> }
}
