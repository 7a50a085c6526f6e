//! The clinic's side: set-up or unlocking first, then one page at a time.

use leptos::prelude::*;
use wire::app::{LockState, Role, ShowAppState};
use wire::receiving::{FILES, FilesEvent};

use super::case::Case;
use super::context::{ClinicContext, Page};
use super::diary::Diary;
use super::issued::Issued;
use super::keys::Keys;
use super::lock::Lock;
use super::own::{Own, Write};
use super::patients::{Patients, RemovePatient};
use super::plan::Compose;
use super::review::Review;
use super::together::Together;
use super::visit::Visit;
use crate::events;
use crate::pages::ShowInfoPage;
use crate::shared::{AppContext, in_use, screen, top};

/// The clinic's side of the window.
#[component]
pub fn Clinic() -> impl IntoView {
    let app = AppContext::current();
    let context = ClinicContext::new(app);
    provide_context(context);
    let open = Memo::new(move |_| context.is_open());
    watch(context);
    let words = app.words_shown();
    Effect::new(move || {
        context.page.track();
        top::show();
    });
    let page = move || match context.page.get() {
        Page::Patients => screen(|| view! { <Patients/> }),
        Page::Review(page) => screen(move || view! { <Review page=*page/> }),
        Page::Plan(code, draft) => screen(move || view! { <Compose code draft=*draft/> }),
        Page::Together(both) => screen(move || {
            let (page, draft) = *both;
            view! { <Together page draft/> }
        }),
        Page::Visit(page) => screen(move || view! { <Visit page=*page/> }),
        Page::Diary(page) => screen(move || view! { <Diary page=*page/> }),
        Page::Case(page) => screen(move || view! { <Case page=*page/> }),
        Page::Info(page) => {
            screen(move || view! { <ShowInfoPage page role=Role::Clinic back=move || context.show(Page::Patients)/> })
        }
        Page::Issued(code, card) => screen(move || view! { <Issued code card=*card/> }),
        Page::Keys => screen(|| view! { <Keys/> }),
        Page::Own(said) => screen(move || view! { <Own said/> }),
        Page::Write(edited) => screen(move || view! { <Write edited=*edited/> }),
        Page::Remove(code) => screen(move || view! { <RemovePatient code/> }),
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

/// Locks when the shell says so and with Ctrl+L, and tells the shell while somebody uses the window.
fn watch(context: ClinicContext) {
    events::listen("locked", move |_: serde_json::Value| {
        context.app.query::<ShowAppState>((), move |state| {
            if matches!(state.lock, LockState::Locked { .. }) {
                context.locked(state);
            }
        });
    });
    events::listen(FILES, move |event: FilesEvent| context.receiving.files_over(event));
    let _ = in_use::watch(move || context.is_open(), move || context.lock());
}
