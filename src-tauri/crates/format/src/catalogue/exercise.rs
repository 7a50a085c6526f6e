//! An exercise from its table: heads, dose and ladders. Figure and texts are read next door.

use super::fault::FaultKind;
use super::figure;
use super::names::{ARMS, EYES, FACTORS, FEET, KINDS, REGIONS, SIDES, SURFACES};
use super::table::{Item, Table};
use super::texts::{by_language, texts};
use exercises::catalogue::{
    Dose, Exercise, ExerciseId, Figure, IdFault, Kind, Ladder, LadderId, Quantity, Rung, RungId, RungTexts, Tempo,
};
use std::collections::BTreeSet;

const FIELDS: &[&str] = &["id", "revision", "region", "kind", "side", "one_leg", "dose", "ladder", "figure", "text"];

/// The exercise of a file, or `None` with faults noted.
pub(super) fn exercise(top: &Table) -> Option<Exercise> {
    top.only(FIELDS);
    let id = top.required("id").and_then(|item| id(&item, ExerciseId::new));
    let revision = top.number("revision", Quantity::Revision).and_then(|n| u16::try_from(n).ok());
    let region = top.word("region", REGIONS);
    let kind = top.word("kind", KINDS);
    let side = top.word("side", SIDES);
    let one_leg = top.optional("one_leg").map_or(Some(false), |item| item.truth());
    let dose = top.table("dose").zip(kind).and_then(|(table, kind)| dose(&table, kind));
    let poses = top.table("figure").and_then(|table| figure::figure(&table));
    let ladders = top.required("ladder").and_then(|item| ladders(&item, kind, poses.as_ref()));
    let texts = top.table("text").and_then(|table| texts(&table));
    Some(Exercise {
        id: id?,
        revision: revision?,
        region: region?,
        kind: kind?,
        side: side?,
        one_leg: one_leg?,
        dose: dose?,
        ladders: ladders?,
        poses: poses?,
        texts: texts?,
    })
}

fn id<T>(item: &Item, new: impl Fn(String) -> Result<T, IdFault>) -> Option<T> {
    match new(item.text()?.to_owned()) {
        Ok(id) => Some(id),
        Err(fault) => {
            item.fault(FaultKind::BadId(fault));
            None
        }
    }
}

const HOLD_FIELDS: &[&str] = &["repetitions", "hold_s", "rest_s"];
const BALANCE_FIELDS: &[&str] = &["trials", "target_s", "rest_s"];
const REPS_FIELDS: &[&str] = &["sets", "repetitions", "rest_s", "tempo"];

fn dose(table: &Table, kind: Kind) -> Option<Dose> {
    let small = |field, quantity| table.number(field, quantity).and_then(|n| u8::try_from(n).ok());
    let seconds = |field, quantity| table.number(field, quantity).and_then(|n| u16::try_from(n).ok());
    let rest_s = seconds("rest_s", Quantity::RestSeconds);
    match kind {
        Kind::Hold => {
            table.only(HOLD_FIELDS);
            let (repetitions, hold_s) =
                (small("repetitions", Quantity::Repetitions), seconds("hold_s", Quantity::HoldSeconds));
            Some(Dose::Hold { repetitions: repetitions?, hold_s: hold_s?, rest_s: rest_s? })
        }
        Kind::Balance => {
            table.only(BALANCE_FIELDS);
            let (trials, target_s) = (small("trials", Quantity::Trials), seconds("target_s", Quantity::TargetSeconds));
            Some(Dose::Balance { trials: trials?, target_s: target_s?, rest_s: rest_s? })
        }
        Kind::Reps => {
            table.only(REPS_FIELDS);
            let (sets, repetitions) = (small("sets", Quantity::Sets), small("repetitions", Quantity::Repetitions));
            let tempo = table.table("tempo").and_then(|table| tempo(&table));
            Some(Dose::Reps { sets: sets?, repetitions: repetitions?, rest_s: rest_s?, tempo: tempo? })
        }
    }
}

fn tempo(table: &Table) -> Option<Tempo> {
    table.only(&["up_s", "hold_s", "down_s"]);
    let part = |field, quantity| table.number(field, quantity).and_then(|n| u8::try_from(n).ok());
    let up_s = part("up_s", Quantity::TempoUpSeconds);
    let hold_s = part("hold_s", Quantity::TempoHoldSeconds);
    let down_s = part("down_s", Quantity::TempoDownSeconds);
    Some(Tempo { up_s: up_s?, hold_s: hold_s?, down_s: down_s? })
}

fn ladders(item: &Item, kind: Option<Kind>, base: Option<&Figure>) -> Option<Vec<Ladder>> {
    let tables = item.tables(Quantity::Ladders)?;
    let mut seen = Seen::default();
    let ladders: Vec<_> = tables.iter().map(|table| ladder(table, kind, base, &mut seen)).collect();
    ladders.into_iter().collect()
}

/// Ids that stood before in the same exercise.
#[derive(Default)]
struct Seen {
    ladders: BTreeSet<LadderId>,
    rungs: BTreeSet<RungId>,
}

fn ladder(table: &Table, kind: Option<Kind>, base: Option<&Figure>, seen: &mut Seen) -> Option<Ladder> {
    table.only(&["id", "factor", "rung"]);
    let ladder_id = table.required("id").and_then(|item| id(&item, LadderId::new));
    once(table, &ladder_id, &mut seen.ladders);
    let factor = table.word("factor", FACTORS);
    let rungs = table.required("rung").and_then(|item| item.tables(Quantity::Rungs)).and_then(|tables| {
        let rungs: Vec<_> = tables.iter().map(|table| rung(table, kind, base, &mut seen.rungs)).collect();
        rungs.into_iter().collect()
    });
    Some(Ladder { id: ladder_id?, factor: factor?, rungs: rungs? })
}

fn once<T: Ord + Clone + ToString>(table: &Table, id: &Option<T>, seen: &mut BTreeSet<T>) {
    if let Some(id) = id
        && !seen.insert(id.clone())
    {
        table.fault("id", FaultKind::Duplicate { id: id.to_string() });
    }
}

fn rung(table: &Table, kind: Option<Kind>, base: Option<&Figure>, seen: &mut BTreeSet<RungId>) -> Option<Rung> {
    table.only(&["id", "surface", "eyes", "feet", "arms", "text", "figure"]);
    let rung_id = table.required("id").and_then(|item| id(&item, RungId::new));
    once(table, &rung_id, seen);
    let surface = table.optional("surface").map(|item| item.word(SURFACES));
    let eyes = table.optional("eyes").map(|item| item.word(EYES));
    let feet = table.optional("feet").map(|item| item.word(FEET));
    let arms = table.optional("arms").map(|item| item.word(ARMS));
    if kind == Some(Kind::Balance) && (surface.is_none() || eyes.is_none()) {
        table.fault("", FaultKind::BalanceNeeds);
    }
    let texts = table.table("text").and_then(|table| by_language(&table, rung_texts));
    let own = table.optional("figure").map(|item| item.table().and_then(|table| figure::changed(&table, base)));
    // The outer `Option` says whether the field is there, the inner one whether it could be read.
    Some(Rung {
        id: rung_id?,
        surface: surface.map_or(Some(None), |read| read.map(Some))?,
        eyes: eyes.map_or(Some(None), |read| read.map(Some))?,
        feet: feet.map_or(Some(None), |read| read.map(Some))?,
        arms: arms.map_or(Some(None), |read| read.map(Some))?,
        texts: texts?,
        figure: own.map_or(Some(None), |read| read.map(Some))?,
    })
}

fn rung_texts(table: &Table) -> Option<RungTexts> {
    table.only(&["name", "change"]);
    let name = table.line("name", Quantity::NameCharacters);
    let change = table.line("change", Quantity::LineCharacters);
    Some(RungTexts { name: name?, change: change? })
}
