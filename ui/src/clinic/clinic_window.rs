//! The clinic's side: set-up or unlocking first, then one page at a time.

use leptos::ev;
use leptos::prelude::*;
use leptos::task::spawn_local;
use wire::app::{LockState, Role, ShowAppState};
use wire::clinic::InUse;

use super::context::{ClinicContext, Page};
use super::issued::Issued;
use super::keys::Keys;
use super::lock::Lock;
use super::patients::Patients;
use super::plan::Compose;
use super::review::Review;
use crate::pages::ShowInfoPage;
use crate::shared::{AppContext, clock, screen, top};
use crate::{events, invoke};

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
        Page::Info(page) => {
            screen(move || view! { <ShowInfoPage page role=Role::Clinic back=move || context.show(Page::Patients)/> })
        }
        Page::Issued(code, card) => screen(move || view! { <Issued code card=*card/> }),
        Page::Keys => screen(|| view! { <Keys/> }),
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

/// The shell is told at most once in this many milliseconds that somebody uses the window.
const TELL_MS: f64 = 1000.0;

/// Locks when the shell says so and with Ctrl+L, and tells the shell while somebody uses the window.
fn watch(context: ClinicContext) {
    events::listen("locked", move |_: serde_json::Value| {
        context.app.query::<ShowAppState>((), move |state| {
            if state.lock == LockState::Locked {
                context.locked(state);
            }
        });
    });
    let told = StoredValue::new(f64::NEG_INFINITY);
    let used = move || {
        let now = clock::steady_ms();
        if now - told.get_value() >= TELL_MS && untrack(|| context.is_open()) {
            told.set_value(now);
            // If the shell does not get it, the store only locks earlier.
            spawn_local(async { drop(invoke::call::<InUse>(&()).await) });
        }
    };
    let typed = window_event_listener(ev::keydown, move |event| {
        used();
        if event.ctrl_key() && !event.alt_key() && event.key().eq_ignore_ascii_case("l") {
            event.prevent_default();
            context.lock();
        }
    });
    let moved = window_event_listener(ev::pointermove, move |_| used());
    let pressed = window_event_listener(ev::pointerdown, move |_| used());
    let scrolled = window_event_listener(ev::wheel, move |_| used());
    on_cleanup(move || {
        typed.remove();
        moved.remove();
        pressed.remove();
        scrolled.remove();
    });
}
