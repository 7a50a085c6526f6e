//! The exercise that is being written: the state that every part of the page reads and changes.

use exercises::authoring::{Edited, Lack, Place, Touch, figure_of, lacks};
use exercises::catalogue::{Exercise, Figure, Lang, RungId};
use leptos::prelude::*;
use wire::app::ShowCatalogue;
use wire::prescribing::{OwnEdited, ShowOwn};
use words::Words;

use crate::clinic::context::ClinicContext;
use crate::clinic::keeper::Unfinished;

/// The exercise that is being written.
#[derive(Clone, Copy)]
pub struct Writer {
    /// The clinic's side.
    pub context: ClinicContext,
    /// The exercise with its changes.
    pub edited: RwSignal<Edited>,
    /// As it is now.
    pub exercise: Memo<Exercise>,
    /// The language in which texts are written.
    pub lang: RwSignal<Lang>,
    /// The level whose figure is changed; `None` for the exercise's.
    pub level: RwSignal<Option<RungId>>,
    /// The place of the position that is shown.
    pub pose: RwSignal<usize>,
    /// The other exercises.
    pub others: RwSignal<Vec<Exercise>>,
    /// What keeps it from being saved.
    pub lacks: Memo<Vec<(Place, Lack)>>,
    /// The number under which it is kept unfinished.
    pub unfinished: StoredValue<Unfinished, LocalStorage>,
}

impl Writer {
    /// The page's state for an exercise from the shell or the start of a new one.
    pub fn new(context: ClinicContext, begun: OwnEdited) -> Writer {
        let lang = context.app.words().lang();
        let lang =
            if begun.exercise.texts.contains_key(&lang) { Some(lang) } else { begun.exercise.texts.keys().next().copied() };
        let edited = RwSignal::new(Edited::new(begun.exercise.clone()));
        let exercise = Memo::new(move |_| edited.with(|edited| edited.exercise().clone()));
        let others = RwSignal::new(Vec::new());
        find_others(context, begun.exercise.clone(), others);
        let lacks = Memo::new(move |_| {
            let names: Vec<(Lang, String)> = others.with(|all| all.iter().flat_map(names_of).collect());
            exercise.with(|exercise| lacks(exercise, &names))
        });
        let unfinished = Unfinished::default();
        unfinished.set(begun.draft);
        let writer = Writer {
            context,
            edited,
            exercise,
            lang: RwSignal::new(lang.unwrap_or(Lang::En)),
            level: RwSignal::new(None),
            pose: RwSignal::new(0),
            others,
            lacks,
            unfinished: StoredValue::new_local(unfinished),
        };
        // Merely looking at an exercise keeps nothing: the first state came from the shell, or is a blank or a copy.
        Effect::new(move |seen: Option<()>| {
            let now = exercise.get();
            if seen.is_some() {
                context.keeper.keep_exercise(writer.unfinished.get_value(), now);
            }
        });
        writer
    }

    /// The state of this page.
    pub fn current() -> Writer {
        expect_context()
    }

    /// The texts of the window.
    pub fn words(self) -> Words {
        self.context.app.words()
    }

    /// Changes the exercise.
    pub fn change(self, touch: Touch, change: impl FnOnce(&mut Exercise)) {
        self.edited.update(|edited| edited.change(touch, change));
    }

    /// Changes the figure that is shown.
    pub fn change_figure(self, touch: Touch, change: impl FnOnce(&mut Figure)) {
        let level = self.level.get_untracked();
        self.change(touch, |exercise| change(figure_of(exercise, level.as_ref())));
    }

    /// The figure that is shown.
    pub fn figure(self) -> Figure {
        let level = self.level.get();
        self.exercise.with(|exercise| {
            let own = level.as_ref().and_then(|level| exercise.rung(level)).and_then(|rung| rung.figure.clone());
            own.unwrap_or_else(|| exercise.poses.clone())
        })
    }

    /// The place of the position that is shown, of those that there are.
    pub fn pose_shown(self) -> usize {
        self.pose.get().min(self.figure().poses.len().saturating_sub(1))
    }

    /// Ends a change that goes on, so that the next is undone apart from it.
    pub fn end_change(self) {
        self.edited.update_untracked(Edited::end_change);
    }

    /// What is wrong in one place, other than that nothing is written there.
    pub fn lack_at(self, place: &Place) -> Option<String> {
        let words = self.words();
        let here = |(other, lack): &&(Place, Lack)| other == place && *lack != Lack::Empty;
        self.lacks.with(|lacks| lacks.iter().find(here).map(|(_, lack)| words.lack(*lack)))
    }
}

fn names_of(exercise: &Exercise) -> Vec<(Lang, String)> {
    exercise.texts.iter().map(|(lang, texts)| (*lang, texts.name.clone())).collect()
}

/// Looks up the other exercises that plans can be made of.
fn find_others(context: ClinicContext, exercise: Exercise, others: RwSignal<Vec<Exercise>>) {
    let app = context.app;
    app.query::<ShowOwn>((), move |own| {
        app.query::<ShowCatalogue>((), move |shipped| {
            // Its own earlier revision is no other exercise.
            let other = |line: &wire::prescribing::OwnLine| line.offered && line.name != exercise.id.as_str();
            let own = own.lines.into_iter().filter(other).map(|line| line.exercise);
            let _ = others.try_set(own.chain(shipped).collect());
        });
    });
}
