//! The exercise itself, and the catalogue that holds them.

use super::conditions::Surface;
use super::figure::{Figure, Furniture};
use super::id::{ExerciseId, RungId};
use super::kind::{Dose, Kind};
use super::ladder::{Ladder, Rung};
use super::sidedness::Sidedness;
use super::texts::{Lang, Texts};
use std::collections::BTreeMap;
use strum::VariantArray;

/// The part of the body that an exercise is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Region {
    /// Neck and upper back.
    NeckUpperBack,
    /// Shoulder.
    Shoulder,
    /// Wrist and hand.
    WristHand,
    /// Lower back.
    LowBack,
    /// Hip.
    Hip,
    /// Knee.
    Knee,
    /// Ankle and foot.
    Ankle,
}

/// One entry of the catalogue.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Exercise {
    /// Its name for good.
    pub id: ExerciseId,
    /// Rises with every change of what it says or asks. 1 to 60,000.
    pub revision: u16,
    /// What part of the body it is for.
    pub region: Region,
    /// How it is timed; always the kind of `dose`.
    pub kind: Kind,
    /// Whether it has sides.
    pub side: Sidedness,
    /// Whether it is standing on one leg, the other foot free: only then are its times put beside norms of that.
    pub one_leg: bool,
    /// The dose from which a clinician starts; for one side where there are sides.
    pub dose: Dose,
    /// Its versions; at least one ladder with one rung when it comes out of the reader.
    pub ladders: Vec<Ladder>,
    /// How it looks, where a rung does not say otherwise.
    pub poses: Figure,
    /// What it says, by language.
    pub texts: BTreeMap<Lang, Texts>,
}

/// All exercises known to an installation.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Catalogue {
    /// In the order in which a clinician is offered them.
    pub exercises: Vec<Exercise>,
}

impl Catalogue {
    /// The exercise with this id.
    pub fn get(&self, id: &ExerciseId) -> Option<&Exercise> {
        self.exercises.iter().find(|exercise| exercise.id == *id)
    }
}

impl Exercise {
    /// The texts in `lang`, or in whichever language there is.
    pub fn text(&self, lang: Lang) -> Option<&Texts> {
        self.texts.get(&lang).or_else(|| self.texts.values().next())
    }

    /// The rung with this id, on whichever ladder it stands.
    pub fn rung(&self, id: &RungId) -> Option<&Rung> {
        self.ladders.iter().find_map(|ladder| ladder.rung(id))
    }

    /// The ladder on which a rung stands.
    pub fn ladder_of(&self, id: &RungId) -> Option<&Ladder> {
        self.ladders.iter().find(|ladder| ladder.rung(id).is_some())
    }

    /// The easiest rung of the first ladder.
    pub fn first_rung(&self) -> Option<&Rung> {
        self.ladders.first()?.rungs.first()
    }

    /// The next harder rung on the same ladder; `None` at the top, or for a rung that this exercise has not.
    pub fn harder(&self, id: &RungId) -> Option<&Rung> {
        self.beside(id, 1)
    }

    /// The next easier rung on the same ladder; `None` at the bottom, or for a rung that this exercise has not.
    pub fn easier(&self, id: &RungId) -> Option<&Rung> {
        self.beside(id, -1)
    }

    fn beside(&self, id: &RungId, step: isize) -> Option<&Rung> {
        let ladder = self.ladder_of(id)?;
        let place = ladder.rungs.iter().position(|rung| rung.id == *id)?;
        ladder.rungs.get(place.checked_add_signed(step)?)
    }

    /// The figure of one rung: its own or the exercise's, with the rung's surface under the foot and its eyes.
    /// The exercise's own figure for a rung that it has not.
    pub fn figure(&self, id: &RungId) -> Figure {
        let Some(rung) = self.rung(id) else {
            return self.poses.clone();
        };
        let mut figure = rung.figure.clone().unwrap_or_else(|| self.poses.clone());
        let surface = match rung.surface {
            None | Some(Surface::Firm) => None,
            Some(Surface::FoldedTowel) => Some(Furniture::FoldedTowel),
            Some(Surface::Cushion) => Some(Furniture::Cushion),
            Some(Surface::Foam) => Some(Furniture::Foam),
        };
        figure.furniture.extend(surface.filter(|piece| !figure.furniture.contains(piece)));
        figure.eyes = rung.eyes.or(figure.eyes);
        figure
    }
}
