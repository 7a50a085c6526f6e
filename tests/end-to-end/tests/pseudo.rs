//! Every screen in the made-up language, whose texts are some 40 % longer than English and fully accented: nothing is cut off, and
//! any text without accents belongs to the catalogue or the plan, or is a name.

use end_to_end::{Demo, Tour, Window};
use exercises::catalogue::Lang;
use std::cell::RefCell;
use std::collections::BTreeSet;
use std::path::Path;

/// Every text on the page, visible or for screen readers.
const TEXTS: &str = r"
    const seen = (element) => element.checkVisibility({ visibilityProperty: true });
    const texts = [];
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walk.nextNode()) {
        const parent = walk.currentNode.parentElement;
        // Licences and names of libraries are not translated.
        if (seen(parent) && !parent.closest('[translate=no]') && !['SCRIPT', 'STYLE'].includes(parent.tagName)) texts.push(walk.currentNode.textContent);
    }
    const named = ['aria-label', 'title', 'placeholder', 'alt'];
    for (const element of document.querySelectorAll(named.map((name) => `[${name}]`).join(', '))) {
        texts.push(...named.map((name) => element.getAttribute(name)).filter(Boolean));
    }
    return texts.map((text) => text.replace(/\s+/g, ' ').trim());
";

/// Names and texts written by clinicians and patients in the demo and the scenes, besides their plan files.
const WRITTEN: [&str; 8] = [
    "Ropewalk Practice",
    "Rowan Hale",
    "Ash Lindqvist",
    "moved away",
    "upper back",
    "carry the shopping home",
    "Europe/Vienna",
    "Carryover",
];

/// All texts that may be on a page unchanged, the longest first.
fn allowed() -> Vec<String> {
    let mut all: BTreeSet<String> = WRITTEN.map(str::to_lowercase).into();
    for exercise in format::catalogue::embedded().expect("the catalogue is sound").exercises {
        let texts = exercise.text(Lang::En).expect("every exercise is in English").clone();
        let lists = [texts.steps, texts.mistakes, texts.cautions, texts.stop_signs].concat();
        all.extend([texts.name, texts.purpose, texts.set_up, texts.should_feel, texts.should_not_feel]);
        all.extend(lists);
        for rung in exercise.ladders.iter().flat_map(|ladder| &ladder.rungs) {
            let texts = rung.text(Lang::En).expect("every rung is in English").clone();
            all.extend([texts.name, texts.change]);
            all.extend(texts.set_up.into_iter().chain(texts.steps.unwrap_or_default()));
        }
    }
    all.extend(plan_files());
    let mut all: Vec<String> = all.into_iter().map(|text| text.to_lowercase()).collect();
    all.sort_by_key(|text| std::cmp::Reverse(text.len()));
    all
}

/// The names and notes in the demo's plans.
fn plan_files() -> Vec<String> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../demo/plans");
    let files = std::fs::read_dir(folder).expect("the demo's plans").map(|file| file.expect("a file").path());
    let text: String = files.map(|file| std::fs::read_to_string(file).expect("a plan")).collect();
    let written = |line: &str| {
        let (key, value) = line.split_once(" = ")?;
        ["name", "note"].contains(&key).then(|| value.trim_matches('"').to_owned())
    };
    text.lines().filter_map(written).collect()
}

/// What remains of a text that comes from no language file: words with a plain vowel.
fn unsaid(text: &str, allowed: &[String]) -> Vec<String> {
    // Paths and names of files, addresses and a key's fingerprint are shown unchanged.
    let is_path = |word: &str| word.starts_with('/') || word.starts_with("http://");
    let told = text.split(' ').filter(|word| !is_path(word) && !is_file(word) && !is_fingerprint(word));
    let mut rest = told.collect::<Vec<_>>().join(" ").to_lowercase();
    for known in allowed {
        rest = rest.replace(known, " ");
    }
    let words = rest.split(|letter: char| !letter.is_alphanumeric());
    // A code, such as a patient's or a key's, contains digits.
    let said =
        |word: &&str| word.contains(['a', 'e', 'i', 'o', 'u']) && !word.contains(|letter: char| letter.is_ascii_digit());
    words.filter(said).map(str::to_owned).collect()
}

/// Whether it is the name of a file, or of a folder with a day in its name; a mark of the sentence may follow it.
fn is_file(word: &str) -> bool {
    const ENDINGS: [&str; 9] = [".age", ".bin", ".csv", ".db", ".ics", ".json", ".pdf", ".png", ".txt"];
    let name = word.trim_end_matches([':', '.', ',']);
    ENDINGS.iter().any(|ending| name.ends_with(ending)) || name.contains("-2027-")
}

/// Whether it is four groups of four letters and digits.
fn is_fingerprint(word: &str) -> bool {
    let in_it = |letter: char| letter.is_ascii_uppercase() || letter.is_ascii_digit();
    word.split('-').count() == 4 && word.split('-').all(|group| group.len() == 4 && group.chars().all(in_it))
}

#[test]
fn all_texts_come_from_language_files_and_nothing_is_cut_off() {
    let allowed = allowed();
    let found = RefCell::new(BTreeSet::new());
    let at_screen = |window: &Window, screen: &str| {
        window.screenshot(&format!("pseudo-{screen}"));
        let texts = window.ask(TEXTS, &[]);
        let texts = texts.as_array().into_iter().flatten().filter_map(|text| text.as_str());
        let plain = texts.map(|text| (text, unsaid(text, &allowed))).filter(|(_, words)| !words.is_empty());
        let plain = plain.map(|(text, words)| format!("not said by a language: {} in {text:?}", words.join(" ")));
        found.borrow_mut().extend(plain.chain(window.misfits()).map(|line| format!("{screen}: {line}")));
    };
    let Demo { homes, at, .. } = Demo::make(&Path::new(env!("CARGO_TARGET_TMPDIR")).join("pseudo"), "2027-03-01", None);
    let tour = Tour { homes, at, size: (360, 640), dark: false, pseudo: true, at_screen: &at_screen };
    tour.patients_side();
    tour.clinics_side();
    let found = found.into_inner();
    assert!(found.is_empty(), "{} findings:\n{}", found.len(), found.into_iter().collect::<Vec<_>>().join("\n"));
}

#[test]
fn a_text_outside_the_language_files_is_detected() {
    let allowed = allowed();
    assert_eq!(unsaid("Sit tall, chin back: dòònèè", &allowed), Vec::<String>::new());
    assert_eq!(unsaid("Stand on one leg: done", &allowed), ["done"]);
    assert_eq!(unsaid("E58 · 3 hòòlds", &allowed), Vec::<String>::new());
    assert_eq!(unsaid("A11-home-2027-03-01.age: received", &allowed), ["received"]);
    assert_eq!(unsaid("ìn thèè fòòldèèr plan-card-2027-03-01.", &allowed), Vec::<String>::new());
}
