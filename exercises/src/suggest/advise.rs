//! The rules that lead from the facts about one item to a suggestion.
//!
//! In this order (our design; sources in [`super`]):
//! 1. stop and talk, if an uncleared alarm pauses the item;
//! 2. one step back, if in one of the last two sessions pain was over 5, or over the item's own lower limit, or had not
//!    settled by the next morning, or if pain rose for two weeks, or if the last two sessions missed the target;
//! 3. one step forward, if in the last two sessions the target was met, pain was 3 or less and answered, the morning after
//!    was not worse, no uncleared alarm exists at all, the last step was a week or more ago, and the next step is allowed;
//! 4. otherwise keep.
//!
//! A session of today, whose next morning is still to come, can prevent a step forward but never lead to one.

use super::step::{StepConditions, next, undo};
use super::{Advice, Facts, Reached, Reason, Session, Suggestion};
use crate::questions::ASK_MORNING_FROM;
use crate::score::Score;
use crate::time::DayNumber;

/// The highest pain during the exercise at which it may be made harder, 0 to 10.
pub const ADVANCE_PAIN: Score = Score::at_most_ten(3);
/// The exercise is made easier if pain during it is above this score, 0 to 10.
pub const BACK_PAIN: Score = Score::at_most_ten(5);
/// The smallest number of days between two steps.
pub const STEP_DAYS: u16 = 7;

/// What the rules propose for one item.
pub fn advise(facts: &Facts<'_>) -> Suggestion {
    let (advice, reason, days) = stop(facts).or_else(|| step_back(facts)).unwrap_or_else(|| forward(facts));
    Suggestion { item: facts.item.id, rung: facts.item.rung.clone(), dose: facts.item.dose, advice, reason, based_on: days }
}

type Outcome = (Advice, Reason, Vec<DayNumber>);

fn stop(facts: &Facts<'_>) -> Option<Outcome> {
    let (entry, trouble) = facts.alarm?;
    Some((Advice::StopAndTalk, Reason::Alarm { entry, trouble }, Vec::new()))
}

fn step_back(facts: &Facts<'_>) -> Option<Outcome> {
    let last_two = last_two(&facts.sessions);
    let limit = BACK_PAIN.min(facts.item.pain_limit);
    let too_high = last_two.iter().rev().find(|session| session.pain.is_some_and(|pain| pain > limit));
    let not_settled = last_two.iter().rev().find(|session| session.morning == Some(false));
    let back = undo(&facts.item, facts.planned, facts.exercise);
    let hurts = |reason, days| {
        let advice = back.clone().map_or(Advice::StopAndTalk, Advice::StepBack);
        Some((advice, reason, days))
    };
    if let Some(Session { day, pain: Some(score), .. }) = too_high {
        return hurts(Reason::PainTooHigh { score: *score, limit }, vec![*day]);
    }
    if let Some(session) = not_settled {
        return hurts(Reason::NotSettled, vec![session.day]);
    }
    if let Some(rise) = facts.rise {
        return hurts(Reason::PainRising(rise), days(last_two));
    }
    if last_two.len() == 2 && last_two.iter().all(|session| session.reached == Reached::Missed) {
        let advice = back.clone().map_or(Advice::Keep, Advice::StepBack);
        return Some((advice, Reason::MissedTwice, days(last_two)));
    }
    None
}

fn forward(facts: &Facts<'_>) -> Outcome {
    let sessions = without_today(facts);
    let last_two = last_two(sessions);
    let keep = |reason| (Advice::Keep, reason, days(last_two));
    if let Some(against) = last_two.iter().rev().find_map(|session| against(session, facts)) {
        return keep(against);
    }
    match last_two {
        [] => return keep(Reason::TooFewSessions { sessions: 0 }),
        [one] if one.reached == Reached::Met => return keep(Reason::MetOnce),
        [_] => return keep(Reason::TooFewSessions { sessions: 1 }),
        [.., last] if last.reached != Reached::Met => return keep(Reason::NotMet),
        [before, ..] if before.reached != Reached::Met => return keep(Reason::MetOnce),
        _ => {}
    }
    if let Some((entry, trouble)) = facts.any_alarm {
        return keep(Reason::Alarm { entry, trouble });
    }
    if let Some(stepped) = facts.last_step.filter(|stepped| facts.today < stepped.plus(STEP_DAYS)) {
        return keep(Reason::StepThisWeek { stepped });
    }
    let conditions = StepConditions { exercise: facts.exercise, age: facts.age, gate_open: facts.gate_open };
    match next(&facts.item, conditions) {
        Ok(step) => (Advice::Advance(step), Reason::MetTwice, days(last_two)),
        Err(hindrance) => keep(Reason::Hindered(hindrance)),
    }
}

/// The reason why a session prevents a step forward, apart from the target; `None` if it does not.
fn against(session: &Session, facts: &Facts<'_>) -> Option<Reason> {
    match session.pain {
        Some(score) if score > ADVANCE_PAIN.min(facts.item.pain_limit) => Some(Reason::PainBetween { score }),
        Some(score) if score >= ASK_MORNING_FROM && session.morning.is_none() => Some(Reason::MorningUnanswered),
        None if facts.asks_pain => Some(Reason::PainUnanswered),
        _ => None,
    }
}

/// The sessions without today's, unless today's already prevents a step forward.
fn without_today<'a>(facts: &'a Facts<'_>) -> &'a [Session] {
    match facts.sessions.split_last() {
        Some((today, before)) if today.day >= facts.today && waits(today, facts) => before,
        _ => &facts.sessions,
    }
}

fn waits(session: &Session, facts: &Facts<'_>) -> bool {
    let hurt = session.pain.is_some_and(|pain| pain > ADVANCE_PAIN.min(facts.item.pain_limit));
    session.reached != Reached::Missed && !hurt
}

fn last_two(sessions: &[Session]) -> &[Session] {
    &sessions[sessions.len().saturating_sub(2)..]
}

fn days(sessions: &[Session]) -> Vec<DayNumber> {
    sessions.iter().map(|session| session.day).collect()
}
