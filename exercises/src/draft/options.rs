//! What can be done with an item in the next plan, to press.

use super::{Draft, apply};
use crate::catalogue::Exercise;
use crate::id::ItemId;
use crate::plan::{AgeBand, Days, Item};
use crate::suggest::{Proposal, Reduction, StepConditions, Suggestion, back, next};

/// One of the options for an item.
#[derive(Debug, Clone, PartialEq)]
pub enum ItemOption {
    /// What a suggestion makes of it.
    Suggested(Box<Suggestion>, Box<Item>),
    /// It is not in the next plan.
    LeftOut(ItemId),
}

impl ItemOption {
    /// The option that follows `suggestion`, for `item` as it is carried over from the last plan.
    pub fn of(suggestion: Suggestion, item: &Item) -> ItemOption {
        let mut after = item.clone();
        apply(&mut after, &Suggestion { proposal: Proposal::Keep, ..suggestion.clone() });
        apply(&mut after, &suggestion);
        ItemOption::Suggested(Box::new(suggestion), Box::new(after))
    }

    /// The suggestion that it follows; `None` if the item is left out.
    pub fn suggestion(&self) -> Option<&Suggestion> {
        match self {
            ItemOption::Suggested(suggestion, _) => Some(suggestion),
            ItemOption::LeftOut(_) => None,
        }
    }

    fn item(&self) -> ItemId {
        match self {
            ItemOption::Suggested(_, item) => item.id,
            ItemOption::LeftOut(id) => *id,
        }
    }
}

/// The options for `item` as it is carried over from the last plan, from the easiest to the hardest: a step back, less often, as it is
/// in use, a step forward; and what else `suggestion` proposes, first. Each leads to another item. Gates do not restrict them: the
/// clinician sees the step, and issuing asks for what the gate requires.
pub fn options(item: &Item, suggestion: &Suggestion, exercise: Option<&Exercise>, age: Option<AgeBand>) -> Vec<ItemOption> {
    let to = |proposal| Suggestion { proposal, ..suggestion.clone() };
    let keep = to(Proposal::Keep);
    let mut in_use = item.clone();
    apply(&mut in_use, &keep);
    let ground = StepConditions { exercise, age, gate_open: true };
    let own = matches!(suggestion.proposal, Proposal::Reduce(_)).then(|| suggestion.clone());
    let back = back(&in_use, exercise).map(|step| to(Proposal::Ease(step)));
    let less = fewer(item).map(|reduction| to(Proposal::Reduce(reduction)));
    let forward = next(&in_use, ground).ok().map(|step| to(Proposal::Progress(step)));
    let mut all: Vec<ItemOption> = Vec::new();
    for suggested in [own, back, less, Some(keep), forward].into_iter().flatten() {
        let option = ItemOption::of(suggested, item);
        let same = |other: &ItemOption| matches!((other, &option), (ItemOption::Suggested(_, one), ItemOption::Suggested(_, two)) if one == two);
        if !all.iter().any(same) {
            all.push(option);
        }
    }
    all
}

/// Half as often: on a day, or else in a week of the patient's choice.
fn fewer(item: &Item) -> Option<Reduction> {
    let a_day = u8::try_from(item.schedule.pattern.minutes().len()).unwrap_or(u8::MAX);
    match item.schedule.days {
        _ if a_day > 1 => Some(Reduction::FewerSlots { from: a_day, to: a_day.div_ceil(2) }),
        Days::TimesAWeek { n, .. } if n > 1 => Some(Reduction::FewerTimes { from: n, to: n.div_ceil(2) }),
        _ => None,
    }
}

impl Draft {
    /// Puts an item into the state of an option. What an option does not change stays as it is in the draft. An item that was left out
    /// comes back to its place in `carried`, the items of the last plan in its order.
    pub fn choose(&mut self, option: &ItemOption, carried: &[Item]) {
        match option {
            ItemOption::LeftOut(id) => self.remove(*id),
            ItemOption::Suggested(_, chosen) if self.prescription.item(chosen.id).is_some() => {
                self.edit(chosen.id, |item| {
                    item.rung.clone_from(&chosen.rung);
                    item.dose = chosen.dose;
                    item.load = chosen.load;
                    item.schedule = chosen.schedule.clone();
                });
            }
            ItemOption::Suggested(_, chosen) => {
                let place_of = |id: ItemId| carried.iter().position(|item| item.id == id);
                let later = |item: &Item| place_of(item.id).is_none_or(|place| Some(place) > place_of(chosen.id));
                let items = &mut self.prescription.items;
                let place = items.iter().position(later).unwrap_or(items.len());
                items.insert(place, (**chosen).clone());
            }
        }
    }

    /// Whether something else is planned for the item than the suggestion proposes; `carried` are the items of the last plan. From what
    /// leaves it open what is to be done nothing departs, nor does what is planned for an item that the last plan did not have.
    pub fn departs_from(&self, suggestion: &Suggestion, carried: &[Item]) -> bool {
        let item = carried.iter().find(|item| item.id == suggestion.item);
        match suggestion.proposal {
            Proposal::Talk | Proposal::Reduce(Reduction::ShortenOrEnd) => false,
            Proposal::Ease(_) | Proposal::Reduce(_) | Proposal::Progress(_) | Proposal::Keep => {
                item.is_some_and(|item| !self.has_chosen(&ItemOption::of(suggestion.clone(), item)))
            }
        }
    }

    /// Whether the item is in the state of this option.
    pub fn has_chosen(&self, option: &ItemOption) -> bool {
        match (option, self.prescription.item(option.item())) {
            (ItemOption::LeftOut(_), item) => item.is_none(),
            (ItemOption::Suggested(_, chosen), Some(item)) => {
                (&item.rung, item.dose, item.load, &item.schedule)
                    == (&chosen.rung, chosen.dose, chosen.load, &chosen.schedule)
            }
            (ItemOption::Suggested(..), None) => false,
        }
    }
}
