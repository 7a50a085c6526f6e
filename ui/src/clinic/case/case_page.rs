//! The page about a patient's case.

use leptos::prelude::*;
use wire::cases::CasePage;
use words::Key;

use super::close::CloseOrReopen;
use super::letter::Letter;
use super::names::Names;
use super::plans::Plans;
use crate::clinic::context::{ClinicContext, Page};
use crate::clinic::head::Head;

/// The plans that were issued; beside them closing or reopening the case, the closing letter, code and name, and removing the patient.
#[component]
pub fn Case(page: CasePage) -> impl IntoView {
    let context = ClinicContext::current();
    let words = context.app.words();
    let (to_review, to_remove) = (page.code.clone(), page.code.clone());
    let line = page.name.clone().unwrap_or_default();
    view! {
        <main class="screen case">
            <Head title=words.case_of(&page.code) line>
                <button type="button" class="quiet" on:click=move |_| context.review(to_review.clone())>
                    {words.text(Key::PlanReview)}
                </button>
            </Head>
            <div class="two">
                <Plans code=page.code.clone() plans=page.plans issued_by=page.issued_by exercises=page.exercises/>
                <div class="stack-8">
                    <CloseOrReopen code=page.code.clone() closings=page.closings/>
                    <Letter code=page.code.clone()/>
                    <Names code=page.code.clone() name=page.name/>
                    <button type="button" class="quiet" on:click=move |_| context.show(Page::Remove(to_remove.clone()))>
                        {words.text(Key::PatientRemove)}
                    </button>
                </div>
            </div>
        </main>
    }
}
