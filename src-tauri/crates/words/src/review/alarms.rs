//! Alarms in the clinician's review.

use super::{Finding, Names};
use crate::{Key, Words};
use exercises::alarm::{Scope, Trouble};
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
        })
    }

    /// "Nearly fell", and "on 16 November, during Stand on one leg. All balance exercises have been paused for safety since."
    pub fn review_alarm(self, alarm: &ReviewAlarm, names: Names<'_>) -> Finding {
        let date = self.date(alarm.date);
        let when = match (alarm.item, alarm.trouble.scope()) {
            (Some(item), _) => self.review_alarm_during(&date, &names.item(item)),
            (None, Scope::Exercise) => self.review_alarm_between(&date),
            (None, _) => self.review_alarm_on(&date),
        };
        let since = match (alarm.cleared, alarm.trouble.scope(), alarm.item) {
            (true, _, _) => Key::ReviewAlarmCleared,
            (_, Scope::WholePlan, _) | (_, Scope::Exercise, None) => Key::ReviewPausedPlan,
            (_, Scope::Balance, _) => Key::ReviewPausedBalance,
            (_, Scope::Exercise, Some(_)) => Key::ReviewPausedExercise,
        };
        let since = self.text(since);
        let figures = match alarm.said_mistaken {
            true => self.review_alarm_figures_mistaken(&when, since, self.text(Key::ReviewAlarmSaidMistaken)),
            false => self.review_alarm_figures(&when, since),
        };
        Finding { word: self.trouble_noted(alarm.trouble).to_owned(), not_enough_data: false, figures }
    }
}
