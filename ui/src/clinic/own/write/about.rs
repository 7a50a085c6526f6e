//! What the exercise is: region, kind, dose, sides, posture.

use exercises::authoring::{Touch, of_kind};
use exercises::catalogue::{Exercise, Kind, Posture, Region, Sidedness};
use leptos::prelude::*;
use words::{Key, upper};

use super::dose::Dose;
use super::writer::Writer;
use crate::clinic::fields::{Choice, Fold, Tick};

/// Region, kind, dose, sides and posture.
#[component]
pub fn About() -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let inside = Signal::derive(move || {
        writer.exercise.with(|exercise| words.exercise_line(words.region(exercise.region), words.kind(exercise.kind)))
    });
    let kinds: Vec<Kind> = Kind::ALL.to_vec();
    let postures: Vec<Option<Posture>> = Posture::ALL.into_iter().map(Some).collect();
    let put_side = |exercise: &mut Exercise, side: Sidedness| {
        exercise.side = side;
        // A level that said otherwise would now contradict it.
        exercise.ladders.iter_mut().flat_map(|ladder| &mut ladder.rungs).for_each(|rung| rung.side = None);
    };
    let kind = Memo::new(move |_| writer.exercise.with(|exercise| exercise.kind));
    let sides = move || {
        let all = kind.get().rules().sides().to_vec();
        let say = move |one| words.sidedness(one).to_owned();
        (all.len() > 1).then(|| view! { <One label=Key::WriteSides all say get=|it| it.side put=put_side/> })
    };
    let test = Signal::derive(move || writer.exercise.with(|exercise| exercise.test));
    let put_test = move |on| {
        writer.change(Touch::Once, |exercise| {
            exercise.test = on;
            exercise.step_rules.clear();
        });
    };
    view! {
        <section class="sheet">
            <Fold title=words.text(Key::WriteWhatItIs) inside open=true>
                <div class="fields">
                    <One label=Key::WriteRegion all=Region::ALL.to_vec() say=move |one| words.region(one).to_owned()
                        get=|it| it.region put=|it, one| it.region = one/>
                    <One label=Key::WriteKind all=kinds say=move |one| upper(words.kind(one)) get=|it| it.kind put=of_kind/>
                    {sides}
                    <One label=Key::WritePosture all=postures
                        say=move |one| one.map(|one| upper(words.posture(one))).unwrap_or_default()
                        get=|it| it.posture put=|it, one| it.posture = one/>
                </div>
                <p class="small soft">{words.text(Key::WriteDose)}</p>
                <Dose level=None/>
                <Tick label=words.text(Key::WriteTest) value=test put=put_test/>
            </Fold>
        </section>
    }
}

/// One choice of the exercise.
#[component]
fn One<T: Copy + PartialEq + Send + Sync + 'static>(
    label: Key,
    all: Vec<T>,
    say: impl Fn(T) -> String,
    get: fn(&Exercise) -> T,
    put: fn(&mut Exercise, T),
) -> impl IntoView {
    let writer = Writer::current();
    let options: Vec<(String, String)> = all.iter().enumerate().map(|(place, one)| (place.to_string(), say(*one))).collect();
    let all = StoredValue::new(all);
    let value = Signal::derive(move || {
        let chosen = writer.exercise.with(get);
        let place = all.with_value(|all| all.iter().position(|one| *one == chosen));
        place.map(|place| place.to_string()).unwrap_or_default()
    });
    let choose = move |place: String| {
        let chosen = place.parse().ok().and_then(|place: usize| all.with_value(|all| all.get(place).copied()));
        if let Some(chosen) = chosen {
            writer.change(Touch::Once, |exercise| put(exercise, chosen));
        }
    };
    view! { <Choice label=writer.words().text(label) options value choose/> }
}
