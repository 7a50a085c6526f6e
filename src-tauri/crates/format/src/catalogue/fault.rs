//! What can be wrong in an exercise file or a language file beside it, as facts and as plain English for the terminal.

use super::language::MESSAGES;
use core::fmt;
use exercises::catalogue::bounds::{OutOfRange, Unit};
use exercises::catalogue::{IdFault, Joint, Lang};

/// One fault of one file: where, and what.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Fault {
    /// The name under which the file was given.
    pub file: String,
    /// The line, counted from 1.
    pub line: usize,
    /// The field, as in `ladder 1, rung 2, id`, or the id of a message; empty for the file as a whole.
    pub field: String,
    /// What is wrong there.
    pub kind: FaultKind,
}

/// What is wrong at one place of an exercise file.
#[derive(Debug, Clone, PartialEq, Eq)]
#[non_exhaustive]
pub enum FaultKind {
    /// The file is larger than what is read at all.
    TooLarge {
        /// Its size in bytes.
        bytes: usize,
        /// The largest size in bytes.
        max: usize,
    },
    /// The file is not TOML.
    NotToml {
        /// What the TOML parser says.
        message: String,
    },
    /// The language file is not Fluent.
    NotFluent {
        /// What the Fluent parser says.
        message: String,
    },
    /// A field that must be there is not.
    Missing,
    /// A field that nobody knows.
    Unknown {
        /// The fields that may stand there.
        allowed: Vec<&'static str>,
    },
    /// A value of another type.
    WrongType {
        /// What belongs there.
        expected: &'static str,
        /// What stands there.
        found: &'static str,
    },
    /// A word that is not one of the allowed words.
    NotOneOf {
        /// The word that stands there.
        found: String,
        /// The words allowed.
        allowed: Vec<&'static str>,
    },
    /// A number, a length or a count outside its range.
    OutOfRange(OutOfRange),
    /// An angle that no body reaches.
    Angle {
        /// The joint.
        joint: Joint,
        /// The angle in degrees.
        degrees: i64,
    },
    /// A joint that nobody has.
    NoSuchJoint {
        /// Its name in the file.
        found: String,
    },
    /// An identifier that cannot be one.
    BadId(IdFault),
    /// An id that stands twice in the exercise or in a language file, a word that stands twice in its list, or a language that
    /// has two files.
    Duplicate {
        /// The id or the word.
        id: String,
    },
    /// A language in which something is not written.
    MissingLanguage {
        /// The language.
        lang: Lang,
    },
    /// A message that must be in a language file is not.
    MissingMessage,
    /// A message that nobody knows.
    UnknownMessage,
    /// A message for a rung that the exercise does not have.
    NoSuchRung {
        /// The id of a rung in the message's id.
        found: String,
        /// The rungs of the exercise.
        rungs: Vec<String>,
    },
    /// A message of a numbered list whose predecessor is not there.
    Gap {
        /// The first message that is not there.
        missing: String,
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
    /// A list that has another number of lines than in the first language.
    ListsDiffer {
        /// Lines here.
        here: usize,
        /// Lines in the first language.
        first: usize,
    },
    /// A text with a character that cannot be shown (control characters, line ends, direction marks).
    UnprintableText {
        /// The character.
        character: char,
    },
    /// A balance exercise whose rung does not say on what it is stood, or with the eyes open or closed.
    BalanceNeeds,
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}, line {}: ", self.file, self.line)?;
        if !self.field.is_empty() {
            write!(f, "{}: ", self.field)?;
        }
        self.kind.fmt(f)
    }
}

impl core::error::Error for Fault {}

impl fmt::Display for FaultKind {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            FaultKind::TooLarge { bytes, max } => {
                write!(f, "the file has {bytes} bytes; at most {max} are read")
            }
            FaultKind::NotToml { message } => write!(f, "not TOML: {message}"),
            FaultKind::NotFluent { message } => write!(f, "not Fluent: {message}"),
            FaultKind::Missing => f.write_str("this field is missing"),
            FaultKind::Unknown { allowed } => write!(f, "no such field; allowed here: {}", allowed.join(", ")),
            FaultKind::WrongType { expected, found } => write!(f, "{found} stands here; {expected} belongs here"),
            FaultKind::NotOneOf { found, allowed } => {
                write!(f, "\"{found}\" is not known; allowed here: {}", allowed.join(", "))
            }
            FaultKind::OutOfRange(out) => out_of_range(out, f),
            FaultKind::Angle { joint, degrees } => {
                let (min, max) = joint.range();
                write!(f, "{degrees} degrees are out of reach; {} takes {min} to {max}", joint.name())
            }
            FaultKind::NoSuchJoint { found } => {
                let names: Vec<_> = Joint::ALL.iter().map(|joint| joint.name()).collect();
                write!(f, "\"{found}\" is no joint; the joints are {}", names.join(", "))
            }
            FaultKind::BadId(fault) => write!(f, "{fault}; an id is 1 to 32 small letters, digits and single hyphens"),
            FaultKind::Duplicate { id } => write!(f, "\"{id}\" stands twice; once is enough"),
            FaultKind::MissingLanguage { lang } => {
                write!(f, "not written in \"{}\"; every exercise is written in {}", lang.code(), languages())
            }
            FaultKind::MissingMessage => f.write_str("this message is missing"),
            FaultKind::UnknownMessage => {
                write!(
                    f,
                    "no such message; allowed here: {}, with N from 1 and the id of a rung for RUNG",
                    MESSAGES.join(", ")
                )
            }
            FaultKind::NoSuchRung { found, rungs } => {
                write!(f, "the exercise has no rung \"{found}\"; its rungs are {}", rungs.join(", "))
            }
            FaultKind::Gap { missing } => {
                write!(f, "\"{missing}\" is missing before it; a list is numbered from 1 without a gap")
            }
            FaultKind::TextsTwice => {
                f.write_str("texts stand here and in the language files beside this file; keep them in one place")
            }
            FaultKind::NoExercise { expected } => write!(f, "it belongs to {expected}, which is not in this folder"),
            FaultKind::NoLanguage => {
                let endings = Lang::ALL.map(|lang| format!("\".{}.ftl\"", lang.code())).join(" or ");
                write!(f, "the name of a language file is that of its exercise file, with {endings} in place of \".toml\"")
            }
            FaultKind::ListsDiffer { here, first } => {
                write!(f, "{here} lines here, but {first} in the first language; both say the same")
            }
            FaultKind::UnprintableText { character } => {
                write!(
                    f,
                    "the character U+{:04X} cannot be shown; plain text on one line belongs here",
                    u32::from(*character)
                )
            }
            FaultKind::BalanceNeeds => {
                f.write_str("every rung of a balance exercise names its surface and whether the eyes are open or closed")
            }
        }
    }
}

fn languages() -> String {
    Lang::ALL.map(|lang| format!("\"{}\"", lang.code())).join(" and ")
}

fn out_of_range(out: &OutOfRange, f: &mut fmt::Formatter<'_>) -> fmt::Result {
    let bound = out.quantity.bound();
    let unit = match bound.unit {
        Unit::Count => "",
        Unit::Seconds => " seconds",
        Unit::Characters => " characters",
        Unit::Centimetres => " centimetres",
        Unit::Degrees => " degrees",
    };
    write!(f, "{} of {}{unit}; allowed are {} to {}{unit}", bound.word, out.value, bound.min, bound.max)
}
