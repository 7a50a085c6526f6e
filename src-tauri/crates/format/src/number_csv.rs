//! Reads tables of numbers as comma-separated values (RFC 4180, without quotes) strictly: one header, one separator, one
//! decimal point. Nothing is guessed; whatever differs is a fault with its line and what was expected.
//!
//! Lines end with LF or CRLF; the last one may have no line end.

use crate::fields::quoted;
use exercises::file_fault::{CsvFault, FaultKind, FileFault};

/// Length of the longest line, in bytes.
const MAX_LINE: usize = 256;

/// One row of a table of `N` columns.
pub(crate) struct Row<'a, const N: usize> {
    pub(crate) line: u32,
    pub(crate) cells: [&'a str; N],
}

/// The form that a table must have.
pub(crate) struct Shape<const N: usize> {
    /// The first line.
    pub(crate) header: &'static str,
    pub(crate) most_bytes: usize,
    pub(crate) most_rows: usize,
}

impl<const N: usize> Shape<N> {
    /// Splits a file into rows and passes each to `take`, which may refuse it.
    pub(crate) fn each_row<'a>(
        &self,
        bytes: &'a [u8],
        mut take: impl FnMut(Row<'a, N>) -> Result<(), FileFault>,
    ) -> Result<(), FileFault> {
        let lines = self.opened(bytes)?;
        for (place, line) in lines.enumerate() {
            if place == self.most_rows {
                return Err(FileFault::at(0, FaultKind::Csv(CsvFault::Rows { most: self.most_rows as u32 })));
            }
            // Line 1 was the header.
            take(self.row(place as u32 + 2, line)?)?;
        }
        Ok(())
    }

    /// The lines after the header; the header itself is checked.
    fn opened<'a>(&self, bytes: &'a [u8]) -> Result<impl Iterator<Item = &'a [u8]> + use<'a, N>, FileFault> {
        if bytes.len() > self.most_bytes {
            let kind = FaultKind::TooLarge { bytes: bytes.len() as u64, most: self.most_bytes as u64 };
            return Err(FileFault::at(0, kind));
        }
        if bytes.starts_with(b"\xEF\xBB\xBF") {
            return Err(FileFault::at(1, FaultKind::Csv(CsvFault::ByteOrderMark)));
        }
        let whole = bytes.strip_suffix(b"\n").unwrap_or(bytes);
        let mut lines = whole.split(|byte| *byte == b'\n').map(|line| line.strip_suffix(b"\r").unwrap_or(line));
        let first = text(1, lines.next().unwrap_or_default())?;
        if first == self.header {
            return Ok(lines);
        }
        if whole.is_empty() {
            return Err(FileFault::at(0, FaultKind::Csv(CsvFault::Empty { header: self.header.to_owned() })));
        }
        other_separator(1, first)?;
        Err(FileFault::at(1, FaultKind::Csv(CsvFault::Header { header: self.header.to_owned(), found: quoted(first) })))
    }

    fn row<'a>(&self, line: u32, bytes: &'a [u8]) -> Result<Row<'a, N>, FileFault> {
        let columns = N as u32;
        let text = text(line, bytes)?;
        if text.is_empty() {
            return Err(FileFault::at(line, FaultKind::Csv(CsvFault::EmptyLine { columns })));
        }
        other_separator(line, text)?;
        let mut cells = [""; N];
        let mut found: u32 = 0;
        for cell in text.split(',') {
            if let Some(place) = cells.get_mut(found as usize) {
                *place = cell;
            }
            found += 1;
        }
        if found == columns {
            return Ok(Row { line, cells });
        }
        Err(FileFault::at(line, FaultKind::Csv(CsvFault::Columns { columns, found })))
    }
}

/// A cell as a number, including "nan" and "inf".
pub(crate) fn number(line: u32, column: &str, cell: &str) -> Result<f64, FileFault> {
    let wrong = || FaultKind::Csv(CsvFault::Number { column: column.to_owned(), found: quoted(cell) });
    cell.parse().map_err(|_| FileFault::at(line, wrong()))
}

fn text(line: u32, bytes: &[u8]) -> Result<&str, FileFault> {
    if bytes.len() > MAX_LINE {
        return Err(FileFault::at(line, FaultKind::Csv(CsvFault::LineLength { most: MAX_LINE as u32 })));
    }
    std::str::from_utf8(bytes).map_err(|_| FileFault::at(line, FaultKind::NotUtf8))
}

fn other_separator(line: u32, text: &str) -> Result<(), FileFault> {
    match text.chars().find(|character| matches!(character, ';' | '\t' | '|')) {
        Some(found) => Err(FileFault::at(line, FaultKind::Csv(CsvFault::Separator { found }))),
        None => Ok(()),
    }
}
