//! What alarms suspend, and for how long. One rule for a device, which knows its own log, and for the clinic, which unites all of
//! them:
//! - signs of an emergency, and illness until "I am well again", suspend everything; illness with a warning sign waits for a card;
//! - a fall and dizziness suspend what is done standing or trains balance; so does a second near fall within [`NEAR_FALLS_DAYS`]. The
//!   first suspends nothing: its item becomes easier at home ([`eased`]);
//! - too much pain, and anything else, suspend the exercise during which they were said;
//! - a rating above the limit stops its exercise for that day, and two in a row suspend it.
//!
//! What is suspended is a proposal of ours, built from public safety sheets and Finucane 2020 (JOSPT 50:350-72), Rushton 2023
//! (JOSPT 53:7-22); the program does not diagnose. A card that lists an alarm ends what it suspends; a passing illness also ends when
//! the patient says so.

use crate::alarm::{Circumstance, Trouble};
use crate::catalogue::{Catalogue, Posture};
use crate::id::ItemId;
use crate::plan::{Item, Plan};
use std::collections::BTreeSet;

/// Days within which a second near fall counts as a fall without injury.
pub const NEAR_FALLS_DAYS: i64 = 7;

/// Something that was said, as far as it decides what is suspended. Ordered by time.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sign {
    /// The day, as a count of days from any fixed day.
    pub day: i64,
    /// The item it is about, if any.
    pub item: Option<ItemId>,
    /// What was said.
    pub kind: SignKind,
}

/// What was said.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum SignKind {
    /// An alarm that no card has cleared. Its place in the caller's list comes back with what it suspends.
    Alarm {
        /// The place in the caller's list.
        place: usize,
        /// What is wrong.
        trouble: Trouble,
        /// What was answered about it.
        circumstances: BTreeSet<Circumstance>,
    },
    /// A rating of pain while doing the item that was within its limit.
    WithinLimit,
    /// "I am well again".
    WellAgain,
}

/// What an alarm suspends until a card clears it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Suspends {
    /// Every item and every reminder.
    Everything,
    /// Every level that is done standing, and everything that trains balance or steady gaze.
    Standing,
    /// This item's exercise, at every level.
    Exercise(ItemId),
}

/// An alarm that suspends something.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct InForce {
    /// The alarm's place in the caller's list.
    pub place: usize,
    /// What is wrong.
    pub trouble: Trouble,
    /// What it suspends.
    pub suspends: Suspends,
}

/// What the `signs` suspend, in their order. They come ordered by time; alarms that a card has cleared are left out. `today` adds
/// what is stopped for that day only.
pub fn in_force(signs: &[Sign], today: Option<i64>) -> Vec<InForce> {
    let last_well_again = signs.iter().rposition(|sign| sign.kind == SignKind::WellAgain);
    let all = signs.iter().enumerate().filter_map(|(number, sign)| {
        let SignKind::Alarm { place, trouble, circumstances } = &sign.kind else { return None };
        let (before, well_again) = (&signs[..number], last_well_again > Some(number));
        let lasting = suspends(sign, *trouble, circumstances, before, well_again);
        let of_today = || sign.item.filter(|_| *trouble == Trouble::PainAboveLimit && today == Some(sign.day));
        let suspends = lasting.or_else(|| of_today().map(Suspends::Exercise))?;
        Some(InForce { place: *place, trouble: *trouble, suspends })
    });
    all.collect()
}

fn suspends(
    sign: &Sign,
    trouble: Trouble,
    circumstances: &BTreeSet<Circumstance>,
    before: &[Sign],
    well_again: bool,
) -> Option<Suspends> {
    match trouble {
        Trouble::HeartOrBreath | Trouble::HeadOrNeck | Trouble::Nerve | Trouble::BladderOrBowel | Trouble::Limb => {
            Some(Suspends::Everything)
        }
        Trouble::Unwell => {
            let lasting = circumstances.contains(&Circumstance::SweatsOrWeightLoss);
            (lasting || !well_again).then_some(Suspends::Everything)
        }
        Trouble::Fell | Trouble::Dizzy => Some(Suspends::Standing),
        Trouble::NearlyFell => {
            let other = |other: &Sign| other.is_alarm(Trouble::NearlyFell) && sign.day - other.day < NEAR_FALLS_DAYS;
            // The latest first: it is there that one is found, however many there are.
            before.iter().rev().any(other).then_some(Suspends::Standing)
        }
        // Of one pain outside a run it is not known which exercise is meant: nothing is suspended, and the review shows it.
        Trouble::TooMuchPain | Trouble::Other => sign.item.map(Suspends::Exercise),
        Trouble::PainAboveLimit => {
            let item = sign.item?;
            let rated = |other: &&Sign| {
                other.item == Some(item) && (other.kind == SignKind::WithinLimit || other.is_alarm(Trouble::PainAboveLimit))
            };
            let last = before.iter().rev().find(rated)?;
            (last.kind != SignKind::WithinLimit).then_some(Suspends::Exercise(item))
        }
    }
}

/// What an alarm suspends as it is raised; `again` says whether there was another near fall within [`NEAR_FALLS_DAYS`].
pub fn when_raised(trouble: Trouble, item: Option<ItemId>, again: bool) -> Option<Suspends> {
    match trouble {
        Trouble::Fell | Trouble::Dizzy => Some(Suspends::Standing),
        Trouble::NearlyFell => again.then_some(Suspends::Standing),
        Trouble::TooMuchPain | Trouble::Other => item.map(Suspends::Exercise),
        Trouble::PainAboveLimit => None,
        Trouble::HeartOrBreath
        | Trouble::HeadOrNeck
        | Trouble::Nerve
        | Trouble::BladderOrBowel
        | Trouble::Limb
        | Trouble::Unwell => Some(Suspends::Everything),
    }
}

impl Sign {
    fn is_alarm(&self, of: Trouble) -> bool {
        matches!(&self.kind, SignKind::Alarm { trouble, .. } if *trouble == of)
    }
}

impl Suspends {
    /// Whether it reaches `item`.
    pub fn reaches(self, item: &Item, plan: &Plan, catalogue: &Catalogue) -> bool {
        match self {
            Suspends::Everything => true,
            Suspends::Standing => is_done_standing(item, catalogue),
            Suspends::Exercise(during) => {
                during == item.id || plan.item(during).is_some_and(|other| other.exercise == item.exercise)
            }
        }
    }
}

/// Whether the item's level is done standing, trains balance or steady gaze, which may make dizzy sitting as well, or is not known.
fn is_done_standing(item: &Item, catalogue: &Catalogue) -> bool {
    catalogue.get(&item.exercise).is_none_or(|exercise| {
        let rules = exercise.kind.rules();
        rules.is_balance()
            || rules.asks_dizziness()
            || matches!(exercise.posture_at(item.rung.as_ref()), None | Some(Posture::Standing))
    })
}

/// The gravest of those that suspend `item`, and the first of equally grave ones: it decides the advice.
pub fn blocking<'a>(all: &'a [InForce], item: &Item, plan: &Plan, catalogue: &Catalogue) -> Option<&'a InForce> {
    all.iter().filter(|one| one.suspends.reaches(item, plan, catalogue)).min_by_key(|one| one.trouble.rank())
}

/// By how many levels `item` is eased at home: one for each day with a near fall in it. Which near falls no longer count is for the
/// caller to leave out: see [`crate::history::History::eased`].
pub fn eased(signs: &[Sign], item: ItemId) -> usize {
    let near_falls = signs.iter().filter(|sign| sign.is_alarm(Trouble::NearlyFell) && sign.item == Some(item));
    near_falls.map(|sign| sign.day).collect::<BTreeSet<_>>().len()
}

#[cfg(test)]
mod tests;
