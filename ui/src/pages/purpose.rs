//! What the program is meant for and what it is not.

use leptos::prelude::*;
use wire::app::Role;
use words::Key;

use crate::shared::AppContext;

/// For everybody; for patients and their carers; for clinicians.
const FOR_ALL: [Key; 3] = [Key::WelcomeNotDevice, Key::WelcomeNotEmergency, Key::PrivacyNoServer];
const FOR_PATIENTS: [Key; 2] = [Key::WelcomeYoung, Key::WelcomeCarer];
const FOR_CLINICIANS: [Key; 3] = [Key::WelcomeClinic, Key::WelcomeClinicReading, Key::PrivacyNoServer];

/// What the program does and for whom, then what to know before using it, for this `role`; `None` before a side is chosen.
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
