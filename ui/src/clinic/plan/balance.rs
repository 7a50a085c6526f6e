//! Additional questions for balance at home: shown only while the plan has a balance item.

use exercises::plan::{AgeBand, Risk};
use leptos::prelude::*;
use words::Key;
use words::clinic::PlanSection;

use super::editor::PlanEditor;
use super::stance::StanceTimes;
use crate::clinic::fields::{Choice, Tick};

/// Age, the list of risks, and today's seconds on one leg where an item needs them.
#[component]
pub fn BalanceAtHome() -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let asked = Memo::new(move |_| editor.draft.with(|draft| editor.exercises.with_value(|all| draft.balances(all))));
    let one_leg =
        Memo::new(move |_| editor.draft.with(|draft| editor.exercises.with_value(|all| draft.needs_stance_times(all))));
    let problems = move || {
        editor
            .problems_at(PlanSection::Balance)
            .into_iter()
            .map(|line| view! { <li class="warning">{line}</li> })
            .collect_view()
    };
    view! {
        <Show when=move || asked.get()>
            <section class="sheet stack gate">
                <h2>{words.text(Key::BalanceAtHome)}</h2>
                <p class="small soft">{words.text(Key::BalanceAtHomeWhat)}</p>
                <div class="when"><Age/><Show when=move || one_leg.get()><StanceTimes/></Show></div>
                <Absent/>
                <div role="status"><ul>{problems}</ul></div>
            </section>
        </Show>
    }
}

/// The age group.
#[component]
fn Age() -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let none = (String::new(), words.text(Key::AgeNone).to_owned());
    let bands = AgeBand::ALL.into_iter().map(|band| (format!("{band:?}"), words.age(band)));
    let options = std::iter::once(none).chain(bands).collect::<Vec<_>>();
    let value = Signal::derive(move || editor.plan(|plan| plan.age.map(|band| format!("{band:?}")).unwrap_or_default()));
    let choose = move |chosen: String| {
        let band = AgeBand::ALL.into_iter().find(|band| format!("{band:?}") == chosen);
        editor.edit(|draft| draft.prescription.age = band);
    };
    let young = move || editor.plan(|plan| plan.age == Some(AgeBand::Under18)).then(|| words.text(Key::AgeUnder18What));
    view! {
        <div>
            <Choice label=words.text(Key::AgeBand) options value choose/>
            <small class="soft" role="status">{young}</small>
        </div>
    }
}

/// The risks that were considered and are absent. There is no button that ticks all of them, because each is a decision of its own.
#[component]
fn Absent() -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let line = move |risk: Risk| {
        let value = Signal::derive(move || editor.plan(|plan| plan.absent.contains(&risk)));
        let put = move |on| {
            editor.edit(|draft| {
                if on {
                    draft.prescription.absent.insert(risk)
                } else {
                    draft.prescription.absent.remove(&risk)
                };
            });
        };
        view! { <Tick label=words.risk(risk) value put/> }
    };
    view! {
        <fieldset class="risks">
            <legend>{words.text(Key::AbsentTitle)}</legend>
            {Risk::ALL.map(line).into_iter().collect_view()}
            <StillTrue/>
        </fieldset>
    }
}

/// One press that confirms the list that was carried over from an earlier visit. Empty on a first plan.
#[component]
fn StillTrue() -> impl IntoView {
    let editor = PlanEditor::current();
    let words = editor.words();
    let today = editor.draft.with_untracked(|draft| draft.today);
    let on = Memo::new(move |_| editor.plan(|plan| plan.confirmed));
    let confirm = move |_| editor.edit(|draft| draft.prescription.confirmed = Some(today));
    move || {
        let day = on.get()?;
        let said = match day == today {
            true => words.text(Key::AbsentConfirmedToday).to_owned(),
            false => words.absent_confirmed_on(&words.date(day)),
        };
        let button = (day != today).then(|| {
            view! { <button type="button" on:click=confirm>{words.text(Key::AbsentStillTrue)}</button> }
        });
        Some(view! { <p class="still-true"><span class="soft" role="status">{said}</span>{button}</p> })
    }
}
