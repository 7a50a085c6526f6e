//! Plans to be printed.

use chrono::{Days, NaiveDate};
use exercises::catalogue::{Catalogue, Exercise, Sidedness};
use exercises::id::{ItemId, PlanId};
use exercises::plan::{Days as PlanDays, Header, Item, Pattern, Plan, Prescription, Schedule, Side};

/// The shipped exercises.
pub fn catalogue() -> Catalogue {
    format::catalogue::embedded().expect("the shipped exercises")
}

fn today() -> NaiveDate {
    NaiveDate::from_ymd_opt(2027, 3, 1).expect("a date")
}

fn header() -> Header {
    Header::first(PlanId([1; 8]), "Practice by the Mill", today()).with_phone(Some("+00 123 456 78".to_owned()))
}

/// The demo's plans, the one with most exercises first.
pub fn plans() -> Vec<Plan> {
    let texts = [
        include_str!("../../../../../demo/plans/back.toml"),
        include_str!("../../../../../demo/plans/ankle.toml"),
        include_str!("../../../../../demo/plans/desk.toml"),
    ];
    let review = today() + Days::new(42);
    let plan = |text: &str| {
        let prescription = format::plan_file::read(&text.replace("REVIEW", &review.to_string()), today()).expect("a plan");
        Plan { header: header(), prescription }
    };
    texts.map(plan).to_vec()
}

/// An item as the catalogue has it, twice a day.
pub fn of_item(exercise: &Exercise) -> Item {
    let schedule = Schedule { days: PlanDays::ALL, pattern: Pattern::At { times: vec![480, 1_200] } };
    let rung = exercise.first_rung().map(|rung| rung.id.clone());
    let level = exercise.level(rung.as_ref());
    let side = match level.side() {
        Sidedness::None => Side::Neither,
        Sidedness::EachSide => Side::Left,
        Sidedness::Alternating => Side::Alternating,
    };
    let (id, dose) = (exercise.id.clone(), level.dose());
    Item { side, rung, ..Item::new(ItemId(1), id, dose, schedule) }
}

/// A plan of these items, numbered from 1.
pub fn plan_of(items: Vec<Item>) -> Plan {
    let items = items.into_iter().zip(1..).map(|(item, n)| Item { id: ItemId(n), ..item }).collect();
    let prescription = Prescription { items, ..plans().swap_remove(0).prescription };
    Plan { header: header(), prescription }
}
