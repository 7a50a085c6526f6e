//! What an exercise says, language by language: in tables of its TOML file, or in a language file beside it for each.

use super::language::Language;
use super::page::Table;
use exercises::catalogue::{Ladder, Lang, Quantity, RungId, RungTexts, Texts};
use exercises::file_fault::{ExerciseFault, FaultKind};
use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};

/// Where the texts of an exercise are.
pub(super) enum Source<'a> {
    /// In the tables `text` of the TOML file, in these languages.
    Inside(Vec<Lang>),
    /// In files beside it, one a language.
    Beside(Vec<Language<'a>>),
    /// In neither.
    Missing,
}

/// Of each list its field in a TOML file, and what its messages begin with in a language file.
const LISTS: [(&str, &str); 4] =
    [("steps", "step"), ("mistakes", "mistake"), ("cautions", "careful"), ("stop_signs", "stop")];

/// The fields of a rung that need not be there.
const SET_UP: &str = "set_up";
const STEPS: &str = "steps";

impl<'a> Source<'a> {
    /// Where the texts of the exercise in `top` are. A language without texts, and one with two files, is a fault.
    pub fn of(top: &Table, beside: Vec<Language<'a>>) -> Self {
        if beside.is_empty() && top.optional("text").is_some() {
            return Source::Inside(Lang::ALL.to_vec());
        }
        let mut there = BTreeSet::new();
        for file in &beside {
            if !there.insert(file.lang) {
                file.fault("", FaultKind::Duplicate { id: file.lang.code().to_owned() });
            }
        }
        for lang in Lang::ALL.into_iter().filter(|lang| !there.contains(lang)) {
            top.fault("text", FaultKind::Exercise(ExerciseFault::MissingLanguage { lang }));
        }
        if beside.is_empty() { Source::Missing } else { Source::Beside(beside) }
    }

    /// The texts of an own exercise, which are in its TOML file, in as many languages as its author speaks.
    pub fn own(top: &Table) -> Self {
        let Some(table) = top.table("text") else { return Source::Missing };
        let written: Vec<Lang> = Lang::ALL.into_iter().filter(|lang| table.optional(lang.code()).is_some()).collect();
        // Without any of them, each is said to be missing.
        Source::Inside(if written.is_empty() { Lang::ALL.to_vec() } else { written })
    }

    /// What the exercise says, in every language, with lists of equal length.
    pub fn exercise(&self, top: &Table) -> Option<BTreeMap<Lang, Texts>> {
        match self {
            Source::Inside(langs) => {
                let table = top.table("text")?;
                let texts = by_table(&table, &Lang::ALL, langs, of_table)?;
                unequal_lists(&texts, |lang, (field, _), kind| {
                    if let Some(language) = table.table(lang.code()) {
                        language.fault(field, kind);
                    }
                });
                Some(texts)
            }
            Source::Beside(files) => {
                not_inside(top);
                let texts = by_file(files, of_file)?;
                unequal_lists(&texts, |lang, (_, stem), kind| {
                    if let Some(file) = files.iter().find(|file| file.lang == lang) {
                        file.fault_of_list(stem, kind);
                    }
                });
                Some(texts)
            }
            Source::Missing => None,
        }
    }

    /// What a rung says, in every language; `id` is `None` if it could not be read.
    pub fn rung(&self, table: &Table, id: Option<&RungId>) -> Option<BTreeMap<Lang, RungTexts>> {
        match self {
            Source::Inside(langs) => {
                let table = table.table("text")?;
                let texts = by_table(&table, langs, langs, rung_of_table)?;
                unlike_texts(&texts, |lang, field, kind| {
                    let Some(language) = table.table(lang.code()) else { return };
                    match kind {
                        Some(kind) => language.fault(field, kind),
                        None => language.fault("", FaultKind::MissingField { field: field.to_owned() }),
                    }
                });
                Some(texts)
            }
            Source::Beside(files) => {
                not_inside(table);
                let id = id?;
                let texts = by_file(files, |file| rung_of_file(file, id))?;
                unlike_texts(&texts, |lang, field, kind| {
                    let Some(file) = files.iter().find(|file| file.lang == lang) else { return };
                    let stem = if field == STEPS { level_steps(id) } else { level_set_up(id) };
                    match kind {
                        Some(kind) => file.fault_of_list(&stem, kind),
                        None => {
                            let message = if field == STEPS { format!("{stem}-1") } else { stem };
                            file.fault(&message, FaultKind::Exercise(ExerciseFault::MissingMessage));
                        }
                    }
                });
                Some(texts)
            }
            Source::Missing => None,
        }
    }

    /// Notes a fault for every message that nobody asked for; call it last. `ladders` is `None` if they could not be read.
    pub fn left_over(&self, ladders: Option<&[Ladder]>) {
        let Source::Beside(files) = self else { return };
        let rungs = ladders.map(|ladders| {
            ladders.iter().flat_map(|ladder| &ladder.rungs).map(|rung| rung.id.to_string()).collect::<Vec<_>>()
        });
        files.iter().for_each(|file| file.left_over(rungs.as_deref()));
    }

    /// The language files, to take their faults.
    pub fn into_files(self) -> Vec<Language<'a>> {
        match self {
            Source::Beside(files) => files,
            Source::Inside(_) | Source::Missing => Vec::new(),
        }
    }
}

/// Texts in a TOML file that has language files beside it: nobody could say which of the two hold.
fn not_inside(table: &Table) {
    if table.optional("text").is_some() {
        table.fault("text", FaultKind::Exercise(ExerciseFault::TextsTwice));
    }
}

/// Reads the same thing in the table of each of these languages; one that is not there is a fault, as is one that is not allowed.
fn by_table<T>(
    table: &Table,
    allowed: &[Lang],
    langs: &[Lang],
    read: impl Fn(&Table) -> Option<T>,
) -> Option<BTreeMap<Lang, T>> {
    table.only(&allowed.iter().map(|lang| lang.code()).collect::<Vec<_>>());
    let mut texts = BTreeMap::new();
    for lang in langs.iter().copied() {
        match table.optional(lang.code()) {
            Some(item) => texts.extend(item.table().and_then(|table| read(&table)).map(|text| (lang, text))),
            None => table.fault("", FaultKind::Exercise(ExerciseFault::MissingLanguage { lang })),
        }
    }
    (texts.len() == langs.len()).then_some(texts)
}

/// Reads the same thing in every language's file.
fn by_file<T>(files: &[Language], read: impl Fn(&Language) -> Option<T>) -> Option<BTreeMap<Lang, T>> {
    let texts: Vec<_> = files.iter().map(|file| read(file).map(|text| (file.lang, text))).collect();
    let texts: BTreeMap<Lang, T> = texts.into_iter().flatten().collect();
    (texts.len() == Lang::ALL.len()).then_some(texts)
}

/// Calls `fault` for every list that has another length than in the first language.
fn unequal_lists(texts: &BTreeMap<Lang, Texts>, fault: impl Fn(Lang, (&str, &str), FaultKind)) {
    let lengths =
        |texts: &Texts| [&texts.steps, &texts.mistakes, &texts.cautions, &texts.stop_signs].map(|list| list.len() as u32);
    let Some(first) = texts.values().next().map(lengths) else { return };
    for (lang, text) in texts.iter().skip(1) {
        for ((list, here), first) in LISTS.into_iter().zip(lengths(text)).zip(first) {
            if here != first {
                fault(*lang, list, FaultKind::Exercise(ExerciseFault::ListsDiffer { here, first }));
            }
        }
    }
}

/// Calls `fault` for a set-up and for steps that a rung has in one language and not in another, and for steps that are more or
/// fewer than in the first language.
fn unlike_texts(texts: &BTreeMap<Lang, RungTexts>, fault: impl Fn(Lang, &'static str, Option<FaultKind>)) {
    let set_up = texts.values().any(|text| text.set_up.is_some());
    let first = texts.values().find_map(|text| text.steps.as_ref()).map(Vec::len);
    for (lang, text) in texts {
        if set_up && text.set_up.is_none() {
            fault(*lang, SET_UP, None);
        }
        match (first, text.steps.as_ref().map(Vec::len)) {
            (Some(_), None) => fault(*lang, STEPS, None),
            (Some(first), Some(here)) if here != first => {
                let (here, first) = (here as u32, first as u32);
                fault(*lang, STEPS, Some(FaultKind::Exercise(ExerciseFault::ListsDiffer { here, first })));
            }
            _ => {}
        }
    }
}

fn of_table(table: &Table) -> Option<Texts> {
    let asked = RefCell::new(Vec::new());
    let ask = |field| asked.borrow_mut().push(field);
    let line = |field, quantity| {
        ask(field);
        table.line(field, quantity)
    };
    let lines = |field, quantity| {
        ask(field);
        table.lines(field, quantity)
    };
    let texts = texts(line, lines);
    table.only(&asked.borrow());
    texts
}

/// A message is called as the field of a table, with hyphens; those of a list begin with the list's stem.
fn of_file(file: &Language) -> Option<Texts> {
    let stem = |list: &str| LISTS.iter().find(|(field, _)| *field == list).map_or("", |(_, stem)| stem);
    texts(|field, quantity| file.line(&field.replace('_', "-"), quantity), |list, quantity| file.lines(stem(list), quantity))
}

/// The texts of an exercise by the names of their fields, each of which is read before one that is missing ends it.
fn texts(
    line: impl Fn(&'static str, Quantity) -> Option<String>,
    lines: impl Fn(&'static str, Quantity) -> Option<Vec<String>>,
) -> Option<Texts> {
    let paragraph = |field| line(field, Quantity::LineCharacters);
    let list = |field| lines(field, Quantity::ListLines);
    let name = line("name", Quantity::NameCharacters);
    let (purpose, set_up) = (paragraph("purpose"), paragraph("set_up"));
    let steps = lines("steps", Quantity::Steps);
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

fn rung_of_table(table: &Table) -> Option<RungTexts> {
    table.only(&["name", "change", SET_UP, STEPS]);
    let name = table.line("name", Quantity::NameCharacters);
    let change = table.line("change", Quantity::LineCharacters);
    let set_up = table.optional(SET_UP).map_or(Some(None), |item| item.line(Quantity::LineCharacters).map(Some));
    let steps = table.optional(STEPS).map_or(Some(None), |_| table.lines(STEPS, Quantity::Steps).map(Some));
    Some(RungTexts { name: name?, change: change?, set_up: set_up?, steps: steps? })
}

fn rung_of_file(file: &Language, id: &RungId) -> Option<RungTexts> {
    let name = file.line(&format!("level-{id}-name"), Quantity::NameCharacters);
    let change = file.line(&format!("level-{id}-change"), Quantity::LineCharacters);
    let own = level_set_up(id);
    let set_up = if file.has(&own) { file.line(&own, Quantity::LineCharacters).map(Some) } else { Some(None) };
    let own = level_steps(id);
    let steps = if file.has_list(&own) { file.lines(&own, Quantity::Steps).map(Some) } else { Some(None) };
    Some(RungTexts { name: name?, change: change?, set_up: set_up?, steps: steps? })
}

/// The message with a rung's own set-up.
fn level_set_up(id: &RungId) -> String {
    format!("level-{id}-set-up")
}

/// What the messages with a rung's own steps begin with.
fn level_steps(id: &RungId) -> String {
    format!("level-{id}-step")
}
