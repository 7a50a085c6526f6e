//! Texts as TOML has them.

/// A text in quotation marks.
pub(crate) fn quoted(text: &str) -> String {
    let mut out = String::from("\"");
    for character in text.chars() {
        match character {
            '"' | '\\' => out.extend(['\\', character]),
            control if control.is_control() => out += &format!("\\u{:04X}", u32::from(control)),
            other => out.push(other),
        }
    }
    out + "\""
}

/// A list with a line for each text.
pub(crate) fn list(texts: &[String]) -> String {
    format!("[\n{}]", texts.iter().map(|text| format!("  {},\n", quoted(text))).collect::<String>())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_text_is_read_as_it_was_written() {
        for text in ["plain", "", "\"quoted\" \\ and 'so'", "two\nlines\ttab\u{7}\u{85}", "ñ 🙂 # = [x]", "\\u0041"] {
            let file = format!("one = {}\nall = {}", quoted(text), list(&[text.to_owned(), "second".to_owned()]));
            let read: toml::Table = file.parse().expect("TOML");
            assert_eq!(read["one"].as_str(), Some(text));
            assert_eq!(read["all"].as_array().map(Vec::len), Some(2));
            assert_eq!(read["all"][0].as_str(), Some(text));
        }
    }
}
