//! The plan editor's page.

use leptos::prelude::*;
use wire::clinic::PlanDraft;
use words::Key;

use super::activities::Activities;
use super::aftercare::AftercareLines;
use super::alarms::AlarmsToClear;
use super::balance::BalanceAtHome;
use super::catalogue::{Catalogue, Finder};
use super::complaints::Complaints;
use super::editor::PlanEditor;
use super::facts::Facts;
use super::issue::Issue;
use super::items::Items;
use super::left::Left;
use super::sets::Sets;
use super::visit::NextVisit;
use crate::clinic::context::ClinicContext;
use crate::clinic::head::Head;

/// The next plan of the patient with `code`.
#[component]
pub fn Compose(code: String, draft: PlanDraft) -> impl IntoView {
    let context = ClinicContext::current();
    let left = draft.left_on.map(|day| (code.clone(), day));
    let editor = PlanEditor::new(context.app, context.keeper, code.clone(), draft);
    provide_context(editor);
    let finder = Finder::new(editor);
    provide_context(finder);
    let words = editor.words();
    let revision = editor.revision;
    let title = words.plan_of(revision, &code);
    let carried = editor.replaces.map(|last| words.plan_based_on(last));
    let (to_review, of_sets) = (code.clone(), code.clone());
    let review = editor.replaces.map(|_| {
        view! {
            <button type="button" on:click=move |_| context.review(to_review.clone())>{words.text(Key::PlanReview)}</button>
        }
    });
    view! {
        <main class="screen plan">
            <Head title line=carried.unwrap_or_default()>{review}</Head>
            {left.map(|(code, day)| view! { <Left code day/> })}
            <div class="table" class:all-figures=finder.figures>
                <Catalogue/>
                <div class="composing">
                    <AlarmsToClear/>
                    <Facts/>
                    <Items/>
                    <Sets code=of_sets/>
                    <BalanceAtHome/>
                    <Complaints/>
                    <Activities/>
                    <AftercareLines/>
                    <NextVisit/>
                </div>
            </div>
        </main>
        <Issue code/>
    }
}
