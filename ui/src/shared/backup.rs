//! Backups: when the last one was made, saving one now, and restoring one.

use leptos::prelude::*;
use wire::app::{Backups, SaveBackup, ShowBackups};
use words::Key;

use super::AppContext;
use super::restore::Restore;
use super::saved::SavedFiles;
use super::show_file::ShowFile;

/// The section about backups, for both sides.
#[component]
pub fn Backup() -> impl IntoView {
    let app = AppContext::current();
    let words = app.words();
    let shown = RwSignal::new(None::<Backups>);
    let saved = RwSignal::new(Vec::new());
    app.query::<ShowBackups>((), move |backups| shown.set(Some(backups)));
    let save = move |_| app.request::<SaveBackup>((), move |file| saved.set(vec![file]));
    let known = move || {
        shown.get().map(|Backups { last, fault, readable }| {
            let what = if readable { Key::BackupWhatPatient } else { Key::BackupWhatClinic };
            let last = match last {
                Some((day, file)) => {
                    let said = words.backup_last(&words.date(day), &words.saved_place(&file.place));
                    view! { <div class="saved stack-2"><p class="files">{said}</p><ShowFile file/></div> }.into_any()
                }
                None => view! { <p class="soft">{words.text(Key::BackupNone)}</p> }.into_any(),
            };
            let fault = fault.map(|failure| {
                let refusal = words.failure(&failure);
                view! { <p class="warning">{[words.text(Key::BackupNotToday), &refusal.fault, &refusal.advice].join(" ")}</p> }
            });
            view! { <p>{words.text(what)}</p>{fault}{last} }
        })
    };
    let restoring = RwSignal::new(false);
    let unfold = move |_| restoring.update(|open| *open = !*open);
    view! {
        <section class="stack">
            <h2>{words.text(Key::BackupTitle)}</h2>
            {known}
            <button type="button" disabled=app.busy on:click=save>{words.text(Key::BackupSave)}</button>
            <SavedFiles files=saved/>
            <button type="button" class="quiet" aria-expanded=move || restoring.get().to_string() on:click=unfold>
                {words.text(Key::BackupRestore)}
            </button>
            <Show when=move || restoring.get()><Restore/></Show>
        </section>
    }
}
