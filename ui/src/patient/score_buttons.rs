//! A score from 0 to 10 as eleven buttons.

use exercises::score::Score;
use leptos::prelude::*;

use super::context::PatientContext;

/// Eleven buttons with the meaning of both ends. `label` names the group; `now` is the present answer, if there is one.
#[component]
pub fn ScoreButtons(
    label: String,
    least: &'static str,
    most: &'static str,
    give: impl Fn(Score) + Copy + Send + 'static,
    #[prop(optional)] now: Option<Score>,
) -> impl IntoView {
    let busy = PatientContext::current().app.busy;
    let buttons = Score::all().map(move |score| {
        let counts = (now == Some(score)).then_some("true");
        view! { <button type="button" class="number" aria-current=counts disabled=busy on:click=move |_| give(score)>{score.points()}</button> }
    });
    view! {
        <div role="group" aria-label=label>
            <div class="scores">{buttons.collect_view()}</div>
            <p class="ends small soft"><span>"0 "{least}</span><span>"10 "{most}</span></p>
        </div>
    }
}
