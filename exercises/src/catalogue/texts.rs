//! The texts of an exercise for the person who does it.

use crate::choice::array;
use strum::VariantArray;

/// A language in which every exercise is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Lang {
    /// English.
    En,
    /// Spanish.
    Es,
}

impl Lang {
    /// All languages of the catalogue.
    pub const ALL: [Lang; Lang::VARIANTS.len()] = array(Lang::VARIANTS);

    /// The language's two-letter code (ISO 639-1).
    pub fn code(self) -> &'static str {
        match self {
            Lang::En => "en",
            Lang::Es => "es",
        }
    }

    /// The language with this two-letter code (ISO 639-1); `None` if the catalogue is not written in it.
    pub fn from_code(code: &str) -> Option<Lang> {
        Lang::ALL.into_iter().find(|lang| lang.code() == code)
    }
}

/// The texts of an exercise in one language. A single text is one paragraph of up to 280 characters; in a list, each entry is
/// one line.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Texts {
    /// Short name, up to 40 characters.
    pub name: String,
    /// What the exercise is good for.
    pub purpose: String,
    /// Place, furniture and starting position.
    pub set_up: String,
    /// What to do, one action for each step.
    pub steps: Vec<String>,
    /// What the person should feel when doing it right.
    pub should_feel: String,
    /// What the person should not feel.
    pub should_not_feel: String,
    /// Common mistakes.
    pub mistakes: Vec<String>,
    /// When to be careful or to ask first.
    pub cautions: Vec<String>,
    /// When to stop at once.
    pub stop_signs: Vec<String>,
}
