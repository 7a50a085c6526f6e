//! Tables for a spreadsheet: comma-separated values as RFC 4180 says, in UTF-8, lines ending with CRLF.

use csv::{Terminator, WriterBuilder};

/// A table from its header and its lines.
pub(crate) fn table<const N: usize>(header: [&str; N], lines: impl Iterator<Item = [String; N]>) -> Vec<u8> {
    const WHOLE: &str = "a vector takes every line, and all of them have the same cells";
    let mut out = WriterBuilder::new().terminator(Terminator::CRLF).from_writer(Vec::new());
    out.write_record(header).expect(WHOLE);
    lines.for_each(|line| out.write_record(line).expect(WHOLE));
    out.into_inner().expect(WHOLE)
}

/// A text as a cell. It is kept from looking like a formula, because spreadsheets would run it (OWASP, CSV injection).
pub(crate) fn text(plain: &str) -> String {
    let formula = plain.trim_start_matches(' ').starts_with(['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠']);
    if formula { format!("'{plain}") } else { plain.to_owned() }
}

/// A value as a cell, empty if there is none.
pub(crate) fn some<T: ToString>(value: Option<T>) -> String {
    value.map(|value| value.to_string()).unwrap_or_default()
}
