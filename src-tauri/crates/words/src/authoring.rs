//! What a clinician reads while writing an exercise: the names of its parts, and what it lacks.

use crate::{Key, Words};
use exercises::authoring::{Lack, LevelPart, Place, TextPart, level_places};
use exercises::catalogue::{Contact, End, Exercise, Factor, Furniture, Joint, Landmark, Lang, RungId, Sidedness, Tie, View};
use wire::prescribing::OwnLine;

impl Words {
    /// "Near elbow".
    pub fn joint(self, joint: Joint) -> &'static str {
        self.text(match joint {
            Joint::Trunk => Key::JointTrunk,
            Joint::TrunkSide => Key::JointTrunkSide,
            Joint::Back => Key::JointBack,
            Joint::BackSide => Key::JointBackSide,
            Joint::BackTurn => Key::JointBackTurn,
            Joint::Neck => Key::JointNeck,
            Joint::Head => Key::JointHead,
            Joint::NeckSide => Key::JointNeckSide,
            Joint::HeadTurn => Key::JointHeadTurn,
            Joint::Jaw => Key::JointJaw,
            Joint::Blades => Key::JointBlades,
            Joint::Shrug => Key::JointShrug,
            Joint::ShoulderNear => Key::JointShoulderNear,
            Joint::ShoulderFar => Key::JointShoulderFar,
            Joint::ShoulderOutNear => Key::JointShoulderOutNear,
            Joint::ShoulderOutFar => Key::JointShoulderOutFar,
            Joint::ShoulderTurnNear => Key::JointShoulderTurnNear,
            Joint::ShoulderTurnFar => Key::JointShoulderTurnFar,
            Joint::ElbowNear => Key::JointElbowNear,
            Joint::ElbowFar => Key::JointElbowFar,
            Joint::WristNear => Key::JointWristNear,
            Joint::WristFar => Key::JointWristFar,
            Joint::ForearmTurn => Key::JointForearmTurn,
            Joint::HipNear => Key::JointHipNear,
            Joint::HipFar => Key::JointHipFar,
            Joint::HipOutNear => Key::JointHipOutNear,
            Joint::HipOutFar => Key::JointHipOutFar,
            Joint::HipTurnNear => Key::JointHipTurnNear,
            Joint::HipTurnFar => Key::JointHipTurnFar,
            Joint::KneeNear => Key::JointKneeNear,
            Joint::KneeFar => Key::JointKneeFar,
            Joint::AnkleNear => Key::JointAnkleNear,
            Joint::AnkleFar => Key::JointAnkleFar,
            Joint::Forearm => Key::JointForearm,
            Joint::Knuckles => Key::JointKnuckles,
            Joint::MiddleJoints => Key::JointMiddleJoints,
            Joint::EndJoints => Key::JointEndJoints,
            Joint::Thumb => Key::JointThumb,
            Joint::Spread => Key::JointSpread,
            Joint::Index => Key::JointIndex,
            Joint::Middle => Key::JointMiddle,
            Joint::Ring => Key::JointRing,
            Joint::Little => Key::JointLittle,
            Joint::FootOut => Key::JointFootOut,
            Joint::Arch => Key::JointArch,
        })
    }

    /// "the side".
    pub fn view(self, view: View) -> &'static str {
        self.text(match view {
            View::Side => Key::ViewSide,
            View::Front => Key::ViewFront,
            View::Hand => Key::ViewHand,
            View::Oblique => Key::ViewOblique,
            View::Palm => Key::ViewPalm,
            View::Fist => Key::ViewFist,
            View::Head => Key::ViewHead,
            View::Feet => Key::ViewFeet,
            View::Foot => Key::ViewFoot,
            View::Above => Key::ViewAbove,
        })
    }

    /// "wall behind".
    pub fn thing(self, thing: Furniture) -> &'static str {
        self.text(match thing {
            Furniture::Chair => Key::ThingChair,
            Furniture::Worktop => Key::ThingWorktop,
            Furniture::Wall => Key::ThingWall,
            Furniture::Mat => Key::ThingMat,
            Furniture::Pillow => Key::ThingPillow,
            Furniture::FoldedTowel => Key::ThingFoldedTowel,
            Furniture::Cushion => Key::ThingCushion,
            Furniture::Foam => Key::ThingFoam,
            Furniture::Table => Key::ThingTable,
            Furniture::Bag => Key::ThingBag,
            Furniture::WallAhead => Key::ThingWallAhead,
            Furniture::WallBeside => Key::ThingWallBeside,
            Furniture::Doorway => Key::ThingDoorway,
            Furniture::Door => Key::ThingDoor,
            Furniture::Step => Key::ThingStep,
            Furniture::Handrail => Key::ThingHandrail,
            Furniture::Weight => Key::ThingWeight,
            Furniture::Hammer => Key::ThingHammer,
            Furniture::TowelRoll => Key::ThingTowelRoll,
            Furniture::RubberBand => Key::ThingRubberBand,
            Furniture::Mark => Key::ThingMark,
        })
    }

    /// "near sole".
    pub fn contact(self, contact: Contact) -> &'static str {
        self.text(match contact {
            Contact::Seat => Key::ContactSeat,
            Contact::UpperBack => Key::ContactUpperBack,
            Contact::FarSide => Key::ContactFarSide,
            Contact::NearSole => Key::ContactNearSole,
            Contact::FarSole => Key::ContactFarSole,
            Contact::NearToes => Key::ContactNearToes,
            Contact::FarToes => Key::ContactFarToes,
            Contact::NearHeel => Key::ContactNearHeel,
            Contact::FarHeel => Key::ContactFarHeel,
            Contact::NearHand => Key::ContactNearHand,
            Contact::FarHand => Key::ContactFarHand,
            Contact::NearHandSlides => Key::ContactNearHandSlides,
            Contact::FarHandSlides => Key::ContactFarHandSlides,
            Contact::NearHeelSlides => Key::ContactNearHeelSlides,
            Contact::LowBack => Key::ContactLowBack,
            Contact::Front => Key::ContactFront,
            Contact::NearKnee => Key::ContactNearKnee,
            Contact::FarKnee => Key::ContactFarKnee,
            Contact::FarElbow => Key::ContactFarElbow,
        })
    }

    /// "band".
    pub fn tie(self, tie: Tie) -> &'static str {
        self.text(match tie {
            Tie::Band => Key::TieBand,
            Tie::Strap => Key::TieStrap,
            Tie::Stick => Key::TieStick,
        })
    }

    /// "near hand".
    pub fn end(self, end: End) -> &'static str {
        self.text(match end {
            End::NearHand => Key::EndNearHand,
            End::FarHand => Key::EndFarHand,
            End::NearThigh => Key::EndNearThigh,
            End::FarThigh => Key::EndFarThigh,
            End::NearAnkle => Key::EndNearAnkle,
            End::FarAnkle => Key::EndFarAnkle,
            End::NearFoot => Key::EndNearFoot,
            End::FarFoot => Key::EndFarFoot,
            End::Head => Key::EndHead,
            End::Pelvis => Key::EndPelvis,
            End::Door => Key::EndDoor,
        })
    }

    /// "shoulder".
    pub fn landmark(self, landmark: Landmark) -> &'static str {
        self.text(match landmark {
            Landmark::Chin => Key::MarkChin,
            Landmark::Crown => Key::MarkCrown,
            Landmark::Shoulder => Key::MarkShoulder,
            Landmark::Elbow => Key::MarkElbow,
            Landmark::Hand => Key::MarkHand,
            Landmark::Pelvis => Key::MarkPelvis,
            Landmark::Knee => Key::MarkKnee,
            Landmark::Heel => Key::MarkHeel,
            Landmark::Toes => Key::MarkToes,
        })
    }

    /// "the surface".
    pub fn factor(self, factor: Factor) -> &'static str {
        self.text(match factor {
            Factor::Surface => Key::FactorSurface,
            Factor::Base => Key::FactorBase,
            Factor::Support => Key::FactorSupport,
            Factor::Lever => Key::FactorLever,
            Factor::Range => Key::FactorRange,
            Factor::Load => Key::FactorLoad,
            Factor::Position => Key::FactorPosition,
        })
    }

    /// "One side after the other".
    pub fn sidedness(self, side: Sidedness) -> &'static str {
        self.text(match side {
            Sidedness::None => Key::WriteSideNone,
            Sidedness::EachSide => Key::WriteSideEach,
            Sidedness::Alternating => Key::WriteSideAlternating,
        })
    }

    /// "What it is good for": the label of a text.
    pub fn text_part(self, part: TextPart) -> &'static str {
        self.text(match part {
            TextPart::Name => Key::WriteName,
            TextPart::Purpose => Key::WritePurpose,
            TextPart::SetUp => Key::WriteSetUp,
            TextPart::Steps => Key::WriteSteps,
            TextPart::ShouldFeel => Key::WriteShouldFeel,
            TextPart::ShouldNotFeel => Key::WriteShouldNotFeel,
            TextPart::Mistakes => Key::WriteMistakes,
            TextPart::Cautions => Key::WriteCautions,
            TextPart::StopSigns => Key::WriteStopSigns,
        })
    }

    /// "What is different here": the label of a level's text.
    pub fn level_part(self, part: LevelPart) -> &'static str {
        self.text(match part {
            LevelPart::Name => Key::WriteLevelName,
            LevelPart::Change => Key::WriteLevelChange,
            LevelPart::SetUp => Key::WriteLevelSetUp,
            LevelPart::Steps => Key::WriteLevelSteps,
        })
    }

    /// The name of a level while it is written: what it is called, or "Level 2".
    pub fn level_named(self, exercise: &Exercise, id: &RungId) -> String {
        let name = exercise.rung(id).and_then(|rung| rung.text(self.lang())).map(|texts| texts.name.trim());
        let place = level_places(exercise).iter().position(|one| one == id).map_or(0, |place| place + 1);
        name.filter(|name| !name.is_empty()).map_or_else(|| self.write_level_n(place), str::to_owned)
    }

    /// What keeps an exercise from being saved, one line for each: the empty fields of a language together.
    pub fn lacks(self, exercise: &Exercise, lacks: &[(Place, Lack)]) -> Vec<String> {
        let several = exercise.texts.len() > 1;
        let mut lines = Vec::new();
        for lang in Lang::ALL {
            let empty: Vec<String> = lacks.iter().filter_map(|lack| self.empty_field(exercise, lang, lack)).collect();
            if !empty.is_empty() {
                let fields = self.list(&empty);
                let language = self.language_of(lang);
                lines.push(if several { self.write_empty_in(language, &fields) } else { self.write_empty(&fields) });
            }
        }
        let others = lacks.iter().filter(|(_, lack)| *lack != Lack::Empty);
        lines.extend(others.map(|(place, lack)| self.lack_at(exercise, place, *lack)));
        lines
    }

    fn empty_field(self, exercise: &Exercise, lang: Lang, (place, lack): &(Place, Lack)) -> Option<String> {
        let is_here = match place {
            Place::Text(other, _) | Place::LevelText(_, other, _) => *other == lang && *lack == Lack::Empty,
            Place::Conditions(_) | Place::Sides => false,
        };
        is_here.then(|| self.place(exercise, place))
    }

    fn lack_at(self, exercise: &Exercise, place: &Place, lack: Lack) -> String {
        let named = self.place(exercise, place);
        let lang = match place {
            Place::Text(lang, _) | Place::LevelText(_, lang, _) => Some(*lang),
            Place::Conditions(_) | Place::Sides => None,
        };
        let lang = lang.filter(|_| exercise.texts.len() > 1);
        let named = lang.map_or_else(|| named.clone(), |lang| self.write_in_language(&named, self.language_of(lang)));
        self.write_lack_at(&named, &self.lack(lack))
    }

    fn place(self, exercise: &Exercise, place: &Place) -> String {
        match place {
            Place::Text(_, part) => self.text_part(*part).to_owned(),
            Place::LevelText(id, _, part) => self.write_level_part(&self.level_named(exercise, id), self.level_part(*part)),
            Place::Conditions(id) => self.level_named(exercise, id),
            Place::Sides => self.text(Key::WriteLevels).to_owned(),
        }
    }

    /// What is lacking in one place.
    pub fn lack(self, lack: Lack) -> String {
        match lack {
            Lack::Empty => String::new(),
            Lack::TooLong { line: None, found, most } => self.write_too_long(found, most),
            Lack::TooLong { line: Some(line), found, most } => self.write_line_too_long(line, found, most),
            Lack::TooMany { found, most } => self.write_too_many(found, most),
            Lack::Unequal { found, first } => self.write_unequal(found, first),
            Lack::SameName => self.text(Key::WriteSameName).to_owned(),
            Lack::NoConditions => self.text(Key::WriteNoConditions).to_owned(),
            Lack::UnlikeSides => self.text(Key::WriteUnlikeSides).to_owned(),
        }
    }

    /// What a clinic is told of an exercise of its own, below its name.
    pub fn own_lines(self, line: &OwnLine) -> Vec<String> {
        let only = line.langs.first().filter(|_| line.langs.len() == 1);
        let only = only.map(|lang| self.own_in_one_language(self.language_of(*lang)));
        let plans = (!line.patients.is_empty()).then(|| self.own_on_plans(&self.list(&line.patients)));
        let removed = (!line.offered).then(|| self.text(Key::OwnNotOffered).to_owned());
        [Some(self.own_revision(line.exercise.revision)), only, plans, removed].into_iter().flatten().collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;
    use exercises::authoring::{add_level, blank, lacks};

    #[test]
    fn empty_fields_are_named_together_and_all_else_by_itself() {
        let words = Words::new(Locale::En);
        let mut exercise = blank(Lang::En);
        add_level(&mut exercise);
        for part in TextPart::ALL {
            part.put(&mut exercise, Lang::En, "Words.");
        }
        TextPart::Purpose.put(&mut exercise, Lang::En, "");
        TextPart::Name.put(&mut exercise, Lang::En, &"n".repeat(50));
        let lines = words.lacks(&exercise, &lacks(&exercise, &[]));
        assert!(lines[0].starts_with("Still to write: What it is good for, Level 1, Name of the level"), "{lines:?}");
        assert_eq!(lines[1..], ["Name: 50 characters; up to 40 fit"]);
    }

    #[test]
    fn with_two_languages_each_is_named() {
        let words = Words::new(Locale::Es);
        let mut exercise = blank(Lang::En);
        for (lang, text) in [(Lang::En, "Lean"), (Lang::Es, "Apoyo")] {
            TextPart::Name.put(&mut exercise, lang, text);
        }
        let lines = words.lacks(&exercise, &lacks(&exercise, &[]));
        assert!(lines.len() == 2 && lines[1].starts_with("Falta por escribir en Español"), "{lines:?}");
    }
}
