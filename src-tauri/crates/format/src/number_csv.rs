//! Tables of numbers as comma-separated values (RFC 4180, without quotes), strict: one header, one separator, one decimal
//! point. Nothing is guessed; what differs is a fault with its line and what was expected.
//!
//! Lines end with LF or CRLF; the last one may end without.

/// The longest line, in bytes.
const MAX_LINE: usize = 256;
/// Of what was found, as much is quoted in a fault, in characters.
const MAX_QUOTED: usize = 40;

/// Why a table cannot be read. Lines count from 1, the header being the first.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum CsvFault {
    /// More bytes than are read.
    #[error("the file has {bytes} bytes, at most {most} are read")]
    TooLarge {
        /// How many came.
        bytes: usize,
        /// How many are read.
        most: usize,
    },
    /// More rows than are read.
    #[error("the file has more than {most} rows of numbers")]
    TooManyRows {
        /// How many are read.
        most: usize,
    },
    /// Nothing at all.
    #[error("the file is empty; expected the header {expected:?}")]
    Empty {
        /// The header.
        expected: &'static str,
    },
    /// A mark of byte order in front.
    #[error("line 1: the file begins with a byte order mark; save it as UTF-8 without one")]
    ByteOrderMark,
    /// Another first line: no header, other columns, other units.
    #[error("line 1: expected the header {expected:?}, found {found:?}")]
    Header {
        /// The header.
        expected: &'static str,
        /// What is there instead, shortened.
        found: String,
    },
    /// Another separator than a comma.
    #[error("line {line}: expected commas between the columns, found {found:?}")]
    Separator {
        /// The line.
        line: usize,
        /// The character.
        found: char,
    },
    /// Bytes that are no UTF-8 text.
    #[error("line {line}: expected text in UTF-8")]
    NotText {
        /// The line.
        line: usize,
    },
    /// A line that cannot be a row of numbers.
    #[error("line {line}: longer than {most} bytes")]
    LineTooLong {
        /// The line.
        line: usize,
        /// How long one may be.
        most: usize,
    },
    /// A line without anything.
    #[error("line {line}: empty; expected {expected} columns")]
    EmptyLine {
        /// The line.
        line: usize,
        /// How many columns.
        expected: usize,
    },
    /// Too few or too many columns; also what a decimal comma looks like.
    #[error("line {line}: expected {expected} columns, found {found}")]
    Columns {
        /// The line.
        line: usize,
        /// How many were expected.
        expected: usize,
        /// How many are there.
        found: usize,
    },
    /// A cell that is no number.
    #[error("line {line}, column {column}: expected a number with a decimal point, found {found:?}")]
    NotANumber {
        /// The line.
        line: usize,
        /// Its name in the header.
        column: &'static str,
        /// What is there instead, shortened.
        found: String,
    },
}

/// One row of a table of `N` columns.
pub(crate) struct Row<'a, const N: usize> {
    pub(crate) line: usize,
    pub(crate) cells: [&'a str; N],
}

/// What a table must look like.
pub(crate) struct Shape<const N: usize> {
    /// The first line.
    pub(crate) header: &'static str,
    pub(crate) most_bytes: usize,
    pub(crate) most_rows: usize,
}

impl<const N: usize> Shape<N> {
    /// Splits a file into rows and hands each to `take`, which may refuse it.
    pub(crate) fn each_row<'a, E: From<CsvFault>>(
        &self,
        bytes: &'a [u8],
        mut take: impl FnMut(Row<'a, N>) -> Result<(), E>,
    ) -> Result<(), E> {
        let lines = self.opened(bytes)?;
        for (place, line) in lines.enumerate() {
            if place == self.most_rows {
                return Err(CsvFault::TooManyRows { most: self.most_rows }.into());
            }
            // The header was line 1.
            take(self.row(place + 2, line)?)?;
        }
        Ok(())
    }

    /// The lines after the header, which is checked.
    fn opened<'a>(&self, bytes: &'a [u8]) -> Result<impl Iterator<Item = &'a [u8]> + use<'a, N>, CsvFault> {
        if bytes.len() > self.most_bytes {
            return Err(CsvFault::TooLarge { bytes: bytes.len(), most: self.most_bytes });
        }
        if bytes.starts_with(b"\xEF\xBB\xBF") {
            return Err(CsvFault::ByteOrderMark);
        }
        let whole = bytes.strip_suffix(b"\n").unwrap_or(bytes);
        let mut lines = whole.split(|byte| *byte == b'\n').map(|line| line.strip_suffix(b"\r").unwrap_or(line));
        let first = text(1, lines.next().unwrap_or_default())?;
        if first == self.header {
            return Ok(lines);
        }
        if whole.is_empty() {
            return Err(CsvFault::Empty { expected: self.header });
        }
        other_separator(1, first)?;
        Err(CsvFault::Header { expected: self.header, found: quoted(first) })
    }

    fn row<'a>(&self, line: usize, bytes: &'a [u8]) -> Result<Row<'a, N>, CsvFault> {
        let text = text(line, bytes)?;
        if text.is_empty() {
            return Err(CsvFault::EmptyLine { line, expected: N });
        }
        other_separator(line, text)?;
        let mut cells = [""; N];
        let mut found = 0;
        for cell in text.split(',') {
            if let Some(place) = cells.get_mut(found) {
                *place = cell;
            }
            found += 1;
        }
        if found == N { Ok(Row { line, cells }) } else { Err(CsvFault::Columns { line, expected: N, found }) }
    }
}

/// A cell as a number; "nan" and "inf" are numbers here.
pub(crate) fn number(line: usize, column: &'static str, cell: &str) -> Result<f64, CsvFault> {
    cell.parse().map_err(|_| CsvFault::NotANumber { line, column, found: quoted(cell) })
}

pub(crate) fn quoted(text: &str) -> String {
    text.chars().take(MAX_QUOTED).collect()
}

fn text(line: usize, bytes: &[u8]) -> Result<&str, CsvFault> {
    if bytes.len() > MAX_LINE {
        return Err(CsvFault::LineTooLong { line, most: MAX_LINE });
    }
    std::str::from_utf8(bytes).map_err(|_| CsvFault::NotText { line })
}

fn other_separator(line: usize, text: &str) -> Result<(), CsvFault> {
    match text.chars().find(|character| matches!(character, ';' | '\t' | '|')) {
        Some(found) => Err(CsvFault::Separator { line, found }),
        None => Ok(()),
    }
}
