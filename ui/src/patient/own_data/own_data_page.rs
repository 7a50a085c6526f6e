//! The page about the person's own data.

use leptos::prelude::*;
use wire::device::ShowDeviceNumber;
use words::Key;

use super::erase::Erase;
use super::save::Save;
use crate::pages::PageLinks;
use crate::patient::context::PatientContext;
use crate::patient::page::Page;
use crate::patient::screen_lock::ScreenLockChoice;
use crate::shared::Fault;
use crate::shared::backup::Backup;
use crate::shared::language::LanguageChoice;

/// The language; exporting and erasing all data; the pages that explain the program.
#[component]
pub fn OwnData() -> impl IntoView {
    let context = PatientContext::current();
    let text = move |key| context.app.text(key);
    view! {
        <main class="screen">
            <div class="column stack-8">
                <h1>{text(Key::MineTitle)}</h1>
                <Fault/>
                <LanguageChoice/>
                <Save/>
                <Backup/>
                <ScreenLockChoice/>
                <Erase/>
                <DeviceNumber/>
                <PageLinks open=move |page| context.open(Page::Info(page))/>
                <button type="button" class="quiet" data-back="" on:click=move |_| context.back()>{text(Key::Back)}</button>
            </div>
        </main>
    }
}

/// The number by which the clinic tells this device from the person's others; empty until it is known.
#[component]
fn DeviceNumber() -> impl IntoView {
    let context = PatientContext::current();
    let number = RwSignal::new(None);
    context.app.query::<ShowDeviceNumber>((), move |answer| number.set(answer));
    let said = move || number.get().map(|number| context.app.words().mine_number(&number.to_string()));
    view! { <Show when=move || number.with(Option::is_some)><p class="small soft">{said}</p></Show> }
}
