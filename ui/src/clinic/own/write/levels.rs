//! The levels of the exercise.

use exercises::authoring::{LevelPart, Place, Touch, add_level, has_one_level, level_places, move_level, remove_level};
use exercises::catalogue::{Exercise, Eyes, Factor, Quantity, Rung, RungId, Surface};
use leptos::prelude::*;
use strum::VariantArray;
use words::{Key, upper};

use super::dose::Dose;
use super::writer::Writer;
use crate::clinic::fields::{Area, Choice, Fold, Tick};

/// The levels from easy to hard, and a button to add one.
#[component]
pub fn Levels() -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let ids = Memo::new(move |_| writer.exercise.with(level_places));
    let inside = Signal::derive(move || {
        let n = ids.with(Vec::len);
        if n <= 1 { words.text(Key::WriteLevelOnly).to_owned() } else { words.write_level_n(n) }
    });
    let several = Memo::new(move |_| ids.with(|ids| ids.len() > 1));
    let is_balance = Memo::new(move |_| writer.exercise.with(|exercise| exercise.kind.is_balance()));
    let room = Memo::new(move |_| ids.with(|ids| (ids.len() as i64) < Quantity::Rungs.bound().max));
    let add = move |_| {
        writer.change(Touch::Once, |exercise| {
            add_level(exercise);
        });
    };
    view! {
        <section class="sheet">
            <Fold title=words.text(Key::WriteLevels) inside>
                <p class="small soft">{words.text(Key::WriteLevelsWhat)}</p>
                <Show when=move || several.get()><FactorChoice/></Show>
                <Show when=move || several.get() || is_balance.get()>
                    <ol class="levels"><For each=move || ids.get() key=RungId::clone children=|id| view! { <Level id/> }/></ol>
                </Show>
                <Show when=move || room.get()>
                    <button type="button" on:click=add>{words.text(Key::WriteLevelAdd)}</button>
                </Show>
            </Fold>
        </section>
    }
}

/// What changes from level to level.
#[component]
fn FactorChoice() -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let options = Factor::VARIANTS.iter().enumerate().map(|(at, one)| (at.to_string(), upper(words.factor(*one)))).collect();
    let value = Signal::derive(move || {
        let factor = writer.exercise.with(|exercise| exercise.ladders.last().map(|ladder| ladder.factor));
        Factor::VARIANTS.iter().position(|one| Some(*one) == factor).map(|at| at.to_string()).unwrap_or_default()
    });
    let choose = move |at: String| {
        if let Some(factor) = at.parse().ok().and_then(|at: usize| Factor::VARIANTS.get(at)) {
            writer.change(Touch::Once, |exercise| exercise.ladders.iter_mut().for_each(|ladder| ladder.factor = *factor));
        }
    };
    view! { <Choice label=words.text(Key::WriteFactor) options value choose/> }
}

fn rung_of<'a>(exercise: &'a mut Exercise, id: &RungId) -> Option<&'a mut Rung> {
    exercise.ladders.iter_mut().flat_map(|ladder| &mut ladder.rungs).find(|rung| rung.id == *id)
}

/// One level: its texts, what it stands on, a dose and a figure of its own, and its place.
#[component]
fn Level(id: RungId) -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let id = StoredValue::new(id);
    let name = move || id.with_value(|id| writer.exercise.with(|exercise| words.level_named(exercise, id)));
    let several = Memo::new(move |_| writer.exercise.with(|exercise| !has_one_level(exercise)));
    let press = move |key: Key, act: fn(&mut Exercise, &RungId)| {
        let label = move || words.named_text(words.text(key), &name());
        let go = move |_| writer.change(Touch::Once, |exercise| id.with_value(|id| act(exercise, id)));
        view! { <button type="button" class="quiet" aria-label=label on:click=go>{words.text(key)}</button> }
    };
    let is_balance = Memo::new(move |_| writer.exercise.with(|exercise| exercise.kind.is_balance()));
    view! {
        <li class="stack">
            <header class="row">
                <h2>{name}</h2>
                <Show when=move || several.get()>
                    <span class="presses">
                        {press(Key::WriteLevelEasier, |exercise, id| move_level(exercise, id, false))}
                        {press(Key::WriteLevelHarder, |exercise, id| move_level(exercise, id, true))}
                        {press(Key::WriteLevelRemove, remove_level)}
                    </span>
                </Show>
            </header>
            <Show when=move || several.get()>
                {LevelPart::ALL.iter().map(|part| view! { <Field id=id.get_value() part=*part/> }).collect_view()}
            </Show>
            <Show when=move || is_balance.get()><Conditions id=id.get_value()/></Show>
            <Show when=move || several.get()><OwnDose id=id.get_value()/><OwnFigure id=id.get_value()/></Show>
        </li>
    }
}

/// The field of one text of a level.
#[component]
fn Field(id: RungId, part: LevelPart) -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let id = StoredValue::new(id);
    let value = Signal::derive(move || {
        writer.exercise.with(|exercise| id.with_value(|id| part.get(exercise, id, writer.lang.get())))
    });
    let put = move |text: String| {
        let (id, lang) = (id.get_value(), writer.lang.get_untracked());
        writer.change(Touch::LevelText(id.clone(), lang, part), |exercise| part.put(exercise, &id, lang, &text));
    };
    let fault = Signal::derive(move || writer.lack_at(&Place::LevelText(id.get_value(), writer.lang.get(), part)));
    let rows = if part.entries().is_some() { 3 } else { 1 };
    let hint = if part.entries().is_some() { words.text(Key::WriteStepsHint) } else { "" };
    view! { <Area label=words.level_part(part) value put left=move || writer.end_change() fault hint rows/> }
}

/// What is stood on, and with open or closed eyes.
#[component]
fn Conditions(id: RungId) -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let id = StoredValue::new(id);
    let surfaces = Surface::VARIANTS.iter().map(|one| (format!("{one:?}"), upper(words.surface(*one)))).collect();
    let eyes = Eyes::VARIANTS.iter().map(|one| (format!("{one:?}"), upper(words.eyes(*one)))).collect();
    let of = move |of: fn(&Rung) -> String| {
        Signal::derive(move || {
            writer.exercise.with(|exercise| id.with_value(|id| exercise.rung(id).map(of).unwrap_or_default()))
        })
    };
    let surface = of(|rung| rung.surface.map(|one| format!("{one:?}")).unwrap_or_default());
    let closed = of(|rung| rung.eyes.map(|one| format!("{one:?}")).unwrap_or_default());
    let change = move |change: &dyn Fn(&mut Rung)| {
        writer.change(Touch::Once, |exercise| id.with_value(|id| rung_of(exercise, id).into_iter().for_each(change)));
    };
    let put_surface = move |chosen: String| {
        let found = Surface::VARIANTS.iter().copied().find(|one| format!("{one:?}") == chosen);
        change(&|rung| rung.surface = found);
    };
    let put_eyes = move |chosen: String| {
        let found = Eyes::VARIANTS.iter().copied().find(|one| format!("{one:?}") == chosen);
        change(&|rung| rung.eyes = found);
    };
    view! {
        <div class="fields">
            <Choice label=words.text(Key::WriteLevelSurface) options=surfaces value=surface choose=put_surface/>
            <Choice label=words.text(Key::WriteLevelEyes) options=eyes value=closed choose=put_eyes/>
        </div>
    }
}

/// A dose of the level's own, if it has one.
#[component]
fn OwnDose(id: RungId) -> impl IntoView {
    let writer = Writer::current();
    let id = StoredValue::new(id);
    let has = Memo::new(move |_| {
        writer.exercise.with(|exercise| id.with_value(|id| exercise.rung(id).is_some_and(|rung| rung.dose.is_some())))
    });
    let put = move |on: bool| {
        writer.change(Touch::Once, |exercise| {
            let dose = exercise.dose;
            id.with_value(|id| rung_of(exercise, id).into_iter().for_each(|rung| rung.dose = on.then_some(dose)));
        });
    };
    view! {
        <Tick label=writer.words().text(Key::WriteLevelDose) value=has put/>
        <Show when=move || has.get()><Dose level=Some(id.get_value())/></Show>
    }
}

/// Whether the level has a figure of its own; it is changed where the exercise's is.
#[component]
fn OwnFigure(id: RungId) -> impl IntoView {
    let writer = Writer::current();
    let id = StoredValue::new(id);
    let has = Signal::derive(move || {
        writer.exercise.with(|exercise| id.with_value(|id| exercise.rung(id).is_some_and(|rung| rung.figure.is_some())))
    });
    let put = move |on: bool| {
        let id = id.get_value();
        writer.change(Touch::Once, |exercise| {
            let figure = exercise.poses.clone();
            rung_of(exercise, &id).into_iter().for_each(|rung| rung.figure = on.then_some(figure.clone()));
        });
        writer.level.set(on.then_some(id));
    };
    view! { <Tick label=writer.words().text(Key::WriteLevelFigure) value=has put/> }
}
