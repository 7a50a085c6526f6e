//! Where it hurts today.

use exercises::catalogue::Region;
use exercises::plan::Side;
use exercises::visit::{Complained, Finding, MAX_LINE};
use leptos::prelude::*;
use words::Key;

use super::context::{SIDES, VisitContext, chosen, options, scores, with_none};
use super::note_it::NoteIt;
use crate::clinic::fields::{Choice, Text};

/// Region, side, pain and a line in the patient's words.
#[component]
pub fn Complaint() -> impl IntoView {
    let context = VisitContext::current();
    let (words, forms) = (context.words(), context.forms);
    let side_name = move |side: Side| if side == Side::Neither { words.text(Key::SideNone) } else { words.side(side) };
    let regions = with_none(options(&Region::ALL, |region| words.region(region).to_owned()));
    let sides = options(&SIDES, |side| side_name(side).to_owned());
    let unready = Memo::new(move |_| forms.score.with(String::is_empty) || forms.region.with(String::is_empty));
    let note = move || {
        let region = chosen(&Region::ALL, &forms.region.get_untracked());
        let (Some(region), Ok(score)) = (region, forms.score.get_untracked().parse()) else { return };
        let side = chosen(&SIDES, &forms.side.get_untracked()).unwrap_or(Side::Neither);
        let line = forms.line.get_untracked().trim().to_owned();
        context.note(Finding::Complaint(Complained { region, side, line, score }), move || {
            forms.score.set(String::new());
            forms.line.set(String::new());
        });
    };
    view! {
        <section class="sheet stack-2">
            <h2>{words.text(Key::VisitWhere)}</h2>
            <div class="noting">
                <Choice label=words.text(Key::VisitRegion) options=regions value=forms.region choose=move |one| forms.region.set(one)/>
                <Choice label=words.text(Key::SideLabel) options=sides value=forms.side choose=move |one| forms.side.set(one)/>
                <Choice label=words.text(Key::VisitScore) options=scores() value=forms.score choose=move |one| forms.score.set(one)/>
            </div>
            <div class="noting last">
                <Text label=words.text(Key::VisitLine) value=forms.line most=MAX_LINE put=move |text| forms.line.set(text)/>
                <NoteIt of=Key::VisitWhere unready note/>
            </div>
        </section>
    }
}
