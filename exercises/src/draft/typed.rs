//! What was typed into a plan and cannot be read: it keeps the plan from being issued, so that a card never says anything
//! else than the screen.

use super::Draft;
use crate::catalogue::{Exercise, Eyes, Surface};
use crate::id::ItemId;
use crate::plan::{BodySide, Pattern, StanceField};

/// Longest typed text that is kept, in characters.
pub const MAX_TYPED: usize = 60;

/// A field of the composing page into which something is typed that has to be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum TypedField {
    /// The list of times of an item.
    Times(ItemId),
    /// Seconds on one leg, eyes open on the firm floor.
    Stance(BodySide),
    /// The day of the next visit.
    Visit,
}

impl TypedField {
    /// The field of a stance time; `None` for conditions that the page does not ask about.
    pub fn of_stance(field: StanceField) -> Option<TypedField> {
        ((field.surface, field.eyes) == (Surface::Firm, Eyes::Open)).then_some(TypedField::Stance(field.leg))
    }
}

/// The fields whose text cannot be read, each with its text, in the order in which they were left.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Unread(Vec<(TypedField, String)>);

impl Unread {
    /// Notes what stands in a field and cannot be read, or that the field can be read again.
    pub fn put(&mut self, field: TypedField, text: Option<&str>) {
        self.0.retain(|(other, _)| *other != field);
        self.0.extend(text.map(|text| (field, super::truncated(text, MAX_TYPED))));
    }

    /// What stands in `field` and cannot be read.
    pub fn get(&self, field: TypedField) -> Option<&str> {
        self.0.iter().find(|(other, _)| *other == field).map(|(_, text)| text.as_str())
    }

    /// All of them.
    pub fn all(&self) -> &[(TypedField, String)] {
        &self.0
    }

    /// Those whose field is on the page: an item that was taken out, or that comes at an interval again, has no list of
    /// times, and seconds on one leg are asked only while balance is in the plan.
    pub fn on_page<'a>(&'a self, draft: &Draft, exercises: &[Exercise]) -> Vec<&'a (TypedField, String)> {
        let balances = draft.balances(exercises);
        let is_there = |field: TypedField| match field {
            TypedField::Times(id) => {
                draft.prescription.item(id).is_some_and(|item| matches!(item.schedule.pattern, Pattern::At { .. }))
            }
            TypedField::Stance(_) => balances,
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
    fn a_field_counts_until_it_can_be_read_again() {
        let mut unread = Unread::default();
        unread.put(TypedField::Visit, Some("soon"));
        unread.put(TypedField::Visit, Some("later\n"));
        assert_eq!(unread.get(TypedField::Visit), Some("later"));
        assert_eq!(unread.all().len(), 1, "the last text of a field counts");
        unread.put(TypedField::Visit, None);
        assert_eq!(unread, Unread::default());
    }

    #[test]
    fn only_what_is_on_the_page_counts() {
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
