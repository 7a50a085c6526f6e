//! The page for the two minutes in which patient and clinician decide what next.

use leptos::prelude::*;
use wire::clinic::{PlanDraft, ReviewPage};
use words::Key;

use super::full_day::FullDays;
use super::item::ItemOptions;
use super::reason::Reasons;
use super::so_far::SoFar;
use crate::clinic::context::ClinicContext;
use crate::clinic::head::Head;
use crate::clinic::plan::{AlarmsToClear, Issue, PlanEditor};

/// The sentences at the left, and at the right a full day of the next plan with the options for each exercise; the card at the bottom.
#[component]
pub fn Together(page: ReviewPage, draft: PlanDraft) -> impl IntoView {
    let context = ClinicContext::current();
    let code = page.code.clone();
    let name = page.name.as_ref().map_or(code.clone(), |name| format!("{code} {name}"));
    let editor = PlanEditor::new(context.app, context.keeper, code.clone(), draft);
    provide_context(editor);
    provide_context(Reasons::load(context, code.clone()));
    let words = editor.words();
    let whose = StoredValue::new(code.clone());
    let items = editor.suggestions.get_value();
    let items: Vec<_> = items.into_iter().filter(|one| editor.is_carried(one.item)).collect();
    let empty = items.is_empty().then(|| view! { <p class="empty">{words.text(Key::ReviewNothingDue)}</p> });
    let page = StoredValue::new(page);
    let to_plan = move |_| context.keeper.when_kept(move || context.plan(whose.get_value()));
    let items = items.into_iter().map(|suggestion| view! { <ItemOptions suggestion page/> }).collect_view();
    view! {
        <main class="screen together">
            <Head title=words.together_of(&name)>
                <button type="button" class="quiet" on:click=move |_| context.review(whose.get_value())>{words.text(Key::PlanReview)}</button>
                <button type="button" on:click=to_plan>{words.text(Key::TogetherAllOfPlan)}</button>
            </Head>
            <div class="both">
                <SoFar page/>
                <section class="stack" aria-labelledby="together-next">
                    <h2 id="together-next">{words.text(Key::TogetherNext)}</h2>
                    <FullDays/>
                    <AlarmsToClear/>
                    {empty}
                    <ul>{items}</ul>
                </section>
            </div>
        </main>
        <Issue code/>
    }
}
