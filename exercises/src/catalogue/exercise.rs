//! An exercise, and the catalogue of all exercises.

use super::conditions::Surface;
use super::equipment::Equipment;
use super::figure::{Figure, Furniture};
use super::id::{ExerciseId, RungId};
use super::kind::{Dose, Kind};
use super::ladder::{Ladder, Rung};
use super::posture::Posture;
use super::prescriber_flag::PrescriberFlag;
use super::purpose::Purpose;
use super::sidedness::Sidedness;
use super::step_rule::{self, Basis, Grows, StepRule};
use super::texts::{Lang, Texts};
use crate::choice::array;
use std::collections::BTreeMap;
use strum::VariantArray;

/// The part of the body that an exercise trains, from the head downward.
///
/// The upper back has no region of its own: exercises for posture train neck and upper back together, and of two regions that share
/// their exercises neither would list all that somebody looks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Region {
    /// Neck, jaw and upper back.
    NeckUpperBack,
    /// Shoulder.
    Shoulder,
    /// Elbow and forearm.
    Elbow,
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
    /// The whole body, or no part of it: walking, breathing.
    General,
}

impl Region {
    /// All regions, in the order of the enum.
    pub const ALL: [Region; Region::VARIANTS.len()] = array(Region::VARIANTS);
}

/// One exercise of the catalogue.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Exercise {
    /// The exercise's id, which never changes.
    pub id: ExerciseId,
    /// The revision of the exercise's content, 1 to 60,000; it rises with every change.
    pub revision: u16,
    /// The part of the body that the exercise trains.
    pub region: Region,
    /// What it is done for; empty if the file does not say it.
    pub purposes: Vec<Purpose>,
    /// What a prescriber should think of before prescribing it.
    pub flags: Vec<PrescriberFlag>,
    /// How the exercise is timed; always the kind of `dose`.
    pub kind: Kind,
    /// Whether the exercise is done for each side, unless a rung says otherwise.
    pub side: Sidedness,
    /// The posture, unless a rung says otherwise; `None` if the file does not say it.
    pub posture: Option<Posture>,
    /// What it needs, unless a rung says otherwise.
    pub equipment: Vec<Equipment>,
    /// Whether the person stands on one leg with the other foot in the air. Only then are times compared with norms for
    /// standing on one leg.
    pub one_leg: bool,
    /// Whether it is a test, which is always done in the same way: no step makes it harder or easier.
    pub test: bool,
    /// Of a test by repetitions: the error with which people who test themselves measure, in tenths of a movement.
    pub count_error_tenths: Option<u16>,
    /// How it is made harder, in order; empty if the rules of its kind hold.
    pub step_rules: Vec<StepRule>,
    /// The dose that a clinician starts from, unless a rung has its own; for one side if it is done for each side.
    pub dose: Dose,
    /// What that dose is based on; `None` if the file does not say it.
    pub dose_basis: Option<Basis>,
    /// The exercise's ladders of versions. An exercise read from a file has at least one ladder with one rung.
    pub ladders: Vec<Ladder>,
    /// How the exercise looks, unless a rung has a figure of its own.
    pub poses: Figure,
    /// The texts for people, by language.
    pub texts: BTreeMap<Lang, Texts>,
}

/// All exercises that an installation knows.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Catalogue {
    /// The exercises, in the order in which a clinician is offered them.
    pub exercises: Vec<Exercise>,
}

impl Catalogue {
    /// The exercise with this id.
    pub fn get(&self, id: &ExerciseId) -> Option<&Exercise> {
        self.exercises.iter().find(|exercise| exercise.id == *id)
    }
}

impl Exercise {
    /// The texts in `lang`, or in another language if there are none in `lang`.
    pub fn text(&self, lang: Lang) -> Option<&Texts> {
        self.texts.get(&lang).or_else(|| self.texts.values().next())
    }

    /// How it is made harder, in order: as its file says, or as is usual for its kind.
    pub fn grows(&self) -> Vec<Grows> {
        match self.step_rules.as_slice() {
            [] => step_rule::of_kind(self.kind),
            rules => rules.iter().map(|rule| rule.grows).collect(),
        }
    }

    /// The rung with this id, on any of the ladders.
    pub fn rung(&self, id: &RungId) -> Option<&Rung> {
        self.ladders.iter().find_map(|ladder| ladder.rung(id))
    }

    /// The ladder that has the rung with this id.
    pub fn ladder_of(&self, id: &RungId) -> Option<&Ladder> {
        self.ladders.iter().find(|ladder| ladder.rung(id).is_some())
    }

    /// The easiest rung of the first ladder.
    pub fn first_rung(&self) -> Option<&Rung> {
        self.ladders.first()?.rungs.first()
    }

    /// The next harder rung on the same ladder; `None` if this is the hardest, or if the exercise has no such rung.
    pub fn harder(&self, id: &RungId) -> Option<&Rung> {
        self.beside(id, 1)
    }

    /// The next easier rung on the same ladder; `None` if this is the easiest, or if the exercise has no such rung.
    pub fn easier(&self, id: &RungId) -> Option<&Rung> {
        self.beside(id, -1)
    }

    fn beside(&self, id: &RungId, step: isize) -> Option<&Rung> {
        let ladder = self.ladder_of(id)?;
        let place = ladder.rungs.iter().position(|rung| rung.id == *id)?;
        ladder.rungs.get(place.checked_add_signed(step)?)
    }

    /// The figure of one rung: its own, or else the exercise's, with the rung's surface under the foot and its eyes. If the
    /// exercise has no such rung, the exercise's own figure.
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
