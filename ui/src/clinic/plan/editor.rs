//! The plan on the table: what every part of the composing page reads and changes.

use exercises::catalogue::{Exercise, ExerciseId};
use exercises::draft::Draft;
use exercises::id::ItemId;
use exercises::plan::check::Problem;
use exercises::plan::{Item, Plan};
use exercises::review::ReviewAlarm;
use exercises::suggest::Suggestion;
use leptos::prelude::*;
use leptos::task::spawn_local;
use wire::clinic::{CheckPlan, IssueRequest, PlanDraft};
use words::Words;
use words::clinic::{PlanSection, section_of};
use words::review::Names;

use crate::invoke;
use crate::shared::AppContext;

/// The plan on the table.
#[derive(Clone, Copy)]
pub struct PlanEditor {
    /// The window's own.
    pub app: AppContext,
    /// The plan as it would be issued now.
    pub draft: RwSignal<Draft>,
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
    pub fn new(app: AppContext, code: String, draft: PlanDraft) -> PlanEditor {
        let editor = PlanEditor {
            app,
            code: StoredValue::new(code),
            draft: RwSignal::new(Draft { plan: draft.plan, used: draft.used, earlier: draft.earlier }),
            exercises: StoredValue::new(draft.exercises),
            suggestions: StoredValue::new(draft.suggestions),
            alarms: StoredValue::new(draft.alarms),
            problems: RwSignal::new(None),
            asked: StoredValue::new(0),
        };
        Effect::new(move || editor.check(editor.draft.with(|draft| draft.plan.clone())));
        editor
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
        self.draft.with(|draft| draft.plan.item(id).map_or(other, of))
    }

    /// What the plan says.
    pub fn plan<T>(self, of: impl FnOnce(&Plan) -> T) -> T {
        self.draft.with(|draft| of(&draft.plan))
    }

    /// An exercise of the catalogue.
    pub fn exercise(self, id: &ExerciseId) -> Option<Exercise> {
        self.exercises.with_value(|all| all.iter().find(|exercise| exercise.id == *id).cloned())
    }

    /// Says something with the names of this plan's parts.
    pub fn named<T>(self, say: impl FnOnce(Names<'_>) -> T) -> T {
        self.draft
            .with(|draft| self.exercises.with_value(|exercises| say(Names::of_plan(self.words(), &draft.plan, exercises))))
    }

    /// What keeps the plan from being issued and is put right at `place`.
    pub fn problems_at(self, place: PlanSection) -> Vec<String> {
        let words = self.words();
        let here = |problem: &&Problem| section_of(problem) == place;
        self.problems
            .with(|problems| problems.iter().flatten().filter(here).map(|problem| words.problem_here(problem)).collect())
    }

    /// Asks the shell what keeps `plan` from being issued.
    fn check(self, plan: Plan) {
        self.asked.update_value(|asked| *asked += 1);
        let mine = self.asked.get_value();
        let request = IssueRequest { code: self.code.get_value(), plan };
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
