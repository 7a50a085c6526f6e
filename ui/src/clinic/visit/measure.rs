//! What is measured: pain in a movement, range, grip, counts, time on one leg, anything else.

use exercises::catalogue::{Eyes, Surface};
use exercises::visit::{Finding, MAX_MOVEMENT, MAX_UNIT, Measure, Measured, Moment};
use leptos::prelude::*;
use strum::VariantArray;
use words::{Key, upper};

use super::context::{KINDS, LEGS, MOMENTS, VisitContext, chosen, options, with_none};
use super::note_it::NoteIt;
use super::stop_watch::StopWatch;
use crate::clinic::fields::{Choice, Text};

/// What, on which side, before or after treatment, and the results; for standing on one leg with a stop-watch.
#[component]
pub fn Measures() -> impl IntoView {
    let context = VisitContext::current();
    let (words, forms) = (context.words(), context.forms);
    let is =
        move |kinds: &'static [&'static str]| Memo::new(move |_| forms.kind.with(|kind| kinds.contains(&kind.as_str())));
    let (named, other, stance) = (is(&["pain", "motion", "other"]), is(&["other"]), is(&["stance"]));
    let unready = Memo::new(move |_| read_results(&forms.results.get()).is_none() || forms.moment.with(String::is_empty));
    let note = move || {
        let Some(measure) = typed(context) else { return };
        context.note(Finding::Measure(measure), move || forms.results.set(String::new()));
    };
    view! {
        <section class="sheet stack-2 measures">
            <h2>{words.text(Key::VisitMeasured)}</h2>
            <div class="noting"><Which/></div>
            <div class="noting">
                <Show when=move || named.get()>
                    <Text label=words.text(if other.get() { Key::VisitNameOfOther } else { Key::VisitMovement }) value=forms.movement
                        most=MAX_MOVEMENT put=move |text| forms.movement.set(text)/>
                </Show>
                <Show when=move || other.get()>
                    <Text label=words.text(Key::VisitUnitLabel) value=forms.unit most=MAX_UNIT put=move |text| forms.unit.set(text)/>
                </Show>
                <Show when=move || stance.get()><Standing/></Show>
            </div>
            <Show when=move || stance.get()><StopWatch/></Show>
            <div class="noting last">
                <Text label=words.text(Key::VisitResults) value=forms.results
                    put=move |text| forms.results.set(text)/>
                <NoteIt of=Key::VisitMeasured unready note/>
            </div>
        </section>
    }
}

/// What is measured, the side, and when.
#[component]
fn Which() -> impl IntoView {
    let context = VisitContext::current();
    let (words, forms) = (context.words(), context.forms);
    let kinds = KINDS.map(|kind| (kind.to_owned(), upper(words.measure_kind(kind)))).to_vec();
    let none = (String::new(), words.text(Key::SideNone).to_owned());
    let legs = [vec![none], options(&LEGS, |leg| words.body_side(leg).to_owned())].concat();
    let moment = move |moment: Moment| {
        words.text(match moment {
            Moment::Before => Key::VisitMomentBefore,
            Moment::After => Key::VisitMomentAfter,
            Moment::Once => Key::VisitOnce,
        })
    };
    let moments = with_none(options(&MOMENTS, |one| moment(one).to_owned()));
    view! {
        <Choice label=words.text(Key::VisitMeasuredWhat) options=kinds value=forms.kind choose=move |one| forms.kind.set(one)/>
        <Choice label=words.text(Key::VisitMeasuredSide) options=legs value=forms.leg choose=move |one| forms.leg.set(one)/>
        <Choice label=words.text(Key::VisitMomentLabel) options=moments value=forms.moment choose=move |one| forms.moment.set(one)/>
    }
}

/// On what somebody stands, and with which eyes.
#[component]
fn Standing() -> impl IntoView {
    let context = VisitContext::current();
    let (words, forms) = (context.words(), context.forms);
    let surfaces = options(Surface::VARIANTS, |surface| words.surface(surface).to_owned());
    let eyes = options(Eyes::VARIANTS, |eyes| words.eyes(eyes).to_owned());
    view! {
        <Choice label=words.text(Key::VisitSurface) options=surfaces value=forms.surface choose=move |one| forms.surface.set(one)/>
        <Choice label=words.text(Key::VisitEyes) options=eyes value=forms.eyes choose=move |one| forms.eyes.set(one)/>
    }
}

/// The measure as it is typed.
fn typed(context: VisitContext) -> Option<Measure> {
    let forms = context.forms;
    let name = forms.movement.get_untracked().trim().to_owned();
    let what = match forms.kind.get_untracked().as_str() {
        "pain" => Measured::Pain { movement: name },
        "motion" => Measured::Motion { movement: name },
        "grip" => Measured::Grip,
        "chair-rise" => Measured::ChairRise,
        "stance" => Measured::Stance {
            surface: chosen(Surface::VARIANTS, &forms.surface.get_untracked())?,
            eyes: chosen(Eyes::VARIANTS, &forms.eyes.get_untracked())?,
        },
        _ => Measured::Other { name, unit: forms.unit.get_untracked().trim().to_owned() },
    };
    let moment = chosen(&MOMENTS, &forms.moment.get_untracked())?;
    let side = chosen(&LEGS, &forms.leg.get_untracked());
    Some(Measure { what, moment, side, tenths: read_results(&forms.results.get_untracked())? })
}

/// Numbers with spaces between, with a point or a comma, in tenths; `None` if there is none, or one cannot be read.
fn read_results(text: &str) -> Option<Vec<i32>> {
    let number = |word: &str| {
        let value: f64 = word.replace(',', ".").replace('\u{2212}', "-").parse().ok()?;
        value.is_finite().then(|| (value * 10.0).round().clamp(-1e9, 1e9) as i32)
    };
    let all: Option<Vec<i32>> = text.split([' ', ';', '\u{a0}']).filter(|word| !word.is_empty()).map(number).collect();
    all.filter(|all| !all.is_empty())
}
