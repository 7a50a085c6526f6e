//! Is the plan working: seconds on one leg.

use exercises::chart::{StanceGroup, groups, stance};
use leptos::prelude::*;
use words::Key;
use words::review::{ReviewQuestion, upper};

use super::context::ReviewContext;
use super::finding::Finding;
use crate::clinic::fields::Fold;
use crate::shared::chart::StanceView;

/// The latest conditions are shown with their chart; other conditions, published times and the times at the visits are folded below.
#[component]
pub fn Balance() -> impl IntoView {
    let context = ReviewContext::current();
    let words = context.words;
    let mut all = context.read(|review, _| groups(&review.balance)).unwrap_or_default().into_iter();
    let visits = context.read(|review, _| words.visit_stances(&review.baselines, review.start)).unwrap_or_default();
    let latest = all.next();
    let none = latest.is_none().then(|| view! { <p class="soft">{words.unanswered(ReviewQuestion::Balance)}</p> });
    let norms = latest.as_ref().map(|group| norms_of(&context, group)).unwrap_or_default();
    let (others, lines): (Vec<StanceGroup>, Vec<String>) = (all.collect(), [norms, visits].concat());
    let more = (!others.is_empty() || !lines.is_empty()).then(|| {
        view! {
            <Fold title=words.text(Key::ReviewOther) inside=Signal::stored(String::new())>
                {others.into_iter().map(|group| view! { <Group group norms=true/> }).collect_view()}
                <ul class="small lines">{lines.into_iter().map(|line| view! { <li>{line}</li> }).collect_view()}</ul>
            </Fold>
        }
    });
    view! {
        <section>
            <h2>{context.question(ReviewQuestion::Balance)}</h2>
            {none}
            {latest.map(|group| view! { <Group group/> })}
            {more}
        </section>
    }
}

/// Published times for comparison with the group's, or why there are none.
fn norms_of(context: &ReviewContext, group: &StanceGroup) -> Vec<String> {
    context.read(|review, _| context.words.against_norms_by_leg(&group.legs, review.start)).unwrap_or_default()
}

/// One set of conditions with both legs, and published times if `norms` is set.
#[component]
fn Group(group: StanceGroup, #[prop(optional)] norms: bool) -> impl IntoView {
    let context = ReviewContext::current();
    let words = context.words;
    let norms = if norms { norms_of(&context, &group) } else { Vec::new() };
    let title = context.read(|_, names| words.stance_conditions(&group, names)).unwrap_or_default();
    let sides = context.read(|review, _| {
        let of_group = review.sides.iter().filter(|sides| group.legs.iter().any(|leg| leg.conditions() == sides.conditions));
        of_group.map(|sides| words.side_to_side(&sides.sides)).collect::<Vec<_>>()
    });
    let legs = group.legs.iter().map(|series| {
        view! { <Finding before=format!("{}:", upper(&words.leg_or_both(series.leg))) said=words.stance(series)/> }
    });
    let legs = legs.collect_view();
    let sway = group.legs.iter().filter_map(|series| {
        let said = words.sway_series(series.sway.as_ref()?).join(" ");
        Some(view! { <p class="small">{upper(&words.leg_or_both(series.leg))}": "{said}</p> })
    });
    let sway = sway.collect_view();
    let chart = move || {
        let axis = context.points(true)?;
        let label = words.text(Key::ChartStance).to_owned();
        Some(view! { <StanceView chart=stance(&group, &axis) label changes=context.changes_on(&axis)/> })
    };
    view! {
        <article>
            <p class="small soft">{title}</p>
            {legs}
            {sway}
            {norms.into_iter().map(|line| view! { <p class="small">{line}</p> }).collect_view()}
            {sides.unwrap_or_default().into_iter().map(|line| view! { <p>{line}</p> }).collect_view()}
            {chart}
        </article>
    }
}
