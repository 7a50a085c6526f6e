//! A thousand exercises to find one among, and a plain scan of them that finds the same.

use exercises::catalogue::{Catalogue, Exercise, ExerciseId, Lang, Region};
use exercises::find::{Index, mistakes_in, within, within_beginning, words_of};

/// Number of exercises.
const MANY: usize = 1_000;
/// Words that tell the exercises apart; each has two of them in its name and two in what it is good for.
const MORE: [&str; 40] = [
    "slow",
    "wide",
    "narrow",
    "steady",
    "deep",
    "shallow",
    "gentle",
    "forward",
    "backward",
    "sideways",
    "crossed",
    "rising",
    "lowering",
    "turning",
    "rolling",
    "sliding",
    "pressing",
    "reaching",
    "swinging",
    "rocking",
    "tapping",
    "circling",
    "kneeling",
    "leaning",
    "stepping",
    "breathing",
    "looking",
    "holding",
    "letting",
    "bending",
    "straightening",
    "opening",
    "closing",
    "lifting",
    "carrying",
    "pulling",
    "pushing",
    "balancing",
    "walking",
    "resting",
];
/// What is typed, letter by letter: names, a use, mistakes, another language, nothing that there is.
const TYPED: [&str; 6] = ["heel raise slow", "streng thigh", "shuolder", "brething deap", "sentadilla", "xylophone"];

/// The exercises, their index, and each text that the field has in turn.
pub struct Finding {
    exercises: Vec<Exercise>,
    index: Index,
    typed: Vec<String>,
}

impl Finding {
    /// Exercises made from those of the catalogue, none of which shares its name with another.
    pub fn new() -> Finding {
        let exercises = thousand();
        let prescribed: Vec<(ExerciseId, u32)> =
            exercises.iter().step_by(7).zip(1..).map(|(one, n)| (one.id.clone(), n % 50)).collect();
        let index = Index::new(&exercises, Lang::En, |_| String::new(), &prescribed);
        let beginnings = |text: &str| (1..=text.len()).map(|end| text[..end].to_owned()).collect::<Vec<_>>();
        Finding { exercises, index, typed: TYPED.iter().flat_map(|text| beginnings(text)).collect() }
    }

    /// Makes the index.
    pub fn index(&self) -> Index {
        Index::new(&self.exercises, Lang::En, |_| String::new(), &[])
    }

    /// Answers every letter typed; returns how many exercises were found in all.
    pub fn find(&self) -> usize {
        self.typed.iter().map(|typed| self.index.find(typed, |_| true).len()).sum()
    }

    /// The number of letters that [`Finding::find`] answers.
    pub fn letters(&self) -> usize {
        self.typed.len()
    }

    /// The same without an index: every text is taken apart and looked through for every letter.
    pub fn scan(&self) -> usize {
        self.typed.iter().map(|typed| scan(&self.exercises, typed).len()).sum()
    }
}

impl Default for Finding {
    fn default() -> Finding {
        Finding::new()
    }
}

/// A thousand exercises made from those of the catalogue.
pub(crate) fn thousand() -> Vec<Exercise> {
    let Catalogue { exercises: shipped } = format::catalogue::embedded().expect("a test reads them all");
    (0..MANY).map(|n| varied(&shipped[n % shipped.len()], n)).collect()
}

fn varied(one: &Exercise, n: usize) -> Exercise {
    let mut exercise = one.clone();
    exercise.id = ExerciseId::new(format!("made-{n}")).expect("an id");
    exercise.region = Region::ALL[n % Region::ALL.len()];
    let word = |step: usize| MORE[n / step % MORE.len()];
    for texts in exercise.texts.values_mut() {
        texts.name = format!("{} {} {} {n}", texts.name, word(1), word(40));
        texts.purpose = format!("{} {} {}", texts.purpose, word(3), word(17));
    }
    exercise
}

/// The places of the exercises that have every word that was typed, in their order.
fn scan(exercises: &[Exercise], typed: &str) -> Vec<usize> {
    let words: Vec<Vec<char>> = words_of(typed).iter().map(|word| word.chars().collect()).collect();
    let mut places: Vec<usize> = (0..exercises.len()).collect();
    for word in &words {
        let has = ways(word).into_iter().map(|way| {
            exercises.iter().map(|one| texts_of(one).iter().any(|other| way(&other.chars().collect::<Vec<_>>()))).collect()
        });
        let mut has = has.filter(|has: &Vec<bool>| has.contains(&true));
        let found = has.next().unwrap_or_else(|| vec![false; exercises.len()]);
        places.retain(|place| found[*place]);
    }
    places
}

type Way<'a> = Box<dyn Fn(&[char]) -> bool + 'a>;

/// The ways in which a word may be meant, the first of which some exercise has counts.
fn ways(word: &[char]) -> Vec<Way<'_>> {
    let most = mistakes_in(word.len());
    let singular =
        |other: &[char]| other.len() > 2 && [&['s'][..], &['e', 's']].iter().any(|end| *word == [other, end].concat());
    let mut ways: Vec<Way<'_>> = vec![Box::new(move |other| other.starts_with(word) || singular(other))];
    if most > 0 {
        ways.push(Box::new(move |other| within(word, other, most)));
        ways.push(Box::new(move |other| within_beginning(word, other, most)));
    }
    ways
}

/// The words by which an exercise is found in English.
fn texts_of(exercise: &Exercise) -> Vec<String> {
    let rungs = exercise.ladders.iter().flat_map(|ladder| &ladder.rungs);
    let rungs = rungs.filter_map(|rung| rung.text(Lang::En)).map(|texts| texts.name.clone());
    let texts = exercise.text(Lang::En).cloned().unwrap_or_default();
    let others = exercise.texts.iter().filter(|(lang, _)| **lang != Lang::En).map(|(_, texts)| texts.name.clone());
    [exercise.id.to_string(), texts.name, texts.purpose]
        .into_iter()
        .chain(others)
        .chain(rungs)
        .flat_map(|text| words_of(&text))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_index_finds_what_a_scan_of_all_texts_finds() {
        let finding = Finding::new();
        for typed in TYPED.into_iter().chain(["made 17", "wide turning", "stretchs", "deep bending thigh", "on a", "rodila"])
        {
            let mut found = finding.index.find(typed, |_| true);
            found.sort_unstable();
            assert_eq!(found, scan(&finding.exercises, typed), "{typed:?}");
        }
        assert!(finding.find() > 0 && finding.letters() > 50);
    }
}
