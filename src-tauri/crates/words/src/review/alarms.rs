//! Alarms as the clinician reads them.

use super::{Finding, Names, Say};
use crate::Words;
use exercises::alarm::{Scope, Trouble};
use exercises::review::ReviewAlarm;

impl Words {
    /// What was wrong, in the clinician's words.
    pub fn trouble_noted(self, trouble: Trouble) -> &'static str {
        self.say(match trouble {
            Trouble::HeartOrBreath => Say::HeartOrBreath,
            Trouble::HeadOrNeck => Say::HeadOrNeck,
            Trouble::Nerve => Say::Nerve,
            Trouble::BladderOrBowel => Say::BladderOrBowel,
            Trouble::Fell => Say::Fell,
            Trouble::NearlyFell => Say::NearlyFell,
            Trouble::TooMuchPain => Say::TooMuchPain,
            Trouble::Other => Say::OtherTrouble,
        })
    }

    /// "Nearly fell", and "on 16 November, during Stand on one leg. All balance has been held back since."
    pub fn review_alarm(self, alarm: &ReviewAlarm, names: Names<'_>) -> Finding {
        let date = self.date(alarm.date);
        let exercise = alarm.item.map(|item| names.item(item)).unwrap_or_default();
        let what = match (alarm.item, alarm.trouble.scope()) {
            (Some(_), _) => Say::AlarmDuring,
            (None, Scope::Exercise) => Say::AlarmBetween,
            (None, _) => Say::AlarmOn,
        };
        let when = self.said(what, &[("date", &date), ("exercise", &exercise)]);
        let since = match (alarm.cleared, alarm.trouble.scope(), alarm.item) {
            (true, _, _) => Say::AlarmCleared,
            (_, Scope::WholePlan, _) | (_, Scope::Exercise, None) => Say::BlocksPlan,
            (_, Scope::Balance, _) => Say::BlocksBalance,
            (_, Scope::Exercise, Some(_)) => Say::BlocksExercise,
        };
        let mistaken = if alarm.said_mistaken { format!(" {}", self.say(Say::AlarmSaidMistaken)) } else { String::new() };
        let figures = format!("{when}. {}{mistaken}", self.say(since));
        Finding { word: self.trouble_noted(alarm.trouble).to_owned(), figures }
    }
}
