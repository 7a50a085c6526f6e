//! What whoever prescribes the exercise should know.

use exercises::authoring::Touch;
use exercises::catalogue::{Equipment, Exercise, PrescriberFlag, Purpose};
use leptos::prelude::*;
use words::{Key, upper};

use super::writer::Writer;
use crate::clinic::fields::{Fold, Tick};

/// Purposes, flags and what it needs.
#[component]
pub fn ForPrescribers() -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let inside = Signal::derive(move || {
        writer.exercise.with(|exercise| {
            let all: Vec<String> = exercise.flags.iter().map(|flag| words.flag(*flag).to_owned()).collect();
            if all.is_empty() { words.text(Key::FoldNone).to_owned() } else { words.list(&all) }
        })
    });
    view! {
        <section class="sheet">
            <Fold title=words.text(Key::WritePrescriber) inside>
                <Ticks legend=Key::WriteFlags all=PrescriberFlag::ALL.to_vec() say=move |one| upper(words.flag(one))
                    of=|it| &mut it.flags get=|it| &it.flags/>
                <Ticks legend=Key::WriteEquipment all=Equipment::ALL.to_vec() say=move |one| upper(words.equipment(one))
                    of=|it| &mut it.equipment get=|it| &it.equipment/>
                <Ticks legend=Key::WritePurposes all=Purpose::ALL.to_vec() say=move |one| upper(words.purpose(one))
                    of=|it| &mut it.purposes get=|it| &it.purposes/>
            </Fold>
        </section>
    }
}

/// A tick for each value of a list of the exercise.
#[component]
fn Ticks<T: Copy + PartialEq + Send + Sync + 'static>(
    legend: Key,
    all: Vec<T>,
    say: impl Fn(T) -> String,
    get: fn(&Exercise) -> &Vec<T>,
    of: fn(&mut Exercise) -> &mut Vec<T>,
) -> impl IntoView {
    let writer = Writer::current();
    let tick = |one: T| {
        let value = Signal::derive(move || writer.exercise.with(|exercise| get(exercise).contains(&one)));
        let put = move |on: bool| {
            writer.change(Touch::Once, |exercise| {
                let list = of(exercise);
                list.retain(|other| *other != one);
                list.extend(on.then_some(one));
            });
        };
        view! { <Tick label=say(one) value put/> }
    };
    view! {
        <fieldset class="risks">
            <legend>{writer.words().text(legend)}</legend>
            {all.into_iter().map(tick).collect_view()}
        </fieldset>
    }
}
