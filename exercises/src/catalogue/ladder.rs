//! Versions of one exercise from easy to hard, with one factor changing at a time.

use super::conditions::{Arms, Eyes, Feet, Surface};
use super::equipment::Equipment;
use super::figure::Figure;
use super::id::{LadderId, RungId};
use super::kind::Dose;
use super::posture::Posture;
use super::sidedness::Sidedness;
use super::texts::Lang;
use std::collections::BTreeMap;
use strum::VariantArray;

/// The factor that changes from rung to rung of a ladder.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Factor {
    /// The surface that the person stands on.
    Surface,
    /// How far apart the feet are.
    Base,
    /// What the person leans on or holds.
    Support,
    /// The length of the lever that the muscles work against.
    Lever,
    /// How deep or how far the movement goes.
    Range,
    /// The weight that is moved.
    Load,
    /// The position of the body.
    Position,
}

/// Versions of one exercise, easiest first.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Ladder {
    /// The ladder's id, unique within the exercise.
    pub id: LadderId,
    /// The one factor that changes from rung to rung.
    pub factor: Factor,
    /// The versions, easiest first. A ladder read from a file has at least one.
    pub rungs: Vec<Rung>,
}

/// One version of an exercise.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Rung {
    /// The rung's id, unique over all ladders of the exercise.
    pub id: RungId,
    /// The surface that the person stands on; `None` if it does not matter.
    pub surface: Option<Surface>,
    /// Whether the eyes are open; `None` if it does not matter.
    pub eyes: Option<Eyes>,
    /// What the instructions ask the person to wear on the feet; `None` if they do not say.
    pub feet: Option<Feet>,
    /// Where the instructions ask the person to put the arms; `None` if they do not say. Never [`Arms::HandInUse`].
    pub arms: Option<Arms>,
    /// The posture, if it differs from the exercise's.
    pub posture: Option<Posture>,
    /// Whether it is done for each side, if that differs from the exercise. All rungs of a ladder are alike in this.
    pub side: Option<Sidedness>,
    /// The dose that a clinician starts from, if it differs from the exercise's; always of the same kind.
    pub dose: Option<Dose>,
    /// What it needs, if that differs from the exercise; empty if it needs nothing.
    pub equipment: Option<Vec<Equipment>>,
    /// Its name and what is different on it, by language.
    pub texts: BTreeMap<Lang, RungTexts>,
    /// The rung's own figure, if it looks different from the exercise's.
    pub figure: Option<Figure>,
}

/// The texts of a rung in one language.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct RungTexts {
    /// Short name, up to 40 characters.
    pub name: String,
    /// What is different on this rung, in one sentence.
    pub change: String,
    /// Place, furniture and starting position, if they differ from the exercise's.
    pub set_up: Option<String>,
    /// What to do, if it differs from the exercise's.
    pub steps: Option<Vec<String>>,
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
    /// A rung that changes nothing yet and has no texts. Callers set whatever differs.
    pub fn new(id: RungId) -> Rung {
        Rung {
            id,
            surface: None,
            eyes: None,
            feet: None,
            arms: None,
            posture: None,
            side: None,
            dose: None,
            equipment: None,
            texts: BTreeMap::new(),
            figure: None,
        }
    }

    /// The texts in `lang`, or in another language if there are none in `lang`.
    pub fn text(&self, lang: Lang) -> Option<&RungTexts> {
        self.texts.get(&lang).or_else(|| self.texts.values().next())
    }
}
