//! The window's outermost component: which side of the program it shows.

use leptos::prelude::*;
use wire::app::{Role, ShowAppState};

use crate::clinic::{Clinic, SetUp};
use crate::pages::Welcome;
use crate::patient::Patient;
use crate::shared::{AppContext, Refused, focus, screen};
use crate::start::ChooseSide;

/// The whole window.
#[component]
pub fn App() -> impl IntoView {
    let app = AppContext::new();
    provide_context(app);
    focus::keep();
    app.query::<ShowAppState>((), move |state| app.state.set(Some(state)));
    Effect::new(move || {
        let code = app.words().locale.tag();
        if let Some(page) = document().document_element() {
            // Only an invalid attribute name would be refused.
            let _ = page.set_attribute("lang", code);
        }
    });
    // What the program is not meant for must be read before a side is chosen; until then it is shown at every start.
    let welcomed = RwSignal::new(false);
    let prescribes = RwSignal::new(false);
    let words = app.words_shown();
    let side = Memo::new(move |_| app.state.with(|state| state.as_ref().map(|s| s.role)));
    move || match side.get() {
        None => screen(|| view! { <Refused/> }),
        Some(None) => {
            // Read and not only tracked, because a memo that nobody has read does not react.
            words.get();
            if !welcomed.get() {
                screen(move || view! { <Welcome go_on=move || welcomed.set(true)/> })
            } else if prescribes.get() {
                screen(move || view! { <SetUp back=move || prescribes.set(false)/> })
            } else {
                screen(
                    move || view! { <ChooseSide prescribe=move || prescribes.set(true) back=move || welcomed.set(false)/> },
                )
            }
        }
        Some(Some(Role::Patient)) => screen(|| view! { <Patient/> }),
        Some(Some(Role::Clinic)) => screen(|| view! { <Clinic/> }),
    }
}
