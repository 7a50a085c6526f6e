//! What to do when something is wrong.
//!
//! Our own wording, based on public exercise safety sheets, Finucane 2020 (JOSPT 50:350-72) and Rushton 2023 (JOSPT 53:7-22). No
//! emergency number is printed, because it differs by country; the clinic's own number is on its card. Local rules and the licensed
//! clinician take precedence.

use crate::{Key, Words};
use exercises::alarm::{Circumstance, Trouble};
use exercises::suspension::Suspends;
use exercises::today::PauseEnd;
use std::collections::BTreeSet;

impl Words {
    /// What to do, in order. What was answered about the alarm can make it more urgent.
    pub fn what_to_do(self, trouble: Trouble, circumstances: &BTreeSet<Circumstance>) -> Vec<&'static str> {
        let is = |one| circumstances.contains(&one);
        let steps: &[Key] = match trouble {
            Trouble::Fell if is(Circumstance::BlowToTheHead) || is(Circumstance::ThinsTheBlood) => {
                &[Key::FellStayAndCall, Key::FellCheckToday, Key::StayDown, Key::TellClinicFall]
            }
            Trouble::Unwell if is(Circumstance::SweatsOrWeightLoss) => &[Key::UnwellRest, Key::UnwellCallClinic],
            Trouble::HeartOrBreath => &[Key::StopSitDown, Key::CallEmergency, Key::NotAlone],
            Trouble::HeadOrNeck => &[Key::StopSitDown, Key::CallEmergency, Key::NotAlone],
            Trouble::Nerve => &[Key::StopNow, Key::NerveSudden, Key::NerveToday],
            Trouble::BladderOrBowel => &[Key::StopNow, Key::EmergencyDepartmentNow, Key::CannotGetThere],
            Trouble::Fell => &[Key::FellStayAndCall, Key::StayDown, Key::TellClinicFall],
            Trouble::NearlyFell => &[Key::SitAndRest, Key::TellClinicFall],
            Trouble::Limb => &[Key::StopSitDown, Key::LimbUrgent, Key::CannotGetThere],
            Trouble::Dizzy => &[Key::DizzySit, Key::DizzyUrgent, Key::TellClinicFall],
            Trouble::Unwell => &[Key::UnwellRest, Key::UnwellLasting, Key::UnwellAgain],
            Trouble::PainAboveLimit => &[Key::StopForToday, Key::SevereUrgent, Key::AboveLimitAgain],
            Trouble::TooMuchPain | Trouble::Other => &[Key::StopThisOne, Key::SevereUrgent, Key::ContactClinic],
        };
        steps.iter().map(|key| self.text(*key)).collect()
    }

    /// What an alarm pauses, and until when.
    pub fn paused(self, trouble: Trouble, suspends: Option<Suspends>, ends: PauseEnd) -> &'static str {
        self.text(match suspends {
            Some(Suspends::Everything) if ends == PauseEnd::WhenWell => Key::PausedUntilWell,
            Some(Suspends::Exercise(_)) if ends == PauseEnd::Today => Key::PausedToday,
            Some(Suspends::Everything) => Key::PausedPlan,
            Some(Suspends::Standing) => Key::PausedStanding,
            Some(Suspends::Exercise(_)) => Key::PausedExercise,
            None if trouble == Trouble::NearlyFell => Key::EasedOneLevel,
            None => Key::PausedNothing,
        })
    }

    /// What a person can answer about an alarm: "I hit my head".
    pub fn circumstance(self, circumstance: Circumstance) -> &'static str {
        self.text(match circumstance {
            Circumstance::BlowToTheHead => Key::BlowToTheHead,
            Circumstance::ThinsTheBlood => Key::ThinsTheBlood,
            Circumstance::CouldNotGetUp => Key::CouldNotGetUp,
            Circumstance::SweatsOrWeightLoss => Key::SweatsOrWeightLoss,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;

    #[test]
    fn every_urgent_sign_names_the_emergency_number() {
        for (locale, emergency) in [(Locale::En, "emergency"), (Locale::Es, "emergencias")] {
            for trouble in Trouble::ALL.into_iter().filter(|trouble| trouble.is_urgent()) {
                let said = Words::new(locale).what_to_do(trouble, &BTreeSet::new()).join(" ");
                assert!(said.contains(emergency), "{trouble:?}: {said}");
            }
        }
    }

    #[test]
    fn a_fall_on_the_head_or_on_a_blood_thinner_is_to_be_checked_today() {
        let words = Words::new(Locale::En);
        for one in [Circumstance::BlowToTheHead, Circumstance::ThinsTheBlood] {
            let said = words.what_to_do(Trouble::Fell, &BTreeSet::from([one]));
            assert!(said.contains(&words.text(Key::FellCheckToday)), "{said:?}");
        }
        assert!(!words.what_to_do(Trouble::Fell, &BTreeSet::new()).contains(&words.text(Key::FellCheckToday)));
    }

    #[test]
    fn no_advice_prints_a_number() {
        for locale in Locale::ALL {
            for trouble in Trouble::ALL {
                for circumstances in [BTreeSet::new(), Circumstance::ALL.into_iter().collect()] {
                    let said = Words::new(*locale).what_to_do(trouble, &circumstances).join(" ");
                    assert!(!said.is_empty() && !said.contains(|c: char| c.is_ascii_digit()), "{trouble:?}: {said}");
                }
            }
        }
    }
}
