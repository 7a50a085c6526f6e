//! What is around the figure, and what of it touches something that does not move.

use exercises::authoring::Touch;
use exercises::catalogue::{Contact, Figure, Furniture};
use leptos::prelude::*;
use strum::VariantArray;
use words::{Key, upper};

use super::writer::Writer;
use crate::clinic::fields::{Choice, Fold, Tick};

/// Ticks for things and contacts, which contact holds the figure in place, and the plumb line.
#[component]
pub fn Scene() -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let things = Signal::derive(move || {
        let all: Vec<String> = writer.figure().furniture.iter().map(|one| words.thing(*one).to_owned()).collect();
        if all.is_empty() { words.text(Key::FoldNone).to_owned() } else { words.list(&all) }
    });
    let contacts = Signal::derive(move || {
        let all: Vec<String> = writer.figure().contacts.iter().map(|one| words.contact(*one).to_owned()).collect();
        if all.is_empty() { words.text(Key::FoldNone).to_owned() } else { words.list(&all) }
    });
    let plumb = Signal::derive(move || writer.figure().plumb);
    let put_plumb = move |on| writer.change_figure(Touch::Once, |figure| figure.plumb = on);
    view! {
        <Fold title=words.text(Key::DrawThings) inside=things>
            <div class="risks">
                {Furniture::VARIANTS.iter().map(|one| view! {
                    <Of one=*one label=upper(words.thing(*one)) get=|it| &it.furniture of=|it| &mut it.furniture/>
                }).collect_view()}
                <Tick label=words.text(Key::DrawPlumb) value=plumb put=put_plumb/>
            </div>
        </Fold>
        <Fold title=words.text(Key::DrawContacts) inside=contacts>
            <Anchor/>
            <div class="risks">
                {Contact::VARIANTS.iter().map(|one| view! {
                    <Of one=*one label=upper(words.contact(*one)) get=|it| &it.contacts of=|it| &mut it.contacts/>
                }).collect_view()}
            </div>
        </Fold>
    }
}

/// A tick for one value of a list of the figure.
#[component]
fn Of<T: Copy + PartialEq + Send + Sync + 'static>(
    one: T,
    label: String,
    get: fn(&Figure) -> &Vec<T>,
    of: fn(&mut Figure) -> &mut Vec<T>,
) -> impl IntoView {
    let writer = Writer::current();
    let value = Signal::derive(move || get(&writer.figure()).contains(&one));
    let put = move |on: bool| {
        writer.change_figure(Touch::Once, |figure| {
            let list = of(figure);
            list.retain(|other| *other != one);
            list.extend(on.then_some(one));
        });
    };
    view! { <Tick label value put/> }
}

/// The contact that holds the figure in place.
#[component]
fn Anchor() -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let contacts = Memo::new(move |_| writer.figure().contacts);
    let value = Signal::derive(move || contacts.with(|all| all.first().map(|one| format!("{one:?}")).unwrap_or_default()));
    let choose = move |chosen: String| {
        writer.change_figure(Touch::Once, |figure| {
            let first = |one: &Contact| format!("{one:?}") != chosen;
            figure.contacts.sort_by_key(first);
        });
    };
    move || {
        let options: Vec<(String, String)> =
            contacts.with(|all| all.iter().map(|one| (format!("{one:?}"), upper(words.contact(*one)))).collect());
        (options.len() > 1).then(|| view! { <Choice label=words.text(Key::DrawAnchor) options value choose/> })
    }
}
