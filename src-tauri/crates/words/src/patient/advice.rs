//! What to do when something is wrong.
//!
//! Our own wording, based on public exercise safety sheets, Finucane 2020 (JOSPT 50:350-72) and Rushton 2023 (JOSPT 53:7-22). No
//! telephone number is printed, because it differs by country. Local rules and the licensed clinician take precedence.

use crate::{Key, Words};
use exercises::alarm::{Scope, Trouble};

impl Words {
    /// What to do, in order.
    pub fn what_to_do(self, trouble: Trouble) -> Vec<&'static str> {
        let steps: &[Key] = match trouble {
            Trouble::HeartOrBreath => &[Key::StopSitDown, Key::CallEmergency, Key::NotAlone],
            Trouble::HeadOrNeck => &[Key::StopSitDown, Key::CallEmergency, Key::NotAlone],
            Trouble::Nerve => &[Key::StopNow, Key::NerveSudden, Key::NerveToday],
            Trouble::BladderOrBowel => &[Key::StopNow, Key::EmergencyDepartmentNow, Key::CannotGetThere],
            Trouble::Fell => &[Key::FellStayAndCall, Key::StayDown, Key::TellClinicFall],
            Trouble::NearlyFell => &[Key::SitAndRest, Key::TellClinicFall],
            Trouble::TooMuchPain | Trouble::Other => &[Key::StopThisOne, Key::SevereUrgent, Key::ContactClinic],
        };
        steps.iter().map(|key| self.text(*key)).collect()
    }

    /// What is paused. `whole` is true if the whole plan is, as with a complaint that cannot be attributed to one exercise.
    pub fn paused(self, trouble: Trouble, whole: bool) -> &'static str {
        self.text(match trouble.scope() {
            _ if whole => Key::PausedPlan,
            Scope::WholePlan => Key::PausedPlan,
            Scope::Balance => Key::PausedBalance,
            Scope::Exercise => Key::PausedExercise,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;

    #[test]
    fn whatever_stops_the_whole_plan_names_the_emergency_number() {
        for (locale, emergency) in [(Locale::En, "emergency"), (Locale::Es, "emergencias")] {
            for trouble in Trouble::ALL.into_iter().filter(|trouble| trouble.scope() == Scope::WholePlan) {
                let said = Words::new(locale).what_to_do(trouble).join(" ");
                assert!(said.contains(emergency), "{trouble:?}: {said}");
            }
        }
    }

    #[test]
    fn no_advice_prints_a_number() {
        for locale in Locale::ALL {
            for trouble in Trouble::ALL {
                let said = Words::new(*locale).what_to_do(trouble).join(" ");
                assert!(!said.is_empty() && !said.contains(|c: char| c.is_ascii_digit()), "{trouble:?}: {said}");
            }
        }
    }
}
