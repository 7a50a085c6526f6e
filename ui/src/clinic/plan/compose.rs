//! The composing page.

use leptos::prelude::*;
use wire::clinic::PlanDraft;
use words::Key;

use super::activities::Activities;
use super::aftercare::AftercareLines;
use super::alarms::AlarmsToClear;
use super::balance::BalanceAtHome;
use super::catalogue::Catalogue;
use super::complaints::Complaints;
use super::issue::Issue;
use super::items::Items;
use super::sheet::Sheet;
use super::visit::NextVisit;
use crate::clinic::head::Head;
use crate::clinic::room::Room;

/// The next plan of the patient under `code`.
#[component]
pub fn Compose(code: String, draft: PlanDraft) -> impl IntoView {
    let room = Room::here();
    let sheet = Sheet::new(room.house, code.clone(), draft);
    provide_context(sheet);
    let words = sheet.words();
    let revision = sheet.replaces.map_or(1, |last| last.saturating_add(1));
    let title = words.fill(Key::PlanOf, &[("revision", &revision), ("who", &code)]);
    let carried = sheet.replaces.map(|last| words.fill(Key::PlanCarried, &[("revision", &last)]));
    let to_review = code.clone();
    let review = sheet.replaces.map(|_| {
        view! {
            <button type="button" on:click=move |_| room.review(to_review.clone())>{words.text(Key::PlanReview)}</button>
        }
    });
    view! {
        <main class="screen plan">
            <Head title line=carried.unwrap_or_default()>{review}</Head>
            <div class="table">
                <Catalogue/>
                <div class="composing">
                    <AlarmsToClear/>
                    <Items/>
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
