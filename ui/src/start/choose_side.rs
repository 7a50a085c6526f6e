//! The choice of the side. It is asked once.

use leptos::prelude::*;
use wire::app::{ChooseRole, Role, RoleRequest};
use words::Key;

use crate::shared::line::TimeIsSet;
use crate::shared::restore::Restore;
use crate::shared::{AppContext, Fault};

/// Two buttons, each with its meaning, and a plain warning about an employer's computer. `prescribe` opens the page for setting up a
/// clinic; until that is done, no side is chosen. `back` leads to the page about the program's purpose.
#[component]
pub fn ChooseSide(prescribe: impl Fn() + Copy + Send + 'static, back: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let app = AppContext::current();
    let choose = move |role| match role {
        Role::Clinic => {
            app.fault.set(None);
            prescribe();
        }
        Role::Patient => {
            app.request::<ChooseRole>(RoleRequest { role }, move |state| app.state.set(Some(state)));
        }
    };
    let restoring = RwSignal::new(false);
    let unfold = move |_| restoring.update(|open| *open = !*open);
    let side = move |id: &'static str, role, name, what| {
        view! {
            <section class="sheet stack">
                <button type="button" class="main" aria-describedby=id on:click=move |_| choose(role)>{app.text(name)}</button>
                <p id=id>{app.text(what)}</p>
            </section>
        }
    };
    view! {
        <div class="window first-start">
            <main class="screen">
                <div class="column stack-5">
                    <div>
                        <p class="soft">{app.text(Key::AppName)}</p>
                        <h1>{app.text(Key::ChooseRole)}</h1>
                        <p class="soft">{app.text(Key::RoleIsRemembered)}</p>
                    </div>
                    <Fault/>
                    {side("side-patient", Role::Patient, Key::RolePatient, Key::RolePatientWhat)}
                    {side("side-clinic", Role::Clinic, Key::RoleClinic, Key::RoleClinicWhat)}
                    <section class="stack-2">
                        <button type="button" class="quiet" aria-expanded=move || restoring.get().to_string() on:click=unfold>
                            {app.text(Key::BackupRestore)}
                        </button>
                        <Show when=move || restoring.get()><p>{app.text(Key::BackupRestoreNew)}</p><Restore/></Show>
                    </section>
                    <p class="small soft">{app.text(Key::EmployerCanRead)}</p>
                    <button type="button" class="quiet" on:click=move |_| back()>{app.text(Key::Back)}</button>
                    <TimeIsSet/>
                </div>
            </main>
        </div>
    }
}
