//! Faults in a file that a person wrote, as facts: a plan, a history, a clinic's table, a table of numbers.
//!
//! The readers of `format` return these facts, a failure of `wire` contains them, and `words` makes a text from them. A text found
//! in the file is shortened, and has no character that cannot be displayed.

use crate::catalogue::{IdFault, Lang};
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
    /// A text that is too short or too long.
    TextLength {
        /// The fewest characters allowed.
        least: i64,
        /// The most characters allowed.
        most: i64,
        /// Its characters.
        found: i64,
    },
    /// A list that is too short or too long.
    ListLength {
        /// The fewest entries allowed.
        least: i64,
        /// The most entries allowed.
        most: i64,
        /// Its entries.
        found: i64,
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
    /// What only the files of an exercise can have wrong.
    Exercise(ExerciseFault),
    /// A fault that only a plan file can have.
    Plan(PlanFault),
    /// A fault that only a history can have.
    Runs(RunsFault),
    /// A fault that only a clinic's table can have.
    Norms(NormsFault),
    /// A fault that only a table of numbers can have.
    Csv(CsvFault),
}

/// What is wrong in the file of an exercise, or in a language file beside it.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum ExerciseFault {
    /// A language file that is not Fluent.
    NotFluent {
        /// The parser's own message, in English.
        detail: String,
    },
    /// A placeable of Fluent that is not text in quotation marks.
    Placeable,
    /// An attribute of Fluent.
    Attribute,
    /// A term of Fluent.
    Term,
    /// A message that must be in a language file is not.
    MissingMessage,
    /// A message that does not exist.
    UnknownMessage {
        /// The messages that exist; `N` is a number from 1, `RUNG` the id of a level.
        allowed: Vec<String>,
    },
    /// A message for a level that the exercise does not have.
    NoSuchLevel {
        /// The id of a level in the message's id.
        found: String,
        /// The ids of the exercise's levels.
        levels: Vec<String>,
    },
    /// A message of a numbered list whose predecessor is not there.
    Gap {
        /// The first message that is not there.
        missing: String,
    },
    /// A list that has another number of lines than in the first language.
    ListsDiffer {
        /// Lines here.
        here: u32,
        /// Lines in the first language.
        first: u32,
    },
    /// A language in which something is not written.
    MissingLanguage {
        /// The language.
        lang: Lang,
    },
    /// Texts in the TOML file of an exercise that has language files beside it.
    TextsTwice,
    /// A language file without the exercise file that it belongs to.
    NoExercise {
        /// The name of the exercise file.
        expected: String,
    },
    /// A language file whose name does not say in which language it is.
    NoLanguage,
    /// A text with a character that cannot be shown: control characters, line ends, direction marks.
    Unprintable {
        /// The character.
        character: char,
    },
    /// A balance exercise whose level does not say on what it is stood, or with the eyes open or closed.
    BalanceNeeds,
    /// A level that is done on other sides than the ones before it on its ladder.
    SidesOfLadder,
    /// A side that the kind of the exercise cannot have: trials on one leg need sides, those on both feet have none.
    SidesOfKind,
    /// The error of a count, of an exercise whose result is no count.
    ErrorOfCount,
    /// Step rules of a test.
    StepOfTest,
    /// An exercise whose id is that of another file in the folder.
    SameId {
        /// The id.
        id: String,
    },
    /// An own exercise whose id begins as only the program's ids for own exercises do.
    ReservedId,
    /// An own exercise whose id has too many characters.
    OwnIdTooLong {
        /// The most characters.
        most: u32,
    },
    /// An own exercise with the id of one that ships with the program.
    ShippedId {
        /// The id.
        id: String,
    },
    /// An own exercise that differs from what the clinic has, under a revision that is not higher.
    OldRevision {
        /// Its revision.
        found: u16,
        /// The highest that the clinic has or that is on a card.
        have: u16,
    },
}

/// A fault in a plan file.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum PlanFault {
    /// Neither a word for several days of the week nor a list of them.
    Days,
    /// A text that is not the name of an alarm.
    AlarmName,
    /// A weight that is no whole number of quarters of a kilogram, or is none.
    Weight,
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
