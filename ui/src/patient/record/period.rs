//! The period of a summary, what is in it, and the seal.

use chrono::NaiveDate;
use exercises::summary::{MAX_NOTE, Summary};
use leptos::prelude::*;
use wire::patient::{PreviewSummary, RecordPage, Saved, SealAsk, SealSummary};
use words::{Key, Words};

use super::handed_over::HandedOver;
use crate::patient::desk::Desk;

/// The period, what is in it, and the seal.
#[component]
pub fn Period(page: RecordPage, saved: ArcRwSignal<Option<Saved>>) -> impl IntoView {
    let desk = Desk::here();
    let words = desk.house.words();
    let (first, last) = page.offer;
    let (from, until) = (RwSignal::new(first), RwSignal::new(last));
    let note = RwSignal::new(String::new());
    let inside = ArcRwSignal::new(None::<Summary>);
    let plan = page.plan.id;
    let asked = move || {
        let note = note.get().trim().to_owned();
        SealAsk { plan, from: Some(from.get()), until: until.get(), note: (!note.is_empty()).then_some(note) }
    };
    let answer = inside.clone();
    Effect::new(move || {
        let ask = SealAsk { plan, from: Some(from.get()), until: until.get(), note: None };
        let answer = answer.clone();
        answer.set(None);
        desk.house.tell::<PreviewSummary>(ask, move |summary| answer.set(Some(summary)));
    });
    let seal = move |_| {
        let saved = saved.clone();
        desk.house.ask::<SealSummary>(untrack(asked), move |file| saved.set(Some(file)));
    };
    let days = days_between(page.plan.start, last);
    let kept = page.clone();
    let list = move || inside.get().map(|summary| view! { <HandedOver page=kept.clone() summary/> });
    view! {
        <div class="row">
            {day_field(words, Key::From, days.clone(), first, move |day| from.set(day))}
            {day_field(words, Key::To, days, last, move |day| until.set(day))}
        </div>
        {list}
        <label>{words.text(Key::NoteOptional)}<textarea rows="3" maxlength=MAX_NOTE.to_string()
            on:input=move |event| note.set(event_target_value(&event))></textarea></label>
        <button type="button" class="main" disabled=desk.house.busy on:click=seal>{words.text(Key::SaveSealed)}</button>
    }
}

fn days_between(first: NaiveDate, last: NaiveDate) -> Vec<NaiveDate> {
    first.iter_days().take_while(|day| *day <= last).collect()
}

fn day_field(
    words: Words,
    label: Key,
    days: Vec<NaiveDate>,
    chosen: NaiveDate,
    set: impl Fn(NaiveDate) + 'static,
) -> impl IntoView {
    let options = days.into_iter().map(|day| {
        view! { <option value=day.to_string() selected=day == chosen>{words.date_short(day)}</option> }
    });
    let choose = move |event| {
        if let Ok(day) = event_target_value(&event).parse() {
            set(day);
        }
    };
    view! { <label>{words.text(label)}<select on:change=choose>{options.collect_view()}</select></label> }
}
