//! The clinic's side: set-up or unlocking first, then one page at a time.

use leptos::prelude::*;
use wire::app::{self, Role};

use super::context::{ClinicContext, Page};
use super::issued::Issued;
use super::lock::Lock;
use super::patients::Patients;
use super::plan::Compose;
use super::review::Review;
use crate::pages::ShowInfoPage;
use crate::shared::{AppContext, top};

/// The clinic's side of the window.
#[component]
pub fn Clinic() -> impl IntoView {
    let app = AppContext::current();
    let context = ClinicContext::new(app);
    provide_context(context);
    let is_open = |lock: &app::LockState| matches!(lock, app::LockState::Open { .. });
    let open = Memo::new(move |_| app.state.with(|state| state.as_ref().is_some_and(|s| is_open(&s.lock))));
    let words = app.words_shown();
    Effect::new(move || {
        context.page.track();
        top::show();
    });
    let page = move || match context.page.get() {
        Page::Patients => view! { <Patients/> }.into_any(),
        Page::Review(page) => view! { <Review page=*page/> }.into_any(),
        Page::Plan(code, draft) => view! { <Compose code draft=*draft/> }.into_any(),
        Page::Info(page) => {
            view! { <ShowInfoPage page role=Role::Clinic back=move || context.show(Page::Patients)/> }.into_any()
        }
        Page::Issued(code, card) => view! { <Issued code card=*card/> }.into_any(),
    };
    view! {
        <div class="window clinic">
            {move || {
                // Read and not only tracked, because a memo that nobody has read does not react.
            words.get();
                if open.get() { page.into_any() } else { view! { <Lock/> }.into_any() }
            }}
        </div>
    }
}
