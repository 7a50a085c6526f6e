//! The first page at the first start.

use leptos::prelude::*;
use words::Key;

use super::purpose::Purpose;
use crate::shared::language::LanguageChoice;
use crate::shared::line::TimeIsSet;
use crate::shared::{AppContext, Fault, restart};

/// The page; `go_on` leads to the choice of a side.
#[component]
pub fn Welcome(go_on: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let app = AppContext::current();
    view! {
        <div class="window first-start">
            <main class="screen">
                <div class="column stack-5">
                    <div class="titled">
                        <Plumb/>
                        <h1>{app.text(Key::WelcomeTitle)}</h1>
                    </div>
                    {restart::is_new().then(|| view! { <p role="status"><strong>{app.text(Key::Erased)}</strong></p> })}
                    <Fault/>
                    <Purpose role=None/>
                    <button type="button" class="main" on:click=move |_| go_on()>{app.text(Key::WelcomeUnderstood)}</button>
                    <LanguageChoice/>
                    <TimeIsSet/>
                </div>
            </main>
        </div>
    }
}

/// The program's symbol: a plumb line.
#[component]
fn Plumb() -> impl IntoView {
    view! {
        <div class="brand" aria-hidden="true">
            <svg viewBox="0 0 24 120">
                <path class="string" d="M12 0V86"/>
                <path class="bob" d="M12 84L19 98L12 120L5 98Z"/>
            </svg>
        </div>
    }
}
