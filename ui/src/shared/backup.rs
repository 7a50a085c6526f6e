//! Backups: when the last one was made, saving one now, and restoring one.

use leptos::prelude::*;
use wire::app::{Backups, SaveBackup, ShowBackups};
use words::Key;

use super::AppContext;
use super::restore::Restore;

/// The section about backups, for both sides.
#[component]
pub fn Backup() -> impl IntoView {
    let app = AppContext::current();
    let words = app.words();
    let shown = RwSignal::new(None::<Backups>);
    let path = RwSignal::new(None::<String>);
    app.query::<ShowBackups>((), move |backups| shown.set(Some(backups)));
    let save = move |_| app.request::<SaveBackup>((), move |saved| path.set(Some(saved.path)));
    let known = move || {
        shown.get().map(|Backups { last, folder, readable }| {
            let what = if readable { Key::BackupWhatPatient } else { Key::BackupWhatClinic };
            let last = match last {
                Some(day) => words.backup_last(&words.date(day), &folder),
                None => words.text(Key::BackupNone).to_owned(),
            };
            view! {
                <p>{words.text(what)}</p>
                <p class="path soft">{last}</p>
            }
        })
    };
    let restoring = RwSignal::new(false);
    let unfold = move |_| restoring.update(|open| *open = !*open);
    let saved = move || path.get().map(|path| view! { <p class="path">{words.backup_saved(&path)}</p> });
    view! {
        <section class="stack">
            <h2>{words.text(Key::BackupTitle)}</h2>
            {known}
            <button type="button" disabled=app.busy on:click=save>{words.text(Key::BackupSave)}</button>
            <div role="status">{saved}</div>
            <button type="button" class="quiet" aria-expanded=move || restoring.get().to_string() on:click=unfold>
                {words.text(Key::BackupRestore)}
            </button>
            <Show when=move || restoring.get()><Restore/></Show>
        </section>
    }
}
