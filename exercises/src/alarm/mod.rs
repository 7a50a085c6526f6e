//! "Something is wrong": what a patient can say, and the alarm that the program raises itself after a rating above an item's limit. What
//! an alarm suspends, and until when, is in [`crate::suspension`]; a card clears it by its id ([`ClearedAlarm`]).

mod clearing;

use crate::choice::array;
use crate::id::{AlarmId, EntryRef, ItemId};
use crate::time::Stamp;
use std::collections::BTreeSet;
use strum::VariantArray;

pub use clearing::ClearedAlarm;

/// What is wrong. "Nothing, a slip" is not included, because it is not logged. The place in this list is the code in files: append
/// only.
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
    /// Too much pain, or a new pain.
    TooMuchPain,
    /// Anything else.
    Other,
    /// A swollen, hot or painful calf, a sudden snap, a hand or foot that is pale, blue or cold, a hot swollen joint.
    Limb,
    /// Light-headed, or everything spins.
    Dizzy,
    /// Fever, or feeling ill.
    Unwell,
    /// A rating of pain while doing an item that is above the item's limit. The program raises it; it is not offered.
    PainAboveLimit,
}

impl Trouble {
    /// All of them, by code.
    pub const ALL: [Trouble; Trouble::VARIANTS.len()] = array(Trouble::VARIANTS);

    /// What a patient is offered, gravest first.
    pub const OFFERED: [Trouble; 11] = [
        Trouble::HeartOrBreath,
        Trouble::HeadOrNeck,
        Trouble::BladderOrBowel,
        Trouble::Limb,
        Trouble::Nerve,
        Trouble::Fell,
        Trouble::NearlyFell,
        Trouble::Dizzy,
        Trouble::TooMuchPain,
        Trouble::Unwell,
        Trouble::Other,
    ];

    /// The rank by gravity, from 0 for the gravest.
    pub fn rank(self) -> usize {
        Trouble::OFFERED.iter().position(|other| *other == self).unwrap_or(Trouble::OFFERED.len())
    }

    /// Whether help may be needed at once. The page for it shows nothing that competes with calling for help.
    pub fn is_urgent(self) -> bool {
        matches!(
            self,
            Trouble::HeartOrBreath | Trouble::HeadOrNeck | Trouble::Nerve | Trouble::BladderOrBowel | Trouble::Limb
        )
    }
}

/// What a patient answered about an alarm.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, VariantArray)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Circumstance {
    /// Of a fall: a blow to the head.
    BlowToTheHead,
    /// Of a fall: takes a medicine that thins the blood.
    ThinsTheBlood,
    /// Of a fall: could not get up again alone.
    CouldNotGetUp,
    /// Of feeling ill: sweats at night, or lost weight without a reason.
    SweatsOrWeightLoss,
}

impl Circumstance {
    /// All of them.
    pub const ALL: [Circumstance; Circumstance::VARIANTS.len()] = array(Circumstance::VARIANTS);

    /// Those that are asked about after `trouble`.
    pub fn asked_after(trouble: Trouble) -> &'static [Circumstance] {
        match trouble {
            Trouble::Fell => &[Circumstance::BlowToTheHead, Circumstance::ThinsTheBlood, Circumstance::CouldNotGetUp],
            Trouble::Unwell => &[Circumstance::SweatsOrWeightLoss],
            _ => &[],
        }
    }
}

/// An alarm that was raised.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Alarm {
    /// Its name.
    pub id: AlarmId,
    /// The log entry that raised it.
    pub entry: EntryRef,
    /// When it was raised.
    pub at: Stamp,
    /// What is wrong.
    pub trouble: Trouble,
    /// The item during which it was raised, or that is meant; `None` if it was raised outside a run.
    pub item: Option<ItemId>,
    /// What was answered about it.
    pub circumstances: BTreeSet<Circumstance>,
}
