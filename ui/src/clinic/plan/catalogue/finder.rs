//! What is looked for, and what is found.

use exercises::catalogue::Exercise;
use exercises::find::{Filter, Index, Shelf, Shelved, by_region, first};
use leptos::prelude::*;

use super::super::editor::PlanEditor;

/// Number of exercises that are drawn at first, and of those that each press on "Show more" adds: each has a figure, and of a thousand
/// nobody looks at all.
const DRAWN: usize = 100;

/// The state of the search.
#[derive(Clone, Copy)]
pub struct Finder {
    /// What was typed.
    pub typed: RwSignal<String>,
    /// What an exercise has to be.
    pub filter: RwSignal<Filter>,
    /// Whether what touches the patient's facts is left out.
    pub suiting: RwSignal<bool>,
    /// Whether all figures are looked at in place of the plan.
    pub figures: RwSignal<bool>,
    /// How many exercises are drawn.
    most: RwSignal<usize>,
    index: StoredValue<Index>,
    /// The places of the exercises that were found.
    pub found: Memo<Vec<usize>>,
}

impl Finder {
    /// The search of this editor, with nothing looked for yet.
    pub fn new(editor: PlanEditor) -> Finder {
        let words = editor.words();
        let index = editor.exercises.with_value(|all| {
            editor.prescribed.with_value(|n| Index::new(all, words.lang(), |one| words.finding_labels(one), n))
        });
        let index = StoredValue::new(index);
        let (typed, filter) = (RwSignal::new(String::new()), RwSignal::new(Filter::default()));
        let (suiting, most) = (RwSignal::new(false), RwSignal::new(DRAWN));
        let found = Memo::new(move |_| {
            let asked = filter.get();
            let asked = if suiting.get() { editor.facts.with(|facts| asked.suiting(facts)) } else { asked };
            editor.exercises.with_value(|all| {
                let fits = |place: usize| asked.is_empty() || all.get(place).is_some_and(|one| asked.fits(one));
                typed.with(|typed| index.with_value(|index| index.find(typed, fits)))
            })
        });
        Effect::new(move || {
            found.track();
            most.set(DRAWN);
        });
        Finder { typed, filter, suiting, figures: RwSignal::new(false), most, index, found }
    }

    /// The search of this page.
    pub fn current() -> Finder {
        expect_context()
    }

    /// Whether anything is looked for.
    pub fn seeks(self) -> bool {
        self.typed.with(|typed| !typed.trim().is_empty()) || self.filters_set() > 0
    }

    /// Number of filters that are set.
    pub fn filters_set(self) -> usize {
        let suiting = usize::from(self.suiting.get());
        self.filter.with(|filter| {
            let one = [filter.region.is_some(), filter.purpose.is_some(), filter.kind.is_some(), filter.posture.is_some()];
            let more = [filter.at_most.is_some(), !filter.unflagged.is_empty()];
            suiting + one.into_iter().chain(more).filter(|set| *set).count()
        })
    }

    /// Looks for nothing any more.
    pub fn clear(self) {
        self.typed.set(String::new());
        self.filter.set(Filter::default());
        self.suiting.set(false);
    }

    /// What is drawn, by shelf.
    pub fn shelves(self, exercises: &[Exercise]) -> Vec<Shelved> {
        let (figures, found) = (self.figures.get(), self.found.get());
        let all = if self.seeks() && !figures {
            vec![(Shelf::Found, found)]
        } else {
            self.index.with_value(|index| by_region(exercises, index, &found, !figures))
        };
        first(all, self.most.get())
    }

    /// Whether more was found than is drawn.
    pub fn has_more(self) -> bool {
        self.found.with(Vec::len) > self.most.get()
    }

    /// Draws more of what was found.
    pub fn show_more(self) {
        self.most.update(|most| *most += DRAWN);
    }
}
