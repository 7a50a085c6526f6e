//! The figure of the exercise: which one, its positions, and everything that is in the picture.

use exercises::authoring::{Touch, put_pose_in, take_pose_out};
use exercises::catalogue::{Exercise, Quantity, RungId, View as Seen};
use leptos::prelude::*;
use strum::VariantArray;
use words::{Key, upper};

use super::arrow::ArrowFields;
use super::board::Board;
use super::joints::Joints;
use super::scene::Scene;
use super::ties::Ties;
use super::writer::Writer;
use crate::clinic::fields::{Choice, Fold};

/// Everything about the figure.
#[component]
pub fn FigureFields() -> impl IntoView {
    let words = Writer::current().words();
    view! {
        <section class="sheet">
            <Fold title=words.text(Key::DrawFigure) inside=Signal::stored(String::new()) open=true>
                <div class="fields"><Like/><Which/><ViewChoice/></div>
                <p class="small soft">{words.text(Key::DrawNearFar)}</p>
                <div class="drawing-table">
                    <div class="stack-2"><Positions/><Board/></div>
                    <Joints/>
                </div>
                <ArrowFields/>
                <Scene/>
                <Ties/>
            </Fold>
        </section>
    }
}

/// A figure of another exercise to begin with.
#[component]
fn Like() -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let options = move || {
        let name = |(at, one): (usize, &Exercise)| (at.to_string(), words.exercise_name(one).to_owned());
        let mut all: Vec<(String, String)> = writer.others.with(|all| all.iter().enumerate().map(name).collect());
        all.sort_by_key(|(_, name)| name.to_lowercase());
        [vec![(String::new(), words.text(Key::DrawLikeChoose).to_owned())], all].concat()
    };
    let choose = move |at: String| {
        let other = at.parse().ok().and_then(|at: usize| writer.others.with_untracked(|all| all.get(at).cloned()));
        if let Some(other) = other {
            let figure = other.level(other.first_rung().map(|rung| &rung.id)).figure();
            writer.change_figure(Touch::Once, |mine| *mine = figure);
            writer.pose.set(0);
        }
    };
    let chosen = Signal::stored(String::new());
    move || view! { <Choice label=words.text(Key::DrawLike) options=options() value=chosen choose/> }
}

/// Whose figure is changed: the exercise's, or that of a level which has its own.
#[component]
fn Which() -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let own = Memo::new(move |_| {
        writer.exercise.with(|exercise| {
            let rungs = exercise.ladders.iter().flat_map(|ladder| &ladder.rungs).filter(|rung| rung.figure.is_some());
            rungs.map(|rung| (rung.id.clone(), words.level_named(exercise, &rung.id))).collect::<Vec<_>>()
        })
    });
    let value = Signal::derive(move || writer.level.get().map(|id| id.to_string()).unwrap_or_default());
    let choose = move |chosen: String| writer.level.set(RungId::new(chosen).ok());
    move || {
        let levels = own.get();
        let options = levels.iter().map(|(id, name)| (id.to_string(), name.clone()));
        let of_exercise = (String::new(), upper(words.text(Key::DrawOfExercise)));
        let options: Vec<(String, String)> = [of_exercise].into_iter().chain(options).collect();
        (!levels.is_empty()).then(|| view! { <Choice label=words.text(Key::DrawOf) options value choose/> })
    }
}

/// From where the figure is seen.
#[component]
fn ViewChoice() -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let options = Seen::VARIANTS.iter().map(|one| (format!("{one:?}"), upper(words.view(*one)))).collect();
    let value = Signal::derive(move || format!("{:?}", writer.figure().view));
    let choose = move |chosen: String| {
        if let Some(view) = Seen::VARIANTS.iter().copied().find(|one| format!("{one:?}") == chosen) {
            writer.change_figure(Touch::Once, |figure| figure.view = view);
        }
    };
    view! { <Choice label=words.text(Key::DrawView) options value choose/> }
}

/// The positions, one of which is shown, and buttons to add and remove one.
#[component]
fn Positions() -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let count = Memo::new(move |_| writer.figure().poses.len());
    let shown = Memo::new(move |_| writer.pose_shown());
    let tab = move |at: usize| {
        let label = move || match at {
            0 => words.text(Key::DrawStart).to_owned(),
            _ if at + 1 == count.get() => words.text(Key::DrawEnd).to_owned(),
            _ => words.draw_middle(at),
        };
        view! {
            <button type="button" aria-pressed=move || (shown.get() == at).to_string() on:click=move |_| writer.pose.set(at)>{label}</button>
        }
    };
    let add = move |_| {
        let at = shown.get_untracked().min(count.get_untracked().saturating_sub(2));
        writer.change_figure(Touch::Once, |figure| {
            put_pose_in(figure, at);
        });
        writer.pose.set(at + 1);
    };
    let remove = move |_| {
        writer.change_figure(Touch::Once, |figure| {
            take_pose_out(figure, shown.get_untracked());
        });
    };
    let as_start = move |_| {
        writer.change_figure(Touch::Once, |figure| {
            if let Some(first) = figure.poses.first().cloned() {
                figure.poses[shown.get_untracked()] = first;
            }
        });
    };
    let full = Memo::new(move |_| count.get() as i64 >= Quantity::Poses.bound().max);
    let fewest = Memo::new(move |_| count.get() as i64 <= Quantity::Poses.bound().min);
    view! {
        <div class="options" role="group" aria-label=words.text(Key::DrawPosition)>
            <For each=move || 0..count.get() key=|at| *at children=tab/>
        </div>
        <div class="presses">
            <button type="button" class="quiet" disabled=full on:click=add>{words.text(Key::DrawAdd)}</button>
            <button type="button" class="quiet" disabled=move || shown.get() == 0 on:click=as_start>{words.text(Key::DrawCopyStart)}</button>
            <button type="button" class="quiet" disabled=fewest on:click=remove>{words.text(Key::DrawRemove)}</button>
        </div>
    }
}
