//! The review in words: the window, the paper and the terminal say the same sentences.
//!
//! Every finding is a word and its figures: the word can stand alone and the figures say what it rests on. What is not
//! known is said as not known.

mod adherence;
mod alarms;
mod balance;
mod grid;
mod head;
mod names;
mod next;
mod norms;
mod pain;
mod sway;
mod text;

pub use head::ReviewQuestion;
pub use names::Names;
pub use next::StepWords;

pub use crate::date::upper;
use crate::{Key, Words};

/// A word, and the figures that it rests on.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Finding {
    /// The word: "better".
    pub word: String,
    /// The figures: they go on from the word; may be empty.
    pub figures: String,
}

impl Finding {
    /// Both as one line: "Better, 6 to 3".
    pub fn line(&self, words: Words) -> String {
        if self.figures.is_empty() { self.word.clone() } else { words.review_finding(&self.word, &self.figures) }
    }
}

impl Words {
    pub(crate) fn finding(self, word: Key, figures: String) -> Finding {
        Finding { word: self.text(word).to_owned(), figures }
    }
}

#[cfg(test)]
pub(crate) mod samples;
#[cfg(test)]
mod tests;
