//! How it is altogether since the last visit.

use exercises::visit::{Finding, MAX_LINE, OverallChange};
use leptos::prelude::*;
use words::Key;

use super::context::VisitContext;
use super::note_it::NoteIt;
use crate::clinic::fields::{Choice, Text};

/// From -5 to +5, and the patient's words.
#[component]
pub fn Change() -> impl IntoView {
    let context = VisitContext::current();
    let (words, forms) = (context.words(), context.forms);
    let none = (String::new(), "–".to_owned());
    let scores = (-5..=5_i8).rev().map(|score| (score.to_string(), words.change_option(score)));
    let scores: Vec<(String, String)> = std::iter::once(none).chain(scores).collect();
    let unready = Memo::new(move |_| forms.change.with(String::is_empty));
    let note = move || {
        let Ok(score) = forms.change.get_untracked().parse() else { return };
        let said = forms.words.get_untracked().trim().to_owned();
        context.note(Finding::Change(OverallChange { score, words: said }), move || {
            forms.change.set(String::new());
            forms.words.set(String::new());
        });
    };
    view! {
        <section class="sheet stack-2">
            <h2>{words.text(Key::VisitSinceLast)}</h2>
            <div class="noting last">
                <Choice label=words.text(Key::VisitChangeLabel) options=scores value=forms.change
                    choose=move |one| forms.change.set(one)/>
                <Text label=words.text(Key::VisitChangeSaid) value=forms.words most=MAX_LINE put=move |text| forms.words.set(text)/>
                <NoteIt of=Key::VisitSinceLast unready note/>
            </div>
        </section>
    }
}
