//! How less can be asked for.

use super::step::{Step, back};
use crate::adherence::{Shares, SlotOn, count};
use crate::catalogue::{Exercise, Quantity};
use crate::log::Barrier;
use crate::plan::{Days, Item, Pattern};
use crate::time::DAY_MINUTES;

/// Least difference between the shares of the two halves of the day, in thousandths of a slot.
const HALVES_APART: i64 = 500;
/// Noon, in minutes from midnight.
const NOON: u16 = 12 * 60;

/// One way to ask for less.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Reduction {
    /// Only the half of the day in which it gets done.
    Half(HalfOfDay),
    /// Fewer slots a day.
    FewerSlots {
        /// Slots a day now.
        from: u8,
        /// Slots a day then.
        to: u8,
    },
    /// Fewer times a week, on days of the patient's choice.
    FewerTimes {
        /// Times a week now.
        from: u8,
        /// Times a week then.
        to: u8,
    },
    /// A shorter dose.
    ShorterDose(Step),
    /// A shorter dose, or the end of it: the patient feels fine.
    ShortenOrEnd,
}

/// A half of the day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum HalfOfDay {
    /// Before noon.
    BeforeNoon,
    /// From noon on.
    AfterNoon,
}

impl Reduction {
    /// `item` with less asked for; unchanged where the clinician has to choose.
    pub fn apply(&self, item: &Item) -> Item {
        let mut after = item.clone();
        match self {
            Reduction::Half(half) => after.schedule.pattern = half.of(&item.schedule.pattern),
            Reduction::FewerSlots { to, .. } => after.schedule.pattern = fewer(&item.schedule.pattern, usize::from(*to)),
            Reduction::FewerTimes { to, .. } => {
                if let Days::TimesAWeek { n, .. } = &mut after.schedule.days {
                    *n = *to;
                }
            }
            Reduction::ShorterDose(step) => after = step.apply(item),
            Reduction::ShortenOrEnd => {}
        }
        after
    }
}

impl HalfOfDay {
    /// The part of `pattern` that lies in this half of the day; the whole if none does.
    fn of(self, pattern: &Pattern) -> Pattern {
        let within = |minute: &u16| (*minute < NOON) == (self == HalfOfDay::BeforeNoon);
        let kept: Vec<u16> = pattern.minutes().into_iter().filter(within).collect();
        match (pattern, kept.first(), kept.last()) {
            (Pattern::Every { minutes, .. }, Some(first), Some(last)) if last < &DAY_MINUTES => {
                Pattern::Every { minutes: *minutes, from: *first, to: *last }
            }
            (Pattern::At { .. }, Some(_), _) => Pattern::At { times: kept },
            _ => pattern.clone(),
        }
    }
}

/// `pattern` with at most `most` slots, spread over the same time.
fn fewer(pattern: &Pattern, most: usize) -> Pattern {
    match pattern {
        Pattern::Every { minutes, from, to } => {
            let longer =
                (1..=12_u16).map(|times| Pattern::Every { minutes: minutes.saturating_mul(times), from: *from, to: *to });
            longer.into_iter().find(|pattern| pattern.minutes().len() <= most).unwrap_or_else(|| pattern.clone())
        }
        Pattern::At { times } => {
            let kept =
                times.iter().enumerate().filter(|(place, _)| place * most / times.len() != (place + 1) * most / times.len());
            Pattern::At { times: kept.map(|(_, minute)| *minute).collect() }
        }
        Pattern::AsNeeded => Pattern::AsNeeded,
    }
}

/// The reduction for an item of which little was done, by the reason given most often. `slots` are those looked at.
pub(super) fn reduction(
    item: &Item,
    exercise: Option<&Exercise>,
    slots: &[SlotOn],
    given: Option<Barrier>,
) -> Option<Reduction> {
    if matches!(given, Some(Barrier::FeltFine | Barrier::NoHelp)) {
        return Some(Reduction::ShortenOrEnd);
    }
    let slots_a_day = u8::try_from(item.schedule.pattern.minutes().len()).unwrap_or(u8::MAX);
    let fewer = || (slots_a_day > 1).then(|| Reduction::FewerSlots { from: slots_a_day, to: slots_a_day.div_ceil(2) });
    let times = || match item.schedule.days {
        Days::TimesAWeek { n, .. } if n > 1 => Some(Reduction::FewerTimes { from: n, to: n.div_ceil(2) }),
        _ => None,
    };
    let half = better_half(slots).map(Reduction::Half);
    half.or_else(fewer).or_else(times).or_else(|| shorter(item, exercise).map(Reduction::ShorterDose))
}

/// The half of the day in which clearly more gets done.
fn better_half(slots: &[SlotOn]) -> Option<HalfOfDay> {
    let of_half = |before_noon: bool| {
        let half: Vec<SlotOn> = slots.iter().filter(|slot| (slot.minute < NOON) == before_noon).copied().collect();
        count(&half).shares()
    };
    let thousandths = |shares: Shares| i64::from(shares.thousandths) / i64::from(shares.n.max(1));
    let (before, after) = (thousandths(of_half(true)?), thousandths(of_half(false)?));
    if before - after >= HALVES_APART {
        Some(HalfOfDay::BeforeNoon)
    } else if after - before >= HALVES_APART {
        Some(HalfOfDay::AfterNoon)
    } else {
        None
    }
}

/// A step back of the dose, not of the level: an easier level takes as long. A set less, where there are several: a repetition less
/// saves next to nothing.
fn shorter(item: &Item, exercise: Option<&Exercise>) -> Option<Step> {
    let without_rung = Item { rung: None, ..item.clone() };
    let step = back(&without_rung, exercise)?;
    let several_sets = item.dose.value(Quantity::Sets).is_some_and(|sets| sets > 1);
    Some(if several_sets { Step::Change { quantity: Quantity::Sets, by: -1 } } else { step })
}
