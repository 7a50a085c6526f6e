//! The exercise that is due: its name, its figure, and the button to start.

use exercises::plan::Side;
use exercises::run::Work;
use exercises::slots::SlotRef;
use exercises::today::TodayItem;
use leptos::prelude::*;
use wire::patient::{DidIt, PutOff, SlotRequest};
use words::Key;

use super::next_step::NextStep;
use crate::patient::context::PatientContext;
use crate::patient::day_line::DayLine;
use crate::patient::page::Page;
use crate::shared::figure::Figure;

/// The exercise that is due, with everything that the person can do about it.
#[component]
pub fn Offer(item: TodayItem, at: SlotRef, line: Option<String>) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let slot = at;
    let (plan, id, busy) = (item.plan, item.item.id, context.app.busy);
    let drawing = item.item.rung.as_ref().map_or_else(|| item.exercise.poses.clone(), |rung| item.exercise.figure(rung));
    let (mirrored, held) = (item.item.side == Side::Left, item.item.dose.is_kept());
    let put_off = move |_| context.app.request::<PutOff>(SlotRequest { plan, slot }, move |today| context.show(today));
    let did_it = move |_| context.app.request::<DidIt>(SlotRequest { plan, slot }, move |today| context.show(today));
    // If a change is offered as well, both buttons say what they start. What is done at once needs no more than one press.
    let at_once = item.item.dose.kind().rules().is_one_press();
    // What has a result cannot be said to be done without it.
    let did_without = !at_once && Work::in_full(item.item.dose, item.item.side.in_turn()).is_some();
    let begin = words.text(match (at_once, item.step.is_some()) {
        (true, _) => Key::DoneNow,
        (false, true) => Key::StartAsBefore,
        (false, false) => Key::StartSession,
    });
    let start = move |_| {
        if at_once {
            context.app.request::<DidIt>(SlotRequest { plan, slot }, move |today| context.show(today));
        } else {
            context.begin(plan, id);
        }
    };
    let step = item.step.is_some().then(|| view! { <NextStep item=item.clone()/> });
    let note = (!item.item.note.is_empty()).then(|| view! { <p class="note">{item.item.note.clone()}</p> });
    view! {
        <section class="offer">
            <div class="offer-words stack-1">
                {item.clinic.clone().map(|clinic| view! { <p class="soft">{clinic}</p> })}
                <h1>{words.exercise_name(&item.exercise).to_owned()}</h1>
                {(!at_once).then(|| view! { <p>{words.dose_of(&item.item)}". "{words.takes(item.takes_s)}"."</p> })}
                {words.rung_of(&item.item, &item.exercise).map(|rung| view! { <p class="soft">{rung}</p> })}
                {note}
                {item.hand_on_support.then(|| view! { <p><strong>{words.text(Key::HandOnSupport)}</strong></p> })}
                {line.map(|line| view! { <p class="brass" role="status">{line}</p> })}
            </div>
            <div class="offer-figure"><Figure drawing mirrored held rests=context.mark_moved(slot)/><DayLine/></div>
            <div class="offer-buttons stack">
                {step}
                <button type="button" class="main" disabled=busy on:click=start>{begin}</button>
                <div class="row">
                    <button type="button" disabled=busy on:click=put_off>{words.text(Key::RemindInTenMinutes)}</button>
                    <button type="button" on:click=move |_| context.open(Page::SkipSlot(plan, slot))>{words.text(Key::SkipThisTime)}</button>
                </div>
                <div class="row">
                    <button type="button" class="quiet" on:click=move |_| context.open(Page::HowTo(plan, id))>{words.text(Key::HowToDoIt)}</button>
                    {did_without.then(|| view! { <button type="button" class="quiet" disabled=busy on:click=did_it>{words.text(Key::DidItAlready)}</button> })}
                </div>
            </div>
        </section>
    }
}
