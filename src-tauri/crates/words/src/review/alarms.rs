//! Alarms as the clinician reads them.

use super::{Finding, Names, Sentence};
use crate::Words;
use exercises::alarm::{Scope, Trouble};
use exercises::review::ReviewAlarm;

impl Words {
    /// What was wrong, in the clinician's words.
    pub fn trouble_noted(self, trouble: Trouble) -> &'static str {
        self.sentence(match trouble {
            Trouble::HeartOrBreath => Sentence::HeartOrBreath,
            Trouble::HeadOrNeck => Sentence::HeadOrNeck,
            Trouble::Nerve => Sentence::Nerve,
            Trouble::BladderOrBowel => Sentence::BladderOrBowel,
            Trouble::Fell => Sentence::Fell,
            Trouble::NearlyFell => Sentence::NearlyFell,
            Trouble::TooMuchPain => Sentence::TooMuchPain,
            Trouble::Other => Sentence::OtherTrouble,
        })
    }

    /// "Nearly fell", and "on 16 November, during Stand on one leg. All balance has been paused since."
    pub fn review_alarm(self, alarm: &ReviewAlarm, names: Names<'_>) -> Finding {
        let date = self.date(alarm.date);
        let exercise = alarm.item.map(|item| names.item(item)).unwrap_or_default();
        let what = match (alarm.item, alarm.trouble.scope()) {
            (Some(_), _) => Sentence::AlarmDuring,
            (None, Scope::Exercise) => Sentence::AlarmBetween,
            (None, _) => Sentence::AlarmOn,
        };
        let when = self.filled(what, &[("date", &date), ("exercise", &exercise)]);
        let since = match (alarm.cleared, alarm.trouble.scope(), alarm.item) {
            (true, _, _) => Sentence::AlarmCleared,
            (_, Scope::WholePlan, _) | (_, Scope::Exercise, None) => Sentence::BlocksPlan,
            (_, Scope::Balance, _) => Sentence::BlocksBalance,
            (_, Scope::Exercise, Some(_)) => Sentence::BlocksExercise,
        };
        let mistaken =
            if alarm.said_mistaken { format!(" {}", self.sentence(Sentence::AlarmSaidMistaken)) } else { String::new() };
        let figures = format!("{when}. {}{mistaken}", self.sentence(since));
        Finding { word: self.trouble_noted(alarm.trouble).to_owned(), figures }
    }
}
