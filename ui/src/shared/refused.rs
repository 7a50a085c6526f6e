//! The window if the data folder cannot be opened.

use leptos::prelude::*;
use wire::Failure;
use words::Key;

use super::AppContext;
use super::restore::Restore;
use super::salvage::SaveWhatCanBeRead;

/// What is wrong with the data folder, and what to do; empty until the shell has answered. Of a damaged one, a backup can be restored, and
/// what can be read of it can be saved.
#[component]
pub fn Refused() -> impl IntoView {
    let app = AppContext::current();
    // What was wrong at first stays in sight: a backup that cannot be restored is another failure, which is shown below it.
    let first = RwSignal::new(None::<Failure>);
    Effect::new(move || {
        if let (None, Some(failure)) = (first.get_untracked(), app.fault.get()) {
            first.set(Some(failure));
        }
    });
    let said = move || {
        first.get().map(|failure| {
            let refusal = app.words().failure(&failure);
            view! { <h1>{refusal.fault}</h1><p>{refusal.advice}</p> }
        })
    };
    let later = move || {
        app.fault.get().filter(|fault| first.get().is_some_and(|first| first != *fault)).map(|failure| {
            let refusal = app.words().failure(&failure);
            view! { <div class="fault stack-2"><p><strong>{refusal.fault}</strong></p><p>{refusal.advice}</p></div> }
        })
    };
    let damaged = move || first.with(|first| matches!(first, Some(Failure::HomeDamaged { .. })));
    view! {
        <main class="screen">
            <div class="column stack-5">
                <div class="stack-2" role="alert">{said}</div>
                <div role="alert">{later}</div>
                <Show when=damaged>
                    <section class="stack">
                        <h2>{app.text(Key::BackupRestore)}</h2>
                        <Restore/>
                    </section>
                    <SaveWhatCanBeRead/>
                </Show>
            </div>
        </main>
    }
}
