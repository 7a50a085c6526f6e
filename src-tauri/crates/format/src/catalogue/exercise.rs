//! An exercise from its table: heads, dose and ladders. Figure and texts are read next door.

use super::figure;
use super::page::{Item, Table, whole};
use super::step_rule;
use super::texts::Source;
use crate::fields::{owned, quoted};
use exercises::catalogue::kind::{DoseField, WorkForm};
use exercises::catalogue::{
    Dose, Exercise, ExerciseId, Figure, IdFault, Kind, Ladder, LadderId, Quantity, Rung, RungId, Sidedness,
};
use exercises::file_fault::{ExerciseFault, FaultKind};
use std::collections::BTreeSet;

const FIELDS: &[&str] = &[
    "id",
    "revision",
    "region",
    "purpose",
    "flags",
    "kind",
    "side",
    "posture",
    "equipment",
    "one_leg",
    "test",
    "count_error_tenths",
    "dose",
    "dose_basis",
    "step",
    "ladder",
    "figure",
    "text",
];

/// The exercise of a file with the texts of `source`, or `None` with faults noted.
pub(super) fn exercise(top: &Table, source: &Source) -> Option<Exercise> {
    top.only(FIELDS);
    let id = top.required("id").and_then(|item| id(&item, ExerciseId::new));
    let revision = top.number("revision", Quantity::Revision).and_then(|n| u16::try_from(n).ok());
    let region = top.word("region");
    let (purposes, flags) = (top.words("purpose"), top.words("flags"));
    let kind = top.required("kind").and_then(|item| kind(&item));
    let side = top.word("side");
    side_fits(top, kind, side);
    let posture = optional(top, "posture", Item::word);
    let equipment = top.words("equipment");
    let truth = |field| top.optional(field).map_or(Some(false), |item| item.truth());
    let always = kind.is_some_and(|kind| kind.rules().is_test());
    let (one_leg, test) = (truth("one_leg"), truth("test").map(|test| test || always));
    let count_error = count_error(top, kind);
    let dose = top.table("dose").zip(kind).and_then(|(table, kind)| dose(&table, kind));
    let dose_basis = optional(top, "dose_basis", Item::word);
    let step_rules = step_rule::rules(top, kind, test);
    let poses = top.table("figure").and_then(|table| figure::figure(&table));
    let around = Around { kind, side, figure: poses.as_ref(), texts: source };
    let ladders = top.required("ladder").and_then(|item| ladders(&item, &around));
    let texts = source.exercise(top);
    source.left_over(ladders.as_deref());
    Some(Exercise {
        id: id?,
        revision: revision?,
        region: region?,
        purposes: purposes?,
        flags: flags?,
        kind: kind?,
        side: side?,
        posture: posture?,
        equipment: equipment?,
        one_leg: one_leg?,
        count_error_tenths: count_error?,
        test: test?,
        step_rules: step_rules?,
        dose: dose?,
        dose_basis: dose_basis?,
        ladders: ladders?,
        poses: poses?,
        texts: texts?,
    })
}

/// The error of a test by repetitions; no other exercise has one.
fn count_error(top: &Table, kind: Option<Kind>) -> Option<Option<u16>> {
    const FIELD: &str = "count_error_tenths";
    let Some(item) = top.optional(FIELD) else { return Some(None) };
    if kind.is_some_and(|kind| kind.form() != WorkForm::Tallied) {
        item.fault(FaultKind::Exercise(ExerciseFault::ErrorOfCount));
        return None;
    }
    item.number(Quantity::CountErrorTenths).and_then(|tenths| u16::try_from(tenths).ok()).map(Some)
}

/// Each kind states its own name.
fn kind(item: &Item) -> Option<Kind> {
    let found = item.text()?;
    let kind = Kind::ALL.iter().copied().find(|kind| kind.rules().name() == found);
    if kind.is_none() {
        let names: Vec<&str> = Kind::ALL.iter().map(|kind| kind.rules().name()).collect();
        item.fault(FaultKind::UnknownWord { found: quoted(found), allowed: owned(&names) });
    }
    kind
}

fn id<T>(item: &Item, new: impl Fn(String) -> Result<T, IdFault>) -> Option<T> {
    match new(item.text()?.to_owned()) {
        Ok(id) => Some(id),
        Err(fault) => {
            item.fault(FaultKind::Id(fault));
            None
        }
    }
}

fn dose(table: &Table, kind: Kind) -> Option<Dose> {
    let fields = kind.rules().fields();
    let mut names: Vec<&'static str> = fields.iter().map(|field| field.group.unwrap_or(field.key)).collect();
    names.dedup();
    table.only(&names);
    let groups = fields.chunk_by(|one, next| one.group.is_some() && one.group == next.group);
    let values: Vec<Option<i64>> = groups.flat_map(|fields| values(table, fields)).collect();
    Dose::from_values(kind, &values.into_iter().collect::<Option<Vec<i64>>>()?)
}

/// The values of fields that stand together: in a table of their own, or one field by itself.
fn values(table: &Table, fields: &[DoseField]) -> Vec<Option<i64>> {
    let own = fields[0].group.map(|group| {
        let own = table.table(group);
        own.inspect(|own| own.only(&fields.iter().map(|field| field.key).collect::<Vec<_>>()))
    });
    let place = own.as_ref().map_or(Some(table), Option::as_ref);
    fields.iter().map(|field| place?.number(field.key, field.quantity)).collect()
}

/// A field that need not be there: the outer `Option` is `None` if it is there and cannot be read.
fn optional<'a, T>(table: &Table<'a>, field: &str, read: impl Fn(&Item<'a>) -> Option<T>) -> Option<Option<T>> {
    table.optional(field).map_or(Some(None), |item| read(&item).map(Some))
}

/// What a rung takes from the exercise around it.
struct Around<'a> {
    kind: Option<Kind>,
    side: Option<Sidedness>,
    figure: Option<&'a Figure>,
    texts: &'a Source<'a>,
}

fn ladders(item: &Item, around: &Around) -> Option<Vec<Ladder>> {
    let tables = item.tables(Quantity::Ladders)?;
    let mut seen = Seen::default();
    whole(tables.iter().map(|table| ladder(table, around, &mut seen)))
}

/// Ids that stood before in the same exercise.
#[derive(Default)]
struct Seen {
    ladders: BTreeSet<LadderId>,
    rungs: BTreeSet<RungId>,
}

fn ladder(table: &Table, around: &Around, seen: &mut Seen) -> Option<Ladder> {
    table.only(&["id", "factor", "rung"]);
    let ladder_id = table.required("id").and_then(|item| id(&item, LadderId::new));
    once(table, &ladder_id, &mut seen.ladders);
    let factor = table.word("factor");
    let tables = table.required("rung").and_then(|item| item.tables(Quantity::Rungs));
    let rungs = tables.and_then(|tables| {
        let rungs = whole(tables.iter().map(|table| rung(table, around, &mut seen.rungs)))?;
        let is_alike = same_sides(&tables, &rungs, around.side?);
        (is_alike || table.is_unfinished()).then_some(rungs)
    });
    Some(Ladder { id: ladder_id?, factor: factor?, rungs: rungs? })
}

/// Notes a fault if an exercise of this kind is never done on these sides.
fn side_fits(table: &Table, kind: Option<Kind>, side: Option<Sidedness>) {
    if kind.zip(side).is_some_and(|(kind, side)| !kind.rules().sides().contains(&side)) {
        table.fault("side", FaultKind::Exercise(ExerciseFault::SidesOfKind));
    }
}

/// Whether all rungs are done on the same sides, so that a step never changes them; notes a fault at the first that is not.
fn same_sides(tables: &[Table], rungs: &[Rung], of_exercise: Sidedness) -> bool {
    let side = |rung: &Rung| rung.side.unwrap_or(of_exercise);
    let other = rungs.iter().position(|rung| side(rung) != side(&rungs[0]));
    if let Some(table) = other.and_then(|place| tables.get(place)) {
        table.fault("side", FaultKind::Exercise(ExerciseFault::SidesOfLadder));
    }
    other.is_none()
}

fn once<T: Ord + Clone + ToString>(table: &Table, id: &Option<T>, seen: &mut BTreeSet<T>) {
    if let Some(id) = id
        && !seen.insert(id.clone())
    {
        table.fault("id", FaultKind::Duplicate { id: id.to_string() });
    }
}

fn rung(table: &Table, around: &Around, seen: &mut BTreeSet<RungId>) -> Option<Rung> {
    table.only(&["id", "surface", "eyes", "feet", "arms", "posture", "side", "dose", "equipment", "text", "figure"]);
    let rung_id = table.required("id").and_then(|item| id(&item, RungId::new));
    once(table, &rung_id, seen);
    let (surface, eyes) = (optional(table, "surface", Item::word), optional(table, "eyes", Item::word));
    let (feet, arms) = (optional(table, "feet", Item::word), optional(table, "arms", Item::word));
    let missing = |field| table.optional(field).is_none();
    if around.kind.is_some_and(Kind::is_balance) && (missing("surface") || missing("eyes")) {
        table.fault("", FaultKind::Exercise(ExerciseFault::BalanceNeeds));
    }
    let (posture, side) = (optional(table, "posture", Item::word), optional(table, "side", Item::word));
    side_fits(table, around.kind, side.flatten());
    let own_dose = optional(table, "dose", |item| dose(&item.table()?, around.kind?));
    let equipment = optional(table, "equipment", |_| table.words("equipment"));
    let texts = around.texts.rung(table, rung_id.as_ref());
    let own = optional(table, "figure", |item| figure::changed(&item.table()?, around.figure));
    Some(Rung {
        id: rung_id?,
        surface: surface?,
        eyes: eyes?,
        feet: feet?,
        arms: arms?,
        posture: posture?,
        side: side?,
        dose: own_dose?,
        equipment: equipment?,
        texts: texts?,
        figure: own?,
    })
}
