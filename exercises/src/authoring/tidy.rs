//! An exercise as it is saved: without empty lines, spaces at the ends, and languages in which nothing is written.

use super::{LevelPart, TextPart, has_one_level};
use crate::catalogue::{Exercise, Lang, RungTexts, Texts};
use std::collections::BTreeMap;

/// Whether anything is written in a language.
pub fn is_written(exercise: &Exercise, lang: Lang) -> bool {
    let has = |texts: &Texts| TextPart::ALL.iter().flat_map(|part| part.lines(texts)).any(|line| !line.trim().is_empty());
    exercise.texts.get(&lang).is_some_and(has)
}

/// Begins the texts in another language.
pub fn add_language(exercise: &mut Exercise, lang: Lang) {
    exercise.texts.entry(lang).or_default();
    let rungs = exercise.ladders.iter_mut().flat_map(|ladder| &mut ladder.rungs);
    rungs.for_each(|rung| {
        rung.texts.entry(lang).or_default();
    });
}

/// The exercise as it is saved. If the exercise has a single level, which no screen shows, the level gets its name.
pub fn tidied(exercise: &Exercise) -> Exercise {
    let mut tidy = exercise.clone();
    let written: Vec<Lang> = Lang::ALL.into_iter().filter(|lang| is_written(exercise, *lang)).collect();
    let first = exercise.texts.keys().next().copied().into_iter();
    let langs: Vec<Lang> = if written.is_empty() { first.collect() } else { written };
    tidy.texts.retain(|lang, _| langs.contains(lang));
    tidy.texts.values_mut().for_each(tidy_texts);
    let names: BTreeMap<Lang, String> = tidy.texts.iter().map(|(lang, texts)| (*lang, texts.name.clone())).collect();
    let only = has_one_level(exercise);
    for rung in tidy.ladders.iter_mut().flat_map(|ladder| &mut ladder.rungs) {
        rung.texts.retain(|lang, _| langs.contains(lang));
        for lang in &langs {
            let texts = rung.texts.entry(*lang).or_default();
            tidy_rung(texts);
            if only {
                let name = names.get(lang).cloned().unwrap_or_default();
                (texts.name, texts.change) = (name.clone(), name);
            }
        }
    }
    tidy
}

fn tidy_texts(texts: &mut Texts) {
    for part in TextPart::ALL {
        let lines = part.lines(texts);
        part.put_lines(texts, tidy_lines(lines));
    }
}

fn tidy_rung(texts: &mut RungTexts) {
    let of = |part: LevelPart, texts: &RungTexts| part.lines(texts).map(tidy_lines).filter(|lines| !lines.is_empty());
    let one = |lines: Option<Vec<String>>| lines.and_then(|lines| lines.into_iter().next());
    texts.name = one(of(LevelPart::Name, texts)).unwrap_or_default();
    texts.change = one(of(LevelPart::Change, texts)).unwrap_or_default();
    texts.set_up = one(of(LevelPart::SetUp, texts));
    texts.steps = of(LevelPart::Steps, texts);
}

fn tidy_lines(lines: Vec<String>) -> Vec<String> {
    lines.iter().map(|line| line.trim().to_owned()).filter(|line| !line.is_empty()).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::authoring::{add_level, blank};

    #[test]
    fn empty_lines_spaces_and_empty_languages_go() {
        let mut exercise = blank(Lang::Es);
        add_language(&mut exercise, Lang::En);
        TextPart::Name.put(&mut exercise, Lang::Es, "  Apoyo ");
        TextPart::Steps.put(&mut exercise, Lang::Es, "\n Uno. \n\nDos.\n");
        let tidy = tidied(&exercise);
        assert_eq!(tidy.texts.keys().copied().collect::<Vec<_>>(), [Lang::Es]);
        let texts = &tidy.texts[&Lang::Es];
        assert_eq!((texts.name.as_str(), &texts.steps[..]), ("Apoyo", &["Uno.".to_owned(), "Dos.".to_owned()][..]));
        assert_eq!(tidy.ladders[0].rungs[0].texts.keys().copied().collect::<Vec<_>>(), [Lang::Es]);
        assert_eq!(tidied(&tidy), tidy, "nothing is left to tidy");
    }

    #[test]
    fn without_any_text_one_language_stays() {
        assert_eq!(tidied(&blank(Lang::Es)).texts.len(), 1);
    }

    #[test]
    fn a_language_is_a_language_of_every_level() {
        let mut exercise = blank(Lang::En);
        add_level(&mut exercise);
        TextPart::Name.put(&mut exercise, Lang::Es, "Apoyo");
        TextPart::Name.put(&mut exercise, Lang::En, "Lean");
        let tidy = tidied(&exercise);
        assert!(tidy.ladders[0].rungs.iter().all(|rung| rung.texts.len() == 2));
    }
}
