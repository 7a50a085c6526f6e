//! What the program is for and what it is not: the first page of a first start.

use leptos::prelude::*;
use wire::app::Role;
use words::Key;

use crate::shared::language::LanguageChoice;
use crate::shared::line::TimeIsSet;
use crate::shared::{AppContext, Fault, restart};

/// For everybody; for patients and their carers; for clinicians.
const FOR_ALL: [Key; 3] = [Key::WelcomeNotDevice, Key::WelcomeNotEmergency, Key::PrivacyNoServer];
const FOR_PATIENTS: [Key; 2] = [Key::WelcomeYoung, Key::WelcomeCarer];
const FOR_CLINICIANS: [Key; 3] = [Key::WelcomeClinic, Key::WelcomeClinicReading, Key::PrivacyNoServer];

/// What it does and for whom, then what to know before it is used, as `role` needs it; `None` before the side is chosen.
#[component]
pub fn Purpose(role: Option<Role>) -> impl IntoView {
    let app = AppContext::current();
    let facts = match role {
        Some(Role::Clinic) => FOR_CLINICIANS.to_vec(),
        _ => [&FOR_ALL[..], &FOR_PATIENTS[..]].concat(),
    };
    let line = |fact| match fact {
        Key::WelcomeNotEmergency => view! { <li><strong>{app.text(fact)}</strong></li> }.into_any(),
        _ => view! { <li>{app.text(fact)}</li> }.into_any(),
    };
    let lines = facts.into_iter().map(line);
    let what = (role != Some(Role::Clinic)).then(|| view! { <p>{app.text(Key::WelcomeWhat)}</p> });
    view! { {what}<p>{app.text(Key::WelcomeFor)}</p><ul class="lines">{lines.collect_view()}</ul> }
}

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

/// The program's sign: a plumb line.
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
