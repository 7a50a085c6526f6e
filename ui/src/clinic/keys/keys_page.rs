//! Everything about the passphrase, the lock and the keys, on one page.

use leptos::prelude::*;
use words::Key;

use super::change::ChangePassphrase;
use super::clinicians::Clinicians;
use super::identity::ShowIdentity;
use super::idle::IdleChoice;
use super::renew::RenewKeys;
use super::save::SaveKeys;
use crate::clinic::context::ClinicContext;
use crate::clinic::head::Head;

/// The lock's time, another passphrase, the clinicians, new keys, saved keys, and the secret key for other programs.
#[component]
pub fn Keys() -> impl IntoView {
    let words = ClinicContext::current().app.words();
    view! {
        <main class="screen keys">
            <Head title=words.text(Key::KeysTitle).to_owned()>""</Head>
            <div class="two">
                <div class="stack-8"><IdleChoice/><ChangePassphrase/><Clinicians/></div>
                <div class="stack-8"><SaveKeys/><RenewKeys/><ShowIdentity/></div>
            </div>
        </main>
    }
}
