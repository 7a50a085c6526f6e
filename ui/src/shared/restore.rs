//! Putting a backup in the place of what is saved here.

use leptos::task::spawn_local;
use leptos::{html, prelude::*};
use web_sys::HtmlInputElement;
use wire::app::{BackupSource, RestoreBackup, Restored, ShowAppState, ShowBackupDays};
use words::Key;

use super::show_file::ShowFile;
use super::{AppContext, file, restart};

/// Largest backup that the window reads, in bytes: all of it is in memory at once. The terminal restores larger ones.
const MAX_BYTES: u64 = 64 * 1024 * 1024;

/// A backup that was chosen, and how it is called.
#[derive(Clone)]
struct Chosen {
    source: BackupSource,
    name: String,
}

/// The automatic backups, a field for a file, the question before anything is replaced, and then what was done.
#[component]
pub fn Restore() -> impl IntoView {
    let app = AppContext::current();
    let days = RwSignal::new(Vec::new());
    let chosen = RwSignal::new(None::<Chosen>);
    let done = RwSignal::new(None::<Restored>);
    app.query::<ShowBackupDays>((), move |all| days.set(all));
    let of_days = move || {
        let all = days.get().into_iter().map(|day| {
            let name = app.words().backup_of_day(&app.words().date(day));
            let choice = Chosen { source: BackupSource::Day(day), name: name.clone() };
            let choose = move |_| chosen.set(Some(choice.clone()));
            view! { <button type="button" disabled=app.busy on:click=choose>{name}</button> }
        });
        all.collect_view()
    };
    let read = move |field: HtmlInputElement| {
        let Some(one) = file::chosen(&field).into_iter().next() else { return };
        spawn_local(async move {
            match file::base64_of_at_most(&one, MAX_BYTES).await {
                Ok(bytes) => {
                    let name = one.name();
                    chosen.set(Some(Chosen { source: BackupSource::File { name: name.clone(), bytes }, name }));
                }
                Err(failure) => app.fault.set(Some(failure)),
            }
            // Allows the same file to be chosen again.
            field.set_value("");
        });
    };
    let choices = move || {
        view! {
            <div class="choices">{of_days}</div>
            <label class="file">{app.text(Key::BackupChoose)}
                <input type="file" accept=".db" on:change:target=move |event| read(event.target())/></label>
        }
    };
    move || match (done.get(), chosen.get()) {
        (Some(restored), _) => view! { <Done restored/> }.into_any(),
        (None, Some(choice)) => view! { <Ask choice chosen done/> }.into_any(),
        (None, None) => choices().into_any(),
    }
}

/// The question before anything is replaced. Leaving everything as it is comes first.
#[component]
fn Ask(choice: Chosen, chosen: RwSignal<Option<Chosen>>, done: RwSignal<Option<Restored>>) -> impl IntoView {
    let app = AppContext::current();
    let words = app.words();
    let asked = words.backup_restore_ask(&choice.name);
    let source = StoredValue::new(choice.source);
    let running = RwSignal::new(false);
    let restore = move |_| {
        running.set(true);
        app.fault.set(None);
        app.query_or_none::<RestoreBackup>(source.get_value(), move |restored| match restored {
            Some(restored) => done.set(Some(restored)),
            None => {
                running.set(false);
                chosen.set(None);
                // A clinic's store that was unlocked is locked now.
                app.query::<ShowAppState>((), move |state| app.state.set(Some(state)));
            }
        });
    };
    let (first, all) = (NodeRef::<html::Button>::new(), NodeRef::<html::Div>::new());
    Effect::new(move || {
        if let Some(button) = first.get() {
            // If the page was left meanwhile, it cannot take the focus.
            let _ = button.focus();
        }
        // Both answers must be visible, even in a low window.
        if let Some(all) = all.get() {
            all.scroll_into_view_with_bool(false);
        }
    });
    view! {
        <div class="sure stack" node_ref=all role="group" aria-labelledby="restore-ask">
            <p id="restore-ask"><strong>{asked}</strong></p>
            <p>{words.text(Key::BackupRestoreWhat)}</p>
            <button type="button" node_ref=first disabled=running on:click=move |_| chosen.set(None)>{words.text(Key::BackupRestoreKeep)}</button>
            <button type="button" class="alarm" disabled=running on:click=restore>{words.text(Key::BackupRestoreSure)}</button>
        </div>
    }
}

/// Where the data are kept that were here before, and a button that shows the restored ones.
#[component]
fn Done(restored: Restored) -> impl IntoView {
    let words = AppContext::current().words();
    let said = match &restored.before {
        Some(before) => words.backup_restored_over(&words.name_and_place(before)),
        None => words.text(Key::BackupRestored).to_owned(),
    };
    view! {
        <div class="sheet stack" role="status">
            <p class="files">{said}</p>
            {restored.before.map(|file| view! { <ShowFile file/> })}
            <button type="button" class="main" on:click=move |_| restart::reload()>{words.text(Key::GoOn)}</button>
        </div>
    }
}
