//! The letter at the end of a treatment.

use leptos::prelude::*;
use wire::cases::{LetterRequest, MAX_OWN_TEXT, SaveLetter};
use words::Key;

use crate::clinic::context::ClinicContext;
use crate::clinic::fields::{Area, Choice};
use crate::shared::saved::SavedFiles;

/// What the letter says, what the clinician adds, the size of the paper, and the button that saves it. Leaving the page discards what was
/// added; the letter keeps it.
#[component]
pub fn Letter(code: String) -> impl IntoView {
    let app = ClinicContext::current().app;
    let words = app.words();
    let (own, sheet, saved) = (RwSignal::new(String::new()), RwSignal::new("a4".to_owned()), RwSignal::new(Vec::new()));
    let paragraphs = move || own.with(|own| own.lines().map(|line| line.trim().to_owned()).collect::<Vec<_>>());
    let too_long = Memo::new(move |_| {
        let length: usize = paragraphs().iter().map(|line| line.chars().count()).sum();
        (length > MAX_OWN_TEXT).then(|| words.case_letter_too_long(length, MAX_OWN_TEXT))
    });
    let save = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let letter = sheet.with_untracked(|sheet| sheet == "letter");
        let asked = LetterRequest { code: code.clone(), lines: untrack(paragraphs), letter };
        app.request::<SaveLetter>(asked, move |file| saved.set(vec![file]));
    };
    let sheets = [("a4", Key::PaperA4), ("letter", Key::PaperLetter)];
    let options = sheets.map(|(key, text)| (key.to_owned(), words.text(text).to_owned())).to_vec();
    view! {
        <form class="sheet stack" on:submit=save>
            <h2>{words.text(Key::CaseLetter)}</h2>
            <p class="small soft">{words.text(Key::CaseLetterWhat)}</p>
            <Area label=words.text(Key::CaseLetterOwn) value=own put=move |text| own.set(text) left=|| () fault=too_long rows=3
                hint=words.case_letter_own_hint(MAX_OWN_TEXT)/>
            <Choice label=words.text(Key::PaperSize) options value=sheet choose=move |one| sheet.set(one)/>
            <button type="submit" disabled=move || app.busy.get() || too_long.with(Option::is_some)>
                {words.text(Key::CaseLetterSave)}
            </button>
            <SavedFiles files=saved/>
        </form>
    }
}
