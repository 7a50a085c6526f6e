//! What can be wrong in an exercise file, as facts and as plain English for the terminal.

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
    /// The field, as in `ladder 1, rung 2, id`; empty for the file as a whole.
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
    /// A word that is none of those allowed.
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
    /// An id that stands twice in the exercise, or a word that stands twice in its list.
    Duplicate {
        /// The id or the word.
        id: String,
    },
    /// A language in which something is not written.
    MissingLanguage {
        /// The language.
        lang: Lang,
    },
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
