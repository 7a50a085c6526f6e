//! Tests with folders of Fluent files and the code that they give.

use crate::{generate, texts_of};
use std::fs;

fn folder(files: &[(&str, &str)]) -> tempfile::TempDir {
    let root = tempfile::tempdir().expect("a folder");
    for (path, text) in files {
        let file = root.path().join(path);
        fs::create_dir_all(file.parent().expect("a folder")).expect("a folder");
        fs::write(file, text).expect("a file");
    }
    root
}

/// Generates code from files given as (path, text), with `en` as the first language.
fn generated(files: &[(&str, &str)]) -> Result<String, Vec<String>> {
    let root = folder(files);
    let place = format!("{}{}", root.path().display(), std::path::MAIN_SEPARATOR);
    generate(root.path(), "en").map_err(|faults| faults.into_iter().map(|fault| fault.replace(&place, "")).collect())
}

#[track_caller]
fn faults(files: &[(&str, &str)]) -> Vec<String> {
    generated(files).expect_err("a fault")
}

#[track_caller]
fn has(rust: &str, part: &str) {
    assert!(rust.contains(part), "no {part} in\n{rust}");
}

#[test]
fn a_text_becomes_a_key_and_one_with_values_a_typed_function() {
    let en = "back = Back\n# $s (Number)\nhold = { $n ->\n    [one] { $n } hold\n   *[other] { $n } holds\n } of { $s } s: { $name }\n";
    let rust = generated(&[("en/a.ftl", en)]).expect("valid files");
    has(&rust, "    /// Back\n    Back,\n");
    has(&rust, "pub fn hold(self, n: impl Into<Number>, s: impl Into<Number>, name: &str) -> String");
    has(&rust, "(Case::Plural(Plural::One), &[Piece::Value(0), Piece::Text(\" hold\")])");
    has(&rust, "(Case::Default, &[Piece::Value(0), Piece::Text(\" holds\")])");
    has(&rust, "(\"hold\", &[true, true, false])");
}

#[test]
fn a_region_has_only_its_differences_and_references_are_resolved() {
    let es = "-brand = Carryover\nopen = Abrir { -brand }: { name }\nname = x\n    .hint = y\n";
    let rust = generated(&[("en/a.ftl", es), ("es/b.ftl", es), ("es-MX/a.ftl", "name = z\n")]).expect("valid files");
    has(&rust, "\"Abrir Carryover: x\"");
    has(&rust, "    NameHint,\n");
    has(&rust, "Locale::EsMx => Some(Locale::Es)");
    has(&rust, "static ES_MX_TEXTS: Texts = Texts { plain: Table::Some(&[\n    (0, \"z\"),\n])");
}

#[test]
fn a_missing_or_additional_text_is_a_fault_with_its_line() {
    let found = faults(&[("en/a.ftl", "a = A { $x }\nb = B\n"), ("es/a.ftl", "a = A { $y }\nc = C\n")]);
    let expected = [
        "es: b is missing",
        "es/a.ftl:1: a has no value $y",
        "es/a.ftl:1: a leaves out the value $x",
        "es/a.ftl:2: c is not in en",
    ];
    assert_eq!(found, expected);
    assert_eq!(faults(&[("en/a.ftl", "a = A\n"), ("fr-CA/a.ftl", "a = B\n")]), ["fr-CA: there is no fr"]);
    assert_eq!(faults(&[("es/a.ftl", "a = A\n")]), ["there is no folder en"]);
}

#[test]
fn a_value_may_be_declared_for_other_languages_alone() {
    let en = "# $hour (Number, optional)\nat = { $time }\n";
    let es = "at = { $hour ->\n    [one] la { $time }\n   *[other] las { $time }\n }\n";
    let rust = generated(&[("en/a.ftl", en), ("es/a.ftl", es)]).expect("valid files");
    has(&rust, "pub fn at(self, time: &str, hour: impl Into<Number>) -> String");
    has(&rust, "Piece::Choose(1, ");
}

#[test]
fn plural_cases_are_checked_and_words_may_choose_too() {
    let wrong = "a = { $n ->\n    [one] 1\n   *[many] n\n }\n";
    assert_eq!(faults(&[("en/a.ftl", wrong)]), ["en/a.ftl:1: a: the default of $n must be *[other]"]);
    let dual = "a = { $n ->\n    [one] 1\n   *[other] n\n }\n";
    let odd = dual.replace("one", "single");
    assert_eq!(faults(&[("en/a.ftl", dual), ("es/a.ftl", &odd)]), ["es/a.ftl:1: a: [single] is no plural category"]);
    let words = "a = { $leg ->\n    [left] L\n   *[right] R\n }\n";
    has(&generated(&[("en/a.ftl", words)]).expect("valid files"), "(Case::Word(\"left\"), ");
    let exactly = "a = { $n ->\n    [0] none\n   *[other] { $n }\n }\n";
    has(&generated(&[("en/a.ftl", exactly)]).expect("valid files"), "(Case::Exactly(0), ");
}

#[test]
fn unsupported_syntax_is_a_fault() {
    assert_eq!(faults(&[("en/a.ftl", "a = A\na = B\n")]), ["en/a.ftl:2: a is already in en/a.ftl:1"]);
    assert_eq!(faults(&[("en/a.ftl", "a = { b }\n")]), ["en/a.ftl:1: a: there is no b"]);
    assert_eq!(faults(&[("en/a.ftl", "a = { b }\nb = { a }\n")]).len(), 2, "a circle");
    assert_eq!(faults(&[("en/a.ftl", "continue = Go\n")]), ["en/a.ftl:1: continue cannot be a name in Rust"]);
    let call = faults(&[("en/a.ftl", "a = { NUMBER($n) }\n")]);
    assert_eq!(call, ["en/a.ftl:1: a: NUMBER() is not needed: a number is shown as the language writes it"]);
    assert!(faults(&[("en/a.ftl", "a = { $n\n")])[0].starts_with("en/a.ftl:"));
}

#[test]
fn selected_texts_are_returned_for_every_locale_with_names_for_values() {
    let en = "title = Stopped\nfile = could not load { $address }\n";
    let es = "title = Parado\nfile = no se pudo cargar { $address }\n";
    let root = folder(&[("en/a.ftl", en), ("es/a.ftl", es), ("es-MX/a.ftl", "title = Detenido\n")]);
    let texts = texts_of(root.path(), &["title", "file"]).expect("valid files");
    let of = |tag: &str| texts.iter().find(|(other, _)| other == tag).map(|(_, texts)| texts.join("; "));
    assert_eq!(of("en").as_deref(), Some("Stopped; could not load {address}"));
    assert_eq!(of("es-MX").as_deref(), Some("Detenido; no se pudo cargar {address}"));
}

#[test]
fn a_selected_text_that_is_missing_or_chooses_is_a_fault() {
    let en = "title = Stopped\nn = { $n ->\n    [one] one\n   *[other] many\n }\n";
    let root = folder(&[("en/a.ftl", en), ("es/a.ftl", "n = muchos\n")]);
    let faults = texts_of(root.path(), &["title", "n"]).expect_err("faults");
    assert_eq!(faults, ["en: n is not there, or chooses by a value", "es: title is not there, or chooses by a value"]);
}
