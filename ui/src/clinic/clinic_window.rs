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
use crate::shared::{AppContext, screen, top};

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
        Page::Patients => screen(|| view! { <Patients/> }),
        Page::Review(page) => screen(move || view! { <Review page=*page/> }),
        Page::Plan(code, draft) => screen(move || view! { <Compose code draft=*draft/> }),
        Page::Info(page) => {
            screen(move || view! { <ShowInfoPage page role=Role::Clinic back=move || context.show(Page::Patients)/> })
        }
        Page::Issued(code, card) => screen(move || view! { <Issued code card=*card/> }),
    };
    view! {
        <div class="window clinic">
            {move || {
                // Read and not only tracked, because a memo that nobody has read does not react.
            words.get();
                if open.get() { page.into_any() } else { screen(|| view! { <Lock/> }) }
            }}
        </div>
    }
}
