//! The review in a few sentences, said to the patient, for both to look at.

use super::{Names, upper};
use crate::{Key, Words};
use chrono::NaiveDate;
use exercises::adherence::Level;
use exercises::change::{ActivityVerdict, PainVerdict};
use exercises::review::{ActivitySeries, CountSeries, DoneInShort, PainSeries, Progress, Review, StanceSeries, in_short};
use exercises::statistics::Verdict;

/// What is said.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Together {
    /// What has to be talked about first; empty without an alarm.
    pub alarms: Vec<String>,
    /// What was done, how it hurts if a complaint is followed, and whether it is working.
    pub sentences: Vec<String>,
    /// What got in the way, or the question if sessions were left out without a reason. Empty if there is nothing to ask.
    pub barriers: Vec<String>,
}

impl Words {
    /// The review in a few sentences.
    pub fn together(self, review: &Review, names: Names<'_>) -> Together {
        let short = in_short(review, |item| names.is_exercise(item));
        let alarm = |alarm: &&_| self.together_alarm(&self.review_alarm(alarm, names).line(self));
        let pain = short.pain.map(|series| self.together_pain(series, names, review.start));
        let done = self.together_done(short.done, review.start);
        let progress = match short.progress {
            Some(Progress::Activity(series)) => self.together_activity(series, names),
            Some(Progress::Stance(series)) => self.together_stance(series, review, names),
            Some(Progress::Count(series)) => self.together_count(series, names),
            None if short.pain.is_some_and(|series| series.change.now.is_some()) => {
                self.text(Key::TogetherNothingElse).to_owned()
            }
            None => self.text(Key::TogetherTooEarly).to_owned(),
        };
        let said = short.barriers.iter().map(|(barrier, times)| self.together_barrier(*times, self.barrier(*barrier)));
        let mut barriers: Vec<String> = said.collect();
        if barriers.is_empty() && short.done.is_some_and(|done| done.level != Level::AsAgreed) {
            barriers.push(self.text(Key::TogetherNoBarrier).to_owned());
        }
        Together {
            alarms: short.alarms.iter().map(alarm).collect(),
            sentences: [Some(done), pain, Some(progress)].into_iter().flatten().collect(),
            barriers,
        }
    }

    fn together_done(self, done: Option<DoneInShort>, start: NaiveDate) -> String {
        let Some(done) = done else { return self.text(Key::TogetherNothingDue).to_owned() };
        let count = match done.lately {
            true => self.together_done_lately(done.in_full, done.owed),
            false => self.together_done_in_all(done.in_full, done.owed),
        };
        let part = (done.in_part > 0).then(|| self.together_done_in_part(done.in_part));
        let verdict = self.text(match done.level {
            Level::AsAgreed => Key::TogetherAsAgreed,
            Level::Partly => Key::TogetherPartly,
            Level::Little => Key::TogetherLittle,
        });
        let since = done.since.map(|day| self.together_since(&self.date(day.date(start))));
        let all: Vec<String> = [Some(count), part, Some(verdict.to_owned()), since].into_iter().flatten().collect();
        self.sentences(&all)
    }

    fn together_pain(self, series: &PainSeries, names: Names<'_>, start: NaiveDate) -> String {
        let name = upper(&names.complaint(series.complaint));
        let change = series.change;
        let (Some(base), Some(now), Some(last)) = (change.base, change.now, change.last_day) else {
            return self.together_pain_few(&name);
        };
        let (base, now) = (self.number(base), self.number(now));
        let said = match change.verdict {
            PainVerdict::Better => self.together_pain_better(&name, base, now),
            PainVerdict::Worse => self.together_pain_worse(&name, base, now),
            PainVerdict::NoClearChange => self.together_pain_same(&name, base, now),
            PainVerdict::NotKnownLately => self.together_pain_last(&name, &self.date(last.date(start))),
            PainVerdict::TooFewRatings => self.together_pain_few(&name),
        };
        self.sentences(&[Some(said), self.last_morning(series, start)].into_iter().flatten().collect::<Vec<_>>())
    }

    fn together_activity(self, series: &ActivitySeries, names: Names<'_>) -> String {
        let name = upper(&names.activity(series.activity));
        let of = |score: Option<_>| self.number(score.map(f64::from).unwrap_or_default());
        let (base, now) = (of(series.change.base), of(series.change.now));
        match series.change.verdict {
            ActivityVerdict::Better => self.together_activity_better(&name, base, now),
            ActivityVerdict::Worse => self.together_activity_worse(&name, base, now),
            ActivityVerdict::NoClearChange | ActivityVerdict::TooFewRatings => self.together_activity_same(&name, base, now),
        }
    }

    fn together_stance(self, series: &StanceSeries, review: &Review, names: Names<'_>) -> String {
        let exercise = names.exercise(&series.exercise);
        let name = series.leg.map_or(exercise.clone(), |leg| self.list_comma(&exercise, self.leg(leg)));
        // Where there are times of another level, "at first" would read as if it were of that.
        let others = review.balance.iter().any(|one| one.exercise == series.exercise && one.rung != series.rung);
        let level = series.rung.as_ref().filter(|_| others).map(|rung| names.rung(&series.exercise, rung));
        let name = level.map_or(name.clone(), |level| self.exercise_at_level(&name, &level));
        let Some((from, to)) = series.change.figures.map(|of| self.ends(series, &of)) else {
            return self.together_seconds_full(&name);
        };
        match series.change.verdict {
            Verdict::Rising => self.together_seconds_rising(&name, from, to),
            Verdict::Falling => self.together_seconds_falling(&name, from, to),
            Verdict::AtTheCap => self.together_seconds_full(&name),
            Verdict::NoClearChange | Verdict::TooFewData => self.together_seconds_same(&name, from, to),
        }
    }

    fn together_count(self, series: &CountSeries, names: Names<'_>) -> String {
        let name = names.exercise(&series.exercise);
        let [from, to] = [series.days.first(), series.days.last()].map(|day| day.map_or(0, |day| day.count));
        match series.change {
            Some(Verdict::Rising) => self.together_count_rising(&name, from, to),
            Some(Verdict::Falling) => self.together_count_falling(&name, from, to),
            _ => self.together_count_same(&name, from, to),
        }
    }
}
