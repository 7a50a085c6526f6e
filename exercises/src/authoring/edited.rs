//! The exercise with its changes, each of which can be undone.

use super::{LevelPart, TextPart};
use crate::catalogue::{Exercise, Joint, Lang, Quantity, RungId};

/// Number of changes that can be undone.
const MOST_UNDONE: usize = 200;

/// What a change touches. Changes of the same place that follow each other are undone together, so that a word is, and not a letter.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Touch {
    /// A text.
    Text(Lang, TextPart),
    /// A text of a level.
    LevelText(RungId, Lang, LevelPart),
    /// A number of the dose, or of a level's own.
    Dose(Option<RungId>, Quantity),
    /// A joint in a position of the figure, or of a level's own figure.
    Joint(Option<RungId>, usize, Joint),
    /// Anything that is changed by one press.
    Once,
}

/// An exercise that is being written.
#[derive(Debug, Clone, PartialEq)]
pub struct Edited {
    exercise: Exercise,
    before: Vec<Exercise>,
    after: Vec<Exercise>,
    last: Option<Touch>,
}

impl Edited {
    /// An exercise to which nothing was done yet.
    pub fn new(exercise: Exercise) -> Edited {
        Edited { exercise, before: Vec::new(), after: Vec::new(), last: None }
    }

    /// As it is now.
    pub fn exercise(&self) -> &Exercise {
        &self.exercise
    }

    /// Changes it. What was undone before can then no longer be done again.
    pub fn change(&mut self, touch: Touch, change: impl FnOnce(&mut Exercise)) {
        let before = self.exercise.clone();
        change(&mut self.exercise);
        if self.exercise == before {
            return;
        }
        self.after.clear();
        let goes_on = touch != Touch::Once && self.last.as_ref() == Some(&touch);
        self.last = Some(touch);
        if goes_on {
            return;
        }
        if self.before.len() == MOST_UNDONE {
            self.before.remove(0);
        }
        self.before.push(before);
    }

    /// Ends a change that goes on, so that the next one is undone apart from it: a finger was lifted, a field was left.
    pub fn end_change(&mut self) {
        self.last = None;
    }

    /// Whether there is a change to undo.
    pub fn can_undo(&self) -> bool {
        !self.before.is_empty()
    }

    /// Whether there is something undone to do again.
    pub fn can_redo(&self) -> bool {
        !self.after.is_empty()
    }

    /// Undoes the last change.
    pub fn undo(&mut self) {
        if let Some(before) = self.before.pop() {
            self.after.push(std::mem::replace(&mut self.exercise, before));
            self.last = None;
        }
    }

    /// Does again what was undone last.
    pub fn redo(&mut self) {
        if let Some(after) = self.after.pop() {
            self.before.push(std::mem::replace(&mut self.exercise, after));
            self.last = None;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::authoring::blank;

    fn named(edited: &Edited) -> String {
        edited.exercise().texts[&Lang::En].name.clone()
    }

    fn typed(edited: &mut Edited, name: &str) {
        let touch = Touch::Text(Lang::En, TextPart::Name);
        edited.change(touch, |exercise| TextPart::Name.put(exercise, Lang::En, name));
    }

    #[test]
    fn a_typed_word_is_undone_at_once_and_done_again() {
        let mut edited = Edited::new(blank(Lang::En));
        ["W", "Wa", "Wall"].into_iter().for_each(|name| typed(&mut edited, name));
        edited.end_change();
        typed(&mut edited, "Wall lean");
        edited.undo();
        assert_eq!(named(&edited), "Wall");
        edited.undo();
        assert_eq!((named(&edited).as_str(), edited.can_undo(), edited.can_redo()), ("", false, true));
        edited.redo();
        edited.redo();
        assert_eq!((named(&edited).as_str(), edited.can_redo()), ("Wall lean", false));
    }

    #[test]
    fn a_new_change_ends_what_could_be_done_again() {
        let mut edited = Edited::new(blank(Lang::En));
        typed(&mut edited, "One");
        edited.undo();
        typed(&mut edited, "Two");
        assert!(!edited.can_redo());
        edited.redo();
        assert_eq!(named(&edited), "Two");
    }

    #[test]
    fn presses_are_undone_one_by_one_and_what_changes_nothing_is_none() {
        let mut edited = Edited::new(blank(Lang::En));
        for _ in 0..3 {
            edited.change(Touch::Once, |exercise| exercise.revision += 1);
            edited.change(Touch::Once, |_| {});
        }
        let undone = (0..9).take_while(|_| edited.can_undo().then(|| edited.undo()).is_some()).count();
        assert_eq!(undone, 3);
    }

    #[test]
    fn the_oldest_changes_are_forgotten_first() {
        let mut edited = Edited::new(blank(Lang::En));
        (0..MOST_UNDONE + 5).for_each(|_| edited.change(Touch::Once, |exercise| exercise.revision += 1));
        while edited.can_undo() {
            edited.undo();
        }
        assert_eq!(edited.exercise().revision, 1 + 5);
    }
}
