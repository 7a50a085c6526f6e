//! The plan that is being edited: the state that every part of the plan editor reads and changes.

use chrono::NaiveDate;
use exercises::catalogue::{Exercise, ExerciseId};
use exercises::draft::{Draft, ItemOption, PatientFacts, TypedField, Unread, options};
use exercises::id::ItemId;
use exercises::plan::check::Problem;
use exercises::plan::{Item, Prescription};
use exercises::review::ReviewAlarm;
use exercises::suggest::Suggestion;
use leptos::prelude::*;
use leptos::task::spawn_local;
use std::collections::BTreeSet;
use wire::clinic::{AskKeep, CheckPlan, Handover, IssueRequest, PlanCheck, PlanDraft};
use words::Words;
use words::clinic::{PlanSection, section_of};
use words::review::Names;

use crate::clinic::keeper::Keeper;
use crate::invoke;
use crate::shared::AppContext;

/// The plan that is being edited.
#[derive(Clone, Copy)]
pub struct PlanEditor {
    /// The state of the whole window.
    pub app: AppContext,
    /// The prescription so far.
    pub draft: RwSignal<Draft>,
    /// Input that cannot be read; it prevents the plan from being issued.
    pub unread: RwSignal<Unread>,
    /// What is ticked for the patient.
    pub facts: RwSignal<PatientFacts>,
    /// The revision that it will replace; `None` for a first plan.
    pub replaces: Option<u16>,
    /// The revision that it will have.
    pub revision: u16,
    /// The date of day 0 in the suggestions' day numbers.
    pub start: NaiveDate,
    /// The catalogue.
    pub exercises: StoredValue<Vec<Exercise>>,
    /// To how many of the clinic's patients each exercise was ever prescribed.
    pub prescribed: StoredValue<Vec<(ExerciseId, u32)>>,
    /// The rules' proposals.
    pub suggestions: StoredValue<Vec<Suggestion>>,
    /// The items of the last plan, carried over and not edited.
    pub carried: StoredValue<Vec<Item>>,
    /// Alarms that no card has cleared.
    pub alarms: StoredValue<Vec<ReviewAlarm>>,
    /// The code of the patient whose plan it is.
    code: StoredValue<String>,
    /// The problems that prevent the plan from being issued; `None` until the shell has checked it.
    pub problems: RwSignal<Option<Vec<Problem>>>,
    /// How the card would be handed over; `None` while that is not known.
    pub handover: RwSignal<Option<Handover>>,
    /// The items of which the rules say to talk first, as far as their options are shown.
    to_talk: RwSignal<BTreeSet<ItemId>>,
    /// The items for which somebody pressed an option, of all patients.
    chosen: RwSignal<BTreeSet<(String, ItemId)>>,
    /// Number of checks requested so far: only the last answer counts.
    asked: StoredValue<u32>,
}

impl PlanEditor {
    /// The editor for a draft from the shell, of the patient with `code`.
    pub fn new(app: AppContext, keeper: Keeper, code: String, draft: PlanDraft) -> PlanEditor {
        let editor = PlanEditor {
            app,
            code: StoredValue::new(code),
            unread: RwSignal::new(draft.unread),
            draft: RwSignal::new(draft.draft),
            facts: RwSignal::new(draft.facts),
            replaces: draft.replaces,
            revision: draft.revision,
            start: draft.start,
            exercises: StoredValue::new(draft.exercises),
            prescribed: StoredValue::new(draft.prescribed),
            suggestions: StoredValue::new(draft.suggestions),
            carried: StoredValue::new(draft.carried),
            alarms: StoredValue::new(draft.alarms),
            problems: RwSignal::new(None),
            handover: RwSignal::new(None),
            to_talk: RwSignal::new(BTreeSet::new()),
            chosen: keeper.chosen,
            asked: StoredValue::new(0),
        };
        Effect::new(move || editor.check(editor.draft.with(|draft| draft.prescription.clone())));
        // Merely looking at a plan must not store a draft: the first state is the one that came from the shell.
        Effect::new(move |seen: Option<()>| {
            let state = editor.state();
            if seen.is_some() {
                keeper.keep(state);
            }
        });
        editor
    }

    /// Notes whether the rules say to talk about an item first.
    pub fn set_to_talk(self, item: ItemId, talk: bool) {
        self.to_talk.update(|all| {
            if talk {
                all.insert(item);
            } else {
                all.remove(&item);
            }
        });
    }

    /// Notes that somebody pressed an option of an item.
    pub fn set_chosen(self, item: ItemId) {
        self.chosen.update(|all| {
            all.insert((self.code.get_value(), item));
        });
    }

    /// Whether somebody pressed an option of an item since the last card.
    pub fn is_chosen(self, item: ItemId) -> bool {
        self.chosen.with(|all| all.contains(&(self.code.get_value(), item)))
    }

    /// Whether an item is to be talked about first and nobody has chosen what becomes of it.
    pub fn is_undecided(self, item: ItemId) -> bool {
        self.to_talk.with(|all| all.contains(&item)) && !self.is_chosen(item)
    }

    /// The draft in the form in which the shell stores it.
    fn state(self) -> AskKeep {
        let code = self.code.get_value();
        let (unread, facts) = (self.unread.get(), self.facts.get());
        AskKeep { code, draft: self.draft.get(), replaces: self.replaces, unread, facts }
    }

    /// Takes the input of a field. If it could be read, `put` writes the value into the draft. Otherwise the text is stored as
    /// unread: the field keeps showing it, and the plan cannot be issued.
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

    /// Why the input of a field cannot be used.
    pub fn unread_at(self, field: TypedField) -> Option<String> {
        self.unread.with(|all| all.get(field).map(|typed| self.words().unread(field, typed)))
    }

    /// Why each unreadable input cannot be used, with its place. While there are any, the plan cannot be issued.
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

    /// The editor of this page.
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

    /// A value of one item; `other` if the item was removed.
    pub fn item<T>(self, id: ItemId, other: T, of: impl FnOnce(&Item) -> T) -> T {
        self.draft.with(|draft| draft.prescription.item(id).map_or(other, of))
    }

    /// The options for an item of the last plan.
    pub fn options(self, suggestion: &Suggestion) -> Vec<ItemOption> {
        let age = self.draft.with_untracked(|draft| draft.prescription.age);
        self.carried.with_value(|carried| {
            let item = carried.iter().find(|item| item.id == suggestion.item);
            item.map(|item| options(item, suggestion, self.exercise(&item.exercise).as_ref(), age)).unwrap_or_default()
        })
    }

    /// Whether the last plan has an item.
    pub fn is_carried(self, id: ItemId) -> bool {
        self.carried.with_value(|carried| carried.iter().any(|item| item.id == id))
    }

    /// Whether something else is planned for an item of the last plan than the suggestion proposes.
    pub fn departs_from(self, suggestion: &Suggestion) -> bool {
        self.carried.with_value(|carried| self.draft.with(|draft| draft.departs_from(suggestion, carried)))
    }

    /// Puts an item into the state of an option.
    pub fn choose(self, option: &ItemOption) {
        self.carried.with_value(|carried| self.edit(|draft| draft.choose(option, carried)));
    }

    /// A value of the prescription.
    pub fn plan<T>(self, of: impl FnOnce(&Prescription) -> T) -> T {
        self.draft.with(|draft| of(&draft.prescription))
    }

    /// An exercise of the catalogue.
    pub fn exercise(self, id: &ExerciseId) -> Option<Exercise> {
        self.exercises.with_value(|all| all.iter().find(|exercise| exercise.id == *id).cloned())
    }

    /// Calls `say` with the names of this plan's parts.
    pub fn named<T>(self, say: impl FnOnce(Names<'_>) -> T) -> T {
        self.draft.with(|draft| {
            self.exercises.with_value(|exercises| say(Names::of_prescription(self.words(), &draft.prescription, exercises)))
        })
    }

    /// The problems that prevent the plan from being issued and are corrected at `place`.
    pub fn problems_at(self, place: PlanSection) -> Vec<String> {
        let words = self.words();
        let here = |problem: &&Problem| section_of(problem) == place;
        self.problems
            .with(|problems| problems.iter().flatten().filter(here).map(|problem| words.problem_here(problem)).collect())
    }

    /// Asks the shell for the problems that prevent `prescription` from being issued, and how its card would be handed over.
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
                Ok(PlanCheck { problems, handover }) => {
                    let _ = self.handover.try_set(handover);
                    drop(self.problems.try_set(Some(problems)));
                }
                Err(failure) => self.app.fault.set(Some(failure)),
            }
        });
    }
}
