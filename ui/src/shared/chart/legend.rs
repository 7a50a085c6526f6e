//! The meaning of the marks on the strings.

use exercises::chart::{LegendEntry, Shape};
use leptos::prelude::*;

use super::weeks::tied;
use crate::shared::AppContext;

/// Marks with their meanings: all of them, or only those in `only`.
#[component]
pub fn Legend(#[prop(optional)] only: Option<Vec<LegendEntry>>) -> impl IntoView {
    let words = AppContext::current().words();
    let all = || Shape::ALL.into_iter().map(LegendEntry::Mark).chain([LegendEntry::Gap, LegendEntry::Unseen]).collect();
    let signs: Vec<LegendEntry> = only.unwrap_or_else(all);
    let lines = signs.into_iter().map(|sign| view! { <li><Sample sign/>{words.sign(sign)}</li> });
    view! { <ul class="legend small soft">{lines.collect_view()}</ul> }
}

/// A piece of string with one sign.
#[component]
fn Sample(sign: LegendEntry) -> impl IntoView {
    let string = if sign == LegendEntry::Gap { "M8 0V4M8 16V20" } else { "M8 0V20" };
    let class = if sign == LegendEntry::Unseen { "string unseen" } else { "string" };
    let mark = match sign {
        LegendEntry::Mark(shape) => Some(tied(shape, 8.0, 10.0, 4.5)),
        LegendEntry::Gap | LegendEntry::Unseen => None,
    };
    view! { <svg viewBox="0 0 16 20" aria-hidden="true"><path class=class d=string/>{mark}</svg> }
}
