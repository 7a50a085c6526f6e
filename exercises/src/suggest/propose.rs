//! The rules that lead from the facts about one item to a proposal.
//!
//! An item outside its phase is kept, unless an alarm suspends it. One that is done as needed is kept, unless an alarm suspends it or one of
//! its last three ratings was above the limit: then it is talked about. For every other item, in this order; the first that holds is the
//! proposal:
//! 1. **talk**: an alarm suspends it, or nothing at all was done of [`MANY_OWED`] or more owed slots;
//! 2. **ease**: a rating while doing it above the limit among the last three, or two unsettled mornings counted against it, or the
//!    target missed in at least half of its last four finished sessions; balance is never eased for short seconds alone, only by pain,
//!    a near fall or a falling series;
//! 3. **reduce**: at most half of [`MANY_OWED`] or more owed slots done, by the sum of their shares; if the reason given most often is
//!    pain, fear or not being sure how, it is **talk** instead;
//! 4. **progress**: a week or more since the last change, sessions on three days or more, the last session of each of the last two
//!    days with a session met the target, more than half of the owed slots done, no unsettled morning for a week, pain not worse, no
//!    flare and no alarm that suspended it for a week (also if a card has cleared it), and every known rating while doing it of the last
//!    six days with a session at most [`EASY_PAIN`];
//! 5. **keep**: otherwise.
//!
//! What is no training (breathing, care, prompts) is neither eased nor progressed; a test is only kept or talked about. Graded activity, which
//! the calendar raises, is talked about after a rating above the limit, asked less of where little was done, and otherwise kept.

use super::gate::Hindrance;
use super::reduction::reduction;
use super::step::{StepConditions, next, undo};
use super::{Ask, ItemFacts, Proposal, Reason, Session, Step, Suggestion};
use crate::adherence::{Shares, count};
use crate::catalogue::kind::WorkForm;
use crate::catalogue::{Quantity, RungId};
use crate::history::Mark;
use crate::log::Barrier;
use crate::plan::PhaseState;
use crate::score::Score;
use crate::time::DayNumber;

/// The highest pain while doing it at which it may be made harder, 0 to 10.
pub const EASY_PAIN: Score = Score::at_most_ten(3);
/// Days between two steps.
pub const STEP_DAYS: u16 = 7;
/// Days for which mornings must have settled, and since which a flare must have ended, before a step forward.
pub const SETTLED_DAYS: u16 = 7;
/// Number of owed slots from which on it is said that little or nothing was done.
pub const MANY_OWED: u32 = 6;

/// Known ratings that are looked at for the limit.
const LAST_RATINGS: usize = 3;
/// Finished sessions that are looked at for a missed target.
const LAST_SESSIONS: usize = 4;
/// Days with a session whose ratings must be low before a step forward.
const LOW_PAIN_DAYS: usize = 6;
/// Days with a session that a step forward needs.
const SESSION_DAYS: usize = 3;
/// Ratings that must be known before a step forward is final.
const KNOWN_RATINGS: usize = 2;

/// What the rules propose for one item.
pub fn propose(facts: &ItemFacts<'_>) -> Suggestion {
    let (proposal, reasons, ask) = outside_its_phase(facts)
        .or_else(|| as_needed(facts))
        .or_else(|| talk(facts))
        .or_else(|| ease(facts))
        .or_else(|| reduce(facts))
        .unwrap_or_else(|| progress_or_keep(facts));
    Suggestion { item: facts.item.id, rung: facts.item.rung.clone(), dose: facts.item.dose, proposal, reasons, ask }
}

/// An item that begins later or has ended is kept, unless an alarm suspends it.
fn outside_its_phase(facts: &ItemFacts<'_>) -> Option<Outcome> {
    let hindrance = match facts.phase {
        PhaseState::Now => return None,
        PhaseState::ToCome(_) => Hindrance::ToCome,
        PhaseState::Over(_) => Hindrance::Over,
    };
    Some(alarmed(facts).unwrap_or_else(|| (Proposal::Keep, vec![Reason::Hindered(hindrance)], Vec::new())))
}

/// What is done as needed is talked about after an alarm or a rating above the limit, and otherwise kept: how often it is done says nothing.
fn as_needed(facts: &ItemFacts<'_>) -> Option<Outcome> {
    if !facts.planned.schedule.is_as_needed() {
        return None;
    }
    let above: Vec<Reason> = above_limit(facts).into_iter().collect();
    let high = (!above.is_empty()).then_some((Proposal::Talk, above, Vec::new()));
    let kept = || (Proposal::Keep, vec![Reason::Hindered(Hindrance::AsNeeded)], Vec::new());
    Some(alarmed(facts).or(high).unwrap_or_else(kept))
}

type Outcome = (Proposal, Vec<Reason>, Vec<Ask>);

/// Talk about an alarm that suspends it.
fn alarmed(facts: &ItemFacts<'_>) -> Option<Outcome> {
    let alarm = |(id, trouble)| (Proposal::Talk, vec![Reason::Alarm { id, trouble }], Vec::new());
    facts.alarm.map(alarm)
}

/// The last rating above the limit among the last three.
fn above_limit(facts: &ItemFacts<'_>) -> Option<Reason> {
    let last = &facts.during[facts.during.len().saturating_sub(LAST_RATINGS)..];
    let above = last.iter().rev().find(|(_, score)| *score > facts.item.pain_limit);
    above.map(|(day, score)| Reason::AboveLimit { score: *score, limit: facts.item.pain_limit, day: *day })
}

fn talk(facts: &ItemFacts<'_>) -> Option<Outcome> {
    if let Some(alarmed) = alarmed(facts) {
        return Some(alarmed);
    }
    // The calendar leads graded activity, so pain does not ease it; but the limit was agreed on.
    let by_calendar = facts.item.dose.value(Quantity::QuotaGoal).is_some();
    if let Some(above) = above_limit(facts).filter(|_| by_calendar) {
        return Some((Proposal::Talk, vec![above], Vec::new()));
    }
    let shares = count(&facts.slots).shares().filter(|shares| shares.n >= MANY_OWED && !any_done(facts))?;
    let given = commonest(facts).map_or(Reason::NoneGiven, |(barrier, times)| Reason::Given { barrier, times });
    Some((Proposal::Talk, vec![Reason::NothingDone { owed: shares.n }, given], Vec::new()))
}

fn any_done(facts: &ItemFacts<'_>) -> bool {
    facts.slots.iter().any(|slot| matches!(slot.mark, Mark::Done | Mark::Partly(_)))
}

/// Whether it is a test, which is kept or talked about: a test that is made easier or is asked for less is another test.
fn is_test(facts: &ItemFacts<'_>) -> bool {
    facts.item.dose.kind().rules().is_test() || facts.exercise.is_some_and(|exercise| exercise.test)
}

fn ease(facts: &ItemFacts<'_>) -> Option<Outcome> {
    if !facts.item.dose.kind().rules().is_stepped() {
        return None;
    }
    let mut reasons: Vec<Reason> = above_limit(facts).into_iter().collect();
    if facts.unsettled.len() >= 2 {
        reasons.push(Reason::Unsettled { days: facts.unsettled.clone() });
    }
    if facts.item.dose.kind().form() == WorkForm::Trials {
        reasons.extend(facts.near_fall.map(|day| Reason::NearFall { day }));
        reasons.extend(facts.falling.then_some(Reason::BalanceFalling));
    } else {
        reasons.extend(target_missed(&facts.sessions));
    }
    if reasons.is_empty() {
        return None;
    }
    let step = eased_at_home(facts).or_else(|| undo(&facts.item, facts.planned, facts.exercise));
    Some((step.map_or(Proposal::Talk, Proposal::Ease), reasons, Vec::new()))
}

/// The level to which a near fall has brought the item at home already: the card only has to follow.
fn eased_at_home(facts: &ItemFacts<'_>) -> Option<Step> {
    let used =
        facts.item.rung.as_ref().filter(|rung| facts.near_fall.is_some() && facts.planned.rung.as_ref() != Some(rung))?;
    let exercise = facts.exercise?;
    let place = |rung: &RungId| exercise.ladder_of(rung)?.rungs.iter().position(|other| other.id == *rung);
    let easier = place(used) < facts.planned.rung.as_ref().and_then(place);
    easier.then(|| Step::Rung { to: used.clone(), dose: facts.item.dose })
}

/// The target missed in at least half of the last four finished sessions, and in two at least.
fn target_missed(sessions: &[Session]) -> Option<Reason> {
    let finished: Vec<&Session> = sessions.iter().filter(|session| session.finished).collect();
    let last = &finished[finished.len().saturating_sub(LAST_SESSIONS)..];
    let missed = last.iter().filter(|session| !session.met).count();
    (missed >= 2 && 2 * missed >= last.len())
        .then_some(Reason::TargetMissed { missed: missed as u32, of: last.len() as u32 })
}

fn reduce(facts: &ItemFacts<'_>) -> Option<Outcome> {
    let little = |shares: &Shares| shares.n >= MANY_OWED && shares.is_at_most(50);
    if is_test(facts) {
        return None;
    }
    let shares = count(&facts.slots).shares().filter(little)?;
    let done = Reason::LittleDone { thousandths: shares.thousandths, owed: shares.n };
    let commonest = commonest(facts);
    let given = commonest.map_or(Reason::NoneGiven, |(barrier, times)| Reason::Given { barrier, times });
    let barrier = commonest.map(|(barrier, _)| barrier);
    if matches!(barrier, Some(Barrier::Pain | Barrier::NotSureHow)) {
        return Some((Proposal::Talk, vec![given, done], Vec::new()));
    }
    let ask = if barrier.is_none() { vec![Ask::Reason] } else { Vec::new() };
    let reduction = reduction(&facts.item, facts.exercise, &facts.slots, barrier);
    Some((reduction.map_or(Proposal::Talk, Proposal::Reduce), vec![done, given], ask))
}

/// The reason given most often for skipping it lately; of equally frequent ones the one that needs attention first.
fn commonest(facts: &ItemFacts<'_>) -> Option<(Barrier, u32)> {
    let times = |barrier: &Barrier| facts.slots.iter().filter(|slot| slot.mark == Mark::Skipped(*barrier)).count() as u32;
    let counted = Barrier::ALL.into_iter().map(|barrier| (barrier, times(&barrier))).filter(|(_, times)| *times > 0);
    let told = counted.filter(|(barrier, _)| *barrier != Barrier::RatherNotSay);
    told.max_by_key(|(barrier, times)| (*times, barrier.first(), std::cmp::Reverse(*barrier)))
}

fn progress_or_keep(facts: &ItemFacts<'_>) -> Outcome {
    if !facts.item.dose.kind().rules().is_stepped() {
        let hindrance = match facts.item.dose.value(Quantity::QuotaGoal) {
            _ if is_test(facts) => Hindrance::Test,
            None => Hindrance::NotStepped,
            Some(_) if facts.item.dose.after_days(i64::from(u16::MAX)) == facts.item.dose => Hindrance::GoalReached,
            Some(_) => Hindrance::ByCalendar,
        };
        return (Proposal::Keep, vec![Reason::Hindered(hindrance)], Vec::new());
    }
    let against = against_progress(facts);
    if !against.is_empty() {
        let ask = if unsettled_lately(facts, &facts.unsettled_unknown).is_empty() { Vec::new() } else { vec![Ask::Pain] };
        return (Proposal::Keep, against, ask);
    }
    let conditions = StepConditions { exercise: facts.exercise, age: facts.age, gate_open: facts.gate_open };
    let step = match next(&facts.item, conditions) {
        Ok(step) => step,
        Err(hindrance) => return (Proposal::Keep, vec![Reason::Hindered(hindrance)], Vec::new()),
    };
    let known = facts.during.len();
    let mut reasons: Vec<Reason> =
        last_two_days(&facts.sessions).map(|days| Reason::TargetMet { days }).into_iter().collect();
    let most = facts.during.iter().map(|(_, score)| *score).max();
    let enough = known >= KNOWN_RATINGS || !facts.asks_pain;
    reasons.extend(most.filter(|_| known >= KNOWN_RATINGS).map(|most| Reason::LowPain { most, known: known as u32 }));
    reasons.extend((!enough).then_some(Reason::PainUnknown { known: known as u32 }));
    (Proposal::Progress(step), reasons, if enough { Vec::new() } else { vec![Ask::Pain] })
}

/// Everything that speaks against a step forward.
fn against_progress(facts: &ItemFacts<'_>) -> Vec<Reason> {
    let mut against = Vec::new();
    let days = session_days(&facts.sessions);
    if facts.until.days_since(facts.changed) < STEP_DAYS {
        against.push(Reason::ChangedLately { day: facts.changed });
    }
    let alarm = facts.last_alarm.filter(|(_, day)| facts.until.days_since(*day) < STEP_DAYS);
    against.extend(alarm.map(|(trouble, day)| Reason::AlarmLately { trouble, day }));
    if days.len() < SESSION_DAYS {
        against.push(Reason::FewSessions { days: days.len() as u32 });
    } else if last_two_days(&facts.sessions).is_none() {
        against.push(Reason::NotMet);
    }
    let shares = count(&facts.slots).shares().filter(|shares| shares.is_at_most(50));
    against.extend(shares.map(|shares| Reason::LittleDone { thousandths: shares.thousandths, owed: shares.n }));
    let unsettled: Vec<DayNumber> =
        [&facts.unsettled, &facts.unsettled_unknown].into_iter().flat_map(|days| unsettled_lately(facts, days)).collect();
    if !unsettled.is_empty() {
        against.push(Reason::Unsettled { days: unsettled });
    }
    against.extend(facts.pain_worse.then_some(Reason::PainWorse));
    let flare = facts.flares.last().filter(|flare| facts.until.days_since(flare.to) < SETTLED_DAYS);
    against.extend(flare.map(|flare| Reason::FlareLately { to: flare.to }));
    let from = days.iter().rev().nth(LOW_PAIN_DAYS - 1).or(days.first()).copied().unwrap_or_default();
    let high = facts.during.iter().rev().find(|(day, score)| *day >= from && *score > EASY_PAIN);
    against.extend(high.map(|(_, score)| Reason::PainTooHighToProgress { score: *score }));
    against
}

/// Those of `days` that are less than a week before the end of the period.
fn unsettled_lately(facts: &ItemFacts<'_>, days: &[DayNumber]) -> Vec<DayNumber> {
    days.iter().filter(|day| facts.until.days_since(**day) < SETTLED_DAYS).copied().collect()
}

/// The days with a session, oldest first.
fn session_days(sessions: &[Session]) -> Vec<DayNumber> {
    let mut days: Vec<DayNumber> = sessions.iter().map(|session| session.day).collect();
    days.dedup();
    days
}

/// The last two days with a session, if the last session of each met the target.
fn last_two_days(sessions: &[Session]) -> Option<[DayNumber; 2]> {
    let days = session_days(sessions);
    let last_two = days.len().checked_sub(2).map(|from| [days[from], days[from + 1]])?;
    let met = |day: &DayNumber| sessions.iter().rfind(|session| session.day == *day).is_some_and(|session| session.met);
    last_two.iter().all(met).then_some(last_two)
}
