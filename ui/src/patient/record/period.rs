//! The period of a summary, its contents, and the buttons that create it as a file or as codes on the screen.

use std::sync::Arc;

use exercises::summary::{MAX_NOTE, Summary};
use leptos::prelude::*;
use wire::patient::{PreviewSummary, RecordPage, SealRequest, SealSummary, ShowFrames};
use wire::saved::SavedFile;
use words::Key;

use super::handed_over::HandedOver;
use crate::patient::context::PatientContext;
use crate::patient::day_field::DayField;
use crate::shared::summary_bytes::ShownBytes;

/// The period, the contents, and the buttons.
#[component]
pub fn Period(
    page: RecordPage,
    saved: ArcRwSignal<Option<SavedFile>>,
    frames: RwSignal<Option<Arc<[String]>>>,
) -> impl IntoView {
    let context = PatientContext::current();
    let words = context.app.words();
    let (first, last) = page.offer;
    let (from, until) = (RwSignal::new(first), RwSignal::new(last));
    let note = RwSignal::new(String::new());
    let inside = ArcRwSignal::new(None::<Summary>);
    let plan = page.plan.header.id;
    let asked = move || {
        let note = note.get().trim().to_owned();
        SealRequest { plan, from: Some(from.get()), until: until.get(), note: (!note.is_empty()).then_some(note) }
    };
    // Nothing is created before the person has seen the contents. The list of the previous period stays until the new one is there,
    // so that nothing moves under the finger.
    let seen = RwSignal::new(None);
    let answer = inside.clone();
    Effect::new(move || {
        let period = (from.get(), until.get());
        let request = SealRequest { plan, from: Some(period.0), until: period.1, note: None };
        let answer = answer.clone();
        context.app.query_or_none::<PreviewSummary>(request, move |summary| {
            // Ignores an answer if other days were chosen in the meantime, or if the page was left.
            if untrack(|| from.try_get().zip(until.try_get())) == Some(period) {
                seen.set(summary.is_some().then_some(period));
                answer.set(summary);
            }
        });
    });
    let wait = move || context.app.busy.get() || seen.get() != Some((from.get(), until.get()));
    let seal = move |_| {
        let saved = saved.clone();
        context.app.request::<SealSummary>(untrack(asked), move |file| saved.set(Some(file)));
    };
    // Each request creates a new summary, so the answer is kept for as long as it is shown.
    let show = move |_| context.app.request::<ShowFrames>(untrack(asked), move |list| frames.set(Some(list.into())));
    let begun = page.plan.header.start;
    let kept = page.clone();
    let list = move || inside.get().map(|summary| view! { <HandedOver page=kept.clone() summary/> });
    view! {
        <div class="row">
            <DayField label=Key::From first=begun last chosen=first set=move |day| from.set(day)/>
            <DayField label=Key::To first=begun last chosen=last set=move |day| until.set(day)/>
        </div>
        {list}
        <ShownBytes asked/>
        <label>{words.text(Key::NoteOptional)}<textarea rows="3" maxlength=MAX_NOTE.to_string()
            on:input=move |event| note.set(event_target_value(&event))></textarea></label>
        <button type="button" class="main" disabled=wait on:click=seal>{words.text(Key::SaveEncrypted)}</button>
        <button type="button" disabled=wait on:click=show>{words.text(Key::FramesShow)}</button>
    }
}
