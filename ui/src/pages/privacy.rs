//! Which data are stored, where, for how long, and who can read them.

use leptos::prelude::*;
use wire::app::Role;
use words::Key;

use crate::shared::AppContext;

/// The texts for the patient's side.
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

/// The texts for the clinic's side.
const OF_CLINICIANS: [Key; 5] = [
    Key::PrivacyNoServer,
    Key::PrivacyClinicStored,
    Key::PrivacyClinicCardFiles,
    Key::PrivacyClinicLost,
    Key::PrivacyClinicHowLong,
];

/// One fact per line.
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
