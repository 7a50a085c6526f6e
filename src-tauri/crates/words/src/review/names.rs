//! The names of the items, complaints and activities in a review, from the plan in force or an earlier one.

use crate::date::upper;
use crate::{Key, Words};
use exercises::adherence::ItemAdherence;
use exercises::catalogue::{Exercise, ExerciseId, RungId};
use exercises::id::{ActivityId, ComplaintId, ItemId};
use exercises::plan::{BodySide, Item, Plan, Prescription, Side};
use exercises::score::Score;
use wire::clinic::ReviewPage;

/// Looks names up.
#[derive(Debug, Clone, Copy)]
pub struct Names<'a> {
    words: Words,
    prescription: Option<&'a Prescription>,
    earlier: &'a [Plan],
    exercises: &'a [Exercise],
}

impl<'a> Names<'a> {
    /// The names of a review page.
    pub fn of(words: Words, page: &'a ReviewPage) -> Names<'a> {
        let prescription = page.plan.as_ref().map(|plan| &plan.prescription);
        Names { words, prescription, earlier: &page.earlier, exercises: &page.exercises }
    }

    /// The names of one prescription.
    pub fn of_prescription(words: Words, prescription: &'a Prescription, exercises: &'a [Exercise]) -> Names<'a> {
        Names { words, prescription: Some(prescription), earlier: &[], exercises }
    }

    /// The names of exercises alone.
    pub fn of_exercises(words: Words, exercises: &'a [Exercise]) -> Names<'a> {
        Names { words, prescription: None, earlier: &[], exercises }
    }

    fn prescriptions(&self) -> impl Iterator<Item = &'a Prescription> + use<'a> {
        self.prescription.into_iter().chain(self.earlier.iter().map(|plan| &plan.prescription))
    }

    /// The item as in the newest revision that has it.
    pub fn find(&self, id: ItemId) -> Option<&'a Item> {
        self.prescriptions().find_map(|plan| plan.item(id))
    }

    /// Whether the item is exercise, and not warmth or rest.
    pub fn is_exercise(&self, id: ItemId) -> bool {
        self.find(id).is_none_or(|item| item.dose.kind().rules().is_exercise())
    }

    /// Those that are exercise, and those that are warmth or rest, each in the same order.
    pub fn exercise_and_care(&self, all: &[ItemAdherence]) -> (Vec<ItemAdherence>, Vec<ItemAdherence>) {
        all.iter().cloned().partition(|item| self.is_exercise(item.item))
    }

    /// The least pain limit among the items that are meant for a complaint.
    pub fn least_limit(&self, complaint: ComplaintId) -> Option<Score> {
        let items = self.prescription.into_iter().flat_map(|plan| &plan.items);
        items.filter(|item| item.serves == Some(complaint)).map(|item| item.pain_limit).min()
    }

    /// Whether these are all items of a plan that has more than one.
    pub fn are_whole_plan(&self, items: &[ItemId]) -> bool {
        let all = self.prescription.map_or(0, |prescription| prescription.items.len());
        all > 1 && items.len() >= all
    }

    /// "Stand on one leg, left"; with its days where the plan has the exercise several times.
    pub fn item(&self, id: ItemId) -> String {
        let Some(item) = self.find(id) else { return self.words.review_some_item(id.0) };
        let name = self.exercise(&item.exercise);
        let name = match item.side {
            Side::Left | Side::Right => self.words.name_with_side(&name, self.words.side(item.side)),
            Side::Both | Side::Alternating | Side::Neither => name,
        };
        let same = |other: &&Item| (&other.exercise, other.side) == (&item.exercise, item.side);
        let several = self.prescriptions().any(|plan| plan.item(id).is_some() && plan.items.iter().filter(same).count() > 1);
        let phase = self.words.phase(item.phase).filter(|_| several);
        phase.map_or_else(|| name.clone(), |phase| self.words.name_with_note(&name, &phase))
    }

    /// The exercise's name; its id if the catalogue does not have it.
    pub fn exercise(&self, id: &ExerciseId) -> String {
        let known = self.known(id).and_then(|exercise| exercise.text(self.words.lang()));
        known.map_or_else(|| id.to_string(), |texts| texts.name.clone())
    }

    /// The exercise, if the catalogue has it.
    pub fn known(&self, id: &ExerciseId) -> Option<&'a Exercise> {
        self.exercises.iter().find(|exercise| exercise.id == *id)
    }

    /// The level's name; its id if the catalogue does not have it.
    pub fn rung(&self, exercise: &ExerciseId, rung: &RungId) -> String {
        let known = self.known(exercise).and_then(|exercise| exercise.rung(rung)?.text(self.words.lang()));
        known.map_or_else(|| rung.to_string(), |texts| texts.name.clone())
    }

    /// "upper back, left".
    pub fn complaint(&self, id: ComplaintId) -> String {
        let named = self.prescriptions().find_map(|plan| plan.complaints.iter().find(|complaint| complaint.id == id));
        match named {
            None => self.words.review_some_complaint(id.0),
            Some(complaint) if complaint.side == Side::Neither => complaint.name.clone(),
            Some(complaint) => self.words.name_with_side(&complaint.name, self.words.side(complaint.side)),
        }
    }

    /// An activity in the patient's words.
    pub fn activity(&self, id: ActivityId) -> String {
        let named = self.prescriptions().find_map(|plan| plan.activities.iter().find(|activity| activity.id == id));
        named.map_or_else(|| self.words.review_some_activity(id.0), |activity| activity.name.clone())
    }
}

impl Words {
    /// The leg that was stood on; "both feet" for `None`.
    pub fn leg_or_both(self, leg: Option<BodySide>) -> String {
        leg.map_or_else(|| self.text(Key::ReviewBothFeet).to_owned(), |leg| upper(self.leg_short(leg)))
    }

    /// "left", "right", if it is clear that a leg is meant.
    pub fn leg_short(self, leg: BodySide) -> &'static str {
        self.side(match leg {
            BodySide::Left => Side::Left,
            BodySide::Right => Side::Right,
        })
    }
}
