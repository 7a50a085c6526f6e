//! Files that were saved: what they are called, where they lie, and a button that shows them there.

use leptos::prelude::*;
use wire::app::ShowInFolder;
use wire::saved::{SavedFile, SavedNumber, Shown};
use words::Key;

use super::AppContext;

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

/// A button that shows a saved file in its folder; on a phone nothing. If no program shows files, the path is told, to be copied.
#[component]
pub fn ShowFile(file: SavedFile) -> impl IntoView {
    let app = AppContext::current();
    let words = app.words();
    let shown = RwSignal::new(None::<Shown>);
    let show = move |number: u32| app.request::<ShowInFolder>(SavedNumber { number }, move |said| shown.set(Some(said)));
    // Several files may be told of on one page.
    let label = words.named_text(words.text(Key::SavedShow), &file.name);
    let button = file.number.map(|number| {
        view! {
            <button type="button" class="show-file" aria-label=label disabled=app.busy on:click=move |_| show(number)>
                {words.text(Key::SavedShow)}
            </button>
        }
    });
    let not_shown = move || match shown.get()? {
        Shown::InFolder => None,
        Shown::Gone => Some(view! { <p class="warning">{words.text(Key::SavedGone)}</p> }.into_any()),
        Shown::NoFileManager { path } => {
            Some(view! { <p>{words.text(Key::SavedNotShown)}</p><p class="copy-path">{path}</p> }.into_any())
        }
    };
    view! { {button}<div class="stack-1" role="status">{not_shown}</div> }
}
