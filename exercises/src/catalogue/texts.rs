//! What an exercise says to the person who does it.

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
    /// Every language of the catalogue.
    pub const ALL: [Lang; Lang::VARIANTS.len()] = array(Lang::VARIANTS);

    /// The two-letter code of ISO 639-1.
    pub fn code(self) -> &'static str {
        match self {
            Lang::En => "en",
            Lang::Es => "es",
        }
    }

    /// The language of a two-letter code of ISO 639-1, if it is one of these.
    pub fn from_code(code: &str) -> Option<Lang> {
        Lang::ALL.into_iter().find(|lang| lang.code() == code)
    }
}

/// An exercise in one language. Single fields are one paragraph of up to 280 characters; lists one line each.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Texts {
    /// Short name, up to 40 characters.
    pub name: String,
    /// What it is good for.
    pub purpose: String,
    /// Place, furniture and starting position.
    pub set_up: String,
    /// What to do, one action a step.
    pub steps: Vec<String>,
    /// What it feels like when it is right.
    pub should_feel: String,
    /// What it must not feel like.
    pub should_not_feel: String,
    /// Common mistakes.
    pub mistakes: Vec<String>,
    /// When to be careful or to ask first.
    pub cautions: Vec<String>,
    /// When to stop at once.
    pub stop_signs: Vec<String>,
}
