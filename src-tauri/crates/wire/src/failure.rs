//! Why an action was refused: a code and its facts. `words` makes two texts from it: what is wrong, and what to do.

use crate::handing_over::HandOverFault;
use chrono::NaiveDate;
use exercises::alarm::Trouble;
use exercises::file_fault::FileFault;
use exercises::plan::check::Problem;
use exercises::visit::VisitFault;
use serde::{Deserialize, Serialize};

/// Why an action was refused. When one of these is returned, nothing was changed or half-written.
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
    /// The card belongs to a plan that is known from another clinic.
    CardOtherClinic,
    /// The same or a newer revision was already taken.
    CardOld {
        /// Its revision.
        revision: u16,
        /// The revision in force.
        have: u16,
    },
    /// The card's plan cannot be followed here.
    CardRefused(Vec<Problem>),
    /// A card is shown as several codes, and some of them were not read yet.
    CardPart {
        /// Number of codes that were read.
        have: u8,
        /// Number of codes of the card.
        of: u8,
        /// The numbers of the missing codes, from 1, ascending.
        missing: Vec<u8>,
    },
    /// An exercise of the clinic's own on the card cannot be read by this program.
    CardOwnUnfit,
    /// The picture contains no readable QR code.
    NoCode,
    /// The file is not a readable picture.
    NotAPicture,
    /// The picture has more pixels than are decoded.
    PictureTooBig {
        /// The limit, in millions of pixels.
        most: u16,
    },
    /// More files were given at once than are received in one go.
    TooManyFiles {
        /// The limit.
        most: u32,
    },
    /// The file is larger than allowed.
    FileTooBig {
        /// Its path or name.
        file: String,
        /// The limit, in bytes.
        most: u64,
    },
    /// The file is not a summary.
    SummaryForeign,
    /// The summary was changed or truncated.
    SummaryDamaged,
    /// The summary is sealed for another clinic.
    SummaryOtherClinic,
    /// The summary belongs to no plan of this clinic.
    SummaryUnknownPlan,
    /// The summary was made by somebody without the card.
    SummaryNotFromCard,
    /// A different summary with the same number came from that device before: its data folder was restored from a copy.
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
        /// The limit for the sealed summary, in bytes.
        most: u32,
    },
    /// Some of the codes of a summary are missing.
    FramesMissing {
        /// Number of codes that were received.
        have: u8,
        /// Number of codes of the summary.
        of: u8,
        /// The numbers of the missing codes, from 1, ascending.
        missing: Vec<u8>,
    },
    /// A code of a summary is damaged, or contradicts another code of the same summary.
    FrameDamaged,
    /// The picture contains no readable code of a summary.
    NoSummaryCode,
    /// A plan card was given instead of a summary.
    PlanCardNotSummary,
    /// There is no such entry, or its kind cannot be corrected.
    NoSuchEntry {
        /// Its number.
        entry: u32,
    },
    /// The entry cannot be corrected in this way.
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
    /// No data folder was named, and the system names none.
    HomeUnnamed,
    /// There is no data folder at this path, and none is to be created.
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
    /// Others can read or change what is in the data folder.
    HomeOpenToOthers {
        /// Its path.
        home: String,
    },
    /// The file is not a backup of this program, or it is damaged.
    NotABackup {
        /// Its path.
        file: String,
    },
    /// There is a file in the place of the data folder.
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
    /// The folder for saved files is not empty.
    FolderOccupied {
        /// Its path.
        folder: String,
    },
    /// The data folder is on the other side.
    OtherRole,
    /// The command only makes sense for a real plan, and the person is looking around in a sample.
    OnlySample,
    /// No side was chosen yet.
    NoRole,
    /// The passphrase is wrong.
    WrongPassphrase,
    /// No passphrase was given, and it is not possible to ask for one.
    PassphraseMissing,
    /// The passphrase is too short.
    WeakPassphrase {
        /// The least number of characters.
        least: u8,
    },
    /// The passphrase is long enough, but easy to guess.
    GuessablePassphrase,
    /// A new passphrase was typed twice, and not in the same way.
    PassphrasesDiffer,
    /// Other users of this computer can read the file, which contains a secret.
    FileExposed {
        /// Its path.
        file: String,
    },
    /// The file or picture does not contain a clinic's saved keys.
    NotSavedKeys,
    /// The saved keys belong to another clinic than this data folder.
    OtherClinicsKeys,
    /// The clinic's keys were renewed as often as they can be.
    KeysRenewedTooOften {
        /// How often.
        most: u8,
    },
    /// Renewing the clinic's keys was not confirmed.
    RenewalNotConfirmed,
    /// More former keys have signed cards of the patient's plan than a card can name.
    PlanOfManyKeys {
        /// The patient's code.
        code: String,
        /// How many a card can name.
        most: u8,
    },
    /// A card of the patient's plan was signed with keys that the clinic no longer has.
    PlanOfMissingKeys {
        /// The patient's code.
        code: String,
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
    /// What was given as the clinic's telephone number cannot be one.
    PhoneUnfit {
        /// The largest number of characters.
        most: u16,
    },
    /// The encrypted store is locked.
    ClinicLocked,
    /// The patient's window is locked.
    ScreenLocked,
    /// Another code for the screen was typed than the right one.
    ScreenCodeWrong,
    /// A new code for the screen is too short.
    ScreenCodeShort {
        /// The least length in characters.
        least: u8,
    },
    /// There is no patient with this code.
    NoSuchPatient {
        /// The code.
        code: String,
    },
    /// There are several clinicians, and no name was given.
    ClinicianNameMissing,
    /// No clinician has this name.
    NoSuchClinician {
        /// The name.
        name: String,
    },
    /// A clinician has this name already.
    ClinicianNameTaken {
        /// The name.
        name: String,
    },
    /// There are as many clinicians as there can be.
    TooManyClinicians {
        /// How many that are.
        most: u8,
    },
    /// The only clinician cannot be removed.
    LastClinician,
    /// Nobody removes themselves.
    ClinicianIsYou,
    /// The patient's case is closed.
    CaseClosed {
        /// The code.
        code: String,
    },
    /// The patient's case is open.
    CaseOpen {
        /// The code.
        code: String,
    },
    /// Why a case is closed has to be said in words.
    CaseWordsMissing,
    /// The case was closed as often as it can be.
    CaseClosedTooOften {
        /// How often that is.
        most: u8,
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
    /// The exercises of the clinic's own in a plan are together too large for a card.
    PlanTooLarge,
    /// The clinic has no exercise of its own with this name.
    NoSuchOwn {
        /// The name.
        name: String,
    },
    /// The clinic has as many exercises of its own, or unfinished ones, as it can.
    TooManyOwn {
        /// The limit.
        most: u16,
    },
    /// The clinic has no set of this name.
    NoSuchSet {
        /// The name.
        name: String,
    },
    /// A set cannot have this name.
    SetNameUnfit {
        /// The most characters.
        most: u16,
    },
    /// The items cannot be a set.
    SetRefused(Vec<Problem>),
    /// The clinic has as many sets as it can.
    TooManySets {
        /// The limit.
        most: u16,
    },
    /// Something cannot be noted as found at a visit.
    VisitUnfit(VisitFault),
    /// What was to be corrected was corrected already, or is not there.
    VisitChanged,
    /// There is no screening yet that could be repeated.
    VisitNotScreened,
    /// A patient's visits have as many entries as they can.
    TooManyFindings {
        /// The limit.
        most: u16,
    },
    /// The card is issued, but its files could not be written.
    CardNotSaved {
        /// The patient's code.
        code: String,
        /// The card's revision.
        revision: u16,
        /// The folder in which they were to be written.
        folder: String,
    },
    /// No card was issued to the patient yet.
    NoCardIssued {
        /// The patient's code.
        code: String,
    },
    /// A day of a diary on paper that is before the plan, after it, or to come.
    DiaryDay {
        /// The day.
        day: NaiveDate,
    },
    /// A day of a diary on paper names something that the plan does not have, or too many sessions.
    DiaryNumber {
        /// The day.
        day: NaiveDate,
        /// The most sessions that a day can have of one exercise.
        most: u8,
    },
    /// There is no plan and no visit, of a patient or of all of them, so that there is nothing to export.
    NothingToExport,
    /// Nothing was handed over to a server of records, or it is not known.
    HandOver(HandOverFault),
    /// A report was asked for without a patient's code or without a file.
    ReportOfOne,
    /// No card of this revision was issued to the patient.
    NoSuchRevision {
        /// The patient's code.
        code: String,
        /// The revision.
        revision: u16,
    },
    /// A patient's record is damaged.
    RecordDamaged {
        /// The patient's code.
        code: String,
    },
    /// What was asked for was not found, but some records are damaged, and it may be in one of them.
    RecordsDamaged {
        /// Number of damaged records.
        n: u16,
    },
    /// Removing a patient was not confirmed.
    RemovalNotConfirmed {
        /// The patient's code.
        code: String,
    },
    /// No summary of the patient came from this device.
    NoSuchDevice {
        /// The patient's code.
        code: String,
        /// The device's log.
        device: String,
    },
    /// A card has the name of a clinic that is known, but is signed with another key.
    ClinicNameKnown {
        /// The clinic's name.
        clinic: String,
        /// The card's fingerprint.
        fingerprint: String,
    },
    /// There is no plan yet.
    NoPlan,
    /// There are several plans; one has to be named.
    WhichPlan,
    /// The plan has no such item.
    NoSuchItem,
    /// The slot does not exist or is already filled.
    NoSuchSlot,
    /// An alarm pauses the item.
    #[serde(rename = "HeldBack")]
    Paused(Trouble),
    /// The period contains no day.
    EmptyPeriod,
    /// A number is out of its range.
    OutOfRange {
        /// The least.
        least: i64,
        /// The most.
        most: i64,
    },
    /// There are too many quiet times, or one of them has no valid end.
    QuietUnfit {
        /// The largest number of quiet times.
        most: u8,
    },
    /// No slot is due any more, or an alarm pauses all of them.
    NothingAhead,
    /// Erasing everything was not confirmed.
    NotConfirmed {
        /// The data folder's path.
        home: String,
    },
    /// The system refused to change whether the program starts at login.
    AtLoginRefused {
        /// The system's message.
        detail: String,
    },
    /// A text has too many characters, or one that cannot be displayed.
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
        /// Details for an error report.
        detail: String,
    },
}
