//! A patient's case: why it was closed, the plans that were issued, and what removing erases.

use crate::{Key, Words};
use exercises::catalogue::Exercise;
use exercises::closing::{CloseReason, Closing};
use exercises::plan::differ::{ItemChange, item_changes};
use exercises::plan::{Item, Plan};
use wire::cases::Held;

impl Words {
    /// Why a case is closed.
    pub fn close_reason(self, reason: CloseReason) -> &'static str {
        self.text(match reason {
            CloseReason::Finished => Key::CloseFinished,
            CloseReason::SentOn => Key::CloseSentOn,
            CloseReason::StoppedComing => Key::CloseStoppedComing,
            CloseReason::Other => Key::CloseOther,
        })
    }

    /// "Closed on 1 March: the treatment is finished", with what was said in words, and when it was opened again.
    pub fn closing(self, closing: &Closing) -> String {
        let on = self.date_in_full(closing.on);
        let reason = match (closing.reason, closing.words.as_str()) {
            (CloseReason::Other, words) => words.to_owned(),
            (reason, "") => self.close_reason(reason).to_owned(),
            (reason, words) => self.named_text(self.close_reason(reason), words),
        };
        let line = match closing.reopened {
            None => self.case_closed_on(&on, &reason),
            Some(day) => self.case_closed_and_reopened(&on, &reason, &self.date_in_full(day)),
        };
        closing.by.as_ref().map_or(line.clone(), |name| self.sentences(&[line, self.case_closed_by(name)]))
    }

    /// "Calf raise, on two feet: 3 sets of 10; every day at 18:00".
    pub fn issued_item(self, item: &Item, exercises: &[Exercise]) -> String {
        let dose = self.dose_prescribed(item);
        self.plan_item(&self.item_named(item, exercises), &dose, &self.due(item))
    }

    /// What the plan has that the one before it had not, a sentence each.
    pub fn plan_changes(self, before: &Plan, after: &Plan, exercises: &[Exercise]) -> Vec<String> {
        let sentence = |change: ItemChange| self.plan_change(change, before, after, exercises);
        let mut changes: Vec<String> = item_changes(before, after).into_iter().filter_map(sentence).collect();
        if before.prescription.review != after.prescription.review {
            changes.push(self.change_visit(&self.date_in_full(after.prescription.review)));
        }
        changes
    }

    fn plan_change(self, change: ItemChange, before: &Plan, after: &Plan, exercises: &[Exercise]) -> Option<String> {
        let named = |item: &Item| self.item_named(item, exercises);
        let both = |id| before.item(id).zip(after.item(id));
        Some(match change {
            ItemChange::New(id) => self.change_new(&self.issued_item(after.item(id)?, exercises)),
            ItemChange::Gone(id) => self.change_gone(&named(before.item(id)?)),
            ItemChange::Level(id) => both(id).map(|(was, is)| self.change_level(&named(is), &named(was)))?,
            ItemChange::Dose(id) => {
                let (was, is) = both(id)?;
                self.change_from(&named(is), &self.dose_prescribed(is), &self.dose_prescribed(was))
            }
            ItemChange::Times(id) => {
                both(id).map(|(was, is)| self.change_from(&named(is), &self.due(is), &self.due(was)))?
            }
            ItemChange::Else(id) => self.change_else(&named(after.item(id)?)),
        })
    }

    /// The exercise's name, with the level's where there are several.
    fn item_named(self, item: &Item, exercises: &[Exercise]) -> String {
        let Some(exercise) = exercises.iter().find(|exercise| exercise.id == item.exercise) else {
            return item.exercise.to_string();
        };
        let name = self.exercise_name(exercise);
        self.rung_of(item, exercise).map_or_else(|| name.to_owned(), |level| self.exercise_at_level(name, &level))
    }

    /// What there is of a patient, which removing erases: one line each.
    pub fn held(self, held: &Held) -> Vec<String> {
        let draft = held.draft.then(|| self.text(Key::RemovesDraft).to_owned());
        let lines =
            [self.removes_plans(held.plans), self.removes_summaries(held.summaries), self.removes_findings(held.findings)];
        [self.text(Key::RemovesName).to_owned()].into_iter().chain(lines).chain(draft).collect()
    }
}
