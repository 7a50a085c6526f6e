//! A patient's visit today.

use leptos::prelude::*;
use wire::visiting::VisitPage;
use words::Key;

use super::change::Change;
use super::complaint::Complaint;
use super::context::VisitContext;
use super::measure::Measures;
use super::not_followed::NotFollowed;
use super::note::Note;
use super::noted::Noted;
use super::screening::Screened;
use crate::clinic::context::ClinicContext;
use crate::clinic::head::Head;

/// The sections in the order of a visit, and beside them the screening and what was noted. On a desk's screen all of it is in sight: at the
/// first visit, when the screening is open and the first column short, what was noted stands below that column.
#[component]
pub fn Visit(page: VisitPage) -> impl IntoView {
    let clinic = ClinicContext::current();
    let words = clinic.app.words();
    let title = page.name.as_ref().map_or(page.code.clone(), |name| format!("{} {name}", page.code));
    let line = words.visit_of(&words.date(page.today));
    let code = StoredValue::new(page.code.clone());
    let context = VisitContext::new(clinic, page);
    provide_context(context);
    let has_review = Memo::new(move |_| context.review.with(|page| page.as_ref().is_some_and(|page| page.plan.is_some())));
    // At the very first visit there is no last time.
    let not_first = Memo::new(move |_| {
        has_review.get() || context.page.with(|page| page.visits.iter().any(|visit| visit.day < page.today))
    });
    let next = move || words.text(if has_review.get() { Key::PlanNext } else { Key::PlanFirst });
    let correcting = move || {
        context.correcting.get().map(|_| view! {
            <p class="note">{words.text(Key::VisitCorrecting)}" "
                <button type="button" class="quiet" on:click=move |_| context.correcting.set(None)>{words.text(Key::Cancel)}</button></p>
        })
    };
    view! {
        <main class="screen visit-page">
            <Head title line>
                <Show when=move || has_review.get()>
                    <button type="button" class="quiet" on:click=move |_| clinic.review(code.get_value())>{words.text(Key::PlanReview)}</button>
                </Show>
                <button type="button" class="filled" on:click=move |_| clinic.plan(code.get_value())>{next}</button>
            </Head>
            <div role="status">{correcting}</div>
            <div class="two" class:first-visit=move || !not_first.get()>
                <div class="sections">
                    <div><Complaint/><Show when=move || not_first.get()><Change/></Show></div>
                    <div><Measures/><NotFollowed/><Note/></div>
                </div>
                <div class="noted-column"><Screened/><Noted/></div>
            </div>
        </main>
    }
}
