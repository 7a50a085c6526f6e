//! "Something is wrong": what a person can choose, and what each choice pauses.
//!
//! The scopes are a proposal built from public safety sheets and Finucane 2020 (JOSPT 50:350-72), Rushton 2023
//! (JOSPT 53:7-22); the program does not diagnose. Only a newer signed card that lists the alarm clears it.

use crate::catalogue::Catalogue;
use crate::choice::array;
use crate::id::{EntryRef, ItemId};
use crate::plan::{Item, Plan};
use crate::time::Stamp;
use strum::VariantArray;

/// What is wrong, gravest first. "Nothing, a slip" is not included, because it is not logged.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Trouble {
    /// Chest pain, marked breathlessness, faintness, a cold sweat.
    HeartOrBreath,
    /// Sudden unusual headache or neck pain, double vision, slurred speech, trouble swallowing, a numb face.
    HeadOrNeck,
    /// New or growing weakness or numbness of a limb.
    Nerve,
    /// Numb saddle area, new trouble passing or holding urine or stool, weakness or pain of both legs.
    BladderOrBowel,
    /// A fall.
    Fell,
    /// Nearly a fall.
    NearlyFell,
    /// Pain over the plan's limit.
    TooMuchPain,
    /// Anything else.
    Other,
}

impl Trouble {
    /// All of them, most urgent first. The place in this list is the code in a summary: append only.
    pub const ALL: [Trouble; Trouble::VARIANTS.len()] = array(Trouble::VARIANTS);

    /// What it pauses.
    pub fn scope(self) -> Scope {
        match self {
            Trouble::HeartOrBreath | Trouble::HeadOrNeck | Trouble::Nerve | Trouble::BladderOrBowel => Scope::WholePlan,
            Trouble::Fell | Trouble::NearlyFell => Scope::Balance,
            Trouble::TooMuchPain | Trouble::Other => Scope::Exercise,
        }
    }
}

/// How much an alarm pauses.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Scope {
    /// Every item and every reminder.
    WholePlan,
    /// Every balance item.
    Balance,
    /// The exercise, at every level.
    Exercise,
}

/// An alarm that was raised.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Alarm {
    /// The log entry that raised it.
    pub entry: EntryRef,
    /// When it was raised.
    pub at: Stamp,
    /// What is wrong.
    pub trouble: Trouble,
    /// The item during which it was raised; `None` if it was raised outside a run.
    pub item: Option<ItemId>,
}

/// Whether `alarm` pauses `item`. An alarm about one exercise that was raised outside a run pauses the whole plan, because it is not
/// known which exercise is meant.
pub fn blocks(alarm: &Alarm, item: &Item, plan: &Plan, catalogue: &Catalogue) -> bool {
    !plan.prescription.cleared.contains(&alarm.entry) && reaches(alarm.trouble, alarm.item, item, plan, catalogue)
}

/// Whether `trouble` during the item `during` affects `item`, no matter who raised it and whether it was cleared.
pub fn reaches(trouble: Trouble, during: Option<ItemId>, item: &Item, plan: &Plan, catalogue: &Catalogue) -> bool {
    match (trouble.scope(), during) {
        (Scope::WholePlan, _) | (Scope::Exercise, None) => true,
        (Scope::Balance, _) => catalogue.get(&item.exercise).is_none_or(|exercise| exercise.kind.is_balance()),
        (Scope::Exercise, Some(during)) => {
            during == item.id || plan.item(during).is_some_and(|other| other.exercise == item.exercise)
        }
    }
}

/// The gravest of the `alarms` that pause `item`, and the first of equally grave ones: it decides the advice.
pub fn blocking<'a>(alarms: &'a [Alarm], item: &Item, plan: &Plan, catalogue: &Catalogue) -> Option<&'a Alarm> {
    alarms.iter().filter(|alarm| blocks(alarm, item, plan, catalogue)).min_by_key(|alarm| alarm.trouble)
}

#[cfg(test)]
mod tests;
