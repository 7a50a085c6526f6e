//! How many spelling mistakes lie between two words: a letter too many, missing, wrong, or exchanged with its neighbour (the
//! restricted distance of Damerau and Levenshtein, as in Boytsov 2011, ACM JEA 16:1.1).

/// Number of spelling mistakes that are forgiven in a word of this many letters: none below 4, one up to 7, two above.
pub fn mistakes_in(letters: usize) -> usize {
    match letters {
        0..=3 => 0,
        4..=7 => 1,
        _ => 2,
    }
}

/// Whether at most `most` mistakes lie between the two words.
pub fn within(typed: &[char], word: &[char], most: usize) -> bool {
    typed.len().abs_diff(word.len()) <= most && last_row(typed, word, most).is_some_and(|row| row[word.len()] <= most)
}

/// Whether at most `most` mistakes lie between `typed` and the beginning of `word`.
pub fn within_beginning(typed: &[char], word: &[char], most: usize) -> bool {
    let begins = &word[..word.len().min(typed.len() + most)];
    typed.len() <= word.len() + most && last_row(typed, begins, most).is_some_and(|row| row.iter().any(|n| *n <= most))
}

/// Of each beginning of `word`, how many mistakes lie between it and the whole of `typed`; `None` if all are more than `most`.
fn last_row(typed: &[char], word: &[char], most: usize) -> Option<Vec<usize>> {
    let mut before: Vec<usize> = Vec::new();
    let mut row: Vec<usize> = (0..=word.len()).collect();
    for (i, letter) in typed.iter().enumerate() {
        let mut next = Vec::with_capacity(row.len());
        next.push(i + 1);
        for (j, other) in word.iter().enumerate() {
            let changed = row[j] + usize::from(letter != other);
            let mut least = changed.min(row[j + 1] + 1).min(next[j] + 1);
            if i > 0 && j > 0 && *letter == word[j - 1] && typed[i - 1] == *other {
                least = least.min(before[j - 1] + 1);
            }
            next.push(least);
        }
        // Once every cell of two rows is above it, no later one can come below.
        if next.iter().chain(&row).all(|n| *n > most) {
            return None;
        }
        before = std::mem::replace(&mut row, next);
    }
    Some(row)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn letters(word: &str) -> Vec<char> {
        word.chars().collect()
    }

    fn is_within(typed: &str, word: &str, most: usize) -> bool {
        within(&letters(typed), &letters(word), most)
    }

    #[test]
    fn one_mistake_of_each_sort_counts_as_one() {
        for typed in ["sholder", "shoullder", "shoulter", "shuolder"] {
            assert!(is_within(typed, "shoulder", 1), "{typed}");
            assert!(!is_within(typed, "shoulder", 0), "{typed}");
        }
        assert!(!is_within("shuoledr", "shoulder", 1), "two exchanges");
        assert!(is_within("shuoledr", "shoulder", 2));
    }

    #[test]
    fn the_length_says_how_many_are_forgiven() {
        assert_eq!([0, 3, 4, 7, 8, 20].map(mistakes_in), [0, 0, 1, 1, 2, 2]);
    }

    #[test]
    fn a_beginning_is_compared_with_what_was_typed_so_far() {
        let begins = |typed: &str, word: &str, most| within_beginning(&letters(typed), &letters(word), most);
        assert!(begins("strenth", "strengthening", 1), "a letter is missing");
        assert!(begins("stregn", "strengthening", 1), "two are exchanged");
        assert!(!begins("stregn", "strengthening", 0));
        assert!(!begins("strengthening", "stren", 2), "more was typed than the word has");
    }

    /// The same distance, written as its definition.
    fn by_definition(one: &[char], other: &[char]) -> usize {
        match (one, other) {
            ([], rest) | (rest, []) => rest.len(),
            ([a, one_rest @ ..], [b, other_rest @ ..]) => {
                let changed = by_definition(one_rest, other_rest) + usize::from(a != b);
                let least = changed.min(by_definition(one_rest, other) + 1).min(by_definition(one, other_rest) + 1);
                match (one, other) {
                    ([a, b, one_rest @ ..], [c, d, other_rest @ ..]) if a == d && b == c => {
                        least.min(by_definition(one_rest, other_rest) + 1)
                    }
                    _ => least,
                }
            }
        }
    }

    proptest! {
        #[test]
        fn the_distance_is_that_of_the_definition(one in "[abc]{0,6}", other in "[abc]{0,6}", most in 0usize..4) {
            let (one, other) = (letters(&one), letters(&other));
            prop_assert_eq!(within(&one, &other, most), by_definition(&one, &other) <= most);
            let some_beginning = (0..=other.len()).any(|end| by_definition(&one, &other[..end]) <= most);
            prop_assert_eq!(within_beginning(&one, &other, most), some_beginning);
        }
    }
}
