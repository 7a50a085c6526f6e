//! The review in words: window, printed page and terminal show the same sentences.
//!
//! Every finding consists of a verdict and its figures: the verdict can be read alone, and the figures say what it is based on.
//! Unknown facts are stated as unknown.

mod adherence;
mod alarms;
mod balance;
mod counts;
mod grid;
mod head;
mod names;
mod next;
mod norms;
mod pain;
mod strip;
mod sway;
mod text;
mod together;

pub use head::ReviewQuestion;
pub use names::Names;
pub use next::StepWords;
pub use strip::StripCell;
pub use together::Together;

pub use crate::date::upper;
use crate::{Key, Words};

/// A verdict and the figures that it is based on.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Finding {
    /// The verdict: "better".
    pub word: String,
    /// Whether the verdict is that there is not enough data for one.
    pub not_enough_data: bool,
    /// The figures, which continue the verdict's sentence; may be empty.
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
        Finding { word: self.text(word).to_owned(), not_enough_data: word == Key::ReviewNotEnoughData, figures }
    }
}

#[cfg(test)]
pub(crate) mod samples;
#[cfg(test)]
mod tests;
