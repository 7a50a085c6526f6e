//! How hard a new passphrase is to guess, said while it is typed.

use leptos::prelude::*;
use wire::clinic::{PassphraseStrength, ShowStrength, StrengthRequest};
use words::Key;

use crate::shared::AppContext;

/// A word for the estimate, and what would make the passphrase stronger. `clinic` is the name that is being given to the clinic.
#[component]
pub fn Strength(passphrase: RwSignal<String>, #[prop(optional, into)] clinic: Option<Signal<String>>) -> impl IntoView {
    let app = AppContext::current();
    let shown = RwSignal::new(None::<PassphraseStrength>);
    Effect::new(move || {
        let typed = passphrase.get();
        if typed.is_empty() {
            shown.set(None);
            return;
        }
        let asked = StrengthRequest { passphrase: typed.as_str().into(), clinic: clinic.map(|name| name.get()) };
        app.query::<ShowStrength>(asked, move |strength| {
            // Nothing is said about what was typed before.
            if passphrase.try_with_untracked(|now| *now == typed).unwrap_or(false) {
                shown.set(Some(strength));
            }
        });
    });
    let said = move || {
        shown.get().map(|strength| {
            let steps = match strength {
                PassphraseStrength::TooShort => 1,
                PassphraseStrength::Guessable => 2,
                PassphraseStrength::Good => 3,
                PassphraseStrength::Strong => 4,
            };
            let advice = (steps < 3).then(|| view! { <small>{app.text(Key::StrengthAdvice)}</small> });
            view! {
                <meter min="0" max="4" low="3" high="4" optimum="4" value=steps aria-hidden="true"></meter>
                <strong>{app.words().passphrase_strength(strength)}</strong>
                {advice}
            }
        })
    };
    view! { <p class="strength" role="status">{said}</p> }
}
