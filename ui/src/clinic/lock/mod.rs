//! The door of the clinic's sealed store.

mod set_up;
mod unlock;

use leptos::prelude::*;

pub use set_up::SetUp;
use unlock::Unlock;

/// The passphrase opens the store.
#[component]
pub fn Lock() -> impl IntoView {
    view! { <main class="screen door"><Unlock/></main> }
}
