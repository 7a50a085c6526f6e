//! The clinic's side: its door, and behind it one page at a time.

use leptos::prelude::*;
use wire::house;

use super::door::Door;
use super::issued::Issued;
use super::patients::Patients;
use super::plan::Compose;
use super::review::Review;
use super::room::{Page, Room};
use crate::shared::House;

/// The clinic's side of the window.
#[component]
pub fn Clinic() -> impl IntoView {
    let house = House::here();
    let room = Room::new(house);
    provide_context(room);
    let is_open = |door: &house::Door| matches!(door, house::Door::Open { .. });
    let open = Memo::new(move |_| house.situation.with(|situation| situation.as_ref().is_some_and(|s| is_open(&s.door))));
    let page = move || match room.page.get() {
        Page::Patients => view! { <Patients/> }.into_any(),
        Page::Review(page) => view! { <Review page=*page/> }.into_any(),
        Page::Plan(code, draft) => view! { <Compose code draft=*draft/> }.into_any(),
        Page::Issued(code, card) => view! { <Issued code card=*card/> }.into_any(),
    };
    view! {
        <div class="window clinic">
            {move || if open.get() { page.into_any() } else { view! { <Door/> }.into_any() }}
        </div>
    }
}
