//! Why an exercise is not done as proposed.

use exercises::id::ItemId;
use exercises::suggest::Suggestion;
use exercises::visit::{Advice, Finding, MAX_LINE, Overridden};
use leptos::prelude::*;
use wire::clinic::PatientCode;
use wire::visiting::{NoteFinding, NoteRequest, ShowVisit, VisitPage};
use words::Key;

use crate::clinic::context::ClinicContext;
use crate::clinic::fields::Text;
use crate::clinic::plan::PlanEditor;

/// Usual reasons. They are kept as they are said, like own words, so that a record has them in the clinic's language.
const USUAL: [Key; 5] =
    [Key::TogetherWhyWish, Key::TogetherWhyTime, Key::TogetherWhyPain, Key::TogetherWhyUnsure, Key::TogetherWhyOneChange];

/// The reasons that were given at today's visit. They are findings of the visit, the same as on its page.
#[derive(Clone, Copy)]
pub struct Reasons {
    clinic: ClinicContext,
    code: StoredValue<String>,
    visit: RwSignal<Option<VisitPage>>,
}

impl Reasons {
    /// Asks the shell for the visit of the patient with `code`.
    pub fn load(clinic: ClinicContext, code: String) -> Reasons {
        let visit = RwSignal::new(None);
        clinic.app.query::<ShowVisit>(PatientCode { code: code.clone() }, move |page| {
            // The page may be gone by then.
            let _ = visit.try_set(Some(page));
        });
        Reasons { clinic, code: StoredValue::new(code), visit }
    }

    /// The number and the words of the reason that was given for an item.
    fn given(self, item: ItemId) -> Option<(u32, String)> {
        self.visit.with(|page| {
            let page = page.as_ref()?;
            let today =
                page.visits.iter().filter(|visit| visit.day == page.today).flat_map(|visit| visit.found.iter().rev());
            let of = |finding: &Finding| match finding {
                Finding::Overridden(one) if one.item == item => Some(one.reason.clone()),
                _ => None,
            };
            today.filter_map(|found| Some((found.n, of(&found.finding)?))).next()
        })
    }

    /// Gives a reason in place of the one that was given before; `None` takes that one back.
    fn give(self, suggestion: &Suggestion, reason: Option<String>) {
        let item = suggestion.item;
        let replaces = untrack(|| self.given(item)).map(|(n, _)| n);
        if replaces.is_none() && reason.is_none() {
            return;
        }
        let proposed = Advice::of(&suggestion.proposal);
        let finding = reason.map(|reason| Finding::Overridden(Overridden { item, proposed, reason }));
        let request = NoteRequest { code: self.code.get_value(), replaces, finding };
        self.clinic.app.request::<NoteFinding>(request, move |page| drop(self.visit.try_set(Some(page))));
    }
}

/// Usual reasons to press, and a field for own words, as long as the item is not as proposed and somebody chose that. Once the item is as proposed again, the reason that was given is taken back, or a record would contradict the plan.
#[component]
pub fn Reason(proposal: Memo<Suggestion>, name: String) -> impl IntoView {
    let (editor, reasons): (PlanEditor, Reasons) = (PlanEditor::current(), expect_context());
    let departs = Memo::new(move |_| editor.departs_from(&proposal.get()));
    let given = Memo::new(move |_| reasons.given(proposal.with(|one| one.item)).map(|(_, reason)| reason));
    Effect::new(move |before: Option<bool>| {
        let now = departs.get();
        if before == Some(true) && !now {
            reasons.give(&proposal.get_untracked(), None);
        }
        now
    });
    let is_chosen = move || editor.is_chosen(proposal.with(|one| one.item));
    let asks = Memo::new(move |_| departs.get() && (is_chosen() || given.with(Option::is_some)));
    let give = move |reason: Option<String>| reasons.give(&proposal.get_untracked(), reason);
    let name = StoredValue::new(name);
    view! { <Show when=move || asks.get()><Ask given name=name.get_value() give/></Show> }
}

#[component]
fn Ask(
    given: Memo<Option<String>>,
    name: String,
    give: impl Fn(Option<String>) + Copy + Send + Sync + 'static,
) -> impl IntoView {
    let words = ClinicContext::current().app.words();
    let usual = USUAL.map(|key| words.text(key));
    let own = Memo::new(move |_| given.get().filter(|reason| !usual.contains(&reason.as_str())));
    let (opened, typed) = (RwSignal::new(false), RwSignal::new(untrack(|| own.get()).unwrap_or_default()));
    let button = |reason: &'static str| {
        let is = Memo::new(move |_| given.with(|given| given.as_deref() == Some(reason)));
        let press = move |_| give((!is.get_untracked()).then(|| reason.to_owned()));
        view! { <button type="button" class="small" aria-pressed=move || is.get().to_string() on:click=press>{reason}</button> }
    };
    let is_own = Memo::new(move |_| own.with(Option::is_some));
    let note = move |event: leptos::ev::SubmitEvent| {
        event.prevent_default();
        let reason = typed.with_untracked(|typed| typed.trim().to_owned());
        give(Some(reason).filter(|reason| !reason.is_empty()));
    };
    let same = move || typed.with(|typed| typed.trim() == own.get().unwrap_or_default());
    view! {
        <div class="why stack-2">
            <p class="small soft">{words.text(Key::TogetherWhy)}</p>
            <div class="options" role="group" aria-label=words.together_why_of(&name)>
                {usual.map(button).into_iter().collect_view()}
                <button type="button" class="small" aria-expanded=move || opened.get().to_string()
                    aria-pressed=move || is_own.get().to_string() on:click=move |_| opened.update(|opened| *opened = !*opened)>
                    {words.text(Key::TogetherWhyOther)}</button>
            </div>
            <Show when=move || opened.get() || is_own.get()>
                <form class="noting" on:submit=note>
                    <Text label=words.text(Key::VisitReason) value=typed most=MAX_LINE put=move |text| typed.set(text)/>
                    <button type="submit" disabled=same>{words.text(Key::VisitNoteIt)}</button>
                </form>
            </Show>
        </div>
    }
}
