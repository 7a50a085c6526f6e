//! An exercise from its table: heads, dose and ladders. Figure and texts are read next door.

use super::figure;
use super::page::{Item, Table, whole};
use super::texts::Source;
use crate::fields::{owned, quoted};
use exercises::catalogue::kind::DoseField;
use exercises::catalogue::{Dose, Exercise, ExerciseId, Figure, IdFault, Kind, Ladder, LadderId, Quantity, Rung, RungId};
use exercises::file_fault::{ExerciseFault, FaultKind};
use std::collections::BTreeSet;

const FIELDS: &[&str] = &["id", "revision", "region", "kind", "side", "one_leg", "dose", "ladder", "figure", "text"];

/// The exercise of a file with the texts of `source`, or `None` with faults noted.
pub(super) fn exercise(top: &Table, source: &Source) -> Option<Exercise> {
    top.only(FIELDS);
    let id = top.required("id").and_then(|item| id(&item, ExerciseId::new));
    let revision = top.number("revision", Quantity::Revision).and_then(|n| u16::try_from(n).ok());
    let region = top.word("region");
    let kind = top.required("kind").and_then(|item| kind(&item));
    let side = top.word("side");
    let one_leg = top.optional("one_leg").map_or(Some(false), |item| item.truth());
    let dose = top.table("dose").zip(kind).and_then(|(table, kind)| dose(&table, kind));
    let poses = top.table("figure").and_then(|table| figure::figure(&table));
    let around = Around { kind, figure: poses.as_ref(), texts: source };
    let ladders = top.required("ladder").and_then(|item| ladders(&item, &around));
    let texts = source.exercise(top);
    source.left_over(ladders.as_deref());
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

/// What a rung takes from the exercise around it.
struct Around<'a> {
    kind: Option<Kind>,
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
    let rungs = table
        .required("rung")
        .and_then(|item| item.tables(Quantity::Rungs))
        .and_then(|tables| whole(tables.iter().map(|table| rung(table, around, &mut seen.rungs))));
    Some(Ladder { id: ladder_id?, factor: factor?, rungs: rungs? })
}

fn once<T: Ord + Clone + ToString>(table: &Table, id: &Option<T>, seen: &mut BTreeSet<T>) {
    if let Some(id) = id
        && !seen.insert(id.clone())
    {
        table.fault("id", FaultKind::Duplicate { id: id.to_string() });
    }
}

fn rung(table: &Table, around: &Around, seen: &mut BTreeSet<RungId>) -> Option<Rung> {
    table.only(&["id", "surface", "eyes", "feet", "arms", "text", "figure"]);
    let rung_id = table.required("id").and_then(|item| id(&item, RungId::new));
    once(table, &rung_id, seen);
    let surface = table.optional("surface").map(|item| item.word());
    let eyes = table.optional("eyes").map(|item| item.word());
    let feet = table.optional("feet").map(|item| item.word());
    let arms = table.optional("arms").map(|item| item.word());
    if around.kind.is_some_and(Kind::is_balance) && (surface.is_none() || eyes.is_none()) {
        table.fault("", FaultKind::Exercise(ExerciseFault::BalanceNeeds));
    }
    let texts = around.texts.rung(table, rung_id.as_ref());
    let own = table.optional("figure").map(|item| item.table().and_then(|table| figure::changed(&table, around.figure)));
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
