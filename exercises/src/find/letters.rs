//! Words as they are compared: in small letters, without accents.

/// The words of a text, in small letters and without accents; everything but letters and digits separates them.
pub fn words_of(text: &str) -> Vec<String> {
    let plain: String = text.chars().filter(|letter| !is_mark(*letter)).flat_map(char::to_lowercase).map(plain).collect();
    plain.split(|letter: char| !letter.is_alphanumeric()).filter(|word| !word.is_empty()).map(str::to_owned).collect()
}

/// Whether this is an accent that stands by itself, as some systems write "á": the letter, then the accent.
fn is_mark(letter: char) -> bool {
    ('\u{300}'..='\u{36f}').contains(&letter)
}

/// A small letter without its accent.
fn plain(letter: char) -> char {
    match letter {
        'à'..='å' => 'a',
        'ç' => 'c',
        'è'..='ë' => 'e',
        'ì'..='ï' => 'i',
        'ñ' => 'n',
        'ò'..='ö' => 'o',
        'ù'..='ü' => 'u',
        'ý' | 'ÿ' => 'y',
        other => other,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_lose_case_accents_and_what_separates_them() {
        assert_eq!(words_of("De pie, sobre una-PIERNA: ¡súbela!"), ["de", "pie", "sobre", "una", "pierna", "subela"]);
        assert_eq!(words_of("Rodilla pequen\u{303}a"), words_of("rodilla pequeña"));
        assert_eq!(words_of("cigüeña"), ["ciguena"]);
        assert!(words_of(" -,; ").is_empty());
    }
}
