//! Failures as two texts: what is wrong, and what to do.

mod file_fault;
mod hand_over;
mod problem;

use crate::{Key, Words};
use exercises::file_fault::FileFault;
use wire::Failure;

/// A failure as a person reads it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Refusal {
    /// What is wrong, in one sentence.
    pub fault: String,
    /// What to do, in one sentence.
    pub advice: String,
}

impl Words {
    /// What is wrong and what to do.
    pub fn failure(self, failure: &Failure) -> Refusal {
        let text = |key| self.text(key).to_owned();
        let (fault, advice) = match failure {
            Failure::CardForeign => (text(Key::FailureCardForeign), Key::FailureCardForeignAdvice),
            Failure::CardDamaged => (text(Key::FailureCardDamaged), Key::FailureCardDamagedAdvice),
            Failure::CardCut => (text(Key::FailureCardCut), Key::FailureCardCutAdvice),
            Failure::CardNewer { found, known } => (self.failure_card_newer(found, known), Key::FailureCardNewerAdvice),
            Failure::CardTooBig => (text(Key::FailureCardTooBig), Key::FailureCardTooBigAdvice),
            Failure::CardOtherClinic => (text(Key::FailureCardOtherClinic), Key::FailureCardOtherClinicAdvice),
            Failure::CardOld { revision, have } => (self.failure_card_old(revision, have), Key::FailureCardOldAdvice),
            Failure::CardRefused(problems) => {
                (self.failure_card_refused(&self.problems(problems)), Key::FailureCardRefusedAdvice)
            }
            Failure::CardPart { have, of, missing } => {
                (self.failure_card_part(of, have, &self.numbers(missing)), Key::FailureCardPartAdvice)
            }
            Failure::CardOwnUnfit => (text(Key::FailureCardOwnUnfit), Key::FailureCardOwnUnfitAdvice),
            Failure::NoCode => (text(Key::FailureNoCode), Key::FailureNoCodeAdvice),
            Failure::NotAPicture => (text(Key::FailureNotAPicture), Key::FailureNotAPictureAdvice),
            Failure::PictureTooBig { most } => (self.failure_picture_too_big(most), Key::FailurePictureTooBigAdvice),
            Failure::TooManyFiles { most } => (self.failure_too_many_files(most), Key::FailureTooManyFilesAdvice),
            Failure::FileTooBig { file, most } => {
                (self.failure_file_too_big(file, &self.size(*most)), Key::FailureFileTooBigAdvice)
            }
            Failure::PlanCardNotSummary => (text(Key::FailurePlanCardNotSummary), Key::FailurePlanCardNotSummaryAdvice),
            Failure::SummaryForeign => (text(Key::FailureSummaryForeign), Key::FailureSummaryForeignAdvice),
            Failure::SummaryDamaged => (text(Key::FailureSummaryDamaged), Key::FailureSummaryDamagedAdvice),
            Failure::SummaryOtherClinic => (text(Key::FailureSummaryOtherClinic), Key::FailureSummaryOtherClinicAdvice),
            Failure::SummaryUnknownPlan => (text(Key::FailureSummaryUnknownPlan), Key::FailureSummaryUnknownPlanAdvice),
            Failure::SummaryNotFromCard => (text(Key::FailureSummaryNotFromCard), Key::FailureSummaryNotFromCardAdvice),
            Failure::SummaryNumberTaken => (text(Key::FailureSummaryNumberTaken), Key::FailureSummaryNumberTakenAdvice),
            Failure::SummaryNewer { found, known } => {
                (self.failure_summary_newer(found, known), Key::FailureSummaryNewerAdvice)
            }
            Failure::FramesTooMany { most } => (self.failure_frames_too_many(most), Key::FailureFramesTooManyAdvice),
            Failure::FramesMissing { have, of, missing } => {
                (self.failure_frames_missing(of, have, &self.numbers(missing)), Key::FailureFramesMissingAdvice)
            }
            Failure::FrameDamaged => (text(Key::FailureFrameDamaged), Key::FailureFrameDamagedAdvice),
            Failure::NoSummaryCode => (text(Key::FailureNoSummaryCode), Key::FailureNoSummaryCodeAdvice),
            Failure::NoSuchEntry { entry } => (self.failure_no_such_entry(entry), Key::FailureNoSuchEntryAdvice),
            Failure::CorrectionUnfit => (text(Key::FailureCorrectionDoesNotFit), Key::FailureCorrectionDoesNotFitAdvice),
            Failure::FileMissing { file } => (self.failure_file_missing(file), Key::FailureFileMissingAdvice),
            Failure::FileUnreadable { file } => (self.failure_file_unreadable(file), Key::FailureFileUnreadableAdvice),
            Failure::FileUnwritable { file } => (self.failure_file_unwritable(file), Key::FailureFileUnwritableAdvice),
            Failure::HomeUnnamed => (text(Key::FailureHomeUnnamed), Key::FailureHomeUnnamedAdvice),
            Failure::HomeMissing { home } => (self.failure_home_missing(home), Key::FailureHomeMissingAdvice),
            Failure::HomeReadOnly { home } => (self.failure_home_read_only(home), Key::FailureHomeReadOnlyAdvice),
            Failure::HomeFull { home } => (self.failure_home_full(home), Key::FailureHomeFullAdvice),
            Failure::HomeDisk { home } => (self.failure_home_disk(home), Key::FailureHomeDiskAdvice),
            Failure::HomeOpenToOthers { home } => {
                (self.failure_home_open_to_others(home), Key::FailureHomeOpenToOthersAdvice)
            }
            Failure::NotABackup { file } => (self.failure_not_a_backup(file), Key::FailureNotABackupAdvice),
            Failure::HomeIsFile { home } => (self.failure_home_is_file(home), Key::FailureHomeIsFileAdvice),
            Failure::HomeNewer { home } => (self.failure_home_newer(home), Key::FailureHomeNewerAdvice),
            Failure::HomeInUse { home } => (self.failure_home_in_use(home), Key::FailureHomeInUseAdvice),
            Failure::HomeDamaged { home } => (self.failure_home_damaged(home), Key::FailureHomeDamagedAdvice),
            Failure::HomeForeign { home } => (self.failure_home_foreign(home), Key::FailureHomeForeignAdvice),
            Failure::OtherRole => (text(Key::FailureOtherRole), Key::FailureOtherRoleAdvice),
            Failure::OnlySample => (text(Key::FailureOnlySample), Key::FailureOnlySampleAdvice),
            Failure::NoRole => (text(Key::FailureNoRole), Key::FailureNoRoleAdvice),
            Failure::WrongPassphrase => (text(Key::FailureWrongPassphrase), Key::FailureWrongPassphraseAdvice),
            Failure::PassphraseMissing => (text(Key::FailurePassphraseMissing), Key::FailurePassphraseMissingAdvice),
            Failure::WeakPassphrase { least } => (self.failure_weak_passphrase(least), Key::FailureWeakPassphraseAdvice),
            Failure::GuessablePassphrase => (text(Key::FailureGuessablePassphrase), Key::FailureGuessablePassphraseAdvice),
            Failure::PassphrasesDiffer => (text(Key::FailurePassphrasesDiffer), Key::FailurePassphrasesDifferAdvice),
            Failure::FileExposed { file } => (self.failure_file_exposed(file), Key::FailureFileExposedAdvice),
            Failure::NotSavedKeys => (text(Key::FailureNotSavedKeys), Key::FailureNotSavedKeysAdvice),
            Failure::OtherClinicsKeys => (text(Key::FailureOtherClinicsKeys), Key::FailureOtherClinicsKeysAdvice),
            Failure::KeysRenewedTooOften { most } => {
                (self.failure_keys_renewed_too_often(most), Key::FailureKeysRenewedTooOftenAdvice)
            }
            Failure::RenewalNotConfirmed => (text(Key::FailureRenewalNotConfirmed), Key::FailureRenewalNotConfirmedAdvice),
            Failure::PlanOfManyKeys { code, most } => {
                (self.failure_plan_of_many_keys(code, most), Key::FailurePlanOfManyKeysAdvice)
            }
            Failure::PlanOfMissingKeys { code } => {
                (self.failure_plan_of_missing_keys(code), Key::FailurePlanOfMissingKeysAdvice)
            }
            Failure::KeysDamaged => (text(Key::FailureKeysDamaged), Key::FailureKeysDamagedAdvice),
            Failure::ClinicNotStarted => (text(Key::FailureClinicNotStarted), Key::FailureClinicNotStartedAdvice),
            Failure::ClinicStarted => (text(Key::FailureClinicStarted), Key::FailureClinicStartedAdvice),
            Failure::ClinicNameLength { most } => {
                (self.failure_clinic_name_length(most), Key::FailureClinicNameLengthAdvice)
            }
            Failure::PhoneUnfit { most } => (self.failure_phone_unfit(*most), Key::FailurePhoneUnfitAdvice),
            Failure::ClinicNameUnprintable => {
                (text(Key::FailureClinicNameUnprintable), Key::FailureClinicNameUnprintableAdvice)
            }
            Failure::ClinicLocked => (text(Key::FailureClinicLocked), Key::FailureClinicLockedAdvice),
            Failure::ScreenLocked => (text(Key::FailureScreenLocked), Key::FailureScreenLockedAdvice),
            Failure::ScreenCodeWrong => (text(Key::FailureScreenCodeWrong), Key::FailureScreenCodeWrongAdvice),
            Failure::ScreenCodeShort { least } => {
                (self.failure_screen_code_short(*least), Key::FailureScreenCodeShortAdvice)
            }
            Failure::NoSuchPatient { code } => (self.failure_no_such_patient(code), Key::FailureNoSuchPatientAdvice),
            Failure::ClinicianNameMissing => {
                (text(Key::FailureClinicianNameMissing), Key::FailureClinicianNameMissingAdvice)
            }
            Failure::NoSuchClinician { name } => (self.failure_no_such_clinician(name), Key::FailureNoSuchClinicianAdvice),
            Failure::ClinicianNameTaken { name } => {
                (self.failure_clinician_name_taken(name), Key::FailureClinicianNameTakenAdvice)
            }
            Failure::TooManyClinicians { most } => {
                (self.failure_too_many_clinicians(*most), Key::FailureTooManyCliniciansAdvice)
            }
            Failure::LastClinician => (text(Key::FailureLastClinician), Key::FailureLastClinicianAdvice),
            Failure::ClinicianIsYou => (text(Key::FailureClinicianIsYou), Key::FailureClinicianIsYouAdvice),
            Failure::CaseClosed { code } => (self.failure_case_closed(code), Key::FailureCaseClosedAdvice),
            Failure::CaseOpen { code } => (self.failure_case_open(code), Key::FailureCaseOpenAdvice),
            Failure::CaseWordsMissing => (text(Key::FailureCaseWordsMissing), Key::FailureCaseWordsMissingAdvice),
            Failure::CaseClosedTooOften { most } => {
                (self.failure_case_closed_too_often(*most), Key::FailureCaseClosedTooOftenAdvice)
            }
            Failure::CodeTaken { code } => (self.failure_code_taken(code), Key::FailureCodeTakenAdvice),
            Failure::CodeBad => (text(Key::FailureCodeBad), Key::FailureCodeBadAdvice),
            Failure::PlanRefused(problems) => {
                (self.failure_plan_refused(&self.problems(problems)), Key::FailurePlanRefusedAdvice)
            }
            Failure::PlanTooLarge => (text(Key::FailurePlanTooLarge), Key::FailurePlanTooLargeAdvice),
            Failure::NoSuchOwn { name } => (self.failure_no_such_own(name), Key::FailureNoSuchOwnAdvice),
            Failure::TooManyOwn { most } => (self.failure_too_many_own(most), Key::FailureTooManyOwnAdvice),
            Failure::NoSuchSet { name } => (self.failure_no_such_set(name), Key::FailureNoSuchSetAdvice),
            Failure::SetNameUnfit { most } => (self.failure_set_name_unfit(most), Key::FailureSetNameUnfitAdvice),
            Failure::SetRefused(problems) => {
                (self.failure_set_refused(&self.problems(problems)), Key::FailureSetRefusedAdvice)
            }
            Failure::TooManySets { most } => (self.failure_too_many_sets(most), Key::FailureTooManySetsAdvice),
            Failure::VisitUnfit(fault) => (self.visit_fault(*fault), Key::FailureVisitUnfitAdvice),
            Failure::VisitChanged => (text(Key::FailureVisitChanged), Key::FailureVisitChangedAdvice),
            Failure::VisitNotScreened => (text(Key::FailureVisitNotScreened), Key::FailureVisitNotScreenedAdvice),
            Failure::TooManyFindings { most } => (self.failure_too_many_findings(most), Key::FailureTooManyFindingsAdvice),
            Failure::CardNotSaved { code, revision, folder } => {
                (self.failure_card_not_saved(revision, code, folder), Key::FailureCardNotSavedAdvice)
            }
            Failure::DiaryDay { day } => (self.failure_diary_day(&self.date(*day)), Key::FailureDiaryDayAdvice),
            Failure::DiaryNumber { day, most } => {
                (self.failure_diary_number(&self.date(*day), *most), Key::FailureDiaryNumberAdvice)
            }
            Failure::NoCardIssued { code } => (self.failure_no_card_issued(code), Key::FailureNoCardIssuedAdvice),
            Failure::HandOver(fault) => self.hand_over_fault(fault),
            Failure::ReportOfOne => (text(Key::FailureReportOfOne), Key::FailureReportOfOneAdvice),
            Failure::NothingToExport => (text(Key::FailureNothingToExport), Key::FailureNothingToExportAdvice),
            Failure::NoSuchRevision { code, revision } => {
                (self.failure_no_such_revision(code, revision), Key::FailureNoSuchRevisionAdvice)
            }
            Failure::RecordDamaged { code } => (self.failure_record_damaged(code), Key::FailureRecordDamagedAdvice),
            Failure::RecordsDamaged { n } => (self.failure_records_damaged(*n), Key::FailureRecordDamagedAdvice),
            Failure::RemovalNotConfirmed { code } => {
                (self.failure_removal_not_confirmed(code), Key::FailureRemovalNotConfirmedAdvice)
            }
            Failure::NoSuchDevice { code, device } => {
                (self.failure_no_such_device(code, device), Key::FailureNoSuchDeviceAdvice)
            }
            Failure::ClinicNameKnown { clinic, fingerprint } => {
                (self.failure_clinic_name_known(clinic, fingerprint), Key::FailureClinicNameKnownAdvice)
            }
            Failure::NoPlan => (text(Key::FailureNoPlan), Key::FailureNoPlanAdvice),
            Failure::WhichPlan => (text(Key::FailureWhichPlan), Key::FailureWhichPlanAdvice),
            Failure::NoSuchItem => (text(Key::FailureNoSuchItem), Key::FailureNoSuchItemAdvice),
            Failure::NoSuchSlot => (text(Key::FailureNoSuchSession), Key::FailureNoSuchSessionAdvice),
            Failure::Paused(_) => (text(Key::FailurePaused), Key::FailurePausedAdvice),
            Failure::EmptyPeriod => (text(Key::FailureEmptyPeriod), Key::FailureEmptyPeriodAdvice),
            Failure::OutOfRange { least, most } => (self.failure_out_of_range(least, most), Key::FailureOutOfRangeAdvice),
            Failure::FolderOccupied { folder } => (self.failure_folder_occupied(folder), Key::FailureFolderOccupiedAdvice),
            Failure::QuietUnfit { most } => {
                (self.failure_no_reminder_hours_wrong(most), Key::FailureNoReminderHoursWrongAdvice)
            }
            Failure::NothingAhead => (text(Key::FailureNothingDue), Key::FailureNothingDueAdvice),
            Failure::NotConfirmed { home } => (self.failure_not_confirmed(home), Key::FailureNotConfirmedAdvice),
            Failure::AtLoginRefused { detail } => (self.failure_at_login_refused(detail), Key::FailureAtLoginRefusedAdvice),
            Failure::TextUnfit { most } => (self.failure_text_not_allowed(most), Key::FailureTextNotAllowedAdvice),
            Failure::Internal { detail } => (self.failure_internal(detail), Key::FailureInternalAdvice),
            Failure::NotUnderstood { file, fault } => self.not_understood(file, fault),
        };
        Refusal { fault, advice: text(advice) }
    }

    /// The text for a file that a person wrote and that has a fault, with the line if it is known.
    fn not_understood(self, file: &str, fault: &FileFault) -> (String, Key) {
        let wrong = self.file_fault(fault);
        match fault.line {
            0 => (self.failure_not_understood(file, &wrong), Key::FailureNotUnderstoodAdvice),
            line => (self.failure_not_understood_line(file, line, &wrong), Key::FailureNotUnderstoodLineAdvice),
        }
    }

    /// A limit in bytes, in the largest unit with a whole number: "8 MB". Limits are powers of 1024.
    fn size(self, bytes: u64) -> String {
        const KB: u64 = 1024;
        const MB: u64 = 1024 * KB;
        match bytes {
            MB.. if bytes.is_multiple_of(MB) => self.size_megabytes(bytes / MB),
            KB.. if bytes.is_multiple_of(KB) => self.size_kilobytes(bytes / KB),
            _ => self.size_bytes(bytes),
        }
    }

    /// "2, 3 and 5".
    fn numbers(self, all: &[u8]) -> String {
        self.list(&all.iter().map(|number| self.shown(number)).collect::<Vec<_>>())
    }
}
