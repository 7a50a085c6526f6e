//! The table of what the person put right.

use super::tables::{some, table, yes};
use super::{Mine, moment};
use crate::names::name;
use exercises::correct::Correction;
use exercises::log::{Entry, What};

pub(super) fn corrections(mine: &Mine<'_>) -> Vec<u8> {
    let header = ["plan", "correction", "at", "day", "entry", "kind", "said", "as", "now"];
    table(header, mine.entries.iter().filter_map(|entry| line(mine.entries, entry)))
}

fn line(all: &[Entry], entry: &Entry) -> Option<[String; 9]> {
    let What::Corrected { entry: n, to } = entry.what else { return None };
    let named = all.iter().find(|one| one.n == n && one.plan == entry.plan && one.n < entry.n);
    let (kind, said) = named.map_or_else(Default::default, |named| said(&named.what));
    let how = match to {
        Correction::Stands => "first_said",
        Correction::Never => "mistake",
        _ => "changed",
    };
    let now = match (to, named) {
        (Correction::Never | Correction::Stands, _) | (_, None) => String::new(),
        (_, Some(named)) if to.fits(&named.what) => to.of(&named.what).map(|what| self::said(&what).1).unwrap_or_default(),
        _ => String::new(),
    };
    let (at, day) = (moment(entry.at), entry.at.date().to_string());
    Some([entry.plan.to_string(), entry.n.to_string(), at, day, n.to_string(), kind.into(), said, how.into(), now])
}

/// The kind of what was said, and its value.
fn said(what: &What) -> (&'static str, String) {
    match what {
        What::Pain { score, .. } => ("pain", score.to_string()),
        What::Settled { settled, .. } => ("settled", yes(*settled)),
        What::Rated { score, .. } => ("activity", score.to_string()),
        What::LeftOut { reason, .. } => ("left_out", name(reason).to_owned()),
        What::Excused { from, until, why } => ("excused", format!("{from} {until} {}", name(why))),
        What::Run(run) => ("run", some(Some(run.id.0))),
        What::Trouble { trouble, .. } => ("something_wrong", name(trouble).to_owned()),
        _ => ("", String::new()),
    }
}
