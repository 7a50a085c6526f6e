//! What is asked about before anything is prescribed.

use exercises::catalogue::PrescriberFlag;
use exercises::visit::{Finding, Screening, last_screening};
use leptos::prelude::*;
use std::collections::BTreeSet;
use words::{Key, upper};

use super::context::VisitContext;
use super::note_it::NoteIt;
use crate::clinic::fields::{Fold, Tick};

/// The last screening with one press to repeat it, and the conditions to tick anew. They are unfolded at a `first` visit alone: at a later one
/// without any screening the fold says that it is not done, and hides nothing of what was noted.
#[component]
pub fn Screened(first: Memo<bool>) -> impl IntoView {
    let context = VisitContext::current();
    let (words, forms) = (context.words(), context.forms);
    let last = Memo::new(move |_| {
        context.page.with(|page| last_screening(&page.visits).map(|(day, one)| (day, one.clone(), page.today)))
    });
    let inside = Signal::derive(move || match last.get() {
        Some((day, one, _)) => words.screened_on(day, &one),
        None => words.text(Key::VisitNotScreened).to_owned(),
    });
    let again = move || {
        let (day, one, today) = last.get()?;
        let repeat = move |_| context.note(Finding::Screening(one.clone()), || {});
        (day < today).then(|| {
            view! {
                <button type="button" disabled=context.clinic.app.busy on:click=repeat>
                    {words.visit_still_same(&words.date(day))}</button>
            }
        })
    };
    let tick = move |flag: PrescriberFlag| {
        let value = Signal::derive(move || forms.flags.with(|flags| flags.contains(&flag)));
        let put = move |holds| {
            forms.flags.update(|flags| {
                if holds {
                    flags.insert(flag)
                } else {
                    flags.remove(&flag)
                };
            })
        };
        view! { <Tick label=upper(words.flag(flag)) value put/> }
    };
    let note = move || {
        let screening = Screening { flags: forms.flags.get_untracked(), fell: forms.fell.get_untracked() };
        context.note(Finding::Screening(screening), || {});
    };
    let none = move || forms.flags.with(BTreeSet::is_empty) && !forms.fell.get();
    let not_yet = last.with_untracked(Option::is_none);
    let open = Signal::derive(move || not_yet && first.get());
    let label = Signal::derive(move || if none() { Key::VisitNoneApplies } else { Key::VisitNoteIt });
    view! {
        <section class="sheet screening" class:not-done=move || last.with(Option::is_none)>
            <Fold title=words.text(Key::VisitScreeningTitle) inside open>
                <p class="small soft">{words.text(Key::VisitScreeningAsk)}</p>
                <fieldset class="risks" aria-label=words.text(Key::VisitScreeningTitle)>
                    {PrescriberFlag::ALL.map(tick).into_iter().collect_view()}
                    <Tick label=words.text(Key::VisitFellTick) value=forms.fell put=move |fell| forms.fell.set(fell)/>
                </fieldset>
                <NoteIt of=Key::VisitScreeningTitle label note/>
            </Fold>
            {again}
        </section>
    }
}
