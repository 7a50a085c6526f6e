//! Puts values into the places of a text.

#[cfg(test)]
use std::collections::BTreeSet;
use std::fmt::Display;

/// `{name}` becomes the value of that name; `{name|one|other}` the first form if the value reads "1", else the second, with
/// `#` in the form standing for the value. A place without a value stays as it is, which a test of every screen would show.
pub fn fill(text: &str, values: &[(&str, &dyn Display)]) -> String {
    let mut out = String::with_capacity(text.len() + 16);
    let mut rest = text;
    while let Some((before, after)) = rest.split_once('{') {
        out.push_str(before);
        let Some((place, tail)) = after.split_once('}') else {
            out.push('{');
            rest = after;
            continue;
        };
        out.push_str(&one(place, values));
        rest = tail;
    }
    out.push_str(rest);
    out
}

fn one(place: &str, values: &[(&str, &dyn Display)]) -> String {
    let mut parts = place.split('|');
    let name = parts.next().unwrap_or_default();
    let Some((_, value)) = values.iter().find(|(other, _)| *other == name) else { return format!("{{{place}}}") };
    let value = value.to_string();
    match (parts.next(), parts.next()) {
        (Some(singular), Some(plural)) => (if value == "1" { singular } else { plural }).replace('#', &value),
        _ => value,
    }
}

/// The names of a text's places.
#[cfg(test)]
pub fn places(text: &str) -> BTreeSet<&str> {
    let braces = text.split('{').skip(1).filter_map(|part| part.split_once('}'));
    braces.map(|(place, _)| place.split('|').next().unwrap_or_default()).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn values_and_plural_forms() {
        assert_eq!(fill("{n|# hold|# holds} of {s} s", &[("n", &1), ("s", &10)]), "1 hold of 10 s");
        assert_eq!(fill("{n|# hold|# holds} of {s} s", &[("n", &3), ("s", &10)]), "3 holds of 10 s");
    }

    #[test]
    fn a_place_without_a_value_stays_visible() {
        assert_eq!(fill("Day {day}", &[]), "Day {day}");
    }

    #[test]
    fn an_unclosed_brace_is_text() {
        assert_eq!(fill("a { b", &[]), "a { b");
    }
}
