//! Which data are stored, where, for how long, and who can read them.

use leptos::prelude::*;
use wire::app::Role;
use wire::patient::{RecordPage, SealRequest, ShowRecord};
use words::Key;

use crate::shared::AppContext;
use crate::shared::summary_bytes::ShownBytes;

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
const OF_CLINICIANS: [Key; 6] = [
    Key::PrivacyNoServer,
    Key::PrivacyClinicStored,
    Key::PrivacyClinicCardFiles,
    Key::PrivacyClinicServer,
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
    view! {
        <ul class="lines">{lines.collect_view()}</ul>
        {(role == Role::Patient).then(|| view! { <WhatLeaves/> })}
    }
}

/// The bytes of the summary of each plan as it would be made now. Empty without a plan of the person's own.
#[component]
fn WhatLeaves() -> impl IntoView {
    let app = AppContext::current();
    let plans = RwSignal::new(Vec::<RecordPage>::new());
    let own = app.state.with_untracked(|state| state.as_ref().is_some_and(|state| state.has_plan && !state.sample));
    if own {
        app.query::<ShowRecord>((), move |pages| plans.set(pages));
    }
    let of_plans = move || {
        let several = plans.with(|plans| plans.len() > 1);
        let one = |page: RecordPage| {
            let (plan, (from, until)) = (page.plan.header.id, page.offer);
            let name = several.then(|| view! { <h3>{app.words().privacy_bytes_plan(&page.plan.header.clinic)}</h3> });
            view! { {name}<ShownBytes asked=move || SealRequest { plan, from: Some(from), until, note: None }/> }
        };
        plans.get().into_iter().map(one).collect_view()
    };
    view! {
        <Show when=move || plans.with(|plans| !plans.is_empty())>
            <section class="stack">
                <h2>{app.text(Key::PrivacyBytesTitle)}</h2>
                <p>{app.text(Key::PrivacyBytesWhat)}</p>
                {of_plans}
            </section>
        </Show>
    }
}
