//! The texts of the exercise, in one language at a time.

use exercises::authoring::{Place, TextPart, Touch, add_language, is_written};
use exercises::catalogue::Lang;
use leptos::prelude::*;
use words::Key;

use super::writer::Writer;
use crate::clinic::fields::{Area, Fold};

/// The languages to choose from, and a field for each text.
#[component]
pub fn TextFields() -> impl IntoView {
    let words = Writer::current().words();
    view! {
        <section class="sheet">
            <Fold title=words.text(Key::WriteTexts) inside=Signal::stored(String::new()) open=true>
                <Languages/>
                {TextPart::ALL.iter().map(|part| view! { <Field part=*part/> }).collect_view()}
            </Fold>
        </section>
    }
}

/// The languages in which exercises are written.
#[component]
fn Languages() -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let one = move |lang: Lang| {
        let name = words.language_of(lang);
        let written = Memo::new(move |_| writer.exercise.with(|exercise| is_written(exercise, lang)));
        let label = move || if written.get() { name.to_owned() } else { words.write_not_yet(name) };
        let choose = move |_| {
            writer.change(Touch::Once, |exercise| add_language(exercise, lang));
            writer.lang.set(lang);
        };
        view! {
            <button type="button" aria-pressed=move || (writer.lang.get() == lang).to_string() on:click=choose>{label}</button>
        }
    };
    view! {
        <div class="options" role="group" aria-label=words.text(Key::WriteLanguage)>{Lang::ALL.map(one).into_iter().collect_view()}</div>
        <p class="small soft">{words.text(Key::WriteOneLanguage)}</p>
    }
}

/// The field of one text.
#[component]
fn Field(part: TextPart) -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let value = Signal::derive(move || writer.exercise.with(|exercise| part.get(exercise, writer.lang.get())));
    let put = move |text: String| {
        let lang = writer.lang.get_untracked();
        writer.change(Touch::Text(lang, part), |exercise| part.put(exercise, lang, &text));
    };
    let fault = Signal::derive(move || writer.lack_at(&Place::Text(writer.lang.get(), part)));
    let hint = match part {
        TextPart::Name => words.text(Key::WriteNameHint),
        TextPart::Steps => words.text(Key::WriteStepsHint),
        TextPart::StopSigns => words.text(Key::WriteStopHint),
        TextPart::Mistakes | TextPart::Cautions => words.text(Key::WriteLinesHint),
        _ => "",
    };
    let rows = match part {
        TextPart::Name => 1,
        TextPart::Steps => 5,
        _ if part.entries().is_some() => 3,
        _ => 2,
    };
    view! { <Area label=words.text_part(part) value put left=move || writer.end_change() fault hint rows/> }
}
