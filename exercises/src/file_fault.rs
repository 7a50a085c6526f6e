//! Faults in a file that a person wrote, as facts: a plan, a history, a clinic's table, a table of numbers.
//!
//! The readers of `format` return these facts, a failure of `wire` contains them, and `words` makes a text from them. A text found
//! in the file is shortened, and has no character that cannot be displayed.

use crate::catalogue::IdFault;
use chrono::NaiveDate;

/// A fault in a file, and its place.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct FileFault {
    /// The line, from 1; 0 if no line can be named.
    pub line: u32,
    /// The field whose value is wrong, as named in the file; empty if the line is enough.
    pub field: String,
    /// What is wrong there.
    pub kind: FaultKind,
}

impl FileFault {
    /// A fault of a line, or of the whole file if `line` is 0.
    pub fn at(line: u32, kind: FaultKind) -> FileFault {
        FileFault { line, field: String::new(), kind }
    }
}

/// The kind of a fault.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum FaultKind {
    /// Bytes that are not text in UTF-8.
    NotUtf8,
    /// The file is larger than the limit.
    TooLarge {
        /// The file's size in bytes.
        bytes: u64,
        /// The limit, in bytes.
        most: u64,
    },
    /// The file is not TOML.
    NotToml {
        /// The parser's own message, in English.
        detail: String,
    },
    /// The line is not a JSON object.
    NotJson {
        /// The character, from 1.
        column: u32,
        /// The parser's own message, in English.
        detail: String,
    },
    /// A field that does not exist.
    UnknownField {
        /// Its name.
        found: String,
        /// The fields that exist.
        allowed: Vec<String>,
    },
    /// A field that must be there is not.
    MissingField {
        /// Its name.
        field: String,
    },
    /// A word that is not one of the allowed words.
    UnknownWord {
        /// The word.
        found: String,
        /// The words allowed.
        allowed: Vec<String>,
    },
    /// A value of another kind.
    WrongKind {
        /// The kind that is expected.
        expected: ValueKind,
        /// The kind of the value.
        found: ValueKind,
    },
    /// A number out of its range.
    NumberRange {
        /// The least allowed.
        least: i64,
        /// The most allowed.
        most: i64,
    },
    /// Exactly one of several fields is needed, and there are none or several.
    OneOfFields {
        /// The fields.
        fields: Vec<String>,
    },
    /// A field or a word that appears twice.
    Duplicate {
        /// Its name.
        id: String,
    },
    /// A text that is not a date.
    Date,
    /// A date after the last one allowed, which is today.
    DateAfterToday {
        /// Today.
        today: NaiveDate,
    },
    /// A text that is not a time of day.
    TimeOfDay,
    /// A text that is not a moment with its offset, or one outside the years that a log can store.
    Moment,
    /// A text that cannot be an identifier.
    Id(IdFault),
    /// A folder without an exercise file.
    NoExerciseFile,
    /// A fault that only a plan file can have.
    Plan(PlanFault),
    /// A fault that only a history can have.
    Runs(RunsFault),
    /// A fault that only a clinic's table can have.
    Norms(NormsFault),
    /// A fault that only a table of numbers can have.
    Csv(CsvFault),
}

/// A fault in a plan file.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum PlanFault {
    /// Neither a word for several days of the week nor a list of them.
    Days,
    /// A text that is not the name of an alarm.
    AlarmName,
}

/// A fault in a history, which has one JSON object per line.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum RunsFault {
    /// More holds, sets or trials in a run than any dose has.
    TooManyParts {
        /// The most allowed.
        most: u32,
    },
    /// The number of failed repetitions is not the same as that of sets done.
    FailedCount,
    /// The place of the phone is given for a run without trials.
    PhoneWithoutTrials,
    /// The plan has no such item, complaint or activity, or the item is of another kind.
    NoSuchItem,
    /// No slot of the item is open at that moment.
    NoOpenSlot,
    /// The item is paused for safety at that moment.
    Paused,
    /// The days are not within the plan.
    DaysOutsidePlan,
}

/// A fault in a clinic's own table of published times.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum NormsFault {
    /// A table without rows, or with too many.
    RowCount {
        /// The most rows.
        most: u32,
    },
    /// A table's source that is empty, too long, or has more than one line.
    Source {
        /// The most characters.
        most: u32,
    },
    /// A standard deviation without a mean.
    SdWithoutMean,
    /// A text that is not a range of ages.
    Ages,
    /// A range of ages that begins with the oldest.
    AgesReversed,
    /// A text that is not a statistic of several attempts.
    Statistic {
        /// The most attempts.
        most: u8,
    },
    /// Neither whole seconds nor "none".
    Cap {
        /// The least seconds.
        least: u16,
        /// The most seconds.
        most: u16,
    },
    /// A figure above the cap of its row.
    AboveCap,
    /// A surface other than the firm floor.
    FirmOnly,
}

/// A fault in a table of numbers as comma-separated values.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum CsvFault {
    /// An empty file where a table of numbers is expected.
    Empty {
        /// The first line that is expected.
        header: String,
    },
    /// Another first line.
    Header {
        /// The first line that is expected.
        header: String,
        /// The first line.
        found: String,
    },
    /// The file begins with a byte order mark.
    ByteOrderMark,
    /// Too many rows.
    Rows {
        /// The most rows.
        most: u32,
    },
    /// A separator other than a comma.
    Separator {
        /// The separator.
        found: char,
    },
    /// A line that is too long.
    LineLength {
        /// The most bytes of a line.
        most: u32,
    },
    /// An empty line.
    EmptyLine {
        /// How many columns are expected.
        columns: u32,
    },
    /// Too few or too many columns.
    Columns {
        /// How many are expected.
        columns: u32,
        /// How many there are.
        found: u32,
    },
    /// A cell that is not a number.
    Number {
        /// The column's name in the header.
        column: String,
        /// The cell.
        found: String,
    },
    /// A number that is infinite, or "nan".
    Finite {
        /// The column's name in the header.
        column: String,
    },
    /// A cell that is neither a whole number nor a date.
    Day {
        /// The column's name in the header.
        column: String,
        /// The cell.
        found: String,
    },
    /// Whole numbers and dates in one column.
    MixedDays {
        /// The column's name in the header.
        column: String,
    },
    /// A day that is not later than the one before.
    DayOrder {
        /// The column's name in the header.
        column: String,
    },
}

/// The kind of a value in a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum ValueKind {
    /// A text.
    Text,
    /// A whole number.
    WholeNumber,
    /// A number with decimals.
    Number,
    /// True or false.
    Truth,
    /// A date, a time of day or both.
    DateOrTime,
    /// A list.
    List,
    /// A list of a certain count of numbers.
    ListOfNumbers(u32),
    /// A table of fields with their values; in JSON an object.
    Table,
    /// JSON's null.
    Nothing,
}
