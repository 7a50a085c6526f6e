//! Any answer of a server of records is a success with an entry for what was sent, a complaint of one clean line, or neither.
#![no_main]

use exercises::plain_text::is_hidden;
use format::fhir::answer::{complaint, taken_in};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|answer: &[u8]| {
    if let Some(taken) = taken_in(br#"{"entry":[{}]}"#, answer) {
        assert_eq!(taken.added + taken.known, 1);
    }
    if let Some(said) = complaint(answer) {
        assert!(!said.is_empty() && said.chars().count() <= 201, "{said}");
        assert!(!said.chars().any(|character| is_hidden(character) || character == '\n'), "{said}");
    }
});
