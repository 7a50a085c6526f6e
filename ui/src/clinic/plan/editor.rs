//! The plan on the table: what every part of the composing page reads and changes.

use chrono::NaiveDate;
use exercises::catalogue::{Exercise, ExerciseId};
use exercises::draft::{Draft, TypedField, Unread};
use exercises::id::ItemId;
use exercises::plan::check::Problem;
use exercises::plan::{Item, Prescription};
use exercises::review::ReviewAlarm;
use exercises::suggest::Suggestion;
use leptos::prelude::*;
use leptos::task::spawn_local;
use wire::clinic::{AskKeep, CheckPlan, IssueRequest, PlanDraft};
use words::Words;
use words::clinic::{PlanSection, section_of};
use words::review::Names;

use crate::clinic::keeper::Keeper;
use crate::invoke;
use crate::shared::AppContext;

/// The plan on the table.
#[derive(Clone, Copy)]
pub struct PlanEditor {
    /// The window's own.
    pub app: AppContext,
    /// What would be prescribed now.
    pub draft: RwSignal<Draft>,
    /// What was typed and cannot be read; it keeps the plan from being issued.
    pub unread: RwSignal<Unread>,
    /// The revision that it will replace; `None` for a first plan.
    pub replaces: Option<u16>,
    /// Day 0 of the suggestions' day numbers.
    pub start: NaiveDate,
    /// The catalogue.
    pub exercises: StoredValue<Vec<Exercise>>,
    /// What the rules propose.
    pub suggestions: StoredValue<Vec<Suggestion>>,
    /// Alarms that no card has cleared.
    pub alarms: StoredValue<Vec<ReviewAlarm>>,
    /// Whose plan it is.
    code: StoredValue<String>,
    /// What keeps the plan from being issued; `None` until the shell has said so.
    pub problems: RwSignal<Option<Vec<Problem>>>,
    /// How often the shell was asked: only its last answer counts.
    asked: StoredValue<u32>,
}

impl PlanEditor {
    /// A draft as it comes from the shell, for the patient under `code`.
    pub fn new(app: AppContext, keeper: Keeper, code: String, draft: PlanDraft) -> PlanEditor {
        let editor = PlanEditor {
            app,
            code: StoredValue::new(code),
            unread: RwSignal::new(draft.unread),
            draft: RwSignal::new(draft.draft),
            replaces: draft.replaces,
            start: draft.start,
            exercises: StoredValue::new(draft.exercises),
            suggestions: StoredValue::new(draft.suggestions),
            alarms: StoredValue::new(draft.alarms),
            problems: RwSignal::new(None),
            asked: StoredValue::new(0),
        };
        Effect::new(move || editor.check(editor.draft.with(|draft| draft.prescription.clone())));
        // Looking at a plan begins no draft: the first state is the one that the shell gave.
        Effect::new(move |seen: Option<()>| {
            let state = editor.state();
            if seen.is_some() {
                keeper.keep(state);
            }
        });
        editor
    }

    /// The draft as the shell keeps it.
    fn state(self) -> AskKeep {
        let code = self.code.get_value();
        AskKeep { code, draft: self.draft.get(), replaces: self.replaces, unread: self.unread.get() }
    }

    /// Takes what was typed into a field: `put` writes the value that was read into the draft. Without one the text is kept as
    /// unread: the field keeps it, and the plan cannot be issued.
    pub fn type_in<T>(self, field: TypedField, text: &str, read: Option<T>, put: impl FnOnce(&mut Draft, T)) {
        let unread = read.is_none().then_some(text);
        if self.unread.with_untracked(|all| all.get(field) != unread) {
            self.unread.update(|all| all.put(field, unread));
        }
        if let Some(read) = read {
            let mut changed = self.draft.get_untracked();
            put(&mut changed, read);
            if self.draft.with_untracked(|draft| *draft != changed) {
                self.draft.set(changed);
            }
        }
    }

    /// Why what stands in a field cannot be taken.
    pub fn unread_at(self, field: TypedField) -> Option<String> {
        self.unread.with(|all| all.get(field).map(|typed| self.words().unread(field, typed)))
    }

    /// Why what was typed cannot be taken, each with its place. While there is any, the plan is not issued.
    pub fn unread_lines(self) -> Vec<String> {
        let standing = self.draft.with(|draft| {
            self.exercises.with_value(|all| {
                self.unread.with(|unread| unread.on_page(draft, all).into_iter().cloned().collect::<Vec<_>>())
            })
        });
        let say = |(field, typed): &(TypedField, String)| {
            self.words().unread_named(*field, typed, |item| self.named(|names| names.item(item)))
        };
        standing.iter().map(say).collect()
    }

    /// The one of this page.
    pub fn current() -> PlanEditor {
        expect_context()
    }

    /// The texts.
    pub fn words(self) -> Words {
        self.app.words()
    }

    /// Changes the draft.
    pub fn edit(self, change: impl FnOnce(&mut Draft)) {
        self.draft.update(change);
    }

    /// Changes one item.
    pub fn edit_item(self, id: ItemId, change: impl FnOnce(&mut Item)) {
        self.edit(|draft| draft.edit(id, change));
    }

    /// What one item says; `other` once it is taken out.
    pub fn item<T>(self, id: ItemId, other: T, of: impl FnOnce(&Item) -> T) -> T {
        self.draft.with(|draft| draft.prescription.item(id).map_or(other, of))
    }

    /// What is prescribed.
    pub fn plan<T>(self, of: impl FnOnce(&Prescription) -> T) -> T {
        self.draft.with(|draft| of(&draft.prescription))
    }

    /// An exercise of the catalogue.
    pub fn exercise(self, id: &ExerciseId) -> Option<Exercise> {
        self.exercises.with_value(|all| all.iter().find(|exercise| exercise.id == *id).cloned())
    }

    /// Says something with the names of this plan's parts.
    pub fn named<T>(self, say: impl FnOnce(Names<'_>) -> T) -> T {
        self.draft.with(|draft| {
            self.exercises.with_value(|exercises| say(Names::of_prescription(self.words(), &draft.prescription, exercises)))
        })
    }

    /// What keeps the plan from being issued and is put right at `place`.
    pub fn problems_at(self, place: PlanSection) -> Vec<String> {
        let words = self.words();
        let here = |problem: &&Problem| section_of(problem) == place;
        self.problems
            .with(|problems| problems.iter().flatten().filter(here).map(|problem| words.problem_here(problem)).collect())
    }

    /// Asks the shell what keeps `prescription` from being issued.
    fn check(self, prescription: Prescription) {
        self.asked.update_value(|asked| *asked += 1);
        let mine = self.asked.get_value();
        let request = IssueRequest { code: self.code.get_value(), prescription };
        spawn_local(async move {
            let answer = invoke::call::<CheckPlan>(&request).await;
            if self.asked.try_get_value() != Some(mine) {
                return;
            }
            match answer {
                Ok(problems) => drop(self.problems.try_set(Some(problems))),
                Err(failure) => self.app.fault.set(Some(failure)),
            }
        });
    }
}
