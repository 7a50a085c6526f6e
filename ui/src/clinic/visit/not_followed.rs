//! Why a proposal of the review is not followed.

use exercises::id::ItemId;
use exercises::visit::{Advice, Finding, MAX_LINE, Overridden};
use leptos::prelude::*;
use words::Key;
use words::review::Names;

use super::context::VisitContext;
use super::note_it::NoteIt;
use crate::clinic::fields::{Choice, Fold, Text};

/// An item with what is proposed for it, and the clinician's reason. Empty without proposals.
#[component]
pub fn NotFollowed() -> impl IntoView {
    let context = VisitContext::current();
    let words = context.words();
    let proposals = Memo::new(move |_| {
        context.review.with(|page| {
            let Some((page, review)) = page.as_ref().and_then(|page| Some((page, page.review.as_ref()?))) else {
                return Vec::new();
            };
            let names = Names::of(words, page);
            let one = |one: &exercises::suggest::Suggestion| {
                let advice = Advice::of(&one.proposal);
                (one.item, advice, words.named_text(&names.item(one.item), words.advice(advice)))
            };
            review.items.iter().map(one).collect::<Vec<(ItemId, Advice, String)>>()
        })
    });
    move || {
        let all = proposals.get();
        (!all.is_empty()).then(|| view! { <Form all/> })
    }
}

#[component]
fn Form(all: Vec<(ItemId, Advice, String)>) -> impl IntoView {
    let context = VisitContext::current();
    let (words, forms) = (context.words(), context.forms);
    let none = (String::new(), "–".to_owned());
    let options = all.iter().map(|(item, _, text)| (item.0.to_string(), text.clone()));
    let options: Vec<(String, String)> = std::iter::once(none).chain(options).collect();
    let unready =
        Memo::new(move |_| forms.item.with(String::is_empty) || forms.reason.with(|reason| reason.trim().is_empty()));
    let note = move || {
        let item = forms.item.get_untracked();
        let Some((item, proposed, _)) = all.iter().find(|(id, ..)| id.0.to_string() == item) else { return };
        let reason = forms.reason.get_untracked().trim().to_owned();
        context.note(Finding::Overridden(Overridden { item: *item, proposed: *proposed, reason }), move || {
            forms.item.set(String::new());
            forms.reason.set(String::new());
        });
    };
    view! {
        <section class="sheet">
            <Fold title=words.text(Key::VisitNotFollowed) inside=Signal::stored(String::new())>
                <div class="noting">
                    <Choice label=words.text(Key::VisitProposal) options value=forms.item choose=move |one| forms.item.set(one)/>
                </div>
                <div class="noting last">
                    <Text label=words.text(Key::VisitReason) value=forms.reason most=MAX_LINE put=move |text| forms.reason.set(text)/>
                    <NoteIt of=Key::VisitNotFollowed unready note/>
                </div>
            </Fold>
        </section>
    }
}
