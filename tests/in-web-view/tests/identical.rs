//! Results are the same to the last bit in native code and in the web view, so that a patient's window, a clinician's window and a
//! terminal always agree.

use in_web_view::Page;

/// The first line in which two texts differ.
fn difference(one: &str, other: &str) -> Option<(usize, String, String)> {
    let lines =
        one.lines().map(Some).chain(std::iter::repeat(None)).zip(other.lines().map(Some).chain(std::iter::repeat(None)));
    let both = lines.take_while(|(one, other)| one.is_some() || other.is_some()).enumerate();
    let brief = |line: Option<&str>| line.unwrap_or("nothing").chars().take(400).collect();
    both.filter(|(_, (one, other))| one != other).map(|(place, (one, other))| (place + 1, brief(one), brief(other))).next()
}

#[test]
fn the_web_view_and_native_code_agree_to_the_last_bit() {
    let native = workloads::texts();
    for part in ["a_stable_native100", "\"hold_s\":14.2768", "MannKendall", "TheilSen", "Interval", "Review {"] {
        assert!(native.contains(part), "the texts hold {part}");
    }
    let web = Page::open("dev").texts();
    assert_eq!(difference(&web, &native), None);
}

#[test]
fn a_difference_in_the_last_bit_is_detected() {
    let one = format!("{:?}", 0.1 + 0.2);
    assert!(difference(&one, "0.3").is_some());
    assert!(difference("-0.0", "0.0").is_some() && difference("1\n2", "1").is_some());
    assert_eq!(difference("1\n2\n", "1\n2\n"), None);
}
