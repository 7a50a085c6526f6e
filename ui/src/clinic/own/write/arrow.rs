//! The arrow of the figure.

use exercises::authoring::{Touch, arrow_of_movement};
use exercises::catalogue::{Arrow, Landmark, Quantity};
use leptos::prelude::*;
use strum::VariantArray;
use words::{Key, upper};

use super::writer::Writer;
use crate::clinic::fields::{Choice, Slide};

/// Buttons that draw an arrow along the movement or take it away, and its place and shape.
#[component]
pub fn ArrowFields() -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let still = RwSignal::new(false);
    let along = move |_| {
        let arrow = arrow_of_movement(&untrack(|| writer.figure()));
        still.set(arrow.is_none());
        if let Some(arrow) = arrow {
            writer.change_figure(Touch::Once, |figure| figure.arrows = vec![arrow]);
        }
    };
    let none = move |_| writer.change_figure(Touch::Once, |figure| figure.arrows.clear());
    let any = Memo::new(move |_| !writer.figure().arrows.is_empty());
    view! {
        <div class="stack-2">
            <div class="presses">
                <button type="button" on:click=along>{words.text(Key::DrawArrowAlong)}</button>
                <button type="button" class="quiet" disabled=move || !any.get() on:click=none>{words.text(Key::DrawArrowNone)}</button>
            </div>
            <p class="small soft" role="status">{move || still.get().then(|| words.text(Key::DrawStill))}</p>
            <Show when=move || any.get()><Shape/></Show>
        </div>
    }
}

/// Place and shape of the first arrow.
#[component]
fn Shape() -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let slide = move |label: Key, quantity: Quantity, get: fn(&Arrow) -> i16, of: fn(&mut Arrow) -> &mut i16| {
        let value = Signal::derive(move || writer.figure().arrows.first().map_or(0, get));
        let bound = quantity.bound();
        let put = move |to: i16| {
            writer.change_figure(Touch::Once, |figure| {
                figure.arrows.first_mut().into_iter().for_each(|arrow| *of(arrow) = to)
            });
        };
        view! { <Slide label=words.text(label) value range=(bound.min as i16, bound.max as i16) put left=move || writer.end_change()/> }
    };
    let marks = Landmark::VARIANTS.iter().map(|one| (format!("{one:?}"), upper(words.landmark(*one)))).collect();
    let at =
        Signal::derive(move || writer.figure().arrows.first().map(|arrow| format!("{:?}", arrow.at)).unwrap_or_default());
    let put_at = move |chosen: String| {
        if let Some(at) = Landmark::VARIANTS.iter().copied().find(|one| format!("{one:?}") == chosen) {
            writer
                .change_figure(Touch::Once, |figure| figure.arrows.first_mut().into_iter().for_each(|arrow| arrow.at = at));
        }
    };
    view! {
        <div class="fields">
            <Choice label=words.text(Key::DrawArrowAt) options=marks value=at choose=put_at/>
            {slide(Key::DrawArrowRight, Quantity::ArrowOffset, |arrow| arrow.right_cm, |arrow| &mut arrow.right_cm)}
            {slide(Key::DrawArrowUp, Quantity::ArrowOffset, |arrow| arrow.up_cm, |arrow| &mut arrow.up_cm)}
            {slide(Key::DrawArrowToward, Quantity::ArrowToward, |arrow| arrow.toward_deg, |arrow| &mut arrow.toward_deg)}
            {slide(Key::DrawArrowLength, Quantity::ArrowLength, |arrow| arrow.length_cm, |arrow| &mut arrow.length_cm)}
            {slide(Key::DrawArrowBend, Quantity::ArrowBend, |arrow| arrow.bend_deg, |arrow| &mut arrow.bend_deg)}
        </div>
    }
}
