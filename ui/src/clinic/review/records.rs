//! The review for the medical record, as a file, and the report for whoever treats the patient too.

use leptos::prelude::*;
use wire::visiting::{Print, PrintRequest, Printed, RecordForm, RecordRequest, SaveRecord};
use words::Key;

use super::context::ReviewContext;
use super::hand_over::HandOver;
use crate::clinic::fields::{Choice, Fold};
use crate::shared::AppContext;
use crate::shared::saved::SavedFiles;

/// What it is saved as.
#[derive(Clone, Copy)]
enum As {
    /// The report on paper, on US Letter or on A4.
    Report { letter: bool },
    /// A file for programs.
    Record(RecordForm),
}

/// What it is saved as, a button, and where it was saved. `open` says whether it is unfolded at the beginning.
#[component]
pub fn Records(code: String, open: bool) -> impl IntoView {
    let (app, words) = (AppContext::current(), ReviewContext::current().words);
    let forms = [
        ("report", As::Report { letter: false }, Key::RecordAsReport),
        ("report-letter", As::Report { letter: true }, Key::RecordAsReportLetter),
        ("csv", As::Record(RecordForm::Csv), Key::RecordAsCsv),
        ("collection", As::Record(RecordForm::Collection), Key::RecordAsCollection),
        ("transaction", As::Record(RecordForm::Transaction), Key::RecordAsTransaction),
    ];
    let whose = code.clone();
    let chosen = RwSignal::new(forms[0].0.to_owned());
    let saved = RwSignal::new(Vec::new());
    let options = forms.iter().map(|(key, _, text)| ((*key).to_owned(), words.text(*text).to_owned())).collect::<Vec<_>>();
    let save = move |_| {
        let form = chosen.with_untracked(|chosen| forms.iter().find(|(key, ..)| key == chosen).map(|(_, form, _)| *form));
        let code = code.clone();
        match form {
            Some(As::Record(form)) => {
                app.request::<SaveRecord>(RecordRequest { code, form }, move |file| saved.set(vec![file]));
            }
            Some(As::Report { letter }) => {
                let what = Printed::Report;
                app.request::<Print>(PrintRequest { code, what, revision: None, letter }, move |file| saved.set(vec![file]));
            }
            None => {}
        }
    };
    view! {
        <Fold title=words.text(Key::RecordTitle) inside=Signal::stored(String::new()) open>
            <div class="stack records">
                <p class="small soft">{words.text(Key::RecordWhat)}</p>
                <Choice label=words.text(Key::RecordAs) options value=chosen choose=move |one| chosen.set(one)/>
                <button type="button" disabled=app.busy on:click=save>{words.text(Key::RecordSave)}</button>
                <SavedFiles files=saved/>
                <HandOver code=whose/>
            </div>
        </Fold>
    }
}
