//! What is kept, where, for how long, and who can read it.

use leptos::prelude::*;
use wire::app::Role;
use words::Key;

use crate::shared::AppContext;

/// On the patient's side.
const OF_PATIENTS: [Key; 9] = [
    Key::PrivacyNoServer,
    Key::PrivacyStored,
    Key::PrivacyInTheClear,
    Key::PrivacySummary,
    Key::PrivacyCard,
    Key::PrivacyNotifications,
    Key::PrivacyLost,
    Key::PrivacyHowLong,
    Key::PrivacyYoungAndCarers,
];

/// On the clinic's side.
const OF_CLINICIANS: [Key; 5] = [
    Key::PrivacyNoServer,
    Key::PrivacyClinicStored,
    Key::PrivacyClinicCardFiles,
    Key::PrivacyClinicLost,
    Key::PrivacyClinicHowLong,
];

/// One fact a line.
#[component]
pub fn Privacy(role: Role) -> impl IntoView {
    let app = AppContext::current();
    let facts: &[Key] = match role {
        Role::Patient => &OF_PATIENTS,
        Role::Clinic => &OF_CLINICIANS,
    };
    let lines = facts.iter().map(|fact| view! { <li>{app.text(*fact)}</li> });
    view! { <ul class="lines">{lines.collect_view()}</ul> }
}
