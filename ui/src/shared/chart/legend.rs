//! What the marks on the strings mean.

use exercises::chart::{Shape, Sign};
use leptos::prelude::*;

use super::weeks::tied;
use crate::shared::House;

/// Marks with their words: all of them, or `only` those that occur.
#[component]
pub fn Legend(#[prop(optional)] only: Option<Vec<Sign>>) -> impl IntoView {
    let words = House::here().words();
    let all = || Shape::ALL.into_iter().map(Sign::Mark).chain([Sign::Gap, Sign::Unseen]).collect();
    let signs: Vec<Sign> = only.unwrap_or_else(all);
    let lines = signs.into_iter().map(|sign| view! { <li><Sample sign/>{words.sign(sign)}</li> });
    view! { <ul class="legend small soft">{lines.collect_view()}</ul> }
}

/// A piece of string with one sign.
#[component]
fn Sample(sign: Sign) -> impl IntoView {
    let string = if sign == Sign::Gap { "M8 0V4M8 16V20" } else { "M8 0V20" };
    let class = if sign == Sign::Unseen { "string unseen" } else { "string" };
    let mark = match sign {
        Sign::Mark(shape) => Some(tied(shape, 8.0, 10.0, 4.5)),
        Sign::Gap | Sign::Unseen => None,
    };
    view! { <svg viewBox="0 0 16 20" aria-hidden="true"><path class=class d=string/>{mark}</svg> }
}
