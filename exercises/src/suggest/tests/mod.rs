//! Tests of the rules: tables with every rule and its limits, and properties that hold for any facts.

mod laws;
mod table;
mod whole;

use super::{Facts, Reached, Session};
use crate::catalogue::{Catalogue, Dose};
use crate::plan::{Item, Side};
use crate::review::samples;
use crate::score::Score;
use crate::time::DayNumber;

/// A session on `day` that met the target, with this pain; if there was pain, it settled by the next morning.
pub(super) fn met(day: u16, pain: u8) -> Session {
    Session {
        day: DayNumber(day),
        reached: Reached::Met,
        pain: Some(Score::at_most_ten(pain)),
        morning: (pain > 0).then_some(true),
    }
}

pub(super) fn item(dose: Dose) -> Item {
    let side = if matches!(dose, Dose::Balance { .. }) { Side::Both } else { Side::Neither };
    samples::item(dose, side)
}

/// Facts of `item` on day 20 with these sessions and nothing else that prevents a step.
pub(super) fn facts<'a>(catalogue: &'a Catalogue, item: &'a Item, sessions: &[Session]) -> Facts<'a> {
    Facts {
        planned: item,
        item: item.clone(),
        exercise: catalogue.get(&item.exercise),
        age: Some(crate::plan::AgeBand::From40),
        today: DayNumber(20),
        alarm: None,
        any_alarm: None,
        asks_pain: true,
        sessions: sessions.to_vec(),
        last_step: None,
        rise: None,
        gate_open: true,
    }
}
