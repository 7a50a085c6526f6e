//! Why something was refused: a code and its facts. `words` makes two texts of it: what is wrong, and what to do.

use exercises::alarm::Trouble;
use exercises::file_fault::FileFault;
use exercises::plan::check::Problem;
use serde::{Deserialize, Serialize};

/// Why something was refused. Nothing was changed or half-written when one of these comes back.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum Failure {
    /// The text or code is not a plan card.
    CardForeign,
    /// A character of the card is wrong.
    CardDamaged,
    /// A part of the card is missing.
    CardCut,
    /// The card is of a newer version than this program reads.
    CardNewer {
        /// Its version.
        found: u8,
        /// The newest that this program reads.
        known: u8,
    },
    /// The card is larger than any card can be.
    CardTooBig,
    /// The card is for a plan known from another clinic.
    CardOtherClinic,
    /// The same or a newer revision was taken already.
    CardOld {
        /// Its revision.
        revision: u16,
        /// The revision in force.
        have: u16,
    },
    /// The card's plan cannot be followed here.
    CardRefused(Vec<Problem>),
    /// The picture holds no QR code that can be read.
    NoCode,
    /// The file is no picture that can be read.
    NotAPicture,
    /// The file is larger than allowed.
    FileTooBig {
        /// Its path or name.
        file: String,
        /// The most bytes allowed.
        most: u64,
    },
    /// The file is not a summary.
    SummaryForeign,
    /// The summary was changed or cut.
    SummaryDamaged,
    /// The summary is sealed for another clinic.
    SummaryOtherClinic,
    /// The summary belongs to no plan of this clinic.
    SummaryUnknownPlan,
    /// The summary was not made by somebody who holds the card.
    SummaryNotFromCard,
    /// Another summary of the same number came from that device before: its data folder was put back from a copy.
    SummaryNumberTaken,
    /// The summary is of a newer version than this program reads.
    SummaryNewer {
        /// Its version.
        found: u8,
        /// The newest that this program reads.
        known: u8,
    },
    /// The summary is too long to be shown as codes.
    FramesTooMany {
        /// The most bytes, sealed.
        most: u32,
    },
    /// Of the codes that make a summary some have not come.
    FramesMissing {
        /// So many came.
        have: u8,
        /// Of so many.
        of: u8,
        /// Which ones did not, from 1, ascending.
        missing: Vec<u8>,
    },
    /// A code of a summary is damaged, or says otherwise than another one of the same summary.
    FrameDamaged,
    /// The picture shows no code of a summary that can be read.
    NoSummaryCode,
    /// A plan card came where a summary was expected.
    PlanCardNotSummary,
    /// There is no such entry, or it is of a kind that cannot be put right.
    NoSuchEntry {
        /// Its number.
        entry: u32,
    },
    /// The entry cannot be put right in that way.
    CorrectionUnfit,
    /// There is no such file.
    FileMissing {
        /// Its path.
        file: String,
    },
    /// The file cannot be read.
    FileUnreadable {
        /// Its path.
        file: String,
    },
    /// The file cannot be written.
    FileUnwritable {
        /// Its path.
        file: String,
    },
    /// There is no data folder there, and nothing is to be made.
    HomeMissing {
        /// Its path.
        home: String,
    },
    /// The data folder cannot be written to.
    HomeReadOnly {
        /// Its path.
        home: String,
    },
    /// The disk is full.
    HomeFull {
        /// The folder's path.
        home: String,
    },
    /// The disk reported an error, or a limit on its use was reached.
    HomeDisk {
        /// The folder's path.
        home: String,
    },
    /// A file stands where the data folder should be.
    HomeIsFile {
        /// Its path.
        home: String,
    },
    /// The data folder was made by a newer version of this program.
    HomeNewer {
        /// The folder's path.
        home: String,
    },
    /// Another copy of the program has the data folder open.
    HomeInUse {
        /// The folder's path.
        home: String,
    },
    /// The data folder's database is damaged.
    HomeDamaged {
        /// The folder's path.
        home: String,
    },
    /// The data folder's database belongs to another program.
    HomeForeign {
        /// The folder's path.
        home: String,
    },
    /// The folder for what is saved holds something already.
    FolderOccupied {
        /// Its path.
        folder: String,
    },
    /// The data folder is on the other side.
    OtherRole,
    /// This belongs to a plan in earnest, and the person looks around in a sample.
    OnlySample,
    /// No side was chosen yet.
    NoRole,
    /// The passphrase is wrong.
    WrongPassphrase,
    /// No passphrase was given, and it cannot be asked for.
    PassphraseMissing,
    /// The passphrase is too short.
    WeakPassphrase {
        /// The least number of characters.
        least: u8,
    },
    /// The clinic's key file is damaged.
    KeysDamaged,
    /// There are no keys yet.
    ClinicNotStarted,
    /// The keys exist already.
    ClinicStarted,
    /// The clinic's name is empty or too long.
    ClinicNameLength {
        /// The most characters.
        most: u16,
    },
    /// The clinic's name has a character that cannot be shown.
    ClinicNameUnprintable,
    /// The sealed store is locked.
    ClinicLocked,
    /// There is no patient under that code.
    NoSuchPatient {
        /// The code.
        code: String,
    },
    /// The code is taken.
    CodeTaken {
        /// The code.
        code: String,
    },
    /// The code is not 1 to 12 letters, digits and hyphens.
    CodeBad,
    /// The plan cannot be issued.
    PlanRefused(Vec<Problem>),
    /// There is no plan yet.
    NoPlan,
    /// There are several plans; one has to be named.
    WhichPlan,
    /// The plan has no such item.
    NoSuchItem,
    /// The slot does not exist or is already filled.
    NoSuchSlot,
    /// An alarm holds the item back.
    #[serde(rename = "HeldBack")]
    Paused(Trouble),
    /// The period holds no day.
    EmptyPeriod,
    /// A number is out of its range.
    OutOfRange {
        /// The least.
        least: i64,
        /// The most.
        most: i64,
    },
    /// Quiet times are too many, or one has no end of its own.
    QuietUnfit {
        /// The most of them.
        most: u8,
    },
    /// Nothing falls due any more, or an alarm pauses all of it.
    NothingAhead,
    /// Everything would be erased, and nobody said yes to that.
    NotConfirmed {
        /// The data folder's path.
        home: String,
    },
    /// The system refused to change what opens at login.
    AtLoginRefused {
        /// What it said.
        detail: String,
    },
    /// A text has too many characters, or one that cannot be shown.
    TextUnfit {
        /// The most characters.
        most: u16,
    },
    /// A text file that a person wrote cannot be understood.
    NotUnderstood {
        /// The file.
        file: String,
        /// What is wrong in it, and where.
        fault: FileFault,
    },
    /// A fault of the program itself.
    Internal {
        /// For the report.
        detail: String,
    },
}
