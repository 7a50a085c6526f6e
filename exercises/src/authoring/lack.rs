//! What an exercise lacks before it can be saved.

use super::tidy::tidied;
use super::{LevelPart, TextPart, has_one_level};
use crate::catalogue::{Exercise, Lang, Quantity, Rung, RungId, RungTexts, Texts};

/// A place of an exercise, where something is lacking.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Place {
    /// A text.
    Text(Lang, TextPart),
    /// A text of a level.
    LevelText(RungId, Lang, LevelPart),
    /// Surface and eyes of a level.
    Conditions(RungId),
    /// The sides of the levels.
    Sides,
}

/// What is lacking in a place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lack {
    /// Nothing is written there.
    Empty,
    /// The text, or an entry of the list, has too many characters.
    TooLong {
        /// The entry, from 1; `None` if it is no list.
        line: Option<usize>,
        /// Its characters.
        found: usize,
        /// The most characters.
        most: usize,
    },
    /// The list has too many entries.
    TooMany {
        /// Its entries.
        found: usize,
        /// The most entries.
        most: usize,
    },
    /// The list has another number of entries than in the first language.
    Unequal {
        /// Its entries.
        found: usize,
        /// The entries in the first language.
        first: usize,
    },
    /// Another exercise has this name.
    SameName,
    /// It is not said what is stood on, and with open or closed eyes.
    NoConditions,
    /// Levels of one ladder are done on different sides.
    UnlikeSides,
}

/// Everything that keeps an exercise from being saved, in the order of the page. `others` are the names of the other exercises that a
/// plan can be made of, in the languages that the exercise may have.
pub fn lacks(exercise: &Exercise, others: &[(Lang, String)]) -> Vec<(Place, Lack)> {
    let tidy = tidied(exercise);
    let mut all = Vec::new();
    for (lang, texts) in &tidy.texts {
        let same = |(other, name): &(Lang, String)| other == lang && name.to_lowercase() == texts.name.to_lowercase();
        if !texts.name.is_empty() && others.iter().any(same) {
            all.push((Place::Text(*lang, TextPart::Name), Lack::SameName));
        }
        all.extend(of_texts(texts).map(|(part, lack)| (Place::Text(*lang, part), lack)));
    }
    all.extend(unequal(&tidy));
    for ladder in &tidy.ladders {
        let side = |rung: &Rung| rung.side.unwrap_or(tidy.side);
        if ladder.rungs.iter().any(|rung| side(rung) != side(&ladder.rungs[0])) {
            all.push((Place::Sides, Lack::UnlikeSides));
        }
        all.extend(ladder.rungs.iter().flat_map(|rung| of_level(&tidy, rung)));
    }
    all
}

fn of_texts(texts: &Texts) -> impl Iterator<Item = (TextPart, Lack)> {
    let of = |part: &TextPart| {
        wrong(&part.lines(texts), part.entries(), part.characters()).map(|lack| (*part, lack)).collect::<Vec<_>>()
    };
    TextPart::ALL.iter().flat_map(of).collect::<Vec<_>>().into_iter()
}

fn of_level(exercise: &Exercise, rung: &Rung) -> Vec<(Place, Lack)> {
    let mut all = Vec::new();
    if exercise.kind.is_balance() && (rung.surface.is_none() || rung.eyes.is_none()) {
        all.push((Place::Conditions(rung.id.clone()), Lack::NoConditions));
    }
    let first = rung.texts.values().find_map(|texts| texts.steps.as_ref()).map(Vec::len);
    let has_set_up = rung.texts.values().any(|texts| texts.set_up.is_some());
    for (lang, texts) in &rung.texts {
        let place = |part: LevelPart| Place::LevelText(rung.id.clone(), *lang, part);
        let named = |part: &&LevelPart| part.is_optional() || !has_one_level(exercise);
        let own = LevelPart::ALL.iter().filter(named).flat_map(|part| of_level_text(*part, texts));
        all.extend(own.map(|(part, lack)| (place(part), lack)));
        if has_set_up && texts.set_up.is_none() {
            all.push((place(LevelPart::SetUp), Lack::Empty));
        }
        match (first, texts.steps.as_ref().map(Vec::len)) {
            (Some(_), None) => all.push((place(LevelPart::Steps), Lack::Empty)),
            (Some(first), Some(found)) if found != first => {
                all.push((place(LevelPart::Steps), Lack::Unequal { found, first }));
            }
            _ => {}
        }
    }
    all
}

fn of_level_text(part: LevelPart, texts: &RungTexts) -> Vec<(LevelPart, Lack)> {
    let lines = part.lines(texts);
    lines.iter().flat_map(|lines| wrong(lines, part.entries(), part.characters())).map(|lack| (part, lack)).collect()
}

/// What is wrong with the lines of a text by itself.
fn wrong(lines: &[String], entries: Option<Quantity>, characters: Quantity) -> impl Iterator<Item = Lack> {
    let empty = lines.iter().all(String::is_empty).then_some(Lack::Empty);
    let many = entries.map(most).filter(|most| lines.len() > *most);
    let many = many.map(|most| Lack::TooMany { found: lines.len(), most });
    let most = most(characters);
    let long = |(place, line): (usize, &String)| {
        let found = line.chars().count();
        (found > most).then_some(Lack::TooLong { line: entries.is_some().then_some(place + 1), found, most })
    };
    let long: Vec<Lack> = lines.iter().enumerate().filter_map(long).collect();
    empty.into_iter().chain(many).chain(long)
}

fn most(quantity: Quantity) -> usize {
    usize::try_from(quantity.bound().max).unwrap_or(usize::MAX)
}

/// The lists that have more or fewer entries than in the first language.
fn unequal(exercise: &Exercise) -> Vec<(Place, Lack)> {
    let mut langs = exercise.texts.iter();
    let Some((_, first)) = langs.next() else { return Vec::new() };
    let of = |(lang, texts): (&Lang, &Texts)| {
        let lists = TextPart::ALL.iter().filter(|part| part.entries().is_some());
        let unlike = lists.filter_map(|part| {
            let (found, first) = (part.lines(texts).len(), part.lines(first).len());
            (found > 0 && first > 0 && found != first).then_some((Place::Text(*lang, *part), Lack::Unequal { found, first }))
        });
        unlike.collect::<Vec<_>>()
    };
    langs.flat_map(of).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::authoring::{add_language, add_level, blank, of_kind};
    use crate::catalogue::{Kind, Sidedness};

    fn full(lang: Lang) -> Exercise {
        let mut exercise = blank(lang);
        fill(&mut exercise, lang);
        exercise
    }

    fn fill(exercise: &mut Exercise, lang: Lang) {
        TextPart::ALL.iter().for_each(|part| part.put(exercise, lang, "Words."));
    }

    #[test]
    fn a_blank_exercise_lacks_every_text_and_nothing_else() {
        let all = lacks(&blank(Lang::En), &[]);
        let places: Vec<Place> = TextPart::ALL.iter().map(|part| Place::Text(Lang::En, *part)).collect();
        assert_eq!(all.iter().map(|(place, _)| place.clone()).collect::<Vec<_>>(), places);
        assert!(all.iter().all(|(_, lack)| *lack == Lack::Empty));
        assert_eq!(lacks(&full(Lang::En), &[]), [], "a single level needs no words of its own");
    }

    #[test]
    fn texts_and_lists_have_a_greatest_length() {
        let mut exercise = full(Lang::En);
        TextPart::Name.put(&mut exercise, Lang::En, &"n".repeat(41));
        TextPart::Cautions.put(&mut exercise, Lang::En, &format!("a\n{}", "c".repeat(281)));
        TextPart::Steps.put(&mut exercise, Lang::En, &"step\n".repeat(9));
        let expected = [
            (TextPart::Name, Lack::TooLong { line: None, found: 41, most: 40 }),
            (TextPart::Steps, Lack::TooMany { found: 9, most: 8 }),
            (TextPart::Cautions, Lack::TooLong { line: Some(2), found: 281, most: 280 }),
        ];
        assert_eq!(lacks(&exercise, &[]), expected.map(|(part, lack)| (Place::Text(Lang::En, part), lack)));
    }

    #[test]
    fn a_second_language_is_whole_or_not_there() {
        let mut exercise = full(Lang::En);
        add_language(&mut exercise, Lang::Es);
        assert_eq!(lacks(&exercise, &[]), [], "nothing is written in it");
        TextPart::Name.put(&mut exercise, Lang::Es, "Apoyo");
        assert_eq!(lacks(&exercise, &[]).len(), TextPart::ALL.len() - 1);
        fill(&mut exercise, Lang::Es);
        TextPart::Steps.put(&mut exercise, Lang::Es, "Uno.\nDos.");
        let unequal = (Place::Text(Lang::Es, TextPart::Steps), Lack::Unequal { found: 2, first: 1 });
        assert_eq!(lacks(&exercise, &[]), [unequal]);
    }

    #[test]
    fn several_levels_need_names_and_what_differs() {
        let mut exercise = full(Lang::En);
        let second = add_level(&mut exercise).expect("room");
        let missing = lacks(&exercise, &[]);
        assert_eq!(missing.len(), 4, "{missing:?}");
        assert_eq!(missing[2], (Place::LevelText(second, Lang::En, LevelPart::Name), Lack::Empty));
    }

    #[test]
    fn what_a_level_says_itself_is_said_in_each_language() {
        let mut exercise = full(Lang::En);
        fill(&mut exercise, Lang::Es);
        let level = exercise.ladders[0].rungs[0].id.clone();
        LevelPart::Steps.put(&mut exercise, &level, Lang::En, "One.\nTwo.");
        let steps = Place::LevelText(level.clone(), Lang::Es, LevelPart::Steps);
        assert_eq!(lacks(&exercise, &[]), [(steps.clone(), Lack::Empty)]);
        LevelPart::Steps.put(&mut exercise, &level, Lang::Es, "Uno.");
        assert_eq!(lacks(&exercise, &[]), [(steps, Lack::Unequal { found: 1, first: 2 })]);
    }

    #[test]
    fn a_name_that_another_exercise_has_is_said() {
        let others = [(Lang::En, "WORDS.".to_owned()), (Lang::Es, "Words.".to_owned())];
        assert_eq!(lacks(&full(Lang::En), &others), [(Place::Text(Lang::En, TextPart::Name), Lack::SameName)]);
        assert_eq!(lacks(&full(Lang::En), &others[1..]), [], "not in this language");
    }

    #[test]
    fn balance_needs_conditions_and_a_ladder_the_same_sides() {
        let mut exercise = full(Lang::En);
        of_kind(&mut exercise, Kind::Balance);
        let rung = &mut exercise.ladders[0].rungs[0];
        rung.eyes = None;
        assert_eq!(
            lacks(&exercise, &[]),
            [(Place::Conditions(exercise.ladders[0].rungs[0].id.clone()), Lack::NoConditions)]
        );
        let mut exercise = full(Lang::En);
        add_level(&mut exercise);
        exercise.ladders[0].rungs[1].side = Some(Sidedness::EachSide);
        assert!(lacks(&exercise, &[]).contains(&(Place::Sides, Lack::UnlikeSides)));
    }
}
