//! Bands, straps and sticks of the figure.

use exercises::authoring::Touch;
use exercises::catalogue::{End, Link, Quantity, Tie};
use leptos::prelude::*;
use strum::VariantArray;
use words::{Key, upper};

use super::writer::Writer;
use crate::clinic::fields::{Choice, Fold};

/// Each band, strap or stick with its two ends.
#[component]
pub fn Ties() -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let count = Memo::new(move |_| writer.figure().links.len());
    let inside = Signal::derive(move || {
        let all: Vec<String> = writer.figure().links.iter().map(|link| words.tie(link.tie).to_owned()).collect();
        if all.is_empty() { words.text(Key::FoldNone).to_owned() } else { words.list(&all) }
    });
    let add = move |_| {
        let link = Link { tie: Tie::Band, from: End::NearHand, to: End::FarHand };
        writer.change_figure(Touch::Once, |figure| figure.links.push(link));
    };
    let full = Memo::new(move |_| count.get() as i64 >= Quantity::Links.bound().max);
    view! {
        <Fold title=words.text(Key::DrawTies) inside>
            <For each=move || 0..count.get() key=|at| *at children=|at| view! { <One at/> }/>
            <button type="button" disabled=full on:click=add>{words.text(Key::DrawTieAdd)}</button>
        </Fold>
    }
}

/// One band, strap or stick.
#[component]
fn One(at: usize) -> impl IntoView {
    let writer = Writer::current();
    let words = writer.words();
    let of =
        move |get: fn(&Link) -> String| Signal::derive(move || writer.figure().links.get(at).map(get).unwrap_or_default());
    let change = move |change: &dyn Fn(&mut Link)| {
        writer.change_figure(Touch::Once, |figure| figure.links.get_mut(at).into_iter().for_each(change));
    };
    let ends = || End::VARIANTS.iter().map(|one| (format!("{one:?}"), upper(words.end(*one)))).collect::<Vec<_>>();
    let ties = Tie::VARIANTS.iter().map(|one| (format!("{one:?}"), upper(words.tie(*one)))).collect();
    let end = |chosen: &str| End::VARIANTS.iter().copied().find(|one| format!("{one:?}") == chosen);
    let put_tie = move |chosen: String| {
        let tie = Tie::VARIANTS.iter().copied().find(|one| format!("{one:?}") == chosen);
        change(&|link| link.tie = tie.unwrap_or(link.tie));
    };
    let put_from = move |chosen: String| change(&|link| link.from = end(&chosen).unwrap_or(link.from));
    let put_to = move |chosen: String| change(&|link| link.to = end(&chosen).unwrap_or(link.to));
    let remove = move |_| {
        writer.change_figure(Touch::Once, |figure| {
            if at < figure.links.len() {
                figure.links.remove(at);
            }
        });
    };
    view! {
        <div class="fields">
            <Choice label=words.text(Key::DrawTie) options=ties value=of(|link| format!("{:?}", link.tie)) choose=put_tie/>
            <Choice label=words.text(Key::DrawTieFrom) options=ends() value=of(|link| format!("{:?}", link.from)) choose=put_from/>
            <Choice label=words.text(Key::DrawTieTo) options=ends() value=of(|link| format!("{:?}", link.to)) choose=put_to/>
            <button type="button" class="quiet" on:click=remove>{words.text(Key::DrawTieRemove)}</button>
        </div>
    }
}
