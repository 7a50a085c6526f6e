//! What to do when something is wrong.
//!
//! Our own wording, based on public exercise safety sheets, Finucane 2020 (JOSPT 50:350-72) and Rushton 2023 (JOSPT 53:7-22). No
//! emergency number is printed, because it differs by country; the clinic's own number is on its card. Local rules and the licensed
//! clinician take precedence.

use crate::{Key, Words};
use exercises::alarm::{Circumstance, Trouble};
use exercises::id::ItemId;
use exercises::suspension::Suspends;
use exercises::today::{PauseEnd, TodayAlarm};
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

    /// What to do after a near fall in `item` that pauses nothing. The exercise goes on one level easier, so unlike
    /// [`Words::what_to_do`] this does not tell the patient to wait for the clinic.
    pub fn after_near_fall(self, item: Option<ItemId>) -> Vec<&'static str> {
        let then = if eases(Trouble::NearlyFell, item) { Key::NearFallEasier } else { Key::NearFallSupport };
        vec![self.text(Key::SitAndRest), self.text(then)]
    }

    /// What an alarm pauses, and until when.
    pub fn paused(self, alarm: &TodayAlarm) -> &'static str {
        let TodayAlarm { trouble, item, suspends, ends, .. } = *alarm;
        self.text(match suspends {
            Some(Suspends::Everything) if ends == PauseEnd::WhenWell => Key::PausedUntilWell,
            Some(Suspends::Exercise(_)) if ends == PauseEnd::Today => Key::PausedToday,
            Some(Suspends::Everything) => Key::PausedPlan,
            Some(Suspends::Standing) => Key::PausedStanding,
            Some(Suspends::Exercise(_)) => Key::PausedExercise,
            None if eases(trouble, item) => Key::EasedOneLevel,
            None => Key::PausedNothing,
        })
    }

    /// What an alarm would pause if it was recorded, and until when.
    pub fn would_pause(
        self,
        trouble: Trouble,
        item: Option<ItemId>,
        suspends: Option<Suspends>,
        ends: PauseEnd,
    ) -> &'static str {
        self.text(match suspends {
            Some(Suspends::Everything) if ends == PauseEnd::WhenWell => Key::WouldPauseUntilWell,
            Some(Suspends::Everything) => Key::WouldPausePlan,
            Some(Suspends::Standing) => Key::WouldPauseStanding,
            Some(Suspends::Exercise(_)) => Key::WouldPauseExercise,
            None if eases(trouble, item) => Key::WouldEase,
            None => Key::WouldPauseNothing,
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

/// Whether an alarm that pauses nothing makes the exercise easier: only a near fall during one does.
fn eases(trouble: Trouble, item: Option<ItemId>) -> bool {
    trouble == Trouble::NearlyFell && item.is_some()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;
    use exercises::id::PlanId;
    use exercises::time::Stamp;

    fn near_fall(item: Option<ItemId>, suspends: Option<Suspends>) -> TodayAlarm {
        let at = Stamp { utc_ms: 0, offset_s: 0 };
        let (plan, circumstances) = (PlanId([1; 8]), BTreeSet::new());
        let trouble = Trouble::NearlyFell;
        TodayAlarm { plan, trouble, item, at, wrong_clock: false, circumstances, suspends, ends: PauseEnd::Card }
    }

    #[test]
    fn what_to_do_after_a_near_fall_agrees_with_what_is_said_to_be_paused() {
        let item = Some(ItemId(2));
        let standing = Some(Suspends::Standing);
        for (item, suspends, step, paused) in [
            (item, None, Some(Key::NearFallEasier), Key::EasedOneLevel),
            (None, None, Some(Key::NearFallSupport), Key::PausedNothing),
            (item, standing, None, Key::PausedStanding),
            (None, standing, None, Key::PausedStanding),
        ] {
            for locale in Locale::ALL {
                let (words, alarm) = (Words::new(*locale), near_fall(item, suspends));
                if let Some(step) = step {
                    assert_eq!(words.after_near_fall(item), [words.text(Key::SitAndRest), words.text(step)]);
                }
                assert_eq!(words.paused(&alarm), words.text(paused));
            }
        }
    }

    #[test]
    fn before_an_alarm_is_recorded_nothing_is_said_to_be_paused_already() {
        let item = Some(ItemId(2));
        for (locale, if_recorded) in [(Locale::En, "If you record it, "), (Locale::Es, "Si lo anota, ")] {
            for trouble in Trouble::ALL {
                for suspends in [None, Some(Suspends::Everything), Some(Suspends::Standing), item.map(Suspends::Exercise)] {
                    for ends in [PauseEnd::Card, PauseEnd::WhenWell] {
                        let said = Words::new(locale).would_pause(trouble, item, suspends, ends);
                        assert!(said.starts_with(if_recorded), "{trouble:?}: {said}");
                    }
                }
            }
        }
    }

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
