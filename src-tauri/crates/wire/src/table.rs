//! The table of commands.

/// Every command of the window, passed to the macro `$of`: this crate generates the markers and [`crate::COMMANDS`] from it, and the
/// shell its list of handlers. The shell's build generates manifest and permissions from the names.
///
/// An area is a module of this crate, with the arguments and results of its commands, and a module of the shell's handlers. A line
/// consists of the marker, the command (its name and its handler), its argument and its result.
#[macro_export]
macro_rules! commands {
    ($of:ident) => {
        $of! {
            app {
                /// Show the state of the program.
                ShowAppState = app_state(()) -> AppState;
                /// Choose the side at first start.
                ChooseRole = choose_role(RoleRequest) -> AppState;
                /// Look around in a sample plan, or leave it.
                ShowSample = show_sample(SampleRequest) -> AppState;
                /// Choose the language of all text.
                ChooseLocale = choose_locale(LocaleRequest) -> AppState;
                /// Show the data folder's path.
                ShowDataFolder = data_folder(()) -> String;
                /// Show when the last backup was made.
                ShowBackups = backups(()) -> Backups;
                /// Save a backup.
                SaveBackup = save_backup(()) -> SavedFile;
                /// The days of the automatic backups, newest first; also if the data folder cannot be opened.
                ShowBackupDays = backup_days(()) -> Vec<NaiveDate>;
                /// Put a backup in the place of the data.
                RestoreBackup = restore_backup(BackupSource) -> Restored;
                /// Save what can be read of a damaged data folder.
                Salvage = salvage(()) -> SalvageReport;
                /// Show a saved file in the system's file manager.
                ShowInFolder = show_in_folder(SavedNumber) -> Shown;
                /// All exercises.
                ShowCatalogue = catalogue(()) -> Vec<Exercise>;
            }

            patient {
                /// Preview a card before taking it.
                ReadCard = read_card(CardSource) -> CardPreview;
                /// Take a card.
                TakeCard = take_card(TakeCardRequest) -> Today;
                /// The Now page.
                ShowToday = today(()) -> Today;
                /// The Plan page.
                ShowPlan = plan(()) -> Vec<PlanPage>;
                /// Move the times of an item, from tomorrow.
                Refit = refit(RefitRequest) -> Vec<PlanPage>;
                /// Begin a run.
                Begin = begin(BeginRequest) -> RunScript;
                /// Log the progress of a run.
                Checkpoint = checkpoint(RunSnapshot) -> Option<Question>;
                /// Store the sensor's result for a trial.
                SaveSensed = save_sensed(SensedTrial) -> ();
                /// Recorded trials to be replayed as if they came from the sensor.
                Replay = replay(()) -> Vec<Vec<Sample>>;
                /// Put off a slot's reminder.
                PutOff = put_off(SlotRequest) -> Today;
                /// Skip a slot.
                SkipSlot = skip_slot(SkipRequest) -> Today;
                /// "I already did it".
                DidIt = did_it(SlotRequest) -> Today;
                /// Take days off.
                TakeDaysOff = take_days_off(DaysOffRequest) -> Today;
                /// Answer a question.
                GiveAnswer = answer(QuestionAnswer) -> Today;
                /// Take an answer of today back.
                TakeAnswerBack = take_answer_back(QuestionAnswer) -> Today;
                /// "Something is wrong".
                RaiseTrouble = trouble(TroubleRequest) -> Today;
                /// "I am well again".
                SayWellAgain = well_again(WellAgainRequest) -> Today;
                /// The Record page.
                ShowRecord = record(()) -> Vec<RecordPage>;
                /// Show the exact contents of a summary.
                PreviewSummary = preview_summary(SealRequest) -> Summary;
                /// Show the bytes of a summary, part by part.
                ShowSummaryBytes = summary_bytes(SealRequest) -> SummaryBytes;
                /// Seal a summary and write it to a file.
                SealSummary = seal_summary(SealRequest) -> SavedFile;
                /// Seal a summary and show it as codes, one after the other.
                ShowFrames = show_frames(SealRequest) -> Vec<String>;
                /// Show the entries of the last days that can be corrected.
                ShowCorrectable = correctable(CorrectableRequest) -> CorrectPage;
                /// Correct one entry.
                Correct = correct(CorrectRequest) -> CorrectPage;
            }

            device {
                /// Show the state of the reminders.
                ShowReminders = reminders(()) -> Reminders;
                /// Replace the quiet times.
                SetReminders = set_reminders(QuietTimesRequest) -> Reminders;
                /// Start a time without reminders, or end it.
                Meeting = meeting(MeetingRequest) -> Reminders;
                /// Save everything that this copy holds about the person, unencrypted.
                ExportOwnData = export_own_data(()) -> Vec<SavedFile>;
                /// Show the number by which the clinic tells this device from the person's others.
                ShowDeviceNumber = device_number(()) -> Option<LogId>;
                /// Save the coming slots for another calendar.
                ExportCalendar = export_calendar(()) -> SavedFile;
                /// Choose or remove the code for the screen.
                SetScreenCode = set_screen_code(ScreenCodeRequest) -> AppState;
                /// Lock the screen, if there is a code.
                LockScreen = lock_screen(()) -> AppState;
                /// Open the screen with the code.
                UnlockScreen = unlock_screen(ScreenCode) -> AppState;
                /// Erase everything irrevocably.
                EraseEverything = erase_everything(EraseRequest) -> AppState;
                /// Show whether the program runs while its window is closed.
                ShowBackgroundState = background_state(()) -> BackgroundState;
                /// Choose whether the program starts at login.
                SetAtLogin = set_at_login(AtLoginRequest) -> BackgroundState;
                /// Choose what the program does when its window was to be closed without a tray.
                Leave = leave(Leaving) -> ();
            }

            clinic {
                /// Create the clinic's keys and its encrypted store.
                Start = clinic_start(StartClinicRequest) -> AppState;
                /// Unlock the encrypted store.
                Unlock = clinic_unlock(UnlockRequest) -> AppState;
                /// Lock the encrypted store again.
                Lock = clinic_lock(()) -> AppState;
                /// Say that somebody is using the window, which puts off the lock.
                InUse = clinic_in_use(()) -> ();
                /// Choose after how many idle minutes the store locks.
                SetIdle = clinic_idle(IdleRequest) -> AppState;
                /// Estimate how hard a new passphrase is to guess.
                ShowStrength = passphrase_strength(StrengthRequest) -> PassphraseStrength;
                /// Change the passphrase.
                ChangePassphrase = change_passphrase(ChangePassphraseRequest) -> ();
                /// Show the clinic's age identity, after the passphrase was entered again.
                ShowIdentity = clinic_identity(Passphrase) -> Secret;
                /// Save the clinic's keys as a file and as a sheet for paper, after the passphrase was entered again.
                ExportKeys = export_keys(ExportKeysRequest) -> Vec<SavedFile>;
                /// Renew the clinic's keys, after the passphrase was entered again.
                RenewKeys = renew_keys(Passphrase) -> AppState;
                /// All clinicians.
                ShowClinicians = clinicians(()) -> Vec<ClinicianLine>;
                /// Add a clinician, after the passphrase was entered again.
                AddClinician = add_clinician(AddClinicianRequest) -> Vec<ClinicianLine>;
                /// Remove a clinician, after the passphrase was entered again.
                RemoveClinician = remove_clinician(RemoveClinicianRequest) -> Vec<ClinicianLine>;
                /// Replace the clinic's telephone number.
                SetPhone = clinic_phone(PhoneRequest) -> AppState;
                /// All patients.
                ShowPatients = patients(()) -> PatientList;
                /// Add a patient.
                Add = add_patient(AddPatientRequest) -> PatientList;
                /// Open the draft of the next plan.
                BeginPlan = draft(PatientCode) -> PlanDraft;
                /// Store the draft until its card is issued.
                KeepDraft = keep_draft(AskKeep) -> ();
                /// Delete the draft; returns what the next plan starts from.
                DiscardDraft = discard_draft(PatientCode) -> PlanDraft;
                /// List the problems that prevent a plan from being issued, and say how its card will be handed over.
                CheckPlan = check_plan(IssueRequest) -> PlanCheck;
                /// Issue a plan card.
                Issue = issue(IssueRequest) -> IssuedCard;
                /// Save the files of the newest card again, and show it.
                ShowCard = show_card(PatientCode) -> IssuedCard;
                /// Save the card that was issued last as SVG, text and bytes too; returns all its files.
                SaveOtherForms = save_card_forms(()) -> Vec<SavedFile>;
                /// Remove the files of the card that was issued last.
                RemoveCardFiles = remove_card_files(()) -> ();
                /// Remove a patient for good.
                Remove = remove_patient(RemovePatientRequest) -> PatientList;
                /// Leave a device out of a patient's review, or take it in again.
                LeaveOutDevice = leave_out_device(DeviceRequest) -> ReviewPage;
                /// One patient's review.
                ShowReview = review(PatientCode) -> ReviewPage;
            }

            receiving {
                /// Receive a part of the files that were chosen in the window.
                Receive = receive(ReceiveRequest) -> Received;
                /// Let the person choose a folder; returns its number, if one was chosen.
                ChooseFolder = choose_folder(()) -> Option<u32>;
                /// Receive the first part of files that were dropped on the window or of a folder that was chosen, or the next part of what is
                /// being received.
                ReceiveNamed = receive_named(NamedRequest) -> Received;
                /// Leave the rest of them as it is.
                StopReceiving = stop_receiving(()) -> ();
            }

            prescribing {
                /// The clinic's own exercises.
                ShowOwn = own_exercises(()) -> OwnExercises;
                /// An own exercise, to be changed.
                EditOwn = edit_own_exercise(OwnName) -> OwnEdited;
                /// Save an own exercise, or a new revision of one.
                SaveOwn = save_own_exercise(OwnEdited) -> OwnExercises;
                /// Add own exercises from their files.
                ImportOwn = import_own_exercises(ImportOwnRequest) -> OwnExercises;
                /// Save the file of an own exercise for somebody else.
                ExportOwn = export_own_exercise(OwnName) -> SavedFile;
                /// Remove an own exercise.
                RemoveOwn = remove_own_exercise(OwnName) -> OwnRemoved;
                /// Keep an unfinished exercise; returns its number.
                KeepOwnDraft = keep_own_draft(OwnDraftRequest) -> DraftNumber;
                /// Delete an unfinished exercise.
                DiscardOwnDraft = discard_own_draft(DraftNumber) -> OwnExercises;
                /// The clinic's sets.
                ShowSets = sets(()) -> Vec<SetLine>;
                /// Save a set from a prescription.
                SaveSet = save_set(SaveSetRequest) -> Vec<SetLine>;
                /// Save a set from a plan file.
                ImportSet = import_set(ImportSetRequest) -> Vec<SetLine>;
                /// Save a set as a plan file.
                ExportSet = export_set(SetName) -> SavedFile;
                /// Remove a set.
                RemoveSet = remove_set(SetName) -> Vec<SetLine>;
                /// Put the items of a set into a patient's plan.
                UseSet = use_set(UseSetRequest) -> SetUsed;
            }

            visiting {
                /// A patient's visits.
                ShowVisit = visit(PatientCode) -> VisitPage;
                /// Note a finding, correct one, or take one back.
                NoteFinding = note_finding(NoteRequest) -> VisitPage;
                /// Save a plan's hand-out or a diary as a PDF file.
                Print = print(PrintRequest) -> SavedFile;
                /// The days of a diary on paper.
                ShowDiary = diary(PatientCode) -> DiaryPage;
                /// Enter days of a diary on paper.
                EnterDiary = enter_diary(DiaryRequest) -> DiaryPage;
                /// Save a review for the medical record.
                SaveRecord = save_record(RecordRequest) -> SavedFile;
                /// The server of records on this computer.
                ShowServer = server(()) -> ServerSetting;
                /// Set that server.
                SetServer = set_server(SetServerRequest) -> ServerSetting;
                /// Hand nothing over any more.
                RemoveServer = remove_server(()) -> ServerSetting;
                /// Hand a patient's review over to the server.
                HandOver = hand_over(PatientCode) -> HandedOver;
            }

            cases {
                /// A patient's case, with the plans that were issued.
                ShowCase = patient_case(PatientCode) -> CasePage;
                /// Close a case.
                CloseCase = close_case(CloseRequest) -> CasePage;
                /// Open a closed case again.
                ReopenCase = reopen_case(PatientCode) -> CasePage;
                /// Save the letter at the end of a treatment as a PDF file.
                SaveLetter = save_letter(LetterRequest) -> SavedFile;
                /// Give a patient another code or name.
                RenamePatient = rename_patient(RenameRequest) -> CasePage;
                /// Save the files of an issued plan's card again, and show it.
                ShowIssued = show_issued(IssuedRevision) -> IssuedCard;
            }
        }
    };
}
