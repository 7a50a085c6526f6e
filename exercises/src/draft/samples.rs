//! Sample exercises for the tests.

use super::{Draft, first};
use crate::catalogue::{
    Dose, Exercise, ExerciseId, Eyes, Factor, Figure, Ladder, LadderId, Region, Rung, RungId, Sidedness, Surface, View,
};
use crate::id::PlanId;
use crate::plan::{Header, Plan};
use chrono::NaiveDate;
use std::collections::BTreeMap;

pub fn day(month: u32, day: u32) -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, month, day).expect("a date")
}

pub fn empty() -> Draft {
    first(day(11, 25))
}

/// The draft as it would be issued on its day.
pub fn issued(draft: &Draft) -> Plan {
    let header = Header { issued: draft.today, ..Header::first(PlanId([7; 8]), "Bridge Street", day(11, 25)) };
    Plan { header, prescription: draft.prescription.clone() }
}

fn rung(id: &str, surface: Option<Surface>, eyes: Option<Eyes>) -> Rung {
    Rung { surface, eyes, ..Rung::new(RungId::new(id).expect("an id")) }
}

fn exercise(id: &str, dose: Dose, side: Sidedness, rungs: Vec<Rung>) -> Exercise {
    let ladder = Ladder { id: LadderId::new("only").expect("an id"), factor: Factor::Surface, rungs };
    Exercise {
        id: ExerciseId::new(id).expect("an id"),
        revision: 3,
        region: Region::Ankle,
        purposes: Vec::new(),
        flags: Vec::new(),
        kind: dose.kind(),
        side,
        posture: None,
        equipment: Vec::new(),
        one_leg: id == "one-leg",
        count_error_tenths: None,
        test: false,
        step_rules: Vec::new(),
        dose_basis: None,
        dose,
        ladders: vec![ladder],
        poses: Figure {
            view: View::Side,
            furniture: Vec::new(),
            links: Vec::new(),
            plumb: false,
            contacts: Vec::new(),
            poses: Vec::new(),
            arrows: Vec::new(),
            eyes: None,
        },
        texts: BTreeMap::new(),
    }
}

pub fn hold() -> Exercise {
    let dose = Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 10 };
    exercise("sit-tall", dose, Sidedness::None, vec![rung("wall", None, None), rung("chair", None, None)])
}

pub fn balance() -> Exercise {
    let dose = Dose::Balance { trials: 3, target_s: 30, rest_s: 30 };
    let rungs = vec![
        rung("firm-open", Some(Surface::Firm), Some(Eyes::Open)),
        rung("cushion-open", Some(Surface::Cushion), Some(Eyes::Open)),
    ];
    exercise("one-leg", dose, Sidedness::EachSide, rungs)
}
