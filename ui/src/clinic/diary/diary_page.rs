//! The page on which a diary is entered.

use leptos::prelude::*;
use wire::visiting::{DiaryLine, DiaryPage, DiaryRequest, EnterDiary};
use words::review::Names;
use words::{Key, Words};

use super::number_field::NumberField;
use super::typed::{Column, Typed, columns, due};
use crate::clinic::context::ClinicContext;
use crate::clinic::head::Head;

/// Number of days shown at a time, as on a page of the diary.
const DAYS: usize = 14;

/// A table of two weeks with a field for each exercise and complaint, and buttons to other days.
#[component]
pub fn Diary(page: DiaryPage) -> impl IntoView {
    let clinic = ClinicContext::current();
    let words = clinic.app.words();
    let code = StoredValue::new(page.code.clone());
    let who = page.name.as_ref().map_or(page.code.clone(), |name| format!("{} {name}", page.code));
    let first = RwSignal::new(beginning(&page));
    let heads = StoredValue::new(heads(words, &page));
    let typed = Typed::new(page);
    let said = RwSignal::new(None::<String>);
    let at_end = Memo::new(move |_| typed.page.with(|page| first.get() + DAYS >= page.days.len()));
    let days = move || {
        let shown = typed.page.with(|page| page.days.iter().skip(first.get()).take(DAYS).cloned().collect::<Vec<_>>());
        shown.into_iter().map(|line| row(words, typed, heads, line)).collect_view()
    };
    let period = move || {
        typed.page.with(|page| {
            let shown = page.days.get(first.get()..(first.get() + DAYS).min(page.days.len()))?;
            Some(words.paper_diary_from_until(&words.date(shown.first()?.day), &words.date(shown.last()?.day)))
        })
    };
    let save = move |_| {
        let days = match typed.days() {
            Ok(days) if days.is_empty() => return said.set(Some(words.text(Key::PaperDiaryNothing).to_owned())),
            Ok(days) => days,
            Err((day, column)) => {
                let name =
                    heads.with_value(|heads| heads.iter().find(|(other, _)| *other == column).map(|(_, name)| name.clone()));
                let field = words.paper_diary_field(&name.unwrap_or_default(), &words.date(day));
                return said.set(Some(words.paper_diary_unfit(&field, column.most())));
            }
        };
        clinic.app.request::<EnterDiary>(DiaryRequest { code: code.get_value(), days }, move |page| {
            typed.saved(page);
            said.set(Some(words.text(Key::PaperDiarySaved).to_owned()));
        });
    };
    let names =
        heads.with_value(|heads| heads.iter().map(|(_, name)| view! { <th scope="col">{name.clone()}</th> }).collect_view());
    view! {
        <main class="screen diary-page">
            <Head title=words.paper_diary_of(&who)>
                <button type="button" class="quiet" on:click=move |_| clinic.review(code.get_value())>{words.text(Key::PlanReview)}</button>
            </Head>
            <p class="soft">{words.text(Key::PaperDiaryWhat)}</p>
            <div class="presses">
                <button type="button" disabled=move || first.get() == 0 on:click=move |_| first.update(|first| *first = first.saturating_sub(DAYS))>
                    {words.text(Key::PaperDiaryEarlier)}
                </button>
                <button type="button" disabled=move || at_end.get() on:click=move |_| first.update(|first| *first += DAYS)>
                    {words.text(Key::PaperDiaryLater)}
                </button>
                <span class="soft" role="status">{period}</span>
            </div>
            <div class="diary-table" data-scrolls tabindex="0" role="region" aria-label=words.paper_diary_of(&who)>
                <table>
                    <thead><tr><td></td>{names}</tr></thead>
                    <tbody>{days}</tbody>
                </table>
            </div>
            <div class="presses">
                <button type="button" class="filled" disabled=clinic.app.busy on:click=save>{words.text(Key::PaperDiarySave)}</button>
                <span role="status">{said}</span>
            </div>
        </main>
    }
}

/// A day, with its date at the head of the row.
fn row(words: Words, typed: Typed, heads: StoredValue<Vec<(Column, String)>>, line: DiaryLine) -> impl IntoView {
    let date = words.date(line.day);
    let fields = heads.with_value(|heads| {
        let field = |(column, name): &(Column, String)| {
            let due = match column {
                Column::Sessions(item) => due(&line, *item).map(|n| words.paper_diary_due(n)),
                Column::Morning(_) => None,
            };
            view! { <NumberField typed day=line.day column=*column label=words.paper_diary_field(name, &date) due/> }
        };
        heads.iter().map(field).collect_view()
    });
    view! { <tr><th scope="row">{date}</th>{fields}</tr> }
}

/// Each column with its name.
fn heads(words: Words, page: &DiaryPage) -> Vec<(Column, String)> {
    let names = Names::of_prescription(words, &page.plan.prescription, &page.exercises);
    let name = |column: Column| match column {
        Column::Sessions(item) => words.paper_diary_sessions(&names.item(item)),
        Column::Morning(complaint) => words.paper_diary_pain(&names.complaint(complaint)),
    };
    columns(page).into_iter().map(|column| (column, name(column))).collect()
}

/// The first day that is shown: the first one of which nothing is entered, or of the last two weeks.
fn beginning(page: &DiaryPage) -> usize {
    let next = page.days.iter().rposition(|line| line.entered.is_some()).map_or(0, |last| last + 1);
    next.min(page.days.len().saturating_sub(DAYS))
}
