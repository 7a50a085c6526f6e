//! Checks that every pair of colours that the screens put on each other has enough contrast, by the formula of WCAG 2.2 (success
//! criteria 1.4.3, contrast of text, and 1.4.11, contrast of marks).

use std::collections::BTreeMap;

/// Text and its background: at least 4.5 to 1.
const TEXT: [(&str, &str); 9] = [
    ("ink", "paper"),
    ("ink", "sheet"),
    ("soft", "paper"),
    ("soft", "sheet"),
    ("brass", "paper"),
    ("brass", "sheet"),
    ("done", "paper"),
    ("alarm", "paper"),
    ("alarm", "sheet"),
];

/// Marks with a meaning and their background: at least 3 to 1.
const MARKS: [(&str, &str); 4] = [("bob", "paper"), ("bob", "sheet"), ("done", "sheet"), ("figure-near", "paper")];

type Palette = BTreeMap<String, [f64; 3]>;

/// The colours of one part of the style sheet, each channel from 0 to 1.
fn palette(css: &str) -> Palette {
    let mut colours = Palette::new();
    for line in css.lines() {
        let Some((name, value)) = line.trim().strip_prefix("--").and_then(|rest| rest.split_once(": #")) else { continue };
        let channel = |at: usize| {
            f64::from(u8::from_str_radix(&value[at..at + 2], 16).expect("a colour is six hexadecimal digits")) / 255.0
        };
        colours.insert(name.to_owned(), [channel(0), channel(2), channel(4)]);
    }
    colours
}

fn luminance(colour: [f64; 3]) -> f64 {
    let linear = colour.map(|c| if c <= 0.040_45 { c / 12.92 } else { ((c + 0.055) / 1.055).powf(2.4) });
    0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]
}

fn contrast(a: [f64; 3], b: [f64; 3]) -> f64 {
    let (a, b) = (luminance(a), luminance(b));
    (a.max(b) + 0.05) / (a.min(b) + 0.05)
}

fn too_close(palette: &Palette, pairs: &[(&str, &str)], least: f64) -> Vec<String> {
    let ratio = |on: &str, ground: &str| contrast(palette[on], palette[ground]);
    let close = pairs.iter().filter(|(on, ground)| ratio(on, ground) < least);
    close.map(|(on, ground)| format!("{on} on {ground}: {:.2}", ratio(on, ground))).collect()
}

#[test]
fn every_pair_has_enough_contrast_in_light_and_dark() {
    let css = include_str!("../../style/tokens.css");
    let (day, night) = css.split_once("@media (prefers-color-scheme: dark)").unwrap();
    for part in [day, night] {
        let palette = palette(part);
        assert_eq!(too_close(&palette, &TEXT, 4.5), Vec::<String>::new());
        assert_eq!(too_close(&palette, &MARKS, 3.0), Vec::<String>::new());
    }
}

#[test]
fn the_formula_gives_the_known_extremes() {
    assert!((contrast([0.0; 3], [1.0; 3]) - 21.0).abs() < 1e-9);
    assert!((contrast([0.5; 3], [0.5; 3]) - 1.0).abs() < 1e-9);
}
