//! One of the pages, with the way back.

use leptos::prelude::*;
use strum::VariantArray;
use wire::app::Role;
use words::Key;

use super::about::About;
use super::help::Help;
use super::privacy::Privacy;
use crate::shared::{AppContext, Fault};

/// A page that explains the program, in the order in which they are offered.
#[derive(Clone, Copy, PartialEq, Eq, VariantArray)]
pub enum InfoPage {
    /// Questions and answers.
    Help,
    /// Which data are stored, where, and who can read them.
    Privacy,
    /// Version and licences.
    About,
}

impl InfoPage {
    /// Its title.
    pub fn title(self) -> Key {
        match self {
            InfoPage::Help => Key::HelpTitle,
            InfoPage::Privacy => Key::PrivacyTitle,
            InfoPage::About => Key::AboutTitle,
        }
    }
}

/// The page for this `role`; `back` leaves it.
#[component]
pub fn ShowInfoPage(page: InfoPage, role: Role, back: impl Fn() + Copy + Send + 'static) -> impl IntoView {
    let app = AppContext::current();
    let inside = match page {
        InfoPage::Help => view! { <Help role/> }.into_any(),
        InfoPage::Privacy => view! { <Privacy role/> }.into_any(),
        InfoPage::About => view! { <About/> }.into_any(),
    };
    view! {
        <main class="screen">
            <div class="column stack-5 info-page">
                <h1>{app.text(page.title())}</h1>
                <Fault/>
                {inside}
                <button type="button" data-back="" on:click=move |_| back()>{app.text(Key::Back)}</button>
            </div>
        </main>
    }
}
