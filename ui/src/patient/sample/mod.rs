//! Looking around in a sample plan.

mod line;
mod offer;

pub use line::SampleLine;
pub use offer::OfferSample;

use leptos::prelude::*;
use wire::house::{Around, LookAround, Situation};

use super::desk::Desk;
use super::places::Place;

fn around(desk: Desk, begin: bool) {
    desk.house.ask::<LookAround>(Around { begin }, move |situation: Situation| {
        desk.house.situation.set(Some(situation));
        desk.go(Place::Now);
    });
}
