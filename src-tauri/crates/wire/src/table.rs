//! The table of commands.

/// Every command that the window may give, handed to the macro `$of`, which makes of it what it needs: this crate the markers and
/// [`crate::COMMANDS`], the shell its list of handlers. The shell's build makes manifest and permissions of the names.
///
/// An area is a module of this crate, with what its commands are asked and answer, and a module of the shell's handlers. A line
/// is the marker, the command (its name and its handler), what it is asked and what it answers.
#[macro_export]
macro_rules! commands {
    ($of:ident) => {
        $of! {
            app {
                /// How things stand.
                ShowAppState = app_state(()) -> AppState;
                /// Choose the side at first start.
                ChooseRole = choose_role(RoleRequest) -> AppState;
                /// Look around in a sample plan, or leave it.
                ShowSample = show_sample(SampleRequest) -> AppState;
                /// Choose the language of all text.
                ChooseLocale = choose_locale(LocaleRequest) -> AppState;
                /// Where the data folder is.
                ShowDataFolder = data_folder(()) -> String;
                /// All exercises.
                ShowCatalogue = catalogue(()) -> Vec<Exercise>;
            }

            patient {
                /// Look at a card before taking it.
                ReadCard = read_card(CardSource) -> CardPreview;
                /// Take a card.
                TakeCard = take_card(TakeCardRequest) -> Today;
                /// The Now page.
                ShowToday = today(()) -> Today;
                /// The Plan page.
                ShowPlan = plan(()) -> Vec<PlanPage>;
                /// Begin a run.
                Begin = begin(BeginRequest) -> RunScript;
                /// Log a run as far as it got.
                Checkpoint = checkpoint(RunSnapshot) -> Vec<Question>;
                /// Keep what the sensor said about a trial.
                SaveSensed = save_sensed(SensedTrial) -> ();
                /// Recorded trials to be replayed as if they came from the sensor.
                Replay = replay(()) -> Vec<Vec<Sample>>;
                /// Put a slot's reminder off.
                PutOff = put_off(SlotRequest) -> Today;
                /// Skip a slot.
                SkipSlot = skip_slot(SkipRequest) -> Today;
                /// "I already did it".
                DidIt = did_it(SlotRequest) -> Today;
                /// Take days off.
                TakeDaysOff = take_days_off(DaysOffRequest) -> Today;
                /// Answer a question.
                GiveAnswer = answer(QuestionAnswer) -> Today;
                /// "Something is wrong".
                RaiseTrouble = trouble(TroubleRequest) -> Today;
                /// The Record page.
                ShowRecord = record(()) -> Vec<RecordPage>;
                /// Exactly what a summary would hand over.
                PreviewSummary = preview_summary(SealRequest) -> Summary;
                /// Seal a summary into a file.
                SealSummary = seal_summary(SealRequest) -> Saved;
                /// Seal a summary and show it as codes, one after the other.
                ShowFrames = show_frames(SealRequest) -> Vec<String>;
                /// The entries of the last days that can be corrected.
                ShowCorrectable = correctable(CorrectableRequest) -> CorrectPage;
                /// Put one entry right.
                Correct = correct(CorrectRequest) -> CorrectPage;
            }

            device {
                /// How reminders stand.
                ShowReminders = reminders(()) -> Reminders;
                /// Other quiet times.
                SetReminders = set_reminders(QuietTimesRequest) -> Reminders;
                /// No reminders for a while, or from now on again.
                Meeting = meeting(MeetingRequest) -> Reminders;
                /// Save everything that this copy holds about the person, in plain.
                ExportOwnData = export_own_data(()) -> Vec<Saved>;
                /// Save the slots to come for another calendar.
                ExportCalendar = export_calendar(()) -> Saved;
                /// Erase everything, for good.
                EraseEverything = erase_everything(EraseRequest) -> AppState;
                /// Whether the program is there while its window is not.
                ShowBackgroundState = background_state(()) -> BackgroundState;
                /// Open at login, or no more.
                SetAtLogin = set_at_login(AtLoginRequest) -> BackgroundState;
                /// What becomes of the program whose window was to be closed where no tray keeps it.
                Leave = leave(Leaving) -> ();
            }

            clinic {
                /// Make the clinic's keys and its sealed store.
                Start = clinic_start(StartClinicRequest) -> AppState;
                /// Open the sealed store.
                Unlock = clinic_unlock(Passphrase) -> AppState;
                /// All patients.
                ShowPatients = patients(()) -> Vec<PatientLine>;
                /// Add a patient.
                Add = add_patient(AddPatientRequest) -> Vec<PatientLine>;
                /// What the next plan starts from.
                BeginPlan = draft(PatientCode) -> PlanDraft;
                /// Keep the plan that is being composed, until its card is issued.
                KeepDraft = keep_draft(AskKeep) -> ();
                /// Forget the plan that is being composed; gives what the next plan starts from.
                DiscardDraft = discard_draft(PatientCode) -> PlanDraft;
                /// What keeps a plan from being issued.
                CheckPlan = check_plan(IssueRequest) -> Vec<Problem>;
                /// Issue a plan card.
                Issue = issue(IssueRequest) -> IssuedCard;
                /// Receive summaries.
                Receive = receive(ReceiveRequest) -> Vec<Receipt>;
                /// One patient's review.
                ShowReview = review(PatientCode) -> ReviewPage;
            }
        }
    };
}
