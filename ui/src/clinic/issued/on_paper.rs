//! The plan on paper: a hand-out, and a diary for whoever has no device.

use leptos::prelude::*;
use wire::visiting::{Print, PrintRequest, Printed};
use words::Key;

use crate::clinic::fields::Choice;
use crate::shared::AppContext;
use crate::shared::saved::SavedFiles;

/// The size of the paper, a button for each of the two, and where the file was saved.
#[component]
pub fn OnPaper(code: String, revision: u16) -> impl IntoView {
    let app = AppContext::current();
    let words = app.words();
    let sheet = RwSignal::new("a4".to_owned());
    let saved = RwSignal::new(Vec::new());
    let code = StoredValue::new(code);
    let print = move |what: Printed| {
        let letter = sheet.with_untracked(|sheet| sheet == "letter");
        let request = PrintRequest { code: code.get_value(), what, revision: Some(revision), letter };
        app.request::<Print>(request, move |file| saved.set(vec![file]));
    };
    let sheets = [("a4", Key::PaperA4), ("letter", Key::PaperLetter)];
    let options = sheets.map(|(key, text)| (key.to_owned(), words.text(text).to_owned())).to_vec();
    view! {
        <div class="stack">
            <h2>{words.text(Key::OnPaper)}</h2>
            <p class="small soft">{words.text(Key::OnPaperWhat)}</p>
            <Choice label=words.text(Key::PaperSize) options value=sheet choose=move |one| sheet.set(one)/>
            <div class="options">
                <button type="button" disabled=app.busy on:click=move |_| print(Printed::HandOut)>{words.text(Key::SaveHandOut)}</button>
                <button type="button" disabled=app.busy on:click=move |_| print(Printed::Diary)>{words.text(Key::SaveDiary)}</button>
            </div>
            <SavedFiles files=saved/>
        </div>
    }
}
