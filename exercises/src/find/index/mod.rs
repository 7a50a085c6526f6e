//! The index of words, and the order of what is found.

use super::letters::words_of;
use super::near::{mistakes_in, within, within_beginning};
use crate::catalogue::{Exercise, ExerciseId, Lang};
use std::cmp::Reverse;
use std::collections::BTreeMap;

/// How much a word counts, by where it stands.
mod weight {
    /// In the exercise's name.
    pub(super) const NAME: u8 = 16;
    /// In its region, its purposes and the like.
    pub(super) const LABEL: u8 = 8;
    /// In its id, its name in another language, or the name of a level.
    pub(super) const OTHER_NAME: u8 = 6;
    /// In what it is good for.
    pub(super) const TEXT: u8 = 2;
    /// Added where the whole word was typed, and not its beginning.
    pub(super) const WHOLE: u8 = 1;
}

/// The words of all exercises, made once.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Index {
    /// All words, in their order.
    words: Vec<Word>,
    /// How often each exercise was prescribed, by its place.
    prescribed: Vec<u32>,
}

/// A word, and where it occurs.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Word {
    word: String,
    letters: Vec<char>,
    /// The places of the exercises that have it, in their order, with its weight there.
    places: Vec<(usize, u8)>,
}

/// What one exercise scores.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Score {
    /// Whether every word stands in its name.
    named: bool,
    sum: u32,
}

impl Index {
    /// The index of these exercises for somebody who reads `lang`. `labels` returns further words for an exercise, such as the name
    /// of its region; `prescribed` says how often each was prescribed.
    pub fn new(
        exercises: &[Exercise],
        lang: Lang,
        labels: impl Fn(&Exercise) -> String,
        prescribed: &[(ExerciseId, u32)],
    ) -> Index {
        let mut words: BTreeMap<String, BTreeMap<usize, u8>> = BTreeMap::new();
        for (place, exercise) in exercises.iter().enumerate() {
            for (text, weight) in texts_of(exercise, lang).into_iter().chain([(labels(exercise), weight::LABEL)]) {
                for word in words_of(&text) {
                    let here = words.entry(word).or_default().entry(place).or_default();
                    *here = weight.max(*here);
                }
            }
        }
        let counts: BTreeMap<&ExerciseId, u32> = prescribed.iter().map(|(id, n)| (id, *n)).collect();
        let word = |(word, places): (String, BTreeMap<usize, u8>)| Word {
            letters: word.chars().collect(),
            word,
            places: places.into_iter().collect(),
        };
        Index {
            words: words.into_iter().map(word).collect(),
            prescribed: exercises.iter().map(|one| counts.get(&one.id).copied().unwrap_or(0)).collect(),
        }
    }

    /// The places of the exercises that have every word of `typed`, out of those that `keep` keeps; of all of them, if nothing was
    /// typed.
    ///
    /// First come those with every word in their name, because whoever types a name means it. Within both groups the order is: what
    /// was prescribed most, the best match, the order of the exercises. A word that was typed may be the beginning of a longer one.
    /// Only if no exercise has it so are words taken that differ by as many mistakes as [`mistakes_in`] forgives.
    pub fn find(&self, typed: &str, keep: impl Fn(usize) -> bool) -> Vec<usize> {
        let mut scores = vec![Some(Score { named: true, sum: 0 }); self.prescribed.len()];
        let words = words_of(typed);
        for word in &words {
            let best = self.weights_of(word);
            for (score, best) in scores.iter_mut().zip(best) {
                let so_far = score.filter(|_| best > 0);
                *score = so_far.map(|it| Score { named: it.named && best >= weight::NAME, sum: it.sum + u32::from(best) });
            }
        }
        let found = scores.into_iter().enumerate().filter_map(|(place, score)| Some((place, score?)));
        let mut found: Vec<(usize, Score)> = found.filter(|(place, _)| keep(*place)).collect();
        found.sort_by_key(|(place, score)| (!score.named, Reverse(self.prescribed[*place]), Reverse(score.sum), *place));
        found.into_iter().map(|(place, _)| place).collect()
    }

    /// The number of times that the exercise at this place was prescribed.
    pub fn prescribed(&self, place: usize) -> u32 {
        self.prescribed.get(place).copied().unwrap_or(0)
    }

    /// Of each exercise the weight of the word there; 0 where it does not occur.
    fn weights_of(&self, typed: &str) -> Vec<u8> {
        let mut best = vec![0; self.prescribed.len()];
        let mut any = false;
        for (word, whole) in self.as_typed(typed) {
            any = true;
            note(&mut best, word, if whole { weight::WHOLE } else { 0 });
        }
        if !any {
            self.nearly(typed).into_iter().for_each(|word| note(&mut best, word, 0));
        }
        best
    }

    /// The words that begin so, and whether each is the whole word. A word in the plural also finds its singular.
    fn as_typed(&self, typed: &str) -> impl Iterator<Item = (&Word, bool)> {
        let first = self.words.partition_point(|word| word.word.as_str() < typed);
        let begins = self.words[first..].iter().take_while(move |word| word.word.starts_with(typed));
        let begins = begins.map(move |word| (word, word.letters.len() == typed.chars().count()));
        let singular = ["es", "s"].into_iter().filter_map(move |end| typed.strip_suffix(end).filter(|stem| stem.len() > 2));
        begins.chain(singular.filter_map(|stem| self.word(stem)).map(|word| (word, true)))
    }

    fn word(&self, word: &str) -> Option<&Word> {
        let place = self.words.binary_search_by(|other| other.word.as_str().cmp(word)).ok()?;
        self.words.get(place)
    }

    /// The words that differ by few mistakes; if there are none, those whose beginning does.
    fn nearly(&self, typed: &str) -> Vec<&Word> {
        let typed: Vec<char> = typed.chars().collect();
        let most = mistakes_in(typed.len());
        if most == 0 {
            return Vec::new();
        }
        let whole: Vec<&Word> = self.words.iter().filter(|word| within(&typed, &word.letters, most)).collect();
        if !whole.is_empty() {
            return whole;
        }
        self.words.iter().filter(|word| within_beginning(&typed, &word.letters, most)).collect()
    }
}

fn note(best: &mut [u8], word: &Word, more: u8) {
    for (place, weight) in &word.places {
        best[*place] = best[*place].max(weight + more);
    }
}

/// The texts by which an exercise is found, each with its weight.
fn texts_of(exercise: &Exercise, lang: Lang) -> Vec<(String, u8)> {
    let mut all = vec![(exercise.id.to_string(), weight::OTHER_NAME)];
    if let Some(texts) = exercise.text(lang) {
        all.extend([(texts.name.clone(), weight::NAME), (texts.purpose.clone(), weight::TEXT)]);
    }
    let others = exercise.texts.iter().filter(|(other, _)| **other != lang);
    all.extend(others.map(|(_, texts)| (texts.name.clone(), weight::OTHER_NAME)));
    let rungs = exercise.ladders.iter().flat_map(|ladder| &ladder.rungs);
    all.extend(rungs.filter_map(|rung| rung.text(lang)).map(|texts| (texts.name.clone(), weight::OTHER_NAME)));
    all
}

#[cfg(test)]
mod tests;
