//! The button that shows a saved file in its folder.

use leptos::prelude::*;
use wire::app::ShowInFolder;
use wire::saved::{SavedFile, SavedNumber, Shown};
use words::Key;

use super::AppContext;

/// The button "Show in folder" for a saved file. A phone has no such button. Where no file manager can be opened, the path is shown.
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
