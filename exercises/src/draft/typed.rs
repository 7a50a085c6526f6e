//! Input of a plan that cannot be read. It prevents the plan from being issued, so that a card never differs from the screen.

use super::Draft;
use crate::catalogue::{Exercise, Eyes, Surface};
use crate::id::ItemId;
use crate::plan::{BodySide, Pattern, StanceField};

/// Largest length of typed text that is kept, in characters.
pub const MAX_TYPED: usize = 60;

/// A field of the plan editor whose input has to be interpreted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum TypedField {
    /// The list of times of an item.
    Times(ItemId),
    /// Seconds on one leg, eyes open on a firm floor.
    Stance(BodySide),
    /// The day of the next visit.
    Visit,
}

impl TypedField {
    /// The field of a stance time; `None` for conditions that the page does not ask for.
    pub fn of_stance(field: StanceField) -> Option<TypedField> {
        ((field.surface, field.eyes) == (Surface::Firm, Eyes::Open)).then_some(TypedField::Stance(field.leg))
    }
}

/// The fields whose input cannot be read, each with its text, in the order in which they were left.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Unread(Vec<(TypedField, String)>);

impl Unread {
    /// Records the unreadable text of a field, or with `None` that the field can be read.
    pub fn put(&mut self, field: TypedField, text: Option<&str>) {
        self.0.retain(|(other, _)| *other != field);
        self.0.extend(text.map(|text| (field, super::truncated(text, MAX_TYPED))));
    }

    /// The unreadable text of `field`, if there is any.
    pub fn get(&self, field: TypedField) -> Option<&str> {
        self.0.iter().find(|(other, _)| *other == field).map(|(_, text)| text.as_str())
    }

    /// All of them.
    pub fn all(&self) -> &[(TypedField, String)] {
        &self.0
    }

    /// Those whose field is on the page. An item that was removed, or that is due at an interval again, has no list of times;
    /// seconds on one leg are asked only while an item needs them.
    pub fn on_page<'a>(&'a self, draft: &Draft, exercises: &[Exercise]) -> Vec<&'a (TypedField, String)> {
        let one_leg = draft.needs_stance_times(exercises);
        let is_there = |field: TypedField| match field {
            TypedField::Times(id) => {
                draft.prescription.item(id).is_some_and(|item| matches!(item.schedule.pattern, Pattern::At { .. }))
            }
            TypedField::Stance(_) => one_leg,
            TypedField::Visit => true,
        };
        self.0.iter().filter(|(field, _)| is_there(*field)).collect()
    }
}

impl FromIterator<(TypedField, String)> for Unread {
    fn from_iter<T: IntoIterator<Item = (TypedField, String)>>(all: T) -> Unread {
        let mut unread = Unread::default();
        all.into_iter().for_each(|(field, text)| unread.put(field, Some(&text)));
        unread
    }
}

#[cfg(test)]
mod tests {
    use super::super::samples::{balance, empty, hold};
    use super::super::{hourly, times_of};
    use super::*;

    #[test]
    fn a_field_is_listed_until_it_can_be_read() {
        let mut unread = Unread::default();
        unread.put(TypedField::Visit, Some("soon"));
        unread.put(TypedField::Visit, Some("later\n"));
        assert_eq!(unread.get(TypedField::Visit), Some("later"));
        assert_eq!(unread.all().len(), 1, "the last text of a field counts");
        unread.put(TypedField::Visit, None);
        assert_eq!(unread, Unread::default());
    }

    #[test]
    fn only_fields_on_the_page_count() {
        let mut draft = empty();
        let id = draft.add(&balance()).expect("room");
        let exercises = [hold(), balance()];
        let left = TypedField::of_stance(StanceField::FIRM_OPEN[0]).expect("it is asked");
        let unread: Unread = [(TypedField::Times(id), "8am 7pn".into()), (left, "900".into())].into_iter().collect();
        assert_eq!(unread.on_page(&draft, &exercises).len(), 2);
        draft.edit(id, |item| item.schedule = hourly());
        assert_eq!(unread.on_page(&draft, &exercises).len(), 1, "an interval has no list of times");
        draft.remove(id);
        assert!(unread.on_page(&draft, &exercises).is_empty(), "nothing balances any more");
        assert_eq!(times_of("8am 7pn"), None);
    }
}
