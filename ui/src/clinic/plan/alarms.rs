//! Alarms that no card has cleared yet.

use exercises::review::ReviewAlarm;
use leptos::prelude::*;
use words::Key;

use super::editor::PlanEditor;
use crate::clinic::fields::Tick;

/// Each alarm with what happened, and a box that clears it with this card. Empty if there are no alarms.
#[component]
pub fn AlarmsToClear() -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let alarms = editor.alarms.get_value();
    (!alarms.is_empty()).then(|| {
        view! {
            <section class="stack" aria-label=words.text(Key::AlarmsToClear)>
                <h2>{words.text(Key::AlarmsToClear)}</h2>
                {alarms.into_iter().map(|alarm| view! { <Alarm alarm/> }).collect_view()}
                <p class="small soft">{words.text(Key::AlarmClearWhat)}</p>
            </section>
        }
    })
}

/// One alarm.
#[component]
fn Alarm(alarm: ReviewAlarm) -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let said = editor.draft.with_untracked(|draft| {
        editor.exercises.with_value(|exercises| {
            words.review_alarm(&alarm, words::review::Names::of_prescription(words, &draft.prescription, exercises))
        })
    });
    let clearing = alarm.clearing();
    let value = Signal::derive(move || editor.plan(|plan| plan.cleared.contains(&clearing)));
    let put = move |on| {
        editor.edit(|draft| {
            draft.prescription.cleared.retain(|other| *other != clearing);
            if on {
                draft.prescription.cleared.push(clearing);
            }
        });
    };
    view! {
        <div class="alarm-banner">
            <p><strong>{said.word}</strong>" "{said.figures}</p>
            <Tick label=words.text(Key::AlarmClear) value put/>
        </div>
    }
}
