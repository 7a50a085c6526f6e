//! What an exercise says, language by language.

use super::fault::FaultKind;
use super::table::Table;
use exercises::catalogue::{Lang, Quantity, Texts};
use std::collections::BTreeMap;

/// Reads the same thing in every language; one that is not there is a fault.
pub(super) fn by_language<T>(table: &Table, read: impl Fn(&Table) -> Option<T>) -> Option<BTreeMap<Lang, T>> {
    table.only(&Lang::ALL.map(Lang::code));
    let mut texts = BTreeMap::new();
    for lang in Lang::ALL {
        match table.optional(lang.code()) {
            Some(item) => texts.extend(item.table().and_then(|table| read(&table)).map(|text| (lang, text))),
            None => table.fault("", FaultKind::MissingLanguage { lang }),
        }
    }
    (texts.len() == Lang::ALL.len()).then_some(texts)
}

const TEXT_FIELDS: &[&str] =
    &["name", "purpose", "set_up", "steps", "should_feel", "should_not_feel", "mistakes", "cautions", "stop_signs"];

/// What an exercise says, in every language, with lists of equal length.
pub(super) fn texts(table: &Table) -> Option<BTreeMap<Lang, Texts>> {
    let texts = by_language(table, one_language)?;
    let lists = |texts: &Texts| [texts.steps.len(), texts.mistakes.len(), texts.cautions.len(), texts.stop_signs.len()];
    let first = texts.values().next().map(lists)?;
    for (lang, text) in texts.iter().skip(1) {
        let fields = ["steps", "mistakes", "cautions", "stop_signs"].into_iter();
        for ((field, here), first) in fields.zip(lists(text)).zip(first).filter(|((_, here), first)| here != first) {
            if let Some(language) = table.table(lang.code()) {
                language.fault(field, FaultKind::ListsDiffer { here, first });
            }
        }
    }
    Some(texts)
}

fn one_language(table: &Table) -> Option<Texts> {
    table.only(TEXT_FIELDS);
    let paragraph = |field| table.line(field, Quantity::LineCharacters);
    let list = |field| table.lines(field, Quantity::ListLines);
    let name = table.line("name", Quantity::NameCharacters);
    let (purpose, set_up) = (paragraph("purpose"), paragraph("set_up"));
    let steps = table.lines("steps", Quantity::Steps);
    let (should_feel, should_not_feel) = (paragraph("should_feel"), paragraph("should_not_feel"));
    let (mistakes, cautions, stop_signs) = (list("mistakes"), list("cautions"), list("stop_signs"));
    Some(Texts {
        name: name?,
        purpose: purpose?,
        set_up: set_up?,
        steps: steps?,
        should_feel: should_feel?,
        should_not_feel: should_not_feel?,
        mistakes: mistakes?,
        cautions: cautions?,
        stop_signs: stop_signs?,
    })
}
