//! Files that were saved: what they are called, where they lie, and a button that shows them there.

use leptos::prelude::*;
use wire::saved::SavedFile;

use super::AppContext;
use super::show_file::ShowFile;

/// What was saved just now, in a sentence, and the button; empty before.
#[component]
pub fn SavedFiles(
    #[prop(into)] files: Signal<Vec<SavedFile>>,
    /// Files that are called by their folder alone, because they are many.
    #[prop(optional)]
    folder: bool,
) -> impl IntoView {
    let words = AppContext::current().words();
    let told = move || files.with(|files| if folder { words.saved_folder_of(files) } else { words.saved_as(files) });
    let first = Memo::new(move |_| files.with(|files| files.first().cloned()));
    let inside = move || first.get().map(|file| view! { <p class="files">{told}</p><ShowFile file/> });
    view! { <div class="saved stack-2" role="status">{inside}</div> }
}
