//! Saving what can be read of a damaged data folder.

use leptos::prelude::*;
use wire::app::{Salvage, SalvageReport};
use words::Key;

use super::show_file::ShowFile;
use super::{AppContext, restart};

/// What it does, the button, and then what was saved and what is lost.
#[component]
pub fn SaveWhatCanBeRead() -> impl IntoView {
    let app = AppContext::current();
    let words = app.words();
    let report = RwSignal::new(None::<SalvageReport>);
    let salvage = move |_| app.request::<Salvage>((), move |done| report.set(Some(done)));
    let button = move || {
        view! {
            <p>{words.text(Key::SalvageWhat)}</p>
            <button type="button" disabled=app.busy on:click=salvage>{words.text(Key::SalvageTitle)}</button>
        }
    };
    let done = move |SalvageReport { kept, tables }: SalvageReport| {
        let lines = tables.iter().map(|table| {
            let line = words.salvaged(&table.name, table.saved, table.lost, table.is_whole);
            view! { <li>{line}</li> }
        });
        view! {
            <div class="sheet stack" role="status">
                <ul class="lines">{lines.collect_view()}</ul>
                <p class="files">{words.salvage_kept(&words.name_and_place(&kept))}</p>
                <ShowFile file=kept/>
                <button type="button" class="main" on:click=move |_| restart::reload()>{words.text(Key::GoOn)}</button>
            </div>
        }
    };
    view! {
        <section class="stack">
            <h2>{words.text(Key::SalvageTitle)}</h2>
            {move || match report.get() {
                Some(report) => done(report).into_any(),
                None => button().into_any(),
            }}
        </section>
    }
}
