//! Removing a patient for good.

use leptos::prelude::*;
use wire::cases::{Held, ShowCase};
use wire::clinic::{PatientCode, Remove, RemovePatientRequest};
use words::Key;

use crate::clinic::context::{ClinicContext, Page};
use crate::clinic::fields::{Text, Tick};
use crate::clinic::head::Head;

/// What is erased and what stays; the code has to be typed before the button can be pressed. Then what was done.
#[component]
pub fn RemovePatient(code: String) -> impl IntoView {
    let context = ClinicContext::current();
    let app = context.app;
    let words = app.words();
    let typed = RwSignal::new(String::new());
    let backups = RwSignal::new(true);
    let done = RwSignal::new(None::<String>);
    let whose = StoredValue::new(code);
    let confirmed = move || typed.with(|typed| typed.trim().eq_ignore_ascii_case(&whose.get_value()));
    let remove = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let (code, also_backups) = (whose.get_value(), backups.get_untracked());
        let asked = RemovePatientRequest { code: code.clone(), typed: typed.get_untracked(), also_backups };
        app.request::<Remove>(asked, move |_| {
            done.set(Some(if also_backups { words.patient_removed(&code) } else { words.patient_removed_here(&code) }));
        });
    };
    let keep = move |_| context.show(Page::Patients);
    // Without it, as of a damaged record, the sentence above says what is erased.
    let held = RwSignal::new(None::<Held>);
    app.query::<ShowCase>(PatientCode { code: whose.get_value() }, move |page| held.set(Some(page.held)));
    let erased = move || {
        held.get().map(|held| {
            let lines = words.held(&held).into_iter().map(|line| view! { <li>{line}</li> }).collect_view();
            view! { <p>{words.text(Key::PatientRemoveList)}</p><ul>{lines}</ul> }
        })
    };
    let form = move || {
        let code = whose.get_value();
        view! {
            <form class="sheet stack" on:submit=remove>
                <p>{words.patient_remove_what(&code)}</p>
                {erased}
                <p>{words.text(Key::PatientRemoveLaw)}</p>
                <Tick label=words.text(Key::PatientRemoveBackups) value=backups put=move |on| backups.set(on)
                    hint=words.text(Key::PatientRemoveBackupsHint)/>
                <Text label=words.patient_remove_type(&code) value=typed put=move |text| typed.set(text)/>
                <div class="row">
                    <button type="button" on:click=keep>{words.text(Key::PatientRemoveKeep)}</button>
                    <button type="submit" class="alarm" disabled=move || !confirmed() || app.busy.get()>
                        {words.text(Key::PatientRemove)}
                    </button>
                </div>
            </form>
        }
    };
    let after = move |said: String| {
        view! {
            <div class="sheet stack" role="status">
                <p>{said}</p>
                <button type="button" on:click=keep>{words.text(Key::GoOn)}</button>
            </div>
        }
    };
    view! {
        <main class="screen remove">
            <Head title=words.patient_remove_title(&whose.get_value())>""</Head>
            {move || match done.get() {
                Some(said) => after(said).into_any(),
                None => form().into_any(),
            }}
        </main>
    }
}
