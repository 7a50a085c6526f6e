//! Setting up and unlocking the clinic's encrypted store.

mod lock_button;
mod saved_keys;
mod set_up;
mod unlock;

use leptos::prelude::*;

pub use lock_button::LockButton;
pub use set_up::SetUp;
use unlock::Unlock;

/// Shows the page that asks for the passphrase.
#[component]
pub fn Lock() -> impl IntoView {
    view! { <main class="screen door"><Unlock/></main> }
}
