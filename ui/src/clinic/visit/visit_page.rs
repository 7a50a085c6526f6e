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
use crate::clinic::width::{THREE_COLUMNS, window_width};

/// The sections in the order of a visit, and beside them what was noted. On a desk's screen all of it is in sight in three columns, the third
/// with the screening; at the first visit, when that is unfolded and the first column short, what was noted stands below the first column. On
/// smaller screens the screening comes before the note.
#[component]
pub fn Visit(page: VisitPage) -> impl IntoView {
    let clinic = ClinicContext::current();
    let words = clinic.app.words();
    let title = page.name.as_ref().map_or(page.code.clone(), |name| format!("{} {name}", page.code));
    let line = words.visit_of(&words.date(page.today));
    let code = StoredValue::new(page.code.clone());
    let context = VisitContext::new(clinic, page);
    provide_context(context);
    let has_plan = Memo::new(move |_| context.review.with(|page| page.as_ref().is_some_and(|page| page.plan.is_some())));
    // At the very first visit there is no last time.
    let not_first = Memo::new(move |_| {
        has_plan.get() || context.page.with(|page| page.visits.iter().any(|visit| visit.day < page.today))
    });
    let first = Memo::new(move |_| !not_first.get());
    let width = window_width();
    let is_wide = Memo::new(move |_| width.get() >= THREE_COLUMNS);
    // Somebody who was treated has something to report, also without a plan.
    let has_record = Memo::new(move |_| has_plan.get() || context.page.with(|page| !page.visits.is_empty()));
    let next = move || words.text(if has_plan.get() { Key::PlanNext } else { Key::PlanFirst });
    let correcting = move || {
        context.correcting.get().map(|_| view! {
            <p class="note">{words.text(Key::VisitCorrecting)}" "
                <button type="button" class="quiet" on:click=move |_| context.correcting.set(None)>{words.text(Key::Cancel)}</button></p>
        })
    };
    view! {
        <main class="screen visit-page">
            <Head title line>
                <Show when=move || has_record.get()>
                    <button type="button" class="quiet" on:click=move |_| clinic.review(code.get_value())>{words.text(Key::PlanReview)}</button>
                </Show>
                <button type="button" class="filled" on:click=move |_| clinic.plan(code.get_value())>{next}</button>
            </Head>
            <div role="status">{correcting}</div>
            <div class="two" class:first-visit=first>
                <div class="sections">
                    <div><Complaint/><Show when=move || not_first.get()><Change/></Show></div>
                    <div>
                        <Measures/><NotFollowed/>
                        <Show when=move || !is_wide.get()><Screened first/></Show>
                        <Note/>
                    </div>
                </div>
                <div class="noted-column"><Show when=move || is_wide.get()><Screened first/></Show><Noted/></div>
            </div>
        </main>
    }
}
