//! The review in words: the window, the paper and the terminal say the same sentences.
//!
//! Every finding is a word and its figures: the word can stand alone and the figures say what it rests on. What is not
//! known is said as not known.

mod adherence;
mod alarms;
mod balance;
mod en;
mod es;
mod grid;
mod head;
mod names;
mod next;
mod norms;
mod pain;
mod sentence;
mod sway;
mod text;

pub use head::ReviewQuestion;
pub use names::Names;
pub use next::StepWords;
pub(crate) use sentence::Sentence;

use crate::{Words, fill};
use exercises::catalogue::Lang;
use std::fmt::{self, Display};

/// A word, and the figures that it rests on.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Finding {
    /// The word: "better".
    pub word: String,
    /// The figures: they go on from the word; may be empty.
    pub figures: String,
}

impl Display for Finding {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.figures.as_str() {
            "" => f.write_str(&self.word),
            figures => write!(f, "{}, {figures}", self.word),
        }
    }
}

impl Words {
    pub(crate) fn sentence(self, what: Sentence) -> &'static str {
        self.as_shown(match self.lang {
            Lang::En => en::text(what),
            Lang::Es => es::text(what),
        })
    }

    pub(crate) fn filled(self, what: Sentence, values: &[(&str, &dyn Display)]) -> String {
        fill::fill(self.sentence(what), values)
    }

    pub(crate) fn finding(self, word: Sentence, figures: Sentence, values: &[(&str, &dyn Display)]) -> Finding {
        Finding { word: self.sentence(word).to_owned(), figures: self.filled(figures, values) }
    }
}

/// The first letter in upper case, for the beginning of a line.
pub fn upper(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

#[cfg(test)]
pub(crate) mod samples;
#[cfg(test)]
mod tests;
