//! Versions of one exercise from easy to hard, one factor changing at a time.

use super::conditions::{Arms, Eyes, Feet, Surface};
use super::figure::Figure;
use super::id::{LadderId, RungId};
use super::texts::Lang;
use std::collections::BTreeMap;
use strum::VariantArray;

/// What changes from rung to rung of one ladder.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Factor {
    /// What is stood on.
    Surface,
    /// How wide the feet stand.
    Base,
    /// What is leaned on or held.
    Support,
    /// How long the lever is.
    Lever,
    /// How deep or how far the movement goes.
    Range,
    /// How much weight is moved.
    Load,
    /// In which position of the body it is done.
    Position,
}

/// Versions of one exercise in order, easiest first.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Ladder {
    /// Stable name within the exercise.
    pub id: LadderId,
    /// The one factor that changes from rung to rung.
    pub factor: Factor,
    /// The versions, easiest first; never empty when it comes out of the reader.
    pub rungs: Vec<Rung>,
}

/// One version of an exercise.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Rung {
    /// Stable name, unique over all ladders of the exercise.
    pub id: RungId,
    /// What it is stood on; `None` where that does not matter.
    pub surface: Option<Surface>,
    /// Whether the eyes are open; `None` where that does not matter.
    pub eyes: Option<Eyes>,
    /// What its instructions say about the feet; `None` where they leave it open.
    pub feet: Option<Feet>,
    /// Where its instructions put the arms; `None` where they leave it open. Never [`Arms::HandInUse`].
    pub arms: Option<Arms>,
    /// Its name and what changes, by language.
    pub texts: BTreeMap<Lang, RungTexts>,
    /// Its own figure where it looks different from the exercise's.
    pub figure: Option<Figure>,
}

/// What a rung says in one language.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct RungTexts {
    /// Short name, up to 40 characters.
    pub name: String,
    /// What is different on this rung, in a sentence.
    pub change: String,
}

impl Ladder {
    /// The rung with this id.
    pub fn rung(&self, id: &RungId) -> Option<&Rung> {
        self.rungs.iter().find(|rung| rung.id == *id)
    }

    /// Whether any rung of this ladder is done with the eyes closed.
    pub fn closes_the_eyes(&self) -> bool {
        self.rungs.iter().any(|rung| rung.eyes == Some(Eyes::Closed))
    }
}

impl Rung {
    /// The texts in `lang`, or in whichever language there is.
    pub fn text(&self, lang: Lang) -> Option<&RungTexts> {
        self.texts.get(&lang).or_else(|| self.texts.values().next())
    }
}
