//! Alarms in the clinician's review.

use super::{Finding, Names};
use crate::{Key, Words};
use exercises::alarm::{Circumstance, Trouble};
use exercises::review::ReviewAlarm;

impl Words {
    /// The complaint, in the clinician's terms.
    pub fn trouble_noted(self, trouble: Trouble) -> &'static str {
        self.text(match trouble {
            Trouble::HeartOrBreath => Key::ReviewHeartOrBreath,
            Trouble::HeadOrNeck => Key::ReviewHeadOrNeck,
            Trouble::Nerve => Key::ReviewNerve,
            Trouble::BladderOrBowel => Key::ReviewBladderOrBowel,
            Trouble::Fell => Key::ReviewFell,
            Trouble::NearlyFell => Key::ReviewNearlyFell,
            Trouble::TooMuchPain => Key::ReviewTooMuchPain,
            Trouble::Other => Key::ReviewOtherTrouble,
            Trouble::Limb => Key::ReviewLimb,
            Trouble::Dizzy => Key::ReviewDizzy,
            Trouble::Unwell => Key::ReviewUnwell,
            Trouble::PainAboveLimit => Key::ReviewPainAboveLimit,
        })
    }

    /// "Fell", and "on 16 November, during Stand on one leg: blow to the head. Paused for safety since: Stand on one leg."
    pub fn review_alarm(self, alarm: &ReviewAlarm, names: Names<'_>) -> Finding {
        let date = self.date(alarm.date);
        let when = match alarm.item {
            Some(item) => self.review_alarm_during(&date, &names.item(item)),
            None if matches!(alarm.trouble, Trouble::TooMuchPain | Trouble::Other) => self.review_alarm_between(&date),
            None => self.review_alarm_on(&date),
        };
        let above = alarm.above.map(|(score, limit)| self.review_alarm_above(score, limit));
        let clock = alarm.wrong_clock.then(|| self.text(Key::ReviewAlarmWrongClock).to_owned());
        let said = alarm.circumstances.iter().map(|one| self.circumstance_noted(*one).to_owned());
        let details: Vec<String> = above.into_iter().chain(said).chain(clock).collect();
        let when = match details.as_slice() {
            [] => when,
            details => self.review_alarm_and_circumstances(&when, &self.commas(details)),
        };
        let since = self.suspended_since(alarm, names);
        let figures = match alarm.said_mistaken {
            true => self.review_alarm_figures_mistaken(&when, &since, self.text(Key::ReviewAlarmSaidMistaken)),
            false => self.review_alarm_figures(&when, &since),
        };
        Finding { word: self.trouble_noted(alarm.trouble).to_owned(), not_enough_data: false, figures }
    }

    /// "Paused for safety since: Stand on one leg."
    fn suspended_since(self, alarm: &ReviewAlarm, names: Names<'_>) -> String {
        if alarm.cleared {
            return self.text(Key::ReviewAlarmCleared).to_owned();
        }
        match alarm.suspended.as_slice() {
            [] if alarm.trouble == Trouble::NearlyFell && alarm.item.is_some() => {
                self.text(Key::ReviewAlarmEased).to_owned()
            }
            [] => self.text(Key::ReviewAlarmSuspendsNothing).to_owned(),
            all if names.are_whole_plan(all) => self.text(Key::ReviewAlarmSuspendsPlan).to_owned(),
            some => {
                let items: Vec<String> = some.iter().map(|item| names.item(*item)).collect();
                self.review_alarm_suspends(&self.list(&items))
            }
        }
    }

    fn circumstance_noted(self, circumstance: Circumstance) -> &'static str {
        self.text(match circumstance {
            Circumstance::BlowToTheHead => Key::ReviewAlarmBlowToTheHead,
            Circumstance::ThinsTheBlood => Key::ReviewAlarmThinsTheBlood,
            Circumstance::CouldNotGetUp => Key::ReviewAlarmCouldNotGetUp,
            Circumstance::SweatsOrWeightLoss => Key::ReviewAlarmSweatsOrWeightLoss,
        })
    }
}
