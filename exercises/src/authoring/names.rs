//! The id of an own exercise, made from its name.

use crate::catalogue::{ExerciseId, MAX_OWN_NAME};
use crate::find::words_of;

/// What the id is made of where the name has no letter that it could have.
const WITHOUT: &str = "exercise";

/// The id of an exercise that was not saved yet. No file can have it.
pub fn new_id() -> ExerciseId {
    id("own-new")
}

/// An id made from the name of an exercise, different from every id for which `taken` holds.
pub fn free_id(name: &str, taken: impl Fn(&str) -> bool) -> ExerciseId {
    let words = kebab(name);
    let free = |text: &String| !taken(text);
    let numbered = (2u32..).map(|n| {
        let end = format!("-{n}");
        format!("{}{end}", shortened(&words, MAX_OWN_NAME - end.len()))
    });
    let first = [shortened(&words, MAX_OWN_NAME).to_owned()];
    first.into_iter().chain(numbered).find(free).map_or_else(new_id, |text| id(&text))
}

fn id(text: &str) -> ExerciseId {
    ExerciseId::new(text.to_owned()).expect("made of small letters, digits and hyphens")
}

/// The name in small letters, digits and hyphens.
fn kebab(name: &str) -> String {
    let plain = |word: &String| word.chars().filter(char::is_ascii_alphanumeric).collect::<String>();
    let words: Vec<String> = words_of(name).iter().map(plain).filter(|word| !word.is_empty()).collect();
    // What begins with "own-" is given by the program alone.
    let begins = if words.first().is_none_or(|word| word == "own") { Some(WITHOUT) } else { None };
    begins.into_iter().chain(words.iter().map(String::as_str)).collect::<Vec<_>>().join("-")
}

/// At most this many characters of an id, without a hyphen at the end.
fn shortened(id: &str, most: usize) -> &str {
    id.get(..most).unwrap_or(id).trim_end_matches('-')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_id_is_the_name_in_small_letters() {
        let free = |name: &str| free_id(name, |_| false).to_string();
        assert_eq!(free("Lean through a door"), "lean-through-a-door");
        assert_eq!(free("  ¡Estiramiento: año & pantorrilla!  "), "estiramiento-ano-pant");
        assert_eq!((free("γόνατο").as_str(), free("").as_str()), ("exercise", "exercise"));
        assert_eq!(free("one two three four fi-ve"), "one-two-three-four-fi");
    }

    #[test]
    fn a_taken_id_gets_a_number() {
        let taken = |id: &str| ["wall-sit", "wall-sit-2", "a-very-long-name-that"].contains(&id);
        assert_eq!(free_id("Wall sit", taken).as_str(), "wall-sit-3");
        assert_eq!(free_id("A very long name that goes on", taken).as_str(), "a-very-long-name-th-2");
    }

    #[test]
    fn no_name_makes_an_id_that_only_the_program_gives() {
        for name in ["own", "own new", "Own-abcdef-x"] {
            assert!(!free_id(name, |_| false).is_reserved() && free_id(name, |_| false).as_str() != "own", "{name}");
        }
        assert!(new_id().is_reserved());
    }
}
