//! What holds at one level of an exercise: what the level says itself, and the exercise's for the rest.

use super::equipment::Equipment;
use super::exercise::Exercise;
use super::figure::Figure;
use super::id::RungId;
use super::kind::Dose;
use super::ladder::Rung;
use super::posture::Posture;
use super::sidedness::Sidedness;
use super::texts::{Lang, Texts};

/// One level of an exercise.
#[derive(Debug, Clone, Copy)]
pub struct Level<'a> {
    exercise: &'a Exercise,
    rung: Option<&'a Rung>,
}

impl Exercise {
    /// The level with this id. Without an id, or with one that the exercise does not have, it is the exercise without what a
    /// level changes.
    pub fn level(&self, id: Option<&RungId>) -> Level<'_> {
        Level { exercise: self, rung: id.and_then(|id| self.rung(id)) }
    }

    /// The posture in which a level is done; `None` if it is not known. See [`Level::posture`].
    pub fn posture_at(&self, id: Option<&RungId>) -> Option<Posture> {
        self.level(id).posture()
    }
}

impl<'a> Level<'a> {
    /// The posture; `None` if the file does not say it. Where a fall matters, an unknown posture counts as standing.
    pub fn posture(self) -> Option<Posture> {
        self.rung.and_then(|rung| rung.posture).or(self.exercise.posture)
    }

    /// Whether it is done for each side.
    pub fn side(self) -> Sidedness {
        self.rung.and_then(|rung| rung.side).unwrap_or(self.exercise.side)
    }

    /// The dose that a clinician starts from; for one side if the level is done for each side.
    pub fn dose(self) -> Dose {
        self.rung.and_then(|rung| rung.dose).unwrap_or(self.exercise.dose)
    }

    /// What it needs.
    pub fn equipment(self) -> &'a [Equipment] {
        self.rung.and_then(|rung| rung.equipment.as_deref()).unwrap_or(&self.exercise.equipment)
    }

    /// How it looks.
    pub fn figure(self) -> Figure {
        self.rung.map_or_else(|| self.exercise.poses.clone(), |rung| self.exercise.figure(&rung.id))
    }

    /// The exercise's texts with the level's own set-up and steps, in `lang`, or in another language if there are none in
    /// `lang`.
    pub fn texts(self, lang: Lang) -> Option<Texts> {
        let mut texts = self.exercise.text(lang)?.clone();
        if let Some(own) = self.rung.and_then(|rung| rung.text(lang)) {
            texts.set_up = own.set_up.clone().unwrap_or(texts.set_up);
            texts.steps = own.steps.clone().unwrap_or(texts.steps);
        }
        Some(texts)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::RungTexts;
    use crate::review::samples::catalogue;
    use std::collections::BTreeMap;

    const OWN: Dose = Dose::Hold { repetitions: 2, hold_s: 6, rest_s: 20 };

    fn exercise() -> (Exercise, RungId, RungId) {
        let mut exercise = catalogue().exercises.swap_remove(0);
        (exercise.posture, exercise.equipment) = (Some(Posture::Sitting), vec![Equipment::Chair]);
        let texts =
            |name: &str| Texts { name: name.into(), set_up: "Sit.".into(), steps: vec!["One.".into()], ..Texts::default() };
        exercise.texts = BTreeMap::from([(Lang::En, texts("en"))]);
        let [first, second] = &mut exercise.ladders[0].rungs[..] else { panic!("two levels") };
        let own =
            RungTexts { set_up: Some("Stand.".into()), steps: Some(vec!["A.".into(), "B.".into()]), ..RungTexts::default() };
        first.texts = BTreeMap::from([(Lang::En, own)]);
        (first.posture, first.side, first.dose) = (Some(Posture::Standing), Some(Sidedness::EachSide), Some(OWN));
        first.equipment = Some(Vec::new());
        let ids = (first.id.clone(), second.id.clone());
        (exercise, ids.0, ids.1)
    }

    #[test]
    fn a_level_has_what_it_says_itself() {
        let (exercise, first, _) = exercise();
        let level = exercise.level(Some(&first));
        assert_eq!((level.posture(), level.side(), level.dose()), (Some(Posture::Standing), Sidedness::EachSide, OWN));
        assert_eq!(level.equipment(), [], "nothing is needed, although the exercise needs a chair");
        let texts = level.texts(Lang::En).expect("English");
        assert_eq!((texts.name.as_str(), texts.set_up.as_str(), texts.steps.len()), ("en", "Stand.", 2));
    }

    #[test]
    fn a_level_has_the_exercises_for_the_rest() {
        let (exercise, _, second) = exercise();
        let unknown = RungId::new("unknown").expect("an id");
        for id in [Some(&second), Some(&unknown), None] {
            let level = exercise.level(id);
            assert_eq!((level.posture(), level.side()), (Some(Posture::Sitting), Sidedness::None));
            assert_eq!((level.dose(), level.equipment()), (exercise.dose, &[Equipment::Chair][..]));
            assert_eq!(level.texts(Lang::Es), exercise.texts.get(&Lang::En).cloned(), "in the language there is");
            assert_eq!(exercise.posture_at(id), Some(Posture::Sitting));
        }
    }
}
