//! The table of the entries that the person corrected.

use super::tables::yes;
use super::{OwnData, moment};
use crate::names::name;
use crate::spreadsheet::{some, table};
use exercises::log::Correction;
use exercises::log::{Entry, LogEvent};

pub(super) fn corrections(own_data: &OwnData<'_>) -> Vec<u8> {
    let header = ["plan", "correction", "at", "day", "entry", "kind", "said", "as", "now"];
    table(header, own_data.entries.iter().filter_map(|entry| line(own_data.entries, entry)))
}

fn line(all: &[Entry], entry: &Entry) -> Option<[String; 9]> {
    let LogEvent::Corrected { entry: n, to } = entry.event else { return None };
    let named = all.iter().find(|one| one.n == n && one.plan == entry.plan && one.n < entry.n);
    let (kind, said) = named.map_or_else(Default::default, |named| said(&named.event));
    let how = match to {
        Correction::Stands => "first_said",
        Correction::Never => "mistake",
        _ => "changed",
    };
    let now = match (to, named) {
        (Correction::Never | Correction::Stands, _) | (_, None) => String::new(),
        (_, Some(named)) if to.fits(&named.event) => {
            to.of(&named.event).map(|event| self::said(&event).1).unwrap_or_default()
        }
        _ => String::new(),
    };
    let (at, day) = (moment(entry.at), entry.at.date().to_string());
    Some([entry.plan.to_string(), entry.n.to_string(), at, day, n.to_string(), kind.into(), said, how.into(), now])
}

/// The kind of an event, and its value.
fn said(event: &LogEvent) -> (&'static str, String) {
    match event {
        LogEvent::Morning { score, .. } => ("morning", score.to_string()),
        LogEvent::During { score, .. } => ("during", score.to_string()),
        LogEvent::Pain { score, .. } => ("pain", score.to_string()),
        LogEvent::Settled { settled, .. } => ("settled", yes(*settled)),
        LogEvent::Rated { score, .. } => ("activity", score.to_string()),
        LogEvent::Skipped { reason, .. } => ("skipped", name(reason).to_owned()),
        LogEvent::DaysOff { from, until, why } => ("days_off", format!("{from} {until} {}", name(why))),
        LogEvent::Run(run) => ("run", some(Some(run.id.0))),
        LogEvent::Trouble { trouble, .. } => ("something_wrong", name(trouble).to_owned()),
        _ => ("", String::new()),
    }
}
